package org.climbwright.quantity.speed;

import javax.measure.Quantity;
import javax.measure.Unit;
import javax.measure.quantity.Speed;
import org.climbwright.quantity.Term;
import org.climbwright.quantity.edge.Edge;
import org.climbwright.unit.UnitScale;

/**
 * How much more one airspeed is than another: a margin to a limit, or equivalent less calibrated
 * airspeed.
 *
 * <p>Not an airspeed itself: it may be negative, and no formula of the air takes it.
 */
public final class AirspeedDifference extends SpeedValue<AirspeedDifference> {
    private static final long serialVersionUID = 1L;
    private static final Term TERM =
            Term.of("airspeed difference", UnitScale.METRE_PER_SECOND, UnitScale.KNOT);

    private AirspeedDifference(double si) {
        super(si);
    }

    /**
     * Returns an airspeed difference given in metres per second.
     *
     * @param metresPerSecond the value [m/s], any finite number
     * @return the value
     * @throws IllegalArgumentException if the value cannot be: it must be any finite number
     */
    public static AirspeedDifference ofMetresPerSecond(double metresPerSecond) {
        return new AirspeedDifference(TERM.inSi(metresPerSecond));
    }

    /**
     * Returns an airspeed difference given in knots.
     *
     * @param knots the value [kn], any finite number
     * @return the value
     * @throws IllegalArgumentException if the value cannot be: it must be any finite number
     */
    public static AirspeedDifference ofKnots(double knots) {
        return new AirspeedDifference(TERM.si(knots, UnitScale.KNOT));
    }

    /**
     * Returns an airspeed difference given in any unit of speed.
     *
     * @param value the number
     * @param unit its unit
     * @return the value
     * @throws IllegalArgumentException if the value cannot be, or the unit does not fit
     */
    public static AirspeedDifference of(double value, Unit<Speed> unit) {
        return new AirspeedDifference(Edge.si(TERM, value, unit));
    }

    /**
     * Returns an airspeed difference given as a quantity.
     *
     * @param quantity the quantity, in any unit of speed
     * @return the value
     * @throws IllegalArgumentException if the value cannot be, or the unit or its scale does not
     *     fit
     */
    public static AirspeedDifference of(Quantity<Speed> quantity) {
        return new AirspeedDifference(Edge.si(TERM, quantity));
    }

    /**
     * Returns the airspeed difference that a text stands for.
     *
     * @param text a number, a space and a unit, such as {@code "-15 kn"}
     * @return the value
     * @throws org.climbwright.unit.UnitTextException if the text is of any other form
     * @throws IllegalArgumentException if the value cannot be
     */
    public static AirspeedDifference parse(String text) {
        return new AirspeedDifference(TERM.parse(text));
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
