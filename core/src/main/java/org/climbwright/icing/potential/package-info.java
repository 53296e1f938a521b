/**
 * What a profile of the air says about icing: the -8D line, moist layers and forecast cloud, the
 * interest functions of a forecast scheme, a severity matrix, levels of 0 °C, and the structures
 * that freezing rain and drizzle fall from.
 *
 * <p>Start at {@link org.climbwright.icing.potential.FreezingLevels#in} and {@link
 * org.climbwright.icing.potential.MinusEightD#spansIn}. Any {@link
 * org.climbwright.atmosphere.Atmosphere} will do. Each rule stands on its own, with its source and
 * its known weakness; they were made for other purposes, and need not agree. Profiles are looked at
 * up to 50 hPa, some 20 km.
 *
 * <p>Limits of use: indications in the air given, not a forecast, and not a measure of what ice
 * does to an aeroplane. Nothing found is never "no icing": most rules know nothing of drops, and
 * one profile is the air of its place and hour. Forecasts and reports of the meteorological
 * services, the flight manual, the operator's procedures and what the crew sees decide. No method
 * takes or returns null; where humidity is not known the answer says so.
 */
@NullMarked
package org.climbwright.icing.potential;

import org.jspecify.annotations.NullMarked;
