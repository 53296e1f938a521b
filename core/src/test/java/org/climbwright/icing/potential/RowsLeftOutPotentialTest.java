package org.climbwright.icing.potential;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import org.climbwright.testing.Table;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

@DisplayName("A row of a table that no test of icing potential compares")
class RowsLeftOutPotentialTest {
    private static final String[] REASONS = {
        "the rule itself, of which the 8 worked rows are compared",
        "that rule of thumb is not offered by this version",
        "of another scheme",
        "a source not seen",
        "a statement in words",
    };

    @ParameterizedTest(name = "{0}: {1}")
    @CsvFileSource(resources = "/icing/rows-left-out-potential.csv", useHeadersInDisplayName = true)
    @DisplayName("is named with its table and one of a few reasons")
    void hasAReason(String table, String row, String reason, String source) {
        assertThat(Table.rows("/icing/" + table)).isNotEmpty();
        assertThat(row).isNotBlank();
        assertThat(source).isNotBlank();
        assertThat(Arrays.stream(REASONS).filter(reason::startsWith)).hasSize(1);
    }

    @Test
    @DisplayName("is one of 13, so that none is left out in silence")
    void rows() {
        List<String> rows = Table.rows("/icing/rows-left-out-potential.csv");
        assertThat(rows).hasSize(13);
        assertThat(rows).filteredOn(row -> row.startsWith("minus-eight-d")).hasSize(8);
        assertThat(rows).filteredOn(row -> row.startsWith("interest-maps")).hasSize(5);
    }
}
