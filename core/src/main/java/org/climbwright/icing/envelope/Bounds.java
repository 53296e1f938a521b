package org.climbwright.icing.envelope;

import org.climbwright.quantity.ModelRange;

/**
 * A closed range whose edges include what a change of units makes of them: 15 µm written as 15 *
 * 1e-6 is an ulp below 15e-6.
 */
record Bounds(ModelRange range) {
    /** Shares of an edge that a value may lie beyond it by rounding. */
    private static final double ROUNDING = 1e-12;

    Bounds(String term, double lowest, double highest, String unit, String reason) {
        this(new ModelRange(term, lowest, highest, unit, reason));
    }

    boolean covers(double value) {
        return range.covers(rounded(value));
    }

    double check(double value) {
        double rounded = rounded(value);
        return range.covers(rounded) ? rounded : range.check(value);
    }

    private double rounded(double value) {
        double inside = Math.max(range.lowest(), Math.min(range.highest(), value));
        return isZero(value - inside, value, inside) ? inside : value;
    }

    /** Whether a difference of two numbers is nothing but their rounding. */
    static boolean isZero(double difference, double one, double other) {
        return Math.abs(difference) <= ROUNDING * Math.max(Math.abs(one), Math.abs(other));
    }
}
