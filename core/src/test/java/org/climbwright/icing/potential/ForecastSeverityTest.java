package org.climbwright.icing.potential;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.climbwright.quantity.OutsideModelException;
import org.climbwright.testing.Table;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.ValueSource;

@DisplayName("The severity of a forecast scheme")
class ForecastSeverityTest {
    @ParameterizedTest(name = "{0} to {1}: {2}")
    @CsvFileSource(resources = "/icing/forecast-severity.csv", useHeadersInDisplayName = true)
    @DisplayName("has classes, the upper limit included from trace upward:")
    void classes(double from, double to, ForecastSeverity severity, String source) {
        assertThat(ForecastSeverity.of(0.5 * (from + to))).isEqualTo(severity);
        assertThat(ForecastSeverity.of(Math.nextUp(from))).isEqualTo(severity);
        boolean isUpperIncluded = severity != ForecastSeverity.NONE;
        assertThat(ForecastSeverity.of(isUpperIncluded ? to : Math.nextDown(to)))
                .isEqualTo(severity);
        assertThat(ForecastSeverity.of(0.08)).isEqualTo(ForecastSeverity.TRACE);
    }

    @Test
    @DisplayName("is divided in 5 rows")
    void rows() {
        assertThat(Table.rows("/icing/forecast-severity.csv")).hasSize(5);
    }

    @ParameterizedTest
    @ValueSource(doubles = {-0.01, 1.01, Double.NaN})
    @DisplayName("is refused outside 0 to 1")
    void refuses(double severity) {
        assertThat(ForecastSeverity.covers(severity)).isFalse();
        assertThatThrownBy(() -> ForecastSeverity.of(severity))
                .isInstanceOf(OutsideModelException.class)
                .hasMessageStartingWith("icing severity must be from 0.0 to 1.0, but was");
    }
}
