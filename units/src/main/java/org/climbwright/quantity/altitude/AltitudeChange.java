package org.climbwright.quantity.altitude;

import javax.measure.Quantity;
import javax.measure.Unit;
import javax.measure.quantity.Length;
import org.climbwright.quantity.Scalar;
import org.climbwright.quantity.Term;
import org.climbwright.quantity.edge.Edge;
import org.climbwright.unit.UnitScale;

/**
 * How much higher one position is than another over the same datum: a difference, negative
 * downwards.
 *
 * <p>Not an altitude and not a {@link Height}: it counts from no point.
 */
public final class AltitudeChange extends Scalar<AltitudeChange> {
    private static final long serialVersionUID = 1L;
    private static final Term TERM = Term.of("altitude change", UnitScale.METRE, UnitScale.FOOT);

    private AltitudeChange(double si) {
        super(si);
    }

    /**
     * Returns an altitude change given in metres.
     *
     * @param metres the value [m], any finite number
     * @return the value
     * @throws IllegalArgumentException if the value cannot be: it must be any finite number
     */
    public static AltitudeChange ofMetres(double metres) {
        return new AltitudeChange(TERM.inSi(metres));
    }

    /**
     * Returns an altitude change given in feet.
     *
     * @param feet the value [ft], any finite number
     * @return the value
     * @throws IllegalArgumentException if the value cannot be: it must be any finite number
     */
    public static AltitudeChange ofFeet(double feet) {
        return new AltitudeChange(TERM.si(feet, UnitScale.FOOT));
    }

    /**
     * Returns an altitude change given in any unit of length.
     *
     * @param value the number
     * @param unit its unit
     * @return the value
     * @throws IllegalArgumentException if the value cannot be, or the unit does not fit
     */
    public static AltitudeChange of(double value, Unit<Length> unit) {
        return new AltitudeChange(Edge.si(TERM, value, unit));
    }

    /**
     * Returns an altitude change given as a quantity.
     *
     * @param quantity the quantity, in any unit of length
     * @return the value
     * @throws IllegalArgumentException if the value cannot be, or the unit or its scale does not
     *     fit
     */
    public static AltitudeChange of(Quantity<Length> quantity) {
        return new AltitudeChange(Edge.si(TERM, quantity));
    }

    /**
     * Returns the altitude change that a text stands for.
     *
     * @param text a number, a space and a unit, such as {@code "35000 ft"}
     * @return the value
     * @throws org.climbwright.unit.UnitTextException if the text is of any other form
     * @throws IllegalArgumentException if the value cannot be
     */
    public static AltitudeChange parse(String text) {
        return new AltitudeChange(TERM.parse(text));
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

    @Override
    protected Term term() {
        return TERM;
    }

    /**
     * Returns the sum of two changes.
     *
     * @param other the other change
     * @return one after the other
     */
    public AltitudeChange plus(AltitudeChange other) {
        return new AltitudeChange(TERM.check(si() + other.si()));
    }

    /**
     * Returns the difference of two changes.
     *
     * @param other the other change
     * @return this one less the other
     */
    public AltitudeChange minus(AltitudeChange other) {
        return new AltitudeChange(TERM.check(si() - other.si()));
    }

    /**
     * Returns a multiple of this change.
     *
     * @param factor any finite number
     * @return this change that many times
     * @throws IllegalArgumentException if the result is not finite
     */
    public AltitudeChange times(double factor) {
        return new AltitudeChange(TERM.check(si() * factor));
    }

    /**
     * Tells whether another value lies within a tolerance of this one.
     *
     * @param other the other value
     * @param tolerance the largest difference allowed, as a value of the same kind
     * @return true if the two differ by the tolerance or less
     */
    public boolean isCloseTo(AltitudeChange other, AltitudeChange tolerance) {
        return isWithin(other, tolerance.si());
    }
}
