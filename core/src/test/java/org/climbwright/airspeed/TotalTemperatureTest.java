package org.climbwright.airspeed;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.climbwright.testing.Agreement.closeTo;

import org.climbwright.quantity.OutsideModelException;
import org.climbwright.testing.Table;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.ValueSource;

@DisplayName("The temperature that a probe feels")
class TotalTemperatureTest {
    @ParameterizedTest(name = "{0}, {1}, {2}")
    @CsvFileSource(resources = "/airspeed/total-temperature.csv", useHeadersInDisplayName = true)
    @DisplayName("is that of the table, in 50-digit arithmetic")
    void agreesWithTheTable(double mach, double celsius, double recovery, String totalCelsius) {
        double felt = AirspeedConversion.totalTemperatureFromMach(mach, celsius + 273.15, recovery);
        // 1e-12 of a temperature of up to 800 K
        assertThat(felt - 273.15).is(closeTo(totalCelsius, 8e-10));
    }

    @Test
    @DisplayName("is compared in 96 rows")
    void rows() {
        assertThat(Table.rows("/airspeed/total-temperature.csv")).hasSize(96);
    }

    @Test
    @DisplayName("at rest, or of a probe that recovers nothing, is that of the air")
    void noRise() {
        assertThat(AirspeedConversion.totalTemperatureFromMach(0.0, 250.0, 1.0)).isEqualTo(250.0);
        assertThat(AirspeedConversion.totalTemperatureFromMach(0.8, 250.0, 0.0)).isEqualTo(250.0);
    }

    @ParameterizedTest
    @ValueSource(doubles = {Double.NaN, -0.01, 5.01, Double.POSITIVE_INFINITY})
    @DisplayName("is refused beyond Mach 5, and below zero")
    void mach(double mach) {
        assertThatExceptionOfType(OutsideModelException.class)
                .isThrownBy(() -> AirspeedConversion.totalTemperatureFromMach(mach, 250.0, 1.0))
                .withMessage(
                        "Mach number must be from 0.0 to 5.0, but was "
                                + mach
                                + ": air is hardly a perfect gas beyond");
    }

    @ParameterizedTest
    @ValueSource(doubles = {Double.NaN, -0.01, 1.01})
    @DisplayName("is refused for a probe that recovers less than nothing or more than all")
    void recovery(double recovery) {
        assertThatExceptionOfType(OutsideModelException.class)
                .isThrownBy(() -> AirspeedConversion.totalTemperatureFromMach(0.8, 250.0, recovery))
                .withMessage(
                        "recovery factor must be from 0.0 to 1.0, but was "
                                + recovery
                                + ": a probe recovers no more than all");
    }
}
