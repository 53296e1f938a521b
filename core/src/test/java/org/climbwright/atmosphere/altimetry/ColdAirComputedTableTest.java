package org.climbwright.atmosphere.altimetry;

import static org.assertj.core.api.Assertions.anyOf;
import static org.assertj.core.api.Assertions.assertThat;
import static org.climbwright.testing.Agreement.closeTo;
import static org.climbwright.testing.Agreement.printedAs;

import org.assertj.core.api.Condition;
import org.climbwright.testing.Table;
import org.climbwright.unit.UnitScale;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

@DisplayName("Corrections and errors of cold and warm days, in 50-digit arithmetic")
class ColdAirComputedTableTest {
    @ParameterizedTest(name = "{0}, {1}, {2}: {3}, {4}, {5}")
    @CsvFileSource(resources = "/atmosphere/cold-air.csv", useHeadersInDisplayName = true)
    @DisplayName(
            "are those of the table, and the formula is within 5 % of the hydrostatic equation")
    void agreesWithTheTable(
            double elevationFeet,
            double celsius,
            double heightFeet,
            String formulaFeet,
            String exactFeet,
            String errorFeet,
            double ruleFeet,
            String formulaOff) {
        double elevation = UnitScale.FOOT.toSi(elevationFeet);
        double t = UnitScale.CELSIUS.toSi(celsius);
        double h = UnitScale.FOOT.toSi(heightFeet);

        double formula = UnitScale.FOOT.fromSi(ColdAir.aerodromeCorrection(h, t, elevation));
        double exact = UnitScale.FOOT.fromSi(ColdAir.exactCorrection(h, t, elevation));
        assertThat(formula).is(printedAs(formulaFeet, 12));
        assertThat(exact).is(twelveDigits(exactFeet, 1e-8));
        assertThat(UnitScale.FOOT.fromSi(ColdAir.errorAtIndicatedHeight(h, t, elevation)))
                .is(twelveDigits(errorFeet, 1e-9));

        if (formulaOff == null) { // standard air: nothing to correct
            assertThat(exactFeet).isEqualTo("0.0");
        } else {
            assertThat(formula / exact - 1.0).is(printedAs(formulaOff, 3)).isBetween(-0.05, 0.05);
        }
    }

    /** Half a unit of the twelfth digit, or what the function states, in metres. */
    private static Condition<Double> twelveDigits(String feet, double metres) {
        return anyOf(printedAs(feet, 12), closeTo(feet, metres / 0.3048));
    }

    @Test
    @DisplayName("are compared in 187 rows")
    void rows() {
        assertThat(Table.rows("/atmosphere/cold-air.csv")).hasSize(187);
    }
}
