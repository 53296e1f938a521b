package org.climbwright.icing.envelope;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import org.climbwright.testing.Table;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

@DisplayName("A row of a table that no test of the envelopes compares")
class RowsLeftOutTest {
    private static final String LEFT_OUT = "/icing/envelope/rows-left-out.csv";

    private static final String[] REASONS = {
        "below the coldest line of Appendix C, where it is refused",
        "printed as less than a number",
        "no part of the envelopes offered here: ",
        "said in words",
        "from memory, and the figure behind it was read instead",
    };

    @ParameterizedTest(name = "{0}: {1}")
    @CsvFileSource(resources = LEFT_OUT, useHeadersInDisplayName = true)
    @DisplayName("is named with its table and one of a few reasons")
    void hasAReason(String table, String row, String reason, String source) {
        assertThat(Table.rows("/icing/envelope/" + table)).isNotEmpty();
        assertThat(row).isNotBlank();
        assertThat(source).isNotBlank();
        assertThat(Arrays.stream(REASONS).filter(reason::startsWith)).hasSize(1);
    }

    @Test
    @DisplayName("is one of 53, so that none is left out in silence")
    void rows() {
        List<String> rows = Table.rows(LEFT_OUT);
        assertThat(rows).hasSize(53);
        assertThat(rows).filteredOn(row -> row.startsWith("continuous-maximum-water")).hasSize(2);
        assertThat(rows).filteredOn(row -> row.startsWith("continuous-maximum-1949")).hasSize(3);
        assertThat(rows).filteredOn(row -> row.startsWith("intermittent-maximum")).hasSize(1);
        assertThat(rows).filteredOn(row -> row.startsWith("altitude-and-temp")).hasSize(10);
        assertThat(rows).filteredOn(row -> row.startsWith("extent-factor.csv")).hasSize(1);
        assertThat(rows).filteredOn(row -> row.startsWith("extent-factor-1952")).hasSize(10);
        assertThat(rows).filteredOn(row -> row.startsWith("takeoff-and-large")).hasSize(15);
        assertThat(rows).filteredOn(row -> row.startsWith("recommended-1949")).hasSize(11);
    }
}
