package org.climbwright.testing;

import ch.obermuhlner.math.big.BigDecimalMath;
import java.math.BigDecimal;
import java.math.MathContext;

/**
 * The standard atmosphere and the airspeeds in 50 digits, a second route to the numbers of the
 * library: written from the defining constants of ICAO Doc 7488/3 as decimals, and by the textbook
 * form of each formula, since in 50 digits nothing is lost by cancellation.
 */
public final class FiftyDigits {
    public static final MathContext DIGITS = new MathContext(50);

    private static final BigDecimal ONE = BigDecimal.ONE;
    private static final BigDecimal G0 = new BigDecimal("9.80665");
    private static final BigDecimal R = new BigDecimal("287.05287");
    private static final BigDecimal GAMMA = new BigDecimal("1.4");
    private static final BigDecimal P0 = new BigDecimal("101325");
    private static final BigDecimal T0 = new BigDecimal("288.15");

    private static final BigDecimal[] BASE = {
        new BigDecimal(0),
        new BigDecimal(11000),
        new BigDecimal(20000),
        new BigDecimal(32000),
        new BigDecimal(47000),
        new BigDecimal(51000),
        new BigDecimal(71000)
    };
    private static final BigDecimal[] LAPSE = {
        new BigDecimal("-0.0065"),
        BigDecimal.ZERO,
        new BigDecimal("0.001"),
        new BigDecimal("0.0028"),
        BigDecimal.ZERO,
        new BigDecimal("-0.0028"),
        new BigDecimal("-0.002")
    };
    private static final BigDecimal[] BASE_T = new BigDecimal[BASE.length];
    private static final BigDecimal[] BASE_P = new BigDecimal[BASE.length];

    static {
        BASE_T[0] = T0;
        BASE_P[0] = P0;
        for (int i = 1; i < BASE.length; i++) {
            BASE_T[i] = temperature(i - 1, BASE[i]);
            BASE_P[i] = pressure(i - 1, BASE[i]);
        }
    }

    private FiftyDigits() {}

    public static BigDecimal temperature(double altitudeM) {
        BigDecimal h = new BigDecimal(altitudeM);
        return temperature(layer(h), h);
    }

    public static BigDecimal pressure(double altitudeM) {
        BigDecimal h = new BigDecimal(altitudeM);
        return pressure(layer(h), h);
    }

    public static BigDecimal density(double altitudeM) {
        return pressure(altitudeM).divide(R.multiply(temperature(altitudeM)), DIGITS);
    }

    /** The altitude of a pressure: each layer's formula solved for the altitude. */
    public static BigDecimal altitudeOfPressure(double pressurePa) {
        BigDecimal p = new BigDecimal(pressurePa);
        int i = 0;
        while (i < BASE.length - 1 && p.compareTo(BASE_P[i + 1]) <= 0) {
            i++;
        }
        BigDecimal ratio = p.divide(BASE_P[i], DIGITS);
        if (LAPSE[i].signum() == 0) {
            BigDecimal scaleHeight = R.multiply(BASE_T[i]).divide(G0, DIGITS);
            return BASE[i].subtract(scaleHeight.multiply(log(ratio)));
        }
        BigDecimal power = R.multiply(LAPSE[i]).divide(G0, DIGITS).negate();
        return BASE[i].add(
                BASE_T[i].divide(LAPSE[i], DIGITS).multiply(pow(ratio, power).subtract(ONE)));
    }

    /** The altitude of a density, likewise: density falls with the power of pressure less one. */
    public static BigDecimal altitudeOfDensity(double densityKgPerM3) {
        BigDecimal rho = new BigDecimal(densityKgPerM3);
        int i = 0;
        while (i < BASE.length - 1 && rho.compareTo(baseDensity(i + 1)) <= 0) {
            i++;
        }
        BigDecimal ratio = rho.divide(baseDensity(i), DIGITS);
        if (LAPSE[i].signum() == 0) {
            BigDecimal scaleHeight = R.multiply(BASE_T[i]).divide(G0, DIGITS);
            return BASE[i].subtract(scaleHeight.multiply(log(ratio)));
        }
        BigDecimal pressurePower = G0.divide(R.multiply(LAPSE[i]), DIGITS).negate();
        BigDecimal power = ONE.divide(pressurePower.subtract(ONE), DIGITS);
        return BASE[i].add(
                BASE_T[i].divide(LAPSE[i], DIGITS).multiply(pow(ratio, power).subtract(ONE)));
    }

    public static BigDecimal speedOfSound(BigDecimal temperatureK) {
        return BigDecimalMath.sqrt(GAMMA.multiply(R).multiply(temperatureK), DIGITS);
    }

    public static BigDecimal seaLevelSpeedOfSound() {
        return speedOfSound(T0);
    }

    public static BigDecimal seaLevelPressure() {
        return P0;
    }

    /** Impact pressure: {@code p ((1 + M² / 5)^3.5 - 1)}. */
    public static BigDecimal impactPressure(BigDecimal mach, BigDecimal pressurePa) {
        BigDecimal base = ONE.add(mach.multiply(mach).divide(BigDecimal.valueOf(5)));
        return pressurePa.multiply(pow(base, new BigDecimal("3.5")).subtract(ONE));
    }

    /** Mach number: {@code sqrt(5 ((qc / p + 1)^(2/7) - 1))}. */
    public static BigDecimal mach(BigDecimal impactPressurePa, BigDecimal pressurePa) {
        BigDecimal total = impactPressurePa.divide(pressurePa, DIGITS).add(ONE);
        BigDecimal power = BigDecimal.valueOf(2).divide(BigDecimal.valueOf(7), DIGITS);
        return BigDecimalMath.sqrt(
                pow(total, power).subtract(ONE).multiply(BigDecimal.valueOf(5)), DIGITS);
    }

    public static BigDecimal machOfCas(double casMps, double pressurePa) {
        BigDecimal atSeaLevel = new BigDecimal(casMps).divide(seaLevelSpeedOfSound(), DIGITS);
        return mach(impactPressure(atSeaLevel, P0), new BigDecimal(pressurePa));
    }

    public static BigDecimal casOfMach(double mach, double pressurePa) {
        BigDecimal impact = impactPressure(new BigDecimal(mach), new BigDecimal(pressurePa));
        return mach(impact, P0).multiply(seaLevelSpeedOfSound());
    }

    public static BigDecimal exp(BigDecimal x) {
        return BigDecimalMath.exp(x, DIGITS);
    }

    public static BigDecimal log(BigDecimal x) {
        return BigDecimalMath.log(x, DIGITS);
    }

    private static BigDecimal pow(BigDecimal x, BigDecimal y) {
        return BigDecimalMath.pow(x, y, DIGITS);
    }

    private static int layer(BigDecimal h) {
        int i = 0;
        while (i < BASE.length - 1 && h.compareTo(BASE[i + 1]) >= 0) {
            i++;
        }
        return i;
    }

    private static BigDecimal baseDensity(int i) {
        return BASE_P[i].divide(R.multiply(BASE_T[i]), DIGITS);
    }

    private static BigDecimal temperature(int i, BigDecimal h) {
        return BASE_T[i].add(LAPSE[i].multiply(h.subtract(BASE[i])));
    }

    private static BigDecimal pressure(int i, BigDecimal h) {
        BigDecimal above = h.subtract(BASE[i]);
        if (LAPSE[i].signum() == 0) {
            return BASE_P[i].multiply(
                    exp(G0.multiply(above).divide(R.multiply(BASE_T[i]), DIGITS).negate()));
        }
        BigDecimal power = G0.divide(R.multiply(LAPSE[i]), DIGITS).negate();
        return BASE_P[i].multiply(pow(temperature(i, h).divide(BASE_T[i], DIGITS), power));
    }
}
