package org.climbwright.quantity.altitude;

import javax.measure.Quantity;
import javax.measure.Unit;
import javax.measure.quantity.Length;
import org.climbwright.quantity.Term;
import org.climbwright.quantity.edge.Edge;
import org.climbwright.unit.UnitScale;

/**
 * What an exact altimeter set to QNH shows: right at the aerodrome that gave the QNH, and elsewhere
 * as wrong as the air is not standard.
 *
 * <p>Not {@link GeometricAltitude}: on a cold day the aeroplane is lower than this number. Not
 * {@link IndicatedAltitude}, which has the errors of the instrument in it.
 */
public final class AltitudeOnQnh extends VerticalPosition<AltitudeOnQnh> {
    private static final long serialVersionUID = 1L;
    private static final Term TERM = Term.of("altitude on QNH", UnitScale.METRE, UnitScale.FOOT);

    private AltitudeOnQnh(double si) {
        super(si);
    }

    /**
     * Returns an altitude on QNH given in metres.
     *
     * @param metres the value [m], any finite number
     * @return the value
     * @throws IllegalArgumentException if the value cannot be: it must be any finite number
     */
    public static AltitudeOnQnh ofMetres(double metres) {
        return new AltitudeOnQnh(TERM.inSi(metres));
    }

    /**
     * Returns an altitude on QNH given in feet.
     *
     * @param feet the value [ft], any finite number
     * @return the value
     * @throws IllegalArgumentException if the value cannot be: it must be any finite number
     */
    public static AltitudeOnQnh ofFeet(double feet) {
        return new AltitudeOnQnh(TERM.si(feet, UnitScale.FOOT));
    }

    /**
     * Returns an altitude on QNH given in any unit of length.
     *
     * @param value the number
     * @param unit its unit
     * @return the value
     * @throws IllegalArgumentException if the value cannot be, or the unit does not fit
     */
    public static AltitudeOnQnh of(double value, Unit<Length> unit) {
        return new AltitudeOnQnh(Edge.si(TERM, value, unit));
    }

    /**
     * Returns an altitude on QNH given as a quantity.
     *
     * @param quantity the quantity, in any unit of length
     * @return the value
     * @throws IllegalArgumentException if the value cannot be, or the unit or its scale does not
     *     fit
     */
    public static AltitudeOnQnh of(Quantity<Length> quantity) {
        return new AltitudeOnQnh(Edge.si(TERM, quantity));
    }

    /**
     * Returns the altitude on QNH that a text stands for.
     *
     * @param text a number, a space and a unit, such as {@code "35000 ft"}
     * @return the value
     * @throws org.climbwright.unit.UnitTextException if the text is of any other form
     * @throws IllegalArgumentException if the value cannot be
     */
    public static AltitudeOnQnh parse(String text) {
        return new AltitudeOnQnh(TERM.parse(text));
    }

    @Override
    protected Term term() {
        return TERM;
    }

    @Override
    AltitudeOnQnh ofSi(double metres) {
        return ofMetres(metres);
    }
}
