package org.climbwright.quantity.speed;

import javax.measure.Quantity;
import javax.measure.Unit;
import javax.measure.quantity.Speed;
import org.climbwright.quantity.Term;
import org.climbwright.quantity.edge.Edge;
import org.climbwright.unit.UnitScale;

/**
 * Rate of climb in true height per time, negative in a descent: what obstacles and gradients need.
 *
 * <p>Not {@link PressureAltitudeRate}, which the instrument shows.
 */
public final class GeometricRate extends SpeedValue<GeometricRate> {
    private static final long serialVersionUID = 1L;
    private static final Term TERM =
            Term.of("geometric rate", UnitScale.METRE_PER_SECOND, UnitScale.FOOT_PER_MINUTE);

    private GeometricRate(double si) {
        super(si);
    }

    /**
     * Returns a geometric rate given in metres per second.
     *
     * @param metresPerSecond the value [m/s], any finite number; climb positive
     * @return the value
     * @throws IllegalArgumentException if the value cannot be: it must be any finite number; climb
     *     positive
     */
    public static GeometricRate ofMetresPerSecond(double metresPerSecond) {
        return new GeometricRate(TERM.inSi(metresPerSecond));
    }

    /**
     * Returns a geometric rate given in feet per minute.
     *
     * @param feetPerMinute the value [ft/min], any finite number; climb positive
     * @return the value
     * @throws IllegalArgumentException if the value cannot be: it must be any finite number; climb
     *     positive
     */
    public static GeometricRate ofFeetPerMinute(double feetPerMinute) {
        return new GeometricRate(TERM.si(feetPerMinute, UnitScale.FOOT_PER_MINUTE));
    }

    /**
     * Returns a geometric rate given in any unit of speed.
     *
     * @param value the number
     * @param unit its unit
     * @return the value
     * @throws IllegalArgumentException if the value cannot be, or the unit does not fit
     */
    public static GeometricRate of(double value, Unit<Speed> unit) {
        return new GeometricRate(Edge.si(TERM, value, unit));
    }

    /**
     * Returns a geometric rate given as a quantity.
     *
     * @param quantity the quantity, in any unit of speed
     * @return the value
     * @throws IllegalArgumentException if the value cannot be, or the unit or its scale does not
     *     fit
     */
    public static GeometricRate of(Quantity<Speed> quantity) {
        return new GeometricRate(Edge.si(TERM, quantity));
    }

    /**
     * Returns the geometric rate that a text stands for.
     *
     * @param text a number, a space and a unit, such as {@code "1500 ft/min"}
     * @return the value
     * @throws org.climbwright.unit.UnitTextException if the text is of any other form
     * @throws IllegalArgumentException if the value cannot be
     */
    public static GeometricRate parse(String text) {
        return new GeometricRate(TERM.parse(text));
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
