package org.climbwright.ledger;

import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.Collectors;

/**
 * One function of the library over one part of its domain, with the same in 50 digits.
 *
 * @param function the function of doubles
 * @param part of its domain, in words; empty if all
 * @param axes its inputs in their order
 * @param covers which points of the ranges belong to the domain
 * @param exact the result in 50 digits, for the inputs as the exact numbers they are
 * @param lowest the lowest exact result of the part
 * @param highest the highest exact result of the part
 * @param measures how its error is told
 */
record Row(
        Method function,
        String part,
        List<Axis> axes,
        Predicate<double[]> covers,
        Function<double[], BigDecimal> exact,
        double lowest,
        double highest,
        List<Measure> measures) {

    /** A row for the function of that name, whose doubles are the axes. */
    static Row of(Class<?> room, String name, Function<double[], BigDecimal> exact, Axis... axes) {
        Class<?>[] doubles = new Class<?>[axes.length];
        Arrays.fill(doubles, double.class);
        try {
            return new Row(
                    room.getMethod(name, doubles),
                    "",
                    List.of(axes),
                    in -> true,
                    exact,
                    Double.NEGATIVE_INFINITY,
                    Double.POSITIVE_INFINITY,
                    List.of(Measure.ulps(4.0), Measure.relative(1e-15)));
        } catch (NoSuchMethodException e) {
            throw new IllegalArgumentException(e);
        }
    }

    /** The same for a part of the domain. */
    Row part(String words) {
        return new Row(function, words, axes, covers, exact, lowest, highest, measures);
    }

    /** The same where a predicate of the library says that it answers. */
    Row where(Predicate<double[]> covered) {
        return new Row(function, part, axes, covered, exact, lowest, highest, measures);
    }

    /** The same for exact results of a range: others belong to another part, or to none. */
    Row withResults(double low, double high) {
        return new Row(function, part, axes, covers, exact, low, high, measures);
    }

    /** The same, told in other measures. */
    Row toldIn(Measure... others) {
        return new Row(function, part, axes, covers, exact, lowest, highest, List.of(others));
    }

    String name() {
        return function.getDeclaringClass().getSimpleName() + "." + function.getName();
    }

    String ranges() {
        return axes.stream().map(Axis::range).collect(Collectors.joining("; "));
    }

    /** The entries of the ledger for this row, on every so many points. */
    List<Entry> measure(int stride) {
        int[] points = {0};
        double[] largest = new double[measures.size()];
        Arrays.fill(largest, -1.0);
        double[][] at = new double[measures.size()][];
        Points.visit(
                axes,
                stride,
                in -> {
                    double[] errors = errors(in);
                    if (errors.length > 0) {
                        points[0]++;
                    }
                    for (int i = 0; i < errors.length; i++) {
                        if (errors[i] > largest[i]) {
                            largest[i] = errors[i];
                            at[i] = in;
                        }
                    }
                });
        if (points[0] == 0) {
            throw new IllegalStateException("no point of " + name() + " " + part);
        }
        List<Entry> entries = new ArrayList<>();
        for (int i = 0; i < measures.size(); i++) {
            Measure measure = measures.get(i);
            entries.add(
                    new Entry(
                            name(),
                            part,
                            ranges(),
                            points[0],
                            measure.name(),
                            largest[i],
                            measure.bar(),
                            Figures.inputs(at[i])));
        }
        return entries;
    }

    /** The errors in all measures; none at a point that is not of the domain. */
    double[] errors(double[] in) {
        if (!covers.test(in)) {
            return new double[0];
        }
        BigDecimal wanted = exact.apply(in);
        double rounded = wanted.doubleValue();
        if (!(rounded >= lowest && rounded <= highest)) {
            return new double[0];
        }
        double distance = distance(ours(in), wanted);
        return measures.stream()
                .mapToDouble(measure -> measure.size().of(in, wanted, distance))
                .toArray();
    }

    private static double distance(double ours, BigDecimal wanted) {
        return Double.isFinite(ours)
                ? new BigDecimal(ours).subtract(wanted).abs().doubleValue()
                : Double.POSITIVE_INFINITY;
    }

    private double ours(double[] in) {
        try {
            return (double) function.invoke(null, Arrays.stream(in).boxed().toArray());
        } catch (InvocationTargetException e) {
            throw new IllegalStateException(
                    name() + " refuses " + Figures.inputs(in), e.getCause());
        } catch (IllegalAccessException e) {
            throw new IllegalStateException(e);
        }
    }
}
