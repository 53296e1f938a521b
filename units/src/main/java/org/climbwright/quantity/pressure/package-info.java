/**
 * Pressures of the air and of its vapour, of the pitot tube, of the cabin and its rate, and the
 * setting of an altimeter.
 *
 * <p>Start at {@link org.climbwright.quantity.pressure.StaticPressure}. No method takes or returns
 * null.
 */
@NullMarked
package org.climbwright.quantity.pressure;

import org.jspecify.annotations.NullMarked;
