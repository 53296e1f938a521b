package org.climbwright.icing.accretion;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import org.climbwright.testing.Table;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

@DisplayName("A row of a table that no test of accretion compares")
class RowsLeftOutTest {
    private static final String LEFT_OUT = "/icing/accretion/rows-left-out.csv";

    private static final String[] REASONS = {
        "beyond what the formulas were made for: phi above 10,000",
        "inertia below 0.36, where the formulas start from nothing",
        "not published: derived from printed rows that are compared",
        "the source does not say how: ",
        "charts of an aerofoil, which no formula here gives",
        "a formula of the handbook for viscosity that is not offered here",
        "a historical scale, not the present one",
        "no figure that a function here gives",
        "Reynolds number above 3000, where it is refused",
    };

    @ParameterizedTest(name = "{0}: {1}")
    @CsvFileSource(resources = LEFT_OUT, useHeadersInDisplayName = true)
    @DisplayName("is named with its table and one of a few reasons")
    void hasAReason(String table, String row, String reason, String source) {
        assertThat(Table.rows("/icing/accretion/" + table)).isNotEmpty();
        assertThat(row).isNotBlank();
        assertThat(source).isNotBlank();
        assertThat(Arrays.stream(REASONS).filter(reason::startsWith)).hasSize(1);
    }

    @Test
    @DisplayName("is one of 61, so that none is left out in silence")
    void rows() {
        List<String> rows = Table.rows(LEFT_OUT);
        assertThat(rows).hasSize(61);
        assertThat(rows).filteredOn(row -> row.startsWith("cylinder-impingement")).hasSize(32);
        assertThat(rows).filteredOn(row -> row.startsWith("freezing-fraction-h")).hasSize(2);
        assertThat(rows).filteredOn(row -> row.startsWith("freezing-fraction-m")).hasSize(5);
        assertThat(rows).filteredOn(row -> row.startsWith("impingement-examples")).hasSize(7);
        assertThat(rows).filteredOn(row -> row.startsWith("intensity")).hasSize(9);
        assertThat(rows).filteredOn(row -> row.startsWith("range-ratio")).hasSize(6);
    }
}
