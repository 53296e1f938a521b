package org.climbwright.unit;

import javax.measure.Quantity;

/** Pressure per time, such as that of a cabin. The SI unit is pascal per second. */
public interface PressureRate extends Quantity<PressureRate> {}
