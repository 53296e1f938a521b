package org.climbwright.quantity.pressure;

import javax.measure.Quantity;
import javax.measure.Unit;
import javax.measure.quantity.Pressure;
import org.climbwright.quantity.Term;
import org.climbwright.quantity.edge.Edge;
import org.climbwright.unit.UnitScale;

/**
 * Half the density times the square of the true airspeed: what lift, drag and loads are counted in.
 *
 * <p>Not {@link ImpactPressure}, which a pitot tube feels.
 */
public final class DynamicPressure extends PressureValue<DynamicPressure> {
    private static final long serialVersionUID = 1L;
    private static final Term TERM =
            Term.of("dynamic pressure", UnitScale.PASCAL, UnitScale.HECTOPASCAL).from(0.0);

    private DynamicPressure(double si) {
        super(si);
    }

    /**
     * Returns a dynamic pressure given in pascals.
     *
     * @param pascals the value [Pa], 0 or more, finite
     * @return the value
     * @throws IllegalArgumentException if the value cannot be: it must be 0 or more, finite
     */
    public static DynamicPressure ofPascals(double pascals) {
        return new DynamicPressure(TERM.inSi(pascals));
    }

    /**
     * Returns a dynamic pressure given in hectopascals.
     *
     * @param hectopascals the value [hPa], 0 or more, finite
     * @return the value
     * @throws IllegalArgumentException if the value cannot be: it must be 0 or more, finite
     */
    public static DynamicPressure ofHectopascals(double hectopascals) {
        return new DynamicPressure(TERM.si(hectopascals, UnitScale.HECTOPASCAL));
    }

    /**
     * Returns a dynamic pressure given in any unit of pressure.
     *
     * @param value the number
     * @param unit its unit
     * @return the value
     * @throws IllegalArgumentException if the value cannot be, or the unit does not fit
     */
    public static DynamicPressure of(double value, Unit<Pressure> unit) {
        return new DynamicPressure(Edge.si(TERM, value, unit));
    }

    /**
     * Returns a dynamic pressure given as a quantity.
     *
     * @param quantity the quantity, in any unit of pressure
     * @return the value
     * @throws IllegalArgumentException if the value cannot be, or the unit or its scale does not
     *     fit
     */
    public static DynamicPressure of(Quantity<Pressure> quantity) {
        return new DynamicPressure(Edge.si(TERM, quantity));
    }

    /**
     * Returns the dynamic pressure that a text stands for.
     *
     * @param text a number, a space and a unit, such as {@code "1013.25 hPa"}
     * @return the value
     * @throws org.climbwright.unit.UnitTextException if the text is of any other form
     * @throws IllegalArgumentException if the value cannot be
     */
    public static DynamicPressure parse(String text) {
        return new DynamicPressure(TERM.parse(text));
    }

    @Override
    protected Term term() {
        return TERM;
    }
}
