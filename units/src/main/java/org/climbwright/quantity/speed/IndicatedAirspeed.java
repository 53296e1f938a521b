package org.climbwright.quantity.speed;

import javax.measure.Quantity;
import javax.measure.Unit;
import javax.measure.quantity.Speed;
import org.climbwright.quantity.Term;
import org.climbwright.quantity.edge.Edge;
import org.climbwright.unit.UnitScale;

/**
 * What the airspeed indicator shows, with the errors of the instrument and its static source in it.
 *
 * <p>Not {@link CalibratedAirspeed}, which is free of them: a position-error curve lies between.
 */
public final class IndicatedAirspeed extends SpeedValue<IndicatedAirspeed> {
    private static final long serialVersionUID = 1L;
    private static final Term TERM =
            Term.of("indicated airspeed", UnitScale.METRE_PER_SECOND, UnitScale.KNOT).from(0.0);

    private IndicatedAirspeed(double si) {
        super(si);
    }

    /**
     * Returns an indicated airspeed given in metres per second.
     *
     * @param metresPerSecond the value [m/s], 0 or more, finite
     * @return the value
     * @throws IllegalArgumentException if the value cannot be: it must be 0 or more, finite
     */
    public static IndicatedAirspeed ofMetresPerSecond(double metresPerSecond) {
        return new IndicatedAirspeed(TERM.inSi(metresPerSecond));
    }

    /**
     * Returns an indicated airspeed given in knots.
     *
     * @param knots the value [kn], 0 or more, finite
     * @return the value
     * @throws IllegalArgumentException if the value cannot be: it must be 0 or more, finite
     */
    public static IndicatedAirspeed ofKnots(double knots) {
        return new IndicatedAirspeed(TERM.si(knots, UnitScale.KNOT));
    }

    /**
     * Returns an indicated airspeed given in any unit of speed.
     *
     * @param value the number
     * @param unit its unit
     * @return the value
     * @throws IllegalArgumentException if the value cannot be, or the unit does not fit
     */
    public static IndicatedAirspeed of(double value, Unit<Speed> unit) {
        return new IndicatedAirspeed(Edge.si(TERM, value, unit));
    }

    /**
     * Returns an indicated airspeed given as a quantity.
     *
     * @param quantity the quantity, in any unit of speed
     * @return the value
     * @throws IllegalArgumentException if the value cannot be, or the unit or its scale does not
     *     fit
     */
    public static IndicatedAirspeed of(Quantity<Speed> quantity) {
        return new IndicatedAirspeed(Edge.si(TERM, quantity));
    }

    /**
     * Returns the indicated airspeed that a text stands for.
     *
     * @param text a number, a space and a unit, such as {@code "290 kn"}
     * @return the value
     * @throws org.climbwright.unit.UnitTextException if the text is of any other form
     * @throws IllegalArgumentException if the value cannot be
     */
    public static IndicatedAirspeed parse(String text) {
        return new IndicatedAirspeed(TERM.parse(text));
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
