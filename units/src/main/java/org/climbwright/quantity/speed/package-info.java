/**
 * Airspeeds, ground speed, wind along the track and rates of climb, none of which stands in for
 * another.
 *
 * <p>Start at {@link org.climbwright.quantity.speed.CalibratedAirspeed}. No method takes or returns
 * null.
 */
@NullMarked
package org.climbwright.quantity.speed;

import org.jspecify.annotations.NullMarked;
