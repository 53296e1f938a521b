package org.climbwright.quantity.pressure;

import javax.measure.Quantity;
import javax.measure.Unit;
import javax.measure.quantity.Pressure;
import org.climbwright.quantity.Term;
import org.climbwright.quantity.edge.Edge;
import org.climbwright.unit.UnitScale;

/**
 * The pressure that an altimeter is set to: QNH, or the standard 1013.25 hPa.
 *
 * <p>Not a {@link StaticPressure} measured anywhere: QNH is a pressure reduced to the sea through
 * the standard atmosphere. The range keeps hectopascals and inches apart: 29.92 hPa and 996 inHg
 * are both refused.
 *
 * <p>A setting taken wrongly is an altitude flown wrongly: the aeronautical information, the
 * operator's procedures and the controller decide what is set.
 *
 * @source range: lowest and highest settings that a weather report can give, common practice, no
 *     source
 */
public final class AltimeterSetting extends PressureValue<AltimeterSetting> {
    private static final long serialVersionUID = 1L;
    private static final Term TERM =
            Term.of("altimeter setting", UnitScale.PASCAL, UnitScale.HECTOPASCAL)
                    .from(85000.0)
                    .upTo(110000.0);

    private AltimeterSetting(double si) {
        super(si);
    }

    /**
     * Returns an altimeter setting given in hectopascals.
     *
     * @param hectopascals the value [hPa], 850 to 1100 hPa
     * @return the value
     * @throws IllegalArgumentException if the value cannot be: it must be 850 to 1100 hPa
     */
    public static AltimeterSetting ofHectopascals(double hectopascals) {
        return new AltimeterSetting(TERM.si(hectopascals, UnitScale.HECTOPASCAL));
    }

    /**
     * Returns an altimeter setting given in conventional inches of mercury.
     *
     * @param inchesOfMercury the value [inHg], 850 to 1100 hPa
     * @return the value
     * @throws IllegalArgumentException if the value cannot be: it must be 850 to 1100 hPa
     */
    public static AltimeterSetting ofInchesOfMercury(double inchesOfMercury) {
        return new AltimeterSetting(TERM.si(inchesOfMercury, UnitScale.INCH_OF_MERCURY));
    }

    /**
     * Returns an altimeter setting given in any unit of pressure.
     *
     * @param value the number
     * @param unit its unit
     * @return the value
     * @throws IllegalArgumentException if the value cannot be, or the unit does not fit
     */
    public static AltimeterSetting of(double value, Unit<Pressure> unit) {
        return new AltimeterSetting(Edge.si(TERM, value, unit));
    }

    /**
     * Returns an altimeter setting given as a quantity.
     *
     * @param quantity the quantity, in any unit of pressure
     * @return the value
     * @throws IllegalArgumentException if the value cannot be, or the unit or its scale does not
     *     fit
     */
    public static AltimeterSetting of(Quantity<Pressure> quantity) {
        return new AltimeterSetting(Edge.si(TERM, quantity));
    }

    /**
     * Returns the altimeter setting that a text stands for.
     *
     * @param text a number, a space and a unit, such as {@code "1013.25 hPa"}
     * @return the value
     * @throws org.climbwright.unit.UnitTextException if the text is of any other form
     * @throws IllegalArgumentException if the value cannot be
     */
    public static AltimeterSetting parse(String text) {
        return new AltimeterSetting(TERM.parse(text));
    }

    /**
     * Returns the standard setting, on which flight levels are flown.
     *
     * @return 1013.25 hPa
     */
    public static AltimeterSetting standard() {
        return ofHectopascals(1013.25);
    }

    /**
     * Returns this value in conventional inches of mercury.
     *
     * @return the number [inHg], as it came in
     */
    public double inInchesOfMercury() {
        return UnitScale.INCH_OF_MERCURY.fromSi(si());
    }

    @Override
    protected Term term() {
        return TERM;
    }
}
