package org.climbwright.turbulence;

import static org.assertj.core.api.Assertions.assertThat;
import static org.climbwright.testing.Agreement.closeTo;

import org.climbwright.testing.Table;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

@DisplayName("The gust alleviation factor")
class GustAlleviationTableTest {
    @ParameterizedTest(name = "{0}: {1}")
    @CsvFileSource(resources = "/turbulence/gust-alleviation.csv", useHeadersInDisplayName = true)
    @DisplayName("is that of the table for the mass ratio")
    void agreesWithTheTable(double massRatio, String factor) {
        assertThat(GustLoad.alleviationFactor(massRatio)).is(closeTo(factor, 0.5e-6 + 1e-8));
    }

    @Test
    @DisplayName("is compared in 13 rows")
    void rows() {
        assertThat(Table.rows("/turbulence/gust-alleviation.csv")).hasSize(13);
    }
}
