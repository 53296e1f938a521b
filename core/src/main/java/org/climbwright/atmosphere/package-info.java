/**
 * The air: the ICAO standard atmosphere, air warmer or colder than it, moist air, and any other as
 * a plug.
 *
 * <p>Start at {@link org.climbwright.atmosphere.Atmosphere} for the typed way and at {@link
 * org.climbwright.atmosphere.StandardAir} for plain doubles. Altitudes are geopotential unless a
 * name says otherwise; the standard atmosphere is valid from -5 to 80 km. What an altimeter makes
 * of it is in {@code altimetry}, winds are in {@code wind}. No method takes or returns null; a
 * double that is NaN means "not known", where the method says so.
 */
@NullMarked
package org.climbwright.atmosphere;

import org.jspecify.annotations.NullMarked;
