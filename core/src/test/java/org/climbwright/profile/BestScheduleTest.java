package org.climbwright.profile;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.climbwright.profile.ProfileScene.BOTTOM;
import static org.climbwright.profile.ProfileScene.LEVEL;
import static org.climbwright.profile.ProfileScene.climb;
import static org.climbwright.profile.ProfileScene.programme;

import java.util.Optional;
import org.climbwright.path.SpeedSchedule;
import org.climbwright.performance.AeroplaneLimits;
import org.climbwright.quantity.altitude.PressureAltitude;
import org.climbwright.quantity.path.Mass;
import org.climbwright.quantity.speed.CalibratedAirspeed;
import org.climbwright.quantity.speed.Mach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("The best calibrated airspeed of a climb")
class BestScheduleTest {
    private static final AeroplaneClimb CLIMB = climb(58000, programme(), ProfileScene.calm());

    private static CalibratedAirspeed knots(double knots) {
        return CalibratedAirspeed.ofKnots(knots);
    }

    private static ClimbProfile flown(double knots) {
        SpeedSchedule speeds = programme().speeds().withSpeeds(knots(knots), Mach.of(0.74));
        return climb(58000, programme().withSpeeds(speeds), ProfileScene.calm())
                .between(BOTTOM, LEVEL);
    }

    @Test
    @DisplayName("takes no more fuel than any of the whole knots, and lies beside the best of them")
    void leastFuel() {
        BestSchedule best =
                BestSchedule.ofLeastFuel(CLIMB, BOTTOM, LEVEL, knots(215), knots(335))
                        .orElseThrow();
        double least = Double.POSITIVE_INFINITY;
        int at = 0;
        for (int knots = 215; knots <= 335; knots++) {
            double fuel = flown(knots).fuel().inKilograms();
            if (fuel < least) {
                least = fuel;
                at = knots;
            }
        }
        assertThat(best.isAtBound()).isFalse();
        assertThat(best.profile().fuel().inKilograms()).isLessThanOrEqualTo(least);
        assertThat(best.calibratedAirspeed().inKnots()).isCloseTo(at, within(1.0));
        assertThat(best.difference().moreFuelKg()).isNegative();
        assertThat(best.difference().before().fuel()).isEqualTo(flown(290).fuel());
    }

    @Test
    @DisplayName("takes no more time than its neighbours a tenth of a knot away")
    void leastTime() {
        BestSchedule best =
                BestSchedule.ofLeastTime(CLIMB, BOTTOM, LEVEL, knots(215), knots(335))
                        .orElseThrow();
        double speed = best.calibratedAirspeed().inKnots();
        assertThat(best.profile().timeS())
                .isLessThan(flown(speed - 0.1).timeS())
                .isLessThan(flown(speed + 0.1).timeS());
        assertThat(best.difference().moreTimeS()).isNegative();
        assertThat(best.toString())
                .startsWith(best.calibratedAirspeed().text())
                .doesNotContain("bound");
    }

    @Test
    @DisplayName("keeps the Mach number and the limit")
    void keeps() {
        ClimbProfile best =
                BestSchedule.ofLeastTime(CLIMB, BOTTOM, LEVEL, knots(260), knots(335))
                        .orElseThrow()
                        .profile();
        assertThat(best.at(PressureAltitude.ofFeet(5000)).calibratedAirspeed())
                .isEqualTo(knots(250));
        assertThat(best.at(LEVEL).mach()).isEqualTo(Mach.of(0.74));
    }

    @Test
    @DisplayName("is told to be at a bound that keeps a better one away")
    void atTheBound() {
        BestSchedule best =
                BestSchedule.ofLeastFuel(CLIMB, BOTTOM, LEVEL, knots(315), knots(335))
                        .orElseThrow();
        assertThat(best.isAtBound()).isTrue();
        assertThat(best.calibratedAirspeed()).isEqualTo(knots(315));
        assertThat(best.toString()).contains("at the bound");
    }

    @Test
    @DisplayName("is none where no speed reaches the level")
    void none() {
        AeroplaneClimb heavy = climb(110000, programme(), ProfileScene.calm());
        assertThat(BestSchedule.ofLeastFuel(heavy, BOTTOM, LEVEL, knots(250), knots(320)))
                .isEqualTo(Optional.empty());
    }

    @Test
    @DisplayName("is refused with bounds the wrong way round, or above the maximum operating speed")
    void refused() {
        assertThatThrownBy(
                        () ->
                                BestSchedule.ofLeastFuel(
                                        CLIMB, BOTTOM, LEVEL, knots(300), knots(250)))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("300")
                .hasMessageContaining("250");
        AeroplaneClimb limited =
                new AeroplaneClimb(
                        ProfileScene.jet()
                                .withLimits(
                                        AeroplaneLimits.none()
                                                .withMaximumOperatingSpeed(knots(330))),
                        Mass.ofKilograms(58000),
                        programme(),
                        ProfileScene.calm());
        assertThatThrownBy(
                        () ->
                                BestSchedule.ofLeastFuel(
                                        limited, BOTTOM, LEVEL, knots(250), knots(331)))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("330")
                .hasMessageContaining("331");
    }
}
