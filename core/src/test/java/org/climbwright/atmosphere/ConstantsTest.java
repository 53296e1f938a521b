package org.climbwright.atmosphere;

import static org.assertj.core.api.Assertions.assertThat;
import static org.climbwright.testing.Agreement.relativelyCloseTo;

import java.math.BigDecimal;
import org.climbwright.testing.Table;
import org.climbwright.unit.UnitScale;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

@DisplayName("A constant of the standard atmosphere")
class ConstantsTest {
    @ParameterizedTest(name = "{0}, {1}")
    @CsvFileSource(resources = "/atmosphere/constants.csv", useHeadersInDisplayName = true)
    @DisplayName("has the value of its source")
    void hasTheValueOfItsSource(String symbol, String value) {
        switch (symbol) {
            case "g0" -> exactly(IcaoConstants.GRAVITY_MPS2, value);
            case "p0" -> exactly(IcaoConstants.SEA_LEVEL_PRESSURE_PA, value);
            case "T0" -> exactly(IcaoConstants.SEA_LEVEL_TEMPERATURE_K, value);
            case "gamma" -> exactly(IcaoConstants.HEAT_CAPACITY_RATIO, value);
            case "R" -> exactly(IcaoConstants.GAS_CONSTANT_J_PER_KG_K, value);
            case "r" -> exactly(IcaoConstants.EARTH_RADIUS_M, value);
            case "ft" -> exactly(UnitScale.FOOT.toSi(1.0), value);
            case "inHg" -> exactly(UnitScale.INCH_OF_MERCURY.toSi(1.0), value);
            case "kt" -> {
                assertThat(value).isEqualTo("1852/3600");
                assertThat(UnitScale.KNOT.toSi(1.0)).isEqualTo(1852.0 / 3600.0);
            }
            // its source rounds p0 / (R T0) = 1.22500001812 to 1.225
            case "rho0" ->
                    assertThat(IcaoConstants.SEA_LEVEL_DENSITY_KG_PER_M3)
                            .is(relativelyCloseTo(value, 2e-8))
                            .is(relativelyCloseTo("1.2250000181242878", 2e-16));
            case "a0" ->
                    assertThat(IcaoConstants.SEA_LEVEL_SPEED_OF_SOUND_MPS)
                            .is(relativelyCloseTo(value, 2e-16));
            // the three of a formula are seen in it alone, here at 100 K
            case "beta_s" ->
                    assertThat(DryAir.dynamicViscosity(100.0) * 210.4 / 1000.0)
                            .is(relativelyCloseTo(value, 1e-15));
            case "S" ->
                    assertThat(1.458e-6 * 1000.0 / DryAir.dynamicViscosity(100.0) - 100.0)
                            .is(relativelyCloseTo(value, 1e-14));
            case "lambda law (ICAO/ISO)" ->
                    assertThat(
                                    DryAir.thermalConductivity(100.0)
                                            * (100.0 + 245.4 * Math.pow(10.0, -0.12))
                                            / 1000.0)
                            .is(relativelyCloseTo(value, 1e-15));
            default -> throw new AssertionError("no check for " + symbol);
        }
    }

    private static void exactly(double ours, String value) {
        assertThat(ours).isEqualTo(new BigDecimal(value).doubleValue());
    }

    @Test
    @DisplayName("is compared in 14 rows")
    void rows() {
        assertThat(Table.rows("/atmosphere/constants.csv")).hasSize(14);
    }
}
