package org.climbwright.unit;

import javax.measure.Quantity;

/** Shear stress of a fluid per velocity gradient. The SI unit is pascal second. */
public interface DynamicViscosity extends Quantity<DynamicViscosity> {}
