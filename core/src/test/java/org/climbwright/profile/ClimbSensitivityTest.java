package org.climbwright.profile;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.climbwright.profile.ProfileScene.BOTTOM;
import static org.climbwright.profile.ProfileScene.LEVEL;
import static org.climbwright.profile.ProfileScene.climb;
import static org.climbwright.profile.ProfileScene.programme;
import static org.climbwright.profile.ProfileScene.speeds;

import java.time.Duration;
import java.util.List;
import org.climbwright.atmosphere.Atmosphere;
import org.climbwright.path.ClimbState;
import org.climbwright.path.Side;
import org.climbwright.path.SpeedSchedule;
import org.climbwright.performance.AeroplaneLimits;
import org.climbwright.performance.Bleed;
import org.climbwright.performance.InventedAeroplanes;
import org.climbwright.performance.ReducedThrust;
import org.climbwright.quantity.OutsideModelException;
import org.climbwright.quantity.altitude.PressureAltitude;
import org.climbwright.quantity.path.Mass;
import org.climbwright.quantity.speed.AirspeedDifference;
import org.climbwright.quantity.speed.AlongTrackWind;
import org.climbwright.quantity.speed.CalibratedAirspeed;
import org.climbwright.quantity.speed.Mach;
import org.climbwright.quantity.temperature.TemperatureDifference;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

@DisplayName("A climb with one thing changed")
class ClimbSensitivityTest {
    private static final Duration MINUTES = Duration.ofMinutes(5);
    private static final ReducedThrust REDUCED =
            ReducedThrust.of(0.9, PressureAltitude.ofFeet(8000), PressureAltitude.ofFeet(12000));

    private static ClimbSensitivity of(double massKg, ClimbProgramme programme) {
        return ClimbSensitivity.of(climb(massKg, programme, ProfileScene.calm()), BOTTOM, LEVEL);
    }

    private static ClimbDifference to(ClimbChange change) {
        return of(58000, programme()).to(change);
    }

    private static ClimbChange heavier(double kilograms) {
        return kilograms < 0.0
                ? ClimbChange.lighterBy(Mass.ofKilograms(-kilograms))
                : ClimbChange.heavierBy(Mass.ofKilograms(kilograms));
    }

    private static ClimbChange warmer(double kelvins) {
        return ClimbChange.warmerBy(TemperatureDifference.ofKelvins(kelvins));
    }

    private static ClimbChange headwind(double knots) {
        return ClimbChange.windBy(AlongTrackWind.ofKnots(-knots));
    }

    private static ClimbChange faster(double knots) {
        return ClimbChange.calibratedAirspeedBy(AirspeedDifference.ofKnots(knots));
    }

    @Test
    @DisplayName("takes longer, farther and more fuel with more mass, and less of each with less")
    void mass() {
        ClimbDifference heavier = to(heavier(2000));
        assertThat(heavier.moreTimeS()).isPositive();
        assertThat(heavier.moreDistanceM()).isPositive();
        assertThat(heavier.moreFuelKg()).isPositive();
        assertThat(heavier.endsLower()).isFalse();
        ClimbDifference lighter = to(heavier(-2000));
        assertThat(lighter.moreTimeS()).isNegative();
        assertThat(lighter.moreDistanceM()).isNegative();
        assertThat(lighter.moreFuelKg()).isNegative();
    }

    @Test
    @DisplayName("takes longer and more fuel on a warmer day, which costs this aeroplane thrust")
    void temperature() {
        assertThat(to(warmer(10)).moreTimeS()).isPositive();
        assertThat(to(warmer(10)).moreFuelKg()).isPositive();
        assertThat(to(warmer(-10)).moreTimeS()).isNegative();
    }

    @Test
    @DisplayName("is the climb that is flown when a warm day is given as such")
    void warmDay() {
        ClimbProfile warm =
                climb(58000, programme(), ProfileScene.warmer(15)).between(BOTTOM, LEVEL);
        ClimbProfile warmed = to(warmer(15)).after();
        assertThat(warmed.timeS()).isCloseTo(warm.timeS(), within(1e-6));
        assertThat(warmed.fuel().inKilograms()).isCloseTo(warm.fuel().inKilograms(), within(1e-6));
        // the altitudes, and with them the length of a degree up there, differ by some 20 m
        assertThat(metres(warmed)).isCloseTo(metres(warm), within(1.0));
    }

    @Test
    @DisplayName("is as much shorter in a headwind as the wind carries it back, in the same time")
    void headwindShortens() {
        ClimbDifference windy = to(headwind(30));
        double back = 30 * 1852.0 / 3600.0 * windy.before().timeS();
        assertThat(windy.moreTimeS()).isCloseTo(0.0, within(1e-9 * windy.before().timeS()));
        assertThat(windy.moreFuelKg()).isCloseTo(0.0, within(1e-6));
        // at the mean height of 5 to 6 km the earth's surface is 0.1 % shorter
        assertThat(windy.moreDistanceM()).isCloseTo(-back, within(0.0015 * back));
    }

    @Test
    @DisplayName("goes nowhere that is known in an unknown wind, with more headwind or not")
    void unknownWind() {
        AeroplaneClimb climb =
                climb(
                        58000,
                        programme(),
                        ProfileScene.air(Atmosphere.standard(), InventedAeroplanes.unknown()));
        ClimbDifference windy = ClimbSensitivity.of(climb, BOTTOM, LEVEL).to(headwind(30));
        assertThat(windy.moreDistanceM()).isNaN();
        assertThat(windy.moreTimeS()).isZero();
        assertThat(windy.after().at(LEVEL).distance()).isEmpty();
    }

    @Test
    @DisplayName("takes longer with bleed all the way, and with reduced thrust")
    void lessThrust() {
        ClimbDifference bleed = to(ClimbChange.bleedAllTheWay(Bleed.ENGINE));
        assertThat(bleed.moreTimeS()).isPositive();
        assertThat(bleed.moreFuelKg()).isPositive();
        assertThat(to(ClimbChange.thrust(REDUCED)).moreTimeS()).isPositive();
        ClimbSensitivity reduced = of(58000, programme().withReducedThrust(REDUCED));
        assertThat(reduced.to(ClimbChange.thrust(ReducedThrust.none())).moreTimeS())
                .isEqualTo(-to(ClimbChange.thrust(REDUCED)).moreTimeS());
    }

    @Test
    @DisplayName("has both kinds of bleed where one is on anyway")
    void bothBleeds() {
        ClimbDifference first = to(ClimbChange.bleedAllTheWay(Bleed.ENGINE));
        AeroplaneClimb both =
                ClimbChange.bleedAllTheWay(Bleed.AIRFRAME).of(first.after().climb(), BOTTOM);
        assertThat(both.programme().engines().orElseThrow().bleed())
                .isEqualTo(Bleed.ENGINE_AND_AIRFRAME);
    }

    @Test
    @DisplayName("keeps its limit whatever the speed, and its Mach number with another airspeed")
    void speed() {
        ClimbProfile other = to(faster(20)).after();
        assertThat(other.at(PressureAltitude.ofFeet(5000)).calibratedAirspeed().inKnots())
                .isEqualTo(250);
        assertThat(other.at(PressureAltitude.ofFeet(20000)).calibratedAirspeed().inKnots())
                .isCloseTo(310, within(1e-9));
        assertThat(other.at(LEVEL).mach()).isEqualTo(Mach.of(0.74));
        ClimbProfile mach = to(ClimbChange.machBy(-0.02)).after();
        assertThat(mach.at(LEVEL).mach().number()).isCloseTo(0.72, within(1e-12));
    }

    @ParameterizedTest(name = "by {0}")
    @MethodSource("changesOfNothing")
    @DisplayName("is the same to the last bit when nothing is changed")
    void nothing(ClimbChange nothing) {
        AeroplaneClimb climb =
                climb(
                        58000,
                        programme(),
                        ProfileScene.air(MoistColumn.air(), new ProfileScene.ShearedWind(5, 2, 7)));
        ClimbDifference same = ClimbSensitivity.of(climb, BOTTOM, LEVEL).to(nothing);
        assertThat(same.moreTimeS()).isZero();
        assertThat(same.moreDistanceM()).isZero();
        assertThat(same.moreFuelKg()).isZero();
        assertThat(same.higherTop().inMetres()).isZero();
        ClimbState one = same.before().at(PressureAltitude.ofFeet(20000));
        ClimbState two = same.after().at(PressureAltitude.ofFeet(20000));
        assertThat(two.timeS()).isEqualTo(one.timeS());
        assertThat(two.air().geometricAltitude()).isEqualTo(one.air().geometricAltitude());
        assertThat(two.air().relativeHumidity()).isEqualTo(one.air().relativeHumidity());
    }

    static List<ClimbChange> changesOfNothing() {
        return List.of(
                heavier(0),
                ClimbChange.lighterBy(Mass.ofKilograms(0)),
                warmer(0),
                headwind(0),
                faster(0),
                ClimbChange.machBy(0),
                ClimbChange.accelerationShareBy(0),
                ClimbChange.bleedAllTheWay(Bleed.NONE),
                ClimbChange.thrust(ReducedThrust.none()),
                ClimbChange.of("nothing", climb -> climb));
    }

    /** Two steps of one change, the second half the first. */
    record Steps(ClimbChange whole, ClimbChange half) {
        @Override
        public String toString() {
            return whole.text();
        }
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("smallSteps")
    @DisplayName("differs half as much, within 5 %, with half of a small step")
    void linear(Steps steps) {
        // faster than its best speeds: at a best a difference is square in the step
        SpeedSchedule fast = speeds().withSpeeds(CalibratedAirspeed.ofKnots(330), Mach.of(0.74));
        ClimbSensitivity sensitivity = of(58000, programme().withSpeeds(fast));
        ClimbDifference whole = sensitivity.to(steps.whole());
        ClimbDifference half = sensitivity.to(steps.half());
        assertThat(half.moreDistanceM() / whole.moreDistanceM()).isCloseTo(0.5, within(0.025));
        if (Math.abs(whole.moreTimeS()) > 1e-6) {
            assertThat(half.moreTimeS() / whole.moreTimeS()).isCloseTo(0.5, within(0.025));
            assertThat(half.moreFuelKg() / whole.moreFuelKg()).isCloseTo(0.5, within(0.025));
        }
    }

    static List<Steps> smallSteps() {
        return List.of(
                new Steps(heavier(500), heavier(250)),
                new Steps(warmer(2), warmer(1)),
                new Steps(headwind(20), headwind(10)),
                new Steps(faster(2), faster(1)),
                new Steps(ClimbChange.machBy(0.002), ClimbChange.machBy(0.001)),
                new Steps(
                        ClimbChange.accelerationShareBy(0.02),
                        ClimbChange.accelerationShareBy(0.01)));
    }

    @Nested
    @DisplayName("that ends lower than before")
    class EndsLower {
        private final ClimbDifference lower = to(heavier(42000));

        @Test
        @DisplayName("tells so, and is compared at its own top with the climb that goes through it")
        void comparedAtItsTop() {
            assertThat(lower.endsLower()).isTrue();
            assertThat(lower.higherTop().inFeet()).isNegative();
            assertThat(lower.comparedAt()).isEqualTo(lower.after().top()).isLessThan(LEVEL);
            ClimbState through = lower.before().at(lower.comparedAt(), Side.BELOW);
            assertThat(lower.moreTimeS()).isEqualTo(lower.after().timeS() - through.timeS());
            assertThat(lower.moreFuelKg())
                    .isCloseTo(
                            lower.after().fuel().inKilograms()
                                    - (58000 - through.mass().inKilograms()),
                            within(1e-9));
            assertThat(lower.moreTimeS()).isPositive();
        }

        @Test
        @DisplayName("is compared at the same level when it is the other that gets higher")
        void theOtherWay() {
            ClimbDifference higher = of(100000, programme()).to(heavier(-42000));
            assertThat(higher.endsLower()).isFalse();
            assertThat(higher.comparedAt()).isEqualTo(lower.comparedAt());
            assertThat(higher.moreTimeS()).isEqualTo(-lower.moreTimeS());
            assertThat(higher.moreFuelKg()).isCloseTo(-lower.moreFuelKg(), within(1e-9));
        }

        @Test
        @DisplayName("is compared before a level is held that is just its top")
        void heldLevel() {
            PressureAltitude held = PressureAltitude.ofFlightLevel(300);
            ClimbProgramme holds =
                    programme().withHeldLevels(List.of(HeldLevel.during(held, MINUTES)));
            ClimbChange lowerCeiling =
                    ClimbChange.of(
                            "certified to FL300",
                            climb ->
                                    new AeroplaneClimb(
                                            climb.aeroplane()
                                                    .withLimits(
                                                            AeroplaneLimits.none()
                                                                    .withCertifiedCeiling(held)),
                                            climb.mass(),
                                            climb.programme(),
                                            climb.air()));
            ClimbDifference ends = of(58000, holds).to(lowerCeiling);
            assertThat(ends.comparedAt()).isEqualTo(held);
            assertThat(ends.before().timeS() - ends.after().timeS()).isGreaterThan(60.0);
            assertThat(ends.moreTimeS()).isCloseTo(0.0, within(1e-9));
            assertThat(ends.moreFuelKg()).isCloseTo(0.0, within(1e-9));
        }

        @Test
        @DisplayName("stands last among what saves, whatever it saves to there")
        void last() {
            ClimbSensitivity sensitivity = of(58000, programme());
            List<ClimbDifference> ordered =
                    sensitivity.whatSavesMostFuel(
                            List.of(heavier(42000), heavier(1000), heavier(-1000)));
            assertThat(ordered)
                    .extracting(difference -> difference.change().text())
                    .containsExactly("1000 kg lighter", "1000 kg heavier", "42000 kg heavier");
        }
    }

    @Test
    @DisplayName("stands in the order of what it saves of the time")
    void order() {
        ClimbSensitivity sensitivity = of(58000, programme());
        List<ClimbDifference> ordered = sensitivity.whatSavesMostTime(sensitivity.stepsOfThePlan());
        assertThat(ordered).hasSize(6);
        assertThat(ordered)
                .extracting(ClimbDifference::moreTimeS)
                .isSortedAccordingTo(Double::compare);
        assertThat(ordered.get(0).moreTimeS()).isNegative();
    }

    @Nested
    @DisplayName("by the steps of the plan")
    class StepsOfThePlan {
        private static List<String> steps(AeroplaneClimb climb) {
            return ClimbSensitivity.of(climb, BOTTOM, LEVEL).stepsOfThePlan().stream()
                    .map(ClimbChange::text)
                    .toList();
        }

        @Test
        @DisplayName("has a step up and a step down of both speeds and the share")
        void all() {
            assertThat(steps(climb(58000, programme(), ProfileScene.calm())))
                    .containsExactly(
                            "10 kn faster",
                            "M0.01 faster",
                            "0.1 more of the excess power climbs while accelerating",
                            "10 kn slower",
                            "M0.01 slower",
                            "0.1 less of the excess power climbs while accelerating");
        }

        @Test
        @DisplayName("leaves out what the aeroplane, the schedule or the share has no room for")
        void noRoom() {
            AeroplaneLimits limits =
                    AeroplaneLimits.none()
                            .withMaximumOperatingSpeed(CalibratedAirspeed.ofKnots(295))
                            .withMaximumOperatingMach(Mach.of(0.745));
            ClimbProgramme programme =
                    ClimbProgramme.of(speeds().withMinimum(CalibratedAirspeed.ofKnots(285)), 0.0);
            AeroplaneClimb climb =
                    new AeroplaneClimb(
                            ProfileScene.jet().withLimits(limits),
                            Mass.ofKilograms(58000),
                            programme,
                            ProfileScene.calm());
            assertThat(steps(climb))
                    .containsExactly(
                            "0.1 more of the excess power climbs while accelerating",
                            "M0.01 slower");
        }

        @Test
        @DisplayName("has all of the thrust among them where it is reduced")
        void thrust() {
            ClimbProgramme reduced = programme().withReducedThrust(REDUCED);
            assertThat(steps(climb(58000, reduced, ProfileScene.calm())))
                    .hasSize(7)
                    .last()
                    .isEqualTo("all of the thrust");
        }
    }

    @Nested
    @DisplayName("is refused")
    class Refuses {
        @Test
        @DisplayName("with air more than 50 K warmer")
        void tooWarm() {
            assertThatThrownBy(() -> warmer(50.1))
                    .isInstanceOf(OutsideModelException.class)
                    .hasMessageContaining("50.1")
                    .hasMessageContaining("K");
        }

        @Test
        @DisplayName("with more off the mass than there is")
        void negativeMass() {
            assertThatThrownBy(() -> to(heavier(-58001)))
                    .isInstanceOf(IllegalArgumentException.class)
                    .hasMessageContaining("mass");
        }

        @Test
        @DisplayName("with a share below 0 or not a number")
        void share() {
            assertThatThrownBy(() -> to(ClimbChange.accelerationShareBy(-0.5)))
                    .isInstanceOf(OutsideModelException.class)
                    .hasMessageContaining("share");
            assertThatThrownBy(() -> ClimbChange.accelerationShareBy(Double.NaN))
                    .isInstanceOf(IllegalArgumentException.class)
                    .hasMessageContaining("NaN");
        }
    }

    @Test
    @DisplayName("can be read, with where the two are compared")
    void text() {
        assertThat(to(headwind(10)).toString())
                .startsWith("10 kn more headwind: ")
                .contains(LEVEL.text())
                .doesNotContain("the top");
        assertThat(to(heavier(42000)).toString()).contains(", and the top -");
        assertThat(ClimbChange.bleedAllTheWay(Bleed.AIRFRAME))
                .hasToString("bleed for airframe anti-ice all the way");
        assertThat(warmer(-5)).hasToString("5 K colder");
    }

    private static double metres(ClimbProfile profile) {
        return profile.at(profile.top()).distance().orElseThrow().inMetres();
    }
}
