package org.climbwright.sounding.surface;

import static org.assertj.core.api.Assertions.assertThat;
import static org.climbwright.sounding.surface.Absence.Cause.GROUP_ABSENT;
import static org.climbwright.sounding.surface.Absence.Cause.NOT_USABLE;
import static org.climbwright.sounding.surface.Absence.Cause.REPORTED_MISSING;
import static org.climbwright.sounding.surface.Reports.reportOf;

import org.climbwright.sounding.ReadingProblem;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

@DisplayName("The groups of a report in their order")
class GroupOrderTest {
    @ParameterizedTest(name = "{0}: {1}")
    @CsvSource({
        "27010KT SCT020 12/11 QNH 0995, GROUP_ABSENT",
        "AUTO 27010KT //// SCT020 12/11 Q 1013, REPORTED_MISSING",
        "AUTO 27010KT //// SCT020 12/11 QNH 1000, REPORTED_MISSING",
        "27010KT SCT020 12/11 Q1013 R27/0600 1500, NOT_USABLE",
        "27010KT SCT020 1500 12/11 Q1013, NOT_USABLE",
        "27010KT 12/11 1500 Q1013, NOT_USABLE",
        "27010KT NSC 9999, NOT_USABLE",
        "27010KT 12/11 Q1013 10SM, NOT_USABLE",
        "27010KT 12/11 Q1013 CAVOK, NOT_USABLE"
    })
    @DisplayName("let no digits behind cloud, temperature or QNH be a visibility")
    void visibility(String groups, Absence.Cause cause) {
        SurfaceReport report = reportOf(groups);
        assertThat(report.visibility()).isEmpty();
        assertThat(report.whyMissing(ReportElement.VISIBILITY).orElseThrow().cause())
                .isEqualTo(cause);
        assertThat(report.problems()).hasSize(1);
    }

    @Test
    @DisplayName("let no CAVOK behind temperature or QNH tell of the sky")
    void cavok() {
        SurfaceReport report = reportOf("27010KT 12/11 Q1013 CAVOK");
        assertThat(report.sky()).isEqualTo(Sky.NOT_REPORTED);
        assertThat(report.whyMissing(ReportElement.CLOUD))
                .hasValue(
                        new Absence(
                                ReportElement.CLOUD,
                                NOT_USABLE,
                                "CAVOK",
                                "a visibility behind cloud, temperature or QNH"));
    }

    @Test
    @DisplayName("let no wind behind them be the wind")
    void wind() {
        SurfaceReport report = reportOf("CAVOK 12/11 Q1013 27010KT");
        assertThat(report.whyMissing(ReportElement.WIND))
                .hasValue(
                        new Absence(
                                ReportElement.WIND,
                                NOT_USABLE,
                                "27010KT",
                                "a wind behind cloud, temperature or QNH"));
    }

    @Test
    @DisplayName("keep the digits of a torn QNH for a QNH that cannot be read")
    void tornQnh() {
        assertThat(reportOf("27010KT SCT020 12/11 QNH 0995").whyMissing(ReportElement.QNH))
                .hasValue(new Absence(ReportElement.QNH, NOT_USABLE, "QNH 0995", "not a QNH"));
    }

    @ParameterizedTest(name = "{0} {1}")
    @CsvSource({
        "/////KT, 16012KT, WIND",
        "////, 3000, VISIBILITY",
        "////, 10SM, VISIBILITY",
        "//, RA, PRESENT_WEATHER",
        "VV///, VV001, VERTICAL_VISIBILITY",
        "27005KT /////, 18/07, TEMPERATURE",
        "Q////, Q1016, QNH",
        "A////, A2992, QNH"
    })
    @DisplayName("keep missing what the station reports as missing, though a later group tells it")
    void staysMissing(String missing, String later, ReportElement element) {
        SurfaceReport report = reportOf(missing + " " + later);
        assertThat(report.whyMissing(element).orElseThrow().cause()).isEqualTo(REPORTED_MISSING);
        assertThat(report.problems())
                .containsExactly(
                        new ReadingProblem(
                                1,
                                element.toString(),
                                later,
                                "reported as missing before; left out"));
    }

    @Test
    @DisplayName("let a layer stand behind slashes, since each layer has its own group")
    void layers() {
        SurfaceReport report = reportOf("27005KT 9999 ////// BKN008");
        assertThat(report.cloudLayers()).containsExactly(CloudLayer.parse("BKN008"));
        assertThat(report.problems()).isEmpty();
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource({"NSC", "NCD", "SKC", "CLR"})
    @DisplayName("let no statement of no cloud stand behind slashes")
    void noStatement(String statement) {
        SurfaceReport report = reportOf("27005KT 9999 ////// " + statement);
        assertThat(report.sky()).isEqualTo(Sky.NOT_REPORTED);
        assertThat(report.whyMissing(ReportElement.CLOUD).orElseThrow().cause())
                .isEqualTo(REPORTED_MISSING);
        assertThat(report.problems()).hasSize(1);
    }

    @Test
    @DisplayName("have no visibility where none stands in front")
    void absent() {
        assertThat(
                        reportOf("27010KT SCT020 12/11 Q1013")
                                .whyMissing(ReportElement.VISIBILITY)
                                .orElseThrow()
                                .cause())
                .isEqualTo(GROUP_ABSENT);
    }
}
