package org.climbwright.performance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Optional;
import org.climbwright.atmosphere.StandardAir;
import org.climbwright.atmosphere.wind.Wind;
import org.climbwright.atmosphere.wind.Winds;
import org.climbwright.path.Side;
import org.climbwright.quantity.altitude.PressureAltitude;
import org.climbwright.quantity.path.Mass;
import org.climbwright.quantity.speed.CalibratedAirspeed;
import org.climbwright.quantity.speed.Mach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("The best speed of a climb")
class BestClimbTest {
    private static final CalibratedAirspeed LEAST = CalibratedAirspeed.ofKnots(160);
    private static final PressureAltitude LEVEL = PressureAltitude.ofFeet(5000);
    private static final ClimbConditions TWIN =
            InventedAeroplanes.conditions(InventedAeroplanes.CALM);

    @Test
    @DisplayName("for the angle is that of least drag, where speed takes nothing of the climb")
    void angle() {
        // at a constant true airspeed and lift near to weight: q = W/S sqrt(K/CD0)
        BestClimb best = BestClimb.angle(TWIN, LEVEL, Side.ABOVE, HeldSpeed.TRUE_AIRSPEED, LEAST);
        double cosine = StrictMath.cos(StrictMath.asin(best.point().sine()));
        double weight = 60000.0 * 9.80665 * cosine;
        double q = weight / 120.0 * Math.sqrt(0.045 / 0.02);
        double mach = Math.sqrt(q / (0.7 * StandardAir.pressureFromAltitude(LEVEL.inMetres())));
        // the golden section halts at 1e-8; a maximum is flat to the root of rounding
        assertThat(best.point().mach().number()).isCloseTo(mach, within(1e-6));
        assertThat(best.bound()).isEmpty();
        assertThat(best.speed().held()).isEqualTo(HeldSpeed.TRUE_AIRSPEED);
        // sin g = T/W - cos g / (L/D)max, of which 1 / (2 sqrt(CD0 K)) is the last
        double thrust = 2.0 * StandardAir.pressureFromAltitude(LEVEL.inMetres());
        assertThat(best.point().sine())
                .isCloseTo(
                        thrust / (60000.0 * 9.80665) - cosine * 2.0 * Math.sqrt(0.02 * 0.045),
                        within(1e-12));
    }

    @Test
    @DisplayName("for the rate is faster than for the angle")
    void rate() {
        for (HeldSpeed held : HeldSpeed.values()) {
            BestClimb rate = BestClimb.rate(TWIN, LEVEL, Side.ABOVE, held, LEAST);
            BestClimb angle = BestClimb.angle(TWIN, LEVEL, Side.ABOVE, held, LEAST);
            assertThat(rate.point().mach()).isGreaterThan(angle.point().mach());
            assertThat(rate.point().pressureAltitudeRate())
                    .isGreaterThan(angle.point().pressureAltitudeRate());
            assertThat(rate.point().climbAngle()).isLessThan(angle.point().climbAngle());
            assertThat(rate.toString()).contains(" at 5000 ft, M0.");
        }
    }

    @Test
    @DisplayName("over the ground is slower against the wind and faster with it")
    void overGround() {
        double calm = overGround(Winds.calm()).orElseThrow().point().mach().number();
        double head = overGround(wind(-40.0)).orElseThrow().point().mach().number();
        double tail = overGround(wind(40.0)).orElseThrow().point().mach().number();
        assertThat(head).isLessThan(calm);
        assertThat(tail).isGreaterThan(calm);
        double angle =
                BestClimb.angle(TWIN, LEVEL, Side.ABOVE, HeldSpeed.MACH, LEAST)
                        .point()
                        .mach()
                        .number();
        assertThat(calm).isCloseTo(angle, within(1e-6));
    }

    @Test
    @DisplayName("over the ground is not known without the wind, or where the track is not kept")
    void noGround() {
        assertThat(overGround(InventedAeroplanes.unknown())).isEmpty();
        assertThat(overGround(wind(-400.0))).isEmpty();
    }

    private static Winds wind(double fromBehind) {
        return Winds.uniform(Wind.ofComponents(fromBehind, 0.0));
    }

    private static Optional<BestClimb> overGround(Winds winds) {
        return BestClimb.overGround(
                TWIN.withAir(TWIN.air().withWinds(winds)),
                LEVEL,
                Side.ABOVE,
                HeldSpeed.MACH,
                LEAST);
    }

    @Test
    @DisplayName("says which bound keeps a better one away")
    void bounds() {
        // least speed above the best
        assertThat(
                        BestClimb.angle(
                                        TWIN,
                                        LEVEL,
                                        Side.ABOVE,
                                        HeldSpeed.CALIBRATED_AIRSPEED,
                                        CalibratedAirspeed.ofKnots(320))
                                .bound())
                .contains(BestClimb.Bound.LEAST_SPEED);
        // so much thrust that faster is always better
        Aeroplane strong = InventedAeroplanes.jet(2, 120.0, 0.02, 0.045, 4.0);
        AeroplaneLimits limits = InventedAeroplanes.twin().limits();
        ClimbConditions fast =
                ClimbConditions.of(
                        strong.withLimits(limits),
                        InventedAeroplanes.CALM,
                        Mass.ofKilograms(90000));
        BestClimb low =
                BestClimb.rate(fast, LEVEL, Side.ABOVE, HeldSpeed.CALIBRATED_AIRSPEED, LEAST);
        assertThat(low.bound()).contains(BestClimb.Bound.MAXIMUM_OPERATING_SPEED);
        assertThat(low.point().calibratedAirspeed().inKnots()).isCloseTo(350.0, within(1e-9));
        BestClimb high =
                BestClimb.rate(
                        fast,
                        PressureAltitude.ofFlightLevel(300),
                        Side.ABOVE,
                        HeldSpeed.MACH,
                        LEAST);
        assertThat(high.bound()).contains(BestClimb.Bound.MAXIMUM_OPERATING_MACH);
        assertThat(high.point().mach()).isEqualTo(Mach.of(0.82));
        ClimbConditions unlimited =
                ClimbConditions.of(strong, InventedAeroplanes.CALM, Mass.ofKilograms(90000));
        assertThat(
                        BestClimb.rate(
                                        unlimited,
                                        PressureAltitude.ofFlightLevel(300),
                                        Side.ABOVE,
                                        HeldSpeed.MACH,
                                        LEAST)
                                .bound())
                .contains(BestClimb.Bound.END_OF_THE_MODEL);
    }

    @Test
    @DisplayName("is the higher of two maxima")
    void twoMaxima() {
        Aeroplane camel =
                Aeroplane.of(
                        1,
                        (liftN, mach, q, use) ->
                                50000.0 - 20000.0 * hump(mach, 0.4) - 21000.0 * hump(mach, 0.7),
                        (mach, pressurePa, temperatureK, use) -> 60000.0,
                        (thrustN, mach, pressurePa, temperatureK, use) -> 1.0);
        ClimbConditions conditions =
                ClimbConditions.of(camel, InventedAeroplanes.CALM, Mass.ofKilograms(30000));
        BestClimb best =
                BestClimb.angle(conditions, LEVEL, Side.ABOVE, HeldSpeed.TRUE_AIRSPEED, LEAST);
        assertThat(best.point().mach().number()).isCloseTo(0.7, within(1e-3));
    }

    private static double hump(double mach, double at) {
        double off = (mach - at) / 0.05;
        return 1.0 / (1.0 + off * off);
    }

    @Test
    @DisplayName("refuses a least speed that leaves none")
    void refuses() {
        assertThatThrownBy(
                        () ->
                                BestClimb.rate(
                                        TWIN,
                                        LEVEL,
                                        Side.ABOVE,
                                        HeldSpeed.MACH,
                                        CalibratedAirspeed.ofKnots(360)))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("the fastest at 5000 ft, but was 360 kn");
    }
}
