package org.climbwright.quantity.temperature;

import javax.measure.Quantity;
import javax.measure.Unit;
import javax.measure.quantity.Temperature;
import org.climbwright.quantity.Term;
import org.climbwright.quantity.edge.Edge;
import org.climbwright.unit.UnitScale;

/**
 * The temperature of the air that the aeroplane flies through, undisturbed by it.
 *
 * <p>Not {@link TotalAirTemperature}, which a probe feels and which is up to 30 K warmer.
 */
public final class StaticAirTemperature extends TemperaturePoint<StaticAirTemperature> {
    private static final long serialVersionUID = 1L;
    private static final Term TERM =
            Term.of("static air temperature", UnitScale.KELVIN, UnitScale.CELSIUS).from(0.0);

    private StaticAirTemperature(double si) {
        super(si);
    }

    /**
     * Returns a static air temperature given in kelvin.
     *
     * @param kelvins the value [K], absolute zero or more, finite
     * @return the value
     * @throws IllegalArgumentException if the value cannot be: it must be absolute zero or more,
     *     finite
     */
    public static StaticAirTemperature ofKelvins(double kelvins) {
        return new StaticAirTemperature(TERM.inSi(kelvins));
    }

    /**
     * Returns a static air temperature given in degrees Celsius.
     *
     * @param celsius the value [°C], absolute zero or more, finite
     * @return the value
     * @throws IllegalArgumentException if the value cannot be: it must be absolute zero or more,
     *     finite
     */
    public static StaticAirTemperature ofCelsius(double celsius) {
        return new StaticAirTemperature(TERM.si(celsius, UnitScale.CELSIUS));
    }

    /**
     * Returns a static air temperature given in any unit of temperature.
     *
     * @param value the number
     * @param unit its unit
     * @return the value
     * @throws IllegalArgumentException if the value cannot be, or the unit does not fit
     */
    public static StaticAirTemperature of(double value, Unit<Temperature> unit) {
        return new StaticAirTemperature(Edge.si(TERM, value, unit));
    }

    /**
     * Returns a static air temperature given as a quantity.
     *
     * @param quantity the quantity, in any unit of temperature
     * @return the value
     * @throws IllegalArgumentException if the value cannot be, or the unit or its scale does not
     *     fit
     */
    public static StaticAirTemperature of(Quantity<Temperature> quantity) {
        return new StaticAirTemperature(Edge.si(TERM, quantity));
    }

    /**
     * Returns the static air temperature that a text stands for.
     *
     * @param text a number, a space and a unit, such as {@code "-12.5 °C"}
     * @return the value
     * @throws org.climbwright.unit.UnitTextException if the text is of any other form
     * @throws IllegalArgumentException if the value cannot be
     */
    public static StaticAirTemperature parse(String text) {
        return new StaticAirTemperature(TERM.parse(text));
    }

    @Override
    protected Term term() {
        return TERM;
    }

    @Override
    StaticAirTemperature ofSi(double kelvins) {
        return ofKelvins(kelvins);
    }
}
