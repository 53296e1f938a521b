package org.climbwright.quantity.altitude;

import javax.measure.Quantity;
import javax.measure.Unit;
import javax.measure.quantity.Length;
import org.climbwright.quantity.Term;
import org.climbwright.quantity.edge.Edge;
import org.climbwright.unit.UnitScale;

/**
 * Altitude above mean sea level, measured by the work done against gravity: what a sounding
 * reports.
 *
 * <p>Not {@link GeometricAltitude}, which a tape would measure and which is 19 m more at 11 km; not
 * {@link PressureAltitude}, which is a pressure.
 */
public final class GeopotentialAltitude extends VerticalPosition<GeopotentialAltitude> {
    private static final long serialVersionUID = 1L;
    private static final Term TERM =
            Term.of("geopotential altitude", UnitScale.METRE, UnitScale.FOOT);

    private GeopotentialAltitude(double si) {
        super(si);
    }

    /**
     * Returns a geopotential altitude given in metres.
     *
     * @param metres the value [m], any finite number
     * @return the value
     * @throws IllegalArgumentException if the value cannot be: it must be any finite number
     */
    public static GeopotentialAltitude ofMetres(double metres) {
        return new GeopotentialAltitude(TERM.inSi(metres));
    }

    /**
     * Returns a geopotential altitude given in feet.
     *
     * @param feet the value [ft], any finite number
     * @return the value
     * @throws IllegalArgumentException if the value cannot be: it must be any finite number
     */
    public static GeopotentialAltitude ofFeet(double feet) {
        return new GeopotentialAltitude(TERM.si(feet, UnitScale.FOOT));
    }

    /**
     * Returns a geopotential altitude given in any unit of length.
     *
     * @param value the number
     * @param unit its unit
     * @return the value
     * @throws IllegalArgumentException if the value cannot be, or the unit does not fit
     */
    public static GeopotentialAltitude of(double value, Unit<Length> unit) {
        return new GeopotentialAltitude(Edge.si(TERM, value, unit));
    }

    /**
     * Returns a geopotential altitude given as a quantity.
     *
     * @param quantity the quantity, in any unit of length
     * @return the value
     * @throws IllegalArgumentException if the value cannot be, or the unit or its scale does not
     *     fit
     */
    public static GeopotentialAltitude of(Quantity<Length> quantity) {
        return new GeopotentialAltitude(Edge.si(TERM, quantity));
    }

    /**
     * Returns the geopotential altitude that a text stands for.
     *
     * @param text a number, a space and a unit, such as {@code "35000 ft"}
     * @return the value
     * @throws org.climbwright.unit.UnitTextException if the text is of any other form
     * @throws IllegalArgumentException if the value cannot be
     */
    public static GeopotentialAltitude parse(String text) {
        return new GeopotentialAltitude(TERM.parse(text));
    }

    @Override
    protected Term term() {
        return TERM;
    }

    @Override
    GeopotentialAltitude ofSi(double metres) {
        return ofMetres(metres);
    }
}
