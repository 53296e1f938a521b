package org.climbwright.turbulence;

import static org.assertj.core.api.Assertions.assertThat;

import org.climbwright.testing.Table;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

@DisplayName("The word for a change of acceleration")
class AccelerationBandsTableTest {
    @ParameterizedTest(name = "{0}: {1} {2}")
    @CsvFileSource(resources = "/turbulence/acceleration-bands.csv", useHeadersInDisplayName = true)
    @DisplayName("is that of the table, bounds as written")
    void agreesWithTheTable(TurbulenceIntensity word, String statement, String bounds) {
        String[] numbers = bounds.replace(" g", "").split(" to ");
        double first = Double.parseDouble(numbers[0]);
        if (statement.endsWith("less than")) {
            assertThat(TurbulenceIntensity.ofAcceleration(Math.nextDown(first))).isEqualTo(word);
            assertThat(TurbulenceIntensity.ofAcceleration(first)).isNotEqualTo(word);
        } else if (statement.endsWith("greater than")) {
            assertThat(TurbulenceIntensity.ofAcceleration(Math.nextUp(first))).isEqualTo(word);
            assertThat(TurbulenceIntensity.ofAcceleration(first)).isNotEqualTo(word);
        } else {
            assertThat(TurbulenceIntensity.ofAcceleration(first)).isEqualTo(word);
            assertThat(TurbulenceIntensity.ofAcceleration(Double.parseDouble(numbers[1])))
                    .isEqualTo(word);
        }
    }

    @Test
    @DisplayName("is compared in 3 rows")
    void rows() {
        assertThat(Table.rows("/turbulence/acceleration-bands.csv")).hasSize(3);
    }
}
