package org.climbwright.sounding;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Label;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.Tuple;

@Label("What is kept of values that should only rise")
class LongestPropertyTest {
    @Property(tries = 500)
    @Label("is the longest rising part; of several the one that begins earliest")
    void isTheLongest(@ForAll("fewValues") List<Double> values, @ForAll("steps") double step) {
        double[] array = values.stream().mapToDouble(Double::doubleValue).toArray();
        List<Integer> best = List.of();
        for (int subset = 0; subset < 1 << array.length; subset++) {
            List<Integer> part = indices(subset, array.length);
            if (rises(array, part, step) && isBetter(part, best)) {
                best = part;
            }
        }
        assertThat(Longest.rising(array, step).stream().boxed()).containsExactlyElementsOf(best);
    }

    private static List<Integer> indices(int subset, int n) {
        List<Integer> indices = new ArrayList<>();
        for (int i = 0; i < n; i++) {
            if ((subset >> i & 1) == 1) {
                indices.add(i);
            }
        }
        return indices;
    }

    private static boolean rises(double[] values, List<Integer> part, double step) {
        for (int k = 0; k < part.size(); k++) {
            if (Double.isNaN(values[part.get(k)])
                    || (k > 0 && !(values[part.get(k)] - values[part.get(k - 1)] > step))) {
                return false;
            }
        }
        return true;
    }

    /** Longer, or as long and earlier at the first index in which they differ. */
    private static boolean isBetter(List<Integer> part, List<Integer> best) {
        if (part.size() != best.size()) {
            return part.size() > best.size();
        }
        for (int k = 0; k < part.size(); k++) {
            if (!part.get(k).equals(best.get(k))) {
                return part.get(k) < best.get(k);
            }
        }
        return false;
    }

    @Example
    @Label("is nothing where there is nothing, or no number")
    void nothing() {
        assertThat(Longest.rising(new double[0], 0.0).isEmpty()).isTrue();
        assertThat(Longest.rising(new double[] {Double.NaN}, 0.0).isEmpty()).isTrue();
    }

    @Provide
    Arbitrary<List<Double>> fewValues() {
        // few different values, so that many are equal
        Arbitrary<Double> value = Arbitraries.integers().between(0, 6).map(i -> i / 2.0);
        return Arbitraries.frequencyOf(
                        Tuple.of(8, value), Tuple.of(1, Arbitraries.just(Double.NaN)))
                .list()
                .ofMaxSize(9);
    }

    @Provide
    Arbitrary<Double> steps() {
        return Arbitraries.of(0.0, 0.5, 0.75);
    }
}
