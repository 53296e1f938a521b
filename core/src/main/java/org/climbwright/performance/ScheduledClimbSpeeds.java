package org.climbwright.performance;

import org.climbwright.path.Side;
import org.climbwright.path.SpeedSchedule;

/** The speeds of a schedule, each as the kind that is held. */
record ScheduledClimbSpeeds(SpeedSchedule schedule) implements ClimbSpeeds {
    @Override
    public ClimbSpeed at(double pressureAltitudeM, Side side) {
        return ClimbSpeed.of(
                schedule.isMachHeld(pressureAltitudeM, side)
                        ? HeldSpeed.MACH
                        : HeldSpeed.CALIBRATED_AIRSPEED,
                schedule.held(pressureAltitudeM, side));
    }

    @Override
    public double[] bendsM() {
        return schedule.bendsM();
    }
}
