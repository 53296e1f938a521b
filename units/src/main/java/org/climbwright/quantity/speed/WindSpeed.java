package org.climbwright.quantity.speed;

import javax.measure.Quantity;
import javax.measure.Unit;
import javax.measure.quantity.Speed;
import org.climbwright.quantity.Term;
import org.climbwright.quantity.edge.Edge;
import org.climbwright.unit.UnitScale;

/**
 * How fast the air itself moves over the ground, whatever its direction.
 *
 * <p>Not {@link AlongTrackWind}, which is the part of it along a track, with a sign.
 */
public final class WindSpeed extends SpeedValue<WindSpeed> {
    private static final long serialVersionUID = 1L;
    private static final Term TERM =
            Term.of("wind speed", UnitScale.METRE_PER_SECOND, UnitScale.KNOT).from(0.0);

    private WindSpeed(double si) {
        super(si);
    }

    /**
     * Returns a wind speed given in metres per second.
     *
     * @param metresPerSecond the value [m/s], 0 or more, finite
     * @return the value
     * @throws IllegalArgumentException if the value cannot be: it must be 0 or more, finite
     */
    public static WindSpeed ofMetresPerSecond(double metresPerSecond) {
        return new WindSpeed(TERM.inSi(metresPerSecond));
    }

    /**
     * Returns a wind speed given in knots.
     *
     * @param knots the value [kn], 0 or more, finite
     * @return the value
     * @throws IllegalArgumentException if the value cannot be: it must be 0 or more, finite
     */
    public static WindSpeed ofKnots(double knots) {
        return new WindSpeed(TERM.si(knots, UnitScale.KNOT));
    }

    /**
     * Returns a wind speed given in any unit of speed.
     *
     * @param value the number
     * @param unit its unit
     * @return the value
     * @throws IllegalArgumentException if the value cannot be, or the unit does not fit
     */
    public static WindSpeed of(double value, Unit<Speed> unit) {
        return new WindSpeed(Edge.si(TERM, value, unit));
    }

    /**
     * Returns a wind speed given as a quantity.
     *
     * @param quantity the quantity, in any unit of speed
     * @return the value
     * @throws IllegalArgumentException if the value cannot be, or the unit or its scale does not
     *     fit
     */
    public static WindSpeed of(Quantity<Speed> quantity) {
        return new WindSpeed(Edge.si(TERM, quantity));
    }

    /**
     * Returns the wind speed that a text stands for.
     *
     * @param text a number, a space and a unit, such as {@code "290 kn"}
     * @return the value
     * @throws org.climbwright.unit.UnitTextException if the text is of any other form
     * @throws IllegalArgumentException if the value cannot be
     */
    public static WindSpeed parse(String text) {
        return new WindSpeed(TERM.parse(text));
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
