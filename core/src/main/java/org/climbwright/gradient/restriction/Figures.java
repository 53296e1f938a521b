package org.climbwright.gradient.restriction;

import java.util.Locale;
import org.climbwright.unit.UnitScale;

/** Figures in the trade's units, for reasons in words. */
final class Figures {
    private static final double NANO = 1e9;

    private Figures() {}

    /** A difference without what rounding leaves, so that a reading on its bound is on it. */
    static double withoutRounding(double si) {
        return Math.rint(si * NANO) / NANO;
    }

    static String feet(double metres) {
        return figure(UnitScale.FOOT.fromSi(metres), "ft");
    }

    static String knots(double metresPerSecond) {
        return figure(UnitScale.KNOT.fromSi(metresPerSecond), "kn");
    }

    static String nauticalMiles(double metres) {
        return figure(UnitScale.NAUTICAL_MILE.fromSi(metres), "NM");
    }

    static String percent(double gradient) {
        return String.format(Locale.ROOT, "%.2f %%", 100.0 * gradient);
    }

    private static String figure(double value, String unit) {
        if (value != 0.0 && Math.abs(value) < 0.05) {
            return "less than 0.1 " + unit;
        }
        boolean isWhole = Math.abs(value - Math.rint(value)) < 0.05;
        return String.format(Locale.ROOT, isWhole ? "%.0f " : "%.1f ", value) + unit;
    }
}
