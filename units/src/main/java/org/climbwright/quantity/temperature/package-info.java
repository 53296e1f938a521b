/**
 * Temperatures, which are points, and temperature differences, which are intervals.
 *
 * <p>Start at {@link org.climbwright.quantity.temperature.StaticAirTemperature}. No method takes or
 * returns null.
 */
@NullMarked
package org.climbwright.quantity.temperature;

import org.jspecify.annotations.NullMarked;
