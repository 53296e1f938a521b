package org.climbwright.sounding;

import java.util.BitSet;

/**
 * The longest ordered part of a sequence: what to keep of values that should only rise.
 *
 * <p>One wrong value must not take all the good ones after it along, as a comparison with the
 * neighbour would. Among parts of the same length the earliest values are kept.
 */
final class Longest {
    private Longest() {}

    /**
     * The indices of the longest rising part; NaN is never part of it.
     *
     * @param leastStep by more than this it must rise from one value to the next
     */
    static BitSet rising(double[] values, double leastStep) {
        int n = values.length;
        int[] length = new int[n];
        int longest = 0;
        for (int i = n - 1; i >= 0; i--) {
            if (!Double.isNaN(values[i])) {
                length[i] = 1;
                for (int j = i + 1; j < n; j++) {
                    if (values[j] - values[i] > leastStep) {
                        length[i] = Math.max(length[i], 1 + length[j]);
                    }
                }
                longest = Math.max(longest, length[i]);
            }
        }
        BitSet kept = new BitSet(n);
        double last = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < n && longest > 0; i++) {
            if (length[i] == longest && values[i] - last > leastStep) {
                kept.set(i);
                last = values[i];
                longest--;
            }
        }
        return kept;
    }
}
