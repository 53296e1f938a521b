package org.climbwright.quantity.speed;

import javax.measure.Quantity;
import javax.measure.Unit;
import javax.measure.quantity.Speed;
import org.climbwright.quantity.Term;
import org.climbwright.quantity.edge.Edge;
import org.climbwright.unit.UnitScale;

/**
 * The speed through the air.
 *
 * <p>Not {@link GroundSpeed}, which has the wind in it; not {@link CalibratedAirspeed}, which has
 * the pressure in it.
 */
public final class TrueAirspeed extends SpeedValue<TrueAirspeed> {
    private static final long serialVersionUID = 1L;
    private static final Term TERM =
            Term.of("true airspeed", UnitScale.METRE_PER_SECOND, UnitScale.KNOT).from(0.0);

    private TrueAirspeed(double si) {
        super(si);
    }

    /**
     * Returns a true airspeed given in metres per second.
     *
     * @param metresPerSecond the value [m/s], 0 or more, finite
     * @return the value
     * @throws IllegalArgumentException if the value cannot be: it must be 0 or more, finite
     */
    public static TrueAirspeed ofMetresPerSecond(double metresPerSecond) {
        return new TrueAirspeed(TERM.inSi(metresPerSecond));
    }

    /**
     * Returns a true airspeed given in knots.
     *
     * @param knots the value [kn], 0 or more, finite
     * @return the value
     * @throws IllegalArgumentException if the value cannot be: it must be 0 or more, finite
     */
    public static TrueAirspeed ofKnots(double knots) {
        return new TrueAirspeed(TERM.si(knots, UnitScale.KNOT));
    }

    /**
     * Returns a true airspeed given in any unit of speed.
     *
     * @param value the number
     * @param unit its unit
     * @return the value
     * @throws IllegalArgumentException if the value cannot be, or the unit does not fit
     */
    public static TrueAirspeed of(double value, Unit<Speed> unit) {
        return new TrueAirspeed(Edge.si(TERM, value, unit));
    }

    /**
     * Returns a true airspeed given as a quantity.
     *
     * @param quantity the quantity, in any unit of speed
     * @return the value
     * @throws IllegalArgumentException if the value cannot be, or the unit or its scale does not
     *     fit
     */
    public static TrueAirspeed of(Quantity<Speed> quantity) {
        return new TrueAirspeed(Edge.si(TERM, quantity));
    }

    /**
     * Returns the true airspeed that a text stands for.
     *
     * @param text a number, a space and a unit, such as {@code "290 kn"}
     * @return the value
     * @throws org.climbwright.unit.UnitTextException if the text is of any other form
     * @throws IllegalArgumentException if the value cannot be
     */
    public static TrueAirspeed parse(String text) {
        return new TrueAirspeed(TERM.parse(text));
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
