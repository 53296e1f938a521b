package org.climbwright.quantity.pressure;

import javax.measure.Quantity;
import javax.measure.Unit;
import javax.measure.quantity.Pressure;
import org.climbwright.quantity.Term;
import org.climbwright.quantity.edge.Edge;
import org.climbwright.unit.UnitScale;

/**
 * The pressure of the air that the aeroplane flies through, undisturbed by it.
 *
 * <p>Not an {@link AltimeterSetting}, which is a pressure reduced to the sea; not {@link
 * TotalPressure}.
 */
public final class StaticPressure extends PressureValue<StaticPressure> {
    private static final long serialVersionUID = 1L;
    private static final Term TERM =
            Term.of("static pressure", UnitScale.PASCAL, UnitScale.HECTOPASCAL).from(0.0);

    private StaticPressure(double si) {
        super(si);
    }

    /**
     * Returns a static pressure given in pascals.
     *
     * @param pascals the value [Pa], 0 or more, finite
     * @return the value
     * @throws IllegalArgumentException if the value cannot be: it must be 0 or more, finite
     */
    public static StaticPressure ofPascals(double pascals) {
        return new StaticPressure(TERM.inSi(pascals));
    }

    /**
     * Returns a static pressure given in hectopascals.
     *
     * @param hectopascals the value [hPa], 0 or more, finite
     * @return the value
     * @throws IllegalArgumentException if the value cannot be: it must be 0 or more, finite
     */
    public static StaticPressure ofHectopascals(double hectopascals) {
        return new StaticPressure(TERM.si(hectopascals, UnitScale.HECTOPASCAL));
    }

    /**
     * Returns a static pressure given in any unit of pressure.
     *
     * @param value the number
     * @param unit its unit
     * @return the value
     * @throws IllegalArgumentException if the value cannot be, or the unit does not fit
     */
    public static StaticPressure of(double value, Unit<Pressure> unit) {
        return new StaticPressure(Edge.si(TERM, value, unit));
    }

    /**
     * Returns a static pressure given as a quantity.
     *
     * @param quantity the quantity, in any unit of pressure
     * @return the value
     * @throws IllegalArgumentException if the value cannot be, or the unit or its scale does not
     *     fit
     */
    public static StaticPressure of(Quantity<Pressure> quantity) {
        return new StaticPressure(Edge.si(TERM, quantity));
    }

    /**
     * Returns the static pressure that a text stands for.
     *
     * @param text a number, a space and a unit, such as {@code "1013.25 hPa"}
     * @return the value
     * @throws org.climbwright.unit.UnitTextException if the text is of any other form
     * @throws IllegalArgumentException if the value cannot be
     */
    public static StaticPressure parse(String text) {
        return new StaticPressure(TERM.parse(text));
    }

    @Override
    protected Term term() {
        return TERM;
    }
}
