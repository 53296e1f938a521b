package org.climbwright.atmosphere;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Label;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.climbwright.atmosphere.altimetry.VerticalRates;
import org.climbwright.quantity.humidity.MixingRatio;
import org.climbwright.quantity.humidity.RelativeHumidity;
import org.climbwright.quantity.speed.GeometricRate;
import org.climbwright.quantity.speed.PressureAltitudeRate;
import org.climbwright.quantity.temperature.DewPoint;

@Label("The air at one place, whatever its humidity")
class AirStatePropertyTest {
    @Provide
    Arbitrary<Double> kelvins() {
        return Arbitraries.doubles().between(150.0, 320.0).ofScale(9);
    }

    @Provide
    Arbitrary<Double> humidities() {
        return Arbitraries.doubles().between(1e-3, 1.0).ofScale(9);
    }

    @Provide
    Arbitrary<Double> pressures() {
        return Arbitraries.doubles().between(20000.0, 108000.0).ofScale(6);
    }

    @Property
    @Label("tells a relative humidity, a dew point and a mixing ratio that each make it again")
    void eachMakesItAgain(
            @ForAll("kelvins") double kelvin,
            @ForAll("humidities") double humidity,
            @ForAll("pressures") double pascal) {
        AirState bare = AirState.ofSi(pascal, kelvin, Double.NaN, 1000.0);
        AirState air = bare.withRelativeHumidity(RelativeHumidity.ofRatio(humidity));
        double vapour = air.vapourPressurePa();

        DewPoint dewPoint = air.dewPoint().orElseThrow();
        // the dew point is rounded to a double: an ulp of 320 K is 4e-15 of the vapour pressure
        // and 30 times that at 150 K; besides the 1e-12 K that it states
        assertThat(bare.withDewPoint(dewPoint).vapourPressurePa())
                .isCloseTo(vapour, within(1e-12 * vapour));
        MixingRatio ratio = air.mixingRatio().orElseThrow();
        if (humidity < 1.0 - 1e-9) {
            assertThat(bare.withMixingRatio(ratio).vapourPressurePa())
                    .isCloseTo(vapour, within(1e-14 * vapour));
        }
        assertThat(
                        bare.withRelativeHumidity(air.relativeHumidity().orElseThrow())
                                .vapourPressurePa())
                .isCloseTo(vapour, within(1e-15 * vapour));

        assertThat(dewPoint.inKelvins()).isLessThanOrEqualTo(kelvin);
        air.frostPoint()
                .ifPresent(
                        frost ->
                                assertThat(frost.inKelvins())
                                        .isGreaterThanOrEqualTo(dewPoint.inKelvins() - 1e-6));
        assertThat(air.withoutVapour()).isEqualTo(AirState.ofSi(pascal, kelvin, 0.0, 1000.0));
    }

    @Property
    @Label("is lighter than dry air, and its density altitude is higher")
    void lighter(
            @ForAll("kelvins") double kelvin,
            @ForAll("humidities") double humidity,
            @ForAll("pressures") double pascal) {
        AirState bare = AirState.ofSi(pascal, kelvin, Double.NaN, 1000.0);
        AirState air = bare.withRelativeHumidity(RelativeHumidity.ofRatio(humidity));
        assertThat(air.densityKgPerM3()).isLessThanOrEqualTo(air.withoutVapour().densityKgPerM3());
        assertThat(bare.densityKgPerM3()).isEqualTo(air.withoutVapour().densityKgPerM3());
        assertThat(air.densityKgPerM3())
                .isEqualTo(MoistAir.density(pascal, kelvin, air.vapourPressurePa()));
        if (StandardAir.coversDensity(bare.densityKgPerM3())) {
            assertThat(air.densityAltitude()).isGreaterThanOrEqualTo(bare.densityAltitude());
        }
    }

    @Property
    @Label("makes a rate on the instrument of a rate in the air, and the other way round")
    void rates(
            @ForAll("kelvins") double kelvin,
            @ForAll("humidities") double humidity,
            @ForAll("pressures") double pascal) {
        AirState air =
                AirState.ofSi(pascal, kelvin, Double.NaN, 3000.0)
                        .withRelativeHumidity(RelativeHumidity.ofRatio(humidity));
        GeometricRate truly = GeometricRate.ofFeetPerMinute(1500.0);
        PressureAltitudeRate shown = VerticalRates.pressureAltitudeRate(truly, air);
        assertThat(VerticalRates.geometricRate(shown, air).inFeetPerMinute())
                .isCloseTo(1500.0, within(2 * Math.ulp(1500.0)));
        assertThat(shown.inMetresPerSecond() * VerticalRates.geometricPerPressureAltitude(air))
                .isCloseTo(truly.inMetresPerSecond(), within(1e-14));
    }
}
