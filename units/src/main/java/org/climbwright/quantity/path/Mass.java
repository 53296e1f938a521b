package org.climbwright.quantity.path;

import javax.measure.Quantity;
import javax.measure.Unit;
import org.climbwright.quantity.Scalar;
import org.climbwright.quantity.Term;
import org.climbwright.quantity.edge.Edge;
import org.climbwright.unit.UnitScale;

/**
 * The mass of the aeroplane with all that is in it.
 *
 * <p>Not its weight, which is a force.
 */
public final class Mass extends Scalar<Mass> {
    private static final long serialVersionUID = 1L;
    private static final Term TERM =
            Term.of("mass", UnitScale.KILOGRAM, UnitScale.KILOGRAM).from(0.0);

    private Mass(double si) {
        super(si);
    }

    /**
     * Returns a mass given in kilograms.
     *
     * @param kilograms the value [kg], 0 or more, finite
     * @return the value
     * @throws IllegalArgumentException if the value cannot be: it must be 0 or more, finite
     */
    public static Mass ofKilograms(double kilograms) {
        return new Mass(TERM.inSi(kilograms));
    }

    /**
     * Returns a mass given in any unit of mass.
     *
     * @param value the number
     * @param unit its unit
     * @return the value
     * @throws IllegalArgumentException if the value cannot be, or the unit does not fit
     */
    public static Mass of(double value, Unit<javax.measure.quantity.Mass> unit) {
        return new Mass(Edge.si(TERM, value, unit));
    }

    /**
     * Returns a mass given as a quantity.
     *
     * @param quantity the quantity, in any unit of mass
     * @return the value
     * @throws IllegalArgumentException if the value cannot be, or the unit or its scale does not
     *     fit
     */
    public static Mass of(Quantity<javax.measure.quantity.Mass> quantity) {
        return new Mass(Edge.si(TERM, quantity));
    }

    /**
     * Returns the mass that a text stands for.
     *
     * @param text a number, a space and a unit, such as {@code "58000 kg"}
     * @return the value
     * @throws org.climbwright.unit.UnitTextException if the text is of any other form
     * @throws IllegalArgumentException if the value cannot be
     */
    public static Mass parse(String text) {
        return new Mass(TERM.parse(text));
    }

    /**
     * Returns this value in kilograms.
     *
     * @return the number [kg], as it came in
     */
    public double inKilograms() {
        return si();
    }

    /**
     * Returns this value as a number of any unit of its kind.
     *
     * @param unit the unit wanted
     * @return the number of that unit, as it came in
     * @throws IllegalArgumentException if the unit does not fit
     */
    public double valueIn(Unit<javax.measure.quantity.Mass> unit) {
        return Edge.valueIn(term(), si(), unit);
    }

    /**
     * Returns this value as a quantity, the way out to other libraries.
     *
     * @param unit the unit wanted
     * @return a new quantity in that unit
     * @throws IllegalArgumentException if the unit does not fit
     */
    public Quantity<javax.measure.quantity.Mass> toQuantity(
            Unit<javax.measure.quantity.Mass> unit) {
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
    public boolean isCloseTo(Mass other, Mass tolerance) {
        return isWithin(other, tolerance.si());
    }
}
