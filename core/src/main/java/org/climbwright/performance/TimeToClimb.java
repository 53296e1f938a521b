package org.climbwright.performance;

import java.time.Duration;
import org.climbwright.numeric.Powers;
import org.climbwright.quantity.ModelRange;
import org.climbwright.quantity.OutsideModelException;
import org.climbwright.quantity.altitude.PressureAltitude;
import org.climbwright.quantity.speed.PressureAltitudeRate;
import org.climbwright.unit.UnitScale;

/**
 * The time of a climb whose rate falls with altitude along a straight line, or along the lines
 * between the rows of a table.
 *
 * <p>The mean of the rates is the wrong divisor, and always gives a time that is too short: the
 * logarithmic mean is the right one. A ceiling at which nothing of the rate is left is never
 * reached.
 *
 * <pre>{@code
 * TimeToClimb.linear(5000, 6, 0, 3000) / 60                             // 12.726…, min
 * TimeToClimb.altitudeOfRate(5000, 6, TimeToClimb.PROPELLER_RATE_MPS)   // 4576.…, m
 * TimeToClimb.logarithmicMean(4, 2)                                     // 2.885…, and not 3
 * }</pre>
 *
 * <p>Limits of use: for study and first estimates. The rates are those of the schedule flown, after
 * what acceleration takes.
 *
 * @source t = (H / R0) ln(H / (H - h)): course notes on ceilings and time to climb, Aerodynamics
 *     II, example 1; J. D. Anderson, Aircraft Performance and Design, example 5.18
 */
public final class TimeToClimb {
    /**
     * The rate left at the service ceiling of a propeller aeroplane [m/s]: 100 ft/min.
     *
     * @source essentialpilot.co.za; absoluteastronomy.com; kls2.com 1997.2557, on service ceilings
     */
    public static final double PROPELLER_RATE_MPS = UnitScale.FOOT.toSi(100.0) / 60.0;

    /**
     * The rate left at the service ceiling of a jet aeroplane [m/s]: 500 ft/min.
     *
     * @source essentialpilot.co.za; absoluteastronomy.com; kls2.com 1997.2557, on service ceilings
     */
    public static final double JET_RATE_MPS = UnitScale.FOOT.toSi(500.0) / 60.0;

    /**
     * The rate left at the service ceiling with an engine out [m/s]: 50 ft/min.
     *
     * @source essentialpilot.co.za; absoluteastronomy.com; kls2.com 1997.2557, on service ceilings
     */
    public static final double ENGINE_OUT_RATE_MPS = UnitScale.FOOT.toSi(50.0) / 60.0;

    private static final ModelRange CEILING =
            new ModelRange("absolute ceiling", 1.0, 1e5, "m", "above it there is nothing to climb");
    private static final ModelRange RATE =
            new ModelRange("rate of climb", 1e-6, 1000.0, "m/s", "at no rate nothing is reached");
    private static final ModelRange ALTITUDE =
            new ModelRange("altitude", -1e5, 1e5, "m", "aeroplanes climb no higher");

    private static final String NEVER =
            "the absolute ceiling is never reached: the rate falls with what is left to climb";

    private TimeToClimb() {}

    /**
     * Tells whether a climb with a linear rate has a time.
     *
     * @param absoluteCeilingM altitude at which no rate is left [m]
     * @param rateAtZeroMps rate at altitude 0 [m/s]
     * @param fromM where it begins [m]
     * @param toM where it ends [m]
     * @return true if {@link #linear(double, double, double, double)} answers
     */
    public static boolean coversLinear(
            double absoluteCeilingM, double rateAtZeroMps, double fromM, double toM) {
        return CEILING.covers(absoluteCeilingM)
                && RATE.covers(rateAtZeroMps)
                && ALTITUDE.covers(fromM)
                && toM >= fromM
                && toM < absoluteCeilingM;
    }

    /**
     * Returns the time of a climb whose rate falls linearly with altitude: {@code (H / R0) ln((H -
     * h1) / (H - h2))}.
     *
     * @param absoluteCeilingM altitude at which no rate is left, H [m], 1 to 100,000
     * @param rateAtZeroMps rate at altitude 0, R0 [m/s], 1e-6 to 1000
     * @param fromM where it begins, h1 [m], -100,000 or more
     * @param toM where it ends, h2 [m], no less, and below the absolute ceiling
     * @return time [s]
     * @throws OutsideModelException if a value is out of range; so is the absolute ceiling itself
     * @accuracy 6 ulp for the differences to the ceiling
     * @source see the class comment
     */
    public static double linear(
            double absoluteCeilingM, double rateAtZeroMps, double fromM, double toM) {
        CEILING.check(absoluteCeilingM);
        RATE.check(rateAtZeroMps);
        ALTITUDE.check(fromM);
        if (!(toM >= fromM && toM < absoluteCeilingM)) {
            throw new OutsideModelException(
                    "altitude to climb to",
                    toM,
                    fromM,
                    Math.max(fromM, Math.nextDown(absoluteCeilingM)),
                    "m",
                    NEVER);
        }
        return absoluteCeilingM
                / rateAtZeroMps
                * Powers.logOfRatio(absoluteCeilingM - fromM, absoluteCeilingM - toM);
    }

    /**
     * Returns the time of a climb from sea level whose rate falls linearly with pressure altitude.
     *
     * @param absoluteCeiling altitude at which no rate is left
     * @param rateAtSeaLevel rate at pressure altitude 0
     * @param to where it ends, below the absolute ceiling
     * @return see {@link #linear(double, double, double, double)}, to the nanosecond
     * @throws OutsideModelException if a value is out of range; so is the absolute ceiling itself
     */
    public static Duration linear(
            PressureAltitude absoluteCeiling,
            PressureAltitudeRate rateAtSeaLevel,
            PressureAltitude to) {
        double seconds =
                linear(
                        absoluteCeiling.inMetres(),
                        rateAtSeaLevel.inMetresPerSecond(),
                        0.0,
                        to.inMetres());
        return Duration.ofNanos(Math.round(seconds * 1e9));
    }

    /**
     * Tells whether a rate is left somewhere.
     *
     * @param absoluteCeilingM altitude at which no rate is left [m]
     * @param rateAtZeroMps rate at altitude 0 [m/s]
     * @param rateLeftMps the rate asked for [m/s]
     * @return true if {@link #altitudeOfRate} answers
     */
    public static boolean coversRate(
            double absoluteCeilingM, double rateAtZeroMps, double rateLeftMps) {
        return CEILING.covers(absoluteCeilingM)
                && RATE.covers(rateAtZeroMps)
                && rateLeftMps >= 0.0
                && rateLeftMps <= rateAtZeroMps;
    }

    /**
     * Returns where a rate is left that falls linearly with altitude: a service ceiling, {@code H
     * (1 - r / R0)}.
     *
     * @param absoluteCeilingM altitude at which no rate is left, H [m], 1 to 100,000
     * @param rateAtZeroMps rate at altitude 0, R0 [m/s], 1e-6 to 1000
     * @param rateLeftMps the rate asked for, r [m/s], 0 to R0
     * @return altitude [m]
     * @throws OutsideModelException if a value is out of range
     * @accuracy 3 ulp of the absolute ceiling
     * @source see the class comment
     */
    public static double altitudeOfRate(
            double absoluteCeilingM, double rateAtZeroMps, double rateLeftMps) {
        CEILING.check(absoluteCeilingM);
        RATE.check(rateAtZeroMps);
        if (!(rateLeftMps >= 0.0 && rateLeftMps <= rateAtZeroMps)) {
            throw new OutsideModelException(
                    "rate left", rateLeftMps, 0.0, rateAtZeroMps, "m/s", "there is more nowhere");
        }
        return absoluteCeilingM * (1.0 - rateLeftMps / rateAtZeroMps);
    }

    /**
     * Tells whether two rates have a logarithmic mean.
     *
     * @param lowerMps a rate [m/s]
     * @param upperMps another [m/s]
     * @return true if {@link #logarithmicMean} answers
     */
    public static boolean coversRates(double lowerMps, double upperMps) {
        return RATE.covers(lowerMps) && RATE.covers(upperMps);
    }

    /**
     * Returns the logarithmic mean of two rates, {@code (r1 - r2) / ln(r1 / r2)}: what divides the
     * altitude between them to give the time.
     *
     * @param lowerMps rate where it begins [m/s], 1e-6 to 1000
     * @param upperMps rate where it ends [m/s], 1e-6 to 1000
     * @return rate [m/s], never above the mean of the two
     * @throws OutsideModelException if a rate is out of range
     * @accuracy 4 ulp
     * @source integral of dh / r for a rate that is linear in h
     */
    public static double logarithmicMean(double lowerMps, double upperMps) {
        RATE.check(lowerMps);
        RATE.check(upperMps);
        return lowerMps == upperMps
                ? lowerMps
                : (lowerMps - upperMps) / Powers.logOfRatio(lowerMps, upperMps);
    }

    /**
     * Tells whether a table of rates has a time.
     *
     * @param altitudesM altitudes, rising [m]
     * @param ratesMps the rate at each [m/s]
     * @param fromM where the climb begins [m]
     * @param toM where it ends [m]
     * @return true if {@link #tabulated} answers
     */
    public static boolean coversTable(
            double[] altitudesM, double[] ratesMps, double fromM, double toM) {
        if (altitudesM.length < 2 || altitudesM.length != ratesMps.length) {
            return false;
        }
        for (int i = 0; i < ratesMps.length; i++) {
            if (!RATE.covers(ratesMps[i]) || !isNext(altitudesM, i)) {
                return false;
            }
        }
        return fromM >= altitudesM[0] && toM >= fromM && toM <= altitudesM[altitudesM.length - 1];
    }

    /**
     * Returns the time of a climb by a table of rates, linear between its rows.
     *
     * @param altitudesM altitudes, rising, two or more [m]
     * @param ratesMps the rate at each [m/s], 1e-6 to 1000
     * @param fromM where the climb begins [m], in the table
     * @param toM where it ends [m], no less, in the table
     * @return time [s]
     * @throws IllegalArgumentException if the table has no two rows, or not as many rates as
     *     altitudes, or its altitudes do not rise
     * @throws OutsideModelException if a rate is out of range, as at a ceiling, or the climb leaves
     *     the table
     * @accuracy 1e-14 for the lines between the rows
     * @source see {@link #logarithmicMean}
     */
    public static double tabulated(
            double[] altitudesM, double[] ratesMps, double fromM, double toM) {
        checkTable(altitudesM, ratesMps);
        double top = altitudesM[altitudesM.length - 1];
        if (!(fromM >= altitudesM[0] && fromM <= top)) {
            throw new OutsideModelException(
                    "altitude to climb from", fromM, altitudesM[0], top, "m", "the table ends");
        }
        if (!(toM >= fromM && toM <= top)) {
            throw new OutsideModelException(
                    "altitude to climb to", toM, fromM, top, "m", "the table ends");
        }
        double seconds = 0.0;
        for (int i = 1; i < altitudesM.length; i++) {
            double low = Math.max(fromM, altitudesM[i - 1]);
            double high = Math.min(toM, altitudesM[i]);
            if (high > low) {
                seconds +=
                        (high - low)
                                / logarithmicMean(
                                        rate(altitudesM, ratesMps, i, low),
                                        rate(altitudesM, ratesMps, i, high));
            }
        }
        return seconds;
    }

    /** Between two rows; at a row exactly its rate. */
    private static double rate(
            double[] altitudesM, double[] ratesMps, int upper, double altitudeM) {
        double low = altitudesM[upper - 1];
        if (altitudeM == low) {
            return ratesMps[upper - 1];
        }
        double slope = (ratesMps[upper] - ratesMps[upper - 1]) / (altitudesM[upper] - low);
        return ratesMps[upper] + slope * (altitudeM - altitudesM[upper]);
    }

    private static void checkTable(double[] altitudesM, double[] ratesMps) {
        if (altitudesM.length < 2 || altitudesM.length != ratesMps.length) {
            throw new IllegalArgumentException(
                    "a table needs two rows or more, with a rate at each altitude, but had "
                            + altitudesM.length
                            + " altitudes and "
                            + ratesMps.length
                            + " rates");
        }
        for (int i = 0; i < altitudesM.length; i++) {
            RATE.check(ratesMps[i]);
            if (!isNext(altitudesM, i)) {
                throw new IllegalArgumentException(
                        "the altitudes of a table must rise, but row "
                                + (i + 1)
                                + " had "
                                + altitudesM[i]
                                + " m");
            }
        }
    }

    private static boolean isNext(double[] altitudesM, int i) {
        return ALTITUDE.covers(altitudesM[i]) && (i == 0 || altitudesM[i] > altitudesM[i - 1]);
    }
}
