package org.climbwright.atmosphere;

import static org.assertj.core.api.Assertions.assertThat;
import static org.climbwright.testing.Agreement.printedAs;
import static org.climbwright.testing.Agreement.relativelyCloseTo;

import org.assertj.core.api.Condition;
import org.climbwright.testing.PrintedAir;
import org.climbwright.testing.Table;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

@DisplayName("Standard air, against printed tables")
class PrintedTableTest {
    @ParameterizedTest(name = "{2} at {0} {1} is {3} {4}")
    @CsvFileSource(resources = "/atmosphere/printed-feet.csv", useHeadersInDisplayName = true)
    @DisplayName("rounds to what tables by feet print")
    void byFeet(String argument, String meaning, String quantity, String published, String unit) {
        assertThat(PrintedAir.at(argument, meaning).in(quantity, unit)).is(printedAs(published));
    }

    @ParameterizedTest(name = "{2} at {0} {1} is {3} {4}")
    @CsvFileSource(resources = "/atmosphere/printed-metres.csv", useHeadersInDisplayName = true)
    @DisplayName("rounds to what tables by metres print")
    void byMetres(String argument, String meaning, String quantity, String published, String unit) {
        assertThat(PrintedAir.at(argument, meaning).in(quantity, unit)).is(printedAs(published));
    }

    @ParameterizedTest(name = "{2} at {0} {1} is {3} {4}")
    @CsvFileSource(
            resources = "/atmosphere/printed-us76-geometric.csv",
            useHeadersInDisplayName = true)
    @DisplayName("rounds to what tables of the US standard by geometric metres print")
    void byGeometricMetres(
            String argument,
            String meaning,
            String quantity,
            String published,
            String unit,
            String source) {
        // the 2 km table has 5 significant digits and does not write the zeros at the end
        Condition<Double> asPrinted =
                source.startsWith("US Standard Atmosphere 1976")
                        ? printedAs(published, 5)
                        : printedAs(published);
        assertThat(PrintedAir.of(source, argument, meaning).in(quantity, unit)).is(asPrinted);
    }

    @ParameterizedTest(name = "{0} ft is {1} {2}")
    @CsvFileSource(
            resources = "/atmosphere/printed-below-sea-level.csv",
            useHeadersInDisplayName = true)
    @DisplayName("rounds to what a table of pressures below sea level prints")
    void belowSeaLevel(String feet, String published, String unit) {
        assertThat(PrintedAir.withUsGasConstant(feet, "geopotential ft").in("p", unit))
                .is(printedAs(published));
        assertThat(PrintedAir.at(feet, "geopotential ft").in("p", unit)).is(printedAs(published));
    }

    @ParameterizedTest(name = "{2} at {0} hPa is {3} {4}")
    @CsvFileSource(
            resources = "/atmosphere/printed-by-pressure.csv",
            useHeadersInDisplayName = true)
    @DisplayName("is within 3.5e-5 of what a weather service prints by pressure")
    void byPressure(
            String argument, String meaning, String quantity, String published, String unit) {
        // the service takes a gas constant near 287.06 and another earth radius: 3.3e-5 was seen;
        // its temperatures are rounded to 0.01 K, 2.3e-5 of them
        assertThat(PrintedAir.at(argument, meaning).in(quantity, unit))
                .is(relativelyCloseTo(published, 3.5e-5));
    }

    @Test
    @DisplayName(
            "is compared in 172 rows by feet, 24 by metres, 309 geometric, 34 below the sea, 18")
    void rows() {
        assertThat(Table.rows("/atmosphere/printed-feet.csv")).hasSize(172);
        assertThat(Table.rows("/atmosphere/printed-metres.csv")).hasSize(24);
        assertThat(Table.rows("/atmosphere/printed-us76-geometric.csv")).hasSize(309);
        assertThat(Table.rows("/atmosphere/printed-below-sea-level.csv")).hasSize(34);
        assertThat(Table.rows("/atmosphere/printed-by-pressure.csv")).hasSize(18);
    }
}
