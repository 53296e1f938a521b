package org.climbwright.turbulence;

import static org.assertj.core.api.Assertions.assertThat;

import org.climbwright.testing.Table;
import org.climbwright.turbulence.TurbulenceReport.Frequency;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

@DisplayName("The word for the share of time in turbulence")
class FrequencyTableTest {
    @ParameterizedTest(name = "{0}: {1}, {2}")
    @CsvFileSource(resources = "/turbulence/frequency.csv", useHeadersInDisplayName = true)
    @DisplayName("is that of the table")
    void agreesWithTheTable(Frequency word, String statement, String bounds) {
        String number = bounds.replaceAll("[<>]", "");
        if (bounds.startsWith("<")) {
            assertThat(Frequency.of(0.0)).isEqualTo(word);
            assertThat(Frequency.of(Double.parseDouble(number) - 1e-4)).isEqualTo(word);
            assertThat(Frequency.of(1.0 / 3.0)).isNotEqualTo(word);
        } else if (bounds.startsWith(">")) {
            assertThat(Frequency.of(1.0)).isEqualTo(word);
            assertThat(Frequency.of(Double.parseDouble(number) + 1e-4)).isEqualTo(word);
            assertThat(Frequency.of(2.0 / 3.0)).isNotEqualTo(word);
        } else {
            assertThat(Frequency.of(1.0 / 3.0)).isEqualTo(word);
            assertThat(Frequency.of(2.0 / 3.0)).isEqualTo(word);
            assertThat(number).isEqualTo("0.3333 to 0.6667");
        }
    }

    @Test
    @DisplayName("is compared in 3 rows")
    void rows() {
        assertThat(Table.rows("/turbulence/frequency.csv")).hasSize(3);
    }
}
