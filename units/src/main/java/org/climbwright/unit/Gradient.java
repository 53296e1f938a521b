package org.climbwright.unit;

import javax.measure.Quantity;

/** Height gained per distance covered; no other ratio is one. The SI unit is metre per metre. */
public interface Gradient extends Quantity<Gradient> {}
