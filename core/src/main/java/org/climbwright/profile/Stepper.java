package org.climbwright.profile;

/** Takes the state of a climb from one level to another, between which nothing jumps. */
interface Stepper {
    /**
     * Places of the state: time, distance, mass, true airspeed, which is carried where it is free.
     */
    int TIME = 0;

    int DISTANCE = 1;
    int MASS = 2;
    int AIRSPEED = 3;
    int SIZE = 4;

    /**
     * Takes a step.
     *
     * @param motion what the forces do
     * @param stretch stretch of air of both levels
     * @param fromM level where it begins
     * @param toM level where it ends
     * @param from state at the beginning
     * @param slopes changes of the state per metre there
     * @param to filled with the state at the end
     */
    void step(
            Motion motion,
            int stretch,
            double fromM,
            double toM,
            double[] from,
            double[] slopes,
            double[] to);

    /**
     * Returns what the airspeed may be wrong by after the step just taken.
     *
     * @param stepM its length
     * @param slopesThere changes of the state per metre at its end
     * @return estimate of the error [m/s], 0 or more; 0 if the method keeps to an error of its own
     */
    double airspeedError(double stepM, double[] slopesThere);

    /** Fills in the changes per metre of level of what the motion is now. */
    static void slopes(Motion motion, double[] slopes) {
        double perMetre = 1.0 / motion.rateMps();
        slopes[TIME] = perMetre;
        slopes[DISTANCE] = motion.surfaceSpeedMps() * perMetre;
        slopes[MASS] = -motion.fuelFlowKgPerS() * perMetre;
        slopes[AIRSPEED] = motion.tasPerMetre();
    }
}
