/**
 * The climb as a whole: thrust, drag, weight, air and wind, integrated to a path.
 *
 * <p>A {@link org.climbwright.profile.ClimbProgramme} says how the climb is flown, an {@link
 * org.climbwright.profile.AeroplaneClimb} by what and in which air; the {@link
 * org.climbwright.profile.ClimbProfile} is the path that comes out, with what happens on it.
 */
@NullMarked
package org.climbwright.profile;

import org.jspecify.annotations.NullMarked;
