package org.climbwright.cabin;

import static org.climbwright.atmosphere.IcaoConstants.GAS_CONSTANT_J_PER_KG_K;
import static org.climbwright.atmosphere.IcaoConstants.GRAVITY_MPS2;

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

    /** Where the lapse rate of standard air changes, in the range of {@link #AEROPLANE}. */
    private static final double[] LAYER_BOUNDS_M = {11000.0, 20000.0};

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
            search.offer(timeS[i], differential(cabinAltitudeM[i], pressureAltitudeM[i]));
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

    private static double differential(double cabinAltitudeM, double pressureAltitudeM) {
        return StandardAir.pressureFromAltitude(cabinAltitudeM)
                - StandardAir.pressureFromAltitude(pressureAltitudeM);
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

        void search(Search search) {
            if (aeroplaneClimbM == 0.0 || cabinClimbM == 0.0) {
                return; // one pressure stays, the other only falls or only rises
            }
            double[] bounds = new double[2 * LAYER_BOUNDS_M.length + 2];
            int count = 0;
            bounds[count++] = 0.0;
            bounds[count++] = 1.0;
            for (double bound : LAYER_BOUNDS_M) {
                count = crossing(bounds, count, (bound - aeroplaneM) / aeroplaneClimbM);
                count = crossing(bounds, count, (bound - cabinM) / cabinClimbM);
            }
            Arrays.sort(bounds, 0, count);
            for (int i = 1; i < count; i++) {
                double middle = turnOfTheRatio(bounds[i - 1], bounds[i]);
                turn(search, bounds[i - 1], middle);
                turn(search, middle, bounds[i]);
            }
        }

        private static int crossing(double[] bounds, int count, double share) {
            if (share > 0.0 && share < 1.0) {
                bounds[count] = share;
                return count + 1;
            }
            return count;
        }

        /** The slope of the differential over -g0: zero where it turns. */
        private double slope(double share) {
            return StandardAir.densityFromAltitude(aeroplane(share)) * aeroplaneClimbM
                    - StandardAir.densityFromAltitude(cabin(share)) * cabinClimbM;
        }

        /**
         * Where the ratio of the densities turns. Between two bounds of layers it turns once at
         * most, where the climbs per scale height are the same: each scale height is linear, so
         * this is where a straight line crosses zero.
         */
        private double turnOfTheRatio(double from, double to) {
            double outside = perTemperature(aeroplane(from), aeroplane(to)) * aeroplaneClimbM;
            double inside = perTemperature(cabin(from), cabin(to)) * cabinClimbM;
            double atFrom =
                    outside * temperature(cabin(from)) - inside * temperature(aeroplane(from));
            double atTo = outside * temperature(cabin(to)) - inside * temperature(aeroplane(to));
            return atFrom < 0.0 != atTo < 0.0
                    ? from + (to - from) * atFrom / (atFrom - atTo)
                    : from;
        }

        /** Temperature over the scale height of density, in a layer: g0 / R and its lapse rate. */
        private static double perTemperature(double fromM, double toM) {
            double lapseKPerM =
                    fromM == toM ? 0.0 : (temperature(toM) - temperature(fromM)) / (toM - fromM);
            return GRAVITY_MPS2 / GAS_CONSTANT_J_PER_KG_K + lapseKPerM;
        }

        private static double temperature(double altitudeM) {
            return StandardAir.temperatureFromAltitude(altitudeM);
        }

        private void turn(Search search, double from, double to) {
            double atFrom = slope(from);
            double atTo = slope(to);
            if (atTo == 0.0) {
                offer(search, to);
            } else if (atFrom != 0.0 && atFrom < 0.0 != atTo < 0.0) {
                offer(search, BracketingSolver.solve(this::slope, from, to, NARROW));
            }
        }

        private void offer(Search search, double share) {
            search.offer(beginS + spanS * share, differential(cabin(share), aeroplane(share)));
        }

        private double aeroplane(double share) {
            return aeroplaneM + aeroplaneClimbM * share;
        }

        private double cabin(double share) {
            return cabinM + cabinClimbM * share;
        }
    }
}
