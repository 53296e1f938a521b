package org.climbwright.icing.envelope;

import static java.lang.Double.parseDouble;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.climbwright.testing.Table;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.ValueSource;

@DisplayName("The largest liquid water content of continuous maximum icing")
class ContinuousMaximumWaterTableTest {
    private static final String TABLE = "/icing/envelope/continuous-maximum-water.csv";
    private static final String OF_1949 = "/icing/envelope/continuous-maximum-1949.csv";

    /** How well the figure could be read [g/m³]; tabulated values are met to the last digit. */
    private static final double READING = 0.006;

    @ParameterizedTest(name = "{0}, {1} is {2}")
    @CsvFileSource(resources = TABLE, useHeadersInDisplayName = true)
    @DisplayName("is that of the figure as read, and of the advisory circular")
    void agreesWithTheFigure(
            double celsius, double micrometres, double gramsPerM3, String kind, String source) {
        double water = grams(celsius, micrometres);
        assertThat(water).isCloseTo(gramsPerM3, within("tabulated".equals(kind) ? 1e-12 : READING));
    }

    @ParameterizedTest(name = "{0}, {1} is {2}")
    @CsvFileSource(resources = OF_1949, useHeadersInDisplayName = true)
    @DisplayName("is what was recommended in 1949, to the last digit")
    void agreesWith1949(double celsius, double micrometres, double gramsPerM3, String source) {
        assertThat(grams(celsius, micrometres)).isCloseTo(gramsPerM3, within(1e-12));
    }

    private static double grams(double celsius, double micrometres) {
        return 1e3 * ContinuousMaximum.liquidWaterContent(micrometres * 1e-6, celsius + 273.15);
    }

    @ParameterizedTest(name = "at {0} °C")
    @ValueSource(strings = {"0.0", "-10.0", "-20.0", "-30.0"})
    @DisplayName("where a point as read is left out, is missed by 0.012 at most")
    void pointLeftOut(String celsius) {
        List<double[]> points =
                Table.rows(TABLE).stream()
                        .map(row -> row.split(",", 5))
                        .filter(cells -> cells[0].equals(celsius) && cells[3].equals("digitised"))
                        .map(c -> new double[] {parseDouble(c[1]), parseDouble(c[2])})
                        .toList();
        assertThat(points).hasSizeGreaterThanOrEqualTo(5);
        for (int i = 1; i < points.size() - 1; i++) {
            double[] leftOut = points.get(i);
            List<double[]> others =
                    points.stream().filter(point -> point[0] != leftOut[0]).toList();
            Curve without =
                    new Curve(
                            Curve.Paper.SMOOTH,
                            others.stream().mapToDouble(point -> point[0]).toArray(),
                            others.stream().mapToDouble(point -> point[1]).toArray());
            assertThat(without.at(leftOut[0])).isCloseTo(leftOut[1], within(0.012));
        }
    }

    @Test
    @DisplayName("is compared in 28 rows and 12, the warm and cold lines and two between")
    void rows() {
        assertThat(Table.rows(TABLE)).hasSize(28);
        assertThat(Table.rows(OF_1949)).hasSize(12);
    }
}
