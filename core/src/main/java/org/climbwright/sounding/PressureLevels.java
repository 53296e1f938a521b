package org.climbwright.sounding;

/** Falling pressures, and what lies between them linear in the logarithm of pressure. */
final class PressureLevels {
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
        return n > 0 && pressure >= pressurePa[n - 1] && pressure <= pressurePa[0];
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
        if (pressure == pressurePa[low]) {
            return values[low];
        }
        int high = low + 1;
        if (pressure == pressurePa[high]) {
            return values[high];
        }
        double share =
                (lnPressure[low] - StrictMath.log(pressure)) / (lnPressure[low] - lnPressure[high]);
        return values[low] + share * (values[high] - values[low]);
    }
}
