package org.climbwright.unit;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.util.Arrays;
import java.util.Locale;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

/** Asks another program. It has definitions of its own, by other hands. */
@DisplayName("GNU units has the same size for")
class GnuUnitsOracleTest {
    @BeforeAll
    static void isInstalled() {
        assumeTrue(
                answers(), "the program `units` (GNU units) is not installed: factors unchecked");
    }

    private static boolean answers() {
        try {
            return ask("--version").toLowerCase(Locale.ROOT).contains("gnu units");
        } catch (IOException absent) {
            return false;
        }
    }

    @ParameterizedTest(name = "{0}: 1 {1} in {2}")
    @CsvFileSource(resources = "/unit/gnu-units.csv", useHeadersInDisplayName = true)
    @DisplayName("one of each unit in SI")
    void sameFactor(UnitScale scale, String unit, String si) throws IOException {
        double theirs =
                Double.parseDouble(ask("--terse", "--output-format", "%.17g", "1 " + unit, si));

        // Both are roundings of the same exact number: theirs of a product of several doubles.
        assertEquals(theirs, scale.factor(), 4.0 * Math.ulp(theirs));
    }

    @ParameterizedTest(name = "{1} {0}")
    @CsvFileSource(resources = "/unit/gnu-units-temperatures.csv", useHeadersInDisplayName = true)
    @DisplayName("points on the scales of temperature")
    void sameTemperature(UnitScale scale, double number, String function) throws IOException {
        double theirs =
                Double.parseDouble(
                        ask(
                                "--terse",
                                "--output-format",
                                "%.17g",
                                function + "(" + number + ")",
                                "K"));

        // A product and a sum on both sides, of numbers below 512 K.
        assertEquals(theirs, scale.toSi(number), 2.0 * Math.ulp(256.0));
    }

    @Test
    @DisplayName("every unit that has a name there: none is left out")
    void leavesNoneOut() throws IOException {
        try (var table = getClass().getResourceAsStream("/unit/gnu-units.csv")) {
            assertThat(
                            new String(table.readAllBytes(), UTF_8)
                                    .lines()
                                    .filter(line -> !line.startsWith("#"))
                                    .skip(1)
                                    .map(line -> line.substring(0, line.indexOf(',')))
                                    .map(UnitScale::valueOf))
                    .containsExactlyInAnyOrder(UnitScale.values());
        }
    }

    private static String ask(String... arguments) throws IOException {
        String[] command = new String[arguments.length + 1];
        command[0] = "units";
        System.arraycopy(arguments, 0, command, 1, arguments.length);
        ProcessBuilder program = new ProcessBuilder(command).redirectErrorStream(true);
        program.environment().put("LC_ALL", "C");
        Process process = program.start();
        process.getOutputStream().close();
        String answer = new String(process.getInputStream().readAllBytes(), UTF_8).strip();
        try {
            if (process.waitFor() != 0) {
                throw new IOException(Arrays.toString(command) + ": " + answer);
            }
        } catch (InterruptedException interrupted) {
            Thread.currentThread().interrupt();
            throw new IOException(interrupted);
        }
        return answer;
    }
}
