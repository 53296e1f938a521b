package org.climbwright.airspeed;

import static org.assertj.core.api.Assertions.assertThat;
import static org.climbwright.testing.Agreement.computedAs;
import static org.climbwright.testing.Agreement.printedAs;

import org.climbwright.testing.Table;
import org.climbwright.unit.UnitScale;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

@DisplayName("Impact pressure of a calibrated airspeed")
class ImpactPressureTableTest {
    private static final double POUND_PER_SQUARE_FOOT = 4.4482216152605 / (0.3048 * 0.3048);
    private static final double MILE_PER_HOUR = 1609.344 / 3600.0;

    @ParameterizedTest(name = "at {0}")
    @CsvFileSource(resources = "/airspeed/impact-pressure.csv", useHeadersInDisplayName = true)
    @DisplayName("is that of the table, in 50-digit arithmetic, and gives the speed back")
    void agreesWithTheTable(
            String knots,
            String pascal,
            String hectopascal,
            String inchesOfMercury,
            String poundPerSquareFoot,
            String halfRhoVSquared) {
        double cas = UnitScale.KNOT.toSi(Double.parseDouble(knots));
        double qc = AirspeedConversion.impactPressureFromCas(cas);
        assertThat(qc).is(computedAs(pascal, 17));
        assertThat(UnitScale.HECTOPASCAL.fromSi(qc)).is(computedAs(hectopascal, 14));
        assertThat(UnitScale.INCH_OF_MERCURY.fromSi(qc)).is(computedAs(inchesOfMercury, 14));
        assertThat(qc / POUND_PER_SQUARE_FOOT).is(computedAs(poundPerSquareFoot, 14));
        // the column takes the rounded 1.225, and ours the density that follows from p0, R and T0
        double mach = AirspeedConversion.machFromCas(cas, 101325.0);
        double q = AirspeedConversion.dynamicPressureFromMach(mach, 101325.0);
        assertThat(q / 1.225000018124288 * 1.225).is(computedAs(halfRhoVSquared, 13));
        double back = AirspeedConversion.casFromImpactPressure(Double.parseDouble(pascal));
        assertThat(UnitScale.KNOT.fromSi(back)).is(computedAs(knots, 17));
    }

    @ParameterizedTest(name = "at {0} {1} is {2} {3}")
    @CsvFileSource(
            resources = "/airspeed/impact-pressure-printed.csv",
            useHeadersInDisplayName = true)
    @DisplayName("rounds to what public tables print in water columns")
    void agreesWithPrintedTables(
            double speed, String speedUnit, String published, String unit, String source) {
        double cas =
                switch (speedUnit) {
                    case "kt" -> UnitScale.KNOT.toSi(speed);
                    case "mph" -> speed * MILE_PER_HOUR;
                    case "km/h" -> UnitScale.KILOMETRE_PER_HOUR.toSi(speed);
                    default -> throw new AssertionError(speedUnit);
                };
        // each source states how high a column of water at 20 °C one standard atmosphere is
        double columnInches = source.contains("407.513 inH2O") ? 407.513 : 407.51;
        double column =
                switch (unit) {
                    case "inH2O" -> columnInches;
                    case "mmH2O" -> columnInches * 25.4;
                    case "cmH2O" -> columnInches * 2.54;
                    default -> throw new AssertionError(unit);
                };
        double atmospheres = AirspeedConversion.impactPressureFromCas(cas) / 101325.0;
        assertThat(atmospheres * column).is(printedAs(published));
    }

    @Test
    @DisplayName("is compared in 34 computed and 85 printed rows")
    void rows() {
        assertThat(Table.rows("/airspeed/impact-pressure.csv")).hasSize(34);
        assertThat(Table.rows("/airspeed/impact-pressure-printed.csv")).hasSize(85);
    }
}
