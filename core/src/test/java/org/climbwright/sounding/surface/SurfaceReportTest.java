package org.climbwright.sounding.surface;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;
import static org.climbwright.sounding.surface.Absence.Cause.GROUP_ABSENT;
import static org.climbwright.sounding.surface.Absence.Cause.NOT_USABLE;
import static org.climbwright.sounding.surface.Absence.Cause.REPORTED_MISSING;
import static org.climbwright.sounding.surface.Reports.reportOf;

import java.io.IOException;
import java.time.LocalTime;
import java.util.List;
import org.climbwright.atmosphere.AirState;
import org.climbwright.quantity.altitude.GeopotentialAltitude;
import org.climbwright.sounding.ReadingProblem;
import org.climbwright.testing.Streams;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

@DisplayName("A report")
class SurfaceReportTest {

    @Nested
    @DisplayName("reads")
    class Reads {
        @Test
        @DisplayName("station, day and time, and never a month")
        void head() {
            SurfaceReport report = SurfaceReportReader.parse("K0CO 312359Z CLR");
            assertThat(report.station()).isEqualTo("K0CO");
            assertThat(report.dayOfMonth()).hasValue(31);
            assertThat(report.timeUtc()).hasValue(LocalTime.of(23, 59));
            assertThat(report.whyMissing(ReportElement.TIME)).isEmpty();
        }

        @ParameterizedTest(name = "{0}: automatic {1}, corrected {2}")
        @CsvSource({
            "LOWW 011200Z CAVOK, false, false",
            "METAR LOWW 011200Z AUTO CAVOK, true, false",
            "TTF METAR LOWW 011200Z CAVOK, false, false",
            "SPECI LOWW 011200Z CAVOK, false, false",
            "COR LOWW 011200Z CAVOK, false, true",
            "METAR COR LOWW 011200Z CAVOK, false, true",
            "METAR LOWW 011200Z COR CAVOK, false, true",
            "METAR LOWW COR 011200Z AUTO CAVOK, true, true",
            "METAR CYUL 011200Z CCA CAVOK, false, true",
            "LOWW 011200Z CAVOK 10/09 COR, false, true"
        })
        @DisplayName("how it was made, wherever that stands")
        void flags(String text, boolean automatic, boolean corrected) {
            SurfaceReport report = SurfaceReportReader.parse(text);
            assertThat(report.isAutomatic()).isEqualTo(automatic);
            assertThat(report.isCorrected()).isEqualTo(corrected);
            assertThat(report.isNil()).isFalse();
            assertThat(report.problems()).isEmpty();
        }

        @Test
        @DisplayName("its own text back, over several lines")
        void text() {
            String text = "LOWW 011200Z 27005KT\n     CAVOK 10/09";
            SurfaceReport report = SurfaceReportReader.parse("  " + text + " \n");
            assertThat(report.text()).isEqualTo(text);
            assertThat(report).hasToString(text);
            assertThat(report.staticAirTemperature().orElseThrow().inCelsius()).isEqualTo(10);
        }

        @ParameterizedTest(name = "{0} is {1} miles")
        @CsvSource({"2 1/2SM, 2.5", "1 10/16SM, 1.625", "20 15/16SM, 20.9375"})
        @DisplayName("visibility in miles and a fraction, told in two words")
        void twoWords(String words, double miles) {
            SurfaceReport report = reportOf("00000KT " + words + " BR");
            assertThat(report.visibility().orElseThrow().distance().inMetres())
                    .isCloseTo(miles * 1609.344, within(1e-9));
            assertThat(report.problems()).isEmpty();
        }

        @Test
        @DisplayName("the range of directions with its wind")
        void range() {
            SurfaceWind wind = reportOf("VRB03KT 250V320").wind().orElseThrow();
            assertThat(wind.rangeFrom().orElseThrow().inDegrees()).isEqualTo(250);
            assertThat(wind.rangeTo().orElseThrow().inDegrees()).isEqualTo(320);
        }

        @Test
        @DisplayName("groups between blanks of any kind, telegraph separators included")
        void blanks() {
            SurfaceReport report = reportOf("27005KT\t2\u001C1/2SM\u001E\u001FBR\r\nBKN010 10/09");
            assertThat(report.visibility()).hasValue(Visibility.parse("2 1/2SM"));
            assertThat(report.presentWeather()).containsExactly("BR");
            assertThat(report.problems()).isEmpty();
        }

        @ParameterizedTest(name = "{0}")
        @ValueSource(
                strings = {
                    "-RA", "FG", "VCSH", "HZ", "+TSRAGR", "FZDZ", "BCFG", "MIFG", "BLSN", "VCTS",
                    "-SHRASN", "UP", "SQ", "+FC", "TS", "PRFG"
                })
        @DisplayName("present weather as text")
        void weather(String group) {
            SurfaceReport report = reportOf("27005KT 4000 " + group + " BKN010");
            assertThat(report.presentWeather()).containsExactly(group);
            assertThat(report.problems()).isEmpty();
        }

        @ParameterizedTest(name = "{0}")
        @ValueSource(
                strings = {
                    "1200NE",
                    "R24/P6000FT",
                    "R25/0///81",
                    "R06L/1200V1800U",
                    "R24/P1500N",
                    "R/SNOCLO",
                    "RERA",
                    "RE//",
                    "WS ALL RWY",
                    "WS R24",
                    "WS RWY24L",
                    "WS ALL RWYS",
                    "WS R07L AND R07R",
                    "WS TKOF RWY16R",
                    "WS LDG RWY03L",
                    "NSW",
                    "AO2",
                    "AO2A",
                    "BLU",
                    "BLU+",
                    "WHT",
                    "GRN",
                    "YLO2",
                    "AMB",
                    "RED",
                    "BLACK",
                    "BLACKRED",
                    "88290195",
                    "W15/S3"
                })
        @DisplayName("a known group that makes no element here, and takes it for no other")
        void others(String group) {
            SurfaceReport report = reportOf("27005KT 6000 " + group + " BKN010 10/09 Q1013");
            assertThat(report.otherGroups()).containsExactly(group);
            assertThat(report.visibility()).hasValue(Visibility.parse("6000"));
            assertThat(report.presentWeather()).isEmpty();
            assertThat(report.cloudLayers()).containsExactly(CloudLayer.parse("BKN010"));
            assertThat(report.staticAirTemperature().orElseThrow().inCelsius()).isEqualTo(10);
            assertThat(report.problems()).isEmpty();
        }

        @ParameterizedTest(name = "{0} is {1}")
        @CsvSource({
            "CAVOK, CAVOK",
            "9999 SKC, SKY_CLEAR",
            "10SM CLR, CLEAR_BELOW_12000_FEET",
            "9999 NSC, NO_SIGNIFICANT_CLOUD",
            "9999 NCD, NO_CLOUD_DETECTED",
            "0100 VV001, OBSCURED",
            "0100 VV///, OBSCURED",
            "9999 FEW010, LAYERS",
            "9999 //////, NOT_REPORTED",
            "9999, NOT_REPORTED"
        })
        @DisplayName("each way to say that there is no cloud apart from the others")
        void sky(String groups, Sky sky) {
            SurfaceReport report = reportOf(groups);
            assertThat(report.sky()).isEqualTo(sky);
            assertThat(report.cloudLayers()).hasSize(sky == Sky.LAYERS ? 1 : 0);
            assertThat(report.whyMissing(ReportElement.CLOUD).isPresent())
                    .isEqualTo(sky == Sky.NOT_REPORTED);
            assertThat(report.problems()).isEmpty();
        }

        @Test
        @DisplayName("obscured sky and the layers told with it")
        void obscuredWithLayers() {
            SurfaceReport report = reportOf("0100 FG VV002 OVC010");
            assertThat(report.sky()).isEqualTo(Sky.OBSCURED);
            assertThat(report.verticalVisibility().orElseThrow().inFeet()).isEqualTo(200);
            assertThat(report.cloudLayers()).containsExactly(CloudLayer.parse("OVC010"));
        }

        @ParameterizedTest(name = "{0} is {1} and {2}")
        @CsvSource({
            "M05/M12, -5, -12",
            "M00/M01, 0, -1",
            "00/M00, 0, 0",
            "40/M05, 40, -5",
            "10/10, 10, 10",
            "21/, 21,",
            "10//, 10,",
            "//11, , 11",
            "M10//, -10,",
            "21///, 21,",
            "21/XX, 21,",
            "///07, , 7",
            "/07, , 7",
            "/////, ,",
            "///////, ,",
            "XX/XX, ,",
            "MM/MM, ,"
        })
        @DisplayName("temperature and dew point, each by itself")
        void temperatures(String group, Double temperature, Double dewPoint) {
            SurfaceReport report = reportOf("27005KT CAVOK " + group + " Q1013");
            assertThat(report.staticAirTemperature().map(t -> t.inCelsius()).orElse(null))
                    .isEqualTo(temperature);
            assertThat(report.dewPoint().map(t -> t.inCelsius()).orElse(null)).isEqualTo(dewPoint);
            assertThat(
                            report.whyMissing(ReportElement.TEMPERATURE)
                                    .map(Absence::cause)
                                    .orElse(null))
                    .isEqualTo(temperature == null ? REPORTED_MISSING : null);
            assertThat(report.whyMissing(ReportElement.DEW_POINT).map(Absence::cause).orElse(null))
                    .isEqualTo(dewPoint == null ? REPORTED_MISSING : null);
            assertThat(report.problems()).isEmpty();
        }

        // T00261015 with 03/M01: the example of AFMAN 15-111, 12 March 2019, remark 30
        @ParameterizedTest(name = "{0} with {1} is {2} and {3}")
        @CsvSource({
            "03/M01, T00261015, 2.6, -1.5",
            "18/18, T01800180, 18.0, 18.0",
            "45/05, T04500051, 45.0, 5.1",
            "M00/M02, T10041019, -0.4, -1.9",
            "M00/M00, T10021005, -0.2, -0.5",
            "M00/M00, T10001000, 0.0, 0.0",
            "00/M00, T00001000, 0.0, 0.0",
            "00/00, T00040000, 0.4, 0.0",
            "07/06, T00650055, 6.5, 5.5",
            "07/06, T0069, 6.9, 6.0",
            "07/, T0069, 6.9,"
        })
        @DisplayName("tenths of the remarks that round to the whole degrees, a half either way")
        void tenths(String group, String remark, double temperature, Double dewPoint) {
            SurfaceReport report =
                    reportOf("27005KT 10SM CLR " + group + " A2992 RMK AO2 " + remark);
            assertThat(report.staticAirTemperature().orElseThrow().inCelsius())
                    .isEqualTo(temperature);
            assertThat(report.dewPoint().map(t -> t.inCelsius()).orElse(null)).isEqualTo(dewPoint);
            assertThat(report.problems()).isEmpty();
        }

        @Test
        @DisplayName("the first of two QNHs, which agree within their rounding")
        void twoQnhs() {
            SurfaceReport report = reportOf("CAVOK 40/M05 Q1009 A2980");
            assertThat(report.qnh()).hasValue(ReportedQnh.parse("Q1009"));
            assertThat(report.problems()).isEmpty();
        }

        @Test
        @DisplayName("the QNH in inches where that in hectopascals is slashes")
        void secondUnit() {
            SurfaceReport report = reportOf("CAVOK 40/M05 Q//// A2980");
            assertThat(report.qnh()).hasValue(ReportedQnh.parse("A2980"));
            assertThat(report.whyMissing(ReportElement.QNH)).isEmpty();
        }
    }

    @Nested
    @DisplayName("tells what is missing:")
    class TellsWhatIsMissing {
        @ParameterizedTest(name = "{0} by {1}")
        @CsvSource({
            "WIND, /////KT",
            "WIND, /////",
            "WIND, 270//KT",
            "VISIBILITY, ////",
            "VISIBILITY, ////SM",
            "PRESENT_WEATHER, //",
            "CLOUD, //////",
            "CLOUD, ////////",
            "CLOUD, /////////",
            "VERTICAL_VISIBILITY, VV///",
            "TEMPERATURE, ///////",
            "DEW_POINT, 21///",
            "QNH, Q////",
            "QNH, A////"
        })
        @DisplayName("an element that the station says it does not know")
        void reported(ReportElement element, String group) {
            SurfaceReport report = reportOf(group);
            assertThat(report.whyMissing(element))
                    .hasValue(new Absence(element, REPORTED_MISSING, group, "reported as missing"));
            assertThat(report.problems()).isEmpty();
        }

        @ParameterizedTest(name = "{0}")
        @EnumSource(mode = EnumSource.Mode.EXCLUDE, names = "TIME")
        @DisplayName("an element of which there is no group")
        void absent(ReportElement element) {
            assertThat(reportOf("").whyMissing(element))
                    .hasValue(
                            new Absence(element, GROUP_ABSENT, "", "the report has no such group"));
        }

        @ParameterizedTest(name = "{0} by {1}: {2}")
        @CsvSource({
            "WIND, 2x005KT, not a wind",
            "WIND, 37005KT, 'direction must be from 0.0 to 360.0 deg, but was 370.0 deg'",
            "WIND, 00005KT, 'a wind from 000 has no speed, north is 360'",
            "WIND, 27020G15KT, a gust below the wind",
            "VISIBILITY, 11/2SM, not a visibility",
            "VISIBILITY, x0SM, not a visibility",
            "CLOUD, BKNx10, not a layer of cloud",
            "VERTICAL_VISIBILITY, VVx01, not a vertical visibility",
            "TEMPERATURE, 1x/08, not a temperature and a dew point",
            "DEW_POINT, 1x/08, not a temperature and a dew point",
            "TEMPERATURE, 99/08, no temperature of the free air",
            "DEW_POINT, 17/18, a dew point above the temperature",
            "QNH, Q10x9, not a QNH"
        })
        @DisplayName("an element whose group cannot be used, and lists the group as a problem")
        void notUsable(ReportElement element, String group, String reason) {
            SurfaceReport report = reportOf(group);
            assertThat(report.whyMissing(element))
                    .hasValue(new Absence(element, NOT_USABLE, group, reason));
            assertThat(report.problems())
                    .singleElement()
                    .satisfies(
                            problem -> {
                                assertThat(problem.text()).isEqualTo(group);
                                assertThat(problem.reason())
                                        .isEqualTo(reason + "; taken as missing");
                            });
        }

        @ParameterizedTest(name = "{0}")
        @ValueSource(strings = {"Q0849", "Q1101", "Q2992", "Q0000", "A2509", "A3249", "A1013"})
        @DisplayName("a QNH outside 850 to 1100 hPa, which is never taken as a number")
        void impossibleQnh(String group) {
            SurfaceReport report = reportOf("CAVOK 10/09 " + group);
            assertThat(report.qnh()).isEmpty();
            Absence absence = report.whyMissing(ReportElement.QNH).orElseThrow();
            assertThat(absence.cause()).isEqualTo(NOT_USABLE);
            assertThat(absence.text()).isEqualTo(group);
            assertThat(absence.reason()).startsWith("altimeter setting must be from ");
        }

        @Test
        @DisplayName("the dew point, not the temperature below it")
        void dewPointAbove() {
            SurfaceReport report = reportOf("CAVOK 17/18 Q1013");
            assertThat(report.staticAirTemperature().orElseThrow().inCelsius()).isEqualTo(17);
            assertThat(report.dewPoint()).isEmpty();
        }

        @Test
        @DisplayName("everything in a NIL report, by that word")
        void nil() {
            SurfaceReport report = SurfaceReportReader.parse("LOWW 011200Z NIL");
            assertThat(report.isNil()).isTrue();
            for (ReportElement element : ReportElement.values()) {
                assertThat(report.whyMissing(element).map(Absence::text).orElse("told"))
                        .isEqualTo(element == ReportElement.TIME ? "told" : "NIL");
            }
            assertThat(report.problems()).isEmpty();
        }

        @Test
        @DisplayName("the time too where NIL has none")
        void nilWithoutTime() {
            SurfaceReport report = SurfaceReportReader.parse("METAR LOWW NIL=");
            assertThat(report.isNil()).isTrue();
            assertThat(report.timeUtc()).isEmpty();
            assertThat(report.dayOfMonth()).isEmpty();
            assertThat(report.whyMissing(ReportElement.TIME).orElseThrow())
                    .hasToString("no time: reported as missing, \"NIL\"");
        }

        @Test
        @DisplayName("nothing of an illegible group that a legible one follows")
        void secondChance() {
            SurfaceReport report = reportOf("CAVOK 1x/08 10/08 Q10x9 Q1013");
            assertThat(report.whyMissing(ReportElement.TEMPERATURE)).isEmpty();
            assertThat(report.whyMissing(ReportElement.QNH)).isEmpty();
            assertThat(report.problems()).hasSize(2);
        }

        @Test
        @DisplayName("slashes beside other cloud, kept as a group of no meaning here")
        void slashesBesideCloud() {
            SurfaceReport report = reportOf("9999 FEW020 //////");
            assertThat(report.cloudLayers()).hasSize(1);
            assertThat(report.otherGroups()).containsExactly("//////");
        }
    }

    @Nested
    @DisplayName("refuses")
    class Refuses {
        @ParameterizedTest(name = "\"{0}\"")
        @CsvSource({
            "'', a station of four letters where this text has the end of it",
            "METAR, a station of four letters where this text has the end of it",
            "SAUS70 KWBC 011200, a station of four letters where this text has \"SAUS70\"",
            "TAF LOWW 011200Z CAVOK, a station of four letters where this text has \"TAF\"",
            "loww 011200Z CAVOK, a station of four letters where this text has \"loww\"",
            "AUTO 011200Z, a station of four letters where this text has \"AUTO\"",
            "RMKS 011200Z 9999, a station of four letters where this text has \"RMKS\"",
            "THIS IS NO REPORT, a time of observation where this text has \"IS\"",
            "LOWW, a time of observation where this text has the end of it",
            "LOWW 27005KT CAVOK, a time of observation where this text has \"27005KT\"",
            "LOWW 001200Z, a possible time of observation where this text has \"001200Z\"",
            "LOWW 321200Z, a possible time of observation where this text has \"321200Z\"",
            "LOWW 012400Z, a possible time of observation where this text has \"012400Z\"",
            "LOWW 011260Z, a possible time of observation where this text has \"011260Z\"",
            "LOWW 011100Z 0112/0218 CAVOK, 'an observation, which has no period of validity,"
                    + " where this text has \"0112/0218\"'"
        })
        @DisplayName("a text that is no report, and says what it lacks")
        void noReport(String text, String lacks) {
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> SurfaceReportReader.parse(text))
                    .withMessage("a report needs " + lacks);
        }

        @ParameterizedTest(name = "{0} {1}")
        @CsvSource({
            "07/06, T00760055, does not round to what the body has; left out",
            "07/06, T00690066, does not round to what the body has; left out",
            "18/18, T01780182, a dew point above the temperature; left out",
            "18/18, T0176, a dew point above the temperature; left out",
            "18/, T01800170, the body has no dew point to agree with; left out",
            "/////, T01800170, the body has no temperature to agree with; left out",
            "'', T00111006, the body has no temperature to agree with; left out",
            "M00/M02, T00021019, does not round to what the body has; left out",
            "M00/M00, T10021006, does not round to what the body has; left out",
            "00/M02, T10051019, does not round to what the body has; left out",
            "04/00, T00411002, does not round to what the body has; left out",
            "04/M00, T00410002, does not round to what the body has; left out",
            "18/17, T21800170, the digit of a sign must be 0 or 1; left out"
        })
        @DisplayName("tenths that do not fit the whole degrees, which stay")
        void tenths(String group, String remark, String reason) {
            SurfaceReport report = reportOf("10SM CLR " + group + " A2992 RMK " + remark);
            SurfaceReport without = reportOf("10SM CLR " + group + " A2992");
            assertThat(report.staticAirTemperature()).isEqualTo(without.staticAirTemperature());
            assertThat(report.dewPoint()).isEqualTo(without.dewPoint());
            assertThat(report.problems())
                    .singleElement()
                    .satisfies(
                            problem -> {
                                assertThat(problem.text()).isEqualTo(remark);
                                assertThat(problem.reason()).isEqualTo(reason);
                            });
        }

        @Test
        @DisplayName("a second QNH that is another by more than both are rounded")
        void otherQnh() {
            SurfaceReport report = reportOf("CAVOK 40/M05 Q1009 A2983");
            assertThat(report.qnh()).hasValue(ReportedQnh.parse("Q1009"));
            assertThat(report.problems())
                    .containsExactly(
                            new ReadingProblem(
                                    1,
                                    "QNH",
                                    "A2983",
                                    "differs from the first by more than both are rounded; the"
                                            + " first stays"));
        }

        @ParameterizedTest(name = "{0}")
        @CsvSource({
            "27005KT 28006KT, wind, 28006KT, a second wind; the first stays",
            "9999 8000, visibility, 8000, a second visibility; the first stays",
            "VV001 VV002, vertical visibility, VV002, a second vertical visibility; the first"
                    + " stays",
            "10/09 11/10, temperature, 11/10, a second temperature; the first stays",
            "250V320, wind, 250V320, a range of directions without its wind; left out",
            "27005KT 250V420, wind, 250V420, 'direction must be from 0.0 to 360.0 deg, but was"
                    + " 420.0 deg; left out'",
            "FEW010 NSC, cloud, NSC, something else is told of the sky; left out",
            "SKC NSC, cloud, NSC, something else is told of the sky; left out",
            "CAVOK FEW010, cloud, CAVOK, contradicts the cloud behind it; left out",
            "CAVOK FEW010 BKN020, cloud, CAVOK, contradicts the cloud behind it; left out",
            "NCD VV001, cloud, NCD, contradicts the cloud behind it; left out",
            "BLAHBLAH, line, BLAHBLAH, not a group that is known here; left out",
            "///, line, ///, not a group that is known here; left out",
            "NIL 27005KT, line, 27005KT, NIL has nothing behind it; not read",
            "CAVOK= 8000 BR, line, 8000 BR, stands behind the end of the report; not read"
        })
        @DisplayName("what is told a second time, or fits nothing")
        void leftOut(String groups, String field, String text, String reason) {
            assertThat(reportOf(groups).problems())
                    .containsExactly(new ReadingProblem(1, field, text, reason));
        }

        @Test
        @DisplayName("to let no cloud stand beside cloud")
        void betterACloudTooMany() {
            SurfaceReport report = reportOf("CAVOK FEW010CB");
            assertThat(report.sky()).isEqualTo(Sky.LAYERS);
            assertThat(report.cloudLayers()).containsExactly(CloudLayer.parse("FEW010CB"));
            assertThat(report.visibility()).hasValue(Visibility.parse("CAVOK"));
        }
    }

    @Test
    @DisplayName("and its parts are asked as their Javadoc shows")
    void javadocExamples() {
        SurfaceReport report = SurfaceReportReader.parse("OIFM 011200Z 31008KT CAVOK 40/M05 Q1009");
        assertThat(report.qnh().orElseThrow().setting().inHectopascals()).isEqualTo(1009.0);
        AirState air = report.air(GeopotentialAltitude.ofFeet(5000));
        assertThat(air.staticAirTemperature()).hasToString("313.15 K (40.0 °C)");
        assertThat(report.whyMissing(ReportElement.PRESENT_WEATHER).orElseThrow())
                .hasToString("no present weather: the report has no such group");
        CloudLayer layer = CloudLayer.parse("FEW017CB");
        assertThat(layer.base().orElseThrow().inFeet()).isEqualTo(1700.0);
        assertThat(layer.type()).hasToString("CUMULONIMBUS");
        SurfaceWind wind = SurfaceWind.parse("34013G26KT 300V360");
        assertThat(wind.speed().inKnots()).isEqualTo(13.0);
        assertThat(wind.direction().orElseThrow().inDegrees()).isEqualTo(340.0);
        assertThat(Visibility.parse("2 1/2SM").distance().inMetres()).isEqualTo(4023.36);
        assertThat(Visibility.parse("9999")).hasToString("10000.0 m or more");
    }

    @Test
    @DisplayName("is equal to another with the same text only")
    void equality() {
        assertThat(reportOf("CAVOK"))
                .isEqualTo(reportOf("CAVOK"))
                .hasSameHashCodeAs(reportOf("CAVOK"));
        assertThat(reportOf("CAVOK"))
                .isNotEqualTo(reportOf("9999"))
                .isNotEqualTo("LOWW 011200Z CAVOK");
    }

    @Test
    @DisplayName("gives lists that nobody changes")
    void isImmutable() {
        SurfaceReport report = reportOf("27005KT 4000 RA BKN010 R24/P6000FT BLAH");
        assertThat(report.presentWeather()).isUnmodifiable().hasSize(1);
        assertThat(report.cloudLayers()).isUnmodifiable().hasSize(1);
        assertThat(report.otherGroups()).isUnmodifiable().hasSize(1);
        assertThat(report.problems()).isUnmodifiable().hasSize(1);
    }

    @Test
    @DisplayName("goes through a stream and comes back with all it says")
    void roundTrip() throws IOException {
        for (String line : Reports.lines()) {
            SurfaceReport report = SurfaceReportReader.parse(line);
            SurfaceReport back = Streams.roundTrip(report);
            assertThat(back).isEqualTo(report).isNotSameAs(report);
            assertThat(back.wind()).isEqualTo(report.wind());
            assertThat(back.visibility()).isEqualTo(report.visibility());
            assertThat(back.cloudLayers()).isEqualTo(report.cloudLayers());
            assertThat(back.staticAirTemperature()).isEqualTo(report.staticAirTemperature());
            assertThat(back.qnh()).isEqualTo(report.qnh());
            for (ReportElement element : ReportElement.values()) {
                assertThat(back.whyMissing(element)).isEqualTo(report.whyMissing(element));
            }
        }
    }

    @Test
    @DisplayName("is refused from a stream in which somebody made its text no report")
    void tampered() {
        SurfaceReport report = reportOf("CAVOK");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Streams.tampered(report, "011200Z", "451200Z"))
                .withMessageStartingWith("a report needs a possible time of observation");
    }

    @Test
    @DisplayName("has the reasons that its parts give in a stream too")
    void partsRoundTrip() throws IOException {
        Absence absence = reportOf("").whyMissing(ReportElement.QNH).orElseThrow();
        assertThat(Streams.roundTrip(absence)).isEqualTo(absence);
        assertThat(absence).hasToString("no QNH: the report has no such group");
        SurfaceReportReading reading =
                SurfaceReportReader.read(List.of("LOWW 011200Z CAVOK BLAH", "no report"));
        assertThat(Streams.roundTrip(reading)).isEqualTo(reading);
    }
}
