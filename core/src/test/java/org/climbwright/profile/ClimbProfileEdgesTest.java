package org.climbwright.profile;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.tuple;
import static org.assertj.core.api.Assertions.within;
import static org.climbwright.profile.ProfileScene.BOTTOM;
import static org.climbwright.profile.ProfileScene.LEVEL;
import static org.climbwright.profile.ProfileScene.events;
import static org.climbwright.profile.ProfileScene.programme;

import java.time.Duration;
import java.util.List;
import org.climbwright.atmosphere.AltitudeDatum;
import org.climbwright.atmosphere.Atmosphere;
import org.climbwright.atmosphere.StandardAir;
import org.climbwright.atmosphere.wind.Winds;
import org.climbwright.gradient.restriction.AltitudeRestriction;
import org.climbwright.gradient.restriction.Level;
import org.climbwright.gradient.restriction.Restriction;
import org.climbwright.icing.IcingRule;
import org.climbwright.icing.MoistureBand;
import org.climbwright.icing.MoistureForm;
import org.climbwright.icing.ProtectionPlan;
import org.climbwright.icing.VisibleMoisture;
import org.climbwright.path.ClimbState;
import org.climbwright.path.SpeedSchedule;
import org.climbwright.performance.Aeroplane;
import org.climbwright.performance.AeroplaneLimits;
import org.climbwright.performance.ClimbAir;
import org.climbwright.performance.EngineUse;
import org.climbwright.performance.JetThrust;
import org.climbwright.performance.ParabolicPolar;
import org.climbwright.performance.Rating;
import org.climbwright.performance.ThrustSpecificFuel;
import org.climbwright.profile.ProfileEvent.Kind;
import org.climbwright.quantity.altitude.AltitudeOnQnh;
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
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

@DisplayName("A climb by thrust and drag, where something is at its edge,")
class ClimbProfileEdgesTest {
    private static PressureAltitude level(double flightLevel) {
        return PressureAltitude.ofFlightLevel(flightLevel);
    }

    private static Aeroplane flatRated(double deviation) {
        return Aeroplane.of(
                2,
                ParabolicPolar.ofSi(120.0, 0.02, 0.045),
                JetThrust.ofSi(110e3, 0.7)
                        .withMachLapse(0.6, 0.4)
                        .withFlatRating(deviation, 0.01)
                        .withRating(Rating.CLIMB, 0.9),
                ThrustSpecificFuel.ofSi(1.1e-5, 0.9e-5));
    }

    private static ClimbProfile fly(
            Aeroplane aeroplane, double massKg, ClimbProgramme programme, ClimbAir air) {
        return new AeroplaneClimb(aeroplane, Mass.ofKilograms(massKg), programme, air)
                .between(BOTTOM, LEVEL);
    }

    /** Along-track wind [kn] straight in ln p between levels [ft]. */
    private record Layers(double[] feet, double[] knots) implements Winds {
        @Override
        public double eastward(double pressurePa) {
            return 0.0;
        }

        @Override
        public double northward(double pressurePa) {
            double ln = StrictMath.log(pressurePa);
            for (int i = 1; i < feet.length; i++) {
                double above = StrictMath.log(pressure(i));
                if (ln >= above) {
                    double below = StrictMath.log(pressure(i - 1));
                    double share = Math.max(0.0, (below - ln) / (below - above));
                    return (knots[i - 1] + share * (knots[i] - knots[i - 1])) * 1852 / 3600;
                }
            }
            return knots[knots.length - 1] * 1852 / 3600;
        }

        private double pressure(int i) {
            return StandardAir.pressureFromAltitude(feet[i] * 0.3048);
        }

        @Override
        public boolean covers(double pressurePa) {
            return true;
        }

        @Override
        public double[] bendsPa() {
            double[] bends = new double[feet.length];
            for (int i = 0; i < bends.length; i++) {
                bends[i] = pressure(i);
            }
            return bends;
        }
    }

    private static ClimbAir winds(double[] feet, double... knots) {
        return ProfileScene.air(Atmosphere.standard(), new Layers(feet, knots));
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.0, 5.0, 10.0, 15.0, 20.0})
    @DisplayName("flies where the flat rating ends at the very deviation of the day: ISA+")
    void flatRatingAtTheDeviation(double deviation) {
        ClimbAir air =
                ProfileScene.air(
                        Atmosphere.withDeviationAtEachPressure(
                                IsaDeviation.ofKelvins(deviation), AltitudeDatum.standard()),
                        Winds.calm());
        ClimbProfile exact = fly(flatRated(deviation), 58000, programme(), air);
        ClimbProfile beyond = fly(flatRated(deviation + 0.001), 58000, programme(), air);
        assertThat(exact.endsBecause()).isEqualTo("level reached");
        assertThat(exact.timeS()).isCloseTo(beyond.timeS(), within(0.1));
    }

    @Test
    @DisplayName("comes to an end where bounds, a held rate and shear give way to each other")
    void noEndlessLoop() {
        HeldRate held =
                new HeldRate(
                        level(95),
                        level(110),
                        PressureAltitudeRate.ofFeetPerMinute(2800),
                        HeldRate.Gives.SPEED);
        ClimbProgramme programme =
                ClimbProgramme.of(ProfileScene.speeds(), 0.8).withHeldRates(List.of(held));
        ClimbProfile profile =
                fly(
                        flatRated(15),
                        92474,
                        programme,
                        winds(new double[] {0, 10000, 10500, 30000}, 25, -5, 60, 60));
        assertThat(profile.endsBecause()).isNotEmpty();
        assertThat(profile.events().size()).isLessThan(200);
    }

    @Test
    @DisplayName("says where shear takes it below its minimum or above its maximum speed")
    void beyondItsSpeeds() {
        Aeroplane limited =
                flatRated(15)
                        .withLimits(
                                AeroplaneLimits.none()
                                        .withMaximumOperatingSpeed(
                                                CalibratedAirspeed.ofKnots(340)));
        ClimbProfile slow =
                fly(
                        limited,
                        58000,
                        programme(),
                        winds(new double[] {0, 3000, 3400, 30000}, 0, 0, 100, 100));
        assertThat(events(slow, Kind.NOT_KEPT))
                .extracting(ProfileEvent::text)
                .contains(
                        "the wind changes too fast upwards: the airspeed gives",
                        "below the minimum speed");
        ClimbProfile fast =
                fly(
                        limited,
                        58000,
                        programme(),
                        winds(new double[] {0, 12000, 12400, 30000}, 0, 0, -100, -100));
        assertThat(events(fast, Kind.NOT_KEPT))
                .extracting(ProfileEvent::text)
                .contains("above the maximum operating speed");
    }

    @Test
    @DisplayName("says where the schedule itself is above the maximum operating Mach number")
    void scheduleBeyondItsLimits() {
        Aeroplane limited =
                flatRated(15)
                        .withLimits(AeroplaneLimits.none().withMaximumOperatingMach(Mach.of(0.70)));
        ClimbProfile profile = fly(limited, 58000, programme(), ProfileScene.calm());
        ProfileEvent told = events(profile, Kind.NOT_KEPT).get(0);
        assertThat(told.text()).isEqualTo("above the maximum operating Mach number");
        assertThat(told.arriving().mach().number()).isBetween(0.70, 0.72);
    }

    @Test
    @DisplayName("says where the margin to buffet has come down to 1.3 g")
    void buffet() {
        Aeroplane limited =
                flatRated(15)
                        .withLimits(AeroplaneLimits.none().withBuffetOnset(120.0, mach -> 0.65));
        ClimbProfile profile = fly(limited, 62000, programme(), ProfileScene.calm());
        ProfileEvent told = events(profile, Kind.NOT_KEPT).get(0);
        assertThat(told.text()).isEqualTo("less than 1.3 g to buffet");
        ClimbState there = told.arriving();
        double dynamic =
                0.7 * there.air().pressurePa() * there.mach().number() * there.mach().number();
        double weight = there.mass().inKilograms() * 9.80665;
        // told at the first step's end beyond it
        assertThat(0.65 * dynamic * 120.0 / weight).isBetween(1.25, 1.3);
    }

    @Test
    @DisplayName("never takes negative thrust for a rate held in a growing headwind")
    void noNegativeThrust() {
        HeldRate held =
                new HeldRate(
                        level(110),
                        level(180),
                        PressureAltitudeRate.ofFeetPerMinute(1500),
                        HeldRate.Gives.THRUST);
        ClimbProfile profile =
                fly(
                        flatRated(15),
                        58000,
                        programme().withHeldRates(List.of(held)),
                        winds(new double[] {0, 12000, 12400, 30000}, 0, 0, -60, -60));
        assertThat(profile.endsBecause()).isEqualTo("level reached");
        double mass = Double.MAX_VALUE;
        for (int feet = 11000; feet <= 18000; feet += 50) {
            ClimbState state = profile.at(PressureAltitude.ofFeet(feet));
            assertThat(state.mass().inKilograms()).isLessThan(mass);
            mass = state.mass().inKilograms();
        }
        assertThat(events(profile, Kind.NOT_KEPT).get(0).text())
                .isEqualTo("the rate takes no thrust any more: the airspeed gives");
    }

    @Test
    @DisplayName("slows down to its maximum speed before a rate is held for which speed gives")
    void beginsAboveItsMaximumSpeed() {
        HeldRate held =
                new HeldRate(
                        level(150),
                        level(200),
                        PressureAltitudeRate.ofFeetPerMinute(500),
                        HeldRate.Gives.SPEED);
        Aeroplane limited =
                flatRated(15)
                        .withLimits(
                                AeroplaneLimits.none()
                                        .withMaximumOperatingSpeed(
                                                CalibratedAirspeed.ofKnots(280)));
        ClimbProfile profile =
                fly(limited, 58000, programme().withHeldRates(List.of(held)), ProfileScene.calm());
        double cas = 290.0;
        for (int feet = 15000; feet <= 19900; feet += 10) {
            double here = profile.at(PressureAltitude.ofFeet(feet)).calibratedAirspeed().inKnots();
            assertThat(Math.abs(here - cas)).as(feet + " ft").isLessThan(1.0);
            cas = here;
        }
        assertThat(cas).isCloseTo(280, within(1e-6));
    }

    @Test
    @DisplayName("crosses over to its Mach number while a rate is held by thrust")
    void crossoverAtAHeldRate() {
        HeldRate held =
                new HeldRate(
                        level(260),
                        level(320),
                        PressureAltitudeRate.ofFeetPerMinute(500),
                        HeldRate.Gives.THRUST);
        ClimbProfile profile =
                fly(
                        flatRated(15),
                        58000,
                        programme().withHeldRates(List.of(held)),
                        ProfileScene.calm());
        assertThat(events(profile, Kind.CROSSOVER)).hasSize(1);
    }

    @Test
    @DisplayName("tells of levels that it cannot hold and of points that it does not pass")
    void notOnTheWay() {
        ClimbProgramme programme =
                programme()
                        .withHeldLevels(
                                List.of(
                                        HeldLevel.during(BOTTOM, Duration.ofMinutes(1)),
                                        HeldLevel.during(level(390), Duration.ofMinutes(1))))
                        .withPoints(
                                List.of(
                                        new NamedPoint(
                                                "FAR", GroundDistance.ofNauticalMiles(900))));
        ClimbProfile profile = fly(flatRated(15), 58000, programme, ProfileScene.calm());
        assertThat(events(profile, Kind.NOT_KEPT))
                .extracting(ProfileEvent::text)
                .containsExactlyInAnyOrder(
                        "not on the way: 1500 ft is held",
                        "not on the way: 39000 ft is held",
                        "FAR is not passed");
    }

    @Test
    @DisplayName("ends with a reason in a wind stronger than its airspeed")
    void strongWind() {
        ClimbProfile profile =
                fly(
                        flatRated(15),
                        58000,
                        programme(),
                        winds(new double[] {0, 10000, 20000, 30000}, 0, 0, -900, -900));
        assertThat(profile.endsBecause())
                .isEqualTo("the wind is stronger than the aeroplane can keep its track against");
    }

    @Test
    @DisplayName("ends with its own reason where thrust lifts the aeroplane at any angle")
    void rocket() {
        assertThat(fly(flatRated(15), 100, programme(), ProfileScene.calm()).endsBecause())
                .isEqualTo("no balance: thrust is too much for a climb at any angle");
    }

    @Test
    @DisplayName("ends where its speed would pass Mach 1, and not with an exception")
    void supersonic() {
        ClimbProgramme fast =
                ClimbProgramme.of(
                        SpeedSchedule.of(CalibratedAirspeed.ofKnots(700), Mach.of(1.5)), 0.4);
        assertThat(fly(flatRated(15), 58000, fast, ProfileScene.calm()).endsBecause())
                .isEqualTo("the speed is above Mach 1 there, where the laws of this climb end");
    }

    @Test
    @DisplayName("refuses what no aeroplane can be, and says what")
    void refusals() {
        assertThatThrownBy(() -> fly(flatRated(15), 0, programme(), ProfileScene.calm()))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("an aeroplane that climbs must have a mass above 0 kg, but had 0 kg");
        assertThatThrownBy(
                        () ->
                                fly(
                                        flatRated(15),
                                        58000,
                                        programme().withEngines(EngineUse.climb(4)),
                                        ProfileScene.calm()))
                .hasMessage(
                        "no more engines can run than the aeroplane has, but of 2 there were 4");
        Aeroplane broken =
                Aeroplane.of(
                        2,
                        flatRated(15),
                        flatRated(15),
                        (thrustN, mach, pressurePa, temperatureK, use) -> Double.NaN);
        assertThatThrownBy(() -> fly(broken, 58000, programme(), ProfileScene.calm()))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining(
                        "the fuel flow of an aeroplane must be 0 kg/s or more, but was NaN kg/s");
        Aeroplane dragless =
                Aeroplane.of(2, (l, m, q, u) -> Double.NaN, flatRated(15), flatRated(15));
        assertThatThrownBy(() -> fly(dragless, 58000, programme(), ProfileScene.calm()))
                .hasMessageContaining("the drag of an aeroplane must be 0 N or more");
    }

    @Test
    @DisplayName("reports a low rate that it has while it accelerates")
    void lowRateWhileAccelerating() {
        ClimbProgramme slow = ClimbProgramme.of(ProfileScene.speeds(), 0.1);
        ClimbProfile profile = fly(flatRated(15), 70000, slow, ProfileScene.calm());
        ProfileEvent low = events(profile, Kind.LOW_RATE).get(0);
        assertThat(low.arriving().pressureAltitude()).isEqualTo(level(100));
        assertThat(low.leaving().pressureAltitudeRate().inFeetPerMinute()).isLessThan(500);
    }

    @Test
    @DisplayName("names a restriction's level as it was given, and goes on once from two")
    void twoRestrictionsAtOneLevel() {
        AltimeterSetting qnh = AltimeterSetting.ofHectopascals(1003);
        AltitudeRestriction below =
                AltitudeRestriction.atOrBelow(Level.of(AltitudeOnQnh.ofFeet(8000)));
        ClimbProfile profile =
                fly(
                        flatRated(15),
                        58000,
                        programme()
                                .withRestrictions(
                                        List.of(
                                                Restriction.of(
                                                        "ASPEN",
                                                        GroundDistance.ofNauticalMiles(20),
                                                        below),
                                                Restriction.of(
                                                        "BEECH",
                                                        GroundDistance.ofNauticalMiles(25),
                                                        below)),
                                        qnh),
                        ProfileScene.calm());
        assertThat(events(profile, Kind.LEVEL_HELD))
                .extracting(ProfileEvent::text)
                .containsExactly(
                        "8000 ft on QNH is held for ASPEN", "8000 ft on QNH is held for BEECH");
        assertThat(events(profile, Kind.LEVEL_LEFT)).hasSize(1);
    }

    @Test
    @DisplayName("bends where air, wind or programme does, and not at every step of the air")
    void bends() {
        ClimbProfile profile = fly(flatRated(15), 58000, programme(), ProfileScene.calm());
        // the limit's end, the speed reached, the crossover; standard air bends at 11 km only
        assertThat(profile.bendsM()).hasSize(3);
    }

    /** Cloud to 8,000 ft in air 20 K colder than standard: conditions from the ground on. */
    @Test
    @DisplayName("begins with the bleed that its protection needs from the ground on, and says so")
    void bleedFromTheBeginning() {
        MoistureBand cloud =
                new MoistureBand(
                        MoistureForm.values()[0],
                        PressureAltitude.ofFeet(0),
                        PressureAltitude.ofFeet(8000));
        ProtectionPlan engine =
                ProtectionPlan.antiIce(
                        IcingRule.engine(VisibleMoisture.inBands(List.of(cloud))),
                        Duration.ofSeconds(10),
                        Duration.ZERO);
        ClimbAir cold =
                ProfileScene.air(
                        Atmosphere.withDeviationAtEachPressure(
                                IsaDeviation.ofKelvins(-20), AltitudeDatum.standard()),
                        Winds.calm());
        ClimbProgramme programme = programme().withIceProtection(List.of(engine));
        ClimbProfile profile =
                new AeroplaneClimb(ProfileScene.jet(), Mass.ofKilograms(58000), programme, cold)
                        .between(BOTTOM, LEVEL);
        assertThat(events(profile, Kind.BLEED))
                .extracting(
                        ProfileEvent::text,
                        event -> Math.rint(event.arriving().pressureAltitude().inFeet()))
                .containsExactly(
                        tuple("bleed for engine anti-ice", 1500.0),
                        tuple("bleed for anti-ice ends", 8000.0));
        ClimbProfile without =
                new AeroplaneClimb(ProfileScene.jet(), Mass.ofKilograms(58000), programme(), cold)
                        .between(BOTTOM, LEVEL);
        // the invented jet loses 5 % of its thrust, for a fifth of the climb
        assertThat(profile.timeS() - without.timeS()).isBetween(3.0, 20.0);
    }
}
