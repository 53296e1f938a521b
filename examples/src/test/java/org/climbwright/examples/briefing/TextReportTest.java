package org.climbwright.examples.briefing;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("The briefing as text")
class TextReportTest {
    private final Program run = Program.run();

    @Test
    @DisplayName("is printed by the program without any option, and nothing else is")
    void runs() {
        assertThat(run.code()).isZero();
        assertThat(run.err()).isEmpty();
        assertThat(run.out()).startsWith("CLIMB BRIEFING  Invented twin-jet");
    }

    @Test
    @DisplayName("fits 100 columns")
    void width() {
        assertThat(run.out().lines()).allMatch(line -> line.length() <= 100);
    }

    @Test
    @DisplayName("has the three 0 °C levels of the Norman sounding, 4119, 5398 and 9956 ft")
    void freezingLevels() {
        // independent computation, T linear in ln p: 4118.65, 5398.06 and 9956.26 ft
        assertThat(run.out())
                .contains(
                        """
                        0 °C LEVELS of the sounding
                            4119 ft pressure altitude, colder above
                            5398 ft pressure altitude, warmer above
                            9956 ft pressure altitude, colder above
                        """);
    }

    @Test
    @DisplayName("has the cabin at each check with what is left to its limits, and what they are")
    void cabin() {
        assertThat(run.out())
                .contains("CABIN CHECKS, ")
                .containsPattern("\n   10000   3:1\\d    24\\d\\d    \\+500        3.3\\d ")
                .containsPattern("\n   35000  18:\\d\\d    738\\d ")
                .contains("Limits: scheduled 7.8 psi, relief 8.3 psi, negative relief -0.5 psi;")
                .contains("warning at 10000 ft by 14 CFR 25.841")
                .contains("- cabin at ")
                .containsPattern("checklists and memory items are the\\s+operator's");
    }

    @Test
    @DisplayName(
            "has each restriction, what governs and what is missed, the level-off and the cloud")
    void gradients() {
        assertThat(run.out())
                .contains("RESTRICTIONS, QNH 1018.90 hPa for those on QNH\n")
                .containsPattern("at or above 4000 ft on QNH +met +6\\d\\d\\d ft QNH +\\+2")
                .containsPattern("between FL100 and FL130 +met +10\\d\\d\\d ft +\\+5")
                .containsPattern("HAZEL \\(invented\\) +at or above FL270 +missed")
                .containsPattern("constant gradient that one takes: BIRCH .invented., 596 ft/NM")
                .contains("The least that one allows: CEDAR (invented)")
                .contains("First missed: HAZEL (invented).")
                .containsPattern("LEVEL-OFF, at most 1,500 ft/min in the last 1,000 ft, lead of 10")
                .contains("125 to    0 ft to go")
                .contains("CLOUD AHEAD, topped by less than the clearance given");
    }

    @Test
    @DisplayName("says in words where icing conditions are, and by when anti-ice should be on")
    void icing() {
        assertThat(run.out())
                .contains("ENGINE ICING CONDITIONS, by common practice, no source\n")
                .contains("AIRFRAME ICING CONDITIONS, by 14 CFR 121.321\n")
                .contains(": in conditions\n")
                .containsPattern(
                        "Protection, anti-ice: on by 17\\d\\d ft QNH, 0:0\\d, 30 s and 20\\d\\d ft"
                                + " ahead; off by the rule not before\\s+56\\d\\d ft QNH,");
    }

    @Test
    @DisplayName("has time, distance and fuel to the top, where the power goes and what saves most")
    void climb() {
        assertThat(run.out())
                .containsPattern(
                        "Top       FL350 after 18:\\d\\d and 10\\d.\\d NM, fuel 11\\d\\d kg,"
                                + " mass")
                .contains("- accelerate to 290 kn\n")
                .contains("- 290 kn reached\n")
                .contains("- 290 kn to M0.76\n")
                .contains("- LINDEN (invented)\n")
                .contains("- bleed for engine and airframe anti-ice\n")
                // a headwind that grows upwards lifts below 3,900 ft, and the wind turns above
                .containsPattern("\n    2000 .* \\+\\d{3}\n")
                .containsPattern("\n    6000 .* -\\d{3}\n")
                .containsPattern("\n  1000 kg heavier +\\+\\d+ +\\+\\d+.\\d +\\+\\d.\\d  35000\n")
                .containsPattern("\n  10 kn slower +-\\d+ +-\\d+.\\d +-\\d.\\d  35000\n");
    }

    @Test
    @DisplayName("begins with what to do or expect, in the order in which it is due")
    void whatByWhen() {
        String text = run.out();
        assertThat(text.indexOf("WHAT, BY WHEN")).isBetween(0, text.indexOf("CHECK CARD"));
        assertThat(text)
                .containsPattern(
                        "\n  1  expect climb begins at Example Field .invented. +1200 ft QNH +0:00"
                                + " +0.0\n +250 kn, M0.385")
                .containsPattern(
                        "  do     engine anti-ice on +1736 ft QNH +0:07 +0.4  3819 ft QNH 0:37\n")
                .containsPattern("  check  figures at 10000 ft +FL100 +3:1\\d +13.\\d\n")
                .containsPattern("  do     hold the Mach number: 290 kn to M0.76 ");
    }

    @Test
    @DisplayName("tells what to do by the point by which to do it, so that its times never go back")
    void dueTimes() {
        String text = run.out();
        List<Integer> seconds =
                Pattern.compile("(?m)^ {1,2}\\d+  (?:do|expect|check) .{36,}? (\\d+):(\\d\\d) ")
                        .matcher(text.substring(0, text.indexOf("CHECK CARD")))
                        .results()
                        .map(
                                row ->
                                        60 * Integer.parseInt(row.group(1))
                                                + Integer.parseInt(row.group(2)))
                        .toList();
        assertThat(seconds).hasSizeGreaterThan(25).isSorted();
        assertThat(text).contains("comes at\n").doesNotContain("latest");
    }

    @Test
    @DisplayName("names the air beside the title, not in it")
    void title() {
        assertThat(run.out().lines().findFirst().orElseThrow())
                .isEqualTo("CLIMB BRIEFING  Invented twin-jet out of an invented aerodrome");
    }

    @Test
    @DisplayName("has a check card with what should be read and room for what is seen")
    void checkCard() {
        String card =
                run.out()
                        .substring(
                                run.out().indexOf("CHECK CARD"), run.out().indexOf("RESTRICTIONS"));
        assertThat(card)
                .containsPattern(
                        "\n"
                            + "10000 ft +FL100 +3:1\\d ±0:0\\d +24\\d\\d +\\+500 +3.3\\d +2\\d\\d "
                            + " _+\n")
                .containsPattern("\nLINDEN .invented. +\\d+ ft ")
                .containsPattern("\ntop of climb +FL350 ");
        assertThat(card.lines().filter(line -> line.endsWith("____"))).hasSize(5);
    }

    @Test
    @DisplayName("has what speaks for turbulence in words, and where seat belts have a reason")
    void turbulence() {
        assertThat(run.out())
                .contains("TURBULENCE, what speaks for it\n")
                .contains("there is reason to keep seat belts fastened.")
                .containsPattern(
                        "Reason for seat belts from FL060 to FL080, 1:29 to 2:2\\d; sign on by")
                .doesNotContain("yes, safe");
    }

    @Test
    @DisplayName("says what the bleed takes of the excess power, and where its rules are from")
    void bleedAndSources() {
        // anti-ice is on at 2,000 and 4,000 ft, and off at 8,000 ft
        assertThat(run.out())
                .containsPattern("into +bleed +rate")
                .containsPattern("\n    2000 .* -\\d+ +[12]\\d\\d +4\\d\\d\\d +\\+\\d+\n")
                .containsPattern("\n    8000 .* 0 +2\\d\\d\\d +-\\d+\n")
                .contains("SOURCES\n")
                .contains("14 CFR 121.321.\n");
    }

    @Test
    @DisplayName("ends with its limits")
    void limits() {
        assertThat(run.out().stripTrailing())
                .contains(
                        "LIMITS OF THIS BRIEFING\n"
                                + "  For study and simulation, not for use in flight")
                .containsPattern(
                        "An altimeter shows the true altitude only at the aerodrome of its\\s+QNH")
                .endsWith("turns are left out.");
    }

    @Test
    @DisplayName("never writes a minus before a nothing")
    void noNegativeZero() {
        assertThat(run.out()).doesNotContain(" -0.0 ").doesNotContain(" -0 ");
    }
}
