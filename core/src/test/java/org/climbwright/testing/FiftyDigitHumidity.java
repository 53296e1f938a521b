package org.climbwright.testing;

import static org.climbwright.testing.FiftyDigits.DIGITS;
import static org.climbwright.testing.FiftyDigits.log;

import ch.obermuhlner.math.big.BigDecimalMath;
import java.math.BigDecimal;

/**
 * Saturation and lifted air in 50 digits, a second route to the numbers of the library: each
 * formula with its published coefficients as decimals.
 *
 * <p>Sources: D. M. Murphy and T. Koop, Q. J. R. Meteorol. Soc. 131 (2005) 1539-1565, equations 10
 * and 7; WMO-No. 8, annex 4.B.
 */
public final class FiftyDigitHumidity {
    private static final BigDecimal R = new BigDecimal("287.05287");
    private static final BigDecimal R_VAPOUR = new BigDecimal("461.523");
    private static final BigDecimal CP = new BigDecimal("3.5").multiply(R);
    private static final BigDecimal CP_VAPOUR = new BigDecimal("1860");
    private static final BigDecimal EPSILON = R.divide(R_VAPOUR, DIGITS);

    private FiftyDigitHumidity() {}

    /** Murphy and Koop, equation 10: the logarithm of the vapour pressure in Pa. */
    public static BigDecimal lnMurphyKoopWater(BigDecimal t) {
        BigDecimal first = fit("54.842763", "-6763.22", "-4.210", "0.000367", t);
        BigDecimal second = fit("53.878", "-1331.22", "-9.44523", "0.014025", t);
        BigDecimal slope = new BigDecimal("0.0415").multiply(t.subtract(new BigDecimal("218.8")));
        return first.add(BigDecimalMath.tanh(slope, DIGITS).multiply(second));
    }

    /** Murphy and Koop, equation 7: the logarithm of the vapour pressure in Pa. */
    public static BigDecimal lnMurphyKoopIce(BigDecimal t) {
        return fit("9.550426", "-5723.265", "3.53068", "-0.00728332", t);
    }

    /** WMO-No. 8 over water: the logarithm of the vapour pressure in Pa. */
    public static BigDecimal lnWmoWater(BigDecimal t) {
        return magnus("17.62", "243.12", t);
    }

    /** WMO-No. 8 over ice: the logarithm of the vapour pressure in Pa. */
    public static BigDecimal lnWmoIce(BigDecimal t) {
        return magnus("22.46", "272.62", t);
    }

    /** Mass of vapour per mass of dry air. */
    public static BigDecimal mixingRatio(BigDecimal vapourPa, BigDecimal pressurePa) {
        return EPSILON.multiply(vapourPa).divide(pressurePa.subtract(vapourPa), DIGITS);
    }

    /** Heat capacity of moist air at constant pressure [J/(kg K)]. */
    public static BigDecimal heatCapacity(BigDecimal mixingRatio) {
        return CP.add(mixingRatio.multiply(CP_VAPOUR))
                .divide(BigDecimal.ONE.add(mixingRatio), DIGITS);
    }

    /** Gas constant over heat capacity of moist air: the exponent of its adiabat. */
    public static BigDecimal adiabaticExponent(BigDecimal mixingRatio) {
        return R.add(mixingRatio.multiply(R_VAPOUR))
                .divide(BigDecimal.ONE.add(mixingRatio), DIGITS)
                .divide(heatCapacity(mixingRatio), DIGITS);
    }

    private static BigDecimal fit(String a, String b, String c, String d, BigDecimal t) {
        return new BigDecimal(a)
                .add(new BigDecimal(b).divide(t, DIGITS))
                .add(new BigDecimal(c).multiply(log(t)))
                .add(new BigDecimal(d).multiply(t));
    }

    private static BigDecimal magnus(String a, String b, BigDecimal t) {
        BigDecimal celsius = t.subtract(new BigDecimal("273.15"));
        return log(new BigDecimal("611.2"))
                .add(
                        new BigDecimal(a)
                                .multiply(celsius)
                                .divide(new BigDecimal(b).add(celsius), DIGITS));
    }
}
