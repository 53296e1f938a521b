package org.climbwright.gradient.leveling;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import org.climbwright.testing.Table;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

@DisplayName("A row of the rules for levelling off that no test compares")
class RowsLeftOutTest {
    private static final String[] REASONS = {
        "an observation of fleets, no rule that a rate could keep",
        "a national figure, given by the caller",
        "words, no figure",
    };

    @ParameterizedTest(name = "{0}: {1}")
    @CsvFileSource(
            resources = "/gradient/rows-left-out-leveling.csv",
            useHeadersInDisplayName = true)
    @DisplayName("is named with its table and one of a few reasons")
    void hasAReason(String table, String row, String reason, String source) {
        assertThat(Table.rows("/gradient/" + table)).isNotEmpty();
        assertThat(row).isNotBlank();
        assertThat(source).isNotBlank();
        assertThat(Arrays.stream(REASONS).filter(reason::startsWith)).hasSize(1);
    }

    @Test
    @DisplayName("is one of 3, so that none is left out in silence")
    void rows() {
        assertThat(Table.rows("/gradient/rows-left-out-leveling.csv")).hasSize(3);
    }
}
