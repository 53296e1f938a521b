package org.climbwright.sounding;

import static org.assertj.core.api.Assertions.assertThat;
import static org.climbwright.testing.Agreement.closeTo;

import java.util.List;
import org.climbwright.testing.Table;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

@DisplayName("An ascent of an IGRA file with derived parameters")
class DerivedAscentTableTest {
    private static final LargestDifferences DIFFERENCES = new LargestDifferences();

    @AfterAll
    static void print() {
        DIFFERENCES.print();
    }

    private static final double UNIT_CONVERSION = 1e-9;

    @ParameterizedTest(name = "{0}: {1}")
    @CsvFileSource(resources = "/sounding/derived-crossings.csv", useHeadersInDisplayName = true)
    @DisplayName("passes 0 °C first where a second computation has it")
    void firstCrossing(String launch, String pressureHpa) {
        IsothermCrossing first = ascent(launch).freezingLevels().get(0);
        assertThat(first.air().staticPressure().inHectopascals())
                .is(closeTo(pressureHpa, 0.05)); // half a unit of the last digit
        DIFFERENCES.note(
                "pressure of 0 °C in derived files",
                "hPa",
                launch,
                first.air().staticPressure().inHectopascals(),
                pressureHpa);
        assertThat(first.trend()).isEqualTo(IsothermCrossing.Trend.FALLING);
    }

    @ParameterizedTest(name = "{0}: {1}")
    @CsvFileSource(
            resources = "/sounding/derived-crossing-counts.csv",
            useHeadersInDisplayName = true)
    @DisplayName("passes it as often as that computation counts")
    void crossings(String launch, int crossings) {
        assertThat(ascent(launch).freezingLevels()).hasSize(crossings);
        DIFFERENCES.note(
                "number of 0 °C levels in derived files",
                "1",
                launch,
                ascent(launch).freezingLevels().size(),
                crossings);
    }

    /**
     * The header names a reported level and does not interpolate: the last one of the warm air. So
     * the crossing is between that level and the next, which is the whole tolerance, and the level
     * itself agrees in every digit.
     */
    @ParameterizedTest(name = "{0}: {1}, {2}")
    @CsvFileSource(resources = "/sounding/derived-provider.csv", useHeadersInDisplayName = true)
    @DisplayName("passes it between the level that the provider names and the next one")
    void isNextToTheLevelOfTheProvider(String launch, String pressureHpa, String aboveSurfaceM) {
        Sounding ascent = ascent(launch);
        List<SoundingLevel> levels = Soundings.levelsOfAir(ascent);
        SoundingLevel surface = levels.get(0);
        int named = 0;
        while (Math.abs(levels.get(named).pressurePa() - 100.0 * Double.parseDouble(pressureHpa))
                > UNIT_CONVERSION) {
            named++;
        }
        double above = levels.get(named).geopotentialAltitudeM() - surface.geopotentialAltitudeM();
        assertThat(above).is(closeTo(aboveSurfaceM, UNIT_CONVERSION));
        DIFFERENCES.note("height of the provider's level", "m", launch, above, aboveSurfaceM);
        DIFFERENCES.note(
                "pressure of 0 °C and of the provider's level below it",
                "hPa",
                launch,
                ascent.freezingLevels().get(0).air().staticPressure().inHectopascals(),
                pressureHpa);
        assertThat(ascent.freezingLevels().get(0).air().pressurePa())
                .isLessThan(levels.get(named).pressurePa())
                .isGreaterThan(levels.get(named + 1).pressurePa());
    }

    @Test
    @DisplayName("is compared in 2 rows of crossings, 1 of counts and 2 of the provider's own")
    void rows() {
        assertThat(Table.rows("/sounding/derived-crossings.csv")).hasSize(2);
        assertThat(Table.rows("/sounding/derived-crossing-counts.csv")).hasSize(1);
        assertThat(Table.rows("/sounding/derived-provider.csv")).hasSize(2);
    }

    private static Sounding ascent(String launch) {
        return Soundings.read(Soundings.IGRA_DERIVED).launchedAt(launch);
    }
}
