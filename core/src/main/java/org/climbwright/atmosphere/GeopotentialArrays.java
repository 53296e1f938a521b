package org.climbwright.atmosphere;

import org.climbwright.atmosphere.kernel.GeopotentialKernel;
import org.climbwright.numeric.Columns;

/**
 * Geometric and geopotential altitudes over arrays: {@link Geopotential} for many numbers at once,
 * several times faster, and equal to it to the last bit.
 *
 * <p>Each function fills the results from index {@code from} (included) to {@code to} (excluded),
 * at the indices of the arguments. Where {@link Geopotential} would refuse an argument the result
 * is NaN; the function returns how many those are. No allocation.
 *
 * <p>All throw {@link IndexOutOfBoundsException} where the span does not lie in the arrays, and
 * {@link IllegalArgumentException} where the array of the results is also that of the arguments.
 *
 * @source {@link Geopotential}
 */
public final class GeopotentialArrays {
    // Well inside the range; whatever lies beyond goes the other way.
    private static final double MIDDLE_M = 90_000.0;
    private static final double REACH_M = 99_999.0;

    private GeopotentialArrays() {}

    /**
     * Fills in the geopotential altitudes of geometric ones.
     *
     * @param geometricM geometric altitudes above mean sea level [m], -10000 to 200000
     * @param geopotentialM results: geopotential altitudes [m]
     * @param from first index
     * @param to index after the last
     * @return how many altitudes are out of range
     * @accuracy {@link Geopotential#geopotentialFromGeometric(double)}, to the last bit
     * @source see the class comment
     */
    public static int geopotentialFromGeometric(
            double[] geometricM, double[] geopotentialM, int from, int to) {
        Columns.check(geometricM, geopotentialM, from, to);
        int refused = 0;
        for (int start = from; start < to; ) {
            int end = Columns.blockEnd(start, to);
            for (int i = geopotentials(geometricM, geopotentialM, start, end);
                    i < end;
                    i = Columns.nextUnanswered(geopotentialM, i + 1, end)) {
                if (Geopotential.coversGeometric(geometricM[i])) {
                    geopotentialM[i] = Geopotential.geopotentialFromGeometric(geometricM[i]);
                } else {
                    refused++;
                }
            }
            start = end;
        }
        return refused;
    }

    /**
     * Fills in the geometric altitudes of geopotential ones.
     *
     * @param geopotentialM geopotential altitudes above mean sea level [m], -10015.8 to 193899
     * @param geometricM results: geometric altitudes [m]
     * @param from first index
     * @param to index after the last
     * @return how many altitudes are out of range
     * @accuracy {@link Geopotential#geometricFromGeopotential(double)}, to the last bit
     * @source see the class comment
     */
    public static int geometricFromGeopotential(
            double[] geopotentialM, double[] geometricM, int from, int to) {
        Columns.check(geopotentialM, geometricM, from, to);
        int refused = 0;
        for (int start = from; start < to; ) {
            int end = Columns.blockEnd(start, to);
            for (int i = geometrics(geopotentialM, geometricM, start, end);
                    i < end;
                    i = Columns.nextUnanswered(geometricM, i + 1, end)) {
                if (Geopotential.coversGeopotential(geopotentialM[i])) {
                    geometricM[i] = Geopotential.geometricFromGeopotential(geopotentialM[i]);
                } else {
                    refused++;
                }
            }
            start = end;
        }
        return refused;
    }

    // Each of these fills in what the fast forms answer, and returns the index of the first that
    // they leave.

    private static int geopotentials(double[] geometricM, double[] out, int from, int to) {
        for (int i = from; i < to; i++) {
            double altitude = geometricM[i];
            out[i] = inside(altitude, GeopotentialKernel.geopotential(altitude));
        }
        return Columns.nextUnanswered(out, from, to);
    }

    private static int geometrics(double[] geopotentialM, double[] out, int from, int to) {
        for (int i = from; i < to; i++) {
            double altitude = geopotentialM[i];
            out[i] = inside(altitude, GeopotentialKernel.geometric(altitude));
        }
        return Columns.nextUnanswered(out, from, to);
    }

    private static double inside(double altitudeM, double result) {
        return Columns.within(altitudeM, MIDDLE_M, REACH_M, result);
    }
}
