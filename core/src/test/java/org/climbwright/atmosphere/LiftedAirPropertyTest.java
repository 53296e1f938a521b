package org.climbwright.atmosphere;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Label;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

@Label("Lifted air, over the surface weather of the earth")
class LiftedAirPropertyTest {
    @Provide
    Arbitrary<Double> kelvins() {
        return Arbitraries.doubles().between(233.15, 323.15).ofScale(9);
    }

    /** From the driest desert to saturation. */
    @Provide
    Arbitrary<Double> humidities() {
        return Arbitraries.doubles().between(0.01, 1.0).ofScale(9);
    }

    @Provide
    Arbitrary<Double> pressures() {
        return Arbitraries.doubles().between(50000.0, 108000.0).ofScale(6);
    }

    @Property
    @Label("condenses at or above itself, at or below its dew point")
    void above(
            @ForAll("kelvins") double kelvin,
            @ForAll("humidities") double humidity,
            @ForAll("pressures") double pascal) {
        double vapour = MoistAir.vapourPressureFromRelativeHumidity(humidity, kelvin);
        double level = LiftedAir.condensationTemperature(kelvin, vapour, pascal);
        assertThat(level)
                .isLessThanOrEqualTo(kelvin)
                .isLessThanOrEqualTo(MoistAir.dewPoint(vapour) + 1e-10);
        assertThat(LiftedAir.condensationPressure(kelvin, vapour, pascal))
                .isLessThanOrEqualTo(pascal)
                .isPositive();
        assertThat(LiftedAir.heightToCondensation(kelvin, vapour, pascal)).isNotNegative();
    }

    @Property
    @Label("condenses at itself when saturated, and nowhere else")
    void saturated(@ForAll("kelvins") double kelvin, @ForAll("pressures") double pascal) {
        double vapour = MoistAir.saturationVapourPressure(kelvin);
        assertThat(LiftedAir.condensationTemperature(kelvin, vapour, pascal)).isEqualTo(kelvin);
        assertThat(LiftedAir.condensationPressure(kelvin, vapour, pascal)).isEqualTo(pascal);
        assertThat(LiftedAir.heightToCondensation(kelvin, vapour, pascal)).isZero();
        assertThat(LiftedAir.condensationTemperature(kelvin, 0.999 * vapour, pascal))
                .isLessThan(kelvin);
    }

    @Property
    @Label("is saturated at its level, with the mixing ratio that it started with")
    void saturatedAtItsLevel(
            @ForAll("kelvins") double kelvin,
            @ForAll("humidities") double humidity,
            @ForAll("pressures") double pascal) {
        double vapour = MoistAir.vapourPressureFromRelativeHumidity(humidity, kelvin);
        double levelK = LiftedAir.condensationTemperature(kelvin, vapour, pascal);
        double levelPa = LiftedAir.condensationPressure(kelvin, vapour, pascal);
        double vapourThere = vapour * levelPa / pascal; // with the mixing ratio it falls as p does
        // 1e-10 K of temperature is 2e-11 of saturation
        assertThat(MoistAir.relativeHumidity(vapourThere, levelK)).isCloseTo(1.0, within(1e-10));
        assertThat(MoistAir.mixingRatio(vapourThere, levelPa))
                .isCloseTo(
                        MoistAir.mixingRatio(vapour, pascal),
                        within(1e-12 * MoistAir.mixingRatio(vapour, pascal)));
    }

    @Property
    @Label("that is drier must be lifted higher")
    void drierIsHigher(
            @ForAll("kelvins") double kelvin,
            @ForAll("humidities") double one,
            @ForAll("humidities") double other,
            @ForAll("pressures") double pascal) {
        double drier = Math.min(one, other);
        double moister = Math.max(one, other);
        if (moister - drier > 1e-6) {
            double e = MoistAir.saturationVapourPressure(kelvin);
            assertThat(LiftedAir.heightToCondensation(kelvin, drier * e, pascal))
                    .isGreaterThan(LiftedAir.heightToCondensation(kelvin, moister * e, pascal));
        }
    }

    @Provide
    Arbitrary<Double> ruleKelvins() {
        return Arbitraries.doubles().between(268.15, 308.15).ofScale(6);
    }

    @Provide
    Arbitrary<Double> spreads() {
        return Arbitraries.doubles().between(0.01, 25.0).ofScale(6);
    }

    @Property
    @Label("condenses from 2 % below to 11 % above the height of the rule of 400 ft per degree")
    void rule(
            @ForAll("ruleKelvins") double kelvin,
            @ForAll("spreads") double spread,
            @ForAll("pressures") double pascal) {
        double vapour = MoistAir.saturationVapourPressure(kelvin - spread);
        double height = LiftedAir.heightToCondensation(kelvin, vapour, Math.max(70000.0, pascal));
        // what the rule states: 10 % too low to 2 % too high
        assertThat(LiftedAir.heightByRule(kelvin, kelvin - spread) / height).isBetween(0.90, 1.02);
    }
}
