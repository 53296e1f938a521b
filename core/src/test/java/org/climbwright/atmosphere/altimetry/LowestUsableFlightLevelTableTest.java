package org.climbwright.atmosphere.altimetry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.climbwright.testing.Agreement.printedAs;

import java.util.List;
import org.climbwright.quantity.altitude.AltitudeChange;
import org.climbwright.quantity.altitude.PressureAltitude;
import org.climbwright.quantity.pressure.AltimeterSetting;
import org.climbwright.testing.Table;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

@DisplayName("The lowest usable flight level, as printed")
class LowestUsableFlightLevelTableTest {
    @ParameterizedTest(name = "{0} to {1}: {2}")
    @CsvFileSource(
            resources = "/atmosphere/lowest-usable-flight-level.csv",
            useHeadersInDisplayName = true)
    @DisplayName("belongs to each hundredth of an inch of its band, and to what lies just above")
    void agreesWithTheTable(
            String high, double low, String printed, String altitudeFeet, String source) {
        LowestUsableFlightLevel table =
                source.startsWith("FAA AIM")
                        ? LowestUsableFlightLevel.AERONAUTICAL_INFORMATION_MANUAL
                        : LowestUsableFlightLevel.REGULATION;
        double feet =
                printed.startsWith("+")
                        ? 18000.0 + Double.parseDouble(printed.substring(1, printed.indexOf(" ft")))
                        : 100.0 * Double.parseDouble(printed);
        PressureAltitude level = PressureAltitude.ofFeet(feet);
        long highest = high.equals("or higher") ? 3200 : Math.round(100 * Double.parseDouble(high));
        for (long hundredths = Math.round(100 * low); hundredths <= highest; hundredths++) {
            // a setting between two hundredths counts as the lower
            for (double beyond : new double[] {0.0, 0.005, 0.00999}) {
                AltimeterSetting setting =
                        AltimeterSetting.ofInchesOfMercury(hundredths / 100.0 + beyond);
                assertThat(table.at(setting)).as(setting.toString()).isEqualTo(level);
                assertThat(table.adjustment(setting))
                        .isEqualTo(AltitudeChange.ofFeet(feet - 18000.0));
            }
        }
        AltimeterSetting lowest = AltimeterSetting.ofInchesOfMercury(low);
        assertThat(Altimetry.altitudeOnQnh(level, lowest).inFeet()).is(printedAs(altitudeFeet));
    }

    @Test
    @DisplayName("is compared in 15 rows of a regulation, a manual and an order")
    void rows() {
        List<String> rows = Table.rows("/atmosphere/lowest-usable-flight-level.csv");
        assertThat(rows).hasSize(15);
        assertThat(rows).filteredOn(row -> row.contains("14 CFR 91.121(b)")).hasSize(7);
        assertThat(rows).filteredOn(row -> row.contains("AIM TBL 7-2-1")).hasSize(3);
        assertThat(rows).filteredOn(row -> row.contains("JO 7110.65")).hasSize(5);
    }
}
