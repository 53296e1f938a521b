package org.climbwright.numeric;

import java.util.function.DoubleUnaryOperator;

/** Finds the highest point of a function that has one summit between two ends. */
public final class GoldenSection {
    private static final double GOLDEN = 0.5 * (Math.sqrt(5.0) - 1.0);

    private GoldenSection() {}

    /**
     * Returns where a function is highest.
     *
     * @param function the function, with one summit between the ends
     * @param from where to begin, above 0
     * @param to where to end, above that
     * @param relativeTolerance how wide the last section may be, as a share of where it is
     * @return the middle of the last section
     * @accuracy the tolerance, or where rounding hides the summit
     * @source golden section search, as in any textbook of numerical methods
     */
    public static double highest(
            DoubleUnaryOperator function, double from, double to, double relativeTolerance) {
        double a = from;
        double b = to;
        double c = b - GOLDEN * (b - a);
        double d = a + GOLDEN * (b - a);
        double fc = function.applyAsDouble(c);
        double fd = function.applyAsDouble(d);
        while (b - a > relativeTolerance * b) {
            if (fc >= fd) {
                b = d;
                d = c;
                fd = fc;
                c = b - GOLDEN * (b - a);
                fc = function.applyAsDouble(c);
            } else {
                a = c;
                c = d;
                fc = fd;
                d = a + GOLDEN * (b - a);
                fd = function.applyAsDouble(d);
            }
        }
        return 0.5 * (a + b);
    }
}
