/**
 * How a climb is flown, without why: the speed schedule, the rate, and the path they make.
 *
 * <p>Start at {@link org.climbwright.path.ClimbPath}. The coordinate is pressure altitude, by which
 * climbs are flown; time and distance are integrated. No method takes or returns null; a double
 * that is NaN means "not known", where the method says so.
 */
@NullMarked
package org.climbwright.path;

import org.jspecify.annotations.NullMarked;
