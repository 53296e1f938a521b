/**
 * What describes a climb over the ground: gradients, angle, direction, distance, mass, fuel flow.
 *
 * <p>Start at {@link org.climbwright.quantity.path.GroundGradient}. No method takes or returns
 * null.
 */
@NullMarked
package org.climbwright.quantity.path;

import org.jspecify.annotations.NullMarked;
