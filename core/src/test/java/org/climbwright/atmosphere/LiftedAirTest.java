package org.climbwright.atmosphere;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import org.climbwright.quantity.OutsideModelException;
import org.climbwright.quantity.altitude.GeopotentialAltitude;
import org.climbwright.quantity.humidity.RelativeHumidity;
import org.climbwright.quantity.pressure.StaticPressure;
import org.climbwright.quantity.temperature.DewPoint;
import org.climbwright.quantity.temperature.StaticAirTemperature;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

@DisplayName("The lifting condensation level")
class LiftedAirTest {
    private static final AirState SURFACE =
            AirState.of(StaticPressure.ofHectopascals(1000), StaticAirTemperature.ofCelsius(30));
    private static final AirState MOIST = SURFACE.withDewPoint(DewPoint.ofCelsius(20));

    @Test
    @DisplayName("is as high as the example in its documentation says")
    void example() {
        LiftingCondensationLevel base = LiftingCondensationLevel.of(MOIST);

        assertThat(base.height().inFeet()).isCloseTo(4197.6, within(0.05));
        assertThat(base.heightByRule().inFeet()).isCloseTo(4000.0, within(1e-8));
        assertThat(base.errorOfRule().inFeet()).isCloseTo(-197.6, within(0.05));
        assertThat(base.parcel()).isEqualTo(MOIST);
    }

    @Test
    @DisplayName("answers plain doubles and values alike, to the last bit")
    void doorsAgree() {
        LiftingCondensationLevel base = LiftingCondensationLevel.of(MOIST);
        double t = MOIST.temperatureK();
        double e = MOIST.vapourPressurePa();
        double p = MOIST.pressurePa();

        assertThat(base.temperature().inKelvins())
                .isEqualTo(LiftedAir.condensationTemperature(t, e, p));
        assertThat(base.pressure().inPascals()).isEqualTo(LiftedAir.condensationPressure(t, e, p));
        assertThat(base.height().inMetres()).isEqualTo(LiftedAir.heightToCondensation(t, e, p));
        assertThat(base.heightByRule().inMetres())
                .isEqualTo(LiftedAir.heightByRule(t, MOIST.dewPoint().orElseThrow().inKelvins()));
    }

    @Test
    @DisplayName("of saturated air is at the air itself")
    void saturated() {
        AirState fog = SURFACE.withRelativeHumidity(RelativeHumidity.ofRatio(1.0));
        LiftingCondensationLevel base = LiftingCondensationLevel.of(fog);

        assertThat(base.pressure()).isEqualTo(fog.staticPressure());
        assertThat(base.temperature()).isEqualTo(fog.staticAirTemperature());
        assertThat(base.height().inMetres()).isZero();
        assertThat(base.heightByRule().inMetres()).isCloseTo(0.0, within(1e-9));
    }

    @Test
    @DisplayName("in an atmosphere is at its pressure, where that air is as high as it is")
    void inAnAtmosphere() {
        LiftingCondensationLevel base = LiftingCondensationLevel.of(MOIST);
        AirState there = base.airIn(Atmosphere.standard());

        assertThat(there.staticPressure()).isEqualTo(base.pressure());
        // between the parcel at 111 m and the level standard air is thinner than well mixed air of
        // 30 °C: by the ratio of the temperatures, some 5 % and the vapour's 1 %
        double standardM =
                there.geopotentialAltitude().orElseThrow().inMetres()
                        - StandardAir.altitudeFromPressure(100000.0);
        assertThat(base.height().inMetres() / standardM).isBetween(1.03, 1.07);
    }

    @Test
    @DisplayName("equals the level of equal air, and reads as pressure and temperature")
    void values() {
        LiftingCondensationLevel base = LiftingCondensationLevel.of(MOIST);
        assertThat(base)
                .isEqualTo(LiftingCondensationLevel.of(MOIST))
                .hasSameHashCodeAs(LiftingCondensationLevel.of(MOIST))
                .isNotEqualTo(
                        LiftingCondensationLevel.of(SURFACE.withDewPoint(DewPoint.ofCelsius(19))))
                .isNotEqualTo(null)
                .isNotEqualTo("level");
        assertThat(base.toString())
                .startsWith("lifting condensation level at 8642")
                .endsWith(" °C)")
                .contains(base.pressure().toString())
                .contains(base.temperature().toString());
    }

    @Test
    @DisplayName("needs no altitude, and does not change with one")
    void altitude() {
        AirState high = MOIST.withGeopotentialAltitude(GeopotentialAltitude.ofMetres(111));
        assertThat(LiftingCondensationLevel.of(high).height())
                .isEqualTo(LiftingCondensationLevel.of(MOIST).height());
    }

    @Nested
    @DisplayName("refuses")
    class Refuses {
        @Test
        @DisplayName("air whose humidity is not known, and says so")
        void unknown() {
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> LiftingCondensationLevel.of(SURFACE))
                    .withMessage(
                            "a condensation level needs the humidity, but it is not known: air of"
                                    + " 1000.00 hPa and 30.00 °C, humidity not known, geopotential"
                                    + " altitude not known");
        }

        @Test
        @DisplayName("dry air, which condenses nowhere")
        void dry() {
            assertThatExceptionOfType(OutsideModelException.class)
                    .isThrownBy(() -> LiftingCondensationLevel.of(SURFACE.withoutVapour()))
                    .withMessage(
                            "relative humidity of lifted air must be from 1.0E-9 to 1.0000001, but"
                                + " was 0.0: dry air has no condensation level, and saturated air"
                                + " is at it");
        }

        @Test
        @DisplayName("more than saturated air")
        void supersaturated() {
            double vapour = 1.01 * MoistAir.saturationVapourPressure(303.15);
            assertThatExceptionOfType(OutsideModelException.class)
                    .isThrownBy(() -> LiftedAir.condensationTemperature(303.15, vapour, 1e5))
                    .withMessageStartingWith(
                            "relative humidity of lifted air must be from 1.0E-9 to 1.0000001, but"
                                    + " was 1.01");
        }

        @Test
        @DisplayName("air so dry that it would condense where saturation is not known any more")
        void tooDry() {
            double vapour = 1e-4 * MoistAir.saturationVapourPressure(130.0);
            assertThat(LiftedAir.covers(130.0, vapour)).isTrue();
            assertThatExceptionOfType(OutsideModelException.class)
                    .isThrownBy(() -> LiftedAir.condensationTemperature(130.0, vapour, 1e5))
                    .withMessageStartingWith("vapour pressure of lifted air must be from ")
                    .withMessageEndingWith(
                            " Pa, but was "
                                    + vapour
                                    + " Pa: drier air condenses only where the"
                                    + " saturation formula ends");
        }

        @ParameterizedTest
        @ValueSource(doubles = {Double.NaN, 122.9, 332.1, 0.0})
        @DisplayName("a temperature where saturation is not known")
        void temperature(double kelvin) {
            assertThatExceptionOfType(OutsideModelException.class)
                    .isThrownBy(() -> LiftedAir.condensationTemperature(kelvin, 1.0, 1e5))
                    .withMessageStartingWith("temperature of saturated air must be from 123.0");
            assertThatExceptionOfType(OutsideModelException.class)
                    .isThrownBy(() -> LiftedAir.condensationPressure(kelvin, 1.0, 1e5));
            assertThatExceptionOfType(OutsideModelException.class)
                    .isThrownBy(() -> LiftedAir.heightToCondensation(kelvin, 1.0, 1e5));
        }

        @ParameterizedTest
        @ValueSource(doubles = {Double.NaN, -1.0, 100000.0})
        @DisplayName("a vapour pressure that cannot be")
        void vapour(double pascal) {
            assertThatExceptionOfType(OutsideModelException.class)
                    .isThrownBy(() -> LiftedAir.condensationTemperature(303.15, pascal, 1e5))
                    .withMessage(
                            "vapour pressure must be from 0.0 to 100000.0 Pa, but was "
                                    + pascal
                                    + " Pa: moist air is never vapour alone");
        }
    }
}
