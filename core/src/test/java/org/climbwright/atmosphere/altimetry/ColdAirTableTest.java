package org.climbwright.atmosphere.altimetry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.climbwright.testing.Agreement.printedAs;

import org.climbwright.quantity.altitude.Height;
import org.climbwright.quantity.temperature.StaticAirTemperature;
import org.climbwright.testing.Table;
import org.climbwright.unit.UnitScale;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

@DisplayName("The table of cold temperature errors")
class ColdAirTableTest {
    @ParameterizedTest(name = "{0}, {1}: {2}")
    @CsvFileSource(resources = "/atmosphere/cold-air-table.csv", useHeadersInDisplayName = true)
    @DisplayName("is met exactly, and so are formula, hydrostatic correction and altimeter error")
    void agreesWithTheTable(
            double celsius,
            double heightFeet,
            double publishedFeet,
            String formulaFeet,
            double roundedUpFeet,
            String exactFeet,
            String errorFeet) {
        double t = UnitScale.CELSIUS.toSi(celsius);
        double h = UnitScale.FOOT.toSi(heightFeet);

        ColdAirCorrection byTable =
                ColdAir.tableCorrection(
                        Height.ofFeet(heightFeet), StaticAirTemperature.ofCelsius(celsius));
        assertThat(byTable.difference().inFeet()).isEqualTo(publishedFeet).isEqualTo(roundedUpFeet);
        assertThat(ColdAir.tableCorrection(h, t)).isEqualTo(byTable.difference().inMetres());

        assertThat(UnitScale.FOOT.fromSi(ColdAir.aerodromeCorrection(h, t, 0.0)))
                .is(printedAs(formulaFeet, 7));
        assertThat(UnitScale.FOOT.fromSi(ColdAir.exactCorrection(h, t, 0.0)))
                .is(printedAs(exactFeet, 7));
        assertThat(UnitScale.FOOT.fromSi(ColdAir.errorAtIndicatedHeight(h, t, 0.0)))
                .is(printedAs(errorFeet, 7));
    }

    @Test
    @DisplayName("is met between its lines too: what is added is whole tens of feet, rounded up")
    void between() {
        for (double celsius = -50.0; celsius <= 10.0; celsius += 2.5) {
            for (double feet = 200.0; feet <= 5000.0; feet += 50.0) {
                double t = UnitScale.CELSIUS.toSi(celsius);
                double h = UnitScale.FOOT.toSi(feet);
                double tens = ColdAir.tableCorrection(h, t) / 3.048;
                double byFormula = ColdAir.aerodromeCorrection(h, t, 0.0) / 3.048;
                assertThat(tens).isCloseTo(Math.rint(tens), within(1e-9));
                assertThat(tens - byFormula).isBetween(-1e-8, 1.0);
            }
        }
    }

    @Test
    @DisplayName("is compared in 70 entries")
    void rows() {
        assertThat(Table.rows("/atmosphere/cold-air-table.csv")).hasSize(70);
    }
}
