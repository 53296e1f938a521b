package org.climbwright.profile;

import org.climbwright.performance.EngineUse;
import org.climbwright.performance.ReducedThrust;
import org.climbwright.quantity.altitude.PressureAltitude;

/**
 * How a part of a climb is flown.
 *
 * @param law what is held
 * @param isMach whether the speed held, or to be reached, is a Mach number
 * @param held that number, or calibrated airspeed [m/s]
 * @param rateMps rate of pressure altitude that is held [m/s]; NaN for none
 * @param share part of the excess of thrust that climbs while the speed changes
 * @param use how the engines are used
 * @param reduced thrust as a part of that of the rating
 */
record Leg(
        Law law,
        boolean isMach,
        double held,
        double rateMps,
        double share,
        EngineUse use,
        ReducedThrust reduced) {
    static final Leg NONE =
            new Leg(
                    Law.SPEED,
                    false,
                    Double.NaN,
                    Double.NaN,
                    1.0,
                    EngineUse.climb(1),
                    ReducedThrust.none());

    private static final ReducedThrust THROTTLED_BACK =
            ReducedThrust.of(
                    0.01, PressureAltitude.ofMetres(80000), PressureAltitude.ofMetres(81000));

    /** What is held, and what gives. */
    enum Law {
        /** Speed and thrust are held, the rate is what comes out. */
        SPEED,
        /** From one speed to another, with a share of the excess in the climb. */
        CHANGE_OF_SPEED,
        /** Speed and rate are held, and thrust gives. */
        RATE_BY_THRUST,
        /** Rate and thrust are held, and speed gives. */
        RATE_BY_SPEED
    }

    boolean isSpeedHeld() {
        return law == Law.SPEED || law == Law.RATE_BY_THRUST;
    }

    double thrustShare(double levelM) {
        return reduced.share(levelM);
    }

    /** The same speed, flown by another law. */
    Leg by(Law other, double otherShare, double rate) {
        return new Leg(other, isMach, held, rate, otherShare, use, reduced);
    }

    /** The same with hardly any thrust. */
    Leg throttledBack() {
        return new Leg(law, isMach, held, rateMps, share, use, THROTTLED_BACK);
    }

    /** The same with another speed. */
    Leg at(boolean mach, double speed) {
        return new Leg(law, mach, speed, rateMps, share, use, reduced);
    }
}
