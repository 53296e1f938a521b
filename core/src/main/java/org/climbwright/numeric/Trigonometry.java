package org.climbwright.numeric;

/**
 * Sine, cosine and tangent of {@code + - *} and {@code fma} alone: the same on every Java, and
 * without the objects that some of them make on the way. Checks nothing.
 *
 * <p>The angle is taken to the nearest multiple of a right angle; what is left is at most half of
 * one, for which the series to the eighteenth power are exact but for rounding.
 *
 * @accuracy 2 ulp for the sine and cosine, 3 for the tangent, of angles up to 100 rad, against
 *     50-digit arithmetic
 * @source the power series; a right angle in two parts, from the digits of pi
 */
public final class Trigonometry {
    private static final double RIGHT_ANGLES_PER_RADIAN = 2.0 / Math.PI;
    private static final double RIGHT_ANGLE = 0.5 * Math.PI;

    /** What the nearest double leaves of a right angle. */
    private static final double RIGHT_ANGLE_REST = 6.123233995736766e-17;

    private static final double[] SINE = new double[9];
    private static final double[] COSINE = new double[10];

    static {
        double factorial = 1.0;
        for (int n = 0; n < 19; n++) {
            factorial *= Math.max(1, n); // exact up to 18!
            double sign = n / 2 % 2 == 0 ? 1.0 : -1.0;
            if (n % 2 == 0) {
                COSINE[n / 2] = sign / factorial;
            } else {
                SINE[n / 2] = sign / factorial;
            }
        }
    }

    private Trigonometry() {}

    /**
     * Returns the sine.
     *
     * @param angleRad angle [rad], up to 100 either way
     * @return its sine
     */
    public static double sin(double angleRad) {
        double turns = Math.rint(angleRad * RIGHT_ANGLES_PER_RADIAN);
        return quarter(rest(angleRad, turns), (int) turns);
    }

    /**
     * Returns the cosine.
     *
     * @param angleRad angle [rad], up to 100 either way
     * @return its cosine
     */
    public static double cos(double angleRad) {
        double turns = Math.rint(angleRad * RIGHT_ANGLES_PER_RADIAN);
        return quarter(rest(angleRad, turns), (int) turns + 1);
    }

    /**
     * Returns the tangent.
     *
     * @param angleRad angle [rad], up to 100 either way
     * @return its tangent
     */
    public static double tan(double angleRad) {
        double turns = Math.rint(angleRad * RIGHT_ANGLES_PER_RADIAN);
        double rest = rest(angleRad, turns);
        return quarter(rest, (int) turns) / quarter(rest, (int) turns + 1);
    }

    private static double rest(double angleRad, double turns) {
        return Math.fma(-turns, RIGHT_ANGLE_REST, Math.fma(-turns, RIGHT_ANGLE, angleRad));
    }

    /** Sine of a rest and as many right angles. */
    private static double quarter(double rest, int turns) {
        double square = rest * rest;
        boolean isOdd = (turns & 1) != 0;
        double value =
                isOdd
                        ? Math.fma(square, series(COSINE, square), 1.0)
                        : Math.fma(rest * square, series(SINE, square), rest);
        return (turns & 2) == 0 ? value : -value;
    }

    /** The series from its second term on, over the first power it has. */
    private static double series(double[] terms, double square) {
        double sum = terms[terms.length - 1];
        for (int i = terms.length - 2; i > 0; i--) {
            sum = Math.fma(sum, square, terms[i]);
        }
        return sum;
    }
}
