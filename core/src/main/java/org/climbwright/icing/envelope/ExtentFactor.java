package org.climbwright.icing.envelope;

import static org.climbwright.icing.envelope.Curve.Paper.LOGARITHM_OF_PLACE;

/** A factor on liquid water against horizontal extent, straight in the logarithm of the extent. */
final class ExtentFactor {
    private final Curve curve;
    private final Bounds extents;

    /** Points are pairs of an extent in metres and its factor. */
    ExtentFactor(String reason, double[][] points) {
        double[] metres = new double[points.length];
        double[] factors = new double[points.length];
        for (int i = 0; i < points.length; i++) {
            metres[i] = points[i][0];
            factors[i] = points[i][1];
        }
        curve = new Curve(LOGARITHM_OF_PLACE, metres, factors);
        extents = new Bounds("horizontal extent", curve.lowest(), curve.highest(), "m", reason);
    }

    boolean covers(double extentM) {
        return extents.covers(extentM);
    }

    double at(double extentM) {
        return curve.at(extents.check(extentM));
    }
}
