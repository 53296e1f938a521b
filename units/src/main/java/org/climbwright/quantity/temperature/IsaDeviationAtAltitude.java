package org.climbwright.quantity.temperature;

import javax.measure.Quantity;
import javax.measure.Unit;
import javax.measure.quantity.Temperature;
import org.climbwright.quantity.Term;
import org.climbwright.quantity.edge.Edge;
import org.climbwright.unit.UnitScale;

/**
 * How much warmer the air is than the standard atmosphere at the same geopotential altitude (ISA:
 * international standard atmosphere): +20 K where the air above a place is said to be 20 K warmer
 * than the standard "at each altitude".
 *
 * <p>Not {@link IsaDeviation}, which is taken at the same pressure: warm air lies higher than its
 * pressure tells, so that at its geopotential altitude, the true one over the sea, it is compared
 * with a higher and colder piece of the standard atmosphere. At FL300, air 20 K warmer than the
 * standard at each altitude has 244.59 K and lies at 32,082 ft geopotential; 20 K warmer at each
 * pressure it has 248.71 K and lies at 32,332 ft.
 */
public final class IsaDeviationAtAltitude extends TemperatureInterval<IsaDeviationAtAltitude> {
    private static final long serialVersionUID = 1L;
    private static final Term TERM =
            Term.of(
                    "ISA deviation at altitude",
                    UnitScale.KELVIN_DIFFERENCE,
                    UnitScale.KELVIN_DIFFERENCE);

    private IsaDeviationAtAltitude(double si) {
        super(si);
    }

    /**
     * Returns an ISA deviation at altitude given in kelvin, or degrees Celsius as an interval.
     *
     * @param kelvins the value [K], any finite number
     * @return the value
     * @throws IllegalArgumentException if the value cannot be: it must be any finite number
     */
    public static IsaDeviationAtAltitude ofKelvins(double kelvins) {
        return new IsaDeviationAtAltitude(TERM.inSi(kelvins));
    }

    /**
     * Returns an ISA deviation at altitude given in any unit of temperature.
     *
     * @param value the number
     * @param unit its unit
     * @return the value
     * @throws IllegalArgumentException if the value cannot be, or the unit does not fit
     */
    public static IsaDeviationAtAltitude of(double value, Unit<Temperature> unit) {
        return new IsaDeviationAtAltitude(Edge.si(TERM, value, unit));
    }

    /**
     * Returns an ISA deviation at altitude given as a quantity.
     *
     * @param quantity the quantity, in any unit of temperature
     * @return the value
     * @throws IllegalArgumentException if the value cannot be, or the unit or its scale does not
     *     fit
     */
    public static IsaDeviationAtAltitude of(Quantity<Temperature> quantity) {
        return new IsaDeviationAtAltitude(Edge.si(TERM, quantity));
    }

    /**
     * Returns the ISA deviation at altitude that a text stands for.
     *
     * @param text a number, a space and a unit, such as {@code "-12.5 K"}
     * @return the value
     * @throws org.climbwright.unit.UnitTextException if the text is of any other form
     * @throws IllegalArgumentException if the value cannot be
     */
    public static IsaDeviationAtAltitude parse(String text) {
        return new IsaDeviationAtAltitude(TERM.parse(text));
    }

    @Override
    protected Term term() {
        return TERM;
    }

    /**
     * Returns this deviation as a plain difference.
     *
     * @return the difference from the standard temperature
     */
    public TemperatureDifference toDifference() {
        return TemperatureDifference.ofKelvins(si());
    }
}
