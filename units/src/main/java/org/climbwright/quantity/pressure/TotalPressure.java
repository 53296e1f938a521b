package org.climbwright.quantity.pressure;

import javax.measure.Quantity;
import javax.measure.Unit;
import javax.measure.quantity.Pressure;
import org.climbwright.quantity.Term;
import org.climbwright.quantity.edge.Edge;
import org.climbwright.unit.UnitScale;

/**
 * The pressure of air brought to rest without loss: static pressure plus {@link ImpactPressure}.
 */
public final class TotalPressure extends PressureValue<TotalPressure> {
    private static final long serialVersionUID = 1L;
    private static final Term TERM =
            Term.of("total pressure", UnitScale.PASCAL, UnitScale.HECTOPASCAL).from(0.0);

    private TotalPressure(double si) {
        super(si);
    }

    /**
     * Returns a total pressure given in pascals.
     *
     * @param pascals the value [Pa], 0 or more, finite
     * @return the value
     * @throws IllegalArgumentException if the value cannot be: it must be 0 or more, finite
     */
    public static TotalPressure ofPascals(double pascals) {
        return new TotalPressure(TERM.inSi(pascals));
    }

    /**
     * Returns a total pressure given in hectopascals.
     *
     * @param hectopascals the value [hPa], 0 or more, finite
     * @return the value
     * @throws IllegalArgumentException if the value cannot be: it must be 0 or more, finite
     */
    public static TotalPressure ofHectopascals(double hectopascals) {
        return new TotalPressure(TERM.si(hectopascals, UnitScale.HECTOPASCAL));
    }

    /**
     * Returns a total pressure given in any unit of pressure.
     *
     * @param value the number
     * @param unit its unit
     * @return the value
     * @throws IllegalArgumentException if the value cannot be, or the unit does not fit
     */
    public static TotalPressure of(double value, Unit<Pressure> unit) {
        return new TotalPressure(Edge.si(TERM, value, unit));
    }

    /**
     * Returns a total pressure given as a quantity.
     *
     * @param quantity the quantity, in any unit of pressure
     * @return the value
     * @throws IllegalArgumentException if the value cannot be, or the unit or its scale does not
     *     fit
     */
    public static TotalPressure of(Quantity<Pressure> quantity) {
        return new TotalPressure(Edge.si(TERM, quantity));
    }

    /**
     * Returns the total pressure that a text stands for.
     *
     * @param text a number, a space and a unit, such as {@code "1013.25 hPa"}
     * @return the value
     * @throws org.climbwright.unit.UnitTextException if the text is of any other form
     * @throws IllegalArgumentException if the value cannot be
     */
    public static TotalPressure parse(String text) {
        return new TotalPressure(TERM.parse(text));
    }

    @Override
    protected Term term() {
        return TERM;
    }
}
