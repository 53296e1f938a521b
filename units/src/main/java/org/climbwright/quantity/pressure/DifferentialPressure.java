package org.climbwright.quantity.pressure;

import javax.measure.Quantity;
import javax.measure.Unit;
import javax.measure.quantity.Pressure;
import org.climbwright.quantity.Term;
import org.climbwright.quantity.edge.Edge;
import org.climbwright.unit.UnitScale;

/**
 * Cabin pressure less the pressure outside: positive when the hull is blown up, and negative when
 * it is squeezed.
 */
public final class DifferentialPressure extends PressureValue<DifferentialPressure> {
    private static final long serialVersionUID = 1L;
    private static final Term TERM =
            Term.of("differential pressure", UnitScale.PASCAL, UnitScale.POUND_PER_SQUARE_INCH);

    private DifferentialPressure(double si) {
        super(si);
    }

    /**
     * Returns a differential pressure given in pascals.
     *
     * @param pascals the value [Pa], any finite number
     * @return the value
     * @throws IllegalArgumentException if the value cannot be: it must be any finite number
     */
    public static DifferentialPressure ofPascals(double pascals) {
        return new DifferentialPressure(TERM.inSi(pascals));
    }

    /**
     * Returns a differential pressure given in hectopascals.
     *
     * @param hectopascals the value [hPa], any finite number
     * @return the value
     * @throws IllegalArgumentException if the value cannot be: it must be any finite number
     */
    public static DifferentialPressure ofHectopascals(double hectopascals) {
        return new DifferentialPressure(TERM.si(hectopascals, UnitScale.HECTOPASCAL));
    }

    /**
     * Returns a differential pressure given in pounds-force per square inch.
     *
     * @param poundsPerSquareInch the value [psi], any finite number
     * @return the value
     * @throws IllegalArgumentException if the value cannot be: it must be any finite number
     */
    public static DifferentialPressure ofPoundsPerSquareInch(double poundsPerSquareInch) {
        return new DifferentialPressure(
                TERM.si(poundsPerSquareInch, UnitScale.POUND_PER_SQUARE_INCH));
    }

    /**
     * Returns a differential pressure given in any unit of pressure.
     *
     * @param value the number
     * @param unit its unit
     * @return the value
     * @throws IllegalArgumentException if the value cannot be, or the unit does not fit
     */
    public static DifferentialPressure of(double value, Unit<Pressure> unit) {
        return new DifferentialPressure(Edge.si(TERM, value, unit));
    }

    /**
     * Returns a differential pressure given as a quantity.
     *
     * @param quantity the quantity, in any unit of pressure
     * @return the value
     * @throws IllegalArgumentException if the value cannot be, or the unit or its scale does not
     *     fit
     */
    public static DifferentialPressure of(Quantity<Pressure> quantity) {
        return new DifferentialPressure(Edge.si(TERM, quantity));
    }

    /**
     * Returns the differential pressure that a text stands for.
     *
     * @param text a number, a space and a unit, such as {@code "7.8 psi"}
     * @return the value
     * @throws org.climbwright.unit.UnitTextException if the text is of any other form
     * @throws IllegalArgumentException if the value cannot be
     */
    public static DifferentialPressure parse(String text) {
        return new DifferentialPressure(TERM.parse(text));
    }

    /**
     * Returns this value in pounds-force per square inch.
     *
     * @return the number [psi], as it came in
     */
    public double inPoundsPerSquareInch() {
        return UnitScale.POUND_PER_SQUARE_INCH.fromSi(si());
    }

    @Override
    protected Term term() {
        return TERM;
    }
}
