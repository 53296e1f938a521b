package org.climbwright.turbulence;

import static org.assertj.core.api.Assertions.assertThat;
import static org.climbwright.testing.Agreement.closeTo;

import org.climbwright.testing.Table;
import org.climbwright.unit.UnitScale;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

@DisplayName("The reference intensity of continuous turbulence")
class TurbulenceIntensityTableTest {
    @ParameterizedTest(name = "{0}: {1}, {2}")
    @CsvFileSource(
            resources = "/turbulence/turbulence-intensity.csv",
            useHeadersInDisplayName = true)
    @DisplayName("is that of the table, and the limit is the part that the profile leaves of it")
    void agreesWithTheTable(double metres, String mps, String fps) {
        double intensity = GustRule.limitTurbulenceIntensity(metres, 1.0);
        assertThat(intensity).is(closeTo(mps, 0.5e-4 + 1e-9));
        assertThat(UnitScale.FOOT_PER_SECOND.fromSi(intensity)).is(closeTo(fps, 0.5e-3 + 1e-9));
        assertThat(GustRule.limitTurbulenceIntensity(metres, 0.5)).isEqualTo(0.5 * intensity);
    }

    @Test
    @DisplayName("is compared in 9 rows")
    void rows() {
        assertThat(Table.rows("/turbulence/turbulence-intensity.csv")).hasSize(9);
    }
}
