package org.climbwright.cabin;

import java.util.Locale;

/** Altitudes and rates as the trade says them: whole feet. */
final class InFeet {
    private static final double FOOT = 0.3048;

    private InFeet() {}

    static String of(double metres) {
        return whole(metres / FOOT) + " ft";
    }

    static String perMinute(double metresPerSecond) {
        return whole(metresPerSecond * 60.0 / FOOT) + " ft/min";
    }

    private static String whole(double feet) {
        return String.format(Locale.ROOT, "%,.0f", Math.rint(feet) + 0.0); // + 0.0 makes 0 of -0
    }
}
