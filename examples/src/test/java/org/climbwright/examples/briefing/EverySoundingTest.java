package org.climbwright.examples.briefing;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.climbwright.atmosphere.Atmosphere;
import org.climbwright.quantity.altitude.GeopotentialAltitude;
import org.climbwright.sounding.Sounding;
import org.climbwright.sounding.SoundingReader;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

@DisplayName("The bundled climb")
class EverySoundingTest {
    private static final Path RECORDED = Path.of("../core/src/test/resources/sounding");

    static List<Arguments> ascents() throws IOException {
        List<Arguments> ascents = new ArrayList<>();
        try (Stream<Path> files = Files.list(RECORDED)) {
            for (Path file : files.sorted().toList()) {
                if (file.getFileName().toString().matches("[ivw]\\d.*csv|82244.*csv|USM.*txt")) {
                    for (Sounding sounding : SoundingReader.read(file).soundings()) {
                        if (sounding.levels().stream()
                                .anyMatch(level -> level.staticAirTemperature().isPresent())) {
                            ascents.add(Arguments.of(file, sounding));
                        }
                    }
                }
            }
        }
        return ascents;
    }

    @ParameterizedTest(name = "{0}, {1}")
    @MethodSource("ascents")
    @DisplayName("goes through every recorded sounding from its lowest level of air")
    void climbs(Path file, Sounding sounding) throws IOException {
        Program run = through(file, sounding, "--format", "json");
        JsonNode levels = new ObjectMapper().readTree(run.out()).get("levels");
        JsonNode last = levels.get(levels.size() - 1);
        assertThat(last.get("pressureAltitudeFt").doubleValue()).isGreaterThan(34000.0);
        for (int i = 1; i < levels.size(); i++) {
            assertThat(levels.get(i).get("timeS").doubleValue())
                    .isGreaterThanOrEqualTo(levels.get(i - 1).get("timeS").doubleValue());
            assertThat(levels.get(i).get("trueAltitudeFt").doubleValue())
                    .isGreaterThanOrEqualTo(levels.get(i - 1).get("trueAltitudeFt").doubleValue());
        }
    }

    /** The bundled climb from the lowest level of an ascent. */
    static Program through(Path file, Sounding sounding, String... options) {
        Atmosphere air = sounding.atmosphere();
        double lowest = air.geopotentialAltitude(air.range().highest());
        String elevation = GeopotentialAltitude.ofMetres(lowest + 0.01).text();
        Stream<String> place =
                Stream.of(
                        "--sounding",
                        file.toString(),
                        "--launch",
                        sounding.launch(),
                        "--elevation",
                        elevation);
        Program run =
                Program.run(Stream.concat(place, Arrays.stream(options)).toArray(String[]::new));
        assertThat(run.code()).as(run.err()).isZero();
        return run;
    }

    @ParameterizedTest(name = "{0}, {1}")
    @MethodSource("ascents")
    @DisplayName("fits 100 columns as text in both sets of units, through each of them")
    void fits(Path file, Sounding sounding) {
        for (UnitSet units : UnitSet.values()) {
            Program run = through(file, sounding, "--units", units.toString());
            assertThat(run.out().lines()).allMatch(line -> line.length() <= 100);
        }
    }

    @Test
    @DisplayName("goes through 17 of them")
    void count() throws IOException {
        assertThat(ascents()).hasSize(17);
    }
}
