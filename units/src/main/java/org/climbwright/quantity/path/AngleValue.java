package org.climbwright.quantity.path;

import javax.measure.Quantity;
import javax.measure.Unit;
import javax.measure.quantity.Angle;
import org.climbwright.quantity.Scalar;
import org.climbwright.quantity.edge.Edge;
import org.climbwright.unit.UnitScale;

/**
 * What angles have in common: radians, and the degrees that the trade tells them in.
 *
 * @param <T> the type of angle itself
 */
public abstract class AngleValue<T extends AngleValue<T>> extends Scalar<T> {
    private static final long serialVersionUID = 1L;

    AngleValue(double si) {
        super(si);
    }

    /**
     * Returns this value in radians.
     *
     * @return the number [rad], as it came in
     */
    public double inRadians() {
        return si();
    }

    /**
     * Returns this value in degrees.
     *
     * @return the number [deg], as it came in
     */
    public double inDegrees() {
        return UnitScale.DEGREE.fromSi(si());
    }

    /**
     * Returns this value as a number of any unit of its kind.
     *
     * @param unit the unit wanted
     * @return the number of that unit, as it came in
     * @throws IllegalArgumentException if the unit does not fit
     */
    public double valueIn(Unit<Angle> unit) {
        return Edge.valueIn(term(), si(), unit);
    }

    /**
     * Returns this value as a quantity, the way out to other libraries.
     *
     * @param unit the unit wanted
     * @return a new quantity in that unit
     * @throws IllegalArgumentException if the unit does not fit
     */
    public Quantity<Angle> toQuantity(Unit<Angle> unit) {
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
