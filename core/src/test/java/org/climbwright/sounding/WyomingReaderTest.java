package org.climbwright.sounding;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

@DisplayName("A listing of the University of Wyoming")
class WyomingReaderTest {
    private static final String TITLE = "72357 OUN Norman Observations at 12Z 22 May 2011";
    private static final String DASHES = "-".repeat(77);
    private static final String NAMES =
            "   PRES   HGHT   TEMP   DWPT   RELH   MIXR   DRCT   SKNT   THTA   THTE   THTV";
    private static final String UNITS =
            "    hPa     m      C      C      %    g/kg    deg   knot     K      K      K ";
    private static final String BELOW = " 1000.0     36" + " ".repeat(63);
    private static final String GROUND =
            "  966.0    345   22.2   21.0     93  16.50    180      7  298.3  346.4  301.2";
    private static final String ALOFT =
            "  850.0   1454   -2.0   -6.0     35   6.94    210     37  309.2  330.8  310.5";
    private static final String HIGHER =
            "  846.0   1495   -2.2   -6.4     31   5.97    210     37  309.4  328.1  310.5";
    private static final List<String> FLAWLESS =
            List.of(TITLE, "", DASHES, NAMES, UNITS, DASHES, BELOW, GROUND, ALOFT, HIGHER);

    @Test
    @DisplayName("is read by its columns")
    void flawless() {
        SoundingReading reading = SoundingReader.read(FLAWLESS);
        assertThat(reading.problems()).isEmpty();
        assertThat(reading.soundings())
                .containsExactly(
                        Sounding.of(
                                "72357 OUN Norman",
                                "2011-05-22T12",
                                List.of(
                                        Level.hpa(1000).metres(36).reported(),
                                        Level.hpa(966)
                                                .metres(345)
                                                .celsius(22.2)
                                                .dewPoint(21)
                                                .wind(180, knots(7))
                                                .reported(),
                                        Level.hpa(850)
                                                .metres(1454)
                                                .celsius(-2)
                                                .dewPoint(-6)
                                                .wind(210, knots(37))
                                                .reported(),
                                        Level.hpa(846)
                                                .metres(1495)
                                                .celsius(-2.2)
                                                .dewPoint(-6.4)
                                                .wind(210, knots(37))
                                                .reported())));
    }

    private static double knots(double speed) {
        return speed * (1852.0 / 3600.0);
    }

    @ParameterizedTest(name = "\"{0}\": {1}, {2}")
    @CsvSource({
        "72357 OUN Norman Observations at 00Z 01 Jan 1999, 72357 OUN Norman, 1999-01-01T00",
        "<H2>10868  Oberschleissheim Observations at 12Z 09 Oct 2020</H2>,"
                + " 10868  Oberschleissheim, 2020-10-09T12",
        "<H1>Observations for Station 56187 at 00 UTC 25 Jul 2026</H1>, 56187, 2026-07-25T00",
        "'  Observations for Station 72357 at 23 UTC 31 Dec 2026 ', 72357, 2026-12-31T23"
    })
    @DisplayName("has its station and its launch from a title as pages have had it:")
    void titles(String title, String station, String launch) {
        SoundingReading reading = read(title, DASHES, NAMES, UNITS, DASHES, GROUND);
        assertThat(reading.problems()).isEmpty();
        assertThat(reading.soundings().get(0).station()).isEqualTo(station);
        assertThat(reading.soundings().get(0).launch()).isEqualTo(launch);
    }

    @ParameterizedTest(name = "{1} under {0}: {2} m/s")
    @CsvSource({"SKNT, knot, 19.0344", "SPED, ' m/s', 37", "SKNT, ' m/s', 37"})
    @DisplayName("has its wind in the unit that the row of units says")
    void windUnits(String name, String unit, double mps) {
        SoundingReading reading =
                read(NAMES.replace("SKNT", name), UNITS.replace("knot", unit), DASHES, ALOFT);
        assertThat(reading.problems()).isEmpty();
        assertThat(speed(reading)).isEqualTo(mps, within(1e-4));
    }

    @Test
    @DisplayName("may have tenths in its wind, and a newer spacing in its row of units")
    void newerPage() {
        SoundingReading reading =
                read(
                        NAMES.replace("SKNT", "SPED"),
                        "    hPa      m      C      C      %   g/kg    deg    m/s      K      K"
                                + "      K",
                        DASHES,
                        ALOFT.replace("     37", "   14.4"));
        assertThat(reading.problems()).isEmpty();
        assertThat(speed(reading)).isEqualTo(14.4, within(1e-12));
    }

    private static double speed(SoundingReading reading) {
        return reading.soundings()
                .get(0)
                .levels()
                .get(0)
                .wind()
                .orElseThrow()
                .speed()
                .inMetresPerSecond();
    }

    @Test
    @DisplayName("may lack its title, its dashes and its units, which its names tell too")
    void bareNames() {
        SoundingReading reading = read(NAMES, BELOW, GROUND, ALOFT, HIGHER);
        assertThat(reading.problems()).isEmpty();
        assertThat(reading.soundings().get(0).levels())
                .isEqualTo(SoundingReader.read(FLAWLESS).soundings().get(0).levels());
    }

    @Test
    @DisplayName("may have lost the blanks at the ends of its lines")
    void trimmed() {
        List<String> lines = new ArrayList<>(FLAWLESS);
        lines.replaceAll(String::stripTrailing);
        assertThat(SoundingReader.read(lines)).isEqualTo(SoundingReader.read(FLAWLESS));
    }

    @Test
    @DisplayName("may lack any number of a level but its place, and that is no problem")
    void blanks() {
        SoundingReading reading =
                read(
                        NAMES,
                        UNITS,
                        DASHES,
                        GROUND.replace("   21.0", "       "),
                        ALOFT.replace("    210     37", "              "),
                        HIGHER.replace("   1495", "       "));
        assertThat(reading.problems()).isEmpty();
        List<SoundingLevel> levels = reading.soundings().get(0).levels();
        assertThat(levels).hasSize(3);
        assertThat(levels.get(0).dewPoint()).isEmpty();
        assertThat(levels.get(0).staticAirTemperature()).isPresent();
        assertThat(levels.get(1).wind()).isEmpty();
        assertThat(levels.get(1).dewPoint()).isPresent();
        assertThat(levels.get(2).geopotentialAltitude()).isEmpty();
    }

    @Test
    @DisplayName("may be one of several on a page with its tags, links and indices")
    void page() {
        SoundingReading reading = SoundingReader.read(Soundings.lines(Soundings.PAGE));
        assertThat(reading.problems()).isEmpty();
        assertThat(reading.soundings())
                .containsExactly(
                        Soundings.read("20110522_OUN_12Z.txt").soundings().get(0),
                        Soundings.read("jan20_sounding.txt").soundings().get(0));
        assertThat(reading.launchedAt("2011-05-22T12").levels()).hasSize(48);
    }

    @Test
    @DisplayName("may be one of several in a text, one below the other")
    void severalAsText() {
        List<String> lines = new ArrayList<>(FLAWLESS);
        lines.add("Station information and sounding indices");
        lines.add("                             Lifted index: -7.30");
        lines.addAll(FLAWLESS.subList(2, FLAWLESS.size()));
        lines.addAll(FLAWLESS.subList(2, FLAWLESS.size()));
        SoundingReading reading = SoundingReader.read(lines);
        assertThat(reading.problems()).isEmpty();
        assertThat(reading.soundings().stream().map(Sounding::toString))
                .containsExactly(
                        "sounding of 72357 OUN Norman 2011-05-22T12, 4 levels",
                        "sounding, 4 levels",
                        "sounding, 4 levels");
    }

    @Nested
    @DisplayName("reports")
    class Reports {
        @ParameterizedTest(name = "{0} with \"{2}\" for \"{1}\"")
        @CsvSource({
            "PRES, '  850.0', '  85O.0', 85O.0, not a number",
            "PRES, '  850.0', '  850.x', 850.x, not a number",
            "HGHT, '   1454', '   14 4', 14 4, not a number",
            "TEMP, '   -2.0', '   --.0', --.0, not a number",
            "DWPT, '   -6.0', '    NaN', NaN, not a number",
            "DRCT, '    210', '   +210', +210, not a number",
            "PRES, '  850.0', ' 1850.0', 1850.0, not a possible pressure",
            "HGHT, '   1454', '  -1454', -1454, not a possible height",
            "TEMP, '   -2.0', '  -62.0', -62.0, a dew point above the temperature",
            "TEMP, '   -2.0', '  158.9', 158.9, no temperature of the free air",
            "DWPT, '   -6.0', '   -1.9', -1.9, a dew point above the temperature",
            "DWPT, '   -6.0', ' -150.3', -150.3, no dew point of air",
            "DRCT, '    210', '    361', 361, not a possible direction",
            "SKNT, '     37', '    389', 389, not a possible wind speed",
            "SKNT, '     37', '    -37', -37, not a possible wind speed",
            "TEMP, '   -2.0', '  -2.0 ', -2.0, not in its columns"
        })
        @DisplayName("a field with what cannot be, and takes it as missing")
        void field(String field, String good, String bad, String text, String reason) {
            String line = ALOFT.replace(good, bad);
            assertThat(line).isNotEqualTo(ALOFT).hasSameSizeAs(ALOFT);
            SoundingReading reading = read(NAMES, UNITS, DASHES, GROUND, line, HIGHER);
            // The temperature may be right and the dew point wrong: it is the one that falls.
            boolean itsDewPoint = reason.equals("a dew point above the temperature");
            assertThat(reading.problems())
                    .containsExactly(
                            new ReadingProblem(
                                    5,
                                    itsDewPoint ? "DWPT" : field,
                                    itsDewPoint && field.equals("TEMP") ? "-6.0" : text,
                                    reason + "; taken as missing"));
            assertThat(reading.soundings().get(0).levels()).hasSize(3);
        }

        @Test
        @DisplayName("numbers that slipped by a column, and takes no part of one for it")
        void shiftedLine() {
            String shifted = " " + ALOFT;
            SoundingReading reading = read(NAMES, UNITS, DASHES, GROUND, shifted, HIGHER);
            String reason = "not in its columns; taken as missing";
            assertThat(reading.problems())
                    .containsExactly(
                            new ReadingProblem(5, "PRES", "850.", reason),
                            new ReadingProblem(5, "HGHT", "145", reason),
                            new ReadingProblem(5, "TEMP", "-2.", reason),
                            new ReadingProblem(5, "DWPT", "-6.", reason),
                            new ReadingProblem(5, "DRCT", "21", reason),
                            new ReadingProblem(5, "SKNT", "3", reason),
                            new ReadingProblem(
                                    5,
                                    "line",
                                    shifted.trim(),
                                    "no pressure and no height left; level dropped"));
            assertThat(reading.soundings().get(0).levels()).hasSize(2);
        }

        @Test
        @DisplayName("a number that runs on in an exponent behind its columns")
        void exponentBehind() {
            String damaged = ALOFT.replace("   -6.0 ", "   -6.1e3 ");
            SoundingReading reading = read(NAMES, UNITS, DASHES, GROUND, damaged, HIGHER);
            assertThat(reading.problems())
                    .contains(
                            new ReadingProblem(
                                    5, "DWPT", "-6.1", "not in its columns; taken as missing"));
            assertThat(reading.soundings().get(0).levels().get(1).dewPoint()).isEmpty();
        }

        @Test
        @DisplayName("numbers that slipped by a lost blank, and only those")
        void lostBlank() {
            String lost = ALOFT.replace("   -2.0", "  -2.0");
            SoundingReading reading = read(NAMES, UNITS, DASHES, GROUND, lost, HIGHER);
            String reason = "not in its columns; taken as missing";
            assertThat(reading.problems())
                    .containsExactly(
                            new ReadingProblem(5, "TEMP", "-2.0", reason),
                            new ReadingProblem(5, "DWPT", "-6.0", reason),
                            new ReadingProblem(5, "DRCT", "210", reason),
                            new ReadingProblem(5, "SKNT", "37", reason));
            assertThat(reading.soundings().get(0).levels().get(1))
                    .isEqualTo(Level.hpa(850).metres(1454).reported());
        }

        @Test
        @DisplayName("a line that was cut, and does not use the number at its end")
        void cutLine() {
            String cut = ALOFT.substring(0, 19); // "  850.0   1454   -2"
            SoundingReading reading = read(NAMES, UNITS, DASHES, GROUND, cut, HIGHER);
            assertThat(reading.problems())
                    .containsExactly(
                            new ReadingProblem(5, "TEMP", "-2", "cut off; taken as missing"),
                            new ReadingProblem(5, "DWPT", "", "cut off; taken as missing"),
                            new ReadingProblem(5, "DRCT", "", "cut off; taken as missing"),
                            new ReadingProblem(5, "SKNT", "", "cut off; taken as missing"));
            assertThat(reading.soundings().get(0).levels().get(1))
                    .isEqualTo(Level.hpa(850).metres(1454).reported());
        }

        @Test
        @DisplayName("a level with neither pressure nor height, and drops it")
        void withoutPlace() {
            String nowhere = ALOFT.replace("  850.0   1454", " ".repeat(14));
            SoundingReading reading = read(NAMES, UNITS, DASHES, GROUND, nowhere, HIGHER);
            assertThat(reading.problems())
                    .containsExactly(
                            new ReadingProblem(
                                    5,
                                    "line",
                                    nowhere.trim(),
                                    "neither pressure nor height; level dropped"));
            assertThat(reading.soundings().get(0).levels()).hasSize(2);
        }

        @Test
        @DisplayName("a pressure and a height that do not go on with the levels around")
        void order() {
            String spike = ALOFT.replace("  850.0   1454", "  840.0   9454");
            String high = HIGHER.replace("  846.0   1495", "  830.0   1600");
            String highest = HIGHER.replace("  846.0   1495", "  820.0   1700");
            SoundingReading reading =
                    read(NAMES, UNITS, DASHES, GROUND, ALOFT, HIGHER, ALOFT, spike, high, highest);
            assertThat(reading.problems())
                    .containsExactly(
                            new ReadingProblem(
                                    7,
                                    "PRES",
                                    ALOFT.trim(),
                                    "does not fall with the levels around; level dropped"),
                            new ReadingProblem(
                                    8,
                                    "HGHT",
                                    spike.trim(),
                                    "does not rise with the levels around; height dropped"));
            assertThat(reading.soundings().get(0).levels()).hasSize(6);
        }

        @Test
        @DisplayName("a listing without a level, and gives an ascent without levels")
        void noLevels() {
            SoundingReading reading = read(TITLE, DASHES, NAMES, UNITS, DASHES, "", TITLE, NAMES);
            assertThat(reading.soundings()).hasSize(2);
            String reason = "no level stands below these names; the ascent is empty";
            assertThat(reading.problems())
                    .containsExactly(
                            new ReadingProblem(3, "line", NAMES.trim(), reason),
                            new ReadingProblem(8, "line", NAMES.trim(), reason));
        }

        @Test
        @DisplayName("a column that the header does not name, and reads the others")
        void unnamedColumn() {
            SoundingReading reading = read(NAMES.replace("DWPT", "DWxT"), UNITS, DASHES, GROUND);
            assertThat(reading.problems())
                    .containsExactly(
                            new ReadingProblem(
                                    1,
                                    "DWPT",
                                    NAMES.replace("DWPT", "DWxT").trim(),
                                    "the header has no such column; column not read"));
            SoundingLevel level = reading.soundings().get(0).levels().get(0);
            assertThat(level.dewPoint()).isEmpty();
            assertThat(level.wind()).isPresent();
        }

        @ParameterizedTest(name = "{0} in {2}")
        @CsvSource({"PRES, '    hPa', ' inchHg', inchHg", "SKNT, '   knot', '    mph', mph"})
        @DisplayName("a column in a unit that the format does not have, and reads the others")
        void foreignUnit(String field, String good, String bad, String unit) {
            SoundingReading reading = read(NAMES, UNITS.replace(good, bad), DASHES, GROUND, ALOFT);
            assertThat(reading.problems())
                    .containsExactly(
                            new ReadingProblem(2, field, unit, "not its unit; column not read"));
            SoundingLevel level = reading.soundings().get(0).levels().get(0);
            assertThat(level.staticPressure().isPresent()).isEqualTo(!field.equals("PRES"));
            assertThat(level.wind().isPresent()).isEqualTo(!field.equals("SKNT"));
            assertThat(level.geopotentialAltitude()).isPresent();
        }

        @ParameterizedTest(name = "\"{0}\"")
        @ValueSource(
                strings = {
                    "72357 OUN Norman Observations at 1xZ 22 May 2011",
                    "72357 OUN Norman Observations at 12Z 22 Mai 2011",
                    "72357 OUN Norman Observations at 12Z 32 May 2011",
                    "Observations for Station 72357 at 24 UTC 22 May 2011",
                    "72357 OUN Norman Observations at 12Z 22 May 20"
                })
        @DisplayName("a title that is broken, and leaves station and launch empty")
        void brokenTitle(String title) {
            SoundingReading reading = read(title, DASHES, NAMES, UNITS, DASHES, GROUND);
            assertThat(reading.problems())
                    .containsExactly(
                            new ReadingProblem(
                                    1,
                                    "title",
                                    title,
                                    "no station, hour and date; station and launch left empty"));
            assertThat(reading.soundings())
                    .extracting(Sounding::toString)
                    .containsExactly("sounding, 1 levels");
        }

        @Test
        @DisplayName("levels of a listing whose row of names is lost, and reads the one before")
        void lostNames() {
            SoundingReading reading =
                    read(
                            NAMES,
                            UNITS,
                            DASHES,
                            GROUND,
                            DASHES,
                            "  PRES  HGHT",
                            UNITS,
                            DASHES,
                            ALOFT);
            assertThat(reading.problems())
                    .containsExactly(
                            new ReadingProblem(
                                    9,
                                    "line",
                                    ALOFT.trim(),
                                    "no listing to belong to; level dropped"));
            assertThat(reading.soundings())
                    .extracting(Sounding::toString)
                    .containsExactly("sounding, 1 levels");
        }
    }

    private static SoundingReading read(String... lines) {
        return SoundingReader.read(List.of(lines));
    }
}
