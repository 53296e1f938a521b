package org.climbwright.profile;

import java.util.List;
import org.climbwright.atmosphere.AltitudeDatum;
import org.climbwright.atmosphere.Atmosphere;
import org.climbwright.atmosphere.wind.Winds;
import org.climbwright.path.SpeedSchedule;
import org.climbwright.performance.Aeroplane;
import org.climbwright.performance.Bleed;
import org.climbwright.performance.ClimbAir;
import org.climbwright.quantity.altitude.PressureAltitude;
import org.climbwright.quantity.path.Mass;
import org.climbwright.quantity.path.TrueDirection;
import org.climbwright.quantity.speed.CalibratedAirspeed;
import org.climbwright.quantity.speed.Mach;
import org.climbwright.quantity.temperature.IsaDeviation;

/** Invented aeroplanes, airs and programmes for tests; no figure of them is a reference. */
final class ProfileScene {
    static final PressureAltitude BOTTOM = PressureAltitude.ofFeet(1500);
    static final PressureAltitude LEVEL = PressureAltitude.ofFlightLevel(330);

    private ProfileScene() {}

    /** A twin-jet of laws written down here, so that a test does not rest on building blocks. */
    static Aeroplane jet() {
        return jet(120.0, 0.021, 0.045, 110e3);
    }

    static Aeroplane jet(double wingM2, double zeroLift, double induced, double staticThrustN) {
        return Aeroplane.of(
                2,
                (liftN, mach, q, use) -> {
                    double lift = liftN / (q * wingM2);
                    double beyond = Math.max(0.0, mach - 0.70);
                    double rise = 20.0 * beyond * beyond * beyond * beyond;
                    return q * wingM2 * (zeroLift + induced * lift * lift + rise);
                },
                (mach, pressurePa, temperatureK, use) -> {
                    double ratio = pressurePa / 101325.0;
                    double bled = use.bleed() == Bleed.NONE ? 1.0 : 0.95;
                    return use.operating()
                            * staticThrustN
                            * bled
                            * ratio
                            * (1.55 - 0.55 * ratio)
                            * Math.sqrt(288.15 / temperatureK)
                            * (1.0 - 0.9 * mach + 0.5 * mach * mach);
                },
                (thrustN, mach, pressurePa, temperatureK, use) ->
                        (1e-5 + 0.8e-5 * mach) * Math.sqrt(temperatureK / 288.15) * thrustN + 0.05);
    }

    static SpeedSchedule speeds() {
        return SpeedSchedule.of(CalibratedAirspeed.ofKnots(290), Mach.of(0.74))
                .withLimit(CalibratedAirspeed.ofKnots(250), PressureAltitude.ofFeet(10000))
                .withMinimum(CalibratedAirspeed.ofKnots(210));
    }

    static ClimbProgramme programme() {
        return ClimbProgramme.of(speeds(), 0.4);
    }

    static ClimbAir air(Atmosphere air, Winds winds) {
        return ClimbAir.of(air, winds, TrueDirection.ofDegrees(0));
    }

    static ClimbAir calm() {
        return air(Atmosphere.standard(), Winds.calm());
    }

    static ClimbAir warmer(double kelvins) {
        return air(
                Atmosphere.withDeviationAtEachPressure(
                        IsaDeviation.ofKelvins(kelvins), AltitudeDatum.standard()),
                Winds.calm());
    }

    static AeroplaneClimb climb(double massKg, ClimbProgramme programme, ClimbAir air) {
        return new AeroplaneClimb(jet(), Mass.ofKilograms(massKg), programme, air);
    }

    static ClimbProfile profile(ClimbProgramme programme) {
        return climb(58000, programme, calm()).between(BOTTOM, LEVEL);
    }

    static List<ProfileEvent> events(ClimbProfile profile, ProfileEvent.Kind kind) {
        return profile.events().stream().filter(event -> event.kind() == kind).toList();
    }

    /** A wind that changes by so much in each thousand metres, along the track from below. */
    record ShearedWind(double atGroundMps, double perKilometreMps, double acrossMps)
            implements Winds {
        @Override
        public double eastward(double pressurePa) {
            return acrossMps;
        }

        @Override
        public double northward(double pressurePa) {
            return atGroundMps + perKilometreMps / 1000.0 * scaleHeight(pressurePa);
        }

        @Override
        public boolean covers(double pressurePa) {
            return true;
        }

        /** Straight in ln p, as soundings are read. */
        static double scaleHeight(double pressurePa) {
            return 8000.0 * StrictMath.log(101325.0 / pressurePa);
        }
    }
}
