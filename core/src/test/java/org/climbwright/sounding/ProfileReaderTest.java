package org.climbwright.sounding;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

@DisplayName("A CSV profile")
class ProfileReaderTest {
    private static final String HEADER =
            "pressure_hpa,geopotential_height_m,temperature_c,dewpoint_c,wind_from_deg,"
                    + "wind_speed_mps";
    private static final String GROUND = "1000.0,110,15.0,10.0,270,5.0";
    private static final String ALOFT = "850.0,1500,4.5,-2.0,290,12.5";

    @Test
    @DisplayName("is read field by field")
    void plain() {
        Sounding sounding = good(HEADER, GROUND, ALOFT);
        assertThat(sounding.station()).isEmpty();
        assertThat(sounding.launch()).isEmpty();
        assertThat(sounding).hasToString("sounding, 2 levels");
        SoundingLevel level = sounding.levels().get(1);
        assertThat(level.pressurePa()).isEqualTo(85000.0);
        assertThat(level.geopotentialAltitudeM()).isEqualTo(1500.0);
        assertThat(level.temperatureK()).isEqualTo(277.65, within(1e-12));
        assertThat(level.dewPointK()).isEqualTo(271.15, within(1e-12));
        assertThat(level.wind().orElseThrow().direction().inDegrees())
                .isEqualTo(290.0, within(1e-9));
        assertThat(level.wind().orElseThrow().speed().inMetresPerSecond())
                .isEqualTo(12.5, within(1e-12));
    }

    @ParameterizedTest(name = "\"{0}\" is {1} °C")
    @CsvSource({"-0.7, -0.7", "+4.5, 4.5", "4, 4.0", "-2.5e1, -25.0", "-3.0999999999999996, -3.1"})
    @DisplayName("has numbers with a sign, a point and an exponent, and no others")
    void numbers(String text, double celsius) {
        Sounding sounding = good(HEADER, "1000,110," + text + ",,,");
        assertThat(sounding.levels().get(0).staticAirTemperature().orElseThrow().inCelsius())
                .isEqualTo(celsius, within(1e-9));
    }

    @Test
    @DisplayName("may lack any field; a level needs a pressure or a height")
    void missingFields() {
        Sounding sounding =
                good(HEADER, "1000,,,,,", ",500,,,350,3", "900,,5,,,", "800,,,-8,,", " , 700 ,,,,");
        List<SoundingLevel> levels = sounding.levels();
        assertThat(levels.stream().map(level -> level.staticPressure().isPresent()))
                .containsExactly(true, true, true, false, false);
        assertThat(levels.stream().map(level -> level.geopotentialAltitude().isPresent()))
                .containsExactly(false, false, false, true, true);
        assertThat(levels.stream().map(level -> level.staticAirTemperature().isPresent()))
                .containsExactly(false, true, false, false, false);
        assertThat(levels.stream().map(level -> level.dewPoint().isPresent()))
                .containsExactly(false, false, true, false, false);
        assertThat(levels.stream().map(level -> level.wind().isPresent()))
                .containsExactly(false, false, false, true, false);
    }

    @ParameterizedTest(name = "{0}")
    @ValueSource(strings = {"270,", ",5.0"})
    @DisplayName("has no wind where only its direction or only its speed stands")
    void halfAWind(String wind) {
        assertThat(good(HEADER, "1000,110,15,10," + wind).levels().get(0).wind()).isEmpty();
    }

    @ParameterizedTest(name = "order {0}")
    @ValueSource(ints = {1, 2, 3, 4, 5})
    @DisplayName("is the same sounding with its rows in any order")
    void anyOrder(int seed) {
        List<String> lines = Soundings.lines("v72659_aberdeen_warmnose.csv");
        List<String> rows = new ArrayList<>(lines.subList(1, lines.size()));
        rows.add(",700.0,,,200,10"); // levels by height too
        rows.add(",500.0,,,190,8");
        List<String> shuffled = new ArrayList<>(rows);
        Collections.shuffle(shuffled, new Random(seed));
        assertThat(shuffled).isNotEqualTo(rows);
        assertThat(good(lines.get(0), shuffled).levels())
                .isEqualTo(good(lines.get(0), rows).levels());
    }

    @Test
    @DisplayName("may have its columns in any order, among others")
    void columnsInAnyOrder() {
        Sounding sounding =
                good(
                        "time,temperature_c,wind_speed_mps, wind_from_deg,dewpoint_c,"
                                + "geopotential_height_m,cloud,pressure_hpa",
                        "12:00,15.0,5.0,270,10.0,110,none,1000.0");
        assertThat(sounding.levels()).isEqualTo(good(HEADER, GROUND).levels());
    }

    @Test
    @DisplayName("is read under the other header too: 62 levels without a position of the station")
    void otherHeader() {
        SoundingReading reading = Soundings.read(Soundings.OTHER_NAMES);
        assertThat(reading.problems()).isEmpty();
        List<SoundingLevel> levels = reading.soundings().get(0).levels();
        assertThat(levels).hasSize(62);
        // 1002.0 hPa, no height, 29.0 and 24.1 degC, from 0 degrees with 2.1 m/s
        SoundingLevel lowest = levels.get(0);
        assertThat(lowest.pressurePa()).isEqualTo(100200.0);
        assertThat(lowest.geopotentialAltitude()).isEmpty();
        assertThat(lowest.temperatureK()).isEqualTo(302.15, within(1e-12));
        assertThat(lowest.dewPointK()).isEqualTo(297.25, within(1e-12));
        assertThat(lowest.eastwardMps()).isEqualTo(0.0, within(1e-12));
        assertThat(lowest.northwardMps()).isEqualTo(-2.1, within(1e-12));
        assertThat(levels.get(1).geopotentialAltitudeM()).isEqualTo(74.0);
    }

    @Test
    @DisplayName("may have comments and empty lines anywhere, also above its header")
    void comments() {
        Sounding sounding =
                good("# a balloon", "", HEADER, "# the ground", GROUND, "   ", ALOFT, "#", "");
        assertThat(sounding.levels()).isEqualTo(good(HEADER, GROUND, ALOFT).levels());
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource({"CRLF line ends, '\r\n', ''", "a byte-order mark, '\n', '\uFEFF'"})
    @DisplayName("is the same file with")
    void otherBytes(String what, String lineEnd, String mark, @TempDir Path folder)
            throws IOException {
        List<String> lines = List.of(HEADER, GROUND, ALOFT);
        Path file = folder.resolve("profile.csv");
        Files.writeString(file, mark + String.join(lineEnd, lines) + lineEnd);
        SoundingReading reading = SoundingReader.read(file);
        SoundingReading asLines =
                SoundingReader.read(List.of((mark + String.join(lineEnd, lines)).split("\n")));
        for (SoundingReading each : List.of(reading, asLines)) {
            assertThat(each.problems()).as(what).isEmpty();
            assertThat(each.soundings().get(0).levels())
                    .isEqualTo(good(HEADER, GROUND, ALOFT).levels());
        }
    }

    @Test
    @DisplayName("with nothing under its header is an ascent without levels")
    void headerOnly() {
        assertThat(good(HEADER).levels()).isEmpty();
    }

    @Nested
    @DisplayName("reports")
    class Reports {
        @ParameterizedTest(name = "{0} lines")
        @ValueSource(ints = {0, 1, 3})
        @DisplayName("a file with nothing in it")
        void emptyFile(int blankLines) {
            SoundingReading reading = SoundingReader.read(Collections.nCopies(blankLines, ""));
            assertThat(reading.soundings()).isEmpty();
            assertThat(reading.problems())
                    .containsExactly(
                            new ReadingProblem(1, "line", "", "no header line; nothing read"));
        }

        @Test
        @DisplayName("each column that the header lacks, and reads nothing")
        void missingColumns() {
            String header =
                    "pressure_hpa,geopotential_height_m,Temperature,dewpoint_c,wind_from_deg";
            SoundingReading reading =
                    SoundingReader.read(List.of("# note", header, "1000,1,2,1,0"));
            assertThat(reading.soundings()).isEmpty();
            String reason = "the header has no such column; nothing read";
            assertThat(reading.problems())
                    .containsExactly(
                            new ReadingProblem(2, "temperature_c", header, reason),
                            new ReadingProblem(2, "wind_speed_mps", header, reason));
        }

        @Test
        @DisplayName("a page that is no sounding, once")
        void otherPage() {
            SoundingReading reading =
                    SoundingReader.read(
                            List.of("", "<html><body>", "<h1>Not Found</h1>", "</body></html>"));
            assertThat(reading.soundings()).isEmpty();
            assertThat(reading.problems())
                    .containsExactly(
                            new ReadingProblem(
                                    2,
                                    "line",
                                    "<html><body>",
                                    "no header line of a known format; nothing read"));
        }

        @ParameterizedTest(name = "\"{0}\" has {1}")
        @CsvSource({
            "'850,1500,4.5,-2.0,290', 5",
            "'850,1500,4.5,-2.0,290,12.5,', 7",
            "'850;1500;4.5;-2.0;290;12.5', 1"
        })
        @DisplayName("a row with too few or too many fields, and drops it")
        void wrongNumberOfFields(String row, int fields) {
            SoundingReading reading = SoundingReader.read(List.of(HEADER, GROUND, row));
            assertThat(reading.soundings().get(0).levels()).hasSize(1);
            assertThat(reading.problems())
                    .containsExactly(
                            new ReadingProblem(
                                    3,
                                    "line",
                                    row,
                                    fields + " fields where the header has 6; level dropped"));
        }

        @ParameterizedTest(name = "\"{0}\"")
        @ValueSource(
                strings = {
                    "warm",
                    "NaN",
                    "Infinity",
                    "-Infinity",
                    "0x1p3",
                    "1f",
                    "1d",
                    "1.",
                    ".5",
                    "--1",
                    "1 0",
                    "12345678901",
                    "1e999",
                    "١٥",
                    "\"4.5\""
                })
        @DisplayName("a text where a number belongs, and takes the field as missing")
        void noNumber(String text) {
            SoundingReading reading =
                    SoundingReader.read(List.of(HEADER, "850,1500," + text + ",-2.0,290,12.5"));
            SoundingLevel level = reading.soundings().get(0).levels().get(0);
            assertThat(level.staticAirTemperature()).isEmpty();
            assertThat(level.dewPoint()).isPresent();
            assertThat(reading.problems())
                    .containsExactly(
                            new ReadingProblem(
                                    2, "temperature_c", text, "not a number; taken as missing"));
        }

        @Test
        @DisplayName("1.234,5 as a row with a field too many: no comma is part of a number")
        void decimalComma() {
            String row = "1.234,5,1500,4.5,-2.0,290,12.5";
            SoundingReading reading = SoundingReader.read(List.of(HEADER, row));
            assertThat(reading.soundings().get(0).levels()).isEmpty();
            assertThat(reading.problems())
                    .containsExactly(
                            new ReadingProblem(
                                    2,
                                    "line",
                                    row,
                                    "7 fields where the header has 6; level dropped"));
        }

        @ParameterizedTest(name = "{0} {1}: {2}")
        @CsvSource({
            "pressure_hpa, 1e9, not a possible pressure",
            "pressure_hpa, 1200.1, not a possible pressure",
            "pressure_hpa, 0, not a possible pressure",
            "pressure_hpa, 1e-9, not a possible pressure",
            "pressure_hpa, 0.008, not a possible pressure",
            "pressure_hpa, -850, not a possible pressure",
            "geopotential_height_m, -1000.1, not a possible height",
            "geopotential_height_m, 80000.1, not a possible height",
            "geopotential_height_m, 123456789, not a possible height",
            "temperature_c, 58.9, no temperature of the free air",
            "temperature_c, -150.2, no temperature of the free air",
            "temperature_c, -273.15, no temperature of the free air",
            "temperature_c, 9e99, no temperature of the free air",
            "dewpoint_c, 4.6, a dew point above the temperature",
            "dewpoint_c, -150.2, no dew point of air",
            "wind_from_deg, 360.1, not a possible direction",
            "wind_from_deg, -0.1, not a possible direction",
            "wind_speed_mps, -0.1, not a possible wind speed",
            "wind_speed_mps, 200.1, not a possible wind speed",
        })
        @DisplayName("a number that cannot be, and takes the field as missing")
        void impossible(String field, String text, String reason) {
            SoundingReading reading = SoundingReader.read(List.of(HEADER, with(field, text)));
            assertThat(reading.problems())
                    .containsExactly(
                            new ReadingProblem(2, field, text, reason + "; taken as missing"));
            SoundingLevel level = reading.soundings().get(0).levels().get(0);
            assertThat(level.staticPressure().isPresent()).isEqualTo(!field.startsWith("press"));
            assertThat(level.geopotentialAltitude().isPresent())
                    .isEqualTo(!field.startsWith("geop"));
            assertThat(level.staticAirTemperature().isPresent())
                    .isEqualTo(!field.startsWith("temp"));
            assertThat(level.dewPoint().isPresent()).isEqualTo(!field.startsWith("dew"));
            assertThat(level.wind().isPresent()).isEqualTo(!field.startsWith("wind"));
        }

        @ParameterizedTest(name = "{0} {1}")
        @CsvSource({
            "pressure_hpa, 1200",
            "pressure_hpa, 0.009",
            "geopotential_height_m, -1000",
            "geopotential_height_m, 80000",
            "temperature_c, 58.8",
            "dewpoint_c, 4.5",
            "dewpoint_c, -150.1",
            "wind_from_deg, 0",
            "wind_from_deg, 360",
            "wind_speed_mps, 0",
            "wind_speed_mps, 200"
        })
        @DisplayName("nothing where the number just can be")
        void justPossible(String field, String text) {
            String row = with(field, text);
            if (text.equals("0.009")) {
                row = "0.009,80000,-30,,,"; // dry up there: see the vapour pressure below
            }
            assertThat(good(HEADER, row).levels()).hasSize(1);
        }

        private String with(String field, String text) {
            String[] cells = ALOFT.split(",");
            cells[List.of(HEADER.split(",")).indexOf(field)] = text;
            return String.join(",", cells);
        }

        @Test
        @DisplayName("a dew point whose vapour would be more than all the air")
        void moreVapourThanAir() {
            SoundingReading reading =
                    SoundingReader.read(List.of(HEADER, "8.3,1500,4.5,4.4,290,12.5"));
            assertThat(reading.problems())
                    .containsExactly(
                            new ReadingProblem(
                                    2,
                                    "dewpoint_c",
                                    "4.4",
                                    "a vapour pressure above the pressure; taken as missing"));
        }

        @Test
        @DisplayName("a row without pressure and height, and says if there was something")
        void withoutPlace() {
            SoundingReading reading =
                    SoundingReader.read(List.of(HEADER, ",,4.5,-2.0,290,12.5", "x,,4.5,,,"));
            assertThat(reading.soundings().get(0).levels()).isEmpty();
            assertThat(reading.problems())
                    .containsExactly(
                            new ReadingProblem(
                                    2,
                                    "line",
                                    ",,4.5,-2.0,290,12.5",
                                    "neither pressure nor height; level dropped"),
                            new ReadingProblem(
                                    3, "pressure_hpa", "x", "not a number; taken as missing"),
                            new ReadingProblem(
                                    3,
                                    "line",
                                    "x,,4.5,,,",
                                    "no pressure and no height left; level dropped"));
        }

        @Test
        @DisplayName("a pressure that was there before, and keeps the first row")
        void repeatedPressure() {
            String again = "1000,,14.0,,,";
            SoundingReading reading = SoundingReader.read(List.of(HEADER, GROUND, ALOFT, again));
            assertThat(reading.soundings().get(0).levels())
                    .isEqualTo(good(HEADER, GROUND, ALOFT).levels());
            assertThat(reading.problems())
                    .containsExactly(
                            new ReadingProblem(
                                    4,
                                    "pressure_hpa",
                                    again,
                                    "repeats the pressure of a level before; level dropped"));
        }

        @Test
        @DisplayName("a pressure within a part in 1e9 of one before as the same")
        void nearlyRepeatedPressure() {
            String again = "999.9999999999,,14.0,,,";
            SoundingReading reading = SoundingReader.read(List.of(HEADER, GROUND, again, ALOFT));
            assertThat(reading.soundings().get(0).levels()).hasSize(2);
            assertThat(reading.problems())
                    .extracting(ReadingProblem::line, ReadingProblem::text)
                    .containsExactly(tuple(3, again));
            assertThat(good(HEADER, GROUND, "999.99999,,14.0,,,", ALOFT).levels()).hasSize(3);
        }

        @Test
        @DisplayName("a height that falls, drops it and keeps the level and the heights after it")
        void fallingHeight() {
            String slip = "900,9880,8.0,,,"; // 988.0 without its point
            SoundingReading reading =
                    SoundingReader.read(List.of(HEADER, GROUND, slip, ALOFT, "700,3100,-4,,,"));
            assertThat(
                            reading.soundings().get(0).levels().stream()
                                    .mapToDouble(SoundingLevel::geopotentialAltitudeM))
                    .containsExactly(110.0, Double.NaN, 1500.0, 3100.0);
            assertThat(reading.problems())
                    .containsExactly(
                            new ReadingProblem(
                                    3,
                                    "geopotential_height_m",
                                    slip,
                                    "does not rise with the levels around; height dropped"));
        }

        @Test
        @DisplayName("what is wrong in the order of the file, and within a line in that of fields")
        void order() {
            List<String> lines =
                    List.of(HEADER, "1000,a,b,,,", "900,,,c,,", "1000,,,,,", "800,,,,d,e");
            assertThat(SoundingReader.read(lines).problems().stream().map(ReadingProblem::toString))
                    .containsExactly(
                            "line 2, geopotential_height_m \"a\": not a number; taken as missing",
                            "line 2, temperature_c \"b\": not a number; taken as missing",
                            "line 3, dewpoint_c \"c\": not a number; taken as missing",
                            "line 4, pressure_hpa \"1000,,,,,\": repeats the pressure of a level"
                                    + " before; level dropped",
                            "line 5, wind_from_deg \"d\": not a number; taken as missing",
                            "line 5, wind_speed_mps \"e\": not a number; taken as missing");
        }
    }

    private static Sounding good(String header, List<String> rows) {
        List<String> lines = new ArrayList<>(rows);
        lines.add(0, header);
        return good(lines.toArray(new String[0]));
    }

    private static Sounding good(String... lines) {
        SoundingReading reading = SoundingReader.read(Arrays.asList(lines));
        assertThat(reading.problems()).isEmpty();
        assertThat(reading.soundings()).hasSize(1);
        return reading.soundings().get(0);
    }
}
