package org.climbwright.ledger;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("The points of the accuracy ledger")
class PointsTest {
    private static final List<Axis> ONE =
            List.of(Axis.of("a", 0.0, 5.0).logarithmicFrom(1e-9).marking(1.0));
    private static final List<Axis> TWO =
            List.of(
                    Axis.following("a up to b", in -> 0.0, in -> in[1]).logarithmicFrom(1e-9),
                    Axis.of("b", -1.0, 5.0));

    @Test
    @DisplayName("on a coarser walk are all among those of the full one")
    void coarserIsAmongFull() {
        for (List<Axis> axes : List.of(ONE, TWO)) {
            Set<String> others = new HashSet<>(walk(axes, 100));
            assertThat(others).hasSizeGreaterThan(1000);
            others.removeAll(new HashSet<>(walk(axes, 1)));
            assertThat(others).isEmpty();
        }
    }

    @Test
    @DisplayName("are the bounds and marks, and one and two doubles beside them that are inside")
    void besideTheMarks() {
        double tiny = Double.MIN_VALUE;
        assertThat(ONE.get(0).besideMarks(new double[1]))
                .contains(0.0, tiny, 2 * tiny)
                .contains(5.0, Math.nextDown(5.0), Math.nextDown(Math.nextDown(5.0)))
                .contains(1.0, Math.nextDown(1.0), Math.nextUp(1.0))
                .contains(Math.nextDown(Math.nextDown(1.0)), Math.nextUp(Math.nextUp(1.0)))
                .hasSize(11);
        assertThat(walk(ONE, Points.STEPS)).contains("[0.0]", "[4.9E-324]", "[5.0]");
    }

    @Test
    @DisplayName("lie between their bounds, also where one follows from the other")
    void lieBetweenTheBounds() {
        Points.visit(TWO, 10, in -> assertThat(in[0]).isBetween(0.0, Math.max(0.0, in[1])));
    }

    private static List<String> walk(List<Axis> axes, int stride) {
        List<String> points = new ArrayList<>();
        Points.visit(axes, stride, in -> points.add(Arrays.toString(in)));
        return points;
    }
}
