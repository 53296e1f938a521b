package org.climbwright.sounding;

/** Falling pressures, and what lies between them linear in the logarithm of pressure. */
final class PressureLevels {
    private static final double SAME = 1e-12;

    private final double[] pressurePa;
    private final double[] lnPressure;

    PressureLevels(double[] fallingPressurePa) {
        pressurePa = fallingPressurePa;
        lnPressure = new double[pressurePa.length];
        for (int i = 0; i < pressurePa.length; i++) {
            lnPressure[i] = StrictMath.log(pressurePa[i]);
        }
    }

    int size() {
        return pressurePa.length;
    }

    /** The pressure of a level [Pa]. */
    double pressure(int level) {
        return pressurePa[level];
    }

    /** The natural logarithm of the pressure of a level. */
    double ln(int level) {
        return lnPressure[level];
    }

    /** All pressures [Pa], for the caller to keep. */
    double[] pressures() {
        return pressurePa.clone();
    }

    boolean covers(double pressure) {
        int n = pressurePa.length;
        return n > 0
                && (pressure >= pressurePa[n - 1] || isAt(pressure, n - 1))
                && (pressure <= pressurePa[0] || isAt(pressure, 0));
    }

    /** A level that went through a pressure altitude comes back some ulps off. */
    private boolean isAt(double pressure, int level) {
        return Math.abs(pressure - pressurePa[level]) <= SAME * pressurePa[level];
    }

    /** The level below a covered pressure; the last but one for the lowest pressure. */
    int below(double pressure) {
        int low = 0;
        int high = pressurePa.length - 1;
        while (high - low > 1) {
            int middle = (low + high) >>> 1;
            if (pressurePa[middle] >= pressure) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return low;
    }

    /** One of the values at a covered pressure; at a level its own, whatever the next one is. */
    double interpolate(double[] values, double pressure) {
        int low = below(pressure);
        if (isAt(pressure, low)) {
            return values[low];
        }
        int high = low + 1;
        if (isAt(pressure, high)) {
            return values[high];
        }
        double share =
                (lnPressure[low] - StrictMath.log(pressure)) / (lnPressure[low] - lnPressure[high]);
        return values[low] + share * (values[high] - values[low]);
    }
}
