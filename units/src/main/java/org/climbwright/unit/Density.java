package org.climbwright.unit;

import javax.measure.Quantity;

/**
 * Mass per volume, of air or of the liquid water in it. The SI unit is kilogram per cubic metre.
 */
public interface Density extends Quantity<Density> {}
