package org.climbwright.sounding.surface;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalStateException;
import static org.climbwright.sounding.surface.Absence.Cause.NOT_USABLE;
import static org.climbwright.sounding.surface.Reports.reportOf;

import org.climbwright.quantity.altitude.GeopotentialAltitude;
import org.climbwright.sounding.ReadingProblem;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

@DisplayName("A group that is not as the code has it")
class IllegibleGroupTest {
    @ParameterizedTest(name = "{0} by {1}")
    @CsvSource({
        "WIND, 27010",
        "WIND, 27010KTS",
        "WIND, 27010G20",
        "WIND, VRB03",
        "WIND, 27305KT",
        "VISIBILITY, 3000M",
        "VISIBILITY, 10000",
        "VISIBILITY, 1013",
        "QNH, QNH1013",
        "QNH, Q 1013",
        "QNH, A 2992",
        "QNH, Q1013.2",
        "QNH, A29.92",
        "QNH, Q996"
    })
    @DisplayName("is not absent, but not usable, and is told once")
    void notUsable(ReportElement element, String group) {
        String wind = element == ReportElement.WIND ? "" : "27005KT ";
        SurfaceReport report = reportOf(wind + group);
        Absence absence = report.whyMissing(element).orElseThrow();
        assertThat(absence.cause()).isEqualTo(NOT_USABLE);
        assertThat(absence.text()).isEqualTo(group);
        assertThat(absence.toString()).containsOnlyOnce("\"" + group + "\"");
        assertThat(report.problems())
                .singleElement()
                .asString()
                .startsWith("line 1, " + element + " \"" + group + "\": ")
                .containsOnlyOnce("\"" + group + "\"");
    }

    @ParameterizedTest(name = "{0} is {1}")
    @CsvSource({
        "Q1008/29.77, Q1008",
        "Q1008/2977, Q1008",
        "Q1009/A2980, Q1009",
        "Q0749/29.77, A2977"
    })
    @DisplayName("is read where both units of a QNH share it, the first legible one first")
    void bothUnits(String group, String qnh) {
        SurfaceReport report = reportOf("CAVOK 10/09 " + group);
        assertThat(report.qnh()).hasValue(ReportedQnh.parse(qnh));
        assertThat(report.problems()).hasSize(qnh.startsWith("Q") ? 0 : 1);
    }

    @Test
    @DisplayName("is a problem where both units of a QNH share it and differ")
    void bothUnitsDiffer() {
        SurfaceReport report = reportOf("CAVOK 10/09 Q1008/29.87");
        assertThat(report.qnh()).hasValue(ReportedQnh.parse("Q1008"));
        assertThat(report.problems())
                .singleElement()
                .extracting(ReadingProblem::text)
                .isEqualTo("Q1008/29.87");
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource({"///CB, CUMULONIMBUS", "///TCU, TOWERING_CUMULUS"})
    @DisplayName("is a layer where three slashes stand for its amount and its base")
    void shortLayer(String group, CloudLayer.Type type) {
        SurfaceReport report = reportOf("27005KT 9999 " + group);
        CloudLayer layer = report.cloudLayers().get(0);
        assertThat(layer.type()).isEqualTo(type);
        assertThat(layer.amount()).isEqualTo(CloudLayer.Amount.NOT_OBSERVED);
        assertThat(layer.base()).isEmpty();
        assertThat(report.problems()).isEmpty();
    }

    @ParameterizedTest(name = "{0}: {1}")
    @CsvSource({
        "CAVOK 1x// Q1013, 'no temperature: not a temperature and a dew point, \"1x//\"'",
        "CAVOK 10/09 Q1013/x, 'no QNH: not a QNH, \"Q1013/x\"'",
        "CAVOK 10/09 QNH1013, 'no QNH: not a QNH, \"QNH1013\"'",
        "CAVOK //11 Q1013, 'no temperature: reported as missing, \"//11\"'"
    })
    @DisplayName("is named by the air that lacks it")
    void air(String groups, String why) {
        assertThatIllegalStateException()
                .isThrownBy(() -> reportOf(groups).air(GeopotentialAltitude.ofMetres(100)))
                .withMessage("air needs temperature and QNH, but the report of LOWW has " + why);
    }
}
