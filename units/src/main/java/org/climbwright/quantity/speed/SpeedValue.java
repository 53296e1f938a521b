package org.climbwright.quantity.speed;

import javax.measure.Quantity;
import javax.measure.Unit;
import javax.measure.quantity.Speed;
import org.climbwright.quantity.Scalar;
import org.climbwright.quantity.edge.Edge;

/**
 * What speeds have in common: metres per second, in the unit that each kind of speed is told in.
 *
 * @param <T> the type of speed itself
 */
public abstract class SpeedValue<T extends SpeedValue<T>> extends Scalar<T> {
    private static final long serialVersionUID = 1L;

    SpeedValue(double si) {
        super(si);
    }

    /**
     * Returns this value in metres per second.
     *
     * @return the number [m/s], as it came in
     */
    public double inMetresPerSecond() {
        return si();
    }

    /**
     * Returns this value as a number of any unit of its kind.
     *
     * @param unit the unit wanted
     * @return the number of that unit, as it came in
     * @throws IllegalArgumentException if the unit does not fit
     */
    public double valueIn(Unit<Speed> unit) {
        return Edge.valueIn(term(), si(), unit);
    }

    /**
     * Returns this value as a quantity, the way out to other libraries.
     *
     * @param unit the unit wanted
     * @return a new quantity in that unit
     * @throws IllegalArgumentException if the unit does not fit
     */
    public Quantity<Speed> toQuantity(Unit<Speed> unit) {
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
