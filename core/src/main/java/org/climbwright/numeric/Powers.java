package org.climbwright.numeric;

/**
 * Natural logarithm, exponential and powers of {@code + - * /} and {@code fma} alone: the same on
 * every Java, and fast enough for a law that a climb asks hundreds of times.
 *
 * <p>A number is {@code 2^k m} with {@code m} from sqrt(1/2) to sqrt(2), and {@code ln m = 2 artanh
 * s} with {@code s = (m - 1) / (m + 1)}; the logarithm comes in two parts, so that a power with a
 * large exponent loses little. The exponential takes the nearest multiple of ln 2 off.
 *
 * @accuracy against 50-digit arithmetic: 1 ulp for the logarithm and the exponential; for a power
 *     0.75 ulp and 0.03 more for each unit of {@code |y ln x|}, which is 1.4 ulp at 20 and 22 at
 *     700. A power is exact where x is 1 or y is 0 or 1
 * @source the power series of artanh and exp; ln 2 in two parts, from its digits
 */
public final class Powers {
    /** The square root of one half: where the range of a mantissa begins. */
    private static final double SQRT_HALF = 0.7071067811865476;

    /** One over ln 2. */
    private static final double PER_LN2 = 1.4426950408889634;

    /** The first 32 bits of ln 2, so that a multiple by an exponent is exact. */
    private static final double LN2 = 0x1.62e42feep-1;

    /** What those leave of ln 2. */
    private static final double LN2_REST = 1.9082149292705877e-10;

    /** Beyond, the exponential is infinite. */
    private static final double HIGHEST_EXPONENT = 709.782712893384;

    /** Below, the exponential is 0. */
    private static final double LOWEST_EXPONENT = -745.2;

    private static final long FRACTION = 0x000fffffffffffffL;
    private static final long ONE = 0x3ff0000000000000L;
    private static final int FRACTION_BITS = 52;
    private static final int BIAS = 1023;

    private Powers() {}

    /**
     * Returns the natural logarithm.
     *
     * @param x a number, 2.3e-308 or more and finite
     * @return its logarithm; NaN for any other number
     */
    public static double log(double x) {
        return power(x, 1.0, true);
    }

    /**
     * Returns the natural logarithm of a ratio, which keeps its digits where both are nearly the
     * same.
     *
     * @param a a number above 0
     * @param b a number above 0
     * @return the logarithm of {@code a / b}
     */
    public static double logOfRatio(double a, double b) {
        double ratio = a / b;
        if (ratio > SQRT_HALF && ratio < 2.0 * SQRT_HALF) {
            double s = (a - b) / (a + b);
            return Math.fma(2.0, s, tail(s));
        }
        return log(ratio);
    }

    /**
     * Returns the exponential.
     *
     * @param x a number
     * @return e to its power; infinite above 709.78, 0 below -745.2
     */
    public static double exp(double x) {
        return exp(x, 0.0);
    }

    /**
     * Returns a power.
     *
     * @param x a number, 2.3e-308 or more and finite
     * @param y the exponent
     * @return {@code x^y}; NaN for any other x
     */
    public static double pow(double x, double y) {
        return y == 1.0 ? x : power(x, y, false);
    }

    /** The logarithm of x in two parts, and what is asked of it: itself, or x to the power y. */
    private static double power(double x, double y, boolean isLogarithm) {
        if (!(x >= Double.MIN_NORMAL && x <= Double.MAX_VALUE)) {
            return Double.NaN;
        }
        long bits = Double.doubleToRawLongBits(x);
        double k = (bits >>> FRACTION_BITS) - BIAS;
        double m = Double.longBitsToDouble((bits & FRACTION) | ONE);
        if (m > 2.0 * SQRT_HALF) {
            m *= 0.5;
            k += 1.0;
        }
        double f = m - 1.0;
        double d = m + 1.0;
        double s = f / d;
        double rest = Math.fma(-s, d, f) - s * (m - (d - 1.0));
        double large = k * LN2;
        double high = large + 2.0 * s;
        double low =
                (large - high + 2.0 * s) + Math.fma(k, LN2_REST, Math.fma(2.0, rest / d, tail(s)));
        double logarithm = high + low;
        if (isLogarithm) {
            return logarithm;
        }
        double product = y * logarithm;
        return exp(product, Math.fma(y, logarithm, -product) + y * (high - logarithm + low));
    }

    /** {@code 2 artanh s - 2 s}, for s up to 0.1716 either way, where artanh reaches half ln 2. */
    private static double tail(double s) {
        double z = s * s;
        double z2 = z * z;
        double z4 = z2 * z2;
        double a = Math.fma(z, 2.0 / 5.0, 2.0 / 3.0);
        double b = Math.fma(z, 2.0 / 9.0, 2.0 / 7.0);
        double c = Math.fma(z, 2.0 / 13.0, 2.0 / 11.0);
        double d = Math.fma(z, 2.0 / 17.0, 2.0 / 15.0);
        double e = Math.fma(z, 2.0 / 21.0, 2.0 / 19.0);
        double high = Math.fma(z4, e, Math.fma(z2, d, c));
        return s * z * Math.fma(z4, high, Math.fma(z2, b, a));
    }

    /** The exponential of a number and a small rest of it. */
    private static double exp(double x, double rest) {
        if (x > HIGHEST_EXPONENT) {
            return Double.POSITIVE_INFINITY;
        }
        if (x < LOWEST_EXPONENT) {
            return 0.0;
        }
        double n = Math.rint(x * PER_LN2);
        double r = Math.fma(-n, LN2_REST, Math.fma(-n, LN2, x)) + rest;
        double r2 = r * r;
        double r4 = r2 * r2;
        double a = Math.fma(r, 1.0 / 6.0, 0.5);
        double b = Math.fma(r, 1.0 / 120.0, 1.0 / 24.0);
        double c = Math.fma(r, 1.0 / 5040.0, 1.0 / 720.0);
        double d = Math.fma(r, 1.0 / 362880.0, 1.0 / 40320.0);
        double e = Math.fma(r, 1.0 / 39916800.0, 1.0 / 3628800.0);
        double f = Math.fma(r, 1.0 / 6227020800.0, 1.0 / 479001600.0);
        double high = Math.fma(r4, Math.fma(r2, f, e), Math.fma(r2, d, c));
        double value = 1.0 + Math.fma(r2, Math.fma(r4, high, Math.fma(r2, b, a)), r);
        int half = (int) n / 2; // in two steps: the ends of the range have no single one
        return value * twoTo(half) * twoTo((int) n - half);
    }

    private static double twoTo(int n) {
        return Double.longBitsToDouble((long) (n + BIAS) << FRACTION_BITS);
    }
}
