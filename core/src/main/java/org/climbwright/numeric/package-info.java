/**
 * The small numerical tools that every room shares: a bracketing solver and a quadrature.
 *
 * <p>Not exported. Both use only the four operations and the square root, so that a figure is the
 * same on every machine.
 */
@NullMarked
package org.climbwright.numeric;

import org.jspecify.annotations.NullMarked;
