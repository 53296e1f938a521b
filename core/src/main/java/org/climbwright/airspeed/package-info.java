/**
 * Calibrated, equivalent and true airspeed, Mach number, pitot pressures and total temperature.
 *
 * <p>Start at {@link org.climbwright.airspeed.Airspeeds} for the typed way and at {@link
 * org.climbwright.airspeed.AirspeedConversion} for plain doubles. What a temperature probe feels,
 * the crossover of two speeds, limits of speed and the errors of an indicator have a type each.
 * From rest to Mach 5. No method takes or returns null.
 */
@NullMarked
package org.climbwright.airspeed;

import org.jspecify.annotations.NullMarked;
