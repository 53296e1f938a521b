package org.climbwright.atmosphere;

import static org.assertj.core.api.Assertions.assertThat;
import static org.climbwright.testing.Agreement.closeTo;
import static org.climbwright.testing.Agreement.relativelyCloseTo;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.File;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import org.climbwright.testing.Table;
import org.climbwright.unit.UnitScale;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * GNU units has a standard atmosphere of its own, to the tropopause. It sums the molar mass of air
 * from a composition and comes to a gas constant of 287.052821: pressures differ from ICAO's by up
 * to 2.6e-7, temperatures not at all.
 */
@DisplayName("Standard air, against the program GNU units")
class UnitsProgramTest {
    private static final double PRESSURE = 3e-7;
    private static final double TEMPERATURE = 1e-12;
    private static final double FEET = 0.01;

    @ParameterizedTest(name = "at {0}, {1}")
    @CsvFileSource(resources = "/atmosphere/units-program.csv", useHeadersInDisplayName = true)
    @DisplayName("agrees with what the program has printed")
    void agreesWithTheTable(double argument, String meaning, String kelvin, String pascal) {
        double altitudeM =
                meaning.equals("geometric m")
                        ? Geopotential.geopotentialFromGeometric(argument)
                        : argument;
        assertThat(StandardAir.temperatureFromAltitude(altitudeM))
                .is(relativelyCloseTo(kelvin, TEMPERATURE));
        assertThat(StandardAir.pressureFromAltitude(altitudeM))
                .is(relativelyCloseTo(pascal, PRESSURE));
    }

    @ParameterizedTest(name = "at {0}: {1}")
    @CsvFileSource(
            resources = "/atmosphere/units-program-inverse.csv",
            useHeadersInDisplayName = true)
    @DisplayName("agrees with the altitude of a pressure that the program has printed")
    void inverseAgreesWithTheTable(double pascal, String feet) {
        assertThat(UnitScale.FOOT.fromSi(StandardAir.altitudeFromPressure(pascal)))
                .is(closeTo(feet, FEET));
    }

    @ParameterizedTest(name = "at {0} m")
    @ValueSource(ints = {-5000, -2345, -1, 0, 152, 1524, 3333, 5000, 7777, 9144, 10668, 11000})
    @DisplayName("agrees with the program as it runs")
    void agreesWithTheProgram(int metres) throws IOException, InterruptedException {
        assertThat(StandardAir.temperatureFromAltitude(metres))
                .is(relativelyCloseTo(units("stdatmTH(" + metres + " m)", "K"), TEMPERATURE));
        String pascal = units("stdatmPH(" + metres + " m)", "Pa");
        assertThat(StandardAir.pressureFromAltitude(metres))
                .is(relativelyCloseTo(pascal, PRESSURE));
        assertThat(Geopotential.geopotentialFromGeometric(metres))
                .is(closeTo(units("geop_ht(" + metres + " m)", "m"), 1e-9));
    }

    @ParameterizedTest(name = "at {0} hPa")
    @ValueSource(ints = {1100, 1013, 850, 700, 500, 300, 250, 230})
    @DisplayName("agrees with the altitude of a pressure from the program as it runs")
    void inverseAgreesWithTheProgram(int hectopascal) throws IOException, InterruptedException {
        double metres = StandardAir.altitudeFromPressure(hectopascal * 100.0);
        assertThat(UnitScale.FOOT.fromSi(metres))
                .is(closeTo(units("~stdatmPH(" + hectopascal + " hPa)", "ft"), FEET));
    }

    @Test
    @DisplayName("is compared in 65 rows and 18 rows of the inverse")
    void rows() {
        assertThat(Table.rows("/atmosphere/units-program.csv")).hasSize(65);
        assertThat(Table.rows("/atmosphere/units-program-inverse.csv")).hasSize(18);
    }

    private static String units(String have, String want) throws IOException, InterruptedException {
        assumeTrue(
                Arrays.stream(System.getenv("PATH").split(File.pathSeparator))
                        .anyMatch(folder -> new File(folder, "units").canExecute()),
                "the program units is not installed (Debian package units): only its table is"
                        + " compared");
        Process program =
                new ProcessBuilder("units", "-t", "-d", "15", have, want)
                        .redirectErrorStream(true)
                        .start();
        String answer =
                new String(program.getInputStream().readAllBytes(), StandardCharsets.UTF_8).strip();
        assertThat(program.waitFor()).as(answer).isZero();
        return answer;
    }
}
