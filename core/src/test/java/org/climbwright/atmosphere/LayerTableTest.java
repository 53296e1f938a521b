package org.climbwright.atmosphere;

import static org.assertj.core.api.Assertions.assertThat;
import static org.climbwright.testing.Agreement.closeTo;
import static org.climbwright.testing.Agreement.computedAs;
import static org.climbwright.testing.Agreement.printedAs;
import static org.climbwright.testing.Agreement.relativelyCloseTo;

import org.climbwright.testing.Table;
import org.climbwright.testing.Us76;
import org.climbwright.unit.UnitScale;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

@DisplayName("A layer of standard air")
class LayerTableTest {
    @ParameterizedTest(name = "{0}")
    @CsvFileSource(resources = "/atmosphere/layers.csv", useHeadersInDisplayName = true)
    @DisplayName("begins with the values of the table, in 50-digit arithmetic")
    void agreesWithTheTable(
            String metres,
            String feet,
            String geometric,
            String kelvin,
            Double lapse,
            String pascal,
            String density,
            String pascalOfUs76) {
        double base = Double.parseDouble(metres);
        assertThat(UnitScale.FOOT.fromSi(base)).is(printedAs(feet, 12));
        assertThat(Geopotential.geometricFromGeopotential(base)).is(printedAs(geometric, 12));
        assertThat(StandardAir.temperatureFromAltitude(base)).is(computedAs(kelvin, 17));
        assertThat(StandardAir.pressureFromAltitude(base)).is(computedAs(pascal, 17));
        assertThat(StandardAir.densityFromAltitude(base)).is(computedAs(density, 17));
        assertThat(Us76.pressure(base)).is(computedAs(pascalOfUs76, 17));
        if (lapse != null) { // the row of the top of the model has none
            double rise =
                    StandardAir.temperatureFromAltitude(base + 1000.0)
                            - StandardAir.temperatureFromAltitude(base);
            assertThat(rise).is(closeTo(Double.toString(1000.0 * lapse), 1e-10));
        }
    }

    @ParameterizedTest(name = "{0}: {1}")
    @CsvFileSource(resources = "/atmosphere/layers-printed.csv", useHeadersInDisplayName = true)
    @DisplayName("begins at the pressure that public tables print with the US gas constant")
    void agreesWithPrintedTables(double metres, String pascal) {
        assertThat(Us76.pressure(metres)).is(printedAs(pascal));
        // with ICAO's own constant: 1e-5 for the other gas constant, at 80 km, where only five
        // digits are printed, with half a unit of the last besides
        assertThat(StandardAir.pressureFromAltitude(metres))
                .is(relativelyCloseTo(pascal, metres == 80000.0 ? 1.6e-5 : 1e-5));
    }

    @Test
    @DisplayName("is compared in 9 computed and 15 printed rows")
    void rows() {
        assertThat(Table.rows("/atmosphere/layers.csv")).hasSize(9);
        assertThat(Table.rows("/atmosphere/layers-printed.csv")).hasSize(15);
    }
}
