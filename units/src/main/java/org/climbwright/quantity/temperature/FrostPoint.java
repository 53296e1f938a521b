package org.climbwright.quantity.temperature;

import javax.measure.Quantity;
import javax.measure.Unit;
import javax.measure.quantity.Temperature;
import org.climbwright.quantity.Term;
import org.climbwright.quantity.edge.Edge;
import org.climbwright.unit.UnitScale;

/**
 * The temperature at which the air, cooled at its pressure, would be saturated over ice.
 *
 * <p>Not {@link DewPoint}, which is over liquid water and the colder of the two below 0 °C: weather
 * reports and soundings give that one. Up to the triple point of water, 273.16 K: above it there is
 * no ice.
 *
 * @source triple point of water, 273.16 K: the fixed point by which the kelvin was defined until
 *     2019 (from memory)
 */
public final class FrostPoint extends TemperaturePoint<FrostPoint> {
    private static final long serialVersionUID = 1L;
    private static final Term TERM =
            Term.of("frost point", UnitScale.KELVIN, UnitScale.CELSIUS).from(0.0).upTo(273.16);

    private FrostPoint(double si) {
        super(si);
    }

    /**
     * Returns a frost point given in kelvin.
     *
     * @param kelvins the value [K], absolute zero to 273.16 K
     * @return the value
     * @throws IllegalArgumentException if the value cannot be: it must be from absolute zero to
     *     273.16 K
     */
    public static FrostPoint ofKelvins(double kelvins) {
        return new FrostPoint(TERM.inSi(kelvins));
    }

    /**
     * Returns a frost point given in degrees Celsius.
     *
     * @param celsius the value [°C], absolute zero to 0.01 °C
     * @return the value
     * @throws IllegalArgumentException if the value cannot be: it must be from absolute zero to
     *     273.16 K
     */
    public static FrostPoint ofCelsius(double celsius) {
        return new FrostPoint(TERM.si(celsius, UnitScale.CELSIUS));
    }

    /**
     * Returns a frost point given in any unit of temperature.
     *
     * @param value the number
     * @param unit its unit
     * @return the value
     * @throws IllegalArgumentException if the value cannot be, or the unit does not fit
     */
    public static FrostPoint of(double value, Unit<Temperature> unit) {
        return new FrostPoint(Edge.si(TERM, value, unit));
    }

    /**
     * Returns a frost point given as a quantity.
     *
     * @param quantity the quantity, in any unit of temperature
     * @return the value
     * @throws IllegalArgumentException if the value cannot be, or the unit or its scale does not
     *     fit
     */
    public static FrostPoint of(Quantity<Temperature> quantity) {
        return new FrostPoint(Edge.si(TERM, quantity));
    }

    /**
     * Returns the frost point that a text stands for.
     *
     * @param text a number, a space and a unit, such as {@code "-12.5 °C"}
     * @return the value
     * @throws org.climbwright.unit.UnitTextException if the text is of any other form
     * @throws IllegalArgumentException if the value cannot be
     */
    public static FrostPoint parse(String text) {
        return new FrostPoint(TERM.parse(text));
    }

    @Override
    protected Term term() {
        return TERM;
    }

    @Override
    FrostPoint ofSi(double kelvins) {
        return ofKelvins(kelvins);
    }
}
