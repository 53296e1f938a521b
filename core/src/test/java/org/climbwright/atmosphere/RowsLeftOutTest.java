package org.climbwright.atmosphere;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import org.climbwright.testing.Table;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

@DisplayName("A row of a table that no test of the air compares")
class RowsLeftOutTest {
    private static final String[] REASONS = {
        "above 80 km geopotential, where the standard here ends",
        "conductivity with the coefficient 2.64638e-3 of the US standard",
        "not used here: ",
        "the program refuses it",
        "that formula is not offered by this version",
        "below the range of the formula, where it is refused",
        "the table is relative to 1013.25 hPa",
        "rounded by eye from the table for an aerodrome at sea level",
        "1032 hPa stands in two bands of the table",
        "by 30 ft for each hectopascal",
    };

    @ParameterizedTest(name = "{0}: {1}")
    @CsvFileSource(resources = "/atmosphere/rows-left-out.csv", useHeadersInDisplayName = true)
    @DisplayName("is named with its table and one of a few reasons")
    void hasAReason(String table, String row, String reason, String source) {
        assertThat(Table.rows("/atmosphere/" + table)).isNotEmpty();
        assertThat(row).isNotBlank();
        assertThat(source).isNotBlank();
        assertThat(Arrays.stream(REASONS).filter(reason::startsWith)).hasSize(1);
    }

    @Test
    @DisplayName("is one of 35, so that none is left out in silence")
    void rows() {
        List<String> rows = Table.rows("/atmosphere/rows-left-out.csv");
        assertThat(rows).hasSize(35);
        assertThat(rows).filteredOn(row -> row.startsWith("printed-us76")).hasSize(11);
        assertThat(rows).filteredOn(row -> row.startsWith("altimeter-setting-printed")).hasSize(6);
        assertThat(rows).filteredOn(row -> row.startsWith("constants")).hasSize(4);
        assertThat(rows).filteredOn(row -> row.startsWith("cold-air")).hasSize(5);
        assertThat(rows).filteredOn(row -> row.startsWith("saturation")).hasSize(2);
        assertThat(rows).filteredOn(row -> row.startsWith("condensation-level")).hasSize(2);
        assertThat(rows).filteredOn(row -> row.startsWith("transition-level")).hasSize(2);
        assertThat(rows).filteredOn(row -> row.startsWith("density-altitude")).hasSize(2);
        assertThat(rows).filteredOn(row -> row.startsWith("units-program")).hasSize(1);
    }
}
