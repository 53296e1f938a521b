package org.climbwright.atmosphere.altimetry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import org.climbwright.atmosphere.StandardAir;
import org.climbwright.quantity.OutsideModelException;
import org.climbwright.quantity.altitude.AltitudeOnQnh;
import org.climbwright.quantity.altitude.GeopotentialAltitude;
import org.climbwright.quantity.altitude.PressureAltitude;
import org.climbwright.quantity.pressure.AltimeterSetting;
import org.climbwright.quantity.pressure.StaticPressure;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

@DisplayName("An altimeter")
class AltimetryTest {
    @Test
    @DisplayName("on the QNH of an aerodrome shows its elevation there")
    void showsTheElevation() {
        StaticPressure atTheField = StaticPressure.ofHectopascals(948.3);
        AltimeterSetting qnh = Altimetry.qnh(atTheField, GeopotentialAltitude.ofFeet(1486));

        AltitudeOnQnh shown = Altimetry.altitudeOnQnh(Altimetry.pressureAltitude(atTheField), qnh);

        assertThat(shown.inFeet()).isCloseTo(1486.0, within(1e-9 / 0.3048));
    }

    @Test
    @DisplayName("on the standard setting shows the pressure altitude")
    void standardSetting() {
        PressureAltitude level = PressureAltitude.ofFlightLevel(85);
        AltimeterSetting standard = AltimeterSetting.ofHectopascals(1013.25);

        assertThat(Altimetry.altitudeOnQnh(level, standard).inFeet()).isEqualTo(8500.0);
        assertThat(Altimetry.pressureAltitude(AltitudeOnQnh.ofFeet(8500), standard))
                .isEqualTo(level);
    }

    @Test
    @DisplayName("reads higher when it is set higher, by as much at every level")
    void settingMovesAllReadingsAlike() {
        double low = Altimetry.altitudeOnQnh(1000.0, 99000.0);
        double high = Altimetry.altitudeOnQnh(1000.0, 103000.0);
        double aloft =
                Altimetry.altitudeOnQnh(9000.0, 103000.0)
                        - Altimetry.altitudeOnQnh(9000.0, 99000.0);
        assertThat(high).isGreaterThan(low);
        assertThat(aloft).isCloseTo(high - low, within(1e-9));
    }

    @Test
    @DisplayName("answers plain doubles and values alike, to the last bit")
    void doorsAgree() {
        PressureAltitude level = PressureAltitude.ofFeet(7321);
        AltimeterSetting qnh = AltimeterSetting.ofHectopascals(987.6);
        double qnhPa = qnh.inPascals();
        StaticPressure pressure = StaticPressure.ofPascals(91234.5);
        assertThat(Altimetry.altitudeOnQnh(level, qnh).inMetres())
                .isEqualTo(Altimetry.altitudeOnQnh(level.inMetres(), qnhPa));
        assertThat(Altimetry.pressureAltitude(AltitudeOnQnh.ofMetres(3000), qnh).inMetres())
                .isEqualTo(Altimetry.pressureAltitude(3000.0, qnhPa));
        assertThat(Altimetry.pressureAltitude(pressure).inMetres())
                .isEqualTo(StandardAir.altitudeFromPressure(91234.5));
        assertThat(Altimetry.qnh(pressure, GeopotentialAltitude.ofMetres(500)).inPascals())
                .isEqualTo(Altimetry.qnh(91234.5, 500.0));
    }

    @Nested
    @DisplayName("refuses")
    class Refuses {
        @Test
        @DisplayName("a setting that standard air does not have, by its pressure")
        void aSetting() {
            assertThatExceptionOfType(OutsideModelException.class)
                    .isThrownBy(() -> Altimetry.altitudeOnQnh(0.0, Double.NaN))
                    .withMessageStartingWith("static pressure must be from ")
                    .withMessageContaining(", but was NaN Pa: ");
            assertThatExceptionOfType(OutsideModelException.class)
                    .isThrownBy(() -> Altimetry.pressureAltitude(0.0, 180000.0));
            assertThatExceptionOfType(OutsideModelException.class)
                    .isThrownBy(() -> Altimetry.qnh(101325.0, 6000.0));
        }

        @ParameterizedTest
        @ValueSource(doubles = {Double.NaN, Double.POSITIVE_INFINITY, -10001.0})
        @DisplayName("an altitude that is none, in one sentence")
        void anAltitude(double metres) {
            assertThatExceptionOfType(OutsideModelException.class)
                    .isThrownBy(() -> Altimetry.altitudeOnQnh(metres, 1e5))
                    .withMessage(
                            "altitude must be from -10000.0 to 100000.0 m, but was "
                                    + metres
                                    + " m: no altimeter of an aeroplane shows it");
            assertThatExceptionOfType(OutsideModelException.class)
                    .isThrownBy(() -> Altimetry.pressureAltitude(metres, 1e5));
        }

        @Test
        @DisplayName("a QNH that no altimeter can be set to")
        void aQnh() {
            StaticPressure high = StaticPressure.ofHectopascals(700);
            GeopotentialAltitude low = GeopotentialAltitude.ofFeet(0);
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> Altimetry.qnh(high, low))
                    .withMessageContaining("altimeter setting")
                    .withMessageContaining("Pa");
        }
    }
}
