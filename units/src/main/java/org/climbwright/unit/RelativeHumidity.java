package org.climbwright.unit;

import javax.measure.Quantity;

/**
 * Vapour pressure over saturation vapour pressure; no other ratio is one. The SI unit is a ratio, 1
 * at saturation.
 */
public interface RelativeHumidity extends Quantity<RelativeHumidity> {}
