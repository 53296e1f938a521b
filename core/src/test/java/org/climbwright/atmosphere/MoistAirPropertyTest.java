package org.climbwright.atmosphere;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Label;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

@Label("Moist air, over its whole range")
class MoistAirPropertyTest {
    @Provide
    Arbitrary<Double> kelvins() {
        return Arbitraries.doubles().between(123.0, 332.0).ofScale(9);
    }

    @Provide
    Arbitrary<Double> coldKelvins() {
        return Arbitraries.doubles().between(123.0, 273.16).ofScale(9);
    }

    /** From a hundredth of a percent to saturation. */
    @Provide
    Arbitrary<Double> humidities() {
        return Arbitraries.doubles().between(1e-4, 1.0).ofScale(9);
    }

    /** So far above the vapour pressure of air at 332 K that virtual temperatures stay in range. */
    @Provide
    Arbitrary<Double> pressures() {
        return Arbitraries.doubles().between(50000.0, 110000.0).ofScale(6);
    }

    @Property
    @Label("the dew point of saturated air is its temperature")
    void dewPointUndoesSaturation(@ForAll("kelvins") double kelvin) {
        // 1e-12 K is what dewPoint states, and 1e-13 the vapour pressure
        assertThat(MoistAir.dewPoint(MoistAir.saturationVapourPressure(kelvin)))
                .isCloseTo(kelvin, within(3e-12));
    }

    @Property
    @Label("the frost point of air saturated over ice is its temperature")
    void frostPointUndoesSaturation(@ForAll("coldKelvins") double kelvin) {
        assertThat(MoistAir.frostPoint(MoistAir.saturationVapourPressureOverIce(kelvin)))
                .isCloseTo(kelvin, within(3e-12));
    }

    @Property
    @Label("the short form gives dew and frost point back as well")
    void wmoRoundTrip(@ForAll("kelvins") double kelvin) {
        SaturationFormula wmo = SaturationFormula.WMO;
        if (wmo.coversWater(kelvin)) {
            assertThat(wmo.dewPoint(wmo.overWater(kelvin))).isCloseTo(kelvin, within(3e-12));
        }
        if (wmo.coversIce(kelvin)) {
            assertThat(wmo.frostPoint(wmo.overIce(kelvin))).isCloseTo(kelvin, within(3e-12));
        }
    }

    @Property
    @Label("warmer air can hold more vapour, over water and over ice")
    void saturationRises(@ForAll("kelvins") double one, @ForAll("kelvins") double other) {
        double colder = Math.min(one, other);
        double warmer = Math.max(one, other);
        if (warmer > colder) {
            assertThat(MoistAir.saturationVapourPressure(warmer))
                    .isGreaterThan(MoistAir.saturationVapourPressure(colder));
            if (warmer <= 273.16) {
                assertThat(MoistAir.saturationVapourPressureOverIce(warmer))
                        .isGreaterThan(MoistAir.saturationVapourPressureOverIce(colder));
            }
        }
    }

    @Property
    @Label("the dew point is never above the temperature")
    void dewPointIsBelow(@ForAll("kelvins") double kelvin, @ForAll("humidities") double humidity) {
        double vapour = MoistAir.vapourPressureFromRelativeHumidity(humidity, kelvin);
        if (MoistAir.coversDewPoint(vapour)) {
            assertThat(MoistAir.dewPoint(vapour)).isLessThanOrEqualTo(kelvin + 1e-12);
        }
    }

    @Property
    @Label("the frost point is never below the dew point")
    void frostPointIsAboveDewPoint(@ForAll("coldKelvins") double dewPoint) {
        double vapour = MoistAir.saturationVapourPressure(dewPoint);
        if (MoistAir.coversFrostPoint(vapour)) {
            // The two formulas meet at the triple point but for 4e-8 of the vapour pressure, which
            // is 6e-7 K there; 5e-6 K away the water has the greater pressure.
            double allowed = dewPoint > 273.16 - 5e-6 ? 1e-6 : 1e-12;
            assertThat(MoistAir.frostPoint(vapour)).isGreaterThanOrEqualTo(dewPoint - allowed);
        } else {
            assertThat(dewPoint).isGreaterThan(273.1599);
        }
    }

    @Property
    @Label("saturation over ice is below that over water, until they meet at the triple point")
    void iceHoldsLess(@ForAll("coldKelvins") double kelvin) {
        double ratio =
                MoistAir.saturationVapourPressureOverIce(kelvin)
                        / MoistAir.saturationVapourPressure(kelvin);
        assertThat(ratio).isLessThan(kelvin < 273.16 - 5e-6 ? 1.0 : 1.0 + 5e-8);
        // colder by a kelvin it is about 1 % less
        assertThat(ratio).isGreaterThan(1.0 - 0.0105 * (273.16 - kelvin) - 1e-4);
    }

    @Property
    @Label("relative humidity and vapour pressure make each other")
    void relativeHumidityRoundTrip(
            @ForAll("kelvins") double kelvin, @ForAll("humidities") double humidity) {
        double vapour = MoistAir.vapourPressureFromRelativeHumidity(humidity, kelvin);
        assertThat(MoistAir.relativeHumidity(vapour, kelvin))
                .isCloseTo(humidity, within(2 * Math.ulp(humidity)));
    }

    @Property
    @Label("mixing ratio and vapour pressure make each other")
    void mixingRatioRoundTrip(
            @ForAll("kelvins") double kelvin,
            @ForAll("humidities") double humidity,
            @ForAll("pressures") double pascal) {
        double vapour = MoistAir.vapourPressureFromRelativeHumidity(humidity, kelvin);
        double ratio = MoistAir.mixingRatio(vapour, pascal);
        // 3 ulp each way, which p - e makes more of when nearly all is vapour: not here
        assertThat(MoistAir.vapourPressureFromMixingRatio(ratio, pascal))
                .isCloseTo(vapour, within(1e-14 * vapour));
    }

    @Property
    @Label("vapour makes air lighter, and the more of it the lighter")
    void moistAirIsLighter(
            @ForAll("kelvins") double kelvin,
            @ForAll("humidities") double humidity,
            @ForAll("pressures") double pascal) {
        double vapour = MoistAir.vapourPressureFromRelativeHumidity(humidity, kelvin);
        double dry = DryAir.density(pascal, kelvin);
        double moist = MoistAir.density(pascal, kelvin, vapour);
        double half = MoistAir.density(pascal, kelvin, 0.5 * vapour);
        assertThat(moist).isLessThanOrEqualTo(half);
        assertThat(half).isLessThanOrEqualTo(dry);
        if (vapour > 1e-10 * pascal) { // below that the last bits do not tell
            assertThat(moist).isLessThan(half);
            assertThat(half).isLessThan(dry);
        }
        assertThat(MoistAir.virtualTemperature(kelvin, vapour, pascal))
                .isGreaterThanOrEqualTo(kelvin)
                .isFinite();
        // by Dalton's law: dry air and vapour each with its own gas constant
        double dalton = (pascal - vapour) / (287.05287 * kelvin) + vapour / (461.523 * kelvin);
        assertThat(moist).isCloseTo(dalton, within(1e-14 * dalton));
    }
}
