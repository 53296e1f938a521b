package org.climbwright.unit;

import javax.measure.Quantity;

/**
 * Mass of water vapour per mass of dry air; no other ratio is one. The SI unit is kilogram per
 * kilogram.
 */
public interface MixingRatio extends Quantity<MixingRatio> {}
