package org.climbwright.quantity.altitude;

import javax.measure.Quantity;
import javax.measure.Unit;
import javax.measure.quantity.Length;
import org.climbwright.quantity.Term;
import org.climbwright.quantity.edge.Edge;
import org.climbwright.unit.UnitScale;

/**
 * What the altimeter in the panel shows, on whatever setting it has, with the errors of the
 * instrument and its static source in it.
 *
 * <p>Not {@link AltitudeOnQnh} and not {@link PressureAltitude}, which are free of those errors.
 */
public final class IndicatedAltitude extends VerticalPosition<IndicatedAltitude> {
    private static final long serialVersionUID = 1L;
    private static final Term TERM = Term.of("indicated altitude", UnitScale.METRE, UnitScale.FOOT);

    private IndicatedAltitude(double si) {
        super(si);
    }

    /**
     * Returns an indicated altitude given in metres.
     *
     * @param metres the value [m], any finite number
     * @return the value
     * @throws IllegalArgumentException if the value cannot be: it must be any finite number
     */
    public static IndicatedAltitude ofMetres(double metres) {
        return new IndicatedAltitude(TERM.inSi(metres));
    }

    /**
     * Returns an indicated altitude given in feet.
     *
     * @param feet the value [ft], any finite number
     * @return the value
     * @throws IllegalArgumentException if the value cannot be: it must be any finite number
     */
    public static IndicatedAltitude ofFeet(double feet) {
        return new IndicatedAltitude(TERM.si(feet, UnitScale.FOOT));
    }

    /**
     * Returns an indicated altitude given in any unit of length.
     *
     * @param value the number
     * @param unit its unit
     * @return the value
     * @throws IllegalArgumentException if the value cannot be, or the unit does not fit
     */
    public static IndicatedAltitude of(double value, Unit<Length> unit) {
        return new IndicatedAltitude(Edge.si(TERM, value, unit));
    }

    /**
     * Returns an indicated altitude given as a quantity.
     *
     * @param quantity the quantity, in any unit of length
     * @return the value
     * @throws IllegalArgumentException if the value cannot be, or the unit or its scale does not
     *     fit
     */
    public static IndicatedAltitude of(Quantity<Length> quantity) {
        return new IndicatedAltitude(Edge.si(TERM, quantity));
    }

    /**
     * Returns the indicated altitude that a text stands for.
     *
     * @param text a number, a space and a unit, such as {@code "35000 ft"}
     * @return the value
     * @throws org.climbwright.unit.UnitTextException if the text is of any other form
     * @throws IllegalArgumentException if the value cannot be
     */
    public static IndicatedAltitude parse(String text) {
        return new IndicatedAltitude(TERM.parse(text));
    }

    @Override
    protected Term term() {
        return TERM;
    }

    @Override
    IndicatedAltitude ofSi(double metres) {
        return ofMetres(metres);
    }
}
