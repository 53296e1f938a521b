package org.climbwright.sounding.surface;

import static org.assertj.core.api.Assertions.assertThat;
import static org.climbwright.sounding.surface.Absence.Cause.REPORTED_MISSING;
import static org.climbwright.sounding.surface.Reports.reportOf;

import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

@DisplayName("A forecast behind a report")
class ForecastBehindReportTest {
    @ParameterizedTest(name = "{0}")
    @CsvSource({
        "METAR YMML 011200Z AUTO 25012KT //// // ////// 18/07 Q1016 FM1300 16012KT 3000 RA BKN008,"
                + " VISIBILITY PRESENT_WEATHER CLOUD",
        "METAR YBBN 011200Z AUTO 18010KT //// // ////// 18/07 Q//// FM1300 16012KT CAVOK Q1016,"
                + " VISIBILITY PRESENT_WEATHER CLOUD QNH",
        "YSSY 011200Z AUTO /////KT //// // ////// 12/10 Q1013 FM1300 27010G25KT 9999 NSC,"
                + " WIND VISIBILITY PRESENT_WEATHER CLOUD"
    })
    @DisplayName("fills in nothing that the station reports as missing")
    void fillsInNothing(String text, String missing) {
        SurfaceReport report = SurfaceReportReader.parse(text);
        List<ReportElement> reported =
                Arrays.stream(ReportElement.values())
                        .filter(
                                element ->
                                        report.whyMissing(element)
                                                .map(Absence::cause)
                                                .filter(REPORTED_MISSING::equals)
                                                .isPresent())
                        .toList();
        assertThat(reported)
                .isEqualTo(
                        Arrays.stream(missing.split(" ", -1)).map(ReportElement::valueOf).toList());
        assertThat(report.presentWeather()).isEmpty();
        assertThat(report.cloudLayers()).isEmpty();
        assertThat(report.sky()).isEqualTo(Sky.NOT_REPORTED);
        assertThat(report.problems()).isEmpty();
    }

    @ParameterizedTest(name = "... {0}")
    @ValueSource(
            strings = {
                "TEMPO 8000 -SHRA BKN010 Q0999",
                "TEMPO1314 8000",
                "BECMG FM1300 8000",
                "INTER 8000 SHRA",
                "NOSIG 8000",
                "PROB30 8000",
                "PROB 40 8000",
                "FM1300 27010G25KT 8000",
                "FM011300 27010G25KT 8000",
                "FM 1300 8000",
                "AT1300 8000 RA",
                "TL1400 8000 RA",
                "GRADU 8000",
                "RAPID 8000",
                "FCST 8000",
                "TREND 8000",
                "TTF FM1300 8000",
                "RMK A2980 8000 12/11",
                "RMKS CB SW 8000"
            })
    @DisplayName("and remarks change nothing of the observation, in whatever form they begin")
    void changesNothing(String rest) {
        SurfaceReport report = reportOf("27005KT 9999 SCT016 27/24 Q1008 " + rest);
        SurfaceReport alone = reportOf("27005KT 9999 SCT016 27/24 Q1008");
        assertThat(report.wind()).isEqualTo(alone.wind());
        assertThat(report.visibility()).isEqualTo(alone.visibility());
        assertThat(report.presentWeather()).isEmpty();
        assertThat(report.cloudLayers()).isEqualTo(alone.cloudLayers());
        assertThat(report.staticAirTemperature()).isEqualTo(alone.staticAirTemperature());
        assertThat(report.qnh()).isEqualTo(alone.qnh());
        assertThat(report.problems()).isEmpty();
    }
}
