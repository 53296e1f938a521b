package org.climbwright.quantity.altitude;

import javax.measure.Quantity;
import javax.measure.Unit;
import javax.measure.quantity.Length;
import org.climbwright.quantity.Term;
import org.climbwright.quantity.edge.Edge;
import org.climbwright.unit.UnitScale;

/**
 * Distance upwards from the ground or another named point: what a radio altimeter has.
 *
 * <p>Not an altitude: altitudes count from the sea or from a pressure level.
 */
public final class Height extends VerticalPosition<Height> {
    private static final long serialVersionUID = 1L;
    private static final Term TERM = Term.of("height", UnitScale.METRE, UnitScale.FOOT);

    private Height(double si) {
        super(si);
    }

    /**
     * Returns a height given in metres.
     *
     * @param metres the value [m], any finite number
     * @return the value
     * @throws IllegalArgumentException if the value cannot be: it must be any finite number
     */
    public static Height ofMetres(double metres) {
        return new Height(TERM.inSi(metres));
    }

    /**
     * Returns a height given in feet.
     *
     * @param feet the value [ft], any finite number
     * @return the value
     * @throws IllegalArgumentException if the value cannot be: it must be any finite number
     */
    public static Height ofFeet(double feet) {
        return new Height(TERM.si(feet, UnitScale.FOOT));
    }

    /**
     * Returns a height given in any unit of length.
     *
     * @param value the number
     * @param unit its unit
     * @return the value
     * @throws IllegalArgumentException if the value cannot be, or the unit does not fit
     */
    public static Height of(double value, Unit<Length> unit) {
        return new Height(Edge.si(TERM, value, unit));
    }

    /**
     * Returns a height given as a quantity.
     *
     * @param quantity the quantity, in any unit of length
     * @return the value
     * @throws IllegalArgumentException if the value cannot be, or the unit or its scale does not
     *     fit
     */
    public static Height of(Quantity<Length> quantity) {
        return new Height(Edge.si(TERM, quantity));
    }

    /**
     * Returns the height that a text stands for.
     *
     * @param text a number, a space and a unit, such as {@code "35000 ft"}
     * @return the value
     * @throws org.climbwright.unit.UnitTextException if the text is of any other form
     * @throws IllegalArgumentException if the value cannot be
     */
    public static Height parse(String text) {
        return new Height(TERM.parse(text));
    }

    @Override
    protected Term term() {
        return TERM;
    }

    @Override
    Height ofSi(double metres) {
        return ofMetres(metres);
    }
}
