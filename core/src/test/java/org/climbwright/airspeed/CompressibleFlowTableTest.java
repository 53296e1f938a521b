package org.climbwright.airspeed;

import static org.assertj.core.api.Assertions.assertThat;
import static org.climbwright.testing.Agreement.printedAs;

import org.climbwright.testing.Table;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

@DisplayName("Air brought to rest")
class CompressibleFlowTableTest {
    @ParameterizedTest(name = "at {0}: {1} is {2}")
    @CsvFileSource(
            resources = "/airspeed/compressible-flow-printed.csv",
            useHeadersInDisplayName = true)
    @DisplayName("has the ratios of static to total that a textbook prints")
    void agreesWithTheTable(double mach, String quantity, String published) {
        double pressure = 30000.0 / AirspeedConversion.totalPressureFromMach(mach, 30000.0);
        double temperature = 250.0 / TotalTemperature.fromMach(mach, 250.0, 1.0);
        double ratio =
                switch (quantity) {
                    case "p/pt" -> pressure;
                    case "T/Tt" -> temperature;
                    case "rho/rhot" -> pressure / temperature;
                    default -> throw new AssertionError(quantity);
                };
        assertThat(ratio).is(printedAs(published));
    }

    @Test
    @DisplayName("is compared in 32 rows")
    void rows() {
        assertThat(Table.rows("/airspeed/compressible-flow-printed.csv")).hasSize(32);
    }
}
