package org.climbwright.turbulence;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import org.climbwright.testing.Table;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

@DisplayName("A row of a table that no test of turbulence compares")
class RowsLeftOutTest {
    private static final String[] REASONS = {
        "an older edition, from memory only",
        "the inputs of the example are not in the table",
        "words, no figure",
        "from memory only, and of another ",
        "an exception of the rule that no figure follows from",
        "a relation of design speeds without a gust",
        "an observation of fleets, no bound of a table",
        "a caution, told in the limits of use",
        "the file has no level of that ascent",
        "needs horizontal shear or pressures across a ridge, which one profile has not",
    };

    @ParameterizedTest(name = "{0}: {1}")
    @CsvFileSource(resources = "/turbulence/rows-left-out.csv", useHeadersInDisplayName = true)
    @DisplayName("is named with its table and one of a few reasons")
    void hasAReason(String table, String row, String reason, String source) {
        assertThat(Table.rows("/turbulence/" + table)).isNotEmpty();
        assertThat(row).isNotBlank();
        assertThat(source).isNotBlank();
        assertThat(Arrays.stream(REASONS).filter(reason::startsWith)).hasSize(1);
    }

    @Test
    @DisplayName("is one of 22, so that none is left out in silence")
    void rows() {
        List<String> rows = Table.rows("/turbulence/rows-left-out.csv");
        assertThat(rows).hasSize(22);
        assertThat(rows).filteredOn(row -> row.startsWith("reference-gust")).hasSize(1);
        assertThat(rows).filteredOn(row -> row.startsWith("gust-load")).hasSize(7);
        assertThat(rows).filteredOn(row -> row.startsWith("rough-air")).hasSize(4);
        assertThat(rows).filteredOn(row -> row.startsWith("eddy-dissipation")).hasSize(5);
        assertThat(rows).filteredOn(row -> row.startsWith("shear-rule")).hasSize(2);
        assertThat(rows).filteredOn(row -> row.startsWith("updraft")).hasSize(2);
        assertThat(rows).filteredOn(row -> row.startsWith("cape-provider")).hasSize(1);
    }
}
