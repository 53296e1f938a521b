package org.climbwright.airspeed;

import java.io.Serializable;
import java.util.Arrays;
import org.climbwright.quantity.ModelRange;

/** A curve by its points, linear between them. */
final class PositionErrorTable implements PositionError, Serializable {
    private static final long serialVersionUID = 1L;

    private static final String END = "the table of position errors ends there";

    private final double[] iasMps;
    private final double[] casMps;
    private final ModelRange indicatedRange;
    private final ModelRange calibratedRange;

    private PositionErrorTable(double[] iasMps, double[] casMps) {
        this.iasMps = iasMps;
        this.casMps = casMps;
        this.indicatedRange = range("indicated airspeed", iasMps);
        this.calibratedRange = range("calibrated airspeed", casMps);
    }

    /** The straight line through rest: two points with the same number at both ends. */
    static PositionErrorTable none() {
        double[] ends = {AirspeedConversion.CAS.lowest(), AirspeedConversion.CAS.highest()};
        return new PositionErrorTable(ends, ends);
    }

    /** Keeps both arrays: they come from nobody who could change them. */
    static PositionErrorTable of(double[] iasMps, double[] casMps) {
        if (iasMps.length < 2 || iasMps.length != casMps.length) {
            throw new IllegalArgumentException(
                    "a table of position errors needs two points or more, with as many calibrated"
                            + " as indicated airspeeds, but had "
                            + iasMps.length
                            + " indicated and "
                            + casMps.length
                            + " calibrated");
        }
        requireRising("indicated airspeeds", iasMps);
        requireRising("calibrated airspeeds", casMps);
        return new PositionErrorTable(iasMps, casMps);
    }

    private static void requireRising(String what, double[] speedsMps) {
        double before = -Double.MIN_VALUE;
        for (double speedMps : speedsMps) {
            // this way round so that NaN fails too
            if (!(speedMps > before && speedMps <= Double.MAX_VALUE)) {
                throw new IllegalArgumentException(
                        "the "
                                + what
                                + " of a table of position errors must rise from 0.0 m/s or more,"
                                + " but were "
                                + Arrays.toString(speedsMps)
                                + " m/s");
            }
            before = speedMps;
        }
    }

    private static ModelRange range(String term, double[] speedsMps) {
        return new ModelRange(term, speedsMps[0], speedsMps[speedsMps.length - 1], "m/s", END);
    }

    @Override
    public boolean coversIndicated(double indicatedMps) {
        return indicatedRange.covers(indicatedMps);
    }

    @Override
    public boolean coversCalibrated(double calibratedMps) {
        return calibratedRange.covers(calibratedMps);
    }

    @Override
    public double calibratedFromIndicated(double indicatedMps) {
        return between(indicatedRange.check(indicatedMps), iasMps, casMps);
    }

    @Override
    public double indicatedFromCalibrated(double calibratedMps) {
        return between(calibratedRange.check(calibratedMps), casMps, iasMps);
    }

    private static double between(double x, double[] from, double[] to) {
        int i = 0;
        while (i < from.length - 2 && x >= from[i + 1]) {
            i++;
        }
        // The error is what is interpolated: where there is none, the speed comes out as it went
        // in.
        double low = to[i] - from[i];
        double high = to[i + 1] - from[i + 1];
        double y = x + (low + (high - low) * ((x - from[i]) / (from[i + 1] - from[i])));
        // Rounding could end an ulp beyond the stretch, and beyond the range of the inverse.
        return Math.max(to[i], Math.min(to[i + 1], y));
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof PositionErrorTable that
                && Arrays.equals(iasMps, that.iasMps)
                && Arrays.equals(casMps, that.casMps);
    }

    @Override
    public int hashCode() {
        return 31 * Arrays.hashCode(iasMps) + Arrays.hashCode(casMps);
    }

    @Override
    public String toString() {
        return "position errors from "
                + iasMps[0]
                + " to "
                + iasMps[iasMps.length - 1]
                + " m/s indicated";
    }

    private Object readResolve() {
        return of(iasMps.clone(), casMps.clone());
    }
}
