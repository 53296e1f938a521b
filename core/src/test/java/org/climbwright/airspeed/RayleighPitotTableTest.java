package org.climbwright.airspeed;

import static org.assertj.core.api.Assertions.assertThat;
import static org.climbwright.testing.Agreement.relativelyCloseTo;

import org.climbwright.testing.Table;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

@DisplayName("A pitot tube behind its shock")
class RayleighPitotTableTest {
    @ParameterizedTest(name = "at {0} measures {1} of the static pressure")
    @CsvFileSource(resources = "/airspeed/rayleigh-pitot.csv", useHeadersInDisplayName = true)
    @DisplayName("measures the total pressure of the table, in 50-digit arithmetic")
    void agreesWithTheTable(String mach, String pitotOverStatic) {
        double p = 12345.0;
        double number = Double.parseDouble(mach);
        double total = AirspeedConversion.totalPressureFromMach(number, p);
        assertThat(total / p).is(relativelyCloseTo(pitotOverStatic, 1e-15));
        double impact = p * (Double.parseDouble(pitotOverStatic) - 1.0);
        assertThat(AirspeedConversion.machFromImpactPressure(impact, p))
                .is(relativelyCloseTo(mach, 1e-15));
    }

    @Test
    @DisplayName("is compared in 8 rows")
    void rows() {
        assertThat(Table.rows("/airspeed/rayleigh-pitot.csv")).hasSize(8);
    }
}
