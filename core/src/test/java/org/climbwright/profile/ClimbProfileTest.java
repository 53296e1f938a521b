package org.climbwright.profile;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.climbwright.profile.ProfileScene.BOTTOM;
import static org.climbwright.profile.ProfileScene.LEVEL;
import static org.climbwright.profile.ProfileScene.climb;
import static org.climbwright.profile.ProfileScene.events;
import static org.climbwright.profile.ProfileScene.profile;
import static org.climbwright.profile.ProfileScene.programme;
import static org.climbwright.profile.ProfileScene.speeds;

import java.time.Duration;
import java.util.List;
import org.climbwright.atmosphere.AltitudeDatum;
import org.climbwright.atmosphere.Atmosphere;
import org.climbwright.atmosphere.wind.Winds;
import org.climbwright.gradient.restriction.AltitudeRestriction;
import org.climbwright.gradient.restriction.Level;
import org.climbwright.gradient.restriction.Restriction;
import org.climbwright.path.ClimbState;
import org.climbwright.path.Side;
import org.climbwright.path.SpeedSchedule;
import org.climbwright.performance.AeroplaneLimits;
import org.climbwright.performance.ReducedThrust;
import org.climbwright.profile.ProfileEvent.Kind;
import org.climbwright.quantity.OutsideModelException;
import org.climbwright.quantity.altitude.PressureAltitude;
import org.climbwright.quantity.path.GroundDistance;
import org.climbwright.quantity.path.Mass;
import org.climbwright.quantity.pressure.AltimeterSetting;
import org.climbwright.quantity.speed.CalibratedAirspeed;
import org.climbwright.quantity.speed.Mach;
import org.climbwright.quantity.speed.PressureAltitudeRate;
import org.climbwright.quantity.temperature.IsaDeviation;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("A climb by thrust and drag")
class ClimbProfileTest {
    private static PressureAltitude level(double flightLevel) {
        return PressureAltitude.ofFlightLevel(flightLevel);
    }

    @Test
    @DisplayName("goes from its bottom to its level, and gets lighter by its fuel")
    void whole() {
        ClimbProfile profile = profile(programme());
        ClimbState top = profile.at(profile.top());
        assertThat(profile.endsBecause()).isEqualTo("level reached");
        assertThat(profile.top()).isEqualTo(LEVEL);
        assertThat(top.timeS()).isEqualTo(profile.timeS()).isPositive();
        assertThat(top.mass().inKilograms() + profile.fuel().inKilograms())
                .isCloseTo(58000, within(1e-9));
        assertThat(profile.at(BOTTOM).timeS()).isZero();
        assertThat(profile.at(BOTTOM).distance().orElseThrow().inMetres()).isZero();
    }

    @Test
    @DisplayName("accelerates at the end of the speed limit, climbing on with its share")
    void accelerates() {
        ClimbProfile profile = profile(programme());
        ProfileEvent begins = events(profile, Kind.CHANGE_OF_SPEED).get(0);
        ProfileEvent reached = events(profile, Kind.SPEED_REACHED).get(0);
        assertThat(begins.text()).isEqualTo("accelerate to 290 kn");
        assertThat(begins.arriving().pressureAltitude()).isEqualTo(level(100));
        assertThat(begins.leaving().pressureAltitudeRate().inFeetPerMinute())
                .isLessThan(0.5 * begins.arriving().pressureAltitudeRate().inFeetPerMinute());
        assertThat(reached.arriving().calibratedAirspeed().inKnots()).isCloseTo(290, within(1e-6));
        assertThat(reached.arriving().pressureAltitude()).isGreaterThan(level(100));
    }

    @Test
    @DisplayName("accelerates in level flight where no share climbs: time and distance jump there")
    void acceleratesInLevelFlight() {
        ClimbProfile profile = profile(ClimbProgramme.of(speeds(), 0.0));
        ClimbState arriving = profile.at(level(100), Side.BELOW);
        ClimbState leaving = profile.at(level(100), Side.ABOVE);
        assertThat(arriving.calibratedAirspeed().inKnots()).isEqualTo(250);
        assertThat(leaving.calibratedAirspeed().inKnots()).isEqualTo(290);
        assertThat(leaving.timeS() - arriving.timeS()).isBetween(5.0, 60.0);
        double middle = 0.5 * (leaving.timeS() + arriving.timeS());
        ClimbState within = profile.at(Duration.ofNanos(Math.round(middle * 1e9)));
        assertThat(within.pressureAltitude()).isEqualTo(level(100));
        assertThat(within.calibratedAirspeed().inKnots()).isBetween(260.0, 280.0);
        assertThat(within.pressureAltitudeRate().inFeetPerMinute()).isZero();
    }

    @Test
    @DisplayName(
            "takes another share of the power while it accelerates, and refuses one above 0.95")
    void otherShare() {
        ClimbProfile other = profile(ClimbProgramme.of(speeds(), 0.0).withAccelerationShare(0.4));
        assertThat(other.climb().programme().accelerationShare()).isEqualTo(0.4);
        assertThat(other.timeS()).isEqualTo(profile(programme()).timeS());
        assertThatThrownBy(() -> programme().withAccelerationShare(0.96))
                .isInstanceOf(OutsideModelException.class)
                .hasMessageContaining("0.96");
    }

    @Test
    @DisplayName("crosses over to its Mach number where both are the same speed")
    void crossover() {
        ClimbProfile profile = profile(programme());
        ProfileEvent crossover = events(profile, Kind.CROSSOVER).get(0);
        assertThat(crossover.text()).isEqualTo("290 kn to M0.74");
        assertThat(crossover.arriving().pressureAltitude())
                .isEqualTo(speeds().crossover().orElseThrow());
        assertThat(crossover.leaving().pressureAltitudeRate())
                .isGreaterThan(crossover.arriving().pressureAltitudeRate());
        assertThat(profile.at(LEVEL).mach()).isEqualTo(Mach.of(0.74));
    }

    @Test
    @DisplayName("flies the rough-air speed between its levels, slowing down and accelerating")
    void roughAir() {
        ClimbProgramme rough =
                programme()
                        .withSpeeds(
                                speeds().withRoughAir(
                                                CalibratedAirspeed.ofKnots(270),
                                                Mach.of(0.70),
                                                level(150),
                                                level(200)));
        ClimbProfile profile = profile(rough);
        assertThat(profile.at(level(190)).calibratedAirspeed().inKnots()).isEqualTo(270);
        assertThat(events(profile, Kind.CHANGE_OF_SPEED))
                .extracting(ProfileEvent::text)
                .containsExactly(
                        "accelerate to 290 kn", "slow down to 270 kn", "accelerate to 290 kn");
        ProfileEvent slows = events(profile, Kind.CHANGE_OF_SPEED).get(1);
        assertThat(slows.leaving().pressureAltitudeRate())
                .isGreaterThan(slows.arriving().pressureAltitudeRate());
    }

    @Test
    @DisplayName("never goes below its minimum speed, whatever the Mach number says")
    void minimumSpeed() {
        ClimbProgramme slow =
                programme().withSpeeds(speeds().withMinimum(CalibratedAirspeed.ofKnots(255)));
        ClimbProfile profile = climb(50000, slow, ProfileScene.calm()).between(BOTTOM, level(370));
        assertThat(profile.at(level(370)).calibratedAirspeed().inKnots()).isEqualTo(255);
        assertThat(profile.at(level(50)).calibratedAirspeed().inKnots()).isEqualTo(255);
        assertThat(profile.at(level(370)).mach()).isGreaterThan(Mach.of(0.74));
    }

    @Test
    @DisplayName("holds a rate by less thrust, which saves fuel per time, and the speed stays")
    void rateByThrust() {
        HeldRate held =
                new HeldRate(
                        level(200),
                        level(220),
                        PressureAltitudeRate.ofFeetPerMinute(1000),
                        HeldRate.Gives.THRUST);
        ClimbProfile profile = profile(programme().withHeldRates(List.of(held)));
        ClimbState from = profile.at(level(200));
        ClimbState to = profile.at(level(220), Side.BELOW);
        assertThat(to.timeS() - from.timeS()).isCloseTo(120, within(1e-9));
        assertThat(profile.at(level(210)).calibratedAirspeed().inKnots()).isEqualTo(290);
        double flow = (from.mass().inKilograms() - to.mass().inKilograms()) / 120;
        ClimbState fullTo = profile.at(level(230));
        ClimbState fullFrom = profile.at(level(220));
        double fullFlow =
                (fullFrom.mass().inKilograms() - fullTo.mass().inKilograms())
                        / (fullTo.timeS() - fullFrom.timeS());
        assertThat(flow).isLessThan(0.8 * fullFlow);
    }

    @Test
    @DisplayName("holds a rate above what thrust gives by saying so and climbing with what it has")
    void thrustIsShort() {
        HeldRate held =
                new HeldRate(
                        level(200),
                        level(320),
                        PressureAltitudeRate.ofFeetPerMinute(2300),
                        HeldRate.Gives.THRUST);
        ClimbProfile profile = profile(programme().withHeldRates(List.of(held)));
        ProfileEvent cannot = events(profile, Kind.NOT_KEPT).get(0);
        assertThat(cannot.text()).isEqualTo("thrust is not enough for the rate, which is less");
        assertThat(profile.at(level(205)).pressureAltitudeRate().inFeetPerMinute()).isEqualTo(2300);
        PressureAltitude where = cannot.arriving().pressureAltitude();
        assertThat(where).isBetween(level(205), level(320));
        assertThat(cannot.leaving().pressureAltitudeRate().inFeetPerMinute())
                .isCloseTo(2300, within(1e-3));
        assertThat(profile.at(level(310)).pressureAltitudeRate().inFeetPerMinute())
                .isLessThan(2300);
    }

    @Test
    @DisplayName("holds a low rate with all thrust by getting faster, up to the maximum speed")
    void rateBySpeed() {
        HeldRate held =
                new HeldRate(
                        level(150),
                        level(200),
                        PressureAltitudeRate.ofFeetPerMinute(500),
                        HeldRate.Gives.SPEED);
        AeroplaneClimb climb =
                new AeroplaneClimb(
                        ProfileScene.jet()
                                .withLimits(
                                        AeroplaneLimits.none()
                                                .withMaximumOperatingSpeed(
                                                        CalibratedAirspeed.ofKnots(320))),
                        Mass.ofKilograms(58000),
                        programme().withHeldRates(List.of(held)),
                        ProfileScene.calm());
        ClimbProfile profile = climb.between(BOTTOM, LEVEL);
        ProfileEvent cannot = events(profile, Kind.NOT_KEPT).get(0);
        assertThat(cannot.text()).isEqualTo("maximum operating speed: thrust is reduced from here");
        assertThat(cannot.arriving().calibratedAirspeed().inKnots()).isCloseTo(320, within(1e-6));
        ClimbState end = profile.at(level(200), Side.BELOW);
        assertThat(end.calibratedAirspeed().inKnots()).isEqualTo(320);
        assertThat(end.timeS() - profile.at(level(150)).timeS()).isCloseTo(600, within(1e-6));
        assertThat(events(profile, Kind.CHANGE_OF_SPEED).get(1).text())
                .isEqualTo("slow down to 290 kn");
    }

    @Test
    @DisplayName("holds a high rate by getting slower, down to the minimum speed")
    void rateBySpeedDown() {
        HeldRate held =
                new HeldRate(
                        level(150),
                        level(260),
                        PressureAltitudeRate.ofFeetPerMinute(4500),
                        HeldRate.Gives.SPEED);
        ClimbProfile profile = profile(programme().withHeldRates(List.of(held)));
        ProfileEvent cannot = events(profile, Kind.NOT_KEPT).get(0);
        assertThat(cannot.text()).isEqualTo("minimum speed: the rate is less from here");
        assertThat(cannot.arriving().calibratedAirspeed().inKnots()).isCloseTo(210, within(1e-6));
        assertThat(profile.at(level(255)).calibratedAirspeed().inKnots()).isEqualTo(210);
    }

    @Test
    @DisplayName("refuses to let speed give without a minimum speed")
    void speedGivesWithoutMinimum() {
        ClimbProgramme bare =
                ClimbProgramme.of(
                        SpeedSchedule.of(CalibratedAirspeed.ofKnots(290), Mach.of(0.74)), 0.4);
        HeldRate held =
                new HeldRate(
                        level(150),
                        level(200),
                        PressureAltitudeRate.ofFeetPerMinute(500),
                        HeldRate.Gives.SPEED);
        assertThatThrownBy(() -> bare.withHeldRates(List.of(held)))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("a rate for which speed gives needs a schedule with a minimum speed");
    }

    @Test
    @DisplayName("holds a level for a time: the clock and the fuel go on, the level does not")
    void levelForATime() {
        ClimbProfile straight = profile(programme());
        ClimbProfile profile =
                profile(
                        programme()
                                .withHeldLevels(
                                        List.of(
                                                HeldLevel.during(
                                                        level(180), Duration.ofMinutes(3)))));
        ClimbState arriving = profile.at(level(180), Side.BELOW);
        ClimbState leaving = profile.at(level(180), Side.ABOVE);
        assertThat(leaving.timeS() - arriving.timeS()).isCloseTo(180, within(1e-9));
        assertThat(leaving.mass()).isLessThan(arriving.mass());
        assertThat(arriving.timeS()).isCloseTo(straight.at(level(180)).timeS(), within(1e-3));
        assertThat(profile.timeS() - straight.timeS()).isBetween(178.0, 180.0); // lighter climbs on
        ClimbState within = profile.at(Duration.ofSeconds(Math.round(arriving.timeS() + 60)));
        assertThat(within.pressureAltitude()).isEqualTo(level(180));
        double there = within.distance().orElseThrow().inMetres();
        ClimbState again = profile.at(GroundDistance.ofMetres(there));
        assertThat(again.timeS()).isCloseTo(within.timeS(), within(1e-6));
    }

    @Test
    @DisplayName("holds a level until a distance, and not at all behind it")
    void levelUntilADistance() {
        GroundDistance far = GroundDistance.ofNauticalMiles(60);
        ClimbProfile profile =
                profile(
                        programme()
                                .withHeldLevels(
                                        List.of(
                                                HeldLevel.until(level(150), far),
                                                HeldLevel.until(
                                                        level(250),
                                                        GroundDistance.ofNauticalMiles(30)))));
        assertThat(profile.at(level(150), Side.ABOVE).distance()).contains(far);
        assertThat(events(profile, Kind.LEVEL_HELD)).hasSize(1);
        assertThat(profile.at(far).pressureAltitude()).isEqualTo(level(150));
    }

    @Test
    @DisplayName("stops below a restriction until its point is passed")
    void restriction() {
        Restriction below =
                Restriction.of(
                        "BEECH",
                        GroundDistance.ofNauticalMiles(45),
                        AltitudeRestriction.atOrBelow(Level.of(level(170))));
        ClimbProfile profile =
                profile(
                        programme()
                                .withRestrictions(
                                        List.of(below), AltimeterSetting.ofHectopascals(1013.25)));
        ProfileEvent held = events(profile, Kind.LEVEL_HELD).get(0);
        assertThat(held.text()).isEqualTo("FL170 is held for BEECH");
        assertThat(profile.at(GroundDistance.ofNauticalMiles(45)).pressureAltitude())
                .isEqualTo(level(170));
        assertThat(events(profile, Kind.LEVEL_LEFT).get(0).arriving().distance())
                .contains(GroundDistance.ofNauticalMiles(45));
    }

    @Test
    @DisplayName("tells named points and marks with their time, distance and fuel")
    void pointsAndMarks() {
        ClimbProfile profile =
                profile(
                        programme()
                                .withPoints(
                                        List.of(
                                                new NamedPoint(
                                                        "PEAR", GroundDistance.ofNauticalMiles(20)),
                                                new NamedPoint(
                                                        "beyond",
                                                        GroundDistance.ofNauticalMiles(900))))
                                .withMarks(List.of(LevelMark.of(level(123), "something there"))));
        ProfileEvent pear = events(profile, Kind.NAMED_POINT).get(0);
        assertThat(events(profile, Kind.NAMED_POINT)).hasSize(1);
        assertThat(pear.arriving().distance().orElseThrow().inNauticalMiles())
                .isCloseTo(20, within(1e-9));
        assertThat(events(profile, Kind.MARK).get(0).arriving().pressureAltitude())
                .isEqualTo(level(123));
        assertThat(profile.events())
                .extracting(event -> event.arriving().timeS())
                .isSortedAccordingTo(Double::compare);
    }

    @Test
    @DisplayName("ends where the rate has fallen to the least, with a reason and no exception")
    void ceiling() {
        ClimbProfile profile =
                climb(72000, programme(), ProfileScene.calm()).between(BOTTOM, level(500));
        assertThat(profile.endsBecause())
                .isEqualTo("ceiling reached, the rate is no more than 100 ft/min");
        assertThat(profile.at(profile.top()).pressureAltitudeRate().inFeetPerMinute())
                .isCloseTo(100, within(0.01));
        ProfileEvent low = events(profile, Kind.LOW_RATE).get(0);
        assertThat(low.arriving().pressureAltitudeRate().inFeetPerMinute())
                .isCloseTo(500, within(0.01));
        assertThat(low.text()).isEqualTo("the rate falls below 500 ft/min");
    }

    @Test
    @DisplayName("that cannot begin is over where it would, and says why")
    void cannotBegin() {
        ClimbProfile profile =
                climb(400000, programme(), ProfileScene.calm()).between(BOTTOM, LEVEL);
        assertThat(profile.top()).isEqualTo(BOTTOM);
        assertThat(profile.timeS()).isZero();
        assertThat(profile.endsBecause()).startsWith("ceiling reached");
        assertThat(profile.at(BOTTOM).mass().inKilograms()).isEqualTo(400000);
        assertThat(profile.at(Duration.ZERO).pressureAltitude()).isEqualTo(BOTTOM);
        assertThat(profile.events())
                .extracting(ProfileEvent::kind)
                .containsExactly(Kind.BEGINNING, Kind.TOP);
    }

    @Test
    @DisplayName("ends at the certified ceiling")
    void certifiedCeiling() {
        AeroplaneLimits limits = AeroplaneLimits.none().withCertifiedCeiling(level(290));
        ClimbProfile profile =
                new AeroplaneClimb(
                                ProfileScene.jet().withLimits(limits),
                                Mass.ofKilograms(58000),
                                programme(),
                                ProfileScene.calm())
                        .between(BOTTOM, LEVEL);
        assertThat(profile.top()).isEqualTo(level(290));
        assertThat(profile.endsBecause()).isEqualTo("the certified ceiling");
    }

    @Test
    @DisplayName("in air that is 0 K off standard is the climb in standard air to the last bit")
    void standardToTheLastBit() {
        ClimbProfile standard = profile(programme());
        ClimbProfile deviating =
                climb(
                                58000,
                                programme(),
                                ProfileScene.air(
                                        Atmosphere.withDeviationAtEachPressure(
                                                IsaDeviation.ofKelvins(0),
                                                AltitudeDatum.standard()),
                                        Winds.calm()))
                        .between(BOTTOM, LEVEL);
        assertThat(deviating.timeS()).isEqualTo(standard.timeS());
        assertThat(deviating.fuel()).isEqualTo(standard.fuel());
        for (double feet = 2000; feet <= 33000; feet += 1000) {
            PressureAltitude altitude = PressureAltitude.ofFeet(feet);
            ClimbState one = standard.at(altitude);
            ClimbState other = deviating.at(altitude);
            assertThat(other.timeS()).isEqualTo(one.timeS());
            assertThat(other.distance()).isEqualTo(one.distance());
            assertThat(other.mass()).isEqualTo(one.mass());
            assertThat(other.pressureAltitudeRate()).isEqualTo(one.pressureAltitudeRate());
        }
    }

    @Test
    @DisplayName("takes longer with thrust reduced, and none longer above where it is full again")
    void reducedThrust() {
        ClimbProfile full = profile(programme());
        ClimbProfile reduced =
                profile(
                        programme()
                                .withReducedThrust(ReducedThrust.of(0.8, level(100), level(150))));
        assertThat(reduced.at(level(150)).timeS()).isGreaterThan(full.at(level(150)).timeS() + 20);
        assertThat(
                        reduced.at(level(50)).pressureAltitudeRate().inFeetPerMinute()
                                / full.at(level(50)).pressureAltitudeRate().inFeetPerMinute())
                .isBetween(0.6, 0.8);
        assertThat(reduced.at(level(200)).pressureAltitudeRate().inFeetPerMinute())
                .isCloseTo(
                        full.at(level(200)).pressureAltitudeRate().inFeetPerMinute(), within(20.0));
    }

    @Test
    @DisplayName("has no distance where the wind is not known, but a time")
    void windNotKnown() {
        Winds unknown =
                new Winds() {
                    @Override
                    public double eastward(double pressurePa) {
                        return pressurePa < 50000 ? Double.NaN : 0.0;
                    }

                    @Override
                    public double northward(double pressurePa) {
                        return eastward(pressurePa);
                    }

                    @Override
                    public boolean covers(double pressurePa) {
                        return pressurePa >= 50000;
                    }

                    @Override
                    public double[] bendsPa() {
                        return new double[] {50000};
                    }
                };
        ClimbProfile profile =
                climb(58000, programme(), ProfileScene.air(Atmosphere.standard(), unknown))
                        .between(BOTTOM, LEVEL);
        assertThat(profile.endsBecause()).isEqualTo("level reached");
        assertThat(profile.timeS()).isCloseTo(profile(programme()).timeS(), within(1e-3));
        assertThat(profile.at(level(180)).distance()).isPresent();
        assertThat(profile.at(level(190)).distance()).isEmpty();
        assertThatThrownBy(() -> profile.at(GroundDistance.ofNauticalMiles(10)))
                .hasMessageContaining("the wind is not known all the way");
    }

    @Test
    @DisplayName("climbs on where a level is to be held until a distance that nobody knows")
    void distanceNotKnown() {
        Winds unknown =
                new Winds() {
                    @Override
                    public double eastward(double pressurePa) {
                        return Double.NaN;
                    }

                    @Override
                    public double northward(double pressurePa) {
                        return Double.NaN;
                    }

                    @Override
                    public boolean covers(double pressurePa) {
                        return false;
                    }
                };
        ClimbProgramme held =
                programme()
                        .withHeldLevels(
                                List.of(
                                        HeldLevel.until(
                                                level(150), GroundDistance.ofNauticalMiles(60))));
        ClimbProfile profile =
                climb(58000, held, ProfileScene.air(Atmosphere.standard(), unknown))
                        .between(BOTTOM, LEVEL);
        assertThat(profile.endsBecause()).isEqualTo("level reached");
        assertThat(events(profile, Kind.NOT_KEPT).get(0).text())
                .isEqualTo("not kept, no distance without a wind: 15000 ft is held");
    }

    @Test
    @DisplayName("refuses a level, a time or a distance that is not on it, in one sentence")
    void refusals() {
        ClimbProfile profile = profile(programme());
        assertThatThrownBy(() -> profile.at(level(400)))
                .isInstanceOf(OutsideModelException.class)
                .hasMessageContaining("the climb is in between");
        assertThatThrownBy(() -> profile.at(Duration.ofHours(3)))
                .isInstanceOf(OutsideModelException.class)
                .hasMessageContaining("the climb is over");
        assertThatThrownBy(() -> profile.at(GroundDistance.ofNauticalMiles(900)))
                .isInstanceOf(OutsideModelException.class)
                .hasMessageContaining("the climb is over");
        assertThatThrownBy(
                        () -> climb(58000, programme(), ProfileScene.calm()).between(LEVEL, BOTTOM))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("a climb must end above its bottom");
        assertThatThrownBy(() -> ClimbProgramme.of(speeds(), 0.99))
                .isInstanceOf(OutsideModelException.class);
    }
}
