package org.climbwright.quantity.speed;

import javax.measure.Quantity;
import javax.measure.Unit;
import javax.measure.quantity.Speed;
import org.climbwright.quantity.Term;
import org.climbwright.quantity.edge.Edge;
import org.climbwright.unit.UnitScale;

/**
 * The speed that would cause the measured impact pressure at sea level in standard air: what limits
 * and schedules are told in.
 *
 * <p>Not {@link EquivalentAirspeed} (equal to it at 1013.25 hPa only), and not {@link TrueAirspeed}
 * (equal to it at 1013.25 hPa and 15 °C only).
 */
public final class CalibratedAirspeed extends SpeedValue<CalibratedAirspeed> {
    private static final long serialVersionUID = 1L;
    private static final Term TERM =
            Term.of("calibrated airspeed", UnitScale.METRE_PER_SECOND, UnitScale.KNOT).from(0.0);

    private CalibratedAirspeed(double si) {
        super(si);
    }

    /**
     * Returns a calibrated airspeed given in metres per second.
     *
     * @param metresPerSecond the value [m/s], 0 or more, finite
     * @return the value
     * @throws IllegalArgumentException if the value cannot be: it must be 0 or more, finite
     */
    public static CalibratedAirspeed ofMetresPerSecond(double metresPerSecond) {
        return new CalibratedAirspeed(TERM.inSi(metresPerSecond));
    }

    /**
     * Returns a calibrated airspeed given in knots.
     *
     * @param knots the value [kn], 0 or more, finite
     * @return the value
     * @throws IllegalArgumentException if the value cannot be: it must be 0 or more, finite
     */
    public static CalibratedAirspeed ofKnots(double knots) {
        return new CalibratedAirspeed(TERM.si(knots, UnitScale.KNOT));
    }

    /**
     * Returns a calibrated airspeed given in any unit of speed.
     *
     * @param value the number
     * @param unit its unit
     * @return the value
     * @throws IllegalArgumentException if the value cannot be, or the unit does not fit
     */
    public static CalibratedAirspeed of(double value, Unit<Speed> unit) {
        return new CalibratedAirspeed(Edge.si(TERM, value, unit));
    }

    /**
     * Returns a calibrated airspeed given as a quantity.
     *
     * @param quantity the quantity, in any unit of speed
     * @return the value
     * @throws IllegalArgumentException if the value cannot be, or the unit or its scale does not
     *     fit
     */
    public static CalibratedAirspeed of(Quantity<Speed> quantity) {
        return new CalibratedAirspeed(Edge.si(TERM, quantity));
    }

    /**
     * Returns the calibrated airspeed that a text stands for.
     *
     * @param text a number, a space and a unit, such as {@code "290 kn"}
     * @return the value
     * @throws org.climbwright.unit.UnitTextException if the text is of any other form
     * @throws IllegalArgumentException if the value cannot be
     */
    public static CalibratedAirspeed parse(String text) {
        return new CalibratedAirspeed(TERM.parse(text));
    }

    /**
     * Returns this value in knots.
     *
     * @return the number [kn], as it came in
     */
    public double inKnots() {
        return UnitScale.KNOT.fromSi(si());
    }

    @Override
    protected Term term() {
        return TERM;
    }
}
