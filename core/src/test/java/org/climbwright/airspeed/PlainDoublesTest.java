package org.climbwright.airspeed;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.List;
import org.climbwright.testing.ForkedJvm;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("Air and airspeeds in plain doubles")
class PlainDoublesTest {
    @Test
    @DisplayName("are answered, and refused, without a class of javax.measure or behind it")
    void loadNoUnits() throws IOException, InterruptedException {
        ForkedJvm jvm = ForkedJvm.run(List.of(), "class+load", PlainDoublesProgram.class);
        List<String> lines = jvm.output();
        assertThat(lines).hasSize(5);
        assertThat(lines.get(0)).isEqualTo("answers are numbers: true");
        assertThat(lines.get(1)).startsWith("pressure altitude must be from -5000.0 to 80000.0 m");
        assertThat(lines.get(2)).startsWith("height above the aerodrome must be from 0.0 to ");
        assertThat(lines.get(3)).startsWith("vapour pressure must be from ");
        assertThat(lines.get(4)).startsWith("calibrated airspeed must be from 0.0 to ");
        assertThat(jvm.exitCode()).isZero();
        List<String> loaded = jvm.log();
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
