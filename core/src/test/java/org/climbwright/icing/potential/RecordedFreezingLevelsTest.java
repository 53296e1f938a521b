package org.climbwright.icing.potential;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.climbwright.testing.Table;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.MethodSource;

@DisplayName("Levels of 0 °C in recorded soundings")
class RecordedFreezingLevelsTest {
    @ParameterizedTest(name = "{0}: {1}")
    @CsvFileSource(
            resources = "/sounding/freezing-level-counts.csv",
            useHeadersInDisplayName = true)
    @DisplayName("are as many as an independent computation found:")
    void asMany(String sounding, int crossings, String source) {
        assertThat(FreezingLevels.in(RecordedAir.of(sounding)).all()).hasSize(crossings);
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("crossings")
    @DisplayName("are where an independent computation found them:")
    void whereTheyAre(String row) {
        String[] fields = row.split(",");
        int crossing = Integer.parseInt(fields[2]);
        FreezingLevel level = FreezingLevels.in(RecordedAir.of(fields[0])).all().get(crossing - 1);
        assertThat(level.trend().name()).isEqualTo(fields[3]);
        // six significant digits are printed
        assertThat(level.air().pressurePa() / 100.0)
                .isCloseTo(Double.parseDouble(fields[4]), within(6e-4));
        assertThat(level.pressureAltitude().inFeet())
                .isCloseTo(Double.parseDouble(fields[6]), within(6e-2));
    }

    /** The rows of 0 °C; the table has other temperatures too. */
    static List<String> crossings() {
        return Table.rows("/sounding/crossings.csv").stream()
                .filter(row -> row.split(",")[1].equals("0"))
                .toList();
    }

    @Test
    @DisplayName("are compared in 12 soundings, at 17 passages")
    void rows() {
        assertThat(Table.rows("/sounding/freezing-level-counts.csv")).hasSize(12);
        assertThat(crossings()).hasSize(17);
    }
}
