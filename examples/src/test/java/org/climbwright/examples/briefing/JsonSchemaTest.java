package org.climbwright.examples.briefing;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.cfg.JsonNodeFeature;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.networknt.schema.InputFormat;
import com.networknt.schema.JsonSchema;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.SchemaLocation;
import com.networknt.schema.SpecVersion;
import com.networknt.schema.ValidationMessage;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.climbwright.sounding.Sounding;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

@DisplayName("The schema of the briefing as JSON")
class JsonSchemaTest {
    private static final JsonMapper MAPPER =
            JsonMapper.builder()
                    .enable(DeserializationFeature.USE_BIG_DECIMAL_FOR_FLOATS)
                    .disable(JsonNodeFeature.STRIP_TRAILING_BIGDECIMAL_ZEROES)
                    .enable(JsonGenerator.Feature.WRITE_BIGDECIMAL_AS_PLAIN)
                    .build();

    private static Program bundled;
    private static JsonSchema schema;

    @TempDir private Path folder;

    @BeforeAll
    static void run() {
        bundled = Program.run("--format", "json");
        schema =
                JsonSchemaFactory.getInstance(SpecVersion.VersionFlag.V202012)
                        .getSchema(JsonReport.schema());
    }

    private static Set<ValidationMessage> faults(String json) {
        return schema.validate(json, InputFormat.JSON);
    }

    @Test
    @DisplayName("is printed by the program with --schema, and nothing else is")
    void isPrinted() {
        Program run = Program.run("--schema");
        assertThat(run.code()).isZero();
        assertThat(run.err()).isEmpty();
        assertThat(run.out()).isEqualTo(JsonReport.schema());
    }

    @Test
    @DisplayName("is itself one of draft 2020-12")
    void isASchema() {
        JsonSchema ofSchemas =
                JsonSchemaFactory.getInstance(SpecVersion.VersionFlag.V202012)
                        .getSchema(
                                SchemaLocation.of("https://json-schema.org/draft/2020-12/schema"));
        assertThat(ofSchemas.validate(JsonReport.schema(), InputFormat.JSON)).isEmpty();
    }

    @Test
    @DisplayName("has the name and the version that the document has")
    void version() throws IOException {
        JsonNode fields = MAPPER.readTree(JsonReport.schema()).get("properties");
        JsonNode document = MAPPER.readTree(bundled.out());
        assertThat(fields.get("schema").get("const")).isEqualTo(document.get("schema"));
        assertThat(fields.get("version").get("const")).isEqualTo(document.get("version"));
    }

    @Test
    @DisplayName("says of each field what it means, and of each number its unit")
    void descriptions() throws IOException {
        List<String> silent = new ArrayList<>();
        int fields = describe(MAPPER.readTree(JsonReport.schema()), "", silent);
        assertThat(silent).isEmpty();
        assertThat(fields).isGreaterThan(200);
    }

    private static int describe(JsonNode object, String path, List<String> silent) {
        int count = 0;
        for (Map.Entry<String, JsonNode> field : object.get("properties").properties()) {
            String name = path + "/" + field.getKey();
            JsonNode of = field.getValue();
            JsonNode items = of.path("items");
            boolean isNumber = (of.path("type") + "" + items.path("type")).contains("number");
            String told = of.path("description").asText();
            if (told.isEmpty() || (isNumber && !told.matches(".*\\[\\S.*].*"))) {
                silent.add(name);
            }
            count++;
            for (JsonNode inner : List.of(of, items)) {
                if (inner.has("properties")) {
                    assertThat(inner.get("additionalProperties").booleanValue()).as(name).isFalse();
                    assertThat(inner.get("required").size())
                            .as(name)
                            .isEqualTo(inner.get("properties").size());
                    count += describe(inner, name, silent);
                }
            }
        }
        return count;
    }

    @Test
    @DisplayName("is kept by the bundled climb")
    void bundled() {
        assertThat(faults(bundled.out())).isEmpty();
    }

    @Test
    @DisplayName("is kept by a climb by a table of rates, which knows no fuel")
    void byRates() throws IOException {
        for (String name : List.of("by-rates.toml", "norman-january-20.csv")) {
            try (InputStream in = Main.class.getResourceAsStream(name)) {
                Files.copy(in, folder.resolve(name));
            }
        }
        String toml = folder.resolve("by-rates.toml").toString();
        assertThat(faults(Program.run("--scenario", toml, "--format", "json").out())).isEmpty();
    }

    @Test
    @DisplayName("is kept without wind, humidity, cabin, restrictions, cloud and level-off")
    void withoutMuch() throws IOException {
        Files.writeString(
                folder.resolve("own.csv"),
                "pressure_hpa,geopotential_height_m,temperature_c,dewpoint_c,wind_from_deg,"
                        + "wind_speed_mps\n1000,100,10,,,\n200,11800,-55,,,\n");
        String toml;
        try (InputStream in = Main.class.getResourceAsStream("scenario.toml")) {
            toml = new String(in.readAllBytes(), StandardCharsets.UTF_8);
        }
        for (String table : List.of("cabin", "restrictions", "cloud", "level_off", "turbulence")) {
            toml = toml.replaceAll("(?ms)^\\[" + table + "\\].*?(?=^\\[|\\z)", "");
        }
        Path file =
                Files.writeString(
                        folder.resolve("own.toml"),
                        toml.replace("norman-january-20.csv", "own.csv"));
        Program run = Program.run("--scenario", file.toString(), "--format", "json");
        assertThat(run.code()).as(run.err()).isZero();
        JsonNode json = MAPPER.readTree(run.out());
        for (String name : List.of("levelOff", "cloudTop", "turbulence", "tropopauseFt")) {
            assertThat(json.get(name).isNull()).as(name).isTrue();
        }
        assertThat(json.get("restrictions")).isEmpty();
        assertThat(json.get("cabinChecks")).isEmpty();
        assertThat(faults(run.out())).isEmpty();
    }

    @ParameterizedTest(name = "{0}, {1}")
    @MethodSource("org.climbwright.examples.briefing.EverySoundingTest#ascents")
    @DisplayName("is kept through every recorded sounding")
    void everySounding(Path file, Sounding sounding) {
        Program run = EverySoundingTest.through(file, sounding, "--format", "json");
        assertThat(faults(run.out())).isEmpty();
    }

    @Test
    @DisplayName("lets every number be read and written again as the same text")
    void numbersRoundTrip() throws IOException {
        JsonNode document = MAPPER.readTree(bundled.out());
        String again = MAPPER.writer(new DefaultPrettyPrinter()).writeValueAsString(document);
        assertThat(again + "\n").isEqualTo(bundled.out());
        int numbers = 0;
        for (JsonNode number : document.findParents("timeS")) {
            for (JsonNode value : number) {
                if (value.isNumber()) {
                    numbers++;
                    assertThat(FullNumber.of(value.doubleValue())).isEqualTo(value.asText());
                }
            }
        }
        assertThat(numbers).isGreaterThan(500);
    }

    @Nested
    @DisplayName("refuses")
    class Refuses {
        @Test
        @DisplayName("a field that is renamed, both names told")
        void renamed() throws IOException {
            ObjectNode document = (ObjectNode) MAPPER.readTree(bundled.out());
            ObjectNode level = (ObjectNode) document.get("levels").get(3);
            level.set("calibratedSpeedKn", level.remove("calibratedAirspeedKn"));
            assertThat(faults(document.toString()))
                    .hasSize(2)
                    .allMatch(fault -> fault.toString().contains("levels[3]"))
                    .anyMatch(fault -> fault.getMessage().contains("calibratedSpeedKn"))
                    .anyMatch(fault -> fault.getMessage().contains("calibratedAirspeedKn"));
        }

        @Test
        @DisplayName("null for what is always known, and a text for a number")
        void wrongValues() throws IOException {
            ObjectNode document = (ObjectNode) MAPPER.readTree(bundled.out());
            document.putNull("qnhHpa");
            document.put("massKg", "58000");
            assertThat(faults(document.toString())).hasSize(2);
        }
    }
}
