package org.climbwright.airspeed;

import static org.climbwright.airspeed.PitotPolynomials.*;

/**
 * The pressure in front of a pitot tube: impact pressure over static pressure, and back to the
 * square of the Mach number. Of {@code + - * /}, {@code sqrt} and {@code fma} alone: the same to
 * the last bit on every Java.
 *
 * <p>Up to Mach 1 air comes to rest without a loss, {@code q = (1 + M² / 5)^(7/2) - 1}. Beyond, a
 * shock stands before the tube, {@code q = 1.2^(7/2) 6^(5/2) M^7 / (7 M² - 1)^(5/2) - 1}
 * (Rayleigh). Both are the same at Mach 1 up to their second derivative.
 *
 * <p>Up to Mach 1 each way is the argument and a part of it, which a polynomial of it tells.
 * Beyond, it is a straight line and a small rest: of {@code 1 / (7 M² - 1)} one way; the other way
 * of {@code sqrt(BRANCH - 1 / (q + 1))}, a variable in which the formula and its branch below Mach
 * 1 are one smooth curve. Neighbouring doubles stay in order, since whatever is large is rounded
 * once.
 *
 * <p>Checks nothing: whoever asks keeps squares from 0 to 25.
 *
 * @source NACA Report 1135, equations 43, 44 and 100 (numbers of the equations from memory)
 */
final class PitotTube {
    /** Impact pressure over static pressure at Mach 1, 0.893. */
    static final double SONIC = subsonic(1.0);

    private PitotTube() {}

    /** The impact ratio of the square of a Mach number from 0. */
    static double impactRatio(double machSquare) {
        return machSquare <= 1.0 ? subsonic(machSquare) : supersonic(machSquare);
    }

    /** The square of the Mach number of an impact ratio from 0. */
    static double machSquare(double impactRatio) {
        return impactRatio <= SONIC ? subsonicSquare(impactRatio) : supersonicSquare(impactRatio);
    }

    /** {@link #impactRatio} up to Mach 1. */
    static double subsonic(double machSquare) {
        double excess = subsonicRatioExcess(machSquare - SUBSONIC_RATIO_EXCESS_CENTRE);
        return Math.fma(machSquare, excess, machSquare);
    }

    /** {@link #machSquare} up to Mach 1. */
    static double subsonicSquare(double impactRatio) {
        double square = squareBelowMachOne(impactRatio);
        return square > 1.0 ? 1.0 : square; // foreseen by the processor, which a min is not
    }

    /** {@link #subsonicSquare}, but for the last ulp at Mach 1. */
    static double squareBelowMachOne(double impactRatio) {
        double excess = subsonicSquareExcess(impactRatio - SUBSONIC_SQUARE_EXCESS_CENTRE);
        return Math.fma(impactRatio, excess, impactRatio);
    }

    /** {@link #impactRatio} from Mach 1. */
    static double supersonic(double machSquare) {
        double rest = supersonicRatioRest(1.0 / Math.fma(7.0, machSquare, -1.0));
        return Math.max(SONIC, Math.fma(SLOPE, machSquare, rest));
    }

    /** {@link #machSquare} from Mach 1. */
    static double supersonicSquare(double impactRatio) {
        double root = Math.sqrt(BRANCH - 1.0 / (impactRatio + 1.0));
        double rest = supersonicSquareRest(root - SUPERSONIC_SQUARE_REST_CENTRE);
        return Math.max(
                1.0, Math.fma(INVERSE_SLOPE, impactRatio, SUPERSONIC_SQUARE_REST_HEAD + rest));
    }
}
