package org.climbwright.icing.potential;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.climbwright.icing.potential.SeverityMatrix.CloudGroup;
import org.climbwright.quantity.OutsideModelException;
import org.climbwright.testing.Table;
import org.climbwright.unit.UnitScale;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

@DisplayName("The severity matrix of 1991")
class SeverityMatrixTest {
    private static final String TABLE = "/icing/severity-matrix.csv";

    @ParameterizedTest(name = "{0}")
    @MethodSource("cells")
    @DisplayName("has a cell, upper bounds included and lower ones not:")
    void cell(String row) {
        String[] fields = row.split(",");
        CloudGroup group = CloudGroup.valueOf(fields[0]);
        int index = Integer.parseInt(fields[5]);
        int category = Integer.parseInt(fields[6]);
        for (double lwc : inside(fields[1], fields[2], 0.0, 3.0)) {
            for (double celsius : inside(fields[3], fields[4], -40.0, 20.0)) {
                double lwcKgPerM3 = UnitScale.GRAM_PER_CUBIC_METRE.toSi(lwc);
                double temperatureK = UnitScale.CELSIUS.toSi(celsius);
                assertThat(SeverityMatrix.index(lwcKgPerM3, temperatureK, group))
                        .as("%s g/m³, %s °C", lwc, celsius)
                        .isEqualTo(index);
            }
        }
        assertThat(SeverityMatrix.category(index)).isEqualTo(category);
    }

    /** Just above the lower bound, in the middle, and at the upper bound. */
    private static double[] inside(String above, String to, double lowest, double highest) {
        double from = above.isEmpty() ? lowest : Double.parseDouble(above) + 1e-9;
        double end = to.isEmpty() ? highest : Double.parseDouble(to);
        return new double[] {from, 0.5 * (from + end), end};
    }

    static List<String> cells() {
        return Table.rows(TABLE).stream().filter(row -> !row.startsWith("FREEZING")).toList();
    }

    @ParameterizedTest(name = "{5}")
    @CsvFileSource(resources = TABLE, useHeadersInDisplayName = true)
    @DisplayName("gives each row a category from 0 to 3:")
    void categories(
            String group,
            String lwcAbove,
            String lwcTo,
            String above,
            String to,
            String index,
            int category,
            String source) {
        for (String each : index.split(" or ")) {
            assertThat(SeverityMatrix.category(Integer.parseInt(each))).isEqualTo(category);
        }
    }

    @Test
    @DisplayName("gives freezing rain and drizzle the highest index of the group")
    void freezingPrecipitation() {
        // the last row: index 3 (continuous) or 6 (intermittent), category 3
        assertThat(SeverityMatrix.indexInFreezingPrecipitation(CloudGroup.CONTINUOUS)).isEqualTo(3);
        assertThat(SeverityMatrix.indexInFreezingPrecipitation(CloudGroup.INTERMITTENT))
                .isEqualTo(6);
    }

    @Test
    @DisplayName("has 32 cells and a row of freezing precipitation")
    void rows() {
        assertThat(Table.rows(TABLE)).hasSize(33);
        assertThat(cells()).hasSize(32);
    }

    @ParameterizedTest
    @ValueSource(doubles = {-1.0, Double.NaN, Double.POSITIVE_INFINITY})
    @DisplayName("refuses what is out of range")
    void refuses(double value) {
        assertThat(SeverityMatrix.covers(value, 260.0)).isFalse();
        assertThat(SeverityMatrix.covers(1e-4, value)).isFalse();
        assertThatThrownBy(() -> SeverityMatrix.index(value, 260.0, CloudGroup.CONTINUOUS))
                .isInstanceOf(OutsideModelException.class)
                .hasMessageStartingWith("liquid water content must be from 0.0 to 0.05 kg/m³");
        assertThatThrownBy(() -> SeverityMatrix.index(1e-4, value, CloudGroup.CONTINUOUS))
                .isInstanceOf(OutsideModelException.class)
                .hasMessageStartingWith("static air temperature must be from 100.0 to 400.0 K");
    }

    @ParameterizedTest
    @ValueSource(ints = {-1, 7})
    @DisplayName("has no category for other indices")
    void refusesIndex(int index) {
        assertThat(SeverityMatrix.coversIndex(index)).isFalse();
        assertThatThrownBy(() -> SeverityMatrix.category(index))
                .isInstanceOf(OutsideModelException.class)
                .hasMessageStartingWith("icing severity index must be from 0.0 to 6.0");
    }
}
