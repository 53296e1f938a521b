package org.climbwright.quantity.altitude;

import javax.measure.Quantity;
import javax.measure.Unit;
import javax.measure.quantity.Length;
import org.climbwright.quantity.Term;
import org.climbwright.quantity.edge.Edge;
import org.climbwright.unit.UnitScale;

/**
 * True altitude above mean sea level, as a tape would measure it: what terrain and satellites have.
 *
 * <p>Not {@link GeopotentialAltitude}, which the hydrostatic equation needs; not what an altimeter
 * shows, see {@link AltitudeOnQnh} and {@link PressureAltitude}.
 */
public final class GeometricAltitude extends VerticalPosition<GeometricAltitude> {
    private static final long serialVersionUID = 1L;
    private static final Term TERM = Term.of("geometric altitude", UnitScale.METRE, UnitScale.FOOT);

    private GeometricAltitude(double si) {
        super(si);
    }

    /**
     * Returns a geometric altitude given in metres.
     *
     * @param metres the value [m], any finite number
     * @return the value
     * @throws IllegalArgumentException if the value cannot be: it must be any finite number
     */
    public static GeometricAltitude ofMetres(double metres) {
        return new GeometricAltitude(TERM.inSi(metres));
    }

    /**
     * Returns a geometric altitude given in feet.
     *
     * @param feet the value [ft], any finite number
     * @return the value
     * @throws IllegalArgumentException if the value cannot be: it must be any finite number
     */
    public static GeometricAltitude ofFeet(double feet) {
        return new GeometricAltitude(TERM.si(feet, UnitScale.FOOT));
    }

    /**
     * Returns a geometric altitude given in any unit of length.
     *
     * @param value the number
     * @param unit its unit
     * @return the value
     * @throws IllegalArgumentException if the value cannot be, or the unit does not fit
     */
    public static GeometricAltitude of(double value, Unit<Length> unit) {
        return new GeometricAltitude(Edge.si(TERM, value, unit));
    }

    /**
     * Returns a geometric altitude given as a quantity.
     *
     * @param quantity the quantity, in any unit of length
     * @return the value
     * @throws IllegalArgumentException if the value cannot be, or the unit or its scale does not
     *     fit
     */
    public static GeometricAltitude of(Quantity<Length> quantity) {
        return new GeometricAltitude(Edge.si(TERM, quantity));
    }

    /**
     * Returns the geometric altitude that a text stands for.
     *
     * @param text a number, a space and a unit, such as {@code "35000 ft"}
     * @return the value
     * @throws org.climbwright.unit.UnitTextException if the text is of any other form
     * @throws IllegalArgumentException if the value cannot be
     */
    public static GeometricAltitude parse(String text) {
        return new GeometricAltitude(TERM.parse(text));
    }

    @Override
    protected Term term() {
        return TERM;
    }

    @Override
    GeometricAltitude ofSi(double metres) {
        return ofMetres(metres);
    }
}
