package org.climbwright.performance;

import org.climbwright.path.Side;
import org.climbwright.path.SpeedSchedule;

/**
 * The speed that a climb holds at each level: a plug, for a search over levels.
 *
 * <p>An implementation is immutable.
 */
@FunctionalInterface
public interface ClimbSpeeds {
    /**
     * Returns the speed at a level.
     *
     * @param pressureAltitudeM pressure altitude [m]
     * @param side from which side, where the speed changes at that level
     * @return the speed held there
     */
    ClimbSpeed at(double pressureAltitudeM, Side side);

    /**
     * Returns where the speed changes from one to another.
     *
     * @return pressure altitudes [m], in any order; empty where it is one speed
     */
    default double[] bendsM() {
        return new double[0];
    }

    /**
     * Returns one speed for all levels.
     *
     * @param speed the speed
     * @return that speed everywhere
     */
    static ClimbSpeeds constant(ClimbSpeed speed) {
        return (pressureAltitudeM, side) -> speed;
    }

    /**
     * Returns the speeds of a schedule.
     *
     * @param schedule calibrated airspeeds, then a Mach number
     * @return what it holds at each level
     */
    static ClimbSpeeds of(SpeedSchedule schedule) {
        return new ScheduledClimbSpeeds(schedule);
    }
}
