package org.climbwright.sounding.surface;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.fail;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Label;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.climbwright.quantity.altitude.GeopotentialAltitude;
import org.climbwright.sounding.ReadingProblem;

@Label("A recorded report that was damaged")
class DamagedReportPropertyTest {
    private static final String CHARACTERS = "0123456789/MPQATVGRZ KCBFEWSNO-+=\n";

    @Property(tries = 6000, edgeCases = EdgeCasesMode.NONE)
    @Label("in some characters is read or refused; only what its words say comes out of it")
    void corrupted(@ForAll("reports") String report, @ForAll long seed) {
        StringBuilder text = new StringBuilder(report);
        Random random = new Random(seed);
        for (int times = 1 + random.nextInt(6); times > 0; times--) {
            char character =
                    random.nextInt(8) == 0
                            ? (char) random.nextInt(256)
                            : CHARACTERS.charAt(random.nextInt(CHARACTERS.length()));
            int at = random.nextInt(text.length());
            switch (random.nextInt(3)) {
                case 0 -> text.setCharAt(at, character);
                case 1 -> text.insert(at, character);
                default -> text.deleteCharAt(at);
            }
        }
        isReadAsItStands(text.toString());
    }

    @Property(tries = 1500, edgeCases = EdgeCasesMode.NONE)
    @Label("by a cut anywhere is read up to there")
    void cut(@ForAll("reports") String report, @ForAll long seed) {
        Random random = new Random(seed);
        int end = random.nextInt(report.length() + 1);
        isReadAsItStands(report.substring(random.nextInt(5) == 0 ? end / 2 : 0, end));
    }

    @Property(tries = 3000, edgeCases = EdgeCasesMode.NONE)
    @Label("by a shuffle of its groups behind the head is read")
    void shuffled(@ForAll("reports") String report, @ForAll long seed) {
        List<String> words = new ArrayList<>(Arrays.asList(report.split(" ", -1)));
        Random random = new Random(seed);
        Collections.shuffle(words.subList(random.nextInt(4) == 0 ? 0 : 2, words.size()), random);
        isReadAsItStands(String.join(" ", words));
    }

    @Property(tries = 3000, edgeCases = EdgeCasesMode.NONE)
    @Label("by words of other reports is read")
    void mixed(
            @ForAll("reports") String report, @ForAll("reports") String other, @ForAll long seed) {
        List<String> words = new ArrayList<>(Arrays.asList(report.split(" ", -1)));
        List<String> others = Arrays.asList(other.split(" ", -1));
        Random random = new Random(seed);
        for (int times = 1 + random.nextInt(5); times > 0; times--) {
            words.add(
                    2 + random.nextInt(words.size() - 1),
                    others.get(random.nextInt(others.size())));
        }
        isReadAsItStands(String.join(" ", words));
    }

    @Property(tries = 3000, edgeCases = EdgeCasesMode.NONE)
    @Label("by holes, and has a forecast behind it, says what it says without the forecast")
    void forecast(
            @ForAll("reports") String report,
            @ForAll("reports") String other,
            @ForAll("forecasts") String forecast,
            @ForAll long seed) {
        List<String> words = observation(report);
        Random random = new Random(seed);
        words.subList(2, words.size()).removeIf(word -> random.nextInt(3) == 0);
        String alone = String.join(" ", words);
        List<String> later = observation(other);
        later.subList(0, 2).clear();
        String text = alone + " " + forecast + " " + String.join(" ", later);
        assertThat(said(SurfaceReportReader.parse(text)))
                .isEqualTo(said(SurfaceReportReader.parse(alone)));
        isReadAsItStands(text);
    }

    private static List<String> observation(String report) {
        return new ArrayList<>(
                Arrays.stream(report.split(" ", -1))
                        .takeWhile(word -> !word.matches("RMKS?|NOSIG|TEMPO"))
                        .toList());
    }

    private static List<Object> said(SurfaceReport report) {
        List<Object> said = new ArrayList<>();
        said.add(report.wind());
        said.add(report.visibility());
        said.add(report.presentWeather());
        said.add(report.sky());
        said.add(report.cloudLayers());
        said.add(report.verticalVisibility());
        said.add(report.staticAirTemperature());
        said.add(report.dewPoint());
        said.add(report.qnh());
        said.add(report.otherGroups());
        said.add(report.problems());
        for (ReportElement element : ReportElement.values()) {
            said.add(report.whyMissing(element));
        }
        return said;
    }

    @Property(tries = 1500, edgeCases = EdgeCasesMode.NONE)
    @Label("to noise behind its head is read")
    void noise(@ForAll("noises") String noise) {
        isReadAsItStands("LOWW 011200Z " + noise);
    }

    private static void isReadAsItStands(String text) {
        SurfaceReport report;
        try {
            report = SurfaceReportReader.parse(text);
        } catch (IllegalArgumentException refusal) {
            assertThat(refusal).hasMessageStartingWith("a report needs ");
            return;
        }
        String unexplained = new ReportWitness(text).unexplained(report);
        if (!unexplained.isEmpty()) {
            fail("no word of \"" + text + "\" tells its " + unexplained);
        }
        isConsistent(report, text.lines().count());
    }

    private static void isConsistent(SurfaceReport report, long lines) {
        for (ReadingProblem problem : report.problems()) {
            assertThat(problem.line()).isBetween(1, Math.max(1, (int) lines));
            assertThat(problem.text()).isNotBlank();
            assertThat(problem.reason()).isNotBlank();
        }
        isToldOrMissing(report, ReportElement.TIME, report.timeUtc().isPresent());
        isToldOrMissing(report, ReportElement.WIND, report.wind().isPresent());
        isToldOrMissing(report, ReportElement.VISIBILITY, report.visibility().isPresent());
        isToldOrMissing(report, ReportElement.CLOUD, report.sky() != Sky.NOT_REPORTED);
        isToldOrMissing(
                report, ReportElement.TEMPERATURE, report.staticAirTemperature().isPresent());
        isToldOrMissing(report, ReportElement.DEW_POINT, report.dewPoint().isPresent());
        isToldOrMissing(report, ReportElement.QNH, report.qnh().isPresent());
        isToldOrMissing(report, ReportElement.PRESENT_WEATHER, !report.presentWeather().isEmpty());
        assertThat(report.sky() == Sky.LAYERS && report.cloudLayers().isEmpty()).isFalse();
        if (report.staticAirTemperature().isPresent() && report.qnh().isPresent()) {
            double pressurePa = report.air(GeopotentialAltitude.ofMetres(500)).pressurePa();
            assertThat(pressurePa).isBetween(79000.0, 105000.0);
        }
    }

    private static void isToldOrMissing(SurfaceReport report, ReportElement element, boolean told) {
        assertThat(report.whyMissing(element).isPresent()).as("no %s", element).isNotEqualTo(told);
    }

    @Provide
    Arbitrary<String> reports() {
        return Arbitraries.of(Reports.lines());
    }

    @Provide
    Arbitrary<String> forecasts() {
        return Arbitraries.of(
                "TEMPO",
                "BECMG",
                "INTER",
                "NOSIG",
                "PROB30",
                "PROB40 TEMPO",
                "FM1300",
                "FM011300",
                "AT1300",
                "TL1400",
                "GRADU",
                "RAPID",
                "FCST",
                "TREND",
                "TTF",
                "BECMG FM1300");
    }

    @Provide
    Arbitrary<String> noises() {
        return Arbitraries.strings()
                .withChars(CHARACTERS)
                .withCharRange('\0', '\u00FF')
                .ofMaxLength(80);
    }
}
