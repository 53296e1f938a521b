package org.climbwright.examples.benchmark;

import java.lang.reflect.Method;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import org.openjdk.jmh.annotations.Benchmark;

/** Sees to it that what is timed side by side computes the same. */
final class SameAnswers {
    private static final double TOLERANCE = 1e-12;

    /** An altitude is known no better near zero than farther up. */
    private static final double ALTITUDE_SCALE_M = 10000.0;

    private SameAnswers() {}

    /**
     * Compares every way to answer a question with the first one by name, by hand where there is
     * that.
     *
     * @throws IllegalStateException if a way leaves an answer out, or two differ by more than 1e-12
     */
    static void check(Class<?> question) throws ReflectiveOperationException {
        List<Method> ways =
                Arrays.stream(question.getDeclaredMethods())
                        .filter(method -> method.isAnnotationPresent(Benchmark.class))
                        .sorted(Comparator.comparing(Method::getName))
                        .toList();
        double[][] expected = answers(question, ways.get(0));
        for (Method way : ways.subList(1, ways.size())) {
            double[][] answers = answers(question, way);
            for (int result = 0; result < expected.length; result++) {
                boolean isAltitude = Questions.line(question).altitude() == result;
                double scale = isAltitude ? ALTITUDE_SCALE_M : 0.0;
                for (int i = 0; i < expected[result].length; i++) {
                    compare(way, result, i, expected[result][i], answers[result][i], scale);
                }
            }
        }
    }

    private static void compare(
            Method way, int result, int i, double expected, double answer, double scale) {
        boolean isUnused = Double.isNaN(expected) && Double.isNaN(answer);
        double tolerance = TOLERANCE * Math.max(scale, Math.abs(expected));
        if (!isUnused && !(Math.abs(answer - expected) <= tolerance)) {
            throw new IllegalStateException(
                    String.format(
                            "%s: result %d of moment %d must be %s, but was %s",
                            way, result, i, expected, answer));
        }
    }

    /** All that one way computes: its arrays, NaN where it wrote nothing, or its sum. */
    private static double[][] answers(Class<?> question, Method way)
            throws ReflectiveOperationException {
        Batch batch = new Batch();
        for (double[] result : batch.results) {
            Arrays.fill(result, Double.NaN);
        }
        Object sum = way.invoke(question.getConstructor().newInstance(), inputs(way, batch));
        double[][] answers = sum == null ? batch.results : new double[][] {{(double) sum}};
        if (Double.isNaN(answers[0][0])) {
            throw new IllegalStateException(way + " computes nothing");
        }
        return answers;
    }

    private static Object[] inputs(Method way, Batch batch) throws ReflectiveOperationException {
        Class<?>[] types = way.getParameterTypes();
        Object[] inputs = new Object[types.length];
        for (int i = 0; i < types.length; i++) {
            boolean isShared = types[i] == Batch.class;
            inputs[i] = isShared ? batch : types[i].getConstructor().newInstance();
        }
        return inputs;
    }
}
