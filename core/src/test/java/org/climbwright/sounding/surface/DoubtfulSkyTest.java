package org.climbwright.sounding.surface;

import static org.assertj.core.api.Assertions.assertThat;
import static org.climbwright.sounding.surface.Absence.Cause.NOT_USABLE;
import static org.climbwright.sounding.surface.Absence.Cause.REPORTED_MISSING;
import static org.climbwright.sounding.surface.Reports.reportOf;

import org.climbwright.sounding.ReadingProblem;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

@DisplayName("No cloud beside what speaks against it")
class DoubtfulSkyTest {
    @ParameterizedTest(name = "{0} {1}")
    @CsvSource({
        "CAVOK, OVC0O2, not a layer of cloud",
        "9999 NSC, BKN0O4, not a layer of cloud",
        "9999 NCD, VV0O1, not a vertical visibility",
        "10SM SKC, BKN, not a layer of cloud",
        "10SM CLR, OVC1, not a layer of cloud"
    })
    @DisplayName("is not believed where a group of cloud cannot be read")
    void illegibleCloud(String statement, String group, String reason) {
        SurfaceReport report = reportOf(statement + " " + group);
        assertThat(report.sky()).isEqualTo(Sky.NOT_REPORTED);
        assertThat(report.whyMissing(ReportElement.CLOUD))
                .hasValue(new Absence(ReportElement.CLOUD, NOT_USABLE, group, reason));
        assertThat(report.problems()).hasSize(2);
    }

    @ParameterizedTest(name = "OVC0O2 {0}")
    @ValueSource(strings = {"NSC", "SKC", "NCD", "CLR"})
    @DisplayName("is not believed behind such a group either")
    void illegibleCloudInFront(String statement) {
        SurfaceReport report = reportOf("9999 OVC0O2 " + statement);
        assertThat(report.sky()).isEqualTo(Sky.NOT_REPORTED);
        assertThat(report.whyMissing(ReportElement.CLOUD).orElseThrow().cause())
                .isEqualTo(NOT_USABLE);
    }

    @Test
    @DisplayName("falls, and a layer that can be read stays, with what could not in the problems")
    void legibleLayerStays() {
        SurfaceReport report = reportOf("9999 NSC FEW010 OVC0O2");
        assertThat(report.sky()).isEqualTo(Sky.LAYERS);
        assertThat(report.cloudLayers()).containsExactly(CloudLayer.parse("FEW010"));
        assertThat(report.problems())
                .extracting(ReadingProblem::text)
                .containsExactly("NSC", "OVC0O2");
    }

    @ParameterizedTest(name = "{0} is {1} m")
    @CsvSource({
        "CAVOK 2000, 2000",
        "2000 CAVOK, 2000",
        "CAVOK 9000, 9000",
        "CAVOK 0000, 50",
        "5SM CAVOK, 8046.72",
        "CAVOK M1/4SM, 402.336"
    })
    @DisplayName(
            "by CAVOK falls beside a visibility below 10 km, which stays, the lower of the two")
    void lowVisibility(String groups, double metres) {
        SurfaceReport report = reportOf("27005KT " + groups + " 10/09");
        assertThat(report.visibility().orElseThrow().distance().inMetres()).isEqualTo(metres);
        assertThat(report.sky()).isEqualTo(Sky.NOT_REPORTED);
        assertThat(report.whyMissing(ReportElement.CLOUD))
                .hasValue(
                        new Absence(
                                ReportElement.CLOUD,
                                NOT_USABLE,
                                "CAVOK",
                                "contradicted by the visibility beside it"));
        assertThat(report.problems()).hasSize(1);
    }

    @ParameterizedTest(name = "{0}: {1}")
    @CsvSource({
        "CAVOK x2SM, NOT_USABLE",
        "x2SM CAVOK, NOT_USABLE",
        "CAVOK 1013, NOT_USABLE",
        "CAVOK ////, REPORTED_MISSING",
        "//// CAVOK, REPORTED_MISSING"
    })
    @DisplayName("by CAVOK falls with the visibility where a group of that is missing or illegible")
    void noVisibility(String groups, Absence.Cause cause) {
        SurfaceReport report = reportOf("27005KT " + groups + " 10/09");
        assertThat(report.whyMissing(ReportElement.VISIBILITY).orElseThrow().cause())
                .isEqualTo(cause);
        assertThat(report.whyMissing(ReportElement.CLOUD).orElseThrow().cause())
                .isEqualTo(NOT_USABLE);
        assertThat(cause).isIn(NOT_USABLE, REPORTED_MISSING);
    }

    @ParameterizedTest(name = "{0}")
    @ValueSource(strings = {"CAVOK 9999", "9999 CAVOK", "CAVOK 10SM", "CAVOK P6SM"})
    @DisplayName(
            "by CAVOK stays beside a visibility of 10 km or more, and the first of the two too")
    void highVisibility(String groups) {
        SurfaceReport report = reportOf("27005KT " + groups);
        assertThat(report.visibility()).hasValue(Visibility.parse("CAVOK"));
        assertThat(report.sky()).isEqualTo(Sky.CAVOK);
        assertThat(report.problems())
                .singleElement()
                .extracting(ReadingProblem::reason)
                .isEqualTo("a second visibility; the first stays");
    }
}
