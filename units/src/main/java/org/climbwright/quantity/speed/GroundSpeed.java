package org.climbwright.quantity.speed;

import javax.measure.Quantity;
import javax.measure.Unit;
import javax.measure.quantity.Speed;
import org.climbwright.quantity.Term;
import org.climbwright.quantity.edge.Edge;
import org.climbwright.unit.UnitScale;

/**
 * The horizontal speed over the ground.
 *
 * <p>Not {@link TrueAirspeed}: the wind lies between the two, and the slope of the path.
 */
public final class GroundSpeed extends SpeedValue<GroundSpeed> {
    private static final long serialVersionUID = 1L;
    private static final Term TERM =
            Term.of("ground speed", UnitScale.METRE_PER_SECOND, UnitScale.KNOT).from(0.0);

    private GroundSpeed(double si) {
        super(si);
    }

    /**
     * Returns a ground speed given in metres per second.
     *
     * @param metresPerSecond the value [m/s], 0 or more, finite
     * @return the value
     * @throws IllegalArgumentException if the value cannot be: it must be 0 or more, finite
     */
    public static GroundSpeed ofMetresPerSecond(double metresPerSecond) {
        return new GroundSpeed(TERM.inSi(metresPerSecond));
    }

    /**
     * Returns a ground speed given in knots.
     *
     * @param knots the value [kn], 0 or more, finite
     * @return the value
     * @throws IllegalArgumentException if the value cannot be: it must be 0 or more, finite
     */
    public static GroundSpeed ofKnots(double knots) {
        return new GroundSpeed(TERM.si(knots, UnitScale.KNOT));
    }

    /**
     * Returns a ground speed given in any unit of speed.
     *
     * @param value the number
     * @param unit its unit
     * @return the value
     * @throws IllegalArgumentException if the value cannot be, or the unit does not fit
     */
    public static GroundSpeed of(double value, Unit<Speed> unit) {
        return new GroundSpeed(Edge.si(TERM, value, unit));
    }

    /**
     * Returns a ground speed given as a quantity.
     *
     * @param quantity the quantity, in any unit of speed
     * @return the value
     * @throws IllegalArgumentException if the value cannot be, or the unit or its scale does not
     *     fit
     */
    public static GroundSpeed of(Quantity<Speed> quantity) {
        return new GroundSpeed(Edge.si(TERM, quantity));
    }

    /**
     * Returns the ground speed that a text stands for.
     *
     * @param text a number, a space and a unit, such as {@code "290 kn"}
     * @return the value
     * @throws org.climbwright.unit.UnitTextException if the text is of any other form
     * @throws IllegalArgumentException if the value cannot be
     */
    public static GroundSpeed parse(String text) {
        return new GroundSpeed(TERM.parse(text));
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
