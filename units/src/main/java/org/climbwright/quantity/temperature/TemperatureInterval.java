package org.climbwright.quantity.temperature;

import javax.measure.Quantity;
import javax.measure.Unit;
import javax.measure.quantity.Temperature;
import org.climbwright.quantity.Scalar;
import org.climbwright.quantity.edge.Edge;

/**
 * What temperature differences have in common: an interval, for which 1 °C is 1 K.
 *
 * @param <T> the type of interval itself
 */
public abstract class TemperatureInterval<T extends TemperatureInterval<T>> extends Scalar<T> {
    private static final long serialVersionUID = 1L;

    TemperatureInterval(double si) {
        super(si);
    }

    /**
     * Returns this value in kelvin.
     *
     * @return the number [K], as it came in
     */
    public double inKelvins() {
        return si();
    }

    /**
     * Returns this value as a number of any unit of its kind.
     *
     * @param unit the unit wanted
     * @return the number of that unit, as it came in
     * @throws IllegalArgumentException if the unit does not fit
     */
    public double valueIn(Unit<Temperature> unit) {
        return Edge.valueIn(term(), si(), unit);
    }

    /**
     * Returns this value as a quantity, the way out to other libraries.
     *
     * @param unit the unit wanted
     * @return a new quantity in that unit
     * @throws IllegalArgumentException if the unit does not fit
     */
    public Quantity<Temperature> toQuantity(Unit<Temperature> unit) {
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
