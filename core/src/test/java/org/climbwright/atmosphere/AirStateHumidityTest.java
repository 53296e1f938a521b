package org.climbwright.atmosphere;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import org.climbwright.atmosphere.altimetry.VerticalRates;
import org.climbwright.quantity.OutsideModelException;
import org.climbwright.quantity.altitude.GeopotentialAltitude;
import org.climbwright.quantity.altitude.PressureAltitude;
import org.climbwright.quantity.humidity.MixingRatio;
import org.climbwright.quantity.humidity.RelativeHumidity;
import org.climbwright.quantity.pressure.StaticPressure;
import org.climbwright.quantity.temperature.DewPoint;
import org.climbwright.quantity.temperature.FrostPoint;
import org.climbwright.quantity.temperature.StaticAirTemperature;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

@DisplayName("The humidity of the air at one place")
class AirStateHumidityTest {
    private static final AirState WARM =
            AirState.of(StaticPressure.ofHectopascals(1000), StaticAirTemperature.ofCelsius(30))
                    .withGeopotentialAltitude(GeopotentialAltitude.ofMetres(111));
    private static final AirState COLD =
            AirState.of(StaticPressure.ofHectopascals(500), StaticAirTemperature.ofCelsius(-30));

    @Test
    @DisplayName("comes from a dew point, and leaves everything else as it is")
    void dewPoint() {
        AirState air = WARM.withDewPoint(DewPoint.ofCelsius(20));

        assertThat(air.vapourPressurePa()).isEqualTo(MoistAir.saturationVapourPressure(293.15));
        assertThat(air.vapourPressure().orElseThrow().inPascals())
                .isEqualTo(air.vapourPressurePa());
        assertThat(air.dewPoint().orElseThrow().inCelsius()).isCloseTo(20.0, within(1e-11));
        assertThat(air.staticPressure()).isEqualTo(WARM.staticPressure());
        assertThat(air.staticAirTemperature()).isEqualTo(WARM.staticAirTemperature());
        assertThat(air.geopotentialAltitude()).isEqualTo(WARM.geopotentialAltitude());
        // 55.04 % by Bolton's formula, condensation-level.csv; within its 0.1 %
        assertThat(air.relativeHumidity().orElseThrow().inPercent())
                .isCloseTo(55.044, within(0.055));
    }

    @Test
    @DisplayName("comes from a relative humidity")
    void relativeHumidity() {
        AirState air = WARM.withRelativeHumidity(RelativeHumidity.ofPercent(40));
        assertThat(air.vapourPressurePa())
                .isEqualTo(0.4 * MoistAir.saturationVapourPressure(WARM.temperatureK()));
        assertThat(air.relativeHumidity().orElseThrow().inPercent()).isCloseTo(40.0, within(1e-12));
    }

    @Test
    @DisplayName("comes from a mixing ratio")
    void mixingRatio() {
        AirState air = WARM.withMixingRatio(MixingRatio.ofGramsPerKilogram(10));
        assertThat(air.mixingRatio().orElseThrow().inGramsPerKilogram())
                .isCloseTo(10.0, within(1e-13));
        assertThat(air.vapourPressurePa())
                .isEqualTo(MoistAir.vapourPressureFromMixingRatio(0.01, 100000.0));
    }

    @Test
    @DisplayName("comes from a frost point, which lies above the dew point")
    void frostPoint() {
        AirState air = COLD.withFrostPoint(FrostPoint.ofCelsius(-35));
        assertThat(air.vapourPressurePa())
                .isEqualTo(MoistAir.saturationVapourPressureOverIce(238.14999999999998));
        assertThat(air.frostPoint().orElseThrow().inCelsius()).isCloseTo(-35.0, within(1e-11));
        assertThat(air.dewPoint().orElseThrow().inCelsius()).isBetween(-39.0, -38.0);
    }

    @Test
    @DisplayName("over ice can be above 100 % in air that is not saturated over water")
    void betweenIceAndWater() {
        // cirrus air: saturated over water, its frost point above its temperature
        AirState air = COLD.withRelativeHumidity(RelativeHumidity.ofRatio(1.0));
        assertThat(air.frostPoint().orElseThrow().inKelvins()).isGreaterThan(air.temperatureK());
        assertThat(air.dewPoint().orElseThrow().inKelvins())
                .isLessThanOrEqualTo(air.temperatureK())
                .isCloseTo(air.temperatureK(), within(1e-12));
        assertThat(air.relativeHumidity().orElseThrow().inRatio()).isEqualTo(1.0);
    }

    @Test
    @DisplayName("that is none is known, and has neither dew point nor frost point")
    void dry() {
        AirState air = WARM.withDewPoint(DewPoint.ofCelsius(20)).withoutVapour();
        assertThat(air.isHumidityKnown()).isTrue();
        assertThat(air.relativeHumidity()).contains(RelativeHumidity.ofRatio(0.0));
        assertThat(air.mixingRatio().orElseThrow().inKilogramsPerKilogram()).isZero();
        assertThat(air.dewPoint()).isEmpty();
        assertThat(air.frostPoint()).isEmpty();
        assertThat(air.virtualTemperatureK()).isEqualTo(air.temperatureK());
    }

    @Test
    @DisplayName("that is not known has no answer at all")
    void unknown() {
        assertThat(WARM.vapourPressure()).isEmpty();
        assertThat(WARM.dewPoint()).isEmpty();
        assertThat(WARM.frostPoint()).isEmpty();
        assertThat(WARM.relativeHumidity()).isEmpty();
        assertThat(WARM.mixingRatio()).isEmpty();
    }

    @Test
    @DisplayName("of warm moist air has no frost point")
    void noFrostPoint() {
        assertThat(WARM.withDewPoint(DewPoint.ofCelsius(0.02)).frostPoint()).isEmpty();
        assertThat(WARM.withDewPoint(DewPoint.ofCelsius(0.0)).frostPoint()).isPresent();
    }

    @Test
    @DisplayName("saturated but for rounding is taken as saturated")
    void saturatedButForRounding() {
        double saturated = MoistAir.saturationVapourPressure(290.0);
        AirState air = AirState.ofSi(1e5, 290.0, saturated * (1.0 + 9e-10), Double.NaN);
        assertThat(air.dewPoint().orElseThrow().inKelvins()).isEqualTo(290.0);
        assertThat(air.relativeHumidity().orElseThrow().inRatio()).isEqualTo(1.0);
    }

    @Test
    @DisplayName("makes the air higher per metre of pressure altitude, and lighter")
    void effects() {
        AirState moist = WARM.withDewPoint(DewPoint.ofCelsius(25));
        assertThat(VerticalRates.geopotentialPerPressureAltitude(moist))
                .isGreaterThan(VerticalRates.geopotentialPerPressureAltitude(WARM));
        assertThat(moist.densityKgPerM3()).isLessThan(WARM.densityKgPerM3());
        assertThat(moist.densityAltitude()).isGreaterThan(WARM.densityAltitude());
    }

    @Test
    @DisplayName("that is unknown costs at most 2.1 % of a geometric rate in air of 35 °C")
    void unknownCosts() {
        AirState air =
                AirState.of(
                        StaticPressure.ofHectopascals(1013.25), StaticAirTemperature.ofCelsius(35));
        AirState wet = air.withRelativeHumidity(RelativeHumidity.ofRatio(1.0));
        assertThat(
                        VerticalRates.geometricPerPressureAltitude(wet)
                                        / VerticalRates.geometricPerPressureAltitude(air)
                                - 1.0)
                .isCloseTo(0.021, within(0.0005));
    }

    @Test
    @DisplayName(
            "does not touch the deviations: from standard at that pressure, or at that altitude")
    void deviations() {
        AirState air = Atmosphere.standard().at(PressureAltitude.ofFeet(5000));
        assertThat(air.isaDeviation().inKelvins()).isZero();
        assertThat(air.isaDeviationAtAltitude().orElseThrow().inKelvins())
                .isCloseTo(0.0, within(1e-12));
        assertThat(COLD.isaDeviationAtAltitude()).isEmpty();
        AirState lower = air.withGeopotentialAltitude(GeopotentialAltitude.ofFeet(4000));
        assertThat(lower.isaDeviation().inKelvins()).isZero();
        // 1,000 ft of 6.5 K/km
        assertThat(lower.isaDeviationAtAltitude().orElseThrow().inKelvins())
                .isCloseTo(-1.9812, within(1e-10));
    }

    @Nested
    @DisplayName("refuses")
    class Refuses {
        @Test
        @DisplayName("a dew point above the temperature")
        void dewPointAboveTemperature() {
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> WARM.withDewPoint(DewPoint.ofCelsius(31)))
                    .withMessage(
                            "dew point must not be above the temperature of 303.15 K (30.0 °C), but"
                                    + " was 304.15 K (31.0 °C)");
        }

        @Test
        @DisplayName("a dew point where saturation is not known")
        void dewPointOutside() {
            assertThatExceptionOfType(OutsideModelException.class)
                    .isThrownBy(() -> WARM.withDewPoint(DewPoint.ofKelvins(122)))
                    .withMessage(
                            "temperature of saturated air must be from 123.0 to 332.0 K, but was"
                                    + " 122.0 K: the saturation formula over water was fitted"
                                    + " there");
        }

        @Test
        @DisplayName("a relative humidity where saturation is not known")
        void relativeHumidityOutside() {
            AirState hot = AirState.ofSi(1e5, 335.0, Double.NaN, Double.NaN);
            assertThatExceptionOfType(OutsideModelException.class)
                    .isThrownBy(() -> hot.withRelativeHumidity(RelativeHumidity.ofRatio(0.5)));
        }

        @Test
        @DisplayName("a frost point so far above the temperature that water would condense")
        void frostPointAbove() {
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> COLD.withFrostPoint(FrostPoint.ofCelsius(-25)))
                    .withMessageStartingWith(
                            "vapour pressure must be at most that of saturation, with a dew point"
                                    + " not above the temperature of 243.14999999999998 K, but was"
                                    + " 63.");
        }

        @Test
        @DisplayName("a mixing ratio of more than saturated air")
        void mixingRatioAbove() {
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> COLD.withMixingRatio(MixingRatio.ofGramsPerKilogram(5)))
                    .withMessage(
                            "mixing ratio must not be above that of saturated air of"
                                    + " 243.14999999999998 K (-30.0 °C) and 50000.0 Pa (500.0 hPa),"
                                    + " but was 0.005 kg/kg (5.0 g/kg)");
        }

        @ParameterizedTest
        @ValueSource(doubles = {1.0 + 2e-7, 1.01, 2.0})
        @DisplayName("more vapour than saturation")
        void supersaturated(double ratio) {
            double vapour = ratio * MoistAir.saturationVapourPressure(290.0);
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> AirState.ofSi(1e5, 290.0, vapour, Double.NaN))
                    .withMessage(
                            "vapour pressure must be at most that of saturation, with a dew point"
                                    + " not above the temperature of 290.0 K, but was "
                                    + vapour
                                    + " Pa");
        }
    }
}
