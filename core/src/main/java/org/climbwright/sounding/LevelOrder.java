package org.climbwright.sounding;

import java.util.List;

/** The order of the levels of an ascent: what it must be, and how near two of them may come. */
final class LevelOrder {
    /** By how much ln p must fall; two levels nearer than this, some 8 µm, are one. */
    static final double LEAST_STEP = 1e-9;

    private LevelOrder() {}

    static boolean falls(double lnPressure, double lnPressureBelow) {
        return lnPressureBelow - lnPressure > LEAST_STEP;
    }

    /** Refuses levels that no ascent has in this order. */
    static void check(List<SoundingLevel> levels) {
        double lnPressureBelow = Double.POSITIVE_INFINITY;
        double altitudeBelowM = Double.NEGATIVE_INFINITY;
        boolean pressureEnded = false;
        for (SoundingLevel level : levels) {
            if (Double.isNaN(level.pressurePa())) {
                pressureEnded = true;
                continue;
            }
            if (pressureEnded || !falls(level.lnPressure(), lnPressureBelow)) {
                throw refusal("pressure must fall", level.pressurePa() + " Pa");
            }
            if (level.geopotentialAltitudeM() <= altitudeBelowM) {
                throw refusal("height must rise", level.geopotentialAltitudeM() + " m");
            }
            lnPressureBelow = level.lnPressure();
            if (!Double.isNaN(level.geopotentialAltitudeM())) {
                altitudeBelowM = level.geopotentialAltitudeM();
            }
        }
    }

    private static IllegalArgumentException refusal(String rule, String found) {
        return new IllegalArgumentException(
                rule
                        + " from level to level, and levels without pressure come last, but "
                        + found
                        + " does not");
    }
}
