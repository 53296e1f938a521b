package org.climbwright.numeric;

import java.util.Objects;

/**
 * What functions over arrays share: they go through their arrays block by block, each loop with one
 * array of results, which is what a just-in-time compiler makes vectors of; a range is then a
 * matter of arithmetic and not of branches.
 *
 * <p>A loop answers in the range of its fast formula, and leaves NaN outside. What is left is asked
 * once more by the function of one number, which knows the whole range.
 */
public final class Columns {
    /** So many results and arguments stay in the nearest cache. */
    private static final int BLOCK = 512;

    /** A block that is more often within one layer of air. */
    private static final int LAYER_BLOCK = 256;

    private static final int SAMPLE = 32;

    private Columns() {}

    /**
     * Refuses a span that does not lie in both arrays, and results that are the argument.
     *
     * @param argument an array of arguments
     * @param result the array of the results
     * @param from first index
     * @param to index after the last
     * @throws IndexOutOfBoundsException if the span does not lie in both
     * @throws IllegalArgumentException if both are the same array
     */
    public static void check(double[] argument, double[] result, int from, int to) {
        Objects.checkFromToIndex(from, to, argument.length);
        Objects.checkFromToIndex(from, to, result.length);
        if (argument == result) {
            throw new IllegalArgumentException(
                    "the array of the results must be another than those of the arguments");
        }
    }

    /**
     * Returns where the block that starts at an index ends.
     *
     * @param start first index of the block
     * @param to index after the last of the span
     * @return index after the last of the block
     */
    public static int blockEnd(int start, int to) {
        return start + Math.min(BLOCK, to - start);
    }

    /**
     * Returns where the block that starts at an index ends, where a block of one layer is faster
     * than one of two.
     *
     * @param start first index of the block
     * @param to index after the last of the span
     * @return index after the last of the block
     */
    public static int layerBlockEnd(int start, int to) {
        return start + Math.min(LAYER_BLOCK, to - start);
    }

    /**
     * Returns a result where a value lies within a reach of a centre, and NaN beyond.
     *
     * <p>Beyond the reach the product overflows, and 0 times infinity is no number: so a loop
     * without a branch stays one. The bound is not sharp to some ulp.
     *
     * @param value what has a range
     * @param centre the middle of the range
     * @param reach half the width of the range, 0.25 or more
     * @param result a finite number
     * @return the result, or NaN
     */
    public static double within(double value, double centre, double reach, double result) {
        if (reach >= 1.0) { // a constant where this is called, and so is what it divides
            return Math.fma(0.0, (value - centre) * (Double.MAX_VALUE / reach), result);
        }
        double away = Math.fma(4.0, value, -4.0 * centre);
        return Math.fma(0.0, away * (Double.MAX_VALUE / (4.0 * reach)), result);
    }

    /**
     * Tells whether a few values taken from all over a block lie in a range: then most others do.
     *
     * @param values where to look
     * @param start first index of the block
     * @param end index after the last of the block
     * @param lowest the lowest value of the range
     * @param highest the highest value of the range
     * @return true if all that were looked at do
     */
    public static boolean seemWithin(
            double[] values, int start, int end, double lowest, double highest) {
        for (int i = 0; i < end - start; i += SAMPLE) {
            if (!(values[start + i] >= lowest && values[start + i] <= highest)) {
                return false;
            }
        }
        return true;
    }

    /**
     * Returns the index of the next NaN.
     *
     * @param results where to look
     * @param start where to begin
     * @param end where to stop
     * @return an index; the end if there is no NaN before it
     */
    public static int nextUnanswered(double[] results, int start, int end) {
        int i = start;
        // a sum is NaN if one of its parts is, and one question takes less time than four
        while (i < end - 3) {
            double sum = (results[i] + results[i + 1]) + (results[i + 2] + results[i + 3]);
            if (Double.isNaN(sum)) {
                break;
            }
            i += 4;
        }
        while (i < end && !Double.isNaN(results[i])) {
            i++;
        }
        return i;
    }
}
