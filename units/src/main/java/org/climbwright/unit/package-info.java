/**
 * The units of the trade: their exact factors, their strict text form, and the same units on
 * javax.measure.
 *
 * <p>Start at {@link org.climbwright.unit.UnitScale}, the one table of factors, or at {@link
 * org.climbwright.unit.AviationUnits} if you come with a {@code javax.measure.Quantity}. No method
 * takes or returns null.
 */
@NullMarked
package org.climbwright.unit;

import org.jspecify.annotations.NullMarked;
