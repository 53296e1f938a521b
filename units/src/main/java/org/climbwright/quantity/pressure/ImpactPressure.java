package org.climbwright.quantity.pressure;

import javax.measure.Quantity;
import javax.measure.Unit;
import javax.measure.quantity.Pressure;
import org.climbwright.quantity.Term;
import org.climbwright.quantity.edge.Edge;
import org.climbwright.unit.UnitScale;

/**
 * Total less static pressure, as a pitot tube feels it: what an airspeed indicator measures.
 *
 * <p>Not {@link DynamicPressure}, which is less as soon as air is compressed.
 */
public final class ImpactPressure extends PressureValue<ImpactPressure> {
    private static final long serialVersionUID = 1L;
    private static final Term TERM =
            Term.of("impact pressure", UnitScale.PASCAL, UnitScale.HECTOPASCAL).from(0.0);

    private ImpactPressure(double si) {
        super(si);
    }

    /**
     * Returns an impact pressure given in pascals.
     *
     * @param pascals the value [Pa], 0 or more, finite
     * @return the value
     * @throws IllegalArgumentException if the value cannot be: it must be 0 or more, finite
     */
    public static ImpactPressure ofPascals(double pascals) {
        return new ImpactPressure(TERM.inSi(pascals));
    }

    /**
     * Returns an impact pressure given in hectopascals.
     *
     * @param hectopascals the value [hPa], 0 or more, finite
     * @return the value
     * @throws IllegalArgumentException if the value cannot be: it must be 0 or more, finite
     */
    public static ImpactPressure ofHectopascals(double hectopascals) {
        return new ImpactPressure(TERM.si(hectopascals, UnitScale.HECTOPASCAL));
    }

    /**
     * Returns an impact pressure given in any unit of pressure.
     *
     * @param value the number
     * @param unit its unit
     * @return the value
     * @throws IllegalArgumentException if the value cannot be, or the unit does not fit
     */
    public static ImpactPressure of(double value, Unit<Pressure> unit) {
        return new ImpactPressure(Edge.si(TERM, value, unit));
    }

    /**
     * Returns an impact pressure given as a quantity.
     *
     * @param quantity the quantity, in any unit of pressure
     * @return the value
     * @throws IllegalArgumentException if the value cannot be, or the unit or its scale does not
     *     fit
     */
    public static ImpactPressure of(Quantity<Pressure> quantity) {
        return new ImpactPressure(Edge.si(TERM, quantity));
    }

    /**
     * Returns the impact pressure that a text stands for.
     *
     * @param text a number, a space and a unit, such as {@code "1013.25 hPa"}
     * @return the value
     * @throws org.climbwright.unit.UnitTextException if the text is of any other form
     * @throws IllegalArgumentException if the value cannot be
     */
    public static ImpactPressure parse(String text) {
        return new ImpactPressure(TERM.parse(text));
    }

    @Override
    protected Term term() {
        return TERM;
    }
}
