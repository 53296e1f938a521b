package org.climbwright.icing.accretion;

import static org.assertj.core.api.Assertions.assertThat;
import static org.climbwright.icing.accretion.Inputs.number;
import static org.climbwright.testing.Agreement.relativelyCloseTo;

import org.climbwright.testing.Table;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

@DisplayName("The closed forms of icing")
class ClosedFormTableTest {
    private static final String TABLE = "/icing/accretion/closed-forms.csv";

    @ParameterizedTest(name = "{0}, {1} is {2}")
    @CsvFileSource(resources = TABLE, useHeadersInDisplayName = true)
    @DisplayName("are those of the table, in 30-digit arithmetic")
    void agreeWithTheTable(String quantity, String inputs, String value, String source) {
        String digits = value.split(" ")[0];
        // the table writes 13 significant digits and more
        assertThat(ours(quantity, inputs)).is(relativelyCloseTo(digits, 1e-12));
    }

    private static double ours(String quantity, String inputs) {
        return switch (quantity) {
            case "stagnation collection efficiency beta0" ->
                    DropImpingement.stagnationEfficiency(number(inputs, "K0"));
            case "overall cylinder efficiency Em" ->
                    DropImpingement.overallEfficiency(number(inputs, "K0"));
            case "lambda/lambda_stokes NASA fit" ->
                    DropImpingement.rangeRatioByFit(number(inputs, "Re"));
            case "lambda/lambda_stokes integral form" ->
                    DropImpingement.rangeRatioByIntegral(number(inputs, "Re"));
            case "modified inertia parameter (Langmuir form)" ->
                    DropImpingement.langmuirModifiedInertia(
                            number(inputs, "K"),
                            DropImpingement.rangeRatioByFit(number(inputs, "Re")));
            case "total temperature" ->
                    KineticHeating.dryTemperature(number(inputs, "T"), number(inputs, "V"), 1.0);
            case "rime thickness at stagnation" -> 1e3 * rime(inputs);
            default -> throw new AssertionError(quantity);
        };
    }

    private static double rime(String inputs) {
        double caught =
                IceGrowth.waterCatch(
                        number(inputs, "LWC") / 1e3, number(inputs, "V"), number(inputs, "beta"));
        return number(inputs, "t") * IceGrowth.rate(caught, 1.0, number(inputs, "rho_ice"));
    }

    @Test
    @DisplayName("are compared in 42 rows")
    void rows() {
        assertThat(Table.rows(TABLE)).hasSize(42);
    }
}
