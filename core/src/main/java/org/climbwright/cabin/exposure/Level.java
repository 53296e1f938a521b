package org.climbwright.cabin.exposure;

/** Compares an altitude with one that is printed, where both are in metres. */
final class Level {
    /**
     * Metres, 0.000003 ft: 18,000 ft given as 5486.4 m, or a cabin computed from its pressure, lies
     * some 1e-12 m beside the printed figure and is that altitude all the same.
     */
    static final double ROUNDING_M = 1e-6;

    private Level() {}

    static boolean isAbove(double altitudeM, double levelM) {
        return altitudeM > levelM + ROUNDING_M;
    }

    static boolean isAt(double altitudeM, double levelM) {
        return !isAbove(altitudeM, levelM) && !isAbove(levelM, altitudeM);
    }
}
