package org.climbwright.cabin;

import org.climbwright.quantity.ModelRange;

/**
 * How long a cabin is above a level, in SI doubles: the altitude runs straight from sample to
 * sample, and where it crosses a level between two of them is found, not the nearest sample.
 *
 * <p>Time is counted strictly above, over all excursions, as rules on exposure do; {@link
 * #longestAbove} is the longest one of them. For the typed way use {@link CabinHistory}.
 *
 * <p>Limits of use: between samples nothing is known. A peak that no sample saw is not counted. For
 * study; the flight manual, the operator's procedures and local regulations decide.
 *
 * @accuracy of every time: 1e-15 of the whole record for each sample, where a time began at zero;
 *     levels are compared as they are
 * @source elementary: a straight line crosses a level once
 */
public final class TimeAtAltitude {
    static final ModelRange CABIN =
            new ModelRange("cabin altitude", -5000.0, 32000.0, "m", "no cabin is kept outside it");
    private static final ModelRange TIME =
            new ModelRange("time of a sample", -4e9, 4e9, "s", "no clock of a flight needs more");

    private TimeAtAltitude() {}

    /**
     * Tells whether samples make a record.
     *
     * @param timeS times [s], each later than the one before, -4e9 to 4e9
     * @param cabinAltitudeM cabin altitudes [m], -5000 to 32000, as many
     * @return true if there is a sample or more, and the functions of this class answer
     */
    public static boolean covers(double[] timeS, double[] cabinAltitudeM) {
        if (timeS.length == 0 || timeS.length != cabinAltitudeM.length) {
            return false;
        }
        for (int i = 0; i < timeS.length; i++) {
            boolean later = i == 0 || timeS[i] > timeS[i - 1];
            if (!(later && TIME.covers(timeS[i]) && CABIN.covers(cabinAltitudeM[i]))) {
                return false;
            }
        }
        return true;
    }

    /**
     * Tells whether a level can be asked for.
     *
     * @param levelM level of cabin altitude [m]
     * @return true from -5000 to 32000 m
     */
    public static boolean coversLevel(double levelM) {
        return CABIN.covers(levelM);
    }

    /**
     * Returns the time that a cabin is above a level, all excursions together.
     *
     * @param timeS times [s], each later than the one before, -4e9 to 4e9
     * @param cabinAltitudeM cabin altitudes [m], -5000 to 32000, as many
     * @param levelM the level [m], -5000 to 32000, not counted itself
     * @return time [s], 0 or more; never more for a higher level
     * @throws IllegalArgumentException if the samples do not make a record, or the level is outside
     */
    public static double above(double[] timeS, double[] cabinAltitudeM, double levelM) {
        check(timeS, cabinAltitudeM);
        CABIN.check(levelM);
        double total = 0.0;
        for (int i = 1; i < timeS.length; i++) {
            double span = timeS[i] - timeS[i - 1];
            total += span * shareAbove(cabinAltitudeM[i - 1], cabinAltitudeM[i], levelM);
        }
        return total;
    }

    /**
     * Returns the time that a cabin is at a level or below it.
     *
     * @param timeS times [s], each later than the one before, -4e9 to 4e9
     * @param cabinAltitudeM cabin altitudes [m], -5000 to 32000, as many
     * @param levelM the level [m], -5000 to 32000, counted itself
     * @return time [s], 0 or more; with {@link #above} the whole record
     * @throws IllegalArgumentException if the samples do not make a record, or the level is outside
     */
    public static double atOrBelow(double[] timeS, double[] cabinAltitudeM, double levelM) {
        check(timeS, cabinAltitudeM);
        CABIN.check(levelM);
        double total = 0.0;
        for (int i = 1; i < timeS.length; i++) {
            double before = cabinAltitudeM[i - 1];
            double after = cabinAltitudeM[i];
            double lower = Math.min(before, after);
            double higher = Math.max(before, after);
            double share = lower > levelM ? 0.0 : 1.0;
            if (lower <= levelM && higher > levelM) {
                share = (levelM - lower) / (higher - lower);
            }
            total += (timeS[i] - timeS[i - 1]) * share;
        }
        return total;
    }

    /**
     * Returns the longest time that a cabin is above a level without coming back to it.
     *
     * @param timeS times [s], each later than the one before, -4e9 to 4e9
     * @param cabinAltitudeM cabin altitudes [m], -5000 to 32000, as many
     * @param levelM the level [m], -5000 to 32000; to touch it ends an excursion
     * @return time [s], 0 if the cabin is never above
     * @throws IllegalArgumentException if the samples do not make a record, or the level is outside
     */
    public static double longestAbove(double[] timeS, double[] cabinAltitudeM, double levelM) {
        check(timeS, cabinAltitudeM);
        CABIN.check(levelM);
        double longest = 0.0;
        double running = 0.0;
        for (int i = 1; i < timeS.length; i++) {
            double before = cabinAltitudeM[i - 1];
            double after = cabinAltitudeM[i];
            running = before > levelM ? running : 0.0;
            running += (timeS[i] - timeS[i - 1]) * shareAbove(before, after, levelM);
            longest = Math.max(longest, running);
        }
        return longest;
    }

    /**
     * Returns when a cabin is first at a level or above it.
     *
     * @param timeS times [s], each later than the one before, -4e9 to 4e9
     * @param cabinAltitudeM cabin altitudes [m], -5000 to 32000, as many
     * @param levelM the level [m], -5000 to 32000
     * @return time [s] on the clock of the samples; NaN if it never is
     * @throws IllegalArgumentException if the samples do not make a record, or the level is outside
     */
    public static double firstAtOrAbove(double[] timeS, double[] cabinAltitudeM, double levelM) {
        check(timeS, cabinAltitudeM);
        CABIN.check(levelM);
        if (cabinAltitudeM[0] >= levelM) {
            return timeS[0];
        }
        for (int i = 1; i < timeS.length; i++) {
            double before = cabinAltitudeM[i - 1];
            if (cabinAltitudeM[i] >= levelM) {
                double share = (levelM - before) / (cabinAltitudeM[i] - before);
                double crossing = timeS[i - 1] + (timeS[i] - timeS[i - 1]) * share;
                return Math.min(crossing, timeS[i]); // the sum may round beyond the sample
            }
        }
        return Double.NaN;
    }

    /**
     * Returns the cabin altitude at a time.
     *
     * @param timeS times [s], each later than the one before, -4e9 to 4e9
     * @param cabinAltitudeM cabin altitudes [m], -5000 to 32000, as many
     * @param atS the time asked for [s], from the first sample to the last
     * @return cabin altitude [m]
     * @throws IllegalArgumentException if the samples do not make a record, or the time lies
     *     outside
     */
    public static double altitudeAt(double[] timeS, double[] cabinAltitudeM, double atS) {
        check(timeS, cabinAltitudeM);
        String why = "the record begins and ends there, and nothing is carried on";
        new ModelRange("time", timeS[0], timeS[timeS.length - 1], "s", why).check(atS);
        int i = 0;
        while (timeS[i] < atS) {
            i++;
        }
        if (timeS[i] == atS) {
            return cabinAltitudeM[i];
        }
        double share = (atS - timeS[i - 1]) / (timeS[i] - timeS[i - 1]);
        return cabinAltitudeM[i - 1] + (cabinAltitudeM[i] - cabinAltitudeM[i - 1]) * share;
    }

    /**
     * Returns the share of a straight piece that lies above a level.
     *
     * <p>Checks nothing: for loops that count while they step. NaN in, NaN or 0 or 1 out.
     *
     * @param beforeM altitude at its beginning [m]
     * @param afterM altitude at its end [m]
     * @param levelM the level [m], not counted itself
     * @return the share, 0 to 1
     */
    public static double shareAbove(double beforeM, double afterM, double levelM) {
        double lower = Math.min(beforeM, afterM);
        double higher = Math.max(beforeM, afterM);
        if (higher <= levelM) {
            return 0.0;
        }
        // Not by the distances of both ends from the level: rounded like this, a higher level
        // never has more time.
        return lower >= levelM ? 1.0 : (higher - levelM) / (higher - lower);
    }

    static void check(double[] timeS, double[] cabinAltitudeM) {
        if (timeS.length == 0 || timeS.length != cabinAltitudeM.length) {
            throw new IllegalArgumentException(
                    "a record needs a sample or more, each with a time and a cabin altitude, but"
                            + " had "
                            + timeS.length
                            + " times and "
                            + cabinAltitudeM.length
                            + " altitudes");
        }
        for (int i = 0; i < timeS.length; i++) {
            TIME.check(timeS[i]);
            CABIN.check(cabinAltitudeM[i]);
            if (i > 0 && !(timeS[i] > timeS[i - 1])) {
                throw new IllegalArgumentException(
                        "times of samples must rise, but "
                                + timeS[i]
                                + " s came after "
                                + timeS[i - 1]
                                + " s at index "
                                + i);
            }
        }
    }
}
