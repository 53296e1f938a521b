package org.climbwright.atmosphere;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.climbwright.testing.Agreement.computedAs;
import static org.climbwright.testing.Agreement.printedAs;
import static org.climbwright.testing.Agreement.relativelyCloseTo;

import org.climbwright.quantity.OutsideModelException;
import org.climbwright.testing.Table;
import org.climbwright.unit.UnitScale;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.ValueSource;

@DisplayName("Moist air")
class MoistAirTest {
    /** Gas constant of dry air over that of water vapour. */
    private static final double MOLAR_MASS_RATIO = 287.05287 / 461.523;

    @ParameterizedTest(name = "at {0}: {1}")
    @CsvFileSource(resources = "/atmosphere/saturation.csv", useHeadersInDisplayName = true)
    @DisplayName("is saturated at the vapour pressure of the table, in 50-digit arithmetic")
    void agreesWithTheTable(double celsius, String hectopascal) {
        double pascal = MoistAir.saturationVapourPressure(UnitScale.CELSIUS.toSi(celsius));
        assertThat(UnitScale.HECTOPASCAL.fromSi(pascal)).is(computedAs(hectopascal, 14));
    }

    @ParameterizedTest(name = "{0} at {1} is {2}")
    @CsvFileSource(resources = "/atmosphere/humidity-printed.csv", useHeadersInDisplayName = true)
    @DisplayName("is within 0.1 % of what other formulas for liquid water give")
    void agreesWithOtherFormulas(String quantity, String text, String published) {
        double ours =
                switch (text) {
                    case "T 25, Td 15 degC" -> humidityPercent(25.0, 15.0, UnitScale.CELSIUS);
                    case "T 70, Td 55 degF" -> humidityPercent(70.0, 55.0, UnitScale.FAHRENHEIT);
                    case "275 K" -> MoistAir.saturationVapourPressure(275.0);
                    default -> throw new AssertionError(text);
                };
        // Bolton's formula is stated to 0.1 % by its author; the formulation of the association for
        // water and steam is exact here, and Murphy and Koop's was found 1.2e-5 from it
        double tolerance = quantity.contains("IAPWS") ? 5e-5 : 1e-3;
        assertThat(ours).is(relativelyCloseTo(published, tolerance));
    }

    private static double humidityPercent(double t, double dewPoint, UnitScale scale) {
        double vapour = MoistAir.saturationVapourPressure(scale.toSi(dewPoint));
        return 100.0 * MoistAir.relativeHumidity(vapour, scale.toSi(t));
    }

    @ParameterizedTest(name = "{0}, {1}, {2}")
    @CsvFileSource(
            resources = "/atmosphere/virtual-temperature.csv",
            useHeadersInDisplayName = true)
    @DisplayName("has the virtual temperature of the table, in 50-digit arithmetic")
    void virtualTemperature(double hectopascal, double celsius, double vapour, String kelvin) {
        double t = UnitScale.CELSIUS.toSi(celsius);
        // The table rounds the molar mass ratio to 0.622. Less vapour by the ratio of the two makes
        // ours the table's, and shows the formula; the rest is the rounding, 2e-6 at most.
        double asRounded = vapour * 100.0 * (1.0 - 0.622) / (1.0 - MOLAR_MASS_RATIO);
        assertThat(MoistAir.virtualTemperature(t, asRounded, hectopascal * 100.0))
                .is(printedAs(kelvin, 12));
        assertThat(MoistAir.virtualTemperature(t, vapour * 100.0, hectopascal * 100.0))
                .is(relativelyCloseTo(kelvin, 2e-6));
    }

    @Test
    @DisplayName("is compared in 15, 3 and 8 rows")
    void rows() {
        assertThat(Table.rows("/atmosphere/saturation.csv")).hasSize(15);
        assertThat(Table.rows("/atmosphere/humidity-printed.csv")).hasSize(3);
        assertThat(Table.rows("/atmosphere/virtual-temperature.csv")).hasSize(8);
    }

    @Test
    @DisplayName("that is dry has its own temperature as virtual temperature")
    void dryAir() {
        assertThat(MoistAir.virtualTemperature(288.15, 0.0, 101325.0)).isEqualTo(288.15);
        assertThat(MoistAir.relativeHumidity(0.0, 288.15)).isZero();
    }

    @Test
    @DisplayName("is saturated when dew point and temperature are the same")
    void saturated() {
        assertThat(MoistAir.relativeHumidity(MoistAir.saturationVapourPressure(250.0), 250.0))
                .isEqualTo(1.0);
    }

    @Nested
    @DisplayName("refuses")
    class Refuses {
        @ParameterizedTest
        @ValueSource(doubles = {Double.NaN, 122.9999, 332.0001, 0.0, Double.NEGATIVE_INFINITY})
        @DisplayName("a temperature for which the formula was not fitted")
        void aTemperature(double kelvin) {
            assertThat(MoistAir.coversTemperature(kelvin)).isFalse();
            assertThatExceptionOfType(OutsideModelException.class)
                    .isThrownBy(() -> MoistAir.saturationVapourPressure(kelvin))
                    .withMessage(
                            "temperature of saturated air must be from 123.0 to 332.0 K, but was "
                                    + kelvin
                                    + " K: the saturation formula over water was fitted there");
            assertThatExceptionOfType(OutsideModelException.class)
                    .isThrownBy(() -> MoistAir.relativeHumidity(100.0, kelvin));
        }

        @ParameterizedTest
        @ValueSource(doubles = {Double.NaN, 0.0, -1.0, 20000.0, Double.POSITIVE_INFINITY})
        @DisplayName("a vapour pressure that no dew point of its range has")
        void aVapourPressure(double pascal) {
            assertThatExceptionOfType(OutsideModelException.class)
                    .isThrownBy(() -> MoistAir.dewPoint(pascal))
                    .withMessageStartingWith("vapour pressure must be from ")
                    .withMessageEndingWith(
                            ", but was "
                                    + pascal
                                    + " Pa: its dew point must be from 123.0 to 332.0"
                                    + " K");
        }
    }
}
