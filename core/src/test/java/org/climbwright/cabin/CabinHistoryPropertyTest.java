package org.climbwright.cabin;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Label;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import org.climbwright.atmosphere.StandardAir;

@Label("Any history of a cabin")
class CabinHistoryPropertyTest {
    /** As far as sums and products of doubles are from exact ones, in seconds of such records. */
    private static final double ROUNDING_S = 1e-9;

    /** Whole hundreds of feet, so that samples often lie on a level that is asked for. */
    private static double[] altitudes(List<Integer> hundreds) {
        return hundreds.stream().mapToDouble(feet -> feet * 30.48).toArray();
    }

    private static double[] times(List<Integer> hundreds) {
        double[] times = new double[hundreds.size()];
        for (int i = 1; i < times.length; i++) {
            times[i] = times[i - 1] + 10.0 + i * 7 % 13;
        }
        return times;
    }

    private static double[] inserted(double[] values, int after, double value) {
        double[] longer = Arrays.copyOf(values, values.length + 1);
        System.arraycopy(values, after + 1, longer, after + 2, values.length - after - 1);
        longer[after + 1] = value;
        return longer;
    }

    @Property
    @Label("stays the same when a sample is put on the line between two others")
    void splitting(
            @ForAll @Size(8) List<@IntRange(min = 0, max = 450) Integer> cabin,
            @ForAll @Size(8) List<@IntRange(min = 0, max = 600) Integer> aeroplane,
            @ForAll @IntRange(min = 0, max = 6) int after,
            @ForAll @DoubleRange(min = 0.01, max = 0.99) double share,
            @ForAll @IntRange(min = -1, max = 451) int level) {
        double[] time = times(cabin);
        double[] cabinM = altitudes(cabin);
        double[] aeroplaneM = altitudes(aeroplane);
        double atS = time[after] + share * (time[after + 1] - time[after]);
        double[] time2 = inserted(time, after, atS);
        double[] cabin2 = inserted(cabinM, after, TimeAtAltitude.altitudeAt(time, cabinM, atS));
        double[] aeroplane2 =
                inserted(aeroplaneM, after, TimeAtAltitude.altitudeAt(time, aeroplaneM, atS));
        double levelM = level * 30.48 + 5.0; // between samples: at one, rounding may touch it
        assertThat(TimeAtAltitude.above(time2, cabin2, levelM))
                .isCloseTo(TimeAtAltitude.above(time, cabinM, levelM), within(ROUNDING_S));
        assertThat(TimeAtAltitude.atOrBelow(time2, cabin2, levelM))
                .isCloseTo(TimeAtAltitude.atOrBelow(time, cabinM, levelM), within(ROUNDING_S));
        assertThat(TimeAtAltitude.longestAbove(time2, cabin2, levelM))
                .isCloseTo(TimeAtAltitude.longestAbove(time, cabinM, levelM), within(ROUNDING_S));
        double first = TimeAtAltitude.firstAtOrAbove(time, cabinM, levelM);
        double first2 = TimeAtAltitude.firstAtOrAbove(time2, cabin2, levelM);
        assertThat(Double.isNaN(first2)).isEqualTo(Double.isNaN(first));
        if (!Double.isNaN(first)) {
            assertThat(first2).isCloseTo(first, within(ROUNDING_S));
        }
        DifferentialRange range = DifferentialRange.ofSi(time, aeroplaneM, cabinM);
        DifferentialRange range2 = DifferentialRange.ofSi(time2, aeroplane2, cabin2);
        assertThat(range2.largestPa()).isCloseTo(range.largestPa(), within(1e-6));
        assertThat(range2.smallestPa()).isCloseTo(range.smallestPa(), within(1e-6));
    }

    @Property
    @Label("has a time above and a time at or below that make the whole")
    void whole(
            @ForAll @Size(min = 1, max = 30) List<@IntRange(min = 0, max = 450) Integer> cabin,
            @ForAll @IntRange(min = -1, max = 451) int level) {
        double[] time = times(cabin);
        double[] cabinM = altitudes(cabin);
        double above = TimeAtAltitude.above(time, cabinM, level * 30.48);
        double below = TimeAtAltitude.atOrBelow(time, cabinM, level * 30.48);
        assertThat(above + below).isCloseTo(time[time.length - 1], within(ROUNDING_S));
        assertThat(above).isNotNegative();
        assertThat(below).isNotNegative();
    }

    @Property
    @Label("is never longer above a higher level, and reaches it no earlier")
    void monotone(
            @ForAll @Size(min = 1, max = 30) List<@IntRange(min = 0, max = 450) Integer> cabin,
            @ForAll @DoubleRange(min = -10.0, max = 14000.0) double lowerM,
            @ForAll @DoubleRange(min = 0.0, max = 5000.0) double moreM) {
        double[] time = times(cabin);
        double[] cabinM = altitudes(cabin);
        double higherM = lowerM + moreM;
        double above = TimeAtAltitude.above(time, cabinM, lowerM);
        double longest = TimeAtAltitude.longestAbove(time, cabinM, lowerM);
        assertThat(TimeAtAltitude.above(time, cabinM, higherM)).isLessThanOrEqualTo(above);
        assertThat(TimeAtAltitude.longestAbove(time, cabinM, higherM)).isLessThanOrEqualTo(longest);
        assertThat(longest).isLessThanOrEqualTo(above);
        double later = TimeAtAltitude.firstAtOrAbove(time, cabinM, higherM);
        if (!Double.isNaN(later)) {
            assertThat(TimeAtAltitude.firstAtOrAbove(time, cabinM, lowerM))
                    .isLessThanOrEqualTo(later);
        }
    }

    @Property(tries = 100)
    @Label("agrees with counting of many points in a row")
    void counting(
            @ForAll @Size(5) List<@IntRange(min = 0, max = 450) Integer> cabin,
            @ForAll @Size(5) List<@IntRange(min = 0, max = 600) Integer> aeroplane,
            @ForAll @DoubleRange(min = 0.0, max = 14000.0) double levelM) {
        double[] time = times(cabin);
        double[] cabinM = altitudes(cabin);
        double[] aeroplaneM = altitudes(aeroplane);
        double length = time[time.length - 1];
        int points = 4000;
        double step = length / points;
        int above = 0;
        int run = 0;
        int longest = 0;
        double first = Double.NaN;
        double largest = Double.NEGATIVE_INFINITY;
        double smallest = Double.POSITIVE_INFINITY;
        for (int i = 0; i < points; i++) {
            double atS = (i + 0.5) * step;
            double altitudeM = TimeAtAltitude.altitudeAt(time, cabinM, atS);
            if (altitudeM >= levelM && Double.isNaN(first)) {
                first = atS;
            }
            run = altitudeM > levelM ? run + 1 : 0;
            above += altitudeM > levelM ? 1 : 0;
            longest = Math.max(longest, run);
            double differential =
                    StandardAir.pressureFromAltitude(altitudeM)
                            - StandardAir.pressureFromAltitude(
                                    TimeAtAltitude.altitudeAt(time, aeroplaneM, atS));
            largest = Math.max(largest, differential);
            smallest = Math.min(smallest, differential);
        }
        // Each of the four pieces crosses once: as many half steps, twice over.
        double asCounted = 5.0 * step;
        assertThat(TimeAtAltitude.above(time, cabinM, levelM))
                .isCloseTo(above * step, within(asCounted));
        double counted = TimeAtAltitude.longestAbove(time, cabinM, levelM);
        // A dip shorter than a step is not seen by counting, so that it may find more.
        assertThat(counted).isLessThanOrEqualTo(longest * step + asCounted);
        if (!Double.isNaN(first)) {
            assertThat(TimeAtAltitude.firstAtOrAbove(time, cabinM, levelM))
                    .isBetween(first - 2.0 * step, first);
        }
        DifferentialRange range = DifferentialRange.ofSi(time, aeroplaneM, cabinM);
        // Points are half a step from the end of a piece at most: 18,300 m in 10 s there, 12 Pa/m.
        double between = 18300.0 / 10.0 * 12.0 * 2.0 * step;
        assertThat(range.largestPa()).isBetween(largest - 1e-6, largest + between);
        assertThat(range.smallestPa()).isBetween(smallest - between, smallest + 1e-6);
    }

    @Property
    @Label("has the largest differential of a straight piece that counting of points has")
    void turning(
            @ForAll @DoubleRange(min = 0.0, max = 12000.0) double cabinFrom,
            @ForAll @DoubleRange(min = 0.0, max = 12000.0) double cabinTo,
            @ForAll @DoubleRange(min = 0.0, max = 26000.0) double from,
            @ForAll @DoubleRange(min = 0.0, max = 26000.0) double to) {
        DifferentialRange range =
                DifferentialRange.ofSi(
                        new double[] {0.0, 1.0},
                        new double[] {from, to},
                        new double[] {cabinFrom, cabinTo});
        double largest = Double.NEGATIVE_INFINITY;
        double smallest = Double.POSITIVE_INFINITY;
        int points = 1000;
        for (int i = 0; i <= points; i++) {
            double share = i / (double) points;
            double differential =
                    StandardAir.pressureFromAltitude(cabinFrom + (cabinTo - cabinFrom) * share)
                            - StandardAir.pressureFromAltitude(from + (to - from) * share);
            largest = Math.max(largest, differential);
            smallest = Math.min(smallest, differential);
        }
        // The second derivative is at most 2 * 26,000² m² * p g²/(R T)²: 2e6 Pa; half a step away
        // from a turn that is 2e6 / 8 / 1e6 Pa.
        assertThat(range.largestPa()).isBetween(largest - 1e-9, largest + 0.25);
        assertThat(range.smallestPa()).isBetween(smallest - 0.25, smallest + 1e-9);
    }
}
