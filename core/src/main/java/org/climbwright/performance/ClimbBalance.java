package org.climbwright.performance;

import static org.climbwright.atmosphere.IcaoConstants.GRAVITY_MPS2;

/**
 * The balance of forces along a climbing path, in SI doubles.
 *
 * <p>{@code sin g (1 + f + w cos g) = (T - D) / (m g0) - a / g0}: what thrust has over drag, per
 * weight and less what a stated acceleration {@code a} takes, lifts the aeroplane, after {@code f}
 * for the true airspeed that grows with altitude (see {@link AccelerationFactor}) and {@code w = (V
 * / g0) dW/dH} for the wind that does: {@code W} is the wind along the track, positive from behind.
 * A headwind that grows upwards has {@code w} below 0, and lifts. Lift is {@code m g0 cos g n},
 * with {@code n} more than 1 in a turn, and drag depends on it, so that the angle is found by
 * iteration.
 *
 * <p>Altitude is geopotential and {@code sin g} the rate of it per true airspeed, so that energy is
 * {@code m g0 H} exactly. Wind across the track has no part in it: the change of the wind is taken
 * along the track and not along the heading, which at a drift of 10° is 1.5 % of {@code w}.
 *
 * <p>Limits of use: quasi-steady flight of a point with thrust along the path; for study and
 * simulation.
 *
 * @source equation of motion along the path in the moving air; power as {@code Ps = dH/dt + (V /
 *     g0) dV/dt} in US Naval Test Pilot School, Fixed Wing Performance, chapter 7
 */
public final class ClimbBalance {
    /** Drag changes little with the angle: a few rounds do, and these are far more. */
    private static final int MOST_ROUNDS = 60;

    private static final double SETTLED = 1e-14;

    /** What may be left at the last round, and is taken along as foretold. */
    private static final double FORETOLD = 1e-13;

    /** And how close to it a foretelling holds: the share is that of the way so far. */
    private static final double CLOSE = 1e-9;

    /** A share of what is missing that a round may leave for the next to be foretold. */
    private static final double STEADY = 0.5;

    private ClimbBalance() {}

    /**
     * Returns the sine of the angle of climb.
     *
     * @param aeroplane whose drag it is
     * @param use how its engines are used
     * @param thrustN thrust [N]
     * @param massKg mass [kg], above 0
     * @param mach Mach number, above 0
     * @param dynamicPressurePa dynamic pressure [Pa], above 0
     * @param liftFactor lift over that of straight flight, 1 / cos(bank), 1 or more
     * @param share the part of the excess of thrust that is to climb, 1 for all; the rest
     *     accelerates beside {@code accelerationFactor}
     * @param accelerationFactor {@code (V / g0) dV/dH} of the speeds held
     * @param windFactor {@code (V / g0) dW/dH}; 0 in a wind that is uniform or not known
     * @return rate of geopotential altitude over true airspeed; below 0 in a descent; NaN where the
     *     forces balance at no angle
     * @accuracy 1e-13
     * @source see the class comment
     */
    public static double sine(
            Aeroplane aeroplane,
            EngineUse use,
            double thrustN,
            double massKg,
            double mach,
            double dynamicPressurePa,
            double liftFactor,
            double share,
            double accelerationFactor,
            double windFactor) {
        return sine(
                aeroplane,
                use,
                thrustN,
                massKg,
                mach,
                dynamicPressurePa,
                liftFactor,
                share,
                accelerationFactor,
                windFactor,
                0.0);
    }

    /**
     * Returns the sine of the angle of climb, found sooner where one nearby is known: for an
     * integration, whose points are close to each other.
     *
     * @param aeroplane whose drag it is
     * @param use how its engines are used
     * @param thrustN thrust [N]
     * @param massKg mass [kg], above 0
     * @param mach Mach number, above 0
     * @param dynamicPressurePa dynamic pressure [Pa], above 0
     * @param liftFactor lift over that of straight flight, 1 or more
     * @param share the part of the excess of thrust that is to climb, 1 for all
     * @param accelerationFactor {@code (V / g0) dV/dH} of the speeds held
     * @param windFactor {@code (V / g0) dW/dH}
     * @param nearbySine where to begin: the sine at a point nearby, -1 to 1, or 0
     * @return as without one nearby
     * @accuracy 1e-13
     * @source see the class comment
     */
    public static double sine(
            Aeroplane aeroplane,
            EngineUse use,
            double thrustN,
            double massKg,
            double mach,
            double dynamicPressurePa,
            double liftFactor,
            double share,
            double accelerationFactor,
            double windFactor,
            double nearbySine) {
        double weight = massKg * GRAVITY_MPS2;
        double sine = nearbySine;
        double lastSine = Double.NaN;
        double lastFound = Double.NaN;
        for (int round = 0; round < MOST_ROUNDS; round++) {
            double cosine = Math.sqrt((1.0 - sine) * (1.0 + sine));
            double drag =
                    aeroplane.drag(weight * cosine * liftFactor, mach, dynamicPressurePa, use);
            double found =
                    share
                            * (thrustN - drag)
                            / (weight * (1.0 + accelerationFactor + windFactor * cosine));
            if (!(Math.abs(found) <= 1.0)) {
                return Double.NaN; // no sine, and a law of drag is asked for no such lift
            }
            double change = found - sine;
            if (Math.abs(change) <= SETTLED) {
                return found;
            }
            // a round leaves a share of what was missing: two of them tell which, and what is left
            double gained = found - lastFound;
            double moved = sine - lastSine;
            double left = change * gained / (moved - gained);
            lastSine = sine;
            lastFound = found;
            sine = found;
            if (Math.abs(gained) < STEADY * Math.abs(moved) && Math.abs(found + left) <= 1.0) {
                sine = found + left;
                if (Math.abs(left) <= FORETOLD && Math.abs(change) <= CLOSE) {
                    return sine;
                }
            }
        }
        return Double.NaN;
    }

    /**
     * Returns the drag in a climb.
     *
     * @param aeroplane whose drag it is
     * @param use how its engines are used
     * @param massKg mass [kg], above 0
     * @param mach Mach number, above 0
     * @param dynamicPressurePa dynamic pressure [Pa], above 0
     * @param liftFactor lift over that of straight flight, 1 or more
     * @param sine the sine of the angle of climb, -1 to 1
     * @return drag [N]
     * @accuracy that of the aeroplane's law
     * @source see the class comment
     */
    public static double drag(
            Aeroplane aeroplane,
            EngineUse use,
            double massKg,
            double mach,
            double dynamicPressurePa,
            double liftFactor,
            double sine) {
        double cosine = Math.sqrt((1.0 - sine) * (1.0 + sine));
        return aeroplane.drag(
                massKg * GRAVITY_MPS2 * cosine * liftFactor, mach, dynamicPressurePa, use);
    }

    /**
     * Returns the thrust that an angle of climb takes.
     *
     * @param dragN drag at that angle [N]
     * @param massKg mass [kg], above 0
     * @param sine the sine of the angle of climb, -1 to 1
     * @param accelerationFactor {@code (V / g0) dV/dH} of the speeds held
     * @param windFactor {@code (V / g0) dW/dH}
     * @return thrust [N]; below 0 where the aeroplane would have to be braked
     * @accuracy 4 ulp
     * @source see the class comment
     */
    public static double thrust(
            double dragN,
            double massKg,
            double sine,
            double accelerationFactor,
            double windFactor) {
        double cosine = Math.sqrt((1.0 - sine) * (1.0 + sine));
        return dragN
                + massKg * GRAVITY_MPS2 * sine * (1.0 + accelerationFactor + windFactor * cosine);
    }
}
