package org.climbwright.path;

import java.util.List;
import org.climbwright.atmosphere.Atmosphere;
import org.climbwright.atmosphere.wind.Winds;
import org.climbwright.quantity.altitude.PressureAltitude;
import org.climbwright.quantity.path.Mass;
import org.climbwright.quantity.path.TrueDirection;
import org.climbwright.quantity.speed.CalibratedAirspeed;
import org.climbwright.quantity.speed.Mach;
import org.climbwright.quantity.speed.PressureAltitudeRate;
import org.climbwright.quantity.temperature.IsaDeviation;

/** Invented aeroplanes and climbs for tests; no figure of them is a reference. */
public final class Scene {
    private static final Mass MASS = Mass.ofKilograms(50000);

    private Scene() {}

    public static ClimbRates.Row row(double feet, double... feetPerMinute) {
        return new ClimbRates.Row(
                PressureAltitude.ofFeet(feet),
                java.util.Arrays.stream(feetPerMinute)
                        .mapToObj(PressureAltitudeRate::ofFeetPerMinute)
                        .map(PressureAltitudeRate::inMetresPerSecond)
                        .toList());
    }

    /** Rates for one mass, as the instrument shows them, in standard air. */
    public static ClimbRates rates(ClimbRates.Row... rows) {
        return ClimbRates.of(
                ClimbRates.Kind.PRESSURE_ALTITUDE,
                IsaDeviation.ofKelvins(0),
                List.of(MASS),
                List.of(rows));
    }

    public static ClimbRates constantRate(double feetPerMinute) {
        return rates(row(0, feetPerMinute), row(45000, feetPerMinute));
    }

    public static SpeedSchedule schedule() {
        return SpeedSchedule.of(CalibratedAirspeed.ofKnots(290), Mach.of(0.76))
                .withLimit(CalibratedAirspeed.ofKnots(250), PressureAltitude.ofFeet(10000));
    }

    public static Climb climb(ClimbRates rates, Atmosphere air, Winds winds) {
        return new Climb(rates, MASS, schedule(), air, winds, TrueDirection.ofDegrees(0));
    }

    public static ClimbPath path(ClimbRates rates, Atmosphere air, Winds winds) {
        return climb(rates, air, winds)
                .between(PressureAltitude.ofFeet(1000), PressureAltitude.ofFeet(35000));
    }

    public static ClimbPath calmStandardClimb() {
        return path(constantRate(1500), Atmosphere.standard(), Winds.calm());
    }
}
