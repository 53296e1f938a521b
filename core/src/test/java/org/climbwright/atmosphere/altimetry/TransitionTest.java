package org.climbwright.atmosphere.altimetry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.within;

import org.climbwright.atmosphere.altimetry.TransitionLevel.MinimumLayer;
import org.climbwright.quantity.OutsideModelException;
import org.climbwright.quantity.altitude.AltitudeOnQnh;
import org.climbwright.quantity.altitude.PressureAltitude;
import org.climbwright.quantity.pressure.AltimeterSetting;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

@DisplayName("Transition and lowest usable flight level")
class TransitionTest {
    private static final AltimeterSetting STANDARD = AltimeterSetting.standard();

    @Test
    @DisplayName("follow the example of the documentation: FL55, 26 ft above 5,000 ft on 996 hPa")
    void example() {
        TransitionLevel level =
                TransitionLevel.above(
                        AltitudeOnQnh.ofFeet(5000),
                        AltimeterSetting.ofHectopascals(996),
                        MinimumLayer.NONE);
        assertThat(level.level()).isEqualTo(PressureAltitude.ofFlightLevel(55));
        assertThat(level.layer().inFeet()).isCloseTo(26.0, within(0.5));
    }

    @Test
    @DisplayName("on the standard setting need no layer, or exactly 1,000 ft of it")
    void onTheStandardSetting() {
        AltitudeOnQnh altitude = AltitudeOnQnh.ofFeet(6000);
        TransitionLevel thin = TransitionLevel.above(altitude, STANDARD, MinimumLayer.NONE);
        assertThat(thin.level()).isEqualTo(PressureAltitude.ofFlightLevel(60));
        assertThat(thin.layer().inFeet()).isZero();
        TransitionLevel thick =
                TransitionLevel.above(altitude, STANDARD, MinimumLayer.ONE_THOUSAND_FEET);
        assertThat(thick.level()).isEqualTo(PressureAltitude.ofFlightLevel(70));
        assertThat(thick.layer().inFeet()).isCloseTo(1000.0, within(1e-9));
    }

    @Test
    @DisplayName("one foot above a flight level need the next")
    void justAbove() {
        assertThat(
                        TransitionLevel.above(
                                        AltitudeOnQnh.ofFeet(6001), STANDARD, MinimumLayer.NONE)
                                .level())
                .isEqualTo(PressureAltitude.ofFlightLevel(65));
    }

    @Test
    @DisplayName("jump by the change of the reading at the transition altitude")
    void jump() {
        AltimeterSetting qnh = AltimeterSetting.ofHectopascals(996);
        // 5,000 ft on 996 hPa is 5,474 ft on 1013.25 hPa: FL55 is 26 ft above
        assertThat(Altimetry.readingChange(qnh, STANDARD).inFeet()).isCloseTo(474.4, within(0.05));
    }

    @ParameterizedTest(name = "on {0} inHg: FL{1} by regulation, FL{2} by manual")
    @CsvSource({
        "31.00, 180, 180",
        "29.92, 180, 180",
        "29.919, 185, 190",
        "29.91, 185, 190",
        "29.42, 185, 190",
        "29.41, 190, 190",
        "28.92, 190, 190",
        "28.91, 195, 200",
        "27.92, 200, 200"
    })
    @DisplayName("differ between the two tables that are in use")
    void twoTables(double inches, double regulation, double manual) {
        AltimeterSetting setting = AltimeterSetting.ofInchesOfMercury(inches);
        assertThat(LowestUsableFlightLevel.REGULATION.at(setting).inFlightLevels())
                .isEqualTo(regulation);
        assertThat(
                        LowestUsableFlightLevel.AERONAUTICAL_INFORMATION_MANUAL
                                .at(setting)
                                .inFlightLevels())
                .isEqualTo(manual);
    }

    @Nested
    @DisplayName("are refused")
    class Refused {
        @ParameterizedTest
        @ValueSource(doubles = {26.91, 26.0, 25.105})
        @DisplayName("below the table of the regulation, down to the lowest setting that there is")
        void belowTheRegulation(double inches) {
            refused(
                    LowestUsableFlightLevel.REGULATION,
                    AltimeterSetting.ofInchesOfMercury(inches),
                    "26.92");
        }

        @ParameterizedTest
        @ValueSource(doubles = {27.91, 26.92})
        @DisplayName("below the table of the manual")
        void belowTheManual(double inches) {
            refused(
                    LowestUsableFlightLevel.AERONAUTICAL_INFORMATION_MANUAL,
                    AltimeterSetting.ofInchesOfMercury(inches),
                    "27.92");
        }

        @Test
        @DisplayName("on 850 hPa, which would round down to no setting at all")
        void theLowestSetting() {
            AltimeterSetting lowest = AltimeterSetting.ofHectopascals(850);
            for (LowestUsableFlightLevel table : LowestUsableFlightLevel.values()) {
                assertThatExceptionOfType(OutsideModelException.class)
                        .isThrownBy(() -> table.at(lowest))
                        .withMessageStartingWith("altimeter setting must be from 2");
                assertThatExceptionOfType(OutsideModelException.class)
                        .isThrownBy(() -> table.adjustment(lowest));
            }
        }

        private void refused(
                LowestUsableFlightLevel table, AltimeterSetting setting, String lowest) {
            assertThatExceptionOfType(OutsideModelException.class)
                    .isThrownBy(() -> table.at(setting))
                    .withMessage(
                            "altimeter setting must be from "
                                    + lowest
                                    + " to 32.49 inHg, but was "
                                    + setting.inInchesOfMercury()
                                    + " inHg: the table ends there");
            assertThatExceptionOfType(OutsideModelException.class)
                    .isThrownBy(() -> table.adjustment(setting));
        }
    }
}
