package org.climbwright.ledger;

import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;

/**
 * One input of a function over its range, which may follow from the inputs that stand alone: a
 * calibrated airspeed goes as far as the pressure lets it.
 *
 * @param range the input and its range in words
 * @param low the lower bound
 * @param high the upper bound
 * @param isFollowing whether the bounds need the other inputs
 * @param smallestShare of the upper bound, where a grid even in the logarithm begins; NaN for none
 * @param marks values inside at which something changes, NaN where there is none
 */
record Axis(
        String range,
        ToDoubleFunction<double[]> low,
        ToDoubleFunction<double[]> high,
        boolean isFollowing,
        double smallestShare,
        List<ToDoubleFunction<double[]>> marks) {

    /** An input between two numbers. */
    static Axis of(String name, double low, double high) {
        String range = name + " " + Figures.plain(low) + " to " + Figures.plain(high);
        return new Axis(range, in -> low, in -> high, false, Double.NaN, List.of());
    }

    /** An input between bounds that follow from the others, with the words for its range. */
    static Axis following(
            String range, ToDoubleFunction<double[]> low, ToDoubleFunction<double[]> high) {
        return new Axis(range, low, high, true, Double.NaN, List.of());
    }

    /** The same, besides on a grid even in the logarithm, from this share of the upper bound. */
    Axis logarithmicFrom(double share) {
        return new Axis(range, low, high, isFollowing, share, marks);
    }

    /** The same, with a value to look at from both sides. */
    Axis marking(double mark) {
        return marking(in -> mark);
    }

    /** The same, with such a value that follows from the other inputs. */
    Axis marking(ToDoubleFunction<double[]> mark) {
        return new Axis(
                range,
                low,
                high,
                isFollowing,
                smallestShare,
                Stream.concat(marks.stream(), Stream.of(mark)).toList());
    }

    boolean hasLogarithm() {
        return !Double.isNaN(smallestShare);
    }

    /** The value at a share of the way from bound to bound. */
    double even(double[] in, double share) {
        double from = low.applyAsDouble(in);
        double to = high.applyAsDouble(in);
        return inside(from + share * (to - from), from, to);
    }

    /** The same on the way of the logarithm; StrictMath, so that the points are always the same. */
    double logarithmic(double[] in, double share) {
        double to = high.applyAsDouble(in);
        double value = to * StrictMath.exp((1.0 - share) * StrictMath.log(smallestShare));
        return inside(value, low.applyAsDouble(in), to);
    }

    /** The bounds and marks, and one and two doubles below and above each: those in the range. */
    double[] besideMarks(double[] in) {
        double from = low.applyAsDouble(in);
        double to = high.applyAsDouble(in);
        DoubleStream inside = marks.stream().mapToDouble(mark -> mark.applyAsDouble(in));
        return DoubleStream.concat(DoubleStream.of(from, to), inside)
                .flatMap(Axis::withNeighbours)
                .filter(value -> value >= from && value <= to)
                .distinct()
                .toArray();
    }

    private static DoubleStream withNeighbours(double value) {
        double below = Math.nextDown(value);
        double above = Math.nextUp(value);
        return DoubleStream.of(Math.nextDown(below), below, value, above, Math.nextUp(above));
    }

    private static double inside(double value, double from, double to) {
        return Math.max(from, Math.min(to, value));
    }
}
