package org.climbwright.profile;

import static org.climbwright.profile.Stepper.AIRSPEED;

import org.climbwright.profile.Leg.Law;

/** Watches what ends a leg within a step: each guard is a number that falls to 0 there. */
final class Guards {
    private static final double TOLERANCE_M = 1e-6;
    private static final int MOST_ROUNDS = 100;

    /** Less airspeed than this is not sought beyond a bound. */
    private static final double LEAST_TURN_MPS = 1e-7;

    /** What rounding makes of a bend that is touched and not passed. */
    private static final double BEND_NOISE = 1e-6;

    private static final Guard[] ALL = Guard.values();

    private final Motion motion;
    private final double leastMps;
    private final double lowMps;

    /** Those that apply to the leg, as many as stand. */
    private final Guard[] guards = new Guard[ALL.length];

    private int standing;
    private Leg leg = Leg.NONE;
    private Leg fastest = Leg.NONE;
    private Leg slowest = Leg.NONE;
    private double heldRate;
    private boolean isHigh;
    private boolean isSpeedBound;
    private double toTarget;
    private double bendSide;
    private boolean isBendPassed;

    // true airspeeds of the bounds where the step before ended
    private double fastestTas;
    private double slowestTas;

    Guards(Motion motion, double leastMps, double lowMps) {
        this.motion = motion;
        this.leastMps = leastMps;
        this.lowMps = lowMps;
    }

    /** Begins a leg where the motion is now. */
    void begin(Leg flown, Stage here, double tasMps, boolean isLow) {
        leg = flown;
        fastest = here.fastest() == null ? Leg.NONE : here.fastest();
        slowest = here.slowest() == null ? Leg.NONE : here.slowest();
        heldRate = here.rate() == null ? Double.NaN : here.rate().rateMps();
        isHigh = !isLow;
        isSpeedBound = leg.law() == Law.RATE_BY_SPEED && here.isSpeedGiving();
        toTarget =
                leg.law() == Law.CHANGE_OF_SPEED
                        ? Math.signum(motion.tasOf(leg.isMach(), leg.held()) - tasMps)
                        : 0.0;
        double bend = Math.signum(motion.thrustBend());
        // where it has just passed, rounding alone decides on which side it is
        bendSide = isBendPassed ? -bendSide : bend;
        isBendPassed = false;
        standing = 0;
        for (Guard guard : ALL) {
            if (applies(guard)) {
                guards[standing++] = guard;
            }
        }
        passOn();
    }

    /** Where a step ends the next begins. */
    void passOn() {
        if (isSpeedBound) {
            fastestTas = motion.tasOf(fastest.isMach(), fastest.held());
            slowestTas = motion.tasOf(slowest.isMach(), slowest.held());
        }
    }

    /**
     * Returns where a step should end so that no bound of the airspeed is passed unseen, there and
     * back within it: at the level where it is nearest to the bound.
     *
     * @param stepM length of the step, at the end of which the motion is now
     * @param from state where it begins
     * @param slopes changes there, per metre
     * @param slopesThere the same at its end
     * @return length of a step to there [m]; all of the step if nothing can be passed unseen
     */
    double unseenIn(double stepM, double[] from, double[] slopes, double[] slopesThere) {
        if (!isSpeedBound) {
            return stepM;
        }
        double fastestNow = motion.tasOf(fastest.isMach(), fastest.held());
        double slowestNow = motion.tasOf(slowest.isMach(), slowest.held());
        double first = slopes[AIRSPEED];
        double last = slopesThere[AIRSPEED];
        double upper = (fastestNow - fastestTas) / stepM;
        double lower = (slowestNow - slowestTas) / stepM;
        return Math.min(
                turn(stepM, fastestTas - from[AIRSPEED], upper - first, upper - last),
                turn(stepM, from[AIRSPEED] - slowestTas, first - lower, last - lower));
    }

    /** Where room that changes from less to more is least, if that may be none. */
    private static double turn(double stepM, double room, double first, double last) {
        if (!(first < 0.0 && last > 0.0)) {
            return stepM;
        }
        double way = stepM * first / (first - last);
        double lost = -0.5 * first * way;
        double won = 0.5 * last * (stepM - way);
        // as of a parabola: within twice what is lost it may be none
        return room < 2.0 * lost && Math.min(lost, won) > LEAST_TURN_MPS ? way : stepM;
    }

    void passBend() {
        isBendPassed = true;
    }

    /** Whether some guard has fallen, where the motion is now. */
    boolean fire(double[] state) {
        return !(least(state) > 0.0);
    }

    /** The smallest of them; a point that cannot be flown is one where they have fallen. */
    private double least(double[] state) {
        double least = Double.POSITIVE_INFINITY;
        for (int i = 0; i < standing; i++) {
            double value = value(guards[i], state[AIRSPEED]);
            if (Double.isNaN(value)) {
                return -1.0;
            }
            least = Math.min(least, value);
        }
        return least;
    }

    /** The guard that is nearest to its fall. */
    Guard nearest(double[] state) {
        Guard nearest = Guard.NONE;
        double least = Double.POSITIVE_INFINITY;
        for (int i = 0; i < standing; i++) {
            double value = value(guards[i], state[AIRSPEED]);
            if (value < least) {
                least = value;
                nearest = guards[i];
            }
        }
        return nearest;
    }

    private boolean applies(Guard guard) {
        boolean isFree = leg.law() == Law.SPEED || leg.law() == Law.CHANGE_OF_SPEED;
        return switch (guard) {
            case NONE -> false;
            case BEND -> bendSide != 0.0;
            case LEAST_RATE -> isFree;
            case LOW_RATE -> isFree && isHigh;
            case SPEED_REACHED -> toTarget != 0.0;
            case THRUST_SHORT, THRUST_GONE -> leg.law() == Law.RATE_BY_THRUST;
            case RATE_AGAIN -> leg.law() == Law.SPEED && !Double.isNaN(heldRate);
            case FASTEST, SLOWEST -> isSpeedBound;
        };
    }

    private double value(Guard guard, double tas) {
        return switch (guard) {
            case NONE -> Double.POSITIVE_INFINITY;
            case BEND -> bendSide * motion.thrustBend() + BEND_NOISE;
            case LEAST_RATE -> motion.fullRateMps() - leastMps;
            case LOW_RATE -> motion.rateMps() - lowMps;
            case SPEED_REACHED -> toTarget * (motion.tasOf(leg.isMach(), leg.held()) - tas);
            case THRUST_SHORT -> motion.thrustInHandN() * 1e-4;
            case THRUST_GONE -> motion.thrustN() * 1e-4;
            case RATE_AGAIN -> heldRate - motion.rateMps();
            case FASTEST -> motion.tasOf(fastest.isMach(), fastest.held()) - tas;
            case SLOWEST -> tas - motion.tasOf(slowest.isMach(), slowest.held());
        };
    }

    /**
     * Returns the first level of a step at which a guard falls; the flight has stepped there.
     *
     * <p>The method of false position, with the end that stays halved (Illinois).
     */
    double firstIn(Flight flight, double fromM, double toM) {
        double low = fromM;
        double high = toM;
        double atHigh = least(flight.stepTo(high));
        // where the step begins all stand: a guard that rounding has at 0 there counts as above
        double atLow = Math.abs(atHigh);
        boolean isFirst = true;
        double found = high;
        for (int round = 0; round < MOST_ROUNDS && high - low > TOLERANCE_M; round++) {
            double share = atLow / (atLow - atHigh);
            boolean isHalved = isFirst || !(share > 0.0 && share < 1.0);
            double middle =
                    low
                            + (high - low)
                                    * (isHalved ? 0.5 : Math.max(1e-3, Math.min(1 - 1e-3, share)));
            double value = least(flight.stepTo(middle));
            found = middle;
            if (value > 0.0) {
                atHigh = isFirst || lastWasLow ? 0.5 * atHigh : atHigh;
                low = middle;
                atLow = value;
                lastWasLow = true;
            } else {
                atLow = !isFirst && !lastWasLow ? 0.5 * atLow : atLow;
                high = middle;
                atHigh = value;
                lastWasLow = false;
            }
            isFirst = false;
        }
        if (found != high) {
            flight.stepTo(high);
        }
        return high;
    }

    private boolean lastWasLow;
}
