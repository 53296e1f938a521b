package org.climbwright.sounding.surface;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatIllegalStateException;
import static org.assertj.core.api.Assertions.within;
import static org.climbwright.sounding.surface.Reports.reportOf;

import java.util.List;
import org.climbwright.atmosphere.AirState;
import org.climbwright.quantity.altitude.GeopotentialAltitude;
import org.climbwright.quantity.altitude.PressureAltitude;
import org.climbwright.quantity.temperature.DewPoint;
import org.climbwright.quantity.temperature.StaticAirTemperature;
import org.climbwright.sounding.Sounding;
import org.climbwright.sounding.SoundingLevel;
import org.climbwright.sounding.Soundings;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;

@DisplayName("The air of a report")
class SurfaceAirTest {
    private static final double NO = Double.NaN;

    @ParameterizedTest(name = "{0}")
    @CsvFileSource(resources = "/sounding/qnh.csv", useHeadersInDisplayName = true)
    @DisplayName("has the pressure of the barometer, or less by what QNH is rounded down")
    void pressure(String sounding, double heightM, double pressureHpa, double qnhHpa) {
        double pressure =
                reportOf("CAVOK 10/09 Q" + String.format("%04d", (int) qnhHpa))
                                .air(GeopotentialAltitude.ofMetres(heightM))
                                .pressurePa()
                        / 100.0;
        // the table has QNH to 0.01 hPa, which is as much at the aerodrome or less
        assertThat(pressureHpa - pressure)
                .isCloseTo((qnhHpa - (int) qnhHpa) * slope(pressureHpa, qnhHpa), within(0.006));
        assertThat(pressureHpa - pressure).isBetween(-0.006, 1.0);
    }

    /** How much the pressure at the aerodrome changes with QNH: (p / QNH)^(1 - R L / g). */
    private static double slope(double pressureHpa, double qnhHpa) {
        return Math.pow(pressureHpa / qnhHpa, 1.0 - 287.05287 * 0.0065 / 9.80665);
    }

    @ParameterizedTest(name = "{0} at {1} m")
    @CsvSource({
        "Q1009, 0",
        "Q1009, 1000",
        "Q0950, 2500",
        "Q1050, -400",
        "Q1013, 4000",
        "A2992, 1655",
        "A3063, 300"
    })
    @DisplayName("has the pressure of the altimeter equation in its closed form")
    void closedForm(String group, double heightM) {
        // p^k = QNH^k - P0^k (L / T0) h with k = R L / g, constants of ICAO Doc 7488
        double k = 287.05287 * 0.0065 / 9.80665;
        double qnhHpa =
                group.startsWith("Q")
                        ? Double.parseDouble(group.substring(1))
                        : Double.parseDouble(group.substring(1)) / 100.0 * 33.86388640341;
        double expected =
                Math.pow(
                        Math.pow(qnhHpa, k) - Math.pow(1013.25, k) * 0.0065 / 288.15 * heightM,
                        1.0 / k);
        AirState air = reportOf("CAVOK 10/09 " + group).air(GeopotentialAltitude.ofMetres(heightM));
        assertThat(air.pressurePa() / 100.0).isCloseTo(expected, within(1e-9));
    }

    @Test
    @DisplayName("has the temperature and the dew point of the report, at the elevation")
    void parts() {
        AirState air = reportOf("CAVOK 40/M05 Q1009").air(GeopotentialAltitude.ofMetres(1550));
        assertThat(air.staticAirTemperature()).isEqualTo(StaticAirTemperature.ofCelsius(40));
        assertThat(air.dewPoint().orElseThrow().inCelsius()).isCloseTo(-5.0, within(1e-6));
        assertThat(air.geopotentialAltitude()).hasValue(GeopotentialAltitude.ofMetres(1550));
        assertThat(air.isHumidityKnown()).isTrue();
    }

    @Test
    @DisplayName("has no humidity where the dew point is not known")
    void noHumidity() {
        AirState air = reportOf("CAVOK 40/ Q1009").air(GeopotentialAltitude.ofMetres(1550));
        assertThat(air.isHumidityKnown()).isFalse();
        assertThat(air.dewPoint()).isEmpty();
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource({
        "CAVOK Q1009, 'no temperature: the report has no such group'",
        "CAVOK ///05 Q1009, 'no temperature: reported as missing, \"///05\"'",
        "CAVOK 40/05, 'no QNH: the report has no such group'",
        "CAVOK 40/05 Q////, 'no QNH: reported as missing, \"Q////\"'",
        "CAVOK 40/05 Q10z9, 'no QNH: not a QNH, \"Q10z9\"'",
        "NIL, 'no QNH: reported as missing, \"NIL\"'"
    })
    @DisplayName("does not exist without temperature and QNH, and the refusal says why")
    void noAir(String groups, String why) {
        assertThatIllegalStateException()
                .isThrownBy(() -> reportOf(groups).air(GeopotentialAltitude.ofMetres(100)))
                .withMessage("air needs temperature and QNH, but the report of LOWW has " + why);
    }

    @Nested
    @DisplayName("under an ascent")
    class Joined {
        // standard pressure at 100 m is 1001.29 hPa: QNH 1013 gives 1001.04 hPa there
        private final GeopotentialAltitude elevation = GeopotentialAltitude.ofMetres(100);
        private final SurfaceReport report = reportOf("27010MPS CAVOK 20/15 Q1013");

        @Test
        @DisplayName("is its lowest level, and above it the ascent is as it was")
        void joined() {
            SoundingLevel ground = level(1003, 100, 18);
            SoundingLevel low = level(950, 560, 15);
            SoundingLevel high = level(900, 1010, 12);
            Sounding sounding = Sounding.of("ST", "2019-07-01T12", List.of(ground, low, high));
            Sounding joined = report.joinedWith(sounding, elevation);
            assertThat(joined.station()).isEqualTo("ST");
            assertThat(joined.launch()).isEqualTo("2019-07-01T12");
            assertThat(joined.levels()).hasSize(3).endsWith(low, high);
            SoundingLevel lowest = joined.levels().get(0);
            assertThat(lowest.staticPressure()).hasValue(report.air(elevation).staticPressure());
            assertThat(lowest.geopotentialAltitude()).hasValue(elevation);
            assertThat(lowest.staticAirTemperature()).hasValue(StaticAirTemperature.ofCelsius(20));
            assertThat(lowest.dewPoint()).hasValue(DewPoint.ofCelsius(15));
            assertThat(lowest.wind().orElseThrow().eastwardMps()).isCloseTo(10, within(1e-12));
        }

        @ParameterizedTest(name = "{0}")
        @CsvSource({"VRB03KT CAVOK 20/ Q1013", "270P99KT CAVOK 20/ Q1013", "CAVOK 20/ Q1013"})
        @DisplayName("has no wind and no dew point where the report tells none to compute with")
        void partsMissing(String groups) {
            Sounding joined =
                    reportOf(groups)
                            .joinedWith(
                                    Sounding.of("", "", List.of(level(900, 1010, 12))), elevation);
            assertThat(joined.levels().get(0).wind()).isEmpty();
            assertThat(joined.levels().get(0).dewPoint()).isEmpty();
        }

        @Test
        @DisplayName("leaves out levels of its pressure and more, and those below it by height")
        void leftOut() {
            double pressure = report.air(elevation).pressurePa() / 100.0;
            SoundingLevel same = level(pressure, NO, 18);
            SoundingLevel high = level(900, 1010, 12);
            SoundingLevel windBelow = SoundingLevel.ofSi(NO, 100, NO, NO, 1, 1);
            SoundingLevel windAbove = SoundingLevel.ofSi(NO, 300, NO, NO, 1, 1);
            Sounding sounding = Sounding.of("", "", List.of(same, high, windBelow, windAbove));
            assertThat(report.joinedWith(sounding, elevation).levels())
                    .hasSize(3)
                    .endsWith(high, windAbove);
        }

        @Test
        @DisplayName("leaves out the ground of the ascent within 1 hPa, the rounding of QNH")
        void sameGround() {
            // 1000.1 hPa is lower than the report's 1001.04 hPa, at the elevation itself
            SoundingLevel ground = level(1000.1, 100, 18);
            SoundingLevel high = level(900, 1010, 12);
            Sounding sounding = Sounding.of("", "", List.of(ground, high));
            assertThat(report.joinedWith(sounding, elevation).levels()).hasSize(2).endsWith(high);
        }

        @Test
        @DisplayName("keeps a level of lower pressure without a height")
        void withoutHeight() {
            SoundingLevel near = level(1000.9, NO, 18);
            Sounding sounding = Sounding.of("", "", List.of(near));
            assertThat(report.joinedWith(sounding, elevation).levels()).endsWith(near);
        }

        @Test
        @DisplayName("refuses an ascent of other weather, or another elevation, and names both")
        void refused() {
            Sounding sounding = Sounding.of("", "", List.of(level(1000.0, 100, 18)));
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> report.joinedWith(sounding, elevation))
                    .withMessageMatching(
                            "a level of lower pressure than 1001\\.\\d\\d hPa at the aerodrome"
                                    + " must be above its elevation of 100 m, but is a level of"
                                    + " 1000\\.00 hPa, 100 m, 18\\.0 °C: not the same elevation, or"
                                    + " not the same weather");
        }

        @Test
        @DisplayName("refuses a report without temperature, in the words of its air")
        void noTemperature() {
            Sounding sounding = Sounding.of("", "", List.of(level(900, 1010, 12)));
            assertThatIllegalStateException()
                    .isThrownBy(() -> reportOf("CAVOK Q1013").joinedWith(sounding, elevation))
                    .withMessageContaining("no temperature");
        }

        @Test
        @DisplayName("makes an atmosphere that has the report's temperature at its pressure")
        void atmosphere() {
            Sounding sounding = Soundings.profile("v11035_vienna_winter");
            GeopotentialAltitude vienna = GeopotentialAltitude.ofMetres(183);
            SurfaceReport warm = reportOf("27010MPS CAVOK 08/01 Q1025");
            Sounding joined = warm.joinedWith(sounding, vienna);
            PressureAltitude ground = warm.air(vienna).pressureAltitude();
            assertThat(joined.atmosphere().at(ground).staticAirTemperature().inCelsius())
                    .isCloseTo(8.0, within(1e-9));
            PressureAltitude aloft = PressureAltitude.ofFeet(10000);
            assertThat(joined.atmosphere().at(aloft)).isEqualTo(sounding.atmosphere().at(aloft));
        }

        private SoundingLevel level(double hpa, double metres, double celsius) {
            return SoundingLevel.ofSi(hpa * 100.0, metres, celsius + 273.15, NO, NO, NO);
        }
    }
}
