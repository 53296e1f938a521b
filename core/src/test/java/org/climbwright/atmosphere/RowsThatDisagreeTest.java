package org.climbwright.atmosphere;

import static org.assertj.core.api.Assertions.assertThat;
import static org.climbwright.testing.Agreement.printedAs;

import java.util.List;
import org.climbwright.testing.PrintedAir;
import org.climbwright.testing.Table;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

@DisplayName("A printed row that disagrees with standard air")
class RowsThatDisagreeTest {
    @ParameterizedTest(name = "{0}: {3} at {1} {2} is printed as {4} {5}")
    @CsvFileSource(resources = "/atmosphere/rows-that-disagree.csv", useHeadersInDisplayName = true)
    @DisplayName(
            "is off by more than half a unit of its last digit, and ours is the computed value")
    void disagrees(
            String table,
            String argument,
            String meaning,
            String quantity,
            String published,
            String unit,
            String computed,
            String found,
            String source) {
        assertThat(found).isNotBlank();
        PrintedAir air =
                table.contains("us76")
                        ? PrintedAir.of(source, argument, meaning)
                        : PrintedAir.at(argument, meaning);
        assertThat(air.in(quantity, unit)).isNot(printedAs(published)).is(printedAs(computed));
    }

    @Test
    @DisplayName("is kept with what was found: 78 rows of 3 tables")
    void rows() {
        List<String> rows = Table.rows("/atmosphere/rows-that-disagree.csv");
        assertThat(rows).hasSize(78).filteredOn(row -> row.startsWith("printed-feet")).hasSize(63);
        assertThat(rows).filteredOn(row -> row.startsWith("printed-us76")).hasSize(11);
        assertThat(rows).filteredOn(row -> row.startsWith("printed-metres")).hasSize(4);
    }
}
