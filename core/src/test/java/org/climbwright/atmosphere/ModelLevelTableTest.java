package org.climbwright.atmosphere;

import static org.assertj.core.api.Assertions.assertThat;
import static org.climbwright.testing.Agreement.closeTo;

import org.climbwright.testing.Table;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

@DisplayName("Altitude from pressure")
class ModelLevelTableTest {
    @ParameterizedTest(name = "{0}: {1}, {2}")
    @CsvFileSource(resources = "/atmosphere/model-levels.csv", useHeadersInDisplayName = true)
    @DisplayName("is within 3.5e-5 of what a weather service prints for its model levels")
    void agreesWithTheTable(int level, double pascal, String metres) {
        // the service takes a gas constant near 287.06, 3.3e-5 more; and it prints 0.01 m
        double tolerance = 3.5e-5 * Double.parseDouble(metres) + 0.01;
        assertThat(StandardAir.altitudeFromPressure(pascal)).is(closeTo(metres, tolerance));
    }

    @Test
    @DisplayName("is compared at 68 levels")
    void rows() {
        assertThat(Table.rows("/atmosphere/model-levels.csv")).hasSize(68);
    }
}
