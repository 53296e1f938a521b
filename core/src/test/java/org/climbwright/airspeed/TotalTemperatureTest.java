package org.climbwright.airspeed;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.within;
import static org.climbwright.testing.Agreement.closeTo;
import static org.climbwright.testing.Agreement.printedAs;

import org.climbwright.atmosphere.StandardAir;
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
        double felt = TotalTemperature.fromMach(mach, celsius + 273.15, recovery);
        // 1e-12 of a temperature of up to 800 K
        assertThat(felt - 273.15).is(closeTo(totalCelsius, 8e-10));
    }

    @ParameterizedTest(name = "{0}, {1}, {2}")
    @CsvFileSource(resources = "/airspeed/total-temperature.csv", useHeadersInDisplayName = true)
    @DisplayName("leads back to the air of the table, by Mach number and by true airspeed")
    void backToTheAir(double mach, double celsius, double recovery, String totalCelsius) {
        double felt = Double.parseDouble(totalCelsius) + 273.15;
        double air = celsius + 273.15;
        // 12 digits of the temperature felt
        assertThat(TotalTemperature.staticFromMach(felt, mach, recovery))
                .isCloseTo(air, within(8e-10));
        double tas = AirspeedConversion.tasFromMach(mach, air);
        assertThat(TotalTemperature.staticFromTas(felt, tas, recovery))
                .isCloseTo(air, within(8e-10));
        // an error of the felt temperature is one of 2.5 / (T r M) as large in the Mach number
        assertThat(TotalTemperature.machFromStatic(felt, air, recovery))
                .isCloseTo(mach, within(8e-10 * 2.5 / (air * recovery * mach)));
    }

    @ParameterizedTest(name = "{0}, {1} is {2}")
    @CsvFileSource(
            resources = "/airspeed/total-temperature-printed.csv",
            useHeadersInDisplayName = true)
    @DisplayName("is what a reader of a forum worked out, who took 0 °C as 273 K")
    void agreesWithPrint(double mach, double celsius, String totalCelsius) {
        double felt = TotalTemperature.fromMach(mach, celsius + 273.0, 1.0);
        assertThat(felt - 273.0).is(printedAs(totalCelsius));
    }

    @Test
    @DisplayName("is compared in 96 rows and a printed one")
    void rows() {
        assertThat(Table.rows("/airspeed/total-temperature.csv")).hasSize(96);
        assertThat(Table.rows("/airspeed/total-temperature-printed.csv")).hasSize(1);
    }

    @Test
    @DisplayName("of a probe that recovers next to nothing leaves no Mach number, and never NaN")
    void nextToNothing() {
        for (double recovery : new double[] {Double.MIN_VALUE, 2 * Double.MIN_VALUE}) {
            assertThat(TotalTemperature.hasMach(250.0, 250.0, recovery)).isFalse();
            assertThatExceptionOfType(OutsideModelException.class)
                    .isThrownBy(() -> TotalTemperature.machFromStatic(250.0, 250.0, recovery));
        }
        assertThat(TotalTemperature.machFromStatic(250.0, 250.0, Double.MIN_NORMAL)).isZero();
    }

    @Test
    @DisplayName("at rest, or of a probe that recovers nothing, is that of the air")
    void noRise() {
        assertThat(TotalTemperature.fromMach(0.0, 250.0, 1.0)).isEqualTo(250.0);
        assertThat(TotalTemperature.fromMach(0.8, 250.0, 0.0)).isEqualTo(250.0);
    }

    @ParameterizedTest
    @ValueSource(doubles = {Double.NaN, -0.01, 5.01, Double.POSITIVE_INFINITY})
    @DisplayName("is refused beyond Mach 5, and below zero")
    void mach(double mach) {
        assertThatExceptionOfType(OutsideModelException.class)
                .isThrownBy(() -> TotalTemperature.fromMach(mach, 250.0, 1.0))
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
                .isThrownBy(() -> TotalTemperature.fromMach(0.8, 250.0, recovery))
                .withMessage(
                        "recovery factor must be from 0.0 to 1.0, but was "
                                + recovery
                                + ": a probe recovers no more than all");
    }

    @Test
    @DisplayName("tells no air that the atmosphere does not have")
    void noSuchAir() {
        String why =
                " K: no air of the atmosphere feels so at that speed, with that recovery factor";
        assertThatExceptionOfType(OutsideModelException.class)
                .isThrownBy(() -> TotalTemperature.staticFromMach(120.0, 2.0, 1.0))
                .withMessage(
                        "static air temperature behind the one felt must be from 100.0 to 400.0 K,"
                                + " but was 66.66666666666667"
                                + why);
        assertThatExceptionOfType(OutsideModelException.class)
                .isThrownBy(() -> TotalTemperature.staticFromTas(500.0, 0.0, 1.0))
                .withMessage(
                        "static air temperature behind the one felt must be from 100.0 to 400.0 K,"
                                + " but was 500.0"
                                + why);
        assertThatExceptionOfType(OutsideModelException.class)
                .isThrownBy(() -> TotalTemperature.staticFromTas(250.0, -1.0, 1.0))
                .withMessageStartingWith("true airspeed must be from 0.0 to ");
        assertThatExceptionOfType(OutsideModelException.class)
                .isThrownBy(() -> TotalTemperature.staticFromTas(250.0, Double.NaN, 1.0))
                .withMessageContaining("but was NaN K");
        assertThat(TotalTemperature.coversMach(120.0, 2.0, 1.0)).isFalse();
        assertThat(TotalTemperature.coversMach(Double.NaN, 0.5, 1.0)).isFalse();
        assertThat(TotalTemperature.coversMach(250.0, 5.1, 1.0)).isFalse();
        assertThat(TotalTemperature.coversMach(250.0, 0.5, 1.1)).isFalse();
        assertThat(TotalTemperature.coversTas(500.0, 0.0, 1.0)).isFalse();
        assertThat(TotalTemperature.coversTas(250.0, -1.0, 1.0)).isFalse();
        assertThat(TotalTemperature.coversTas(250.0, 200.0, 1.1)).isFalse();
        assertThat(TotalTemperature.coversTas(250.0, 200.0, 1.0)).isTrue();
    }

    @Test
    @DisplayName("gives no Mach number where the probe is colder than the air, or feels nothing")
    void noMach() {
        assertThatExceptionOfType(OutsideModelException.class)
                .isThrownBy(() -> TotalTemperature.machFromStatic(249.0, 250.0, 1.0))
                .withMessage(
                        "recovery temperature must be from 250.0 to 1500.0 K, but was 249.0 K: a"
                                + " probe feels that of the air at rest, and more up to Mach 5");
        assertThatExceptionOfType(OutsideModelException.class)
                .isThrownBy(() -> TotalTemperature.machFromStatic(260.0, 250.0, 0.0))
                .withMessageEndingWith("a probe that recovers nothing does not feel the speed");
        assertThatExceptionOfType(OutsideModelException.class)
                .isThrownBy(() -> TotalTemperature.machFromStatic(Double.NaN, 250.0, 1.0));
        assertThat(TotalTemperature.hasMach(249.0, 250.0, 1.0)).isFalse();
        assertThat(TotalTemperature.hasMach(260.0, 250.0, 0.0)).isFalse();
        assertThat(TotalTemperature.hasMach(260.0, 99.0, 1.0)).isFalse();
        assertThat(TotalTemperature.hasMach(1501.0, 250.0, 1.0)).isFalse();
        assertThat(TotalTemperature.machFromStatic(250.0, 250.0, 0.9)).isZero();
    }

    @Test
    @DisplayName(
            "of 10 °C is that of -1.1 °C at 250 kn and 10,000 ft, of -8.6 °C at 300 kn and FL150")
    void tenDegrees() {
        assertThat(staticCelsius(250.0, 10000.0)).isCloseTo(-1.1, within(0.05));
        assertThat(staticCelsius(300.0, 15000.0)).isCloseTo(-8.6, within(0.05));
    }

    private static double staticCelsius(double knots, double feet) {
        double pressurePa = StandardAir.pressureFromAltitude(feet * 0.3048);
        double mach = AirspeedConversion.machFromCas(knots * 1852.0 / 3600.0, pressurePa);
        return TotalTemperature.staticFromMach(283.15, mach, 1.0) - 273.15;
    }
}
