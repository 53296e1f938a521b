package org.climbwright.numeric;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.util.Arrays;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("Columns of numbers")
class ColumnsTest {
    @Test
    @DisplayName("refuse a span that is not in the arrays, and results over their arguments")
    void spans() {
        double[] three = new double[3];
        Columns.check(three, new double[4], 0, 3);
        Columns.check(three, new double[4], 2, 2);
        assertThatExceptionOfType(IndexOutOfBoundsException.class)
                .isThrownBy(() -> Columns.check(three, new double[4], 0, 4));
        assertThatExceptionOfType(IndexOutOfBoundsException.class)
                .isThrownBy(() -> Columns.check(three, new double[2], 0, 3));
        assertThatExceptionOfType(IndexOutOfBoundsException.class)
                .isThrownBy(() -> Columns.check(three, new double[4], 2, 1));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Columns.check(three, three, 0, 3))
                .withMessage(
                        "the array of the results must be another than those of the arguments");
    }

    @Test
    @DisplayName("are cut into blocks that end with the span, also at the largest index there is")
    void blocks() {
        assertThat(Columns.blockEnd(3, 10)).isEqualTo(10);
        assertThat(Columns.blockEnd(0, 100_000)).isBetween(1, 99_999);
        assertThat(Columns.layerBlockEnd(0, 100_000)).isBetween(1, 99_999);
        assertThat(Columns.layerBlockEnd(3, 10)).isEqualTo(10);
        assertThat(Columns.blockEnd(Integer.MAX_VALUE - 5, Integer.MAX_VALUE))
                .isEqualTo(Integer.MAX_VALUE);
    }

    @Test
    @DisplayName("keep a result within a reach, wide or narrow, and mark it beyond")
    void within() {
        for (double reach : new double[] {0.25, 0.4463, 1.0, 12499.0}) {
            double centre = 2.0 * reach;
            for (double share : new double[] {-0.999999, -0.5, 0.0, 0.5, 0.999999}) {
                assertThat(Columns.within(centre + share * reach, centre, reach, 7.0))
                        .isEqualTo(7.0);
            }
            for (double share : new double[] {-1e30, -2.0, -1.000001, 1.000001, 3.0, 1e300}) {
                assertThat(Columns.within(centre + share * reach, centre, reach, 7.0)).isNaN();
            }
            assertThat(Columns.within(Double.NaN, centre, reach, 7.0)).isNaN();
            assertThat(Columns.within(Double.POSITIVE_INFINITY, centre, reach, 7.0)).isNaN();
            assertThat(Columns.within(Double.NEGATIVE_INFINITY, centre, reach, 7.0)).isNaN();
        }
    }

    @Test
    @DisplayName("find every NaN, wherever it stands")
    void unanswered() {
        double[] results = new double[11];
        assertThat(Columns.nextUnanswered(results, 0, 11)).isEqualTo(11);
        for (int i = 0; i < 11; i++) {
            Arrays.fill(results, 1.0);
            results[i] = Double.NaN;
            assertThat(Columns.nextUnanswered(results, 0, 11)).isEqualTo(i);
            assertThat(Columns.nextUnanswered(results, i + 1, 11)).isEqualTo(11);
            assertThat(Columns.nextUnanswered(results, 0, i)).isEqualTo(i);
        }
    }
}
