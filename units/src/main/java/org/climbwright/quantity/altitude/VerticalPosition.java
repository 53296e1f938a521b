package org.climbwright.quantity.altitude;

import javax.measure.Quantity;
import javax.measure.Unit;
import javax.measure.quantity.Length;
import org.climbwright.quantity.Scalar;
import org.climbwright.quantity.edge.Edge;
import org.climbwright.unit.UnitScale;

/**
 * What altitudes and heights have in common: a length upwards from a datum, which each type names.
 *
 * <p>Two positions have no sum; their difference is an {@link AltitudeChange}, and a position and a
 * change make a position over the same datum.
 *
 * @param <T> the type of position itself
 */
public abstract class VerticalPosition<T extends VerticalPosition<T>> extends Scalar<T> {
    private static final long serialVersionUID = 1L;

    VerticalPosition(double si) {
        super(si);
    }

    /**
     * Returns this value in metres.
     *
     * @return the number [m], as it came in
     */
    public double inMetres() {
        return si();
    }

    /**
     * Returns this value in feet.
     *
     * @return the number [ft], as it came in
     */
    public double inFeet() {
        return UnitScale.FOOT.fromSi(si());
    }

    /**
     * Returns this value as a number of any unit of its kind.
     *
     * @param unit the unit wanted
     * @return the number of that unit, as it came in
     * @throws IllegalArgumentException if the unit does not fit
     */
    public double valueIn(Unit<Length> unit) {
        return Edge.valueIn(term(), si(), unit);
    }

    /**
     * Returns this value as a quantity, the way out to other libraries.
     *
     * @param unit the unit wanted
     * @return a new quantity in that unit
     * @throws IllegalArgumentException if the unit does not fit
     */
    public Quantity<Length> toQuantity(Unit<Length> unit) {
        return Edge.quantity(term(), si(), unit);
    }

    /**
     * Returns the position higher by a change, over the same datum.
     *
     * @param change how much higher; negative for lower
     * @return the other position
     * @throws IllegalArgumentException if that position cannot be
     */
    public T plus(AltitudeChange change) {
        return ofSi(si() + change.inMetres());
    }

    /**
     * Returns the position lower by a change, over the same datum.
     *
     * @param change how much lower; negative for higher
     * @return the other position
     * @throws IllegalArgumentException if that position cannot be
     */
    public T minus(AltitudeChange change) {
        return ofSi(si() - change.inMetres());
    }

    /**
     * Returns how much higher this position is than another over the same datum.
     *
     * @param other the other position
     * @return the difference, negative when this one is the lower
     */
    public AltitudeChange minus(T other) {
        return AltitudeChange.ofMetres(si() - other.si());
    }

    /**
     * Tells whether another position lies within a tolerance of this one.
     *
     * @param other the other position
     * @param tolerance the largest difference allowed
     * @return true if the two differ by the tolerance or less
     */
    public boolean isCloseTo(T other, AltitudeChange tolerance) {
        return isWithin(other, tolerance.inMetres());
    }

    abstract T ofSi(double metres);
}
