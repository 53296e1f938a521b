package org.climbwright.unit;

import javax.measure.Quantity;

/** Heat flow per temperature gradient. The SI unit is watt per metre and kelvin. */
public interface ThermalConductivity extends Quantity<ThermalConductivity> {}
