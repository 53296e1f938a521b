package org.climbwright.numeric;

import java.util.function.DoubleUnaryOperator;

/**
 * Finds where a continuous function crosses zero between two points of opposite sign.
 *
 * @source T. R. Chandrupatla, A new hybrid quadratic/bisection algorithm for finding the zero of a
 *     nonlinear function without using derivatives, Advances in Engineering Software 28 (1997)
 *     145-149 (method from memory; checked here against functions with known zeros)
 */
public final class BracketingSolver {
    private static final int MOST_STEPS = 200;

    private BracketingSolver() {}

    /**
     * Returns a zero of a function.
     *
     * @param function continuous between the two ends
     * @param from one end
     * @param to the other end; the function has the other sign there, or is zero at either end
     * @param tolerance how wide the bracket around the zero may be
     * @return a point within the tolerance of a change of sign
     * @throws IllegalArgumentException if both ends have the same sign, or one is NaN
     * @throws ArithmeticException if the function is NaN on the way, or the bracket does not close;
     *     says where, or bracket, steps and residual
     * @accuracy the tolerance, or the spacing of doubles there if that is wider
     */
    public static double solve(
            DoubleUnaryOperator function, double from, double to, double tolerance) {
        // letters as in the source: b and a bracket the zero, c is the point before
        double b = from;
        double a = to;
        double fb = function.applyAsDouble(b);
        double fa = function.applyAsDouble(a);
        if (fb == 0.0) {
            return b;
        }
        if (fa == 0.0) {
            return a;
        }
        if (!(fa < 0.0 != fb < 0.0) || Double.isNaN(fa) || Double.isNaN(fb)) {
            throw new IllegalArgumentException(
                    "no change of sign between "
                            + from
                            + " ("
                            + fb
                            + ") and "
                            + to
                            + " ("
                            + fa
                            + ")");
        }
        double c = a;
        double fc = fa;
        double t = 0.5;
        for (int step = 0; step < MOST_STEPS; step++) {
            double x = a + t * (b - a);
            double fx = function.applyAsDouble(x);
            if (Double.isNaN(fx)) {
                throw new ArithmeticException(
                        "no value at " + x + ", between " + from + " and " + to);
            }
            if (fx < 0.0 == fa < 0.0) {
                c = a;
                fc = fa;
            } else {
                c = b;
                fc = fb;
                b = a;
                fb = fa;
            }
            a = x;
            fa = fx;
            double best = Math.abs(fa) < Math.abs(fb) ? a : b;
            double width = Math.abs(b - a);
            if (fa == 0.0 || width <= Math.max(tolerance, 2.0 * Math.ulp(best))) {
                return fa == 0.0 ? a : best;
            }
            t = nextStep(a, b, c, fa, fb, fc, tolerance / width);
        }
        throw new ArithmeticException(
                "no zero found between "
                        + a
                        + " and "
                        + b
                        + " in "
                        + MOST_STEPS
                        + " steps, residual "
                        + fa);
    }

    private static double nextStep(
            double a, double b, double c, double fa, double fb, double fc, double least) {
        double xi = (a - b) / (c - b);
        double phi = (fa - fb) / (fc - fb);
        double t = 0.5;
        if (phi * phi < xi && (1.0 - phi) * (1.0 - phi) < 1.0 - xi) {
            // inverse quadratic interpolation holds here; elsewhere halve the bracket
            t =
                    fa / (fb - fa) * fc / (fb - fc)
                            + (c - a) / (b - a) * fa / (fc - fa) * fb / (fc - fb);
        }
        double edge = Math.min(0.5, 0.5 * least);
        return Math.max(edge, Math.min(1.0 - edge, t));
    }
}
