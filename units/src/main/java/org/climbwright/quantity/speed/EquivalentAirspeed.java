package org.climbwright.quantity.speed;

import javax.measure.Quantity;
import javax.measure.Unit;
import javax.measure.quantity.Speed;
import org.climbwright.quantity.Term;
import org.climbwright.quantity.edge.Edge;
import org.climbwright.unit.UnitScale;

/**
 * The speed that has the same dynamic pressure at sea-level standard density: what loads go by.
 *
 * <p>Not {@link CalibratedAirspeed}: at 300 kn and 30,000 ft the equivalent airspeed is 15 kn less.
 */
public final class EquivalentAirspeed extends SpeedValue<EquivalentAirspeed> {
    private static final long serialVersionUID = 1L;
    private static final Term TERM =
            Term.of("equivalent airspeed", UnitScale.METRE_PER_SECOND, UnitScale.KNOT).from(0.0);

    private EquivalentAirspeed(double si) {
        super(si);
    }

    /**
     * Returns an equivalent airspeed given in metres per second.
     *
     * @param metresPerSecond the value [m/s], 0 or more, finite
     * @return the value
     * @throws IllegalArgumentException if the value cannot be: it must be 0 or more, finite
     */
    public static EquivalentAirspeed ofMetresPerSecond(double metresPerSecond) {
        return new EquivalentAirspeed(TERM.inSi(metresPerSecond));
    }

    /**
     * Returns an equivalent airspeed given in knots.
     *
     * @param knots the value [kn], 0 or more, finite
     * @return the value
     * @throws IllegalArgumentException if the value cannot be: it must be 0 or more, finite
     */
    public static EquivalentAirspeed ofKnots(double knots) {
        return new EquivalentAirspeed(TERM.si(knots, UnitScale.KNOT));
    }

    /**
     * Returns an equivalent airspeed given in any unit of speed.
     *
     * @param value the number
     * @param unit its unit
     * @return the value
     * @throws IllegalArgumentException if the value cannot be, or the unit does not fit
     */
    public static EquivalentAirspeed of(double value, Unit<Speed> unit) {
        return new EquivalentAirspeed(Edge.si(TERM, value, unit));
    }

    /**
     * Returns an equivalent airspeed given as a quantity.
     *
     * @param quantity the quantity, in any unit of speed
     * @return the value
     * @throws IllegalArgumentException if the value cannot be, or the unit or its scale does not
     *     fit
     */
    public static EquivalentAirspeed of(Quantity<Speed> quantity) {
        return new EquivalentAirspeed(Edge.si(TERM, quantity));
    }

    /**
     * Returns the equivalent airspeed that a text stands for.
     *
     * @param text a number, a space and a unit, such as {@code "290 kn"}
     * @return the value
     * @throws org.climbwright.unit.UnitTextException if the text is of any other form
     * @throws IllegalArgumentException if the value cannot be
     */
    public static EquivalentAirspeed parse(String text) {
        return new EquivalentAirspeed(TERM.parse(text));
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
