package org.climbwright.quantity.speed;

import javax.measure.Quantity;
import javax.measure.Unit;
import javax.measure.quantity.Speed;
import org.climbwright.quantity.Term;
import org.climbwright.quantity.edge.Edge;
import org.climbwright.unit.UnitScale;

/**
 * How fast the cabin climbs: cabin altitude per time, negative while the cabin descends.
 *
 * <p>Not {@link PressureAltitudeRate}, which is the aeroplane's, and no rate of pressure: the same
 * rate is fewer hectopascals a minute the higher the cabin is.
 */
public final class CabinAltitudeRate extends SpeedValue<CabinAltitudeRate> {
    private static final long serialVersionUID = 1L;
    private static final Term TERM =
            Term.of(
                    "rate of cabin altitude",
                    UnitScale.METRE_PER_SECOND,
                    UnitScale.FOOT_PER_MINUTE);

    private CabinAltitudeRate(double si) {
        super(si);
    }

    /**
     * Returns a rate of cabin altitude given in metres per second.
     *
     * @param metresPerSecond the value [m/s], any finite number; climb positive
     * @return the value
     * @throws IllegalArgumentException if the value cannot be: it must be any finite number; climb
     *     positive
     */
    public static CabinAltitudeRate ofMetresPerSecond(double metresPerSecond) {
        return new CabinAltitudeRate(TERM.inSi(metresPerSecond));
    }

    /**
     * Returns a rate of cabin altitude given in feet per minute.
     *
     * @param feetPerMinute the value [ft/min], any finite number; climb positive
     * @return the value
     * @throws IllegalArgumentException if the value cannot be: it must be any finite number; climb
     *     positive
     */
    public static CabinAltitudeRate ofFeetPerMinute(double feetPerMinute) {
        return new CabinAltitudeRate(TERM.si(feetPerMinute, UnitScale.FOOT_PER_MINUTE));
    }

    /**
     * Returns a rate of cabin altitude given in any unit of speed.
     *
     * @param value the number
     * @param unit its unit
     * @return the value
     * @throws IllegalArgumentException if the value cannot be, or the unit does not fit
     */
    public static CabinAltitudeRate of(double value, Unit<Speed> unit) {
        return new CabinAltitudeRate(Edge.si(TERM, value, unit));
    }

    /**
     * Returns a rate of cabin altitude given as a quantity.
     *
     * @param quantity the quantity, in any unit of speed
     * @return the value
     * @throws IllegalArgumentException if the value cannot be, or the unit or its scale does not
     *     fit
     */
    public static CabinAltitudeRate of(Quantity<Speed> quantity) {
        return new CabinAltitudeRate(Edge.si(TERM, quantity));
    }

    /**
     * Returns the rate of cabin altitude that a text stands for.
     *
     * @param text a number, a space and a unit, such as {@code "300 ft/min"}
     * @return the value
     * @throws org.climbwright.unit.UnitTextException if the text is of any other form
     * @throws IllegalArgumentException if the value cannot be
     */
    public static CabinAltitudeRate parse(String text) {
        return new CabinAltitudeRate(TERM.parse(text));
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
