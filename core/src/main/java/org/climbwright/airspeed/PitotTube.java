package org.climbwright.airspeed;

/**
 * The pressure in front of a pitot tube: impact pressure over static pressure, and back to Mach.
 *
 * <p>Up to Mach 1 air comes to rest without a loss, {@code q = (1 + M² / 5)^(7/2) - 1}. Beyond, a
 * shock stands before the tube, {@code q = 1.2^(7/2) 6^(5/2) M^7 / (7 M² - 1)^(5/2) - 1}
 * (Rayleigh). Both are the same at Mach 1 up to their second derivative.
 *
 * <p>Nothing is lost by cancellation in either, and neighbouring doubles stay in order: the parts
 * of a sum that are large are exact, so that hardly more than its last rounding is left.
 *
 * @source NACA Report 1135, equations 43, 44 and 100 (numbers of the equations from memory)
 */
final class PitotTube {
    /** Impact pressure over static pressure at Mach 1, 0.893. */
    static final double SONIC = subsonic(1.0);

    /**
     * 1.2^(7/2) (6/7)^(5/2) to the last digit of a double, from 60-digit arithmetic: to which (q +
     * 1) / M² falls as the Mach number grows.
     */
    private static final double SLOPE = 1.2875597357914668;

    /**
     * What it is more than 1.25, whose product with few binary digits is exact; to its own digits.
     */
    private static final double SLOPE_BEYOND_5_4 = 0.03755973579146676;

    /** A fit of our own to (q + 1) - SLOPE M²: a constant and a share of 1 / M², within 0.01. */
    private static final double START_CONSTANT = 0.4518;

    private static final double START_SHARE = 0.1536;

    private PitotTube() {}

    /** The impact ratio of a Mach number from 0. */
    static double impactRatio(double mach) {
        return mach <= 1.0 ? subsonic(mach) : supersonic(mach);
    }

    /** The Mach number of an impact ratio from 0. */
    static double mach(double impactRatio) {
        return impactRatio <= SONIC ? subsonicMach(impactRatio) : supersonicMach(impactRatio);
    }

    /** (1 + x)^(7/2) - 1 with x = M²/5, expanded so that nothing cancels when x is small. */
    private static double subsonic(double mach) {
        double x = 0.2 * mach * mach;
        double root = StrictMath.sqrt(1.0 + x);
        return x * (3.0 + x * (3.0 + x)) * root + x / (1.0 + root);
    }

    /** The Mach number with an impact ratio; expm1 and log1p, so that nothing cancels near 0. */
    private static double subsonicMach(double ratio) {
        double square = 5.0 * StrictMath.expm1(2.0 / 7.0 * StrictMath.log1p(ratio));
        return Math.min(1.0, StrictMath.sqrt(square));
    }

    /**
     * SLOPE (M² - 1) + {@link #rest}; the square of a float and 5/4 of it are exact in a double.
     */
    private static double supersonic(double mach) {
        double head = (float) mach;
        double square = head * head - 1.0;
        double tail = (mach - head) * (mach + head);
        double y = 1.0 / (6.0 + 7.0 * (square + tail));
        return 1.25 * square + (SLOPE_BEYOND_5_4 * (square + tail) + 1.25 * tail + rest(y));
    }

    /**
     * What Rayleigh's formula is more than SLOPE (M² - 1), with y = 1 / (7 M² - 1): SLOPE (1 + (1 +
     * y) ((1 + y)^(5/2) - 1) / (7 y)) - 1, in which all terms are positive.
     */
    private static double rest(double y) {
        double root = StrictMath.sqrt(1.0 + y);
        double power = (2.0 + y) * root + 1.0 / (1.0 + root);
        return (SLOPE - 1.0) + SLOPE / 7.0 * (1.0 + y) * power;
    }

    private static double supersonicMach(double ratio) {
        double p = ratio + 1.0 - START_CONSTANT;
        double start =
                StrictMath.sqrt(
                        (p + StrictMath.sqrt(p * p - 4.0 * SLOPE * START_SHARE)) / (2.0 * SLOPE));
        return Math.max(1.0, closer(closer(start, ratio), ratio));
    }

    /**
     * One step of third order towards the Mach number of a ratio, from the float next to a guess:
     * from 2e-3 to 1e-8, and from there to the last digit.
     */
    private static double closer(double guess, double ratio) {
        double mach = (float) guess;
        double square = mach * mach - 1.0;
        double y = 1.0 / (6.0 + 7.0 * square);
        double gap = (ratio - 1.25 * square) - (SLOPE_BEYOND_5_4 * square + rest(y));
        // of ln (q + 1), by Mach number: the first derivative and the second
        double first = 7.0 / mach - 35.0 * mach * y;
        double second = 35.0 * y * (14.0 * mach * mach * y - 1.0) - 7.0 / (mach * mach);
        double step = gap / (first * (ratio + 1.0 - gap));
        return mach + step * (1.0 - 0.5 * step * (first + second / first));
    }
}
