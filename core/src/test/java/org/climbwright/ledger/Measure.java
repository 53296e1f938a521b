package org.climbwright.ledger;

import java.math.BigDecimal;

/**
 * A way to say how far a result is from the exact one, with its bar.
 *
 * @param name the measure as a column of the ledger
 * @param bar what it must not exceed; NaN if it has none
 * @param size from the inputs, the exact result and the distance between ours and it
 */
record Measure(String name, double bar, Size size) {
    /** What a distance is in this measure. */
    @FunctionalInterface
    interface Size {
        double of(double[] in, BigDecimal exact, double distance);
    }

    /**
     * Results below count as this size. Only inputs next to 0 have them, squared or multiplied at
     * the end of the doubles, where no digit can be asked for.
     */
    private static final double NO_SPEED_AND_NO_PRESSURE = 1e-100;

    /** Units in the last place of the exact result. */
    static Measure ulps(double bar) {
        return new Measure(
                "ulp", bar, (in, exact, distance) -> distance / Math.ulp(magnitude(exact)));
    }

    /** Relative to the exact result. */
    static Measure relative(double bar) {
        return new Measure("relative", bar, (in, exact, distance) -> distance / magnitude(exact));
    }

    /** Metres, without a bar or with one. */
    static Measure metres(double bar) {
        return new Measure("m", bar, (in, exact, distance) -> distance);
    }

    /** Share of what is allowed, which may follow from inputs and result. */
    static Measure share(String allowedInWords, Allowed allowed) {
        return new Measure(
                "share of " + allowedInWords,
                1.0,
                (in, exact, distance) -> distance / allowed.of(in, exact));
    }

    /** What is allowed for some inputs and an exact result. */
    @FunctionalInterface
    interface Allowed {
        double of(double[] in, BigDecimal exact);
    }

    /** What is allowed for an altitude: 1e-11 m, or 2 ulp where that is more. */
    static double altitudeBar(BigDecimal exact) {
        return Math.max(1e-11, 2.0 * Math.ulp(exact.doubleValue()));
    }

    private static double magnitude(BigDecimal exact) {
        return Math.max(NO_SPEED_AND_NO_PRESSURE, Math.abs(exact.doubleValue()));
    }
}
