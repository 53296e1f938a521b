package org.climbwright.unit;

import javax.measure.Quantity;

/**
 * Mass per time, such as a fuel flow or the inflow of a cabin. The SI unit is kilogram per second.
 */
public interface MassFlow extends Quantity<MassFlow> {}
