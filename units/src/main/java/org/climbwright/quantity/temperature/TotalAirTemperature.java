package org.climbwright.quantity.temperature;

import javax.measure.Quantity;
import javax.measure.Unit;
import javax.measure.quantity.Temperature;
import org.climbwright.quantity.Term;
import org.climbwright.quantity.edge.Edge;
import org.climbwright.unit.UnitScale;

/**
 * The temperature of air brought to rest without loss of heat: what icing rules of the engine go
 * by.
 *
 * <p>Not {@link StaticAirTemperature}.
 */
public final class TotalAirTemperature extends TemperaturePoint<TotalAirTemperature> {
    private static final long serialVersionUID = 1L;
    private static final Term TERM =
            Term.of("total air temperature", UnitScale.KELVIN, UnitScale.CELSIUS).from(0.0);

    private TotalAirTemperature(double si) {
        super(si);
    }

    /**
     * Returns a total air temperature given in kelvin.
     *
     * @param kelvins the value [K], absolute zero or more, finite
     * @return the value
     * @throws IllegalArgumentException if the value cannot be: it must be absolute zero or more,
     *     finite
     */
    public static TotalAirTemperature ofKelvins(double kelvins) {
        return new TotalAirTemperature(TERM.inSi(kelvins));
    }

    /**
     * Returns a total air temperature given in degrees Celsius.
     *
     * @param celsius the value [°C], absolute zero or more, finite
     * @return the value
     * @throws IllegalArgumentException if the value cannot be: it must be absolute zero or more,
     *     finite
     */
    public static TotalAirTemperature ofCelsius(double celsius) {
        return new TotalAirTemperature(TERM.si(celsius, UnitScale.CELSIUS));
    }

    /**
     * Returns a total air temperature given in any unit of temperature.
     *
     * @param value the number
     * @param unit its unit
     * @return the value
     * @throws IllegalArgumentException if the value cannot be, or the unit does not fit
     */
    public static TotalAirTemperature of(double value, Unit<Temperature> unit) {
        return new TotalAirTemperature(Edge.si(TERM, value, unit));
    }

    /**
     * Returns a total air temperature given as a quantity.
     *
     * @param quantity the quantity, in any unit of temperature
     * @return the value
     * @throws IllegalArgumentException if the value cannot be, or the unit or its scale does not
     *     fit
     */
    public static TotalAirTemperature of(Quantity<Temperature> quantity) {
        return new TotalAirTemperature(Edge.si(TERM, quantity));
    }

    /**
     * Returns the total air temperature that a text stands for.
     *
     * @param text a number, a space and a unit, such as {@code "-12.5 °C"}
     * @return the value
     * @throws org.climbwright.unit.UnitTextException if the text is of any other form
     * @throws IllegalArgumentException if the value cannot be
     */
    public static TotalAirTemperature parse(String text) {
        return new TotalAirTemperature(TERM.parse(text));
    }

    @Override
    protected Term term() {
        return TERM;
    }

    @Override
    TotalAirTemperature ofSi(double kelvins) {
        return ofKelvins(kelvins);
    }
}
