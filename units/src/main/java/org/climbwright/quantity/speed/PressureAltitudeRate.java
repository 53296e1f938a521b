package org.climbwright.quantity.speed;

import javax.measure.Quantity;
import javax.measure.Unit;
import javax.measure.quantity.Speed;
import org.climbwright.quantity.Term;
import org.climbwright.quantity.edge.Edge;
import org.climbwright.unit.UnitScale;

/**
 * Rate of climb as an altimeter and a vertical-speed indicator have it: pressure altitude per time,
 * negative in a descent.
 *
 * <p>Not {@link GeometricRate}: in air warmer than standard the aeroplane climbs faster than this.
 */
public final class PressureAltitudeRate extends SpeedValue<PressureAltitudeRate> {
    private static final long serialVersionUID = 1L;
    private static final Term TERM =
            Term.of(
                    "rate of pressure altitude",
                    UnitScale.METRE_PER_SECOND,
                    UnitScale.FOOT_PER_MINUTE);

    private PressureAltitudeRate(double si) {
        super(si);
    }

    /**
     * Returns a rate of pressure altitude given in metres per second.
     *
     * @param metresPerSecond the value [m/s], any finite number; climb positive
     * @return the value
     * @throws IllegalArgumentException if the value cannot be: it must be any finite number; climb
     *     positive
     */
    public static PressureAltitudeRate ofMetresPerSecond(double metresPerSecond) {
        return new PressureAltitudeRate(TERM.inSi(metresPerSecond));
    }

    /**
     * Returns a rate of pressure altitude given in feet per minute.
     *
     * @param feetPerMinute the value [ft/min], any finite number; climb positive
     * @return the value
     * @throws IllegalArgumentException if the value cannot be: it must be any finite number; climb
     *     positive
     */
    public static PressureAltitudeRate ofFeetPerMinute(double feetPerMinute) {
        return new PressureAltitudeRate(TERM.si(feetPerMinute, UnitScale.FOOT_PER_MINUTE));
    }

    /**
     * Returns a rate of pressure altitude given in any unit of speed.
     *
     * @param value the number
     * @param unit its unit
     * @return the value
     * @throws IllegalArgumentException if the value cannot be, or the unit does not fit
     */
    public static PressureAltitudeRate of(double value, Unit<Speed> unit) {
        return new PressureAltitudeRate(Edge.si(TERM, value, unit));
    }

    /**
     * Returns a rate of pressure altitude given as a quantity.
     *
     * @param quantity the quantity, in any unit of speed
     * @return the value
     * @throws IllegalArgumentException if the value cannot be, or the unit or its scale does not
     *     fit
     */
    public static PressureAltitudeRate of(Quantity<Speed> quantity) {
        return new PressureAltitudeRate(Edge.si(TERM, quantity));
    }

    /**
     * Returns the rate of pressure altitude that a text stands for.
     *
     * @param text a number, a space and a unit, such as {@code "1500 ft/min"}
     * @return the value
     * @throws org.climbwright.unit.UnitTextException if the text is of any other form
     * @throws IllegalArgumentException if the value cannot be
     */
    public static PressureAltitudeRate parse(String text) {
        return new PressureAltitudeRate(TERM.parse(text));
    }

    /**
     * Returns this value in feet per minute.
     *
     * @return the number [ft/min], as it came in
     */
    public double inFeetPerMinute() {
        return UnitScale.FOOT_PER_MINUTE.fromSi(si());
    }

    @Override
    protected Term term() {
        return TERM;
    }
}
