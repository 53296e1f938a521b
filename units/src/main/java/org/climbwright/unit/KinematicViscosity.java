package org.climbwright.unit;

import javax.measure.Quantity;

/** Dynamic viscosity per density. The SI unit is square metre per second. */
public interface KinematicViscosity extends Quantity<KinematicViscosity> {}
