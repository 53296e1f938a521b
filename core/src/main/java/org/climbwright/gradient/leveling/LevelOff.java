package org.climbwright.gradient.leveling;

import org.climbwright.quantity.ModelRange;
import org.climbwright.quantity.OutsideModelException;

/**
 * The height and the time that a constant deceleration takes from one vertical rate to a smaller
 * one.
 *
 * <pre>{@code
 * LevelOff.heightToReduce(5.08, 0.0, 0.5)        // 25.8…, m: the lead at 1,000 ft/min
 * LevelOff.timeToReduce(5.08, 0.0, 0.5)          // 10.16, s
 * }</pre>
 *
 * <p>Rates are magnitudes: a climb and a descent level off alike. Height, rate and deceleration are
 * all in true measure, or all in the altimeter's; {@link LevelOffPlan} goes between the two.
 *
 * <p>Limits of use: for study and simulation. Nothing here knows the time that a pilot or a control
 * system takes to respond, nor a gust.
 *
 * @source kinematics of constant deceleration, exact
 */
public final class LevelOff {
    private static final double SECONDS_PER_MINUTE = 60.0;

    private static final ModelRange RATE =
            new ModelRange("vertical rate", 0.0, 500.0, "m/s", "a magnitude, of an aeroplane");

    static final ModelRange DECELERATION =
            new ModelRange(
                    "vertical deceleration",
                    0.001,
                    50.0,
                    "m/s2",
                    "less levels nothing off, more hurts");

    static final ModelRange PERCENT =
            new ModelRange("percent of the rate", 0.1, 200.0, "%", "no rule of thumb is outside");

    private LevelOff() {}

    /**
     * Returns the height in which a rate is reduced.
     *
     * @param fromMps the rate before, a magnitude [m/s], 0 to 500
     * @param toMps the rate after, a magnitude [m/s], 0 to {@code fromMps}; 0 to level off
     * @param decelerationMps2 constant deceleration [m/s2], 0.001 to 50
     * @return height [m], {@code (from^2 - to^2) / (2 a)}
     * @throws org.climbwright.quantity.OutsideModelException if a value is out of range
     * @accuracy 3 ulp of the larger square over twice the deceleration
     * @source see the class comment
     */
    public static double heightToReduce(double fromMps, double toMps, double decelerationMps2) {
        requireFalling(fromMps, toMps);
        return height(fromMps, toMps, DECELERATION.check(decelerationMps2));
    }

    /** {@link #heightToReduce} that checks nothing, for decelerations that follow from a rate. */
    static double height(double fromMps, double toMps, double decelerationMps2) {
        return (fromMps - toMps) * (fromMps + toMps) / (2.0 * decelerationMps2);
    }

    /**
     * Returns the time in which a rate is reduced.
     *
     * @param fromMps the rate before, a magnitude [m/s], 0 to 500
     * @param toMps the rate after, a magnitude [m/s], 0 to {@code fromMps}
     * @param decelerationMps2 constant deceleration [m/s2], 0.001 to 50
     * @return time [s]
     * @throws org.climbwright.quantity.OutsideModelException if a value is out of range
     * @accuracy 2 ulp
     * @source see the class comment
     */
    public static double timeToReduce(double fromMps, double toMps, double decelerationMps2) {
        requireFalling(fromMps, toMps);
        return time(fromMps, toMps, DECELERATION.check(decelerationMps2));
    }

    /** {@link #timeToReduce} that checks nothing, for decelerations that follow from a rate. */
    static double time(double fromMps, double toMps, double decelerationMps2) {
        return (fromMps - toMps) / decelerationMps2;
    }

    /**
     * Tells whether a reduction has a height and a time.
     *
     * @param fromMps the rate before [m/s]
     * @param toMps the rate after [m/s]
     * @param decelerationMps2 deceleration [m/s2]
     * @return true inside the ranges of {@link #heightToReduce}
     */
    public static boolean coversReduction(double fromMps, double toMps, double decelerationMps2) {
        return RATE.covers(fromMps)
                && toMps >= 0.0
                && toMps <= fromMps
                && DECELERATION.covers(decelerationMps2);
    }

    private static void requireFalling(double fromMps, double toMps) {
        RATE.check(fromMps);
        if (!(toMps >= 0.0 && toMps <= fromMps)) {
            throw new OutsideModelException(
                    "rate to reduce to", toMps, 0.0, fromMps, "m/s", "it is not a reduction");
        }
    }

    /**
     * Returns the lead of the rule of thumb: a share of the rate per minute as a height, such as
     * 100 ft for 10 % of 1,000 ft/min.
     *
     * @param rateMps the rate, a magnitude [m/s], 0 to 500
     * @param percent percent of the rate [%], 0.1 to 200
     * @return height [m]; 10 % is the way of 6 s
     * @throws org.climbwright.quantity.OutsideModelException if a value is out of range
     * @accuracy 2 ulp
     * @source Instrument Flying Handbook (FAA), chapter on attitude instrument flying, 10 %
     */
    public static double leadByPercent(double rateMps, double percent) {
        return RATE.check(rateMps) * (PERCENT.check(percent) / 100.0 * SECONDS_PER_MINUTE);
    }

    /**
     * Returns the deceleration that the rule of thumb implies: that which levels off in its lead.
     *
     * <p>It grows with the rate, since the time to level off, 12 s for 10 %, does not.
     *
     * @param rateMps the rate, a magnitude [m/s], 0 to 500
     * @param percent percent of the rate [%], 0.1 to 200
     * @return deceleration [m/s2], {@code rate^2 / (2 lead)}
     * @throws org.climbwright.quantity.OutsideModelException if a value is out of range
     * @accuracy 3 ulp
     * @source derived from {@link #leadByPercent} and {@link #heightToReduce}
     */
    public static double decelerationByPercent(double rateMps, double percent) {
        return RATE.check(rateMps) / (2.0 * (PERCENT.check(percent) / 100.0 * SECONDS_PER_MINUTE));
    }

    /**
     * Tells whether the rule of thumb has a lead.
     *
     * @param rateMps the rate [m/s]
     * @param percent percent of the rate [%]
     * @return true inside the ranges of {@link #leadByPercent}
     */
    public static boolean coversPercent(double rateMps, double percent) {
        return RATE.covers(rateMps) && PERCENT.covers(percent);
    }
}
