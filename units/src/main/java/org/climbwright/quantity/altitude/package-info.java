/**
 * Altitudes and heights, each over its own datum, and the change between two of them.
 *
 * <p>Start at {@link org.climbwright.quantity.altitude.PressureAltitude}. No method takes or
 * returns null.
 */
@NullMarked
package org.climbwright.quantity.altitude;

import org.jspecify.annotations.NullMarked;
