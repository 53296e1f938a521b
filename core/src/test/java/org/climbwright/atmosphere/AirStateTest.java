package org.climbwright.atmosphere;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import org.climbwright.atmosphere.altimetry.VerticalRates;
import org.climbwright.quantity.OutsideModelException;
import org.climbwright.quantity.altitude.PressureAltitude;
import org.climbwright.quantity.pressure.StaticPressure;
import org.climbwright.quantity.temperature.StaticAirTemperature;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

@DisplayName("The air at one place")
class AirStateTest {
    private static final double UNKNOWN = Double.NaN;

    @Test
    @DisplayName("answers as the example in its documentation says")
    void example() {
        AirState air = Atmosphere.standard().at(PressureAltitude.ofFlightLevel(300));

        assertThat(air.staticAirTemperature()).hasToString("228.714 K (-44.43599999999998 °C)");
    }

    @Test
    @DisplayName("tells pressure, temperature and all that follows from them")
    void follows() {
        AirState air =
                AirState.of(StaticPressure.ofHectopascals(850), StaticAirTemperature.ofCelsius(30));

        assertThat(air.pressurePa()).isEqualTo(85000.0);
        assertThat(air.temperatureK()).isEqualTo(303.15);
        assertThat(air.virtualTemperatureK()).isEqualTo(303.15);
        assertThat(air.densityKgPerM3()).isEqualTo(DryAir.density(85000.0, 303.15));
        assertThat(air.speedOfSoundMps()).isEqualTo(DryAir.speedOfSound(303.15));
        // a row of the table of density altitudes
        assertThat(air.densityAltitude().inFeet()).isCloseTo(7535.8, within(0.05));
        assertThat(air.pressureAltitude().inFeet()).isCloseTo(4781.2, within(0.05));
        double standard = StandardAir.temperatureFromPressure(85000.0);
        assertThat(air.isaDeviation().inKelvins()).isEqualTo(303.15 - standard);
        assertThat(VerticalRates.geopotentialPerPressureAltitude(air)).isEqualTo(303.15 / standard);
    }

    @Test
    @DisplayName("given by pressure and temperature alone is of unknown humidity and altitude")
    void ofUnknownHumidityAndAltitude() {
        AirState air =
                AirState.of(StaticPressure.ofHectopascals(850), StaticAirTemperature.ofCelsius(30));

        assertThat(air.isHumidityKnown()).isFalse();
        assertThat(air.relativeHumidity()).isEmpty();
        assertThat(air.dewPoint()).isEmpty();
        assertThat(air.geopotentialAltitude()).isEmpty();
        assertThat(air.geometricAltitude()).isEmpty();
        assertThat(air.gravityMps2()).isEmpty();
    }

    @Test
    @DisplayName("of unknown humidity has no dew point and no relative humidity, and dry density")
    void unknownHumidity() {
        AirState air = AirState.ofSi(85000.0, 303.15, UNKNOWN, 1500.0);

        assertThat(air.isHumidityKnown()).isFalse();
        assertThat(air.relativeHumidity()).isEmpty();
        assertThat(air.dewPoint()).isEmpty();
        assertThat(air.densityKgPerM3()).isEqualTo(DryAir.density(85000.0, 303.15));
        assertThat(air.geopotentialAltitude().orElseThrow().inMetres()).isEqualTo(1500.0);
        assertThat(air.geometricAltitude().orElseThrow().inMetres())
                .isEqualTo(Geopotential.geometricFromGeopotential(1500.0));
        assertThat(air.gravityMps2())
                .hasValue(Geopotential.gravity(Geopotential.geometricFromGeopotential(1500.0)));
    }

    @Test
    @DisplayName("that is moist is lighter, and saturated at its dew point")
    void moist() {
        double vapour = MoistAir.saturationVapourPressure(293.15);
        AirState air = AirState.ofSi(100000.0, 303.15, vapour, UNKNOWN);

        assertThat(air.dewPoint().orElseThrow().inCelsius()).isCloseTo(20.0, within(1e-9));
        assertThat(air.relativeHumidity().orElseThrow().inRatio())
                .isEqualTo(MoistAir.relativeHumidity(vapour, 303.15));
        assertThat(air.virtualTemperatureK())
                .isEqualTo(MoistAir.virtualTemperature(303.15, vapour, 100000.0))
                .isGreaterThan(303.15);
        assertThat(air.densityKgPerM3())
                .isEqualTo(DryAir.density(100000.0, air.virtualTemperatureK()));
        assertThat(air.kinematicViscosityM2PerS())
                .isEqualTo(DryAir.dynamicViscosity(303.15) / air.densityKgPerM3());
        double standard = StandardAir.temperatureFromPressure(100000.0);
        assertThat(VerticalRates.geopotentialPerPressureAltitude(air))
                .isEqualTo(air.virtualTemperatureK() / standard);
    }

    @Test
    @DisplayName("equals air of the same four numbers, known or not")
    void equality() {
        AirState air = AirState.ofSi(85000.0, 303.15, UNKNOWN, UNKNOWN);
        assertThat(air)
                .isEqualTo(AirState.ofSi(85000.0, 303.15, UNKNOWN, UNKNOWN))
                .hasSameHashCodeAs(AirState.ofSi(85000.0, 303.15, UNKNOWN, UNKNOWN))
                .isNotEqualTo(AirState.ofSi(85000.1, 303.15, UNKNOWN, UNKNOWN))
                .isNotEqualTo(AirState.ofSi(85000.0, 303.16, UNKNOWN, UNKNOWN))
                .isNotEqualTo(AirState.ofSi(85000.0, 303.15, 0.0, UNKNOWN))
                .isNotEqualTo(AirState.ofSi(85000.0, 303.15, UNKNOWN, 0.0))
                .isNotEqualTo(null)
                .isNotEqualTo("air");
        assertThat(AirState.ofSi(85000.0, 303.15, -0.0, -0.0))
                .isEqualTo(AirState.ofSi(85000.0, 303.15, 0.0, 0.0));
    }

    @Test
    @DisplayName("says what is not known")
    void text() {
        assertThat(AirState.ofSi(85000.0, 303.15, UNKNOWN, UNKNOWN))
                .hasToString(
                        "air of 850.00 hPa and 30.00 °C, humidity not known, geopotential altitude"
                                + " not known");
        assertThat(AirState.ofSi(85000.0, 303.15, 1200.0, 1500.0))
                .hasToString(
                        "air of 850.00 hPa and 30.00 °C, vapour pressure 1200.00 Pa, geopotential"
                                + " altitude 4921 ft");
        assertThat(AirState.ofSi(85000.0, 273.15 - 1e-9, UNKNOWN, UNKNOWN).toString())
                .contains(" 0.00 °C");
    }

    @Nested
    @DisplayName("refuses")
    class Refuses {
        @ParameterizedTest
        @ValueSource(doubles = {Double.NaN, 0.0, -1.0, Double.POSITIVE_INFINITY})
        @DisplayName("a pressure or a temperature that cannot be")
        void cannotBe(double value) {
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> AirState.ofSi(value, 288.15, 0.0, 0.0))
                    .withMessage(
                            "static pressure must be a finite number above 0.0 Pa, but was "
                                    + value
                                    + " Pa");
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> AirState.ofSi(101325.0, value, 0.0, 0.0))
                    .withMessage(
                            "static air temperature must be a finite number above 0.0 K, but was "
                                    + value
                                    + " K");
        }

        @ParameterizedTest
        @ValueSource(doubles = {-1.0, 101325.0, 2e5, Double.POSITIVE_INFINITY})
        @DisplayName("more vapour than air, or less than none")
        void vapour(double pascal) {
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> AirState.ofSi(101325.0, 288.15, pascal, 0.0))
                    .withMessage(
                            "vapour pressure must be from 0.0 Pa to less than the static pressure,"
                                    + " but was "
                                    + pascal
                                    + " Pa");
        }

        @ParameterizedTest
        @ValueSource(doubles = {Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY})
        @DisplayName("an altitude without end")
        void altitude(double metres) {
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> AirState.ofSi(101325.0, 288.15, 0.0, metres))
                    .withMessage("geopotential altitude must be finite, but was " + metres + " m");
        }

        @Test
        @DisplayName("to compare with standard air where there is none")
        void outsideStandardAir() {
            AirState thin = AirState.ofSi(0.5, 200.0, 0.0, UNKNOWN);
            outsideModel(thin::pressureAltitude);
            outsideModel(thin::isaDeviation);
            outsideModel(() -> VerticalRates.geopotentialPerPressureAltitude(thin));
            AirState cold = AirState.ofSi(50000.0, 99.0, 1.0, UNKNOWN);
            outsideModel(cold::densityKgPerM3);
            outsideModel(cold::speedOfSoundMps);
            outsideModel(cold::relativeHumidity);
            outsideModel(cold::dynamicViscosityPaS);
            outsideModel(cold::kinematicViscosityM2PerS);
            outsideModel(cold::thermalConductivityWPerMK);
            outsideModel(cold::densityRatio);
        }

        private void outsideModel(Runnable question) {
            assertThatExceptionOfType(OutsideModelException.class).isThrownBy(question::run);
        }
    }
}
