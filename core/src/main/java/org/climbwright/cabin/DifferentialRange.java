package org.climbwright.cabin;

import java.io.Serializable;
import java.time.Duration;
import java.util.Arrays;
import org.climbwright.atmosphere.StandardAir;
import org.climbwright.numeric.BracketingSolver;
import org.climbwright.quantity.ModelRange;
import org.climbwright.quantity.pressure.DifferentialPressure;

/**
 * The smallest and the largest differential pressure of a flight, and when they were.
 *
 * <p>Both altitudes run straight from sample to sample. The differential does not: where the cabin
 * climbs as well, it may be largest in between, and that is found too. The smallest is negative
 * where the air outside had more pressure than the cabin.
 *
 * <p>Limits of use: of a record, not of a hull. What the relief valves and the structure bear is in
 * the flight manual.
 *
 * @param smallestPa smallest differential [Pa], cabin less outside
 * @param smallestAtS when it was first [s], on the clock of the samples
 * @param largestPa largest differential [Pa]
 * @param largestAtS when it was first [s]
 */
public record DifferentialRange(
        double smallestPa, double smallestAtS, double largestPa, double largestAtS)
        implements Serializable {
    static final ModelRange AEROPLANE =
            new ModelRange(
                    "pressure altitude", -5000.0, 32000.0, "m", "no cabin is carried outside it");

    private static final double NARROW = 1e-12;

    /**
     * Makes a range.
     *
     * @param smallestPa smallest differential [Pa]
     * @param smallestAtS when it was first [s]
     * @param largestPa largest differential [Pa]
     * @param largestAtS when it was first [s]
     * @throws IllegalArgumentException if the largest is not as large as the smallest, or a time is
     *     not finite
     */
    public DifferentialRange {
        if (!(smallestPa <= largestPa
                && Double.isFinite(smallestAtS)
                && Double.isFinite(largestAtS))) {
            throw new IllegalArgumentException(
                    "a range of differentials needs finite times and bounds in order, but had "
                            + smallestPa
                            + " Pa at "
                            + smallestAtS
                            + " s and "
                            + largestPa
                            + " Pa at "
                            + largestAtS
                            + " s");
        }
    }

    /**
     * Tells whether samples make a record.
     *
     * @param timeS times [s], each later than the one before, -4e9 to 4e9
     * @param pressureAltitudeM pressure altitudes of the aeroplane [m], -5000 to 32000, as many
     * @param cabinAltitudeM cabin altitudes [m], -5000 to 32000, as many
     * @return true if {@link #ofSi} answers
     */
    public static boolean covers(
            double[] timeS, double[] pressureAltitudeM, double[] cabinAltitudeM) {
        return TimeAtAltitude.covers(timeS, cabinAltitudeM)
                && pressureAltitudeM.length == timeS.length
                && Arrays.stream(pressureAltitudeM).allMatch(AEROPLANE::covers);
    }

    /**
     * Returns the range of a record.
     *
     * @param timeS times [s], each later than the one before, -4e9 to 4e9
     * @param pressureAltitudeM pressure altitudes of the aeroplane [m], -5000 to 32000, as many
     * @param cabinAltitudeM cabin altitudes [m], -5000 to 32000, as many
     * @return the range
     * @throws IllegalArgumentException if the samples do not make a record
     * @accuracy 1e-10 Pa at the samples; between them 1e-9 Pa, and a time as uncertain as the
     *     differential is flat there
     * @source pressures of standard air; between samples the differential turns where density times
     *     rate of climb is the same inside and outside (derived)
     */
    public static DifferentialRange ofSi(
            double[] timeS, double[] pressureAltitudeM, double[] cabinAltitudeM) {
        check(timeS, pressureAltitudeM, cabinAltitudeM);
        Search search = new Search();
        for (int i = 0; i < timeS.length; i++) {
            if (i > 0) {
                new Piece(
                                timeS[i - 1],
                                timeS[i] - timeS[i - 1],
                                pressureAltitudeM[i - 1],
                                pressureAltitudeM[i] - pressureAltitudeM[i - 1],
                                cabinAltitudeM[i - 1],
                                cabinAltitudeM[i] - cabinAltitudeM[i - 1])
                        .search(search);
            }
            search.offer(
                    timeS[i], CabinPressure.differential(cabinAltitudeM[i], pressureAltitudeM[i]));
        }
        return search.range();
    }

    static void check(double[] timeS, double[] pressureAltitudeM, double[] cabinAltitudeM) {
        TimeAtAltitude.check(timeS, cabinAltitudeM);
        if (pressureAltitudeM.length != timeS.length) {
            throw new IllegalArgumentException(
                    "a record needs as many pressure altitudes as times, but had "
                            + pressureAltitudeM.length
                            + " and "
                            + timeS.length);
        }
        for (double altitudeM : pressureAltitudeM) {
            AEROPLANE.check(altitudeM);
        }
    }

    /**
     * Returns the smallest differential.
     *
     * @return {@link #smallestPa} as a value
     */
    public DifferentialPressure smallest() {
        return DifferentialPressure.ofPascals(smallestPa);
    }

    /**
     * Returns when the differential was smallest first.
     *
     * @return the time on the clock of the samples, to a nanosecond
     */
    public Duration timeOfSmallest() {
        return CabinHistory.duration(smallestAtS);
    }

    /**
     * Returns the largest differential.
     *
     * @return {@link #largestPa} as a value
     */
    public DifferentialPressure largest() {
        return DifferentialPressure.ofPascals(largestPa);
    }

    /**
     * Returns when the differential was largest first.
     *
     * @return the time on the clock of the samples, to a nanosecond
     */
    public Duration timeOfLargest() {
        return CabinHistory.duration(largestAtS);
    }

    /** What has been seen so far. */
    private static final class Search {
        private double smallestPa = Double.POSITIVE_INFINITY;
        private double smallestAtS;
        private double largestPa = Double.NEGATIVE_INFINITY;
        private double largestAtS;

        void offer(double timeS, double differentialPa) {
            if (differentialPa < smallestPa) {
                smallestPa = differentialPa;
                smallestAtS = timeS;
            }
            if (differentialPa > largestPa) {
                largestPa = differentialPa;
                largestAtS = timeS;
            }
        }

        DifferentialRange range() {
            return new DifferentialRange(smallestPa, smallestAtS, largestPa, largestAtS);
        }
    }

    /** A straight piece; shares of it run from 0 to 1, and climbs are those of the whole piece. */
    private record Piece(
            double beginS,
            double spanS,
            double aeroplaneM,
            double aeroplaneClimbM,
            double cabinM,
            double cabinClimbM) {

        /**
         * The differential turns where density times climb is the same inside and outside, and it
         * bends there as {@code K/p} inside less {@code K/p} outside, where K is g0/R and the lapse
         * rate. That ratio grows with height, from layer to layer too: every turn with the cabin
         * below the aeroplane is a largest one, every turn with it above a smallest one. The air
         * below is denser, so the faster of the two is the higher one at a turn, and only one of
         * both can be: a piece turns once at most.
         */
        void search(Search search) {
            if (slope(0.0) < 0.0 != slope(1.0) < 0.0) {
                offer(search, BracketingSolver.solve(this::slope, 0.0, 1.0, NARROW));
            }
        }

        /** The slope of the differential over g0: zero where it turns. */
        private double slope(double share) {
            return StandardAir.densityFromAltitude(aeroplane(share)) * aeroplaneClimbM
                    - StandardAir.densityFromAltitude(cabin(share)) * cabinClimbM;
        }

        private void offer(Search search, double share) {
            search.offer(
                    beginS + spanS * share,
                    CabinPressure.differential(cabin(share), aeroplane(share)));
        }

        private double aeroplane(double share) {
            return aeroplaneM + aeroplaneClimbM * share;
        }

        private double cabin(double share) {
            return cabinM + cabinClimbM * share;
        }
    }
}
