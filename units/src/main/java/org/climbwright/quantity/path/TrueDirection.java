package org.climbwright.quantity.path;

import javax.measure.Quantity;
import javax.measure.Unit;
import javax.measure.quantity.Angle;
import org.climbwright.quantity.Term;
import org.climbwright.quantity.edge.Edge;
import org.climbwright.unit.UnitScale;

/**
 * A direction over the ground, clockwise from true north: a track, or where a wind comes from.
 *
 * <p>North is 0 degrees or 360, as it came in: the two are close and not equal.
 *
 * <p>Not magnetic: runways, charts and clearances often are, and the variation lies between.
 */
public final class TrueDirection extends AngleValue<TrueDirection> {
    private static final long serialVersionUID = 1L;
    private static final Term TERM =
            Term.of("direction", UnitScale.RADIAN, UnitScale.DEGREE).from(0.0).upTo(2.0 * Math.PI);

    private TrueDirection(double si) {
        super(si);
    }

    /**
     * Returns a direction given in radians.
     *
     * @param radians the value [rad], 0 to 360 degrees, both included
     * @return the value
     * @throws IllegalArgumentException if the value cannot be: it must be 0 to 360 degrees, both
     *     included
     */
    public static TrueDirection ofRadians(double radians) {
        return new TrueDirection(TERM.inSi(radians));
    }

    /**
     * Returns a direction given in degrees.
     *
     * @param degrees the value [deg], 0 to 360 degrees, both included
     * @return the value
     * @throws IllegalArgumentException if the value cannot be: it must be 0 to 360 degrees, both
     *     included
     */
    public static TrueDirection ofDegrees(double degrees) {
        return new TrueDirection(TERM.si(degrees, UnitScale.DEGREE));
    }

    /**
     * Returns a direction given in any unit of angle.
     *
     * @param value the number
     * @param unit its unit
     * @return the value
     * @throws IllegalArgumentException if the value cannot be, or the unit does not fit
     */
    public static TrueDirection of(double value, Unit<Angle> unit) {
        return new TrueDirection(Edge.si(TERM, value, unit));
    }

    /**
     * Returns a direction given as a quantity.
     *
     * @param quantity the quantity, in any unit of angle
     * @return the value
     * @throws IllegalArgumentException if the value cannot be, or the unit or its scale does not
     *     fit
     */
    public static TrueDirection of(Quantity<Angle> quantity) {
        return new TrueDirection(Edge.si(TERM, quantity));
    }

    /**
     * Returns the direction that a text stands for.
     *
     * @param text a number, a space and a unit, such as {@code "360 deg"}
     * @return the value
     * @throws org.climbwright.unit.UnitTextException if the text is of any other form
     * @throws IllegalArgumentException if the value cannot be
     */
    public static TrueDirection parse(String text) {
        return new TrueDirection(TERM.parse(text));
    }

    @Override
    protected Term term() {
        return TERM;
    }

    /**
     * Tells whether another direction lies within a tolerance of this one, the short way round.
     *
     * @param other the other direction; 359 and 1 degrees are 2 degrees apart
     * @param tolerance the largest difference allowed, told as a direction
     * @return true if the two differ by the tolerance or less
     */
    @Override
    public boolean isCloseTo(TrueDirection other, TrueDirection tolerance) {
        double apart = Math.abs(si() - other.si());
        return Math.min(apart, 2.0 * Math.PI - apart) <= tolerance.si();
    }
}
