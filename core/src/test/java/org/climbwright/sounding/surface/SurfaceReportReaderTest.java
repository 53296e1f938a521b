package org.climbwright.sounding.surface;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.climbwright.sounding.ReadingProblem;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

@DisplayName("A file of reports")
class SurfaceReportReaderTest {
    @TempDir private Path folder;

    @Test
    @DisplayName("gives every report; blank lines and comments are left out")
    void reads() {
        SurfaceReportReading reading =
                SurfaceReportReader.read(
                        List.of(
                                "# two reports",
                                "",
                                "METAR LOWW 011200Z CAVOK 10/09 Q1013=",
                                "   ",
                                "SPECI LOWI 011210Z 9999 NSC 11/09 Q1014="));
        assertThat(reading.problems()).isEmpty();
        assertThat(reading.reports())
                .extracting(SurfaceReport::station)
                .containsExactly("LOWW", "LOWI");
    }

    @Test
    @DisplayName("continues a report on lines that begin with a blank, and counts its lines")
    void continuation() {
        SurfaceReportReading reading =
                SurfaceReportReader.read(
                        List.of(
                                "LOWW 011200Z CAVOK",
                                "     10/09 BLAH",
                                "\tQ1013 RMK ANYTHING",
                                "LOWI 011200Z CAVOK BLUB"));
        assertThat(reading.reports()).hasSize(2);
        assertThat(reading.reports().get(0).qnh()).hasValue(ReportedQnh.parse("Q1013"));
        assertThat(reading.problems())
                .containsExactly(
                        new ReadingProblem(
                                2, "line", "BLAH", "not a group that is known here; left out"),
                        new ReadingProblem(
                                4, "line", "BLUB", "not a group that is known here; left out"));
    }

    @Test
    @DisplayName("does not continue a report that has ended, nor over a blank line or a comment")
    void noContinuation() {
        SurfaceReportReading reading =
                SurfaceReportReader.read(
                        List.of(
                                " LOWW 011200Z CAVOK=",
                                " LOWI 011200Z CAVOK",
                                "",
                                " LOWS 011200Z CAVOK",
                                "# a comment",
                                " LOWG 011200Z CAVOK"));
        assertThat(reading.problems()).isEmpty();
        assertThat(reading.reports())
                .extracting(SurfaceReport::station)
                .containsExactly("LOWW", "LOWI", "LOWS", "LOWG");
    }

    @Test
    @DisplayName("goes on after a line that is no report, and says what that line lacks")
    void noReport() {
        SurfaceReportReading reading =
                SurfaceReportReader.read(
                        List.of("SAOS31 LOWW 011200", "LOWW 011200Z CAVOK", "LOWI CAVOK"));
        assertThat(reading.reports()).hasSize(1);
        assertThat(reading.problems())
                .containsExactly(
                        new ReadingProblem(
                                1,
                                "line",
                                "SAOS31 LOWW 011200",
                                "a report needs a station of four letters where this text has"
                                        + " \"SAOS31\"; not read"),
                        new ReadingProblem(
                                3,
                                "line",
                                "LOWI CAVOK",
                                "a report needs a time of observation where this text has"
                                        + " \"CAVOK\"; not read"));
    }

    @Test
    @DisplayName("is read whatever its bytes, its line ends and its mark of byte order")
    void bytes() throws IOException {
        Path file = folder.resolve("reports.txt");
        String text = "\u00EF\u00BB\u00BFLOWW 011200Z CAVOK\r\nLOWI 011200Z 10\u00B0/09 Q1013\r\n";
        Files.writeString(file, text, StandardCharsets.ISO_8859_1);
        SurfaceReportReading reading = SurfaceReportReader.read(file);
        assertThat(reading.reports()).hasSize(2);
        assertThat(reading.reports().get(0).text()).isEqualTo("LOWW 011200Z CAVOK");
        assertThat(
                        reading.reports()
                                .get(1)
                                .whyMissing(ReportElement.TEMPERATURE)
                                .orElseThrow()
                                .text())
                .isEqualTo("10\u00B0/09");
        assertThat(reading.problems())
                .singleElement()
                .extracting(ReadingProblem::line)
                .isEqualTo(2);
    }

    @Test
    @DisplayName("has its mark of byte order in front of its first line, and nowhere else")
    void markOfByteOrder() {
        SurfaceReportReading reading =
                SurfaceReportReader.read(
                        List.of("\uFEFFLOWW 011200Z CAVOK", "\uFEFFLOWI 011200Z CAVOK"));
        assertThat(reading.reports()).extracting(SurfaceReport::station).containsExactly("LOWW");
        assertThat(reading.problems())
                .singleElement()
                .extracting(ReadingProblem::line)
                .isEqualTo(2);
    }

    @Test
    @DisplayName("with nothing in it gives nothing")
    void empty() {
        assertThat(SurfaceReportReader.read(List.of()))
                .isEqualTo(new SurfaceReportReading(List.of(), List.of()));
    }

    @Test
    @DisplayName("is an IOException if there is none")
    void noFile() {
        assertThatExceptionOfType(NoSuchFileException.class)
                .isThrownBy(() -> SurfaceReportReader.read(Path.of("no-such-reports.txt")));
    }

    @Test
    @DisplayName("gives a result that nobody changes")
    void isImmutable() {
        List<SurfaceReport> reports = new ArrayList<>(List.of(Reports.reportOf("CAVOK")));
        SurfaceReportReading reading = new SurfaceReportReading(reports, List.of());
        reports.clear();
        assertThat(reading.reports()).isUnmodifiable().hasSize(1);
        assertThat(reading.problems()).isUnmodifiable();
    }
}
