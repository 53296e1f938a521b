package org.climbwright.quantity.altitude;

import javax.measure.Quantity;
import javax.measure.Unit;
import javax.measure.quantity.Length;
import org.climbwright.quantity.Term;
import org.climbwright.quantity.edge.Edge;
import org.climbwright.unit.UnitScale;
import org.climbwright.unit.UnitText;

/**
 * Altitude above the 1013.25 hPa level of the standard atmosphere, which is a pressure in disguise:
 * not above the sea; see {@link GeopotentialAltitude} and {@link AltitudeOnQnh}.
 *
 * <p>It is what an altimeter set to 1013.25 hPa shows, and what a flight level counts in hundreds
 * of feet. A flight level is a reading and not a unit, so only this type has it.
 *
 * <pre>{@code
 * PressureAltitude.ofFlightLevel(350)   // 10668.0 m (35000.0 ft)
 * }</pre>
 */
public final class PressureAltitude extends VerticalPosition<PressureAltitude> {
    private static final long serialVersionUID = 1L;
    private static final Term TERM = Term.of("pressure altitude", UnitScale.METRE, UnitScale.FOOT);

    private PressureAltitude(double si) {
        super(si);
    }

    /**
     * Returns a pressure altitude given in metres.
     *
     * @param metres the value [m], any finite number
     * @return the value
     * @throws IllegalArgumentException if the value cannot be: it must be any finite number
     */
    public static PressureAltitude ofMetres(double metres) {
        return new PressureAltitude(TERM.inSi(metres));
    }

    /**
     * Returns a pressure altitude given in feet.
     *
     * @param feet the value [ft], any finite number
     * @return the value
     * @throws IllegalArgumentException if the value cannot be: it must be any finite number
     */
    public static PressureAltitude ofFeet(double feet) {
        return new PressureAltitude(TERM.si(feet, UnitScale.FOOT));
    }

    /**
     * Returns a pressure altitude given in any unit of length.
     *
     * @param value the number
     * @param unit its unit
     * @return the value
     * @throws IllegalArgumentException if the value cannot be, or the unit does not fit
     */
    public static PressureAltitude of(double value, Unit<Length> unit) {
        return new PressureAltitude(Edge.si(TERM, value, unit));
    }

    /**
     * Returns a pressure altitude given as a quantity.
     *
     * @param quantity the quantity, in any unit of length
     * @return the value
     * @throws IllegalArgumentException if the value cannot be, or the unit or its scale does not
     *     fit
     */
    public static PressureAltitude of(Quantity<Length> quantity) {
        return new PressureAltitude(Edge.si(TERM, quantity));
    }

    /**
     * Returns the pressure altitude of a flight level.
     *
     * @param level the level in hundreds of feet: 350 for FL350, any finite number
     * @return the value
     * @throws IllegalArgumentException if the level is not finite
     */
    public static PressureAltitude ofFlightLevel(double level) {
        return ofFeet(level * 100.0);
    }

    /**
     * Returns the pressure altitude that a text stands for.
     *
     * @param text a flight level or a number, a space and a unit: {@code "FL350"}, {@code "35000
     *     ft"}
     * @return the value
     * @throws org.climbwright.unit.UnitTextException if the text is of any other form
     */
    public static PressureAltitude parse(String text) {
        if (text.startsWith("FL")) {
            return ofFlightLevel(UnitText.parsePrefixed(TERM.name(), "FL", text));
        }
        return new PressureAltitude(TERM.parse(text));
    }

    /**
     * Returns this altitude as a flight level reads it.
     *
     * @return hundreds of feet: 350 for FL350; not rounded to a usable level
     */
    public double inFlightLevels() {
        return inFeet() / 100.0;
    }

    @Override
    protected Term term() {
        return TERM;
    }

    @Override
    PressureAltitude ofSi(double metres) {
        return ofMetres(metres);
    }
}
