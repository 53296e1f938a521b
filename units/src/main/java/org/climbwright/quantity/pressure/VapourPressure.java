package org.climbwright.quantity.pressure;

import javax.measure.Quantity;
import javax.measure.Unit;
import javax.measure.quantity.Pressure;
import org.climbwright.quantity.Term;
import org.climbwright.quantity.edge.Edge;
import org.climbwright.unit.UnitScale;

/**
 * The part of the air's pressure that its water vapour makes: the partial pressure of the vapour
 * that is there.
 *
 * <p>Not the saturation vapour pressure, the most that air of a temperature can hold: the one over
 * the other is the relative humidity. Not {@link StaticPressure}, which is that of dry air and
 * vapour together.
 */
public final class VapourPressure extends PressureValue<VapourPressure> {
    private static final long serialVersionUID = 1L;
    private static final Term TERM =
            Term.of("vapour pressure", UnitScale.PASCAL, UnitScale.HECTOPASCAL).from(0.0);

    private VapourPressure(double si) {
        super(si);
    }

    /**
     * Returns a vapour pressure given in pascals.
     *
     * @param pascals the value [Pa], 0 or more, finite
     * @return the value
     * @throws IllegalArgumentException if the value cannot be: it must be 0 or more, finite
     */
    public static VapourPressure ofPascals(double pascals) {
        return new VapourPressure(TERM.inSi(pascals));
    }

    /**
     * Returns a vapour pressure given in hectopascals.
     *
     * @param hectopascals the value [hPa], 0 or more, finite
     * @return the value
     * @throws IllegalArgumentException if the value cannot be: it must be 0 or more, finite
     */
    public static VapourPressure ofHectopascals(double hectopascals) {
        return new VapourPressure(TERM.si(hectopascals, UnitScale.HECTOPASCAL));
    }

    /**
     * Returns a vapour pressure given in any unit of pressure.
     *
     * @param value the number
     * @param unit its unit
     * @return the value
     * @throws IllegalArgumentException if the value cannot be, or the unit does not fit
     */
    public static VapourPressure of(double value, Unit<Pressure> unit) {
        return new VapourPressure(Edge.si(TERM, value, unit));
    }

    /**
     * Returns a vapour pressure given as a quantity.
     *
     * @param quantity the quantity, in any unit of pressure
     * @return the value
     * @throws IllegalArgumentException if the value cannot be, or the unit or its scale does not
     *     fit
     */
    public static VapourPressure of(Quantity<Pressure> quantity) {
        return new VapourPressure(Edge.si(TERM, quantity));
    }

    /**
     * Returns the vapour pressure that a text stands for.
     *
     * @param text a number, a space and a unit, such as {@code "12.3 hPa"}
     * @return the value
     * @throws org.climbwright.unit.UnitTextException if the text is of any other form
     * @throws IllegalArgumentException if the value cannot be
     */
    public static VapourPressure parse(String text) {
        return new VapourPressure(TERM.parse(text));
    }

    @Override
    protected Term term() {
        return TERM;
    }
}
