package org.climbwright.quantity.path;

import javax.measure.Quantity;
import javax.measure.Unit;
import javax.measure.quantity.Length;
import org.climbwright.quantity.Scalar;
import org.climbwright.quantity.Term;
import org.climbwright.quantity.edge.Edge;
import org.climbwright.unit.UnitScale;

/**
 * Horizontal distance covered over the ground.
 *
 * <p>Not an altitude change, although both are lengths.
 */
public final class GroundDistance extends Scalar<GroundDistance> {
    private static final long serialVersionUID = 1L;
    private static final Term TERM =
            Term.of("distance over the ground", UnitScale.METRE, UnitScale.NAUTICAL_MILE).from(0.0);

    private GroundDistance(double si) {
        super(si);
    }

    /**
     * Returns a distance over the ground given in metres.
     *
     * @param metres the value [m], 0 or more, finite
     * @return the value
     * @throws IllegalArgumentException if the value cannot be: it must be 0 or more, finite
     */
    public static GroundDistance ofMetres(double metres) {
        return new GroundDistance(TERM.inSi(metres));
    }

    /**
     * Returns a distance over the ground given in nautical miles.
     *
     * @param nauticalMiles the value [NM], 0 or more, finite
     * @return the value
     * @throws IllegalArgumentException if the value cannot be: it must be 0 or more, finite
     */
    public static GroundDistance ofNauticalMiles(double nauticalMiles) {
        return new GroundDistance(TERM.si(nauticalMiles, UnitScale.NAUTICAL_MILE));
    }

    /**
     * Returns a distance over the ground given in any unit of length.
     *
     * @param value the number
     * @param unit its unit
     * @return the value
     * @throws IllegalArgumentException if the value cannot be, or the unit does not fit
     */
    public static GroundDistance of(double value, Unit<Length> unit) {
        return new GroundDistance(Edge.si(TERM, value, unit));
    }

    /**
     * Returns a distance over the ground given as a quantity.
     *
     * @param quantity the quantity, in any unit of length
     * @return the value
     * @throws IllegalArgumentException if the value cannot be, or the unit or its scale does not
     *     fit
     */
    public static GroundDistance of(Quantity<Length> quantity) {
        return new GroundDistance(Edge.si(TERM, quantity));
    }

    /**
     * Returns the distance over the ground that a text stands for.
     *
     * @param text a number, a space and a unit, such as {@code "42.5 NM"}
     * @return the value
     * @throws org.climbwright.unit.UnitTextException if the text is of any other form
     * @throws IllegalArgumentException if the value cannot be
     */
    public static GroundDistance parse(String text) {
        return new GroundDistance(TERM.parse(text));
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
     * Returns this value in nautical miles.
     *
     * @return the number [NM], as it came in
     */
    public double inNauticalMiles() {
        return UnitScale.NAUTICAL_MILE.fromSi(si());
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

    @Override
    protected Term term() {
        return TERM;
    }

    /**
     * Tells whether another value lies within a tolerance of this one.
     *
     * @param other the other value
     * @param tolerance the largest difference allowed, as a value of the same kind
     * @return true if the two differ by the tolerance or less
     */
    public boolean isCloseTo(GroundDistance other, GroundDistance tolerance) {
        return isWithin(other, tolerance.si());
    }
}
