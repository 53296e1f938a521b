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
    private static final Layers STANDARD = new Layers(BigDecimal.ZERO);

    private FiftyDigits() {}

    /** The layers of the standard atmosphere, warmer by the same amount at every altitude. */
    public static Layers warmerBy(double deviationK) {
        return new Layers(new BigDecimal(deviationK));
    }

    public static BigDecimal temperature(double altitudeM) {
        return STANDARD.temperature(altitudeM);
    }

    public static BigDecimal pressure(double altitudeM) {
        return STANDARD.pressure(altitudeM);
    }

    public static BigDecimal density(double altitudeM) {
        return pressure(altitudeM).divide(R.multiply(temperature(altitudeM)), DIGITS);
    }

    public static BigDecimal altitudeOfPressure(double pressurePa) {
        return STANDARD.altitudeOfPressure(pressurePa);
    }

    /** The altitude of a density, which falls with the power {@code -(g0 + R L) / (R L)} of T. */
    public static BigDecimal altitudeOfDensity(double densityKgPerM3) {
        BigDecimal rho = new BigDecimal(densityKgPerM3);
        int i = 0;
        while (i < BASE.length - 1 && rho.compareTo(STANDARD.baseDensity(i + 1)) <= 0) {
            i++;
        }
        BigDecimal power = R.multiply(LAPSE[i]).divide(G0.add(R.multiply(LAPSE[i])), DIGITS);
        return STANDARD.altitude(i, rho.divide(STANDARD.baseDensity(i), DIGITS), power.negate());
    }

    /** The thickness of air that is warmer than standard by the same amount at every pressure. */
    public static BigDecimal thickness(double lowerPa, double upperPa, double deviationK) {
        BigDecimal ratio = new BigDecimal(lowerPa).divide(new BigDecimal(upperPa), DIGITS);
        return altitudeOfPressure(upperPa)
                .subtract(altitudeOfPressure(lowerPa))
                .add(
                        R.multiply(new BigDecimal(deviationK))
                                .divide(G0, DIGITS)
                                .multiply(log(ratio)));
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

    /** Impact pressure: {@code p ((1 + M² / 5)^3.5 - 1)}, beyond Mach 1 by Rayleigh's formula. */
    public static BigDecimal impactPressure(BigDecimal mach, BigDecimal pressurePa) {
        if (mach.compareTo(ONE) > 0) {
            return pressurePa.multiply(pitotRatio(mach).subtract(ONE));
        }
        BigDecimal base = ONE.add(mach.multiply(mach).divide(BigDecimal.valueOf(5)));
        return pressurePa.multiply(pow(base, new BigDecimal("3.5")).subtract(ONE));
    }

    /** Rayleigh's {@code (6 M² / 5)^(7/2) (6 / (7 M² - 1))^(5/2)}. */
    private static BigDecimal pitotRatio(BigDecimal mach) {
        BigDecimal square = mach.multiply(mach);
        BigDecimal compression = square.multiply(new BigDecimal("1.2")).pow(7, DIGITS);
        BigDecimal shock = shockTerm(square).divide(BigDecimal.valueOf(6), DIGITS).pow(5, DIGITS);
        return BigDecimalMath.sqrt(compression.divide(shock, DIGITS), DIGITS);
    }

    private static BigDecimal shockTerm(BigDecimal machSquare) {
        return machSquare.multiply(BigDecimal.valueOf(7)).subtract(ONE);
    }

    /** Newton's method from above, where the convex formula of Rayleigh leads down to the zero. */
    private static BigDecimal supersonicMach(BigDecimal total) {
        BigDecimal mach = BigDecimalMath.sqrt(total, DIGITS);
        for (int step = 0; step < 12; step++) {
            BigDecimal slope = // of the logarithm, by the Mach number
                    BigDecimal.valueOf(7)
                            .divide(mach, DIGITS)
                            .subtract(
                                    mach.multiply(BigDecimal.valueOf(35))
                                            .divide(shockTerm(mach.multiply(mach)), DIGITS));
            BigDecimal ratio = pitotRatio(mach);
            mach =
                    mach.subtract(
                            ratio.subtract(total).divide(ratio.multiply(slope), DIGITS), DIGITS);
        }
        return mach;
    }

    /** Mach number: {@code sqrt(5 ((qc / p + 1)^(2/7) - 1))}, beyond Mach 1 Rayleigh's inverse. */
    public static BigDecimal mach(BigDecimal impactPressurePa, BigDecimal pressurePa) {
        BigDecimal total = impactPressurePa.divide(pressurePa, DIGITS).add(ONE);
        if (total.compareTo(pitotRatio(ONE)) > 0) {
            return supersonicMach(total);
        }
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

    /** Layers in which the temperature is linear in altitude, 1013.25 hPa at sea level. */
    public static final class Layers {
        private final BigDecimal[] baseT = new BigDecimal[BASE.length];
        private final BigDecimal[] baseP = new BigDecimal[BASE.length];

        private Layers(BigDecimal deviation) {
            baseT[0] = T0.add(deviation);
            baseP[0] = P0;
            for (int i = 1; i < BASE.length; i++) {
                baseT[i] = temperature(i - 1, BASE[i]);
                baseP[i] = pressure(i - 1, BASE[i]);
            }
        }

        public BigDecimal temperature(double altitudeM) {
            BigDecimal h = new BigDecimal(altitudeM);
            return temperature(layer(h), h);
        }

        public BigDecimal pressure(double altitudeM) {
            BigDecimal h = new BigDecimal(altitudeM);
            return pressure(layer(h), h);
        }

        /** The altitude of a pressure: each layer's formula solved for the altitude. */
        public BigDecimal altitudeOfPressure(double pressurePa) {
            BigDecimal p = new BigDecimal(pressurePa);
            int i = 0;
            while (i < BASE.length - 1 && p.compareTo(baseP[i + 1]) <= 0) {
                i++;
            }
            return altitude(
                    i,
                    p.divide(baseP[i], DIGITS),
                    R.multiply(LAPSE[i]).divide(G0, DIGITS).negate());
        }

        private BigDecimal altitude(int i, BigDecimal ratio, BigDecimal power) {
            if (LAPSE[i].signum() == 0) {
                BigDecimal scaleHeight = R.multiply(baseT[i]).divide(G0, DIGITS);
                return BASE[i].subtract(scaleHeight.multiply(log(ratio)));
            }
            return BASE[i].add(
                    baseT[i].divide(LAPSE[i], DIGITS).multiply(pow(ratio, power).subtract(ONE)));
        }

        private BigDecimal baseDensity(int i) {
            return baseP[i].divide(R.multiply(baseT[i]), DIGITS);
        }

        private BigDecimal temperature(int i, BigDecimal h) {
            return baseT[i].add(LAPSE[i].multiply(h.subtract(BASE[i])));
        }

        private BigDecimal pressure(int i, BigDecimal h) {
            BigDecimal above = h.subtract(BASE[i]);
            if (LAPSE[i].signum() == 0) {
                return baseP[i].multiply(
                        exp(G0.multiply(above).divide(R.multiply(baseT[i]), DIGITS).negate()));
            }
            BigDecimal power = G0.divide(R.multiply(LAPSE[i]), DIGITS).negate();
            return baseP[i].multiply(pow(temperature(i, h).divide(baseT[i], DIGITS), power));
        }
    }
}
