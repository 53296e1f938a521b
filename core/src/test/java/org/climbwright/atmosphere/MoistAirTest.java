package org.climbwright.atmosphere;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import org.climbwright.quantity.OutsideModelException;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

@DisplayName("Moist air")
class MoistAirTest {
    @Test
    @DisplayName("answers as the example in its documentation says")
    void example() {
        double vapourPa = MoistAir.saturationVapourPressure(293.15);
        assertThat(Double.toString(MoistAir.relativeHumidity(vapourPa, 303.15)))
                .startsWith("0.5508");
        assertThat(Double.toString(MoistAir.mixingRatio(vapourPa, 100000.0))).startsWith("0.01489");
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
            assertThat(MoistAir.coversWater(kelvin)).isFalse();
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
        @ValueSource(doubles = {Double.NaN, -0.001, 1.001, 55.0})
        @DisplayName("a relative humidity that is no ratio from dry to saturated")
        void aRelativeHumidity(double ratio) {
            assertThatExceptionOfType(OutsideModelException.class)
                    .isThrownBy(() -> MoistAir.vapourPressureFromRelativeHumidity(ratio, 290.0))
                    .withMessage(
                            "relative humidity must be from 0.0 to 1.0, but was "
                                    + ratio
                                    + ": a ratio: dry air has 0, saturated air 1");
        }

        @ParameterizedTest
        @ValueSource(doubles = {Double.NaN, -0.001, 1000.1, Double.POSITIVE_INFINITY})
        @DisplayName("a mixing ratio that cannot be")
        void aMixingRatio(double ratio) {
            assertThatExceptionOfType(OutsideModelException.class)
                    .isThrownBy(() -> MoistAir.vapourPressureFromMixingRatio(ratio, 1e5))
                    .withMessage(
                            "mixing ratio must be from 0.0 to 1000.0 kg/kg, but was "
                                    + ratio
                                    + " kg/kg: air is never vapour alone");
        }

        @ParameterizedTest
        @ValueSource(doubles = {Double.NaN, -1.0, 100000.0, Double.POSITIVE_INFINITY})
        @DisplayName("more vapour than air, or less than none")
        void vapourAlone(double pascal) {
            String words =
                    "vapour pressure must be from 0.0 to 100000.0 Pa, but was "
                            + pascal
                            + " Pa: moist air is never vapour alone";
            assertThatExceptionOfType(OutsideModelException.class)
                    .isThrownBy(() -> MoistAir.mixingRatio(pascal, 1e5))
                    .withMessage(words);
            assertThatExceptionOfType(OutsideModelException.class)
                    .isThrownBy(() -> MoistAir.virtualTemperature(290.0, pascal, 1e5))
                    .withMessage(words);
            assertThatExceptionOfType(OutsideModelException.class)
                    .isThrownBy(() -> MoistAir.density(1e5, 290.0, pascal))
                    .withMessage(words);
        }

        @ParameterizedTest
        @ValueSource(doubles = {Double.NaN, -1.0, 1e6 + 1})
        @DisplayName("a vapour pressure that no air has, when asked how humid it is")
        void notEvenVapour(double pascal) {
            assertThatExceptionOfType(OutsideModelException.class)
                    .isThrownBy(() -> MoistAir.relativeHumidity(pascal, 290.0))
                    .withMessageStartingWith("vapour pressure must be from 0.0 to 1000000.0 Pa");
        }

        @ParameterizedTest
        @ValueSource(doubles = {Double.NaN, 0.0, -1.0, Double.POSITIVE_INFINITY})
        @DisplayName("a temperature that no air has, and a pressure that is none")
        void noTemperature(double value) {
            assertThatExceptionOfType(OutsideModelException.class)
                    .isThrownBy(() -> MoistAir.virtualTemperature(value, 0.0, 1e5))
                    .withMessage(
                            "static air temperature must be from 1.0 to 1000.0 K, but was "
                                    + value
                                    + " K: no air of the atmosphere is outside");
            assertThatExceptionOfType(OutsideModelException.class)
                    .isThrownBy(() -> MoistAir.vapourPressureFromMixingRatio(0.01, value))
                    .withMessageStartingWith("static pressure must be from ");
            assertThatExceptionOfType(OutsideModelException.class)
                    .isThrownBy(() -> MoistAir.mixingRatio(0.0, value))
                    .withMessageStartingWith("static pressure must be from ");
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
