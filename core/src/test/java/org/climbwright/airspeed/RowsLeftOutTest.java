package org.climbwright.airspeed;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import org.climbwright.testing.Table;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

@DisplayName("A row of a table that no test of airspeeds compares")
class RowsLeftOutTest {
    private static final String[] REASONS = {
        "state behind a shock, no air data",
        "area of a nozzle, no air data",
        "the unrounded value 1.77500943 lies 0.501 units from it",
        "the unrounded value 38.96785342 lies 0.58 units from it",
        "its source contradicts itself",
        "its example contradicts itself",
        "a misprint",
        "a slide rule's answer",
        "beyond its rounding",
        "other constants",
        "a rule of thumb, not a reference",
        "a hand rule",
        "printed without an altitude",
        "its Mach number alone, which its speed and temperature contradict",
    };

    @ParameterizedTest(name = "{0}: {1}")
    @CsvFileSource(resources = "/airspeed/rows-left-out.csv", useHeadersInDisplayName = true)
    @DisplayName("is named with its table and one of a few reasons")
    void hasAReason(String table, String row, String reason, String source) {
        assertThat(Table.rows("/airspeed/" + table)).isNotEmpty();
        assertThat(row).isNotBlank();
        assertThat(source).isNotBlank();
        assertThat(Arrays.stream(REASONS).filter(reason::startsWith)).hasSize(1);
    }

    @Test
    @DisplayName("is one of 48, so that none is left out in silence")
    void rows() {
        List<String> rows = Table.rows("/airspeed/rows-left-out.csv");
        assertThat(rows).hasSize(48);
        assertThat(rows).filteredOn(row -> row.startsWith("compressible-flow")).hasSize(16);
        assertThat(rows).filteredOn(row -> row.startsWith("impact-pressure-pr")).hasSize(1);
        assertThat(rows).filteredOn(row -> row.startsWith("total-temperature-pr")).hasSize(12);
        assertThat(rows).filteredOn(row -> row.startsWith("total-temperature-ic")).hasSize(2);
        assertThat(rows).filteredOn(row -> row.startsWith("airspeeds-printed")).hasSize(7);
        assertThat(rows).filteredOn(row -> row.startsWith("tas-from-total")).hasSize(10);
    }
}
