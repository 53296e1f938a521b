package org.climbwright.quantity.pressure;

import javax.measure.Quantity;
import javax.measure.Unit;
import javax.measure.quantity.Pressure;
import org.climbwright.quantity.Scalar;
import org.climbwright.quantity.edge.Edge;
import org.climbwright.unit.UnitScale;

/**
 * What pressures have in common: pascals, and the units that the trade tells them in.
 *
 * @param <T> the type of pressure itself
 */
public abstract class PressureValue<T extends PressureValue<T>> extends Scalar<T> {
    private static final long serialVersionUID = 1L;

    PressureValue(double si) {
        super(si);
    }

    /**
     * Returns this value in pascals.
     *
     * @return the number [Pa], as it came in
     */
    public double inPascals() {
        return si();
    }

    /**
     * Returns this value in hectopascals.
     *
     * @return the number [hPa], as it came in
     */
    public double inHectopascals() {
        return UnitScale.HECTOPASCAL.fromSi(si());
    }

    /**
     * Returns this value as a number of any unit of its kind.
     *
     * @param unit the unit wanted
     * @return the number of that unit, as it came in
     * @throws IllegalArgumentException if the unit does not fit
     */
    public double valueIn(Unit<Pressure> unit) {
        return Edge.valueIn(term(), si(), unit);
    }

    /**
     * Returns this value as a quantity, the way out to other libraries.
     *
     * @param unit the unit wanted
     * @return a new quantity in that unit
     * @throws IllegalArgumentException if the unit does not fit
     */
    public Quantity<Pressure> toQuantity(Unit<Pressure> unit) {
        return Edge.quantity(term(), si(), unit);
    }

    /**
     * Tells whether another value lies within a tolerance of this one.
     *
     * @param other the other value
     * @param tolerance the largest difference allowed
     * @return true if the two differ by the tolerance or less
     */
    public boolean isCloseTo(T other, DifferentialPressure tolerance) {
        return isWithin(other, tolerance.inPascals());
    }
}
