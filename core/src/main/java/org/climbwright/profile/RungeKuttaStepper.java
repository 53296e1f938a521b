package org.climbwright.profile;

/** The classical method of fourth order, in a working space of its own. */
final class RungeKuttaStepper implements Stepper {
    private final double[] second = new double[SIZE];
    private final double[] third = new double[SIZE];
    private final double[] fourth = new double[SIZE];

    @Override
    public void step(
            Motion motion,
            int stretch,
            double fromM,
            double toM,
            double[] from,
            double[] slopes,
            double[] to) {
        double step = toM - fromM;
        double half = 0.5 * step;
        slopesAt(motion, stretch, fromM + half, from, slopes, half, second);
        slopesAt(motion, stretch, fromM + half, from, second, half, third);
        slopesAt(motion, stretch, toM, from, third, step, fourth);
        for (int i = 0; i < SIZE; i++) {
            to[i] = from[i] + step / 6.0 * (slopes[i] + 2.0 * (second[i] + third[i]) + fourth[i]);
        }
    }

    /**
     * The difference from a method of third order: its weights are the same, but the last is given
     * to the slopes at the end, which fulfil the same conditions up to that order.
     */
    @Override
    public double airspeedError(double stepM, double[] slopesThere) {
        return stepM / 6.0 * Math.abs(fourth[AIRSPEED] - slopesThere[AIRSPEED]);
    }

    /** The changes at a level, reached from the state with the changes given. */
    private static void slopesAt(
            Motion motion,
            int stretch,
            double levelM,
            double[] from,
            double[] by,
            double step,
            double[] found) {
        motion.at(
                stretch,
                levelM,
                from[MASS] + step * by[MASS],
                from[AIRSPEED] + step * by[AIRSPEED]);
        Stepper.slopes(motion, found);
    }
}
