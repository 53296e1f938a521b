package org.climbwright.profile;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.climbwright.atmosphere.AltitudeDatum;
import org.climbwright.atmosphere.Atmosphere;
import org.climbwright.atmosphere.wind.Winds;
import org.climbwright.path.SpeedSchedule;
import org.climbwright.performance.Aeroplane;
import org.climbwright.performance.AeroplaneLimits;
import org.climbwright.performance.ClimbAir;
import org.climbwright.performance.ReducedThrust;
import org.climbwright.quantity.altitude.PressureAltitude;
import org.climbwright.quantity.path.GroundDistance;
import org.climbwright.quantity.path.Mass;
import org.climbwright.quantity.speed.CalibratedAirspeed;
import org.climbwright.quantity.speed.Mach;
import org.climbwright.quantity.speed.PressureAltitudeRate;
import org.climbwright.quantity.temperature.IsaDeviation;
import org.climbwright.quantity.temperature.IsaDeviationAtAltitude;

/** Invented aeroplanes, airs and programmes at random. */
final class RandomClimbs {
    private final Random random;

    RandomClimbs(long seed) {
        this.random = new Random(seed);
    }

    private double between(double low, double high) {
        return low + random.nextDouble() * (high - low);
    }

    private PressureAltitude level(double lowFeet, double highFeet) {
        return PressureAltitude.ofFeet(between(lowFeet, highFeet));
    }

    Aeroplane aeroplane() {
        return ProfileScene.jet(
                        between(90, 150),
                        between(0.017, 0.025),
                        between(0.038, 0.055),
                        between(80e3, 140e3))
                .withLimits(
                        AeroplaneLimits.none()
                                .withMaximumOperatingSpeed(
                                        CalibratedAirspeed.ofKnots(between(320, 350)))
                                .withMaximumOperatingMach(Mach.of(between(0.78, 0.84))));
    }

    Atmosphere atmosphere() {
        double deviation = between(-25, 25);
        return random.nextBoolean()
                ? Atmosphere.withDeviationAtEachPressure(
                        IsaDeviation.ofKelvins(deviation), AltitudeDatum.standard())
                : Atmosphere.withDeviationAtEachAltitude(
                        IsaDeviationAtAltitude.ofKelvins(deviation), AltitudeDatum.standard());
    }

    Winds winds() {
        return new ProfileScene.ShearedWind(between(-20, 20), between(-5, 5), between(-30, 30));
    }

    SpeedSchedule speeds() {
        SpeedSchedule speeds =
                SpeedSchedule.of(
                                CalibratedAirspeed.ofKnots(between(260, 310)),
                                Mach.of(between(0.68, 0.78)))
                        .withMinimum(CalibratedAirspeed.ofKnots(between(190, 215)));
        if (random.nextInt(4) > 0) {
            speeds =
                    speeds.withLimit(
                            CalibratedAirspeed.ofKnots(between(230, 255)), level(8000, 12000));
        }
        if (random.nextInt(3) == 0) {
            double from = between(14000, 20000);
            speeds =
                    speeds.withRoughAir(
                            CalibratedAirspeed.ofKnots(between(250, 280)),
                            Mach.of(between(0.65, 0.75)),
                            PressureAltitude.ofFeet(from),
                            PressureAltitude.ofFeet(from + between(1000, 6000)));
        }
        return speeds;
    }

    ClimbProgramme programme() {
        ClimbProgramme programme =
                ClimbProgramme.of(speeds(), random.nextInt(4) == 0 ? 0.0 : between(0.2, 0.7));
        if (random.nextInt(3) == 0) {
            double from = between(21000, 24000);
            programme =
                    programme.withHeldRates(
                            List.of(
                                    new HeldRate(
                                            PressureAltitude.ofFeet(from),
                                            PressureAltitude.ofFeet(from + between(500, 3000)),
                                            PressureAltitudeRate.ofFeetPerMinute(
                                                    between(500, 3000)),
                                            random.nextBoolean()
                                                    ? HeldRate.Gives.SPEED
                                                    : HeldRate.Gives.THRUST)));
        }
        List<HeldLevel> levels = new ArrayList<>();
        if (random.nextInt(3) == 0) {
            levels.add(
                    HeldLevel.during(
                            level(5000, 25000), Duration.ofSeconds(30 + random.nextInt(200))));
        }
        if (random.nextInt(3) == 0) {
            levels.add(
                    HeldLevel.until(
                            level(5000, 25000), GroundDistance.ofNauticalMiles(between(10, 80))));
        }
        programme = programme.withHeldLevels(levels);
        return random.nextInt(3) == 0
                ? programme.withReducedThrust(
                        ReducedThrust.of(
                                between(0.8, 1.0), level(5000, 10000), level(10500, 16000)))
                : programme;
    }

    AeroplaneClimb climb() {
        return new AeroplaneClimb(
                aeroplane(), Mass.ofKilograms(between(48000, 64000)), programme(), air());
    }

    ClimbAir air() {
        return ProfileScene.air(atmosphere(), winds());
    }
}
