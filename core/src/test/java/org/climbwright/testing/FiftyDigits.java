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
    private static final BigDecimal SEVEN = BigDecimal.valueOf(7);
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

    private static final BigDecimal A0 = speedOfSound(T0);
    private static final BigDecimal SONIC = pitotRatio(ONE);

    /** Below, {@code (1 + x)^n - 1} would lose more than 17 of the 50 digits. */
    private static final BigDecimal TINY = new BigDecimal("1e-17");

    private FiftyDigits() {}

    /** The layers of the standard atmosphere, warmer by the same amount at every altitude. */
    public static Layers warmerBy(double deviationK) {
        return new Layers(new BigDecimal(deviationK));
    }

    public static BigDecimal temperature(double altitudeM) {
        return STANDARD.temperature(altitudeM);
    }

    public static BigDecimal temperature(BigDecimal altitudeM) {
        return STANDARD.temperature(layer(altitudeM), altitudeM);
    }

    public static BigDecimal pressure(double altitudeM) {
        return STANDARD.pressure(altitudeM);
    }

    public static BigDecimal density(double altitudeM) {
        return pressure(altitudeM).divide(R.multiply(temperature(altitudeM)), DIGITS);
    }

    public static BigDecimal altitudeOfPressure(double pressurePa) {
        return STANDARD.altitudeOfPressure(new BigDecimal(pressurePa));
    }

    public static BigDecimal altitudeOfPressure(BigDecimal pressurePa) {
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
        return sqrt(GAMMA.multiply(R).multiply(temperatureK));
    }

    public static BigDecimal seaLevelSpeedOfSound() {
        return A0;
    }

    public static BigDecimal seaLevelPressure() {
        return P0;
    }

    public static BigDecimal seaLevelTemperature() {
        return T0;
    }

    public static BigDecimal gasConstant() {
        return R;
    }

    /** Impact pressure: {@code p ((1 + M² / 5)^3.5 - 1)}, beyond Mach 1 by Rayleigh's formula. */
    public static BigDecimal impactPressure(BigDecimal mach, BigDecimal pressurePa) {
        if (mach.compareTo(ONE) > 0) {
            return pressurePa.multiply(pitotRatio(mach).subtract(ONE), DIGITS);
        }
        BigDecimal x = mach.multiply(mach, DIGITS).divide(BigDecimal.valueOf(5), DIGITS);
        if (x.compareTo(TINY) < 0) {
            return pressurePa.multiply(binomialLessOne(x, new BigDecimal("3.5")), DIGITS);
        }
        BigDecimal power = ONE.add(x, DIGITS).pow(7, DIGITS);
        return pressurePa.multiply(sqrt(power).subtract(ONE), DIGITS);
    }

    /** The first terms of {@code (1 + x)^n - 1} for a tiny x; the next is x³ of the sum or less. */
    private static BigDecimal binomialLessOne(BigDecimal x, BigDecimal n) {
        BigDecimal third = n.subtract(BigDecimal.valueOf(2)).multiply(x, DIGITS);
        BigDecimal fromSecond =
                ONE.add(third.divide(BigDecimal.valueOf(3), DIGITS), DIGITS)
                        .multiply(n.subtract(ONE).multiply(x, DIGITS), DIGITS)
                        .divide(BigDecimal.valueOf(2), DIGITS);
        return n.multiply(x, DIGITS).multiply(ONE.add(fromSecond, DIGITS), DIGITS);
    }

    /** Rayleigh's {@code (6 M² / 5)^(7/2) (6 / (7 M² - 1))^(5/2)}. */
    private static BigDecimal pitotRatio(BigDecimal mach) {
        BigDecimal square = mach.multiply(mach, DIGITS);
        BigDecimal compression = square.multiply(new BigDecimal("1.2")).pow(7, DIGITS);
        BigDecimal shock = shockTerm(square).divide(BigDecimal.valueOf(6), DIGITS).pow(5, DIGITS);
        return sqrt(compression.divide(shock, DIGITS));
    }

    private static BigDecimal shockTerm(BigDecimal machSquare) {
        return machSquare.multiply(BigDecimal.valueOf(7)).subtract(ONE);
    }

    /**
     * Newton's method from above, where the convex formula of Rayleigh leads down to the zero: in
     * doubles as far as they go, then in 50 digits.
     */
    private static BigDecimal supersonicMach(BigDecimal total) {
        double near = StrictMath.sqrt(total.doubleValue());
        for (int step = 0; step < 12; step++) {
            double ratio = pitotRatio(near);
            double slope = 7.0 / near - 35.0 * near / (7.0 * near * near - 1.0);
            near -= (ratio - total.doubleValue()) / (ratio * slope);
        }
        BigDecimal mach = new BigDecimal(near);
        for (int step = 0; step < 3; step++) {
            BigDecimal slope = // of the logarithm, by the Mach number
                    BigDecimal.valueOf(7)
                            .divide(mach, DIGITS)
                            .subtract(
                                    mach.multiply(BigDecimal.valueOf(35))
                                            .divide(
                                                    shockTerm(mach.multiply(mach, DIGITS)),
                                                    DIGITS));
            BigDecimal ratio = pitotRatio(mach);
            mach =
                    mach.subtract(
                            ratio.subtract(total).divide(ratio.multiply(slope), DIGITS), DIGITS);
        }
        return mach;
    }

    private static double pitotRatio(double mach) {
        double square = mach * mach;
        return StrictMath.pow(1.2 * square, 3.5) * StrictMath.pow(6.0 / (7.0 * square - 1.0), 2.5);
    }

    /** Mach number: {@code sqrt(5 ((qc / p + 1)^(2/7) - 1))}, beyond Mach 1 Rayleigh's inverse. */
    public static BigDecimal mach(BigDecimal impactPressurePa, BigDecimal pressurePa) {
        BigDecimal ratio = impactPressurePa.divide(pressurePa, DIGITS);
        BigDecimal power; // less 1
        if (ratio.compareTo(TINY) < 0) {
            power = binomialLessOne(ratio, BigDecimal.valueOf(2).divide(SEVEN, DIGITS));
        } else {
            BigDecimal total = ratio.add(ONE, DIGITS);
            if (total.compareTo(SONIC) > 0) {
                return supersonicMach(total);
            }
            power = seventhRoot(total).pow(2, DIGITS).subtract(ONE);
        }
        return sqrt(power.multiply(BigDecimal.valueOf(5)));
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

    /** The logarithm of a double near by, and that of what is left: to 16 digits and to 64. */
    public static BigDecimal log(BigDecimal x) {
        BigDecimal near = new BigDecimal(StrictMath.log(x.doubleValue()));
        BigDecimal left = x.multiply(exp(near.negate()), DIGITS).subtract(ONE);
        BigDecimal square = left.multiply(left, DIGITS);
        return near.add(left, DIGITS)
                .subtract(square.divide(BigDecimal.valueOf(2), DIGITS), DIGITS)
                .add(square.multiply(left).divide(BigDecimal.valueOf(3), DIGITS), DIGITS);
    }

    public static BigDecimal sqrt(BigDecimal x) {
        return x.sqrt(DIGITS);
    }

    /** Newton's method: the digits that are right double at each step, from 15 to 30 and to 60. */
    static BigDecimal seventhRoot(BigDecimal x) {
        BigDecimal root = new BigDecimal(StrictMath.pow(x.doubleValue(), 1.0 / 7.0));
        for (int step = 0; step < 2; step++) {
            root =
                    root.multiply(BigDecimal.valueOf(6))
                            .add(x.divide(root.pow(6, DIGITS), DIGITS))
                            .divide(SEVEN, DIGITS);
        }
        return root;
    }

    static BigDecimal pow(BigDecimal x, BigDecimal y) {
        return exp(y.multiply(log(x), DIGITS));
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
            return altitudeOfPressure(new BigDecimal(pressurePa));
        }

        private BigDecimal altitudeOfPressure(BigDecimal p) {
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
