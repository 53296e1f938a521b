package org.climbwright.sounding;

import static org.assertj.core.api.Assertions.assertThat;
import static org.climbwright.testing.Agreement.closeTo;

import java.util.ArrayList;
import java.util.List;
import org.climbwright.atmosphere.Atmosphere;
import org.climbwright.testing.Table;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

@DisplayName("The hypsometric altitude of a recorded sounding")
class HypsometricTableTest {
    private static final LargestDifferences DIFFERENCES = new LargestDifferences();

    @AfterAll
    static void print() {
        DIFFERENCES.print();
    }

    /**
     * The table takes another formula for the saturation over water, a few tenths of a percent from
     * ours; in moist tropical air the vapour lifts 200 hPa by some 40 m.
     */
    private static final double TOLERANCE_M = 0.1;

    @ParameterizedTest(name = "{0}: {2} at {1}")
    @CsvFileSource(resources = "/sounding/hypsometric.csv", useHeadersInDisplayName = true)
    @DisplayName("from its lowest level up differs from the reported one as in the table")
    void agreesWithTheTable(String sounding, double pressureHpa, String differenceM) {
        Sounding reported = Soundings.profile(sounding);
        double pressurePa = pressureHpa * 100.0;
        double difference =
                withoutHeightsAbove(reported).geopotentialAltitude(pressurePa)
                        - reported.atmosphere().geopotentialAltitude(pressurePa);
        assertThat(difference).is(closeTo(differenceM, TOLERANCE_M));
        DIFFERENCES.note(
                "hypsometric less reported altitude", "m", sounding, difference, differenceM);
    }

    @Test
    @DisplayName("differs from the reported one by up to 19 m, as Sounding.atmosphere states")
    void largestDifference() {
        double largest =
                Table.rows("/sounding/hypsometric.csv").stream()
                        .mapToDouble(row -> Math.abs(Double.parseDouble(row.split(",", -1)[2])))
                        .max()
                        .orElseThrow();
        assertThat(largest).isBetween(18.5, 19.0);
    }

    @Test
    @DisplayName("is compared in 48 rows")
    void rows() {
        assertThat(Table.rows("/sounding/hypsometric.csv")).hasSize(48);
    }

    /** The same air with one height only, that of its lowest level. */
    private static Atmosphere withoutHeightsAbove(Sounding sounding) {
        List<SoundingLevel> levels = new ArrayList<>();
        for (SoundingLevel level : Soundings.levelsOfAir(sounding)) {
            levels.add(levels.isEmpty() ? level : level.withoutAltitude());
        }
        return Sounding.of("", "", levels).atmosphere();
    }
}
