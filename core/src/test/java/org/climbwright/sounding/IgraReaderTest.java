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

@DisplayName("An IGRA file")
class IgraReaderTest {
    private static final String HEADER =
            "#USM00070026 2010 06 01 00 2303    4 ncdc6301 ncdc6301  712889 -1567833";
    private static final String GROUND = "21     0 100980B   12     0B 1000     0    20    51 ";
    private static final String ALOFT = "10   242  92500   712B  -12B  954     7    41    26 ";
    private static final String HIGHER = "10   518  85000  1383B  -35B  946     8    64    21 ";
    private static final String BY_HEIGHT = "30   600  -9999  2000 -9999 -9999 -9999    75    36 ";
    private static final List<String> FLAWLESS = List.of(HEADER, GROUND, ALOFT, HIGHER, BY_HEIGHT);

    private static final String DERIVED_HEADER =
            "#USM00070026 2014 09 10 00 2304    1    721-99999-99999-99999 94615   606100321   141"
                    + " 97903   335 97903   335 93776   676    20    12    -4    39     8     0";
    private static final String DERIVED =
            " 102095      15      15    2749    -136    2732     -45    2754    2738    5706   "
                    + " 6939     820     822   -3182     -60    -136     -39     364     316";

    @Test
    @DisplayName("is read by its columns")
    void flawless() {
        SoundingReading reading = SoundingReader.read(FLAWLESS);
        assertThat(reading.problems()).isEmpty();
        assertThat(reading.soundings().get(0).levels())
                .containsExactly(
                        Level.hpa(1009.8)
                                .metres(12)
                                .celsius(0)
                                .dewPoint(0)
                                .wind(20, 5.1)
                                .reported(),
                        Level.hpa(925)
                                .metres(712)
                                .celsius(-1.2)
                                .dewPoint(-1.9)
                                .wind(41, 2.6)
                                .reported(),
                        Level.hpa(850)
                                .metres(1383)
                                .celsius(-3.5)
                                .dewPoint(-4.3)
                                .wind(64, 2.1)
                                .reported(),
                        SoundingLevel.ofSi(
                                Double.NaN,
                                2000.0,
                                Double.NaN,
                                Double.NaN,
                                Level.hpa(1).wind(75, 3.6).eastwardMps(),
                                Level.hpa(1).wind(75, 3.6).northwardMps()));
    }

    @Test
    @DisplayName("with derived parameters has kelvins, vapour pressures and wind components")
    void derived() {
        SoundingReading reading = SoundingReader.read(List.of(DERIVED_HEADER, DERIVED));
        assertThat(reading.problems()).isEmpty();
        SoundingLevel level = reading.soundings().get(0).levels().get(0);
        assertThat(level.pressurePa()).isEqualTo(102095.0);
        assertThat(level.geopotentialAltitudeM()).isEqualTo(15.0);
        assertThat(level.temperatureK()).isEqualTo(274.9, within(1e-12));
        // 5.706 hPa; the file's own relative humidity of 82.0 % and the dew-point depression of
        // 2.7 K in the observation agree with a dew point near -0.9 degC
        assertThat(level.dewPointK()).isEqualTo(272.3, within(0.1));
        assertThat(level.eastwardMps()).isEqualTo(-6.0, within(1e-12));
        assertThat(level.northwardMps()).isEqualTo(-3.9, within(1e-12));
    }

    @Test
    @DisplayName("may have an hour that nobody knows, and blanks for leading zeros")
    void unknownHour() {
        String header = HEADER.replace("2010 06 01 00", "2010  6  1 99");
        assertThat(read(header, GROUND, ALOFT, HIGHER, BY_HEIGHT).soundings().get(0).launch())
                .isEqualTo("2010-06-01");
    }

    @ParameterizedTest(name = "\"{0}\"")
    @ValueSource(strings = {"", "   ", "\r"})
    @DisplayName("may end with an empty line")
    void emptyLines(String empty) {
        List<String> lines = new ArrayList<>(FLAWLESS);
        lines.add(empty);
        assertThat(SoundingReader.read(lines)).isEqualTo(SoundingReader.read(FLAWLESS));
    }

    @Test
    @DisplayName("may have CRLF line ends and a byte-order mark")
    void otherBytes() {
        List<String> lines = new ArrayList<>(FLAWLESS);
        lines.replaceAll(line -> line + "\r");
        lines.set(0, "\uFEFF" + lines.get(0));
        assertThat(SoundingReader.read(lines)).isEqualTo(SoundingReader.read(FLAWLESS));
    }

    @ParameterizedTest(name = "{0}")
    @ValueSource(strings = {"-9999", "-8888"})
    @DisplayName("tells a missing or a removed number by a code, and that is no problem")
    void missingCodes(String code) {
        SoundingReading reading =
                read(
                        HEADER,
                        GROUND,
                        ALOFT.replace("   712B  -12B", " -9999B-9999B".replace("-9999", code)),
                        HIGHER.replace(
                                "  946     8    64    21",
                                code + " " + code + " " + code + " " + code),
                        BY_HEIGHT);
        assertThat(reading.problems()).isEmpty();
        List<SoundingLevel> levels = reading.soundings().get(0).levels();
        assertThat(levels.get(1).geopotentialAltitude()).isEmpty();
        assertThat(levels.get(1).staticAirTemperature()).isEmpty();
        assertThat(levels.get(1).dewPoint()).isEmpty();
        assertThat(levels.get(1).wind()).isPresent();
        assertThat(levels.get(2).staticAirTemperature()).isPresent();
        assertThat(levels.get(2).dewPoint()).isEmpty();
        assertThat(levels.get(2).wind()).isEmpty();
    }

    @ParameterizedTest(name = "{0} at {1}: {2}")
    @CsvSource({
        "'  500', 0, -9.178",
        "' 1000', 0, 0",
        "'  269', -281, -41.379",
        "'    1', -281, -83.425"
    })
    @DisplayName(
            "has a dew point from relative humidity, over water, where the depression is missing")
    void dewPointOfHumidity(String tenths, int celsiusTenths, double expected) {
        String line = withoutDepression(tenths).replace("  -12B", "%5dB".formatted(celsiusTenths));
        SoundingReading reading = read(HEADER, GROUND, line, HIGHER, BY_HEIGHT);
        assertThat(reading.problems()).isEmpty();
        // expected by the formula as its paper prints it, solved by bisection; 0.0005 is rounding
        assertThat(dewPointC(reading)).isEqualTo(expected, within(0.00051));
    }

    @ParameterizedTest(name = "RH {0}")
    @ValueSource(strings = {"    0", "-9999", "-8888"})
    @DisplayName("has none where relative humidity is 0, less than it prints, or missing too")
    void noDewPointOfHumidity(String tenths) {
        SoundingReading reading =
                read(HEADER, GROUND, withoutDepression(tenths), HIGHER, BY_HEIGHT);
        assertThat(reading.problems()).isEmpty();
        assertThat(reading.soundings().get(0).levels().get(1).dewPoint()).isEmpty();
    }

    @Test
    @DisplayName("has the dew point of its depression where it tells both")
    void depressionFirst() {
        SoundingReading reading =
                read(HEADER, GROUND, ALOFT.replace("  954", "  100"), HIGHER, BY_HEIGHT);
        assertThat(dewPointC(reading)).isEqualTo(-1.9, within(1e-9));
    }

    private static String withoutDepression(String relativeHumidityTenths) {
        return ALOFT.replace("  954     7", relativeHumidityTenths + " -9999");
    }

    private static double dewPointC(SoundingReading reading) {
        return reading.soundings().get(0).levels().get(1).dewPoint().orElseThrow().inCelsius();
    }

    @ParameterizedTest(name = "{0}")
    @ValueSource(strings = {"-99999", "-88888"})
    @DisplayName("with derived parameters has codes of its own for that")
    void missingCodesOfDerived(String code) {
        String line =
                DERIVED.replace(
                        "    5706    6939     820     822   -3182     -60",
                        "  " + code + "    6939     820     822   -3182  " + code);
        SoundingReading reading = SoundingReader.read(List.of(DERIVED_HEADER, line));
        assertThat(reading.problems()).isEmpty();
        SoundingLevel level = reading.soundings().get(0).levels().get(0);
        assertThat(level.staticAirTemperature()).isPresent();
        assertThat(level.dewPoint()).isEmpty();
        assertThat(level.wind()).isEmpty();
    }

    @Test
    @DisplayName(
            "with derived parameters may have a vapour pressure of 0, which tells no dew point")
    void noVapour() {
        String line = DERIVED.replace("    5706    6939", "       0    6939");
        SoundingReading reading = SoundingReader.read(List.of(DERIVED_HEADER, line));
        assertThat(reading.problems()).isEmpty();
        assertThat(reading.soundings().get(0).levels().get(0).dewPoint()).isEmpty();
    }

    @Nested
    @DisplayName("reports")
    class Reports {
        @ParameterizedTest(name = "{0} with \"{2}\" for \"{1}\"")
        @CsvSource({
            "PRESS, '  92500', '  925x0', 925x0, not a whole number",
            "GPH, '  712B', ' 7.12B', 7.12, not a whole number",
            "TEMP, '  -12B', ' --12B', --12, not a whole number",
            "TEMP, '  -12B', '     B', '', not a whole number",
            "DPDP, '     7 ', '    +7 ', +7, not a whole number",
            "WDIR, '   41 ', '  4 1 ', 4 1, not a whole number",
            "WSPD, '   26 ', '  NaN ', NaN, not a whole number",
            "PRESS, '  92500', ' 192500', 192500, not a possible pressure",
            "GPH, '  712B', '-1001B', -1001, not a possible height",
            "TEMP, '  -12B', '  589B', 589, no temperature of the free air",
            "DPDP, '     7 ', '    -1 ', -1, a dew point above the temperature",
            "DPDP, '     7 ', '  1490 ', 1490, no dew point of air",
            "WDIR, '   41 ', '  361 ', 361, not a possible direction",
            "WSPD, '   26 ', ' 2001 ', 2001, not a possible wind speed",
            "WSPD, '   26 ', '   -1 ', -1, not a possible wind speed"
        })
        @DisplayName("a field with what cannot be, and takes it as missing")
        void field(String field, String good, String bad, String text, String reason) {
            String line = ALOFT.replace(good, bad);
            assertThat(line).isNotEqualTo(ALOFT).hasSameSizeAs(ALOFT);
            SoundingReading reading = read(HEADER, GROUND, line, HIGHER, BY_HEIGHT);
            assertThat(reading.problems())
                    .containsExactly(
                            new ReadingProblem(3, field, text, reason + "; taken as missing"));
            assertThat(reading.soundings().get(0).levels()).hasSize(4);
        }

        @ParameterizedTest(name = "\"{0}\"")
        @CsvSource({
            "' 1001', 1001, not a possible relative humidity",
            "'   -1', -1, not a possible relative humidity",
            "'  9x4', 9x4, not a whole number"
        })
        @DisplayName("a relative humidity that cannot be, where it is needed")
        void relativeHumidity(String tenths, String text, String reason) {
            SoundingReading reading =
                    read(HEADER, GROUND, withoutDepression(tenths), HIGHER, BY_HEIGHT);
            assertThat(reading.problems())
                    .containsExactly(
                            new ReadingProblem(3, "RH", text, reason + "; taken as missing"));
            assertThat(reading.soundings().get(0).levels().get(1).dewPoint()).isEmpty();
        }

        @ParameterizedTest(name = "{0} with \"{2}\" for \"{1}\"")
        @CsvSource({
            "VAPPRESS, '    5706', '    -100', -100, not a possible vapour pressure",
            "VAPPRESS, '    5706', ' 9000000', 9000000, not a possible vapour pressure",
            "VAPPRESS, '    5706', '    7000', 7000, a dew point above the temperature",
            "TEMP, '    2749', '    1229', 1229, no temperature of the free air",
            "UWND, '     -60', '   -2001', -2001, not a possible wind speed",
            "VWND, '     -39', '    2001', 2001, not a possible wind speed",
            "REPGPH, '      15      15', '   80001      15', 80001, not a possible height"
        })
        @DisplayName("a field of a derived line with what cannot be")
        void derivedField(String field, String good, String bad, String text, String reason) {
            String line = DERIVED.replaceFirst(good, bad);
            assertThat(line).isNotEqualTo(DERIVED);
            assertThat(SoundingReader.read(List.of(DERIVED_HEADER, line)).problems())
                    .containsExactly(
                            new ReadingProblem(2, field, text, reason + "; taken as missing"));
        }

        @Test
        @DisplayName("numbers that slipped out of their columns, and takes no part of one for it")
        void shiftedLine() {
            String shifted = ALOFT.replace("  92500", "   92500"); // 9250 in the columns of PRESS
            SoundingReading reading = read(HEADER, GROUND, shifted, HIGHER, BY_HEIGHT);
            String reason = "not in its columns; taken as missing";
            assertThat(reading.problems())
                    .containsExactly(
                            new ReadingProblem(3, "PRESS", "9250", reason),
                            new ReadingProblem(3, "GPH", "71", reason),
                            new ReadingProblem(3, "TEMP", "B  -1", reason),
                            new ReadingProblem(3, "DPDP", "", reason),
                            new ReadingProblem(3, "WDIR", "4", reason),
                            new ReadingProblem(3, "WSPD", "2", reason),
                            new ReadingProblem(
                                    3,
                                    "line",
                                    shifted.trim(),
                                    "no pressure and no height left; level dropped"));
            assertThat(reading.soundings().get(0).levels()).hasSize(3);
        }

        @Test
        @DisplayName("a line that was cut, and does not use the number at its end")
        void cutLine() {
            String cut = ALOFT.substring(0, 20); // "10   242  92500   71"
            SoundingReading reading = read(HEADER, GROUND, cut, HIGHER, BY_HEIGHT);
            assertThat(reading.problems())
                    .containsExactly(
                            new ReadingProblem(3, "GPH", "71", "cut off; taken as missing"),
                            new ReadingProblem(3, "TEMP", "", "cut off; taken as missing"),
                            new ReadingProblem(3, "DPDP", "", "cut off; taken as missing"),
                            new ReadingProblem(3, "WDIR", "", "cut off; taken as missing"),
                            new ReadingProblem(3, "WSPD", "", "cut off; taken as missing"));
            SoundingLevel level = reading.soundings().get(0).levels().get(1);
            assertThat(level).isEqualTo(Level.hpa(925).reported());
        }

        @Test
        @DisplayName("a file of derived parameters that was cut in its first level, as such")
        void cutDerivedFile() {
            String cut = DERIVED.substring(0, 36); // up to a part of PTEMP
            SoundingReading reading = SoundingReader.read(List.of(DERIVED_HEADER, cut));
            assertThat(reading.problems())
                    .containsExactly(
                            new ReadingProblem(2, "VAPPRESS", "", "cut off; taken as missing"),
                            new ReadingProblem(2, "UWND", "", "cut off; taken as missing"),
                            new ReadingProblem(2, "VWND", "", "cut off; taken as missing"));
            SoundingLevel level = reading.soundings().get(0).levels().get(0);
            assertThat(level.pressurePa()).isEqualTo(102095.0);
            assertThat(level.temperatureK()).isEqualTo(274.9, within(1e-12));
        }

        @Test
        @DisplayName("a file that was cut: levels announced and found")
        void cutFile() {
            SoundingReading reading = read(HEADER, GROUND, ALOFT);
            assertThat(reading.problems())
                    .containsExactly(
                            new ReadingProblem(
                                    1,
                                    "line",
                                    "USM00070026 2010-06-01T00",
                                    "4 levels announced, but 2 found"));
            assertThat(reading.soundings().get(0).levels()).hasSize(2);
        }

        @Test
        @DisplayName("a level with neither pressure nor height, and drops it")
        void withoutPlace() {
            String nowhere = BY_HEIGHT.replace(" 2000 ", "-9999 ");
            String spoilt = BY_HEIGHT.replace(" 2000 ", " 20x0 ");
            SoundingReading reading = read(HEADER, GROUND, ALOFT, nowhere, spoilt);
            assertThat(reading.soundings().get(0).levels()).hasSize(2);
            assertThat(reading.problems())
                    .containsExactly(
                            new ReadingProblem(
                                    4,
                                    "line",
                                    nowhere.trim(),
                                    "neither pressure nor height; level dropped"),
                            new ReadingProblem(
                                    5, "GPH", "20x0", "not a whole number; taken as missing"),
                            new ReadingProblem(
                                    5,
                                    "line",
                                    spoilt.trim(),
                                    "no pressure and no height left; level dropped"));
        }

        @Test
        @DisplayName("a pressure that the level before had, and keeps the level before")
        void repeatedPressure() {
            String again = ALOFT.replace("712B", "720B");
            SoundingReading reading = read(HEADER, GROUND, ALOFT, again, HIGHER);
            assertThat(reading.problems())
                    .containsExactly(
                            new ReadingProblem(
                                    4,
                                    "PRESS",
                                    again.trim(),
                                    "repeats the pressure of a level before; level dropped"));
            assertThat(reading.soundings().get(0).levels())
                    .extracting(SoundingLevel::geopotentialAltitudeM)
                    .containsExactly(12.0, 712.0, 1383.0);
        }

        @ParameterizedTest(name = "{0}")
        @ValueSource(strings = {"  1000", "119999"})
        @DisplayName(
                "one pressure that is far too low or too high, and keeps the good ones after it")
        void spike(String pressure) {
            String spike = ALOFT.replace(" 92500", pressure).replace("712B", "500B");
            SoundingReading reading = read(HEADER, GROUND, spike, ALOFT, HIGHER);
            assertThat(reading.problems())
                    .containsExactly(
                            new ReadingProblem(
                                    3,
                                    "PRESS",
                                    spike.trim(),
                                    "does not fall with the levels around; level dropped"));
            assertThat(reading.soundings().get(0).levels())
                    .extracting(SoundingLevel::pressurePa)
                    .containsExactly(100980.0, 92500.0, 85000.0);
        }

        @Test
        @DisplayName(
                "one height that is far too high, and keeps its level and the heights after it")
        void spikeOfHeight() {
            String spike = ALOFT.replace("  712B", " 7120B");
            String highest = HIGHER.replace(" 85000  1383B", " 80000  1900B");
            SoundingReading reading = read(HEADER, GROUND, spike, HIGHER, highest);
            assertThat(reading.problems())
                    .containsExactly(
                            new ReadingProblem(
                                    3,
                                    "GPH",
                                    spike.trim(),
                                    "does not rise with the levels around; height dropped"));
            assertThat(reading.soundings().get(0).levels())
                    .extracting(SoundingLevel::geopotentialAltitudeM)
                    .containsExactly(12.0, Double.NaN, 1383.0, 1900.0);
        }

        @ParameterizedTest(name = "{0}")
        @ValueSource(
                strings = {
                    "#USM00070026 2010 06 01 00 2303  1 2 ncdc6301",
                    "#USM0007002  2010 06 01 00 2303    4 ncdc6301",
                    "#USM00070026 2010 xx 01 00 2303    4 ncdc6301",
                    "#USM00070026",
                    "#"
                })
        @DisplayName("a header that is broken, drops its levels, and reads the ascents around it")
        void brokenHeader(String broken) {
            String one = HEADER.replace("   4 ", "   1 ");
            SoundingReading reading = read(broken, GROUND, ALOFT, one, GROUND, broken, HIGHER);
            assertThat(reading.soundings()).hasSize(1);
            assertThat(reading.soundings().get(0).levels()).hasSize(1);
            assertThat(reading.problems())
                    .containsExactly(
                            noHeader(1, broken),
                            noAscent(2, GROUND),
                            noAscent(3, ALOFT),
                            noHeader(6, broken),
                            noAscent(7, HIGHER));
        }

        private ReadingProblem noHeader(int line, String text) {
            return new ReadingProblem(
                    line, "line", text, "not the header of an ascent; its levels dropped");
        }

        private ReadingProblem noAscent(int line, String text) {
            return new ReadingProblem(
                    line, "line", text.trim(), "no ascent to belong to; level dropped");
        }

        @Test
        @DisplayName("two lines that lost the break between them, and reads the others as before")
        void joinedLines() {
            SoundingReading reading = read(HEADER, GROUND, ALOFT + HIGHER, BY_HEIGHT);
            assertThat(reading.problems())
                    .containsExactly(
                            new ReadingProblem(
                                    1,
                                    "line",
                                    "USM00070026 2010-06-01T00",
                                    "4 levels announced, but 3 found"));
            assertThat(reading.soundings().get(0).levels())
                    .extracting(SoundingLevel::pressurePa)
                    .containsExactly(100980.0, 92500.0, Double.NaN);
        }
    }

    private static SoundingReading read(String... lines) {
        return SoundingReader.read(List.of(lines));
    }
}
