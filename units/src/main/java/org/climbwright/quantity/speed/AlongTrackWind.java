package org.climbwright.quantity.speed;

import javax.measure.Quantity;
import javax.measure.Unit;
import javax.measure.quantity.Speed;
import org.climbwright.quantity.Term;
import org.climbwright.quantity.edge.Edge;
import org.climbwright.unit.UnitScale;

/**
 * The part of the wind that blows along the track: positive from behind, negative on the nose.
 *
 * <p>Not the wind speed, and not yet the difference of ground speed and true airspeed: a wind from
 * the side and a steep path take from that too.
 */
public final class AlongTrackWind extends SpeedValue<AlongTrackWind> {
    private static final long serialVersionUID = 1L;
    private static final Term TERM =
            Term.of("along-track wind", UnitScale.METRE_PER_SECOND, UnitScale.KNOT);

    private AlongTrackWind(double si) {
        super(si);
    }

    /**
     * Returns an along-track wind given in metres per second.
     *
     * @param metresPerSecond the value [m/s], any finite number; tailwind positive
     * @return the value
     * @throws IllegalArgumentException if the value cannot be: it must be any finite number;
     *     tailwind positive
     */
    public static AlongTrackWind ofMetresPerSecond(double metresPerSecond) {
        return new AlongTrackWind(TERM.inSi(metresPerSecond));
    }

    /**
     * Returns an along-track wind given in knots.
     *
     * @param knots the value [kn], any finite number; tailwind positive
     * @return the value
     * @throws IllegalArgumentException if the value cannot be: it must be any finite number;
     *     tailwind positive
     */
    public static AlongTrackWind ofKnots(double knots) {
        return new AlongTrackWind(TERM.si(knots, UnitScale.KNOT));
    }

    /**
     * Returns an along-track wind given in any unit of speed.
     *
     * @param value the number
     * @param unit its unit
     * @return the value
     * @throws IllegalArgumentException if the value cannot be, or the unit does not fit
     */
    public static AlongTrackWind of(double value, Unit<Speed> unit) {
        return new AlongTrackWind(Edge.si(TERM, value, unit));
    }

    /**
     * Returns an along-track wind given as a quantity.
     *
     * @param quantity the quantity, in any unit of speed
     * @return the value
     * @throws IllegalArgumentException if the value cannot be, or the unit or its scale does not
     *     fit
     */
    public static AlongTrackWind of(Quantity<Speed> quantity) {
        return new AlongTrackWind(Edge.si(TERM, quantity));
    }

    /**
     * Returns the along-track wind that a text stands for.
     *
     * @param text a number, a space and a unit, such as {@code "290 kn"}
     * @return the value
     * @throws org.climbwright.unit.UnitTextException if the text is of any other form
     * @throws IllegalArgumentException if the value cannot be
     */
    public static AlongTrackWind parse(String text) {
        return new AlongTrackWind(TERM.parse(text));
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
