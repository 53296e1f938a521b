package org.climbwright.gradient.leveling;

import org.climbwright.quantity.ModelRange;

/**
 * The rate to fly now so that an aeroplane comes to its level without overshoot, within the rate
 * that a rule allows near it: for loops that ask again at every step.
 *
 * <pre>{@code
 * double rateMps = 15.0;
 * double toGoM = 1000.0;
 * int steps = 0;
 * while (toGoM > 1e-6) {
 *     rateMps = CaptureLaw.captureRate(toGoM, rateMps, 15.0, 7.62, 304.8, 0.5, 1.0 / 60.0);
 *     toGoM -= rateMps / 60.0;
 *     steps++;
 * }
 * steps / 60      // 97, s
 * }</pre>
 *
 * <p>The well-known law {@code v = sqrt(2 a h)} overshoots in a loop, since a rate that is right at
 * the beginning of a step is flown until its end. This one counts in steps. With {@code n = v / (a
 * dt)} the rate is the largest from which taking away {@code a dt} at each following step ends at
 * the level to the last step: {@code h / (a dt^2) = (m + 1) (m / 2 + f)}, where {@code m} is the
 * whole and {@code f} the broken part of {@code n}. Before the edge of a rule it is likewise the
 * largest from which every step that is faster than the rule ends at the edge or before. For {@code
 * dt} towards 0 both become the root.
 *
 * <p>When the rate is held for a step and the law is asked again, for steps from 0.001 to 1 s, up
 * and down alike:
 *
 * <ul>
 *   <li>it never passes the level, from whatever height and rate, even if steps change in length
 *       (but for rounding);
 *   <li>no part of a step within the edge is flown faster than the limit;
 *   <li>the rate changes by at most {@code a dt} a step, once {@link #canFollow} says so and while
 *       the step stays the same; arriving too fast, the law still gives a rate that keeps the first
 *       two, at once, which an aeroplane may not be able to fly;
 *   <li>the level is reached in a finite number of steps, the last of them with a rate below {@code
 *       a dt} or the wanted rate.
 * </ul>
 *
 * <p>It makes no objects, and has no memory.
 *
 * <p>Limits of use: for simulation and study. It knows no lag of an aeroplane, no gust and no error
 * of an altimeter; it is not a control law to be built into an aircraft.
 *
 * @source derived, see above
 */
public final class CaptureLaw {
    /** The law's own rates may miss what it allows by rounding. */
    private static final double ROUNDING_MPS = 1e-9;

    private static final ModelRange HEIGHT =
            new ModelRange("height to go", -1e5, 1e5, "m", "no level is further");

    private static final ModelRange RATE =
            new ModelRange("vertical rate", -500.0, 500.0, "m/s", "no aeroplane is faster");

    private static final ModelRange WANTED =
            new ModelRange("wanted rate", 0.001, 500.0, "m/s", "a magnitude, and less never comes");

    private static final ModelRange LIMIT =
            new ModelRange("rate limit", 0.001, 500.0, "m/s", "a magnitude, and less never comes");

    private static final ModelRange EDGE =
            new ModelRange("height to go of the limit", 0.0, 1e5, "m", "0 for no limit");

    private static final ModelRange DECELERATION =
            new ModelRange("vertical deceleration", 0.01, 50.0, "m/s2", "less never stops");

    private static final ModelRange STEP =
            new ModelRange("time step", 0.001, 1.0, "s", "a loop that flies takes such steps");

    private CaptureLaw() {}

    /**
     * Returns the rate to fly until the next step.
     *
     * @param heightToGoM the level less the altitude [m], -1e5 to 1e5; negative in a descent
     * @param rateMps the rate commanded last [m/s], -500 to 500, positive up; not the rate of an
     *     aeroplane that follows with a lag, which would overshoot
     * @param wantedMps the rate wanted where nothing limits it, a magnitude [m/s], 0.001 to 500
     * @param limitMps the largest rate within the edge, itself allowed, a magnitude [m/s], 0.001 to
     *     500
     * @param edgeM the height to go from which the limit is in force [m], 0 to 1e5; 0 for none
     * @param decelerationMps2 the largest change of rate [m/s2], 0.01 to 50, to brake and to gather
     *     way
     * @param stepS the time until the law is asked again [s], 0.001 to 1
     * @return rate [m/s], positive up
     * @throws org.climbwright.quantity.OutsideModelException if a value is out of range
     * @accuracy 1e-12 relative
     * @source see the class comment
     */
    public static double captureRate(
            double heightToGoM,
            double rateMps,
            double wantedMps,
            double limitMps,
            double edgeM,
            double decelerationMps2,
            double stepS) {
        RATE.check(rateMps);
        WANTED.check(wantedMps);
        double most = largestRate(heightToGoM, limitMps, edgeM, decelerationMps2, stepS);
        // at the level itself, whichever way it moves is towards the other side
        boolean isDown = heightToGoM < 0.0 || (heightToGoM == 0.0 && rateMps < 0.0);
        double direction = isDown ? -1.0 : 1.0;
        double towards = direction * rateMps;
        double change = decelerationMps2 * stepS;
        double gentle =
                Math.max(towards - change, Math.min(Math.min(wantedMps, most), towards + change));
        double next = Math.min(most, gentle);
        if (Math.abs(heightToGoM) <= edgeM) {
            next = Math.max(-limitMps, next); // moving away, the limit holds as well
        }
        return direction * next + 0.0;
    }

    /**
     * Returns the largest rate towards the level from which it can still be reached without passing
     * it, and the edge within the limit.
     *
     * @param heightToGoM the level less the altitude [m], -1e5 to 1e5
     * @param limitMps the largest rate within the edge [m/s], 0.001 to 500
     * @param edgeM the height to go from which the limit is in force [m], 0 to 1e5
     * @param decelerationMps2 the largest change of rate [m/s2], 0.01 to 50
     * @param stepS the time until the next step [s], 0.001 to 1
     * @return rate, a magnitude [m/s]
     * @throws org.climbwright.quantity.OutsideModelException if a value is out of range
     * @accuracy 1e-12 relative
     * @source see the class comment
     */
    public static double largestRate(
            double heightToGoM,
            double limitMps,
            double edgeM,
            double decelerationMps2,
            double stepS) {
        double toGo = Math.abs(HEIGHT.check(heightToGoM));
        LIMIT.check(limitMps);
        EDGE.check(edgeM);
        double change = DECELERATION.check(decelerationMps2) * STEP.check(stepS);
        double beforeLevel = beforeLevel(toGo, change, stepS);
        double beforeEdge =
                toGo > edgeM ? beforeEdge(toGo - edgeM, limitMps, change, stepS) : limitMps;
        return edgeM > 0.0 ? Math.min(beforeLevel, beforeEdge) : beforeLevel;
    }

    private static double beforeLevel(double toGo, double change, double step) {
        double inSteps = toGo / (change * step);
        double whole = Math.floor((Math.sqrt(1.0 + 8.0 * inSteps) - 1.0) / 2.0);
        double rate = change * (inSteps / (whole + 1.0) + whole / 2.0);
        return Math.min(rate, toGo / step); // in the last step the same, but for rounding
    }

    /**
     * With {@code x} steps faster than the limit, the last of them by {@code f a dt}: {@code x (v
     * dt + a dt^2 ((x - 1) / 2 + f))} must fit. More steps fit for {@code f} above 0 while {@code x
     * v dt + a dt^2 x (x - 1) / 2} is less than the way.
     */
    private static double beforeEdge(double way, double limit, double change, double step) {
        double perStep = limit / change;
        double inSteps = way / (change * step);
        double half = perStep - 0.5;
        // the root in the form that does not cancel for a limit that is many steps' change
        double root = Math.sqrt(half * half + 2.0 * inSteps);
        double steps = Math.floor(half > 0.0 ? 2.0 * inSteps / (root + half) : root - half);
        if (steps < 1.0) {
            return limit;
        }
        double broken = inSteps / steps - perStep - (steps - 1.0) / 2.0;
        return limit + change * (steps - 1.0 + Math.max(0.0, Math.min(1.0, broken)));
    }

    /**
     * Tells whether the deceleration is enough from here: whether the law takes no more of it at
     * this step and all that follow, if they are as long.
     *
     * @param heightToGoM the level less the altitude [m], -1e5 to 1e5
     * @param rateMps the rate commanded last [m/s], -500 to 500, positive up; not the rate of an
     *     aeroplane that follows with a lag, which would overshoot
     * @param limitMps the largest rate within the edge [m/s], 0.001 to 500
     * @param edgeM the height to go from which the limit is in force [m], 0 to 1e5
     * @param decelerationMps2 the largest change of rate [m/s2], 0.01 to 50
     * @param stepS the time until the next step [s], 0.001 to 1
     * @return false for an aeroplane that arrives too fast
     * @throws org.climbwright.quantity.OutsideModelException if a value is out of range
     */
    public static boolean canFollow(
            double heightToGoM,
            double rateMps,
            double limitMps,
            double edgeM,
            double decelerationMps2,
            double stepS) {
        double most = largestRate(heightToGoM, limitMps, edgeM, decelerationMps2, stepS);
        double towards = heightToGoM < 0.0 ? -RATE.check(rateMps) : RATE.check(rateMps);
        double change = decelerationMps2 * stepS;
        boolean isTooFastAway =
                Math.abs(heightToGoM) <= edgeM && towards + change < -limitMps - ROUNDING_MPS;
        return towards - change <= most + ROUNDING_MPS && !isTooFastAway;
    }

    /**
     * Tells whether the law has a rate.
     *
     * @param heightToGoM the level less the altitude [m]
     * @param rateMps the rate now [m/s]
     * @param wantedMps the rate wanted [m/s]
     * @param limitMps the largest rate within the edge [m/s]
     * @param edgeM the height to go from which the limit is in force [m]
     * @param decelerationMps2 the largest change of rate [m/s2]
     * @param stepS the time step [s]
     * @return true inside the ranges of {@link #captureRate}
     */
    public static boolean coversCapture(
            double heightToGoM,
            double rateMps,
            double wantedMps,
            double limitMps,
            double edgeM,
            double decelerationMps2,
            double stepS) {
        return HEIGHT.covers(heightToGoM)
                && RATE.covers(rateMps)
                && WANTED.covers(wantedMps)
                && LIMIT.covers(limitMps)
                && EDGE.covers(edgeM)
                && DECELERATION.covers(decelerationMps2)
                && STEP.covers(stepS);
    }
}
