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
 * are both refused, and the refusal says which unit was meant.
 *
 * <p>A setting computed from a pressure has decimals; weather reports give it rounded down:
 *
 * <pre>{@code
 * AltimeterSetting.ofHectopascals(1009.9).roundedDownToHectopascal().text()   // "1009 hPa"
 * AltimeterSetting.standard().roundedDownToHundredthOfInch().inInchesOfMercury()   // 29.92
 * }</pre>
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

    // 1e-6 hPa, far below what a barometer tells: a whole setting that arithmetic has left a few
    // last digits short, such as 999.9999999999 hPa, is that whole one and not the one below.
    private static final double SHORT_OF_WHOLE_PA = 1e-4;

    private static final double PASCALS_PER_HECTOPASCAL = UnitScale.HECTOPASCAL.factor();
    private static final double PASCALS_PER_HUNDREDTH = UnitScale.INCH_OF_MERCURY.factor() / 100.0;

    private AltimeterSetting(double si) {
        super(si);
    }

    /**
     * Returns an altimeter setting given in pascals.
     *
     * @param pascals the value [Pa], 850 to 1100 hPa
     * @return the value
     * @throws IllegalArgumentException if the value cannot be: it must be 850 to 1100 hPa
     */
    public static AltimeterSetting ofPascals(double pascals) {
        return new AltimeterSetting(TERM.inSi(pascals));
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

    /**
     * Returns this setting as a weather report in hectopascals gives it: a whole number of them,
     * always rounded down.
     *
     * <p>Down, and not to the nearest: an altimeter set too low reads too low, and the aeroplane is
     * higher than it says. A setting less than 1e-6 hPa short of a whole one counts as that: it is
     * one that arithmetic has left a few last digits short.
     *
     * @return the whole setting at or below this one; a whole setting stays itself to the last bit
     * @accuracy exact; up to 1e-6 hPa above this one where that much was short of a whole one
     * @source Commission Implementing Regulation (EU) 2017/373, Annex V (Part-MET),
     *     MET.TR.205(g)(2); AFMAN 15-111 (12 March 2019), 3.10.3: 1009.9 hPa is reported as 1009
     */
    public AltimeterSetting roundedDownToHectopascal() {
        return ofHectopascals(wholeOf(PASCALS_PER_HECTOPASCAL));
    }

    /**
     * Returns this setting as a weather report in inches of mercury gives it: a whole number of
     * hundredths, always rounded down.
     *
     * <p>Down for the same reason, and with the same 1e-6 hPa short of a whole one, as {@link
     * #roundedDownToHectopascal}.
     *
     * @return the whole setting at or below this one; a whole setting stays itself to the last bit
     * @throws IllegalArgumentException if that is below 850 hPa: this one is less than 25.11 inHg
     * @accuracy exact; up to 1e-6 hPa above this one where that much was short of a whole one
     * @source AFMAN 15-111 (12 March 2019), 3.10.2: 29.249 inHg is reported as 29.24
     */
    public AltimeterSetting roundedDownToHundredthOfInch() {
        return ofInchesOfMercury(wholeOf(PASCALS_PER_HUNDREDTH) / 100.0);
    }

    private double wholeOf(double unitPa) {
        return Math.floor((si() + SHORT_OF_WHOLE_PA) / unitPa);
    }

    @Override
    protected Term term() {
        return TERM;
    }
}
