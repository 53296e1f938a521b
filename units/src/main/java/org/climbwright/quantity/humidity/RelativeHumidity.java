package org.climbwright.quantity.humidity;

import javax.measure.Quantity;
import javax.measure.Unit;
import org.climbwright.quantity.Scalar;
import org.climbwright.quantity.Term;
import org.climbwright.quantity.edge.Edge;
import org.climbwright.unit.UnitScale;

/**
 * The vapour pressure of the air over that of saturated air of its temperature: 63 % for 0.63.
 *
 * <p>Over liquid water, also below 0 °C, as aviation and the WMO (World Meteorological
 * Organization) count it: cold air at 100 % over ice has less than 100 % here. Not a {@link
 * MixingRatio}, which says how much vapour there is and not how near to saturation.
 *
 * <p>Its quantity type in javax.measure has the same name and lies in another package: {@link
 * org.climbwright.unit.RelativeHumidity}.
 *
 * @source over liquid water at all temperatures: WMO-No. 8, Guide to Instruments and Methods of
 *     Observation, volume I, chapter 4, annex 4.A (from memory)
 */
public final class RelativeHumidity extends Scalar<RelativeHumidity> {
    private static final long serialVersionUID = 1L;
    private static final Term TERM =
            Term.of(
                            "relative humidity",
                            UnitScale.RELATIVE_HUMIDITY_RATIO,
                            UnitScale.PERCENT_RELATIVE_HUMIDITY)
                    .from(0.0)
                    .upTo(1.0);

    private RelativeHumidity(double si) {
        super(si);
    }

    /**
     * Returns a relative humidity given as a ratio.
     *
     * @param ratio the value [1], 0 to 1, which is saturation
     * @return the value
     * @throws IllegalArgumentException if the value cannot be: it must be 0 to 1
     */
    public static RelativeHumidity ofRatio(double ratio) {
        return new RelativeHumidity(TERM.inSi(ratio));
    }

    /**
     * Returns a relative humidity given in percent.
     *
     * @param percent the value [%], 0 to 100, which is saturation
     * @return the value
     * @throws IllegalArgumentException if the value cannot be: it must be 0 to 100 %
     */
    public static RelativeHumidity ofPercent(double percent) {
        return new RelativeHumidity(TERM.si(percent, UnitScale.PERCENT_RELATIVE_HUMIDITY));
    }

    /**
     * Returns a relative humidity given in any unit of relative humidity.
     *
     * @param value the number
     * @param unit its unit
     * @return the value
     * @throws IllegalArgumentException if the value cannot be, or the unit does not fit
     */
    public static RelativeHumidity of(
            double value, Unit<org.climbwright.unit.RelativeHumidity> unit) {
        return new RelativeHumidity(Edge.si(TERM, value, unit));
    }

    /**
     * Returns a relative humidity given as a quantity.
     *
     * @param quantity the quantity, in any unit of relative humidity
     * @return the value
     * @throws IllegalArgumentException if the value cannot be, or the unit or its scale does not
     *     fit
     */
    public static RelativeHumidity of(Quantity<org.climbwright.unit.RelativeHumidity> quantity) {
        return new RelativeHumidity(Edge.si(TERM, quantity));
    }

    /**
     * Returns the relative humidity that a text stands for.
     *
     * @param text a number, a space and a unit, such as {@code "63 %"}
     * @return the value
     * @throws org.climbwright.unit.UnitTextException if the text is of any other form
     * @throws IllegalArgumentException if the value cannot be
     */
    public static RelativeHumidity parse(String text) {
        return new RelativeHumidity(TERM.parse(text));
    }

    /**
     * Returns this value as a ratio.
     *
     * @return the number [1], as it came in
     */
    public double inRatio() {
        return si();
    }

    /**
     * Returns this value in percent.
     *
     * @return the number [%], as it came in
     */
    public double inPercent() {
        return UnitScale.PERCENT_RELATIVE_HUMIDITY.fromSi(si());
    }

    /**
     * Returns this value as a number of any unit of its kind.
     *
     * @param unit the unit wanted
     * @return the number of that unit, as it came in
     * @throws IllegalArgumentException if the unit does not fit
     */
    public double valueIn(Unit<org.climbwright.unit.RelativeHumidity> unit) {
        return Edge.valueIn(term(), si(), unit);
    }

    /**
     * Returns this value as a quantity, the way out to other libraries.
     *
     * @param unit the unit wanted
     * @return a new quantity in that unit
     * @throws IllegalArgumentException if the unit does not fit
     */
    public Quantity<org.climbwright.unit.RelativeHumidity> toQuantity(
            Unit<org.climbwright.unit.RelativeHumidity> unit) {
        return Edge.quantity(term(), si(), unit);
    }

    @Override
    protected Term term() {
        return TERM;
    }

    /**
     * Tells whether another value lies within a tolerance of this one.
     *
     * @param other the other value
     * @param tolerance the largest difference allowed, as a value of the same kind
     * @return true if the two differ by the tolerance or less
     */
    public boolean isCloseTo(RelativeHumidity other, RelativeHumidity tolerance) {
        return isWithin(other, tolerance.si());
    }
}
