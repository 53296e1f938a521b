package org.climbwright.quantity.altitude;

import javax.measure.Quantity;
import javax.measure.Unit;
import javax.measure.quantity.Length;
import org.climbwright.quantity.Term;
import org.climbwright.quantity.edge.Edge;
import org.climbwright.unit.UnitScale;

/**
 * The pressure in the cabin, told as the pressure altitude at which the standard atmosphere has it.
 *
 * <p>Not {@link PressureAltitude}, which is outside the hull.
 */
public final class CabinAltitude extends VerticalPosition<CabinAltitude> {
    private static final long serialVersionUID = 1L;
    private static final Term TERM = Term.of("cabin altitude", UnitScale.METRE, UnitScale.FOOT);

    private CabinAltitude(double si) {
        super(si);
    }

    /**
     * Returns a cabin altitude given in metres.
     *
     * @param metres the value [m], any finite number
     * @return the value
     * @throws IllegalArgumentException if the value cannot be: it must be any finite number
     */
    public static CabinAltitude ofMetres(double metres) {
        return new CabinAltitude(TERM.inSi(metres));
    }

    /**
     * Returns a cabin altitude given in feet.
     *
     * @param feet the value [ft], any finite number
     * @return the value
     * @throws IllegalArgumentException if the value cannot be: it must be any finite number
     */
    public static CabinAltitude ofFeet(double feet) {
        return new CabinAltitude(TERM.si(feet, UnitScale.FOOT));
    }

    /**
     * Returns a cabin altitude given in any unit of length.
     *
     * @param value the number
     * @param unit its unit
     * @return the value
     * @throws IllegalArgumentException if the value cannot be, or the unit does not fit
     */
    public static CabinAltitude of(double value, Unit<Length> unit) {
        return new CabinAltitude(Edge.si(TERM, value, unit));
    }

    /**
     * Returns a cabin altitude given as a quantity.
     *
     * @param quantity the quantity, in any unit of length
     * @return the value
     * @throws IllegalArgumentException if the value cannot be, or the unit or its scale does not
     *     fit
     */
    public static CabinAltitude of(Quantity<Length> quantity) {
        return new CabinAltitude(Edge.si(TERM, quantity));
    }

    /**
     * Returns the cabin altitude that a text stands for.
     *
     * @param text a number, a space and a unit, such as {@code "35000 ft"}
     * @return the value
     * @throws org.climbwright.unit.UnitTextException if the text is of any other form
     * @throws IllegalArgumentException if the value cannot be
     */
    public static CabinAltitude parse(String text) {
        return new CabinAltitude(TERM.parse(text));
    }

    @Override
    protected Term term() {
        return TERM;
    }

    @Override
    CabinAltitude ofSi(double metres) {
        return ofMetres(metres);
    }
}
