package org.climbwright.numeric;

import java.util.function.DoubleUnaryOperator;

/**
 * Integrates a smooth function over one interval.
 *
 * @source Gauss-Legendre quadrature with five points, exact for polynomials of degree nine;
 *     Abramowitz and Stegun, Handbook of Mathematical Functions, table 25.4 (nodes and weights from
 *     their closed form)
 */
public final class Quadrature {
    private static final double NEAR = Math.sqrt(5.0 - 2.0 * Math.sqrt(10.0 / 7.0)) / 3.0;
    private static final double FAR = Math.sqrt(5.0 + 2.0 * Math.sqrt(10.0 / 7.0)) / 3.0;
    private static final double CENTRE_WEIGHT = 128.0 / 225.0;
    private static final double NEAR_WEIGHT = (322.0 + 13.0 * Math.sqrt(70.0)) / 900.0;
    private static final double FAR_WEIGHT = (322.0 - 13.0 * Math.sqrt(70.0)) / 900.0;

    private Quadrature() {}

    /**
     * Returns the integral of a function that has no bend inside the interval.
     *
     * <p>The ends themselves are never asked, so the function may jump there.
     *
     * @param function the function
     * @param from where to begin
     * @param to where to end
     * @return the integral, negative if {@code to} lies below {@code from}
     * @accuracy exact but for rounding up to polynomials of degree nine
     */
    public static double integrate(DoubleUnaryOperator function, double from, double to) {
        double middle = 0.5 * (from + to);
        double half = 0.5 * (to - from);
        double near = half * NEAR;
        double far = half * FAR;
        return half
                * (CENTRE_WEIGHT * function.applyAsDouble(middle)
                        + NEAR_WEIGHT
                                * (function.applyAsDouble(middle - near)
                                        + function.applyAsDouble(middle + near))
                        + FAR_WEIGHT
                                * (function.applyAsDouble(middle - far)
                                        + function.applyAsDouble(middle + far)));
    }
}
