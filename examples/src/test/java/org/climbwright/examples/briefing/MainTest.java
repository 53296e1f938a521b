package org.climbwright.examples.briefing;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

@DisplayName("The briefing program")
class MainTest {
    private static final String HEADER =
            "pressure_hpa,geopotential_height_m,temperature_c,dewpoint_c,wind_from_deg,wind_speed_mps\n";

    @TempDir private Path folder;
    private String scenario;

    @BeforeEach
    void bundledScenario() throws IOException {
        try (InputStream in = Main.class.getResourceAsStream("scenario.toml")) {
            scenario = new String(in.readAllBytes(), StandardCharsets.UTF_8);
        }
    }

    @Test
    @DisplayName("climbs through a sounding of one's own at an elevation of one's own")
    void ownSounding() throws IOException {
        Path csv =
                write(
                        "own.csv",
                        HEADER
                                + "1000,100,10,8,270,5\n900,990,4,2,280,10\n"
                                + "500,5600,-20,-30,300,30\n200,11800,-55,,310,50\n");
        Program run = Program.run("--sounding", csv.toString(), "--elevation", "100 m");
        assertThat(run.code()).isZero();
        assertThat(run.out()).contains("elevation 328 ft").contains("observed sounding own.csv");
        assertThat(run.out()).contains(": cannot tell");
    }

    private static String byRates() throws IOException {
        try (InputStream in = Main.class.getResourceAsStream("by-rates.toml")) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        }
    }

    @Test
    @DisplayName("climbs by a table of rates as well, which knows no fuel")
    void byATableOfRates() throws IOException {
        write("by-rates.toml", byRates());
        Path csv = folder.resolve("norman-january-20.csv");
        try (InputStream in = Main.class.getResourceAsStream("norman-january-20.csv")) {
            Files.copy(in, csv);
        }
        String toml = folder.resolve("by-rates.toml").toString();
        Program text = Program.run("--scenario", toml);
        assertThat(text.code()).as(text.err()).isZero();
        assertThat(text.out())
                .contains("fuel not known by a table of rates: level reached")
                .contains("The table of rates is for ISA+0 K")
                .doesNotContain("WHERE THE EXCESS POWER GOES");
        Program json = Program.run("--scenario", toml, "--format", "json");
        JsonNode top = new ObjectMapper().readTree(json.out()).get("topOfClimb");
        assertThat(top.get("fuelKg").isNull()).isTrue();
        assertThat(top.get("massKg").doubleValue()).isEqualTo(58000);
    }

    @Test
    @DisplayName("begins with the weather report of the aerodrome, on its QNH")
    void report() throws IOException {
        Path csv =
                write(
                        "own.csv",
                        HEADER
                                + "1000,100,10,8,270,5\n900,990,4,2,280,10\n"
                                + "500,5600,-20,-30,300,30\n200,11800,-55,,310,50\n");
        Program run =
                Program.run(
                        "--sounding",
                        csv.toString(),
                        "--elevation",
                        "400 m",
                        "--report",
                        "EFOU 011150Z 28013KT CAVOK 16/10 Q1011");
        assertThat(run.code()).isZero();
        assertThat(run.out())
                .contains("QNH 1011.00 hPa (stated)")
                .contains("observed sounding own.csv, below it the report EFOU 11:50 UTC")
                // altitude on QNH and true altitude both are the elevation, 1312 ft, 16 °C
                .contains("1312   1312   16.0");
    }

    @Test
    @DisplayName("ends the climb where the sounding ends, and says so")
    void shallowSounding() throws IOException {
        Path csv = write("own.csv", HEADER + "1000,100,10,8,270,5\n500,5600,-20,-30,300,30\n");
        Program run = Program.run("--sounding", csv.toString());
        assertThat(run.code()).isZero();
        assertThat(run.out())
                .contains("The climb ends at 18289 ft and not at 35000 ft: the known air ends.");
    }

    @Test
    @DisplayName("has null for ground speed and distance where no wind was observed")
    void noWind() throws IOException {
        Path csv = write("own.csv", HEADER + "1000,100,10,8,,\n200,11800,-55,,,\n");
        Program run = Program.run("--sounding", csv.toString(), "--format", "json");
        JsonNode last = new ObjectMapper().readTree(run.out()).get("levels").get(5);
        assertThat(last.get("groundSpeedKn").isNull()).isTrue();
        assertThat(last.get("distanceNm").isNull()).isTrue();
        assertThat(last.get("gradientPercent").isNull()).isTrue();
        assertThat(last.get("timeS").isNumber()).isTrue();
        assertThat(run.out()).contains("No wind was observed at");
    }

    @Test
    @DisplayName("takes a calm for unobserved wind when the scenario says so")
    void calm() throws IOException {
        write("own.csv", HEADER + "1000,100,10,8,,\n200,11800,-55,,,\n");
        Path toml =
                write(
                        "own.toml",
                        scenario.replace("norman-january-20.csv", "own.csv")
                                .replace("\"not known\"", "\"calm\""));
        Program run = Program.run("--scenario", toml.toString(), "--format", "json");
        assertThat(run.code()).isZero();
        JsonNode level = new ObjectMapper().readTree(run.out()).get("levels").get(5);
        assertThat(level.get("alongTrackWindKn").doubleValue()).isZero();
        assertThat(level.get("groundSpeedKn").isNumber()).isTrue();
    }

    @Test
    @DisplayName(
            "tells on standard error what it could not read of a sounding, and briefs the rest")
    void brokenSounding() throws IOException {
        Path csv =
                write(
                        "own.csv",
                        HEADER
                                + "1000,100,10,8,270,5\n"
                                + "900,99x,4,2,280,10\n"
                                + "200,11800,-55,,310,50\n");
        Program run = Program.run("--sounding", csv.toString());
        assertThat(run.code()).isZero();
        assertThat(run.err())
                .isEqualTo(
                        "sounding: line 3, geopotential_height_m \"99x\": not a number; taken as"
                                + " missing\n");
    }

    @Test
    @DisplayName("keeps 100 columns where a restriction has a long name and two levels on QNH")
    void longRestriction() throws IOException {
        Path csv = folder.resolve("norman-january-20.csv");
        try (InputStream in = Main.class.getResourceAsStream("norman-january-20.csv")) {
            Files.copy(in, csv);
        }
        String row =
                "[\"A POINT WITH A LONG NAME (invented)\", \"6 NM\", \"between\","
                        + " \"4000 ft\", \"6000 ft\"],\n";
        Path toml =
                write("own.toml", scenario.replaceFirst("(?m)^rows = \\[$", "rows = [\n" + row));
        Program run = Program.run("--scenario", toml.toString());
        assertThat(run.code()).as(run.err()).isZero();
        assertThat(run.out().lines()).allMatch(line -> line.length() <= 100);
        assertThat(run.out())
                .containsPattern("   6.0  A POINT WITH A... +as below +met ")
                .containsPattern("\n +between 4000 ft on QNH and 6000 ft on QNH\n");
    }

    @Test
    @DisplayName("tells in its help every option, and that the JSON has units of its own")
    void help() {
        Program run = Program.run("--help");
        assertThat(run.code()).isZero();
        assertThat(run.out())
                .contains("--format=text|csv|json|html", "--units=feet-knots|metric", "--schema")
                .containsPattern("not for\\s+json, whose names carry the units");
    }

    @Nested
    @DisplayName("refuses with one sentence and exit code 2")
    class Refuses {
        @Test
        @DisplayName("an elevation with a thousands separator")
        void thousands() {
            refused(
                    Program.run("--elevation", "1,200 ft"),
                    "--elevation: cannot read \"1,200 ft\" as geopotential altitude: expected a"
                        + " space and a unit of length (m, ft, NM, km, µm, in) at character 2, but"
                        + " found ','\n");
        }

        @Test
        @DisplayName("an elevation outside the sounding, with the range")
        void elevation() {
            refused(
                    Program.run("--elevation", "100 m"),
                    "aerodrome elevation must be from 345.0 to 11950.0 m, but was 100.0 m: the"
                            + " sounding has no air outside, choose an elevation within it\n");
        }

        @Test
        @DisplayName("a report without a temperature, with the reason")
        void reportWithoutTemperature() {
            Program run =
                    Program.run("--report", "TNCE 011155Z AUTO 07013KT //// // ///////// Q1018");
            assertThat(run.code()).isEqualTo(2);
            assertThat(run.err()).startsWith("--report: air needs temperature and QNH, but the");
        }

        @Test
        @DisplayName("files that are not there")
        void missingFiles() {
            refused(Program.run("--scenario", "none.toml"), "there is no scenario none.toml\n");
            refused(Program.run("--sounding", "none.csv"), "there is no sounding none.csv\n");
        }

        @Test
        @DisplayName("a launch that the file does not have")
        void launch() {
            refused(
                    Program.run("--launch", "2010"),
                    "launch must name one ascent of the file, but \"2010\" fits 0 of []\n");
        }

        @Test
        @DisplayName("a scenario with a wrong unit, with line and field")
        void wrongUnit() throws IOException {
            Path toml = write("own.toml", scenario.replace("\"FL350\"", "\"350 kn\""));
            refused(
                    Program.run("--scenario", toml.toString()),
                    "scenario "
                            + toml
                            + " line 13, climb.level: cannot read \"350 kn\" as pressure altitude:"
                            + " expected a unit of length (m, ft, NM, km, µm, in) at character 5,"
                            + " but found 'k'\n");
        }

        @Test
        @DisplayName("a scenario with a number without a unit, a missing or an unknown field")
        void otherFields() throws IOException {
            Path bare = write("bare.toml", scenario.replace("\"58000 kg\"", "58000"));
            refused(
                    Program.run("--scenario", bare.toString()),
                    "scenario "
                            + bare
                            + " line 15, climb.mass: must be a text with its unit, in quotes, but"
                            + " was 58000\n");
            Path missing = write("missing.toml", scenario.replace("mach = \"M0.76\"", ""));
            refused(
                    Program.run("--scenario", missing.toString()),
                    "scenario " + missing + ": speeds.mach is missing\n");
            Path unknown = write("unknown.toml", scenario + "\ncloud = \"yes\"\n");
            Program run = Program.run("--scenario", unknown.toString());
            assertThat(run.code()).isEqualTo(2);
            assertThat(run.err()).contains("air.cloud: is no field of a scenario");
        }

        @Test
        @DisplayName("a table of rates that does not climb, with line and field")
        void rates() throws IOException {
            Path toml = write("own.toml", byRates().replace("\"450 ft/min\"", "\"0 ft/min\""));
            Program run = Program.run("--scenario", toml.toString());
            assertThat(run.code()).isEqualTo(2);
            assertThat(run.err())
                    .contains(", rates: a rate of climb in a table must be a finite number above");
        }

        @Test
        @DisplayName("a format and units that it does not know, with those that it does")
        void unknownOptions() {
            refused(
                    Program.run("--format", "xml"),
                    "Invalid value for option '--format': expected one of [TEXT, CSV, JSON, HTML]"
                            + " (case-insensitive) but was 'xml'\n");
            refused(
                    Program.run("--units", "miles"),
                    "Invalid value for option '--units': expected feet-knots or metric but was"
                            + " 'miles'\n");
            refused(Program.run("--unit", "metric"), "Unknown options: '--unit', 'metric'\n");
        }

        @Test
        @DisplayName("units for the JSON, whose names carry theirs, and for the page")
        void unitsOfJson() {
            refused(
                    Program.run("--format", "json", "--units", "metric"),
                    "--units is for text and csv: the names in the JSON carry their units, so"
                            + " leave it out with --format json\n");
            refused(
                    Program.run("--format", "html", "--units", "metric"),
                    "--units is for text and csv: the page is in feet and knots, so leave it out"
                            + " with --format html\n");
        }

        private void refused(Program run, String message) {
            assertThat(run.err()).isEqualTo(message);
            assertThat(run.code()).isEqualTo(2);
            assertThat(run.out()).isEmpty();
        }
    }

    private Path write(String name, String text) throws IOException {
        return Files.writeString(folder.resolve(name), text);
    }
}
