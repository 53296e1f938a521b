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
class IcingSeverityTest {
    @ParameterizedTest(name = "{0} to {1}: {2}")
    @CsvFileSource(resources = "/icing/icing-severity.csv", useHeadersInDisplayName = true)
    @DisplayName("has classes, the upper limit included from trace upward:")
    void classes(double from, double to, IcingSeverity severity, String source) {
        assertThat(IcingSeverity.of(0.5 * (from + to))).isEqualTo(severity);
        assertThat(IcingSeverity.of(Math.nextUp(from))).isEqualTo(severity);
        boolean isUpperIncluded = severity != IcingSeverity.NONE;
        assertThat(IcingSeverity.of(isUpperIncluded ? to : Math.nextDown(to))).isEqualTo(severity);
        assertThat(IcingSeverity.of(0.08)).isEqualTo(IcingSeverity.TRACE);
    }

    @Test
    @DisplayName("is divided in 5 rows")
    void rows() {
        assertThat(Table.rows("/icing/icing-severity.csv")).hasSize(5);
    }

    @ParameterizedTest
    @ValueSource(doubles = {-0.01, 1.01, Double.NaN})
    @DisplayName("is refused outside 0 to 1")
    void refuses(double severity) {
        assertThat(IcingSeverity.covers(severity)).isFalse();
        assertThatThrownBy(() -> IcingSeverity.of(severity))
                .isInstanceOf(OutsideModelException.class)
                .hasMessageStartingWith("icing severity must be from 0.0 to 1.0, but was");
    }
}
