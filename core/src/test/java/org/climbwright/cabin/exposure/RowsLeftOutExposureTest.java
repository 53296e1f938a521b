package org.climbwright.cabin.exposure;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import org.climbwright.testing.Table;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;

@DisplayName("A row of a table that no test of exposure compares")
class RowsLeftOutExposureTest {
    private static final String[] REASONS = {
        "a differential of another paragraph",
        "a number of valves or a list of instruments",
        "said in words, no figure",
        "a factor on elements of a system",
        "ozone, which no cabin altitude tells",
        "a fraction of what a mask supplies",
        "the paragraph was not seen",
        "quoted in a forum only",
        "superseded by a row of the second reading",
        "an advice that does not say whose altitude",
        "the ends of its band are not told",
        "a caution, told in the limits of use",
    };

    @ParameterizedTest(name = "{0}: {1}")
    @CsvFileSource(resources = LeftOut.FILE, useHeadersInDisplayName = true)
    @DisplayName("is named with its table and one of a few reasons")
    void hasAReason(String table, String row, String reason, String source) {
        assertThat(Table.rows("/cabin/" + table))
                .filteredOn(line -> line.startsWith(row + ","))
                .hasSize(1);
        assertThat(source).isNotBlank();
        assertThat(Arrays.stream(REASONS).filter(reason::startsWith)).hasSize(1);
    }

    @Test
    @DisplayName("is one of 23, so that none is left out in silence")
    void rows() {
        List<String> rows = Table.rows(LeftOut.FILE);
        assertThat(rows).doesNotHaveDuplicates().hasSize(23);
    }

    @ParameterizedTest(name = "{0}: {1} rows, {2} of them left out")
    @CsvSource({
        "regulatory-limits.csv, 14, 2",
        "second-regulatory-limits.csv, 30, 11",
        "oxygen-altitudes.csv, 17, 7",
        "second-oxygen-altitudes.csv, 15, 3",
        "time-of-useful-consciousness.csv, 35, 0"
    })
    @DisplayName("is of a table whose other rows are all compared:")
    void counts(String table, int rows, int leftOut) {
        assertThat(Table.rows("/cabin/" + table)).hasSize(rows);
        assertThat(LeftOut.rows(table)).hasSize(leftOut);
    }
}
