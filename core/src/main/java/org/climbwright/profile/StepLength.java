package org.climbwright.profile;

/** How long a step of level may be, so that the climb holds what it promises. */
final class StepLength {
    /** How much the airspeed may change in a step. */
    private static final double SPEED_STEP_MPS = 2.5;

    /** Below these rates steps are shorter: near its ceiling a climb bends most. */
    private static final double STEP_MPS = 10.0;

    private static final double LOW_MPS = 8.0;

    /** What part of itself the rate may change in a step: else it is taken again, half as long. */
    private static final double RATE_STEP = 0.06;

    /** What a free airspeed may be wrong by after a step: else so too. */
    private static final double AIRSPEED_ERROR_MPS = 3e-6;

    private static final double SHORTEST_M = 0.01;

    private final Motion motion;
    private final Stepper stepper;
    private final double stepM;

    StepLength(Motion motion, Stepper stepper, double stepM) {
        this.motion = motion;
        this.stepper = stepper;
        this.stepM = stepM;
    }

    /** In equal parts from a level to the target, each no longer than holds what is promised. */
    double levelAfter(double levelM, Leg leg, double targetM) {
        double low = motion.rateMps() / LOW_MPS;
        double longest = stepM * Math.min(1.0, Math.min(motion.rateMps() / STEP_MPS, low * low));
        if (!leg.isSpeedHeld()) {
            // a speed that is free depends on itself, and what it does here may not hold for long
            double perMetre = Math.abs(motion.tasPerMetre());
            longest = Math.min(0.5 * longest, Math.max(SHORTEST_M, SPEED_STEP_MPS / perMetre));
        }
        double parts = Math.ceil((targetM - levelM) / longest - 1e-9);
        return parts > 1.0 ? levelM + (targetM - levelM) / parts : targetM;
    }

    /**
     * Whether a step that was taken is to be taken again, half as long; the motion is where it
     * ends. Where a rate is held it shows nothing: the airspeed that gives is watched by itself.
     */
    boolean isTooLong(double rateBefore, double lengthM, double[] slopesThere) {
        double error = motion.isSpeedHeld() ? 0.0 : stepper.airspeedError(lengthM, slopesThere);
        boolean isBad = changes(rateBefore) > RATE_STEP || error > AIRSPEED_ERROR_MPS;
        return isBad && lengthM > SHORTEST_M;
    }

    /** What part of itself the rate has changed by since; nothing where there is no rate. */
    private double changes(double rateBefore) {
        double change = Math.abs(motion.rateMps() / rateBefore - 1.0);
        return Double.isNaN(change) ? 0.0 : change;
    }
}
