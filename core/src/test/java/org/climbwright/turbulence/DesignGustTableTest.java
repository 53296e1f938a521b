package org.climbwright.turbulence;

import static org.assertj.core.api.Assertions.assertThat;
import static org.climbwright.testing.Agreement.closeTo;

import org.climbwright.testing.Table;
import org.climbwright.unit.UnitScale;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

@DisplayName("The design gust velocity by gradient distance")
class DesignGustTableTest {
    @ParameterizedTest(name = "{0}: {1}, {2}")
    @CsvFileSource(resources = "/turbulence/design-gust.csv", useHeadersInDisplayName = true)
    @DisplayName("is that of the table, at sea level with a factor of 0.8")
    void agreesWithTheTable(double gradientFeet, String share, String fps) {
        double gradientM = UnitScale.FOOT.toSi(gradientFeet);
        assertThat(GustRule.designGust(1.0, 1.0, gradientM)).is(closeTo(share, 0.5e-6 + 1e-12));
        double gust =
                GustRule.designGust(GustRule.referenceGustUpToCruiseSpeed(0.0), 0.8, gradientM);
        // six digits of some tens
        assertThat(UnitScale.FOOT_PER_SECOND.fromSi(gust)).is(closeTo(fps, 0.5e-4 + 1e-9));
    }

    @Test
    @DisplayName("is compared in 8 rows")
    void rows() {
        assertThat(Table.rows("/turbulence/design-gust.csv")).hasSize(8);
    }
}
