package org.climbwright.profile;

import org.climbwright.atmosphere.Atmosphere;
import org.climbwright.atmosphere.wind.Winds;
import org.climbwright.path.SpeedSchedule;
import org.climbwright.performance.Aeroplane;
import org.climbwright.performance.ClimbAir;
import org.climbwright.quantity.altitude.PressureAltitude;
import org.climbwright.quantity.path.Mass;
import org.climbwright.quantity.path.TrueDirection;
import org.climbwright.quantity.speed.CalibratedAirspeed;
import org.climbwright.quantity.speed.Mach;

/** Flies a climb by both integrations, in a machine that has the jar of one of them or not. */
final class ProgramWithoutCommonsMath {
    private ProgramWithoutCommonsMath() {}

    public static void main(String[] arguments) {
        Aeroplane aeroplane =
                Aeroplane.of(
                        2,
                        (liftN, mach, q, use) -> 2.5 * q + 0.045 * liftN * liftN / (120.0 * q),
                        (mach, pressurePa, temperatureK, use) -> use.operating() * pressurePa,
                        (thrustN, mach, pressurePa, temperatureK, use) -> 1.6e-5 * thrustN);
        AeroplaneClimb climb =
                new AeroplaneClimb(
                        aeroplane,
                        Mass.ofKilograms(60000),
                        ClimbProgramme.of(
                                SpeedSchedule.of(CalibratedAirspeed.ofKnots(290), Mach.of(0.76)),
                                0.4),
                        ClimbAir.of(
                                Atmosphere.standard(), Winds.calm(), TrueDirection.ofDegrees(0)));
        PressureAltitude bottom = PressureAltitude.ofFeet(1500);
        PressureAltitude level = PressureAltitude.ofFlightLevel(300);
        System.out.println(
                ProgramWithoutCommonsMath.class.getModule().getName()
                        + ": "
                        + climb.between(bottom, level).endsBecause());
        try {
            System.out.println(climb.betweenByDormandPrince(bottom, level).endsBecause());
        } catch (IllegalStateException refused) {
            System.out.println(refused.getMessage());
        }
    }
}
