package org.climbwright.quantity.temperature;

import javax.measure.Quantity;
import javax.measure.Unit;
import javax.measure.quantity.Temperature;
import org.climbwright.quantity.Scalar;
import org.climbwright.quantity.edge.Edge;
import org.climbwright.unit.UnitScale;

/**
 * What temperatures have in common: a point on the scale, in kelvin from absolute zero.
 *
 * <p>Two points have no sum; their difference is a {@link TemperatureDifference}.
 *
 * @param <T> the type of temperature itself
 */
public abstract class TemperaturePoint<T extends TemperaturePoint<T>> extends Scalar<T> {
    private static final long serialVersionUID = 1L;

    TemperaturePoint(double si) {
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
     * Returns this value in degrees Celsius.
     *
     * @return the number [°C], as it came in
     */
    public double inCelsius() {
        return UnitScale.CELSIUS.fromSi(si());
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
     * Returns the temperature warmer by a difference.
     *
     * @param difference how much warmer; negative for colder
     * @return the other temperature
     * @throws IllegalArgumentException if that cannot be: below absolute zero, or above the highest
     *     temperature of its kind
     */
    public T plus(TemperatureDifference difference) {
        return ofSi(si() + difference.inKelvins());
    }

    /**
     * Returns the temperature colder by a difference.
     *
     * @param difference how much colder; negative for warmer
     * @return the other temperature
     * @throws IllegalArgumentException if that cannot be: below absolute zero, or above the highest
     *     temperature of its kind
     */
    public T minus(TemperatureDifference difference) {
        return ofSi(si() - difference.inKelvins());
    }

    /**
     * Returns how much warmer this temperature is than another of its kind.
     *
     * @param other the other temperature
     * @return the difference, negative when this one is the colder
     */
    public TemperatureDifference minus(T other) {
        return TemperatureDifference.ofKelvins(si() - other.si());
    }

    /**
     * Tells whether another temperature lies within a tolerance of this one.
     *
     * @param other the other temperature
     * @param tolerance the largest difference allowed
     * @return true if the two differ by the tolerance or less
     */
    public boolean isCloseTo(T other, TemperatureDifference tolerance) {
        return isWithin(other, tolerance.inKelvins());
    }

    abstract T ofSi(double kelvins);
}
