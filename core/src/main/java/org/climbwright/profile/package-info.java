/**
 * The climb as a whole: thrust, drag, weight, air and wind, integrated to a path.
 *
 * <p>A {@link org.climbwright.profile.ClimbProgramme} says how the climb is flown, an {@link
 * org.climbwright.profile.AeroplaneClimb} by what and in which air; the {@link
 * org.climbwright.profile.ClimbProfile} is the path that comes out, with what happens on it.
 *
 * <p>{@link org.climbwright.profile.ClimbSensitivity} flies it again with one thing changed and
 * tells what that costs or saves; {@link org.climbwright.profile.BestSchedule} finds the calibrated
 * airspeed of least fuel or least time to the level.
 */
@NullMarked
package org.climbwright.profile;

import org.jspecify.annotations.NullMarked;
