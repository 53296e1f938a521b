package org.climbwright.quantity.pressure;

import javax.measure.Quantity;
import javax.measure.Unit;
import org.climbwright.quantity.Scalar;
import org.climbwright.quantity.Term;
import org.climbwright.quantity.edge.Edge;
import org.climbwright.unit.PressureRate;
import org.climbwright.unit.UnitScale;

/**
 * How fast the pressure of a cabin changes at an instant: positive while it rises, in a cabin that
 * descends, and negative while it falls.
 *
 * <p>Not what the cabin loses in a minute: a cabin that climbs at a steady 500 ft/min loses
 * pressure ever more slowly. At sea level its rate is -18.31 hPa/min, and in the minute that
 * follows it loses 18.17 hPa. Not a rate of cabin altitude either, which has other signs and is
 * another figure at every height: those 500 ft/min are -14.39 hPa/min at 8,000 ft.
 *
 * @source Both figures are of standard air, dp/dt = -(p g / (R T)) dH/dt; see the formulas of the
 *     cabin in the core library.
 */
public final class CabinPressureRate extends Scalar<CabinPressureRate> {
    private static final long serialVersionUID = 1L;
    private static final Term TERM =
            Term.of(
                    "rate of cabin pressure",
                    UnitScale.PASCAL_PER_SECOND,
                    UnitScale.HECTOPASCAL_PER_MINUTE);

    private CabinPressureRate(double si) {
        super(si);
    }

    /**
     * Returns a rate of cabin pressure given in pascals per second.
     *
     * @param pascalsPerSecond the value [Pa/s], any finite number
     * @return the value
     * @throws IllegalArgumentException if the value cannot be: it must be any finite number
     */
    public static CabinPressureRate ofPascalsPerSecond(double pascalsPerSecond) {
        return new CabinPressureRate(TERM.inSi(pascalsPerSecond));
    }

    /**
     * Returns a rate of cabin pressure given in hectopascals per minute.
     *
     * @param hectopascalsPerMinute the value [hPa/min], any finite number
     * @return the value
     * @throws IllegalArgumentException if the value cannot be: it must be any finite number
     */
    public static CabinPressureRate ofHectopascalsPerMinute(double hectopascalsPerMinute) {
        return new CabinPressureRate(
                TERM.si(hectopascalsPerMinute, UnitScale.HECTOPASCAL_PER_MINUTE));
    }

    /**
     * Returns a rate of cabin pressure given in pounds-force per square inch and minute.
     *
     * @param poundsPerSquareInchPerMinute the value [psi/min], any finite number
     * @return the value
     * @throws IllegalArgumentException if the value cannot be: it must be any finite number
     */
    public static CabinPressureRate ofPoundsPerSquareInchPerMinute(
            double poundsPerSquareInchPerMinute) {
        return new CabinPressureRate(
                TERM.si(poundsPerSquareInchPerMinute, UnitScale.POUND_PER_SQUARE_INCH_PER_MINUTE));
    }

    /**
     * Returns a rate of cabin pressure given in any unit of rate of pressure.
     *
     * @param value the number
     * @param unit its unit
     * @return the value
     * @throws IllegalArgumentException if the value cannot be, or the unit does not fit
     */
    public static CabinPressureRate of(double value, Unit<PressureRate> unit) {
        return new CabinPressureRate(Edge.si(TERM, value, unit));
    }

    /**
     * Returns a rate of cabin pressure given as a quantity.
     *
     * @param quantity the quantity, in any unit of rate of pressure
     * @return the value
     * @throws IllegalArgumentException if the value cannot be, or the unit or its scale does not
     *     fit
     */
    public static CabinPressureRate of(Quantity<PressureRate> quantity) {
        return new CabinPressureRate(Edge.si(TERM, quantity));
    }

    /**
     * Returns the rate of cabin pressure that a text stands for.
     *
     * @param text a number, a space and a unit, such as {@code "-18.3 hPa/min"}
     * @return the value
     * @throws org.climbwright.unit.UnitTextException if the text is of any other form
     * @throws IllegalArgumentException if the value cannot be
     */
    public static CabinPressureRate parse(String text) {
        return new CabinPressureRate(TERM.parse(text));
    }

    /**
     * Returns this value in pascals per second.
     *
     * @return the number [Pa/s], as it came in
     */
    public double inPascalsPerSecond() {
        return si();
    }

    /**
     * Returns this value in hectopascals per minute.
     *
     * @return the number [hPa/min], as it came in
     */
    public double inHectopascalsPerMinute() {
        return UnitScale.HECTOPASCAL_PER_MINUTE.fromSi(si());
    }

    /**
     * Returns this value in pounds-force per square inch and minute.
     *
     * @return the number [psi/min], as it came in
     */
    public double inPoundsPerSquareInchPerMinute() {
        return UnitScale.POUND_PER_SQUARE_INCH_PER_MINUTE.fromSi(si());
    }

    /**
     * Returns this value as a number of any unit of its kind.
     *
     * @param unit the unit wanted
     * @return the number of that unit, as it came in
     * @throws IllegalArgumentException if the unit does not fit
     */
    public double valueIn(Unit<PressureRate> unit) {
        return Edge.valueIn(term(), si(), unit);
    }

    /**
     * Returns this value as a quantity, the way out to other libraries.
     *
     * @param unit the unit wanted
     * @return a new quantity in that unit
     * @throws IllegalArgumentException if the unit does not fit
     */
    public Quantity<PressureRate> toQuantity(Unit<PressureRate> unit) {
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
    public boolean isCloseTo(CabinPressureRate other, CabinPressureRate tolerance) {
        return isWithin(other, tolerance.si());
    }
}
