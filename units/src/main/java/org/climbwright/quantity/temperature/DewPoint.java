package org.climbwright.quantity.temperature;

import javax.measure.Quantity;
import javax.measure.Unit;
import javax.measure.quantity.Temperature;
import org.climbwright.quantity.Term;
import org.climbwright.quantity.edge.Edge;
import org.climbwright.unit.UnitScale;

/**
 * The temperature at which the air, cooled at its pressure, would be saturated over liquid water.
 *
 * <p>Also below 0 °C over water: the {@link FrostPoint}, over ice, is warmer there.
 */
public final class DewPoint extends TemperaturePoint<DewPoint> {
    private static final long serialVersionUID = 1L;
    private static final Term TERM =
            Term.of("dew point", UnitScale.KELVIN, UnitScale.CELSIUS).from(0.0);

    private DewPoint(double si) {
        super(si);
    }

    /**
     * Returns a dew point given in kelvin.
     *
     * @param kelvins the value [K], absolute zero or more, finite
     * @return the value
     * @throws IllegalArgumentException if the value cannot be: it must be absolute zero or more,
     *     finite
     */
    public static DewPoint ofKelvins(double kelvins) {
        return new DewPoint(TERM.inSi(kelvins));
    }

    /**
     * Returns a dew point given in degrees Celsius.
     *
     * @param celsius the value [°C], absolute zero or more, finite
     * @return the value
     * @throws IllegalArgumentException if the value cannot be: it must be absolute zero or more,
     *     finite
     */
    public static DewPoint ofCelsius(double celsius) {
        return new DewPoint(TERM.si(celsius, UnitScale.CELSIUS));
    }

    /**
     * Returns a dew point given in any unit of temperature.
     *
     * @param value the number
     * @param unit its unit
     * @return the value
     * @throws IllegalArgumentException if the value cannot be, or the unit does not fit
     */
    public static DewPoint of(double value, Unit<Temperature> unit) {
        return new DewPoint(Edge.si(TERM, value, unit));
    }

    /**
     * Returns a dew point given as a quantity.
     *
     * @param quantity the quantity, in any unit of temperature
     * @return the value
     * @throws IllegalArgumentException if the value cannot be, or the unit or its scale does not
     *     fit
     */
    public static DewPoint of(Quantity<Temperature> quantity) {
        return new DewPoint(Edge.si(TERM, quantity));
    }

    /**
     * Returns the dew point that a text stands for.
     *
     * @param text a number, a space and a unit, such as {@code "-12.5 °C"}
     * @return the value
     * @throws org.climbwright.unit.UnitTextException if the text is of any other form
     * @throws IllegalArgumentException if the value cannot be
     */
    public static DewPoint parse(String text) {
        return new DewPoint(TERM.parse(text));
    }

    @Override
    protected Term term() {
        return TERM;
    }

    @Override
    DewPoint ofSi(double kelvins) {
        return ofKelvins(kelvins);
    }
}
