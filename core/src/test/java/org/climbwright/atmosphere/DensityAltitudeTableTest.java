package org.climbwright.atmosphere;

import static org.assertj.core.api.Assertions.anyOf;
import static org.assertj.core.api.Assertions.assertThat;
import static org.climbwright.testing.Agreement.closeTo;
import static org.climbwright.testing.Agreement.printedAs;

import org.assertj.core.api.Condition;
import org.climbwright.quantity.pressure.StaticPressure;
import org.climbwright.quantity.temperature.StaticAirTemperature;
import org.climbwright.testing.Table;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

@DisplayName("Density altitude of dry air")
class DensityAltitudeTableTest {
    @ParameterizedTest(name = "{0}, {1}: {3}")
    @CsvFileSource(resources = "/atmosphere/density-altitude.csv", useHeadersInDisplayName = true)
    @DisplayName("is that of the table, in 50-digit arithmetic")
    void agreesWithTheTable(
            double hectopascal, double celsius, String pressureAltitude, String densityAltitude) {
        AirState air =
                AirState.of(
                        StaticPressure.ofHectopascals(hectopascal),
                        StaticAirTemperature.ofCelsius(celsius));
        assertThat(air.pressureAltitude().inFeet()).is(tenDigits(pressureAltitude));
        assertThat(air.densityAltitude().inFeet()).is(tenDigits(densityAltitude));
    }

    /** Half a unit of the tenth digit, or at sea level the 1e-9 m that the functions state. */
    private static Condition<Double> tenDigits(String feet) {
        return anyOf(printedAs(feet, 10), closeTo(feet, 1e-9 / 0.3048));
    }

    @Test
    @DisplayName("is compared in 8 rows")
    void rows() {
        assertThat(Table.rows("/atmosphere/density-altitude.csv")).hasSize(8);
    }
}
