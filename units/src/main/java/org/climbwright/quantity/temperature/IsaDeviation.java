package org.climbwright.quantity.temperature;

import javax.measure.Quantity;
import javax.measure.Unit;
import javax.measure.quantity.Temperature;
import org.climbwright.quantity.Term;
import org.climbwright.quantity.edge.Edge;
import org.climbwright.unit.UnitScale;

/**
 * How much warmer the air is than the standard atmosphere at the same pressure (ISA: international
 * standard atmosphere): +10 K in "ISA+10".
 *
 * <p>Taken at the same pressure, as altimetry and performance charts take it. Not {@link
 * IsaDeviationAtAltitude}, which is taken at the same geopotential altitude. At FL300, air 20 K
 * warmer than the standard at each pressure has 248.71 K and lies at 32,332 ft geopotential; 20 K
 * warmer at each altitude it has 244.59 K and lies at 32,082 ft.
 */
public final class IsaDeviation extends TemperatureInterval<IsaDeviation> {
    private static final long serialVersionUID = 1L;
    private static final Term TERM =
            Term.of("ISA deviation", UnitScale.KELVIN_DIFFERENCE, UnitScale.KELVIN_DIFFERENCE);

    private IsaDeviation(double si) {
        super(si);
    }

    /**
     * Returns an ISA deviation given in kelvin, or degrees Celsius as an interval.
     *
     * @param kelvins the value [K], any finite number
     * @return the value
     * @throws IllegalArgumentException if the value cannot be: it must be any finite number
     */
    public static IsaDeviation ofKelvins(double kelvins) {
        return new IsaDeviation(TERM.inSi(kelvins));
    }

    /**
     * Returns an ISA deviation given in any unit of temperature.
     *
     * @param value the number
     * @param unit its unit
     * @return the value
     * @throws IllegalArgumentException if the value cannot be, or the unit does not fit
     */
    public static IsaDeviation of(double value, Unit<Temperature> unit) {
        return new IsaDeviation(Edge.si(TERM, value, unit));
    }

    /**
     * Returns an ISA deviation given as a quantity.
     *
     * @param quantity the quantity, in any unit of temperature
     * @return the value
     * @throws IllegalArgumentException if the value cannot be, or the unit or its scale does not
     *     fit
     */
    public static IsaDeviation of(Quantity<Temperature> quantity) {
        return new IsaDeviation(Edge.si(TERM, quantity));
    }

    /**
     * Returns the ISA deviation that a text stands for.
     *
     * @param text a number, a space and a unit, such as {@code "-12.5 K"}
     * @return the value
     * @throws org.climbwright.unit.UnitTextException if the text is of any other form
     * @throws IllegalArgumentException if the value cannot be
     */
    public static IsaDeviation parse(String text) {
        return new IsaDeviation(TERM.parse(text));
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
