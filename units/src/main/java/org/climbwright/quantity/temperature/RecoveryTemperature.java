package org.climbwright.quantity.temperature;

import javax.measure.Quantity;
import javax.measure.Unit;
import javax.measure.quantity.Temperature;
import org.climbwright.quantity.Term;
import org.climbwright.quantity.edge.Edge;
import org.climbwright.unit.UnitScale;

/**
 * The temperature that a probe in the air stream feels: static air temperature and the share of the
 * full rise that the probe recovers.
 *
 * <p>Not {@link TotalAirTemperature}, which it equals only where the probe recovers all, and not
 * {@link StaticAirTemperature}.
 */
public final class RecoveryTemperature extends TemperaturePoint<RecoveryTemperature> {
    private static final long serialVersionUID = 1L;
    private static final Term TERM =
            Term.of("recovery temperature", UnitScale.KELVIN, UnitScale.CELSIUS).from(0.0);

    private RecoveryTemperature(double si) {
        super(si);
    }

    /**
     * Returns a recovery temperature given in kelvin.
     *
     * @param kelvins the value [K], absolute zero or more, finite
     * @return the value
     * @throws IllegalArgumentException if the value cannot be: it must be absolute zero or more,
     *     finite
     */
    public static RecoveryTemperature ofKelvins(double kelvins) {
        return new RecoveryTemperature(TERM.inSi(kelvins));
    }

    /**
     * Returns a recovery temperature given in degrees Celsius.
     *
     * @param celsius the value [°C], absolute zero or more, finite
     * @return the value
     * @throws IllegalArgumentException if the value cannot be: it must be absolute zero or more,
     *     finite
     */
    public static RecoveryTemperature ofCelsius(double celsius) {
        return new RecoveryTemperature(TERM.si(celsius, UnitScale.CELSIUS));
    }

    /**
     * Returns a recovery temperature given in any unit of temperature.
     *
     * @param value the number
     * @param unit its unit
     * @return the value
     * @throws IllegalArgumentException if the value cannot be, or the unit does not fit
     */
    public static RecoveryTemperature of(double value, Unit<Temperature> unit) {
        return new RecoveryTemperature(Edge.si(TERM, value, unit));
    }

    /**
     * Returns a recovery temperature given as a quantity.
     *
     * @param quantity the quantity, in any unit of temperature
     * @return the value
     * @throws IllegalArgumentException if the value cannot be, or the unit or its scale does not
     *     fit
     */
    public static RecoveryTemperature of(Quantity<Temperature> quantity) {
        return new RecoveryTemperature(Edge.si(TERM, quantity));
    }

    /**
     * Returns the recovery temperature that a text stands for.
     *
     * @param text a number, a space and a unit, such as {@code "-12.5 °C"}
     * @return the value
     * @throws org.climbwright.unit.UnitTextException if the text is of any other form
     * @throws IllegalArgumentException if the value cannot be
     */
    public static RecoveryTemperature parse(String text) {
        return new RecoveryTemperature(TERM.parse(text));
    }

    @Override
    protected Term term() {
        return TERM;
    }

    @Override
    RecoveryTemperature ofSi(double kelvins) {
        return ofKelvins(kelvins);
    }
}
