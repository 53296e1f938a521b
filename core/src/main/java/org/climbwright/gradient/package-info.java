/**
 * The geometry of a climb over the ground: gradients, angles and the rates that they take, and what
 * a climb must do for a height at a distance.
 *
 * <p>Start at {@link org.climbwright.gradient.ClimbGradient}. Gradients are true height over
 * distance on the ground; a gradient through the air is another type. No method takes or returns
 * null.
 *
 * <p>Limits of use: for study and simulation. The flight manual, published procedures, the
 * operator's procedures, local regulations and licensed practice decide.
 */
@NullMarked
package org.climbwright.gradient;

import org.jspecify.annotations.NullMarked;
