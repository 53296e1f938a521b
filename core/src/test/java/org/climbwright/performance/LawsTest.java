package org.climbwright.performance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.io.Serializable;
import java.util.stream.Stream;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.climbwright.atmosphere.StandardAir;
import org.climbwright.atmosphere.wind.Winds;
import org.climbwright.quantity.OutsideModelException;
import org.climbwright.quantity.altitude.PressureAltitude;
import org.climbwright.testing.Streams;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

@DisplayName("A law of an aeroplane")
class LawsTest {
    private static final EngineUse TWO = EngineUse.climb(2);
    private static final JetThrust JET = JetThrust.ofSi(1e5, 0.7);
    private static final PropellerThrust PROPELLER = PropellerThrust.ofSi(134e3, 0.8, 2600.0);

    static Stream<Serializable> values() {
        ParabolicPolar polar = ParabolicPolar.ofSi(100.0, 0.02, 0.05);
        return Stream.of(
                polar,
                polar.withCompressibilityRise(0.8, 0.1),
                polar.withEngineOutDrag(2, 0.5),
                JET,
                JET.withFlatRating(15.0, 0.01).withMachLapse(0.5, 0.3),
                JET.withRating(Rating.CLIMB, 0.9).withBleed(0.01, 0.02),
                PROPELLER,
                PROPELLER.withSupercharger(PressureAltitude.ofFeet(12000)),
                PROPELLER.withDensityExponent(0.8).withBleed(0.01, 0.0),
                ThrustSpecificFuel.ofSi(1e-5, 1e-5).withIdle(0.1).withBleed(0.01, 0.02),
                PowerSpecificFuel.ofSi(PROPELLER, 8e-8).withIdle(0.001).withBleed(0.01, 0.0));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("values")
    @DisplayName("travels as bytes and arrives equal, with the same hash and text")
    void travels(Serializable value) throws IOException {
        Object arrived = Streams.roundTrip(value);
        assertThat(arrived).isEqualTo(value).isNotSameAs(value);
        assertThat(arrived.hashCode()).isEqualTo(value.hashCode());
        assertThat(arrived).hasToString(value.toString());
        assertThat(value).isNotEqualTo("another");
        assertThat(values().filter(value::equals)).hasSize(1);
    }

    @Test
    @DisplayName("gives each rating its share, to each engine that runs, less bleed")
    void ratings() {
        JetThrust jet =
                JET.withRating(Rating.MAXIMUM_CONTINUOUS, 0.92)
                        .withRating(Rating.CLIMB, 0.88)
                        .withBleed(0.02, 0.03);
        double one = 1e5; // at sea level, at rest
        assertThat(thrust(jet, new EngineUse(1, Rating.TAKE_OFF, Bleed.NONE))).isEqualTo(one);
        assertThat(thrust(jet, new EngineUse(2, Rating.MAXIMUM_CONTINUOUS, Bleed.NONE)))
                .isCloseTo(1.84 * one, within(1e-9));
        assertThat(thrust(jet, TWO.withBleed(Bleed.ENGINE)))
                .isCloseTo(2.0 * 0.88 * 0.98 * one, within(1e-9));
        assertThat(thrust(jet, TWO.withBleed(Bleed.ENGINE_AND_AIRFRAME)))
                .isCloseTo(2.0 * 0.88 * 0.95 * one, within(1e-9));
    }

    private static double thrust(JetThrust jet, EngineUse use) {
        return jet.thrust(0.0, 101325.0, 288.15, use);
    }

    @Test
    @DisplayName("without a bend says so")
    void noBend() {
        assertThat(JET.bend(0.5, 5e4, 260.0)).isEqualTo(1.0);
    }

    @Test
    @DisplayName("of a flat-rated jet bends with standard air at 11 and at 20 km")
    void tropopause() {
        JetThrust jet = JET.withFlatRating(15.0, 0.01);
        assertThat(jet.bend(0.8, StandardAir.pressureFromAltitude(10999.0), 217.0)).isPositive();
        assertThat(jet.bend(0.8, StandardAir.pressureFromAltitude(11001.0), 217.0)).isNegative();
        assertThat(jet.bend(0.8, StandardAir.pressureFromAltitude(20001.0), 217.0)).isPositive();
        double below = jet.thrust(0.8, StandardAir.pressureFromAltitude(10999.999), 217.0, TWO);
        double above = jet.thrust(0.8, StandardAir.pressureFromAltitude(11000.001), 217.0, TWO);
        assertThat(above).isLessThan(below).isCloseTo(below, within(1e-6 * below));
    }

    @ParameterizedTest(name = "ISA{0}")
    @ValueSource(doubles = {0.0, 15.0, -7.3})
    @DisplayName("of a jet flat-rated to the day's deviation does not bend at every rounding")
    void noBendByRounding(double deviationK) {
        JetThrust jet = JET.withFlatRating(deviationK, 0.01);
        ClimbAir air = InventedAeroplanes.air(deviationK, Winds.calm());
        for (double altitude = 0.0; altitude < 10990.0; altitude += 7.0) {
            double pressure = StandardAir.pressureFromAltitude(altitude);
            double sampled = air.temperature(air.stretch(altitude, true), altitude);
            assertThat(jet.bend(0.5, pressure, sampled)).isPositive();
            double direct = StandardAir.temperatureFromPressure(pressure) + deviationK;
            assertThat(jet.bend(0.5, pressure, direct)).isPositive();
            assertThat(jet.bend(0.5, pressure, direct + 2e-9)).isNegative();
        }
    }

    @Test
    @DisplayName("of a supercharged propeller gives full power up to its altitude")
    void supercharger() {
        PropellerThrust charged = PROPELLER.withSupercharger(PressureAltitude.ofFeet(12000));
        double top = StandardAir.pressureFromAltitude(12000.0 * 0.3048);
        double topK = StandardAir.temperatureFromPressure(top);
        double power = charged.thrust(0.2, top, topK, EngineUse.climb(1));
        double speed = 0.2 * Math.sqrt(1.4 * 287.05287 * topK);
        assertThat(power * speed).isCloseTo(0.8 * 134e3, within(1e-8 * 134e3));
        assertThat(charged.thrust(0.2, 0.9 * top, topK, EngineUse.climb(1)) * speed)
                .isCloseTo(0.9 * 0.8 * 134e3, within(1e-8 * 134e3));
    }

    @Test
    @DisplayName("of fuel by power takes full power for the thrust at rest")
    void fuelAtRest() {
        PowerSpecificFuel fuel = PowerSpecificFuel.ofSi(PROPELLER, 8e-8);
        EngineUse one = EngineUse.climb(1);
        for (double mach : new double[] {0.01, 0.05, 0.1, 0.2, 0.3}) {
            double full = PROPELLER.thrust(mach, 101325.0, 288.15, one);
            assertThat(fuel.fuelFlow(full, mach, 101325.0, 288.15, one))
                    .isCloseTo(8e-8 * 134e3, within(1e-15));
        }
        assertThat(fuel.withBleed(0.02, 0.0).fuelFlow(1000.0, 0.2, 9e4, 280.0, one))
                .isEqualTo(fuel.fuelFlow(1000.0, 0.2, 9e4, 280.0, one));
        assertThat(
                        fuel.withBleed(0.02, 0.0)
                                .fuelFlow(1000.0, 0.2, 9e4, 280.0, one.withBleed(Bleed.ENGINE)))
                .isCloseTo(1.02 * fuel.fuelFlow(1000.0, 0.2, 9e4, 280.0, one), within(1e-15));
    }

    @Test
    @DisplayName("of the rise of a straight wing begins 0.108 below its drag divergence")
    void sweptWing() {
        ParabolicPolar plain = ParabolicPolar.ofSi(100.0, 0.02, 0.05);
        ParabolicPolar wing = plain.withSweptWingRise(0.95, 0.12, 0.0);
        assertThat(wing)
                .isEqualTo(plain.withCompressibilityRise(0.95 - 0.12 - 0.1077217345015942, 0.1));
        // where drag diverges, it grows by 0.1 of the coefficient for each Mach number
        double divergence = 0.95 - 0.12 - 0.05;
        double step = 1e-5;
        double slope =
                (wing.drag(5e5, divergence + step, 1e4, TWO)
                                - wing.drag(5e5, divergence - step, 1e4, TWO))
                        / (2.0 * step * 1e6);
        assertThat(slope).isCloseTo(0.1, within(1e-6));
        double sweep = StrictMath.toRadians(30.0);
        double cosine = StrictMath.cos(sweep);
        assertThat(plain.withSweptWingRise(0.95, 0.12, sweep).drag(5e5, 0.86, 1e4, TWO))
                .isCloseTo(
                        plain.drag(5e5, 0.86, 1e4, TWO)
                                + 1e6
                                        * 20.0
                                        * StrictMath.pow(
                                                0.86
                                                        - 0.95 / cosine
                                                        + 0.12 / (cosine * cosine)
                                                        + 0.05 / (cosine * cosine * cosine)
                                                        + StrictMath.cbrt(0.1 / 80.0),
                                                4),
                        within(1e-7));
    }

    @Test
    @DisplayName("answers no number that is none with a figure")
    void notNumbers() {
        ParabolicPolar polar =
                ParabolicPolar.ofSi(100.0, 0.02, 0.05).withCompressibilityRise(0.8, 0.1);
        double none = Double.NaN;
        assertThat(polar.drag(none, 0.5, 1e4, TWO)).isNaN();
        assertRefused(() -> polar.drag(-1.0, 0.5, 1e4, TWO));
        assertRefused(() -> polar.drag(1e5, none, 1e4, TWO));
        assertRefused(() -> polar.drag(1e5, 0.5, none, TWO));
        assertRefused(() -> polar.drag(1e5, 0.5, 0.0, TWO));
        JetThrust flat = JET.withFlatRating(15.0, 0.01);
        for (JetThrust jet : new JetThrust[] {JET, flat}) {
            assertRefused(() -> jet.thrust(none, 5e4, 260.0, TWO));
            assertRefused(() -> jet.thrust(0.5, none, 260.0, TWO));
            assertRefused(() -> jet.thrust(0.5, 5e4, none, TWO));
        }
        assertRefused(() -> PROPELLER.thrust(none, 5e4, 260.0, TWO));
        assertRefused(() -> PROPELLER.thrust(0.2, none, 260.0, TWO));
        assertRefused(() -> PROPELLER.thrust(0.2, 5e4, none, TWO));
        FuelFlowLaw[] fuels = {
            ThrustSpecificFuel.ofSi(1e-5, 1e-5),
            ThrustSpecificFuel.ofSi(1e-5, 1e-5).withIdle(0.1),
            PowerSpecificFuel.ofSi(PROPELLER, 8e-8)
        };
        for (FuelFlowLaw fuel : fuels) {
            assertRefused(() -> fuel.fuelFlow(none, 0.2, 5e4, 260.0, TWO));
            assertRefused(() -> fuel.fuelFlow(1000.0, none, 5e4, 260.0, TWO));
            assertRefused(() -> fuel.fuelFlow(1000.0, 0.2, none, 260.0, TWO));
            assertRefused(() -> fuel.fuelFlow(1000.0, 0.2, 5e4, none, TWO));
        }
    }

    private static void assertRefused(ThrowingCallable question) {
        assertThatThrownBy(question).isInstanceOf(OutsideModelException.class);
    }

    @Test
    @DisplayName("refuses what cannot be, in one sentence")
    void refuses() {
        assertThat(ParabolicPolar.covers(0.0, 0.02, 0.05)).isFalse();
        assertThatThrownBy(() -> ParabolicPolar.ofSi(0.0, 0.02, 0.05))
                .isInstanceOf(OutsideModelException.class)
                .hasMessageContaining("wing area must be from 0.1 to 5000.0 m², but was 0.0 m²");
        assertThatThrownBy(() -> JET.withMachLapse(2.0, 0.5))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage(
                        "a jet engine must have thrust up to Mach 2.0, but with falls of 2.0 and"
                                + " 0.5 it had none at Mach 2.0");
        assertThatThrownBy(() -> JET.thrust(Double.NaN, 5e4, 260.0, TWO))
                .isInstanceOf(OutsideModelException.class);
        assertThatThrownBy(() -> JET.thrust(0.5, Double.NaN, 260.0, TWO))
                .isInstanceOf(OutsideModelException.class);
        assertThatThrownBy(
                        () ->
                                JET.withFlatRating(15.0, 0.05)
                                        .thrust(0.5, 101325.0, 288.15 + 36.0, TWO))
                .isInstanceOf(OutsideModelException.class)
                .hasMessageContaining("an engine so hot has no thrust left");
        assertThatThrownBy(
                        () ->
                                ParabolicPolar.ofSi(100.0, 0.02, 0.05)
                                        .withEngineOutDrag(2, 0.5)
                                        .drag(1e5, 0.5, 1e4, EngineUse.climb(3)))
                .isInstanceOf(OutsideModelException.class)
                .hasMessageContaining("number of engines that run must be from 1.0 to 2.0");
        assertThatThrownBy(() -> PROPELLER.thrust(0.0, 1e5, 288.0, TWO))
                .isInstanceOf(OutsideModelException.class);
        assertThatThrownBy(() -> ParabolicClimb.drag(1e5, 20.0, 0.02, 0.05, 1.2, 0.0))
                .isInstanceOf(OutsideModelException.class)
                .hasMessageContaining("true airspeed");
        assertThat(ParabolicClimb.coversSpeed(0.0)).isFalse();
        assertThat(ParabolicClimb.coversThrust(-1.0)).isFalse();
        assertThat(ParabolicClimb.coversPower(-1.0)).isFalse();
        assertThat(ParabolicClimb.coversPolar(0.0, 0.05)).isFalse();
        assertThat(ParabolicClimb.covers(1e5, 20.0, 0.02, 0.05, 1.2)).isTrue();
        assertThat(ParabolicPolar.coversWing(0.0, 0.8)).isFalse();
    }
}
