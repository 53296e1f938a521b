package org.climbwright.quantity.path;

import javax.measure.Quantity;
import javax.measure.Unit;
import org.climbwright.quantity.Scalar;
import org.climbwright.quantity.edge.Edge;
import org.climbwright.unit.Gradient;
import org.climbwright.unit.UnitScale;

/**
 * What gradients have in common: height gained per horizontal distance covered, 0.033 for 3.3 %.
 *
 * <p>The distance is through the air for one type and over the ground for the other; wind lies
 * between.
 *
 * @param <T> the type of gradient itself
 */
public abstract class Slope<T extends Slope<T>> extends Scalar<T> {
    private static final long serialVersionUID = 1L;

    Slope(double si) {
        super(si);
    }

    /**
     * Returns this value in metres per metre.
     *
     * @return the number [m/m], as it came in
     */
    public double inMetresPerMetre() {
        return si();
    }

    /**
     * Returns this value in percent.
     *
     * @return the number [%], as it came in
     */
    public double inPercent() {
        return UnitScale.PERCENT_GRADIENT.fromSi(si());
    }

    /**
     * Returns this value in feet per nautical mile.
     *
     * @return the number [ft/NM], as it came in
     */
    public double inFeetPerNauticalMile() {
        return UnitScale.FOOT_PER_NAUTICAL_MILE.fromSi(si());
    }

    /**
     * Returns this value as a number of any unit of its kind.
     *
     * @param unit the unit wanted
     * @return the number of that unit, as it came in
     * @throws IllegalArgumentException if the unit does not fit
     */
    public double valueIn(Unit<Gradient> unit) {
        return Edge.valueIn(term(), si(), unit);
    }

    /**
     * Returns this value as a quantity, the way out to other libraries.
     *
     * @param unit the unit wanted
     * @return a new quantity in that unit
     * @throws IllegalArgumentException if the unit does not fit
     */
    public Quantity<Gradient> toQuantity(Unit<Gradient> unit) {
        return Edge.quantity(term(), si(), unit);
    }

    /**
     * Tells whether another value lies within a tolerance of this one.
     *
     * @param other the other value
     * @param tolerance the largest difference allowed, as a value of the same kind
     * @return true if the two differ by the tolerance or less
     */
    public boolean isCloseTo(T other, T tolerance) {
        return isWithin(other, tolerance.si());
    }
}
