package org.climbwright.turbulence;

import static org.assertj.core.api.Assertions.assertThat;
import static org.climbwright.testing.Agreement.closeTo;

import org.climbwright.testing.Table;
import org.climbwright.unit.UnitScale;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

@DisplayName("The flight-profile alleviation factor")
class FlightProfileAlleviationTableTest {
    /** The table has six decimals. */
    private static final double HALF_A_DIGIT = 0.5e-6 + 1e-12;

    @ParameterizedTest(name = "{0}, {1}, {2}, {3}: {5}")
    @CsvFileSource(
            resources = "/turbulence/flight-profile-alleviation.csv",
            useHeadersInDisplayName = true)
    @DisplayName("is that of the table")
    void agreesWithTheTable(
            double operatingFeet,
            double landing,
            double zeroFuel,
            double feet,
            String atSeaLevel,
            String factor) {
        double operatingM = UnitScale.FOOT.toSi(operatingFeet);
        assertThat(GustRule.alleviationAtSeaLevel(operatingM, landing, zeroFuel))
                .is(closeTo(atSeaLevel, HALF_A_DIGIT));
        assertThat(GustRule.alleviation(UnitScale.FOOT.toSi(feet), operatingM, landing, zeroFuel))
                .is(closeTo(factor, HALF_A_DIGIT));
    }

    @Test
    @DisplayName("is compared in 20 rows")
    void rows() {
        assertThat(Table.rows("/turbulence/flight-profile-alleviation.csv")).hasSize(20);
    }
}
