package org.climbwright.profile;

import static org.climbwright.profile.Stepper.AIRSPEED;
import static org.climbwright.profile.Stepper.DISTANCE;
import static org.climbwright.profile.Stepper.MASS;
import static org.climbwright.profile.Stepper.SIZE;
import static org.climbwright.profile.Stepper.TIME;

import org.jspecify.annotations.Nullable;

/** What happens at one level: it is held for a time, or held until a speed is reached. */
final class LevelFlight {
    private static final double STEP_S = 30.0;

    /** How much the airspeed may change in a step. */
    private static final double STEP_MPS = 2.5;

    private static final double LEAST_MPS2 = 1e-3;

    private final Motion motion;
    private final FlownPath path;

    private final double[] next = new double[SIZE];
    private final double[] slopes = new double[SIZE];
    private final double[] slopesThere = new double[SIZE];
    private final double[][] byspeed = new double[4][SIZE];

    LevelFlight(Motion motion, FlownPath path) {
        this.motion = motion;
        this.path = path;
    }

    /** Holds a level at the speed of a leg that the motion has begun; the state goes along. */
    void hold(Leg leg, int stretch, double levelM, double[] state, double seconds) {
        int parts = (int) Math.ceil(seconds / STEP_S);
        for (int part = 0; part < parts; part++) {
            holdFor(leg, stretch, levelM, state, seconds / parts);
        }
    }

    /** Fuel as the aeroplane gets lighter, by the same method of fourth order, in time. */
    private void holdFor(Leg leg, int stretch, double levelM, double[] state, double seconds) {
        double tas = state[AIRSPEED];
        double mass = state[MASS];
        double first = fuelFlow(stretch, levelM, mass, tas);
        double second = fuelFlow(stretch, levelM, mass - 0.5 * seconds * first, tas);
        double third = fuelFlow(stretch, levelM, mass - 0.5 * seconds * second, tas);
        double fourth = fuelFlow(stretch, levelM, mass - seconds * third, tas);
        double speed = motion.surfaceSpeedMps();
        next[TIME] = state[TIME] + seconds;
        next[DISTANCE] = state[DISTANCE] + seconds * speed;
        next[MASS] = mass - seconds / 6.0 * (first + 2.0 * (second + third) + fourth);
        next[AIRSPEED] = tas;
        byTime(slopes, speed, first, 0.0);
        byTime(slopesThere, speed, fuelFlow(stretch, levelM, next[MASS], tas), 0.0);
        goOn(leg, stretch, levelM, state);
    }

    private double fuelFlow(int stretch, double levelM, double mass, double tas) {
        motion.atLevel(stretch, levelM, mass, tas, false);
        return motion.fuelFlowKgPerS();
    }

    /** Accelerates to a true airspeed; the state goes along. Returns why it cannot, else null. */
    @Nullable String accelerate(
            Leg leg, int stretch, double levelM, double[] state, double wanted) {
        motion.begin(leg);
        double from = state[AIRSPEED];
        int parts = (int) Math.ceil((wanted - from) / STEP_MPS);
        for (int part = 1; part <= parts; part++) {
            double tas = part == parts ? wanted : from + (wanted - from) * part / parts;
            if (!accelerateTo(leg, stretch, levelM, state, tas)) {
                return "thrust does not accelerate the aeroplane in level flight to "
                        + ProfileTexts.speed(leg);
            }
        }
        return null;
    }

    /** By airspeed: what a metre per second more takes of time, distance and mass. */
    private boolean accelerateTo(Leg leg, int stretch, double levelM, double[] state, double tas) {
        double step = tas - state[AIRSPEED];
        double[] shares = {0.0, 0.5, 0.5, 1.0};
        for (int k = 0; k < 4; k++) {
            double by = shares[k] * step;
            double mass = state[MASS] + (k == 0 ? 0.0 : by * byspeed[k - 1][MASS]);
            motion.atLevel(stretch, levelM, mass, state[AIRSPEED] + by, true);
            if (!(motion.acceleration() > LEAST_MPS2)) {
                return false;
            }
            byspeed[k][TIME] = 1.0 / motion.acceleration();
            byspeed[k][DISTANCE] = motion.surfaceSpeedMps() / motion.acceleration();
            byspeed[k][MASS] = -motion.fuelFlowKgPerS() / motion.acceleration();
            if (k == 0) {
                byTimeHere(slopes);
            }
        }
        for (int i = 0; i < AIRSPEED; i++) {
            next[i] =
                    state[i]
                            + step
                                    / 6.0
                                    * (byspeed[0][i]
                                            + 2.0 * (byspeed[1][i] + byspeed[2][i])
                                            + byspeed[3][i]);
        }
        next[AIRSPEED] = tas;
        motion.atLevel(stretch, levelM, next[MASS], tas, true);
        byTimeHere(slopesThere);
        goOn(leg, stretch, levelM, state);
        return true;
    }

    private void byTimeHere(double[] found) {
        byTime(found, motion.surfaceSpeedMps(), motion.fuelFlowKgPerS(), motion.acceleration());
    }

    private static void byTime(double[] found, double speed, double fuelFlow, double acceleration) {
        found[TIME] = 1.0;
        found[DISTANCE] = speed;
        found[MASS] = -fuelFlow;
        found[AIRSPEED] = acceleration;
    }

    private void goOn(Leg leg, int stretch, double levelM, double[] state) {
        path.add(stretch, leg, levelM, next, slopes, slopesThere);
        System.arraycopy(next, 0, state, 0, SIZE);
    }
}
