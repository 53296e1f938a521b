package org.climbwright.airspeed;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

@DisplayName("Air and airspeeds in plain doubles")
class PlainDoublesTest {
    @TempDir private Path folder;

    @Test
    @DisplayName("are answered, and refused, without a class of javax.measure or behind it")
    void loadNoUnits() throws IOException, InterruptedException {
        Path log = folder.resolve("classes.log");
        Path output = folder.resolve("output.txt");
        Process program =
                new ProcessBuilder(
                                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                                "-Xlog:class+load:file=" + log + ":none",
                                "-cp",
                                System.getProperty("java.class.path"),
                                PlainDoublesProgram.class.getName())
                        .redirectErrorStream(true)
                        .redirectOutput(output.toFile())
                        .start();
        assertThat(program.waitFor(60, TimeUnit.SECONDS)).isTrue();

        List<String> lines = Files.readAllLines(output, StandardCharsets.UTF_8);
        assertThat(lines).hasSize(5);
        assertThat(lines.get(0)).isEqualTo("answers are numbers: true");
        assertThat(lines.get(1)).startsWith("pressure altitude must be from -5000.0 to 80000.0 m");
        assertThat(lines.get(2)).startsWith("height above the aerodrome must be from 0.0 to ");
        assertThat(lines.get(3)).startsWith("vapour pressure must be from ");
        assertThat(lines.get(4)).startsWith("calibrated airspeed must be from 0.0 to ");
        assertThat(program.exitValue()).isZero();
        List<String> loaded = Files.readAllLines(log, StandardCharsets.UTF_8);
        assertThat(loaded)
                .anyMatch(line -> line.startsWith("org.climbwright.airspeed.AirspeedConversion "))
                .anyMatch(line -> line.startsWith("org.climbwright.atmosphere.StandardAir "))
                .noneMatch(line -> line.startsWith("javax.measure."))
                .noneMatch(line -> line.startsWith("tech.units."));
        int begin = 0;
        while (!loaded.get(begin).startsWith(PlainDoublesProgram.class.getName())) {
            begin++;
        }
        // whose first use costs 10 ms; the JVM itself may load the classes before
        assertThat(loaded.subList(begin, loaded.size()))
                .noneMatch(line -> line.startsWith("java.lang.invoke.StringConcat"));
    }
}
