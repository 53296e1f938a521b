package org.climbwright.sounding;

import static org.assertj.core.api.Assertions.anyOf;
import static org.assertj.core.api.Assertions.assertThat;
import static org.climbwright.testing.Agreement.closeTo;
import static org.climbwright.testing.Agreement.printedAs;

import org.climbwright.atmosphere.AirState;
import org.climbwright.atmosphere.LiftingCondensationLevel;
import org.climbwright.testing.Table;
import org.climbwright.unit.UnitScale;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

@DisplayName("The condensation level of the lowest air of a recorded sounding")
class CondensationTableTest {
    private static final LargestDifferences DIFFERENCES = new LargestDifferences();

    @AfterAll
    static void print() {
        DIFFERENCES.print();
    }

    /**
     * Bolton states 0.1 K for his formula (from memory), which is 1.2 hPa; the vapour in the heat
     * capacity, which both short formulas leave out, is another 0.3 hPa in the moistest air.
     */
    private static final double PRESSURE_HPA = 1.5;

    /** The same, at 12 m for a hectopascal where the air is thinnest here. */
    private static final double HEIGHT_M = 18.0;

    @ParameterizedTest(name = "{0}: {1}, {2}, {3}, {4}, {5}")
    @CsvFileSource(resources = "/sounding/condensation.csv", useHeadersInDisplayName = true)
    @DisplayName("is that of two independent computations, as near as their short formulas are")
    void isThatOfShortFormulas(
            String name,
            String pressureHpa,
            String celsius,
            String heightM,
            String programHpa,
            String programM) {
        Sounding sounding = Soundings.profile(name);
        LiftingCondensationLevel ours = LiftingCondensationLevel.of(lowest(sounding));
        double temperature = ours.temperature().inCelsius();
        double pressure = ours.pressure().inHectopascals();
        double height =
                ours.airIn(sounding.atmosphere()).geopotentialAltitude().orElseThrow().inMetres();

        assertThat(temperature).is(closeTo(celsius, 0.1));
        assertThat(pressure).is(closeTo(pressureHpa, PRESSURE_HPA));
        assertThat(pressure).is(closeTo(programHpa, PRESSURE_HPA));
        assertThat(height).is(closeTo(heightM, HEIGHT_M));
        assertThat(height).is(closeTo(programM, HEIGHT_M));
        note("temperature, equation 15 of Bolton", "K", name, temperature, celsius);
        note("pressure, equation 15 of Bolton", "hPa", name, pressure, pressureHpa);
        note("pressure, an open program", "hPa", name, pressure, programHpa);
        note("altitude, equation 15 of Bolton", "m", name, height, heightM);
        note("altitude, an open program", "m", name, height, programM);
    }

    @ParameterizedTest(name = "{0}: {1}, {2}")
    @CsvFileSource(resources = "/sounding/condensation.csv", useHeadersInDisplayName = true)
    @DisplayName(
            "differs from the table by the formula alone: that formula gives the table's digits")
    void theFormulaGivesTheTable(String name, String pressureHpa, String celsius) {
        AirState air = lowest(Soundings.profile(name));
        double dewPointK = air.dewPoint().orElseThrow().inKelvins();
        double t = air.temperatureK();
        // letters as in the source, Bolton (1980), equation 15
        double tl = 1.0 / (1.0 / (dewPointK - 56.0) + Math.log(t / dewPointK) / 800.0) + 56.0;
        double pl = air.pressurePa() * Math.pow(tl / t, 1004.0 / 287.05287);

        assertThat(tl - 273.15).is(anyOf(printedAs(celsius, 6), closeTo(celsius, 1e-9)));
        assertThat(pl / 100.0).is(printedAs(pressureHpa, 6));
    }

    /**
     * The other half of the difference: both computations take altitude straight in ln p, and that
     * aside their pressures have their altitudes. 0.0005 hPa of a printed pressure is 0.005 m.
     */
    @ParameterizedTest(name = "{0}: {1} and {3}, {4} and {5}")
    @CsvFileSource(resources = "/sounding/condensation.csv", useHeadersInDisplayName = true)
    @DisplayName("has the altitude of its pressure, the bend of the air between two levels aside")
    void theirPressuresHaveTheirAltitudes(
            String name,
            String pressureHpa,
            String celsius,
            String heightM,
            String programHpa,
            String programM) {
        Sounding sounding = Soundings.profile(name);
        assertThat(straightAltitude(sounding, pressureHpa)).is(closeTo(heightM, 0.01));
        assertThat(straightAltitude(sounding, programHpa)).is(closeTo(programM, 0.01));
    }

    private static double straightAltitude(Sounding sounding, String hectopascal) {
        double pascal = UnitScale.HECTOPASCAL.toSi(Double.parseDouble(hectopascal));
        return sounding.atmosphere().geopotentialAltitude(pascal)
                - CrossingTableTest.bend(sounding, pascal);
    }

    @ParameterizedTest(name = "{0}: {1}, {2}, {3}")
    @CsvFileSource(resources = "/sounding/condensation-derived.csv", useHeadersInDisplayName = true)
    @DisplayName("is that of the provider of a derived file, and of an independent computation")
    void isThatOfTheProvider(
            String launch, String providerHpa, String providerM, String pressureHpa) {
        Sounding ascent = Soundings.read(Soundings.IGRA_DERIVED).launchedAt(launch);
        LiftingCondensationLevel ours = LiftingCondensationLevel.of(lowest(ascent));
        double pressure = ours.pressure().inHectopascals();
        double height =
                ours.airIn(ascent.atmosphere()).geopotentialAltitude().orElseThrow().inMetres()
                        - Soundings.levelsOfAir(ascent).get(0).geopotentialAltitudeM();

        assertThat(pressure).is(closeTo(providerHpa, PRESSURE_HPA));
        assertThat(pressure).is(closeTo(pressureHpa, PRESSURE_HPA));
        assertThat(height).is(closeTo(providerM, HEIGHT_M));
        note("pressure, the provider", "hPa", launch, pressure, providerHpa);
        note("height above the lowest level, the provider", "m", launch, height, providerM);
    }

    @Test
    @DisplayName("is compared in 12 rows, and 2 rows of derived files")
    void rows() {
        assertThat(Table.rows("/sounding/condensation.csv")).hasSize(12);
        assertThat(Table.rows("/sounding/condensation-derived.csv")).hasSize(2);
    }

    private static AirState lowest(Sounding sounding) {
        SoundingLevel lowest = Soundings.levelsOfAir(sounding).get(0);
        return sounding.atmosphere().at(lowest.staticPressure().orElseThrow());
    }

    private static void note(
            String quantity, String unit, String sounding, double ours, String theirs) {
        DIFFERENCES.note("condensation " + quantity, unit, sounding, ours, theirs);
    }
}
