package org.climbwright.examples.briefing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("The briefing as CSV")
class CsvReportTest {
    private static final Map<String, String> FIELDS =
            Map.ofEntries(
                    Map.entry("pressure altitude [ft]", "pressureAltitudeFt"),
                    Map.entry("altitude on QNH [ft]", "altitudeOnQnhFt"),
                    Map.entry("true altitude [ft]", "trueAltitudeFt"),
                    Map.entry("static air temperature [°C]", "staticAirTemperatureC"),
                    Map.entry("ISA deviation [K]", "isaDeviationK"),
                    Map.entry("total air temperature [°C]", "totalAirTemperatureC"),
                    Map.entry("calibrated airspeed [kn]", "calibratedAirspeedKn"),
                    Map.entry("Mach", "mach"),
                    Map.entry("true airspeed [kn]", "trueAirspeedKn"),
                    Map.entry("along-track wind [kn]", "alongTrackWindKn"),
                    Map.entry("ground speed [kn]", "groundSpeedKn"),
                    Map.entry("rate of pressure altitude [ft/min]", "rateFtPerMin"),
                    Map.entry("gradient over the ground [%]", "gradientPercent"),
                    Map.entry("gradient over the ground [ft/NM]", "gradientFtPerNm"),
                    Map.entry("time [s]", "timeS"),
                    Map.entry("distance [NM]", "distanceNm"),
                    Map.entry("mass [kg]", "massKg"),
                    Map.entry("fuel [kg]", "fuelKg"));

    private static Program run;
    private static List<NamedCsvRecord> rows;
    private static JsonNode levels;

    @BeforeAll
    static void run() throws Exception {
        run = Program.run("--format", "csv");
        rows = read(run);
        levels = new ObjectMapper().readTree(Program.run("--format", "json").out()).get("levels");
    }

    private static List<NamedCsvRecord> read(Program program) {
        assertThat(program.code()).as(program.err()).isZero();
        return CsvReader.builder().ofNamedCsvRecord(program.out()).stream().toList();
    }

    @Test
    @DisplayName("has a header that names every figure with its unit, and the events last")
    void header() {
        List<String> header = rows.get(0).getHeader();
        assertThat(header).startsWith("pressure altitude [ft]").endsWith("fuel [kg]", "events");
        assertThat(header.subList(0, header.size() - 1))
                .containsExactlyInAnyOrderElementsOf(FIELDS.keySet());
    }

    @Test
    @DisplayName("has a row for each row of the text, in its order")
    void rowsOfTheText() {
        List<String> altitudes = new ArrayList<>();
        String text = Program.run().out();
        text.substring(text.indexOf("THE CLIMB, line by line"), text.indexOf("WHERE THE EXCESS"))
                .lines()
                .filter(line -> line.matches(" *\\d+ .*"))
                .forEach(line -> altitudes.add(line.strip().split(" ", 2)[0]));
        assertThat(altitudes).hasSizeGreaterThan(20);
        assertThat(
                        rows.stream()
                                .map(row -> row.getField("pressure altitude [ft]"))
                                .map(feet -> Math.rint(Double.parseDouble(feet)))
                                .map(feet -> String.valueOf(feet.intValue())))
                .containsExactlyElementsOf(altitudes);
    }

    @Test
    @DisplayName("has the numbers of the JSON to the last digit, and nothing for null")
    void numbersOfTheJson() {
        assertThat(rows).hasSize(levels.size());
        int empty = 0;
        for (int i = 0; i < rows.size(); i++) {
            for (Map.Entry<String, String> field : FIELDS.entrySet()) {
                JsonNode number = levels.get(i).get(field.getValue());
                String text = rows.get(i).getField(field.getKey());
                assertThat(text)
                        .as(field.getKey())
                        .isEqualTo(number.isNull() ? "" : number.asText());
                empty += text.isEmpty() ? 1 : 0;
            }
        }
        assertThat(empty).isPositive();
    }

    @Test
    @DisplayName("joins the events of a row by a semicolon")
    void events() {
        for (int i = 0; i < rows.size(); i++) {
            List<String> events = new ArrayList<>();
            levels.get(i).get("events").forEach(event -> events.add(event.textValue()));
            assertThat(rows.get(i).getField("events")).isEqualTo(String.join("; ", events));
        }
        assertThat(run.out()).contains("engine anti-ice on by here; airframe anti-ice on by here");
    }

    @Test
    @DisplayName("ends its lines with CRLF and quotes a field with a comma, as RFC 4180 says")
    void rfc4180() {
        assertThat(run.out()).endsWith("\r\n").contains("\"0 °C, colder above\"");
        assertThat(run.out().replace("\r\n", "")).doesNotContain("\n").doesNotContain("\r");
    }

    @Test
    @DisplayName("is the same climb in metric units, by the exact factors")
    void metric() {
        List<NamedCsvRecord> metric = read(Program.run("--format", "csv", "--units", "metric"));
        assertThat(metric).hasSize(rows.size());
        assertThat(String.join(" ", metric.get(0).getHeader()))
                .doesNotContain("ft")
                .doesNotContain("kn")
                .doesNotContain("NM");
        // the foot of 0.3048 m and the nautical mile of 1852 m: the agreement of 1959, UnitScale
        for (int i = 0; i < rows.size(); i++) {
            same(i, metric, "pressure altitude [ft]", "pressure altitude [m]", 0.3048);
            same(i, metric, "true altitude [ft]", "true altitude [m]", 0.3048);
            same(i, metric, "true airspeed [kn]", "true airspeed [km/h]", 1.852);
            same(
                    i,
                    metric,
                    "rate of pressure altitude [ft/min]",
                    "rate of pressure altitude [m/s]",
                    0.00508);
            same(i, metric, "distance [NM]", "distance [km]", 1.852);
            same(
                    i,
                    metric,
                    "gradient over the ground [ft/NM]",
                    "gradient over the ground [m/km]",
                    0.3048 / 1.852);
            same(i, metric, "static air temperature [°C]", "static air temperature [°C]", 1.0);
            same(i, metric, "fuel [kg]", "fuel [kg]", 1.0);
        }
    }

    /** To 1e-9 of the figure: a few roundings of a double. */
    private static void same(
            int row, List<NamedCsvRecord> metric, String field, String inMetric, double factor) {
        double expected = Double.parseDouble(rows.get(row).getField(field)) * factor;
        assertThat(Double.parseDouble(metric.get(row).getField(inMetric)))
                .as(inMetric)
                .isCloseTo(expected, within(1e-9 * Math.max(1.0, Math.abs(expected))));
    }
}
