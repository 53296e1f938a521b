package org.climbwright.quantity.temperature;

import javax.measure.Quantity;
import javax.measure.Unit;
import javax.measure.quantity.Temperature;
import org.climbwright.quantity.Term;
import org.climbwright.quantity.edge.Edge;
import org.climbwright.unit.UnitScale;

/**
 * How much warmer one temperature is than another: an interval, not a point on the scale.
 *
 * <p>As a quantity in °C or °F it must be on a RELATIVE scale: 20 °C as a point is 293.15 K.
 */
public final class TemperatureDifference extends TemperatureInterval<TemperatureDifference> {
    private static final long serialVersionUID = 1L;
    private static final Term TERM =
            Term.of(
                    "temperature difference",
                    UnitScale.KELVIN_DIFFERENCE,
                    UnitScale.KELVIN_DIFFERENCE);

    private TemperatureDifference(double si) {
        super(si);
    }

    /**
     * Returns a temperature difference given in kelvin, or degrees Celsius as an interval.
     *
     * @param kelvins the value [K], any finite number
     * @return the value
     * @throws IllegalArgumentException if the value cannot be: it must be any finite number
     */
    public static TemperatureDifference ofKelvins(double kelvins) {
        return new TemperatureDifference(TERM.inSi(kelvins));
    }

    /**
     * Returns a temperature difference given in any unit of temperature.
     *
     * @param value the number
     * @param unit its unit
     * @return the value
     * @throws IllegalArgumentException if the value cannot be, or the unit does not fit
     */
    public static TemperatureDifference of(double value, Unit<Temperature> unit) {
        return new TemperatureDifference(Edge.si(TERM, value, unit));
    }

    /**
     * Returns a temperature difference given as a quantity.
     *
     * @param quantity the quantity, in any unit of temperature
     * @return the value
     * @throws IllegalArgumentException if the value cannot be, or the unit or its scale does not
     *     fit
     */
    public static TemperatureDifference of(Quantity<Temperature> quantity) {
        return new TemperatureDifference(Edge.si(TERM, quantity));
    }

    /**
     * Returns the temperature difference that a text stands for.
     *
     * @param text a number, a space and a unit, such as {@code "-12.5 K"}
     * @return the value
     * @throws org.climbwright.unit.UnitTextException if the text is of any other form
     * @throws IllegalArgumentException if the value cannot be
     */
    public static TemperatureDifference parse(String text) {
        return new TemperatureDifference(TERM.parse(text));
    }

    @Override
    protected Term term() {
        return TERM;
    }

    /**
     * Returns the sum of two differences.
     *
     * @param other the other difference
     * @return one after the other
     */
    public TemperatureDifference plus(TemperatureDifference other) {
        return new TemperatureDifference(TERM.check(si() + other.si()));
    }

    /**
     * Returns a multiple of this difference.
     *
     * @param factor any finite number
     * @return this difference that many times
     * @throws IllegalArgumentException if the result is not finite
     */
    public TemperatureDifference times(double factor) {
        return new TemperatureDifference(TERM.check(si() * factor));
    }
}
