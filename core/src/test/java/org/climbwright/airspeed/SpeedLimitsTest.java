package org.climbwright.airspeed;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import org.climbwright.airspeed.SpeedLimits.Limit;
import org.climbwright.atmosphere.AirState;
import org.climbwright.atmosphere.Atmosphere;
import org.climbwright.quantity.OutsideModelException;
import org.climbwright.quantity.altitude.PressureAltitude;
import org.climbwright.quantity.speed.CalibratedAirspeed;
import org.climbwright.quantity.speed.Mach;
import org.climbwright.testing.Streams;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

/** The limits are invented. */
@DisplayName("A band of 210 kn and Mach 0.6 to 340 kn and Mach 0.82")
class SpeedLimitsTest {
    private static final SpeedLimits LIMITS = limits(210, 340, 0.6, 0.82);

    private static SpeedLimits limits(double low, double high, double lowMach, double highMach) {
        return SpeedLimits.of(
                CalibratedAirspeed.ofKnots(low),
                CalibratedAirspeed.ofKnots(high),
                Mach.of(lowMach),
                Mach.of(highMach));
    }

    private static AirState air(double feet) {
        return Atmosphere.standard().at(PressureAltitude.ofFeet(feet));
    }

    private static double pressure(double feet) {
        return air(feet).pressurePa();
    }

    private static double knots(double metresPerSecond) {
        return CalibratedAirspeed.ofMetresPerSecond(metresPerSecond).inKnots();
    }

    @Test
    @DisplayName("ends above at the airspeed when low and at the Mach number when high")
    void upperEnd() {
        assertThat(LIMITS.highestLimit(pressure(10000))).isEqualTo(Limit.CALIBRATED_AIRSPEED);
        assertThat(knots(LIMITS.highestCas(pressure(10000)))).isEqualTo(340.0);
        assertThat(LIMITS.highestLimit(pressure(35000))).isEqualTo(Limit.MACH);
        assertThat(
                        AirspeedConversion.machFromCas(
                                LIMITS.highestCas(pressure(35000)), pressure(35000)))
                .isCloseTo(0.82, within(1e-14));
    }

    @Test
    @DisplayName("ends below at the Mach number when low and at the airspeed when high")
    void lowerEnd() {
        assertThat(LIMITS.lowestLimit(pressure(10000))).isEqualTo(Limit.MACH);
        assertThat(
                        AirspeedConversion.machFromCas(
                                LIMITS.lowestCas(pressure(10000)), pressure(10000)))
                .isCloseTo(0.6, within(1e-14));
        assertThat(LIMITS.lowestLimit(pressure(38000))).isEqualTo(Limit.CALIBRATED_AIRSPEED);
        assertThat(knots(LIMITS.lowestCas(pressure(38000)))).isEqualTo(210.0);
    }

    @Test
    @DisplayName("changes its ends at the crossovers of their speeds")
    void crossovers() {
        assertThat(LIMITS.highestCrossover())
                .contains(
                        Crossover.of(CalibratedAirspeed.ofKnots(340), Mach.of(0.82))
                                .pressureAltitude());
        assertThat(LIMITS.lowestCrossover())
                .contains(
                        Crossover.of(CalibratedAirspeed.ofKnots(210), Mach.of(0.6))
                                .pressureAltitude());
        double upper = LIMITS.highestCrossover().orElseThrow().inFeet();
        assertThat(LIMITS.highestLimit(pressure(upper - 0.01)))
                .isEqualTo(Limit.CALIBRATED_AIRSPEED);
        assertThat(LIMITS.highestLimit(pressure(upper + 0.01))).isEqualTo(Limit.MACH);
    }

    @Test
    @DisplayName("has nothing inside above its top, where the margins say so")
    void top() {
        double top = LIMITS.top().orElseThrow().inFeet();
        assertThat(LIMITS.highestCas(pressure(top - 1)))
                .isGreaterThan(LIMITS.lowestCas(pressure(top - 1)));
        assertThat(LIMITS.highestCas(pressure(top + 1)))
                .isLessThan(LIMITS.lowestCas(pressure(top + 1)));
    }

    @Test
    @DisplayName("gives margins in calibrated airspeed, below zero beyond its ends")
    void margins() {
        Airspeeds slow = Airspeeds.from(CalibratedAirspeed.ofKnots(200), air(38000));
        assertThat(LIMITS.marginToLowest(slow).inKnots()).isCloseTo(-10.0, within(1e-9));
        Airspeeds fast = Airspeeds.from(CalibratedAirspeed.ofKnots(345), air(5000));
        assertThat(LIMITS.marginToHighest(fast).inKnots()).isCloseTo(-5.0, within(1e-9));
        Airspeeds climb = Airspeeds.from(CalibratedAirspeed.ofKnots(290), air(5000));
        assertThat(LIMITS.marginToHighest(climb).inKnots()).isCloseTo(50.0, within(1e-9));
        assertThat(LIMITS.marginToHighest(100.0, 50000.0))
                .isEqualTo(LIMITS.highestCas(50000.0) - 100.0);
        assertThat(LIMITS.marginToLowest(100.0, 50000.0))
                .isEqualTo(100.0 - LIMITS.lowestCas(50000.0));
    }

    @Test
    @DisplayName("tells its ends as values, which are the same numbers")
    void values() {
        assertThat(LIMITS.highest(air(35000)).inMetresPerSecond())
                .isEqualTo(LIMITS.highestCas(pressure(35000)));
        assertThat(LIMITS.lowest(air(10000)).inMetresPerSecond())
                .isEqualTo(LIMITS.lowestCas(pressure(10000)));
    }

    @Test
    @DisplayName("may begin at rest, and then has one crossover")
    void fromRest() {
        SpeedLimits upTo = SpeedLimits.upTo(CalibratedAirspeed.ofKnots(340), Mach.of(0.82));
        assertThat(upTo.lowestCas(50000.0)).isZero();
        assertThat(upTo.lowestCrossover()).isEmpty();
        assertThat(upTo.top()).isEmpty();
        assertThat(upTo.highestCrossover()).isEqualTo(LIMITS.highestCrossover());
        assertThat(upTo).hasToString("0 kn and M0 to 340 kn and M0.82").isNotEqualTo(LIMITS);
    }

    @Test
    @DisplayName("deep below the sea ends where its lowest Mach number has no airspeed")
    void deep() {
        SpeedLimits fast = limits(0, 400, 4.9, 5.0);
        assertThat(fast.covers(90000.0)).isTrue();
        assertThat(fast.covers(200000.0)).isFalse();
        assertThat(fast.highestLimit(200000.0)).isEqualTo(Limit.CALIBRATED_AIRSPEED);
        assertThatExceptionOfType(OutsideModelException.class)
                .isThrownBy(() -> fast.lowestCas(200000.0));
        assertThat(LIMITS.covers(Double.NaN)).isFalse();
    }

    @Test
    @DisplayName("comes out of a stream as it went in, and is refused when tampered with")
    void stream() throws IOException {
        assertThat(Streams.roundTrip(LIMITS)).isEqualTo(LIMITS).hasSameHashCodeAs(LIMITS);
        assertThatIllegalArgumentException().isThrownBy(() -> Streams.tampered(LIMITS, 0.82, 0.5));
        assertThatExceptionOfType(OutsideModelException.class)
                .isThrownBy(() -> Streams.tampered(LIMITS, 0.82, 8.2));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Streams.tampered(LIMITS, 0.6, Double.NaN));
    }

    @Nested
    @DisplayName("is refused")
    class Refuses {
        @Test
        @DisplayName("when a lowest speed is not below the highest")
        void reversed() {
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> limits(340, 340, 0.6, 0.82))
                    .withMessage(
                            "the lowest speed of a band must be below the highest, but they were"
                                    + " 340 kn and 340 kn");
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> limits(210, 340, 0.83, 0.82))
                    .withMessage(
                            "the lowest speed of a band must be below the highest, but they were"
                                    + " M0.83 and M0.82");
        }

        @Test
        @DisplayName("at no pressure, and for no speed")
        void noNumber() {
            assertThatExceptionOfType(OutsideModelException.class)
                    .isThrownBy(() -> LIMITS.highestCas(Double.NaN))
                    .withMessageStartingWith("static pressure must be from 0.1 to 1000000.0 Pa");
            assertThatExceptionOfType(OutsideModelException.class)
                    .isThrownBy(() -> LIMITS.marginToHighest(Double.NaN, 50000.0))
                    .withMessageStartingWith("calibrated airspeed must be from 0.0 to 1701.4");
            assertThatExceptionOfType(OutsideModelException.class)
                    .isThrownBy(() -> LIMITS.marginToLowest(-1.0, 50000.0))
                    .withMessageStartingWith("calibrated airspeed must be from 0.0 to 1701.4");
        }
    }
}
