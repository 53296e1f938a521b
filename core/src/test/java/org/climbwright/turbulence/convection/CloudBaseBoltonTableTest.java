package org.climbwright.turbulence.convection;

import static org.assertj.core.api.Assertions.assertThat;
import static org.climbwright.testing.Agreement.closeTo;
import static org.climbwright.testing.Agreement.relativelyCloseTo;

import org.climbwright.atmosphere.LiftedAir;
import org.climbwright.atmosphere.MoistAir;
import org.climbwright.testing.Table;
import org.climbwright.unit.UnitScale;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

@DisplayName("The height of a cumulus by thermodynamics")
class CloudBaseBoltonTableTest {
    /**
     * Equation 15 of Bolton is dry in its heat capacity, ours moist: 1.4 % for 16 g/kg of vapour,
     * the moistest here, and 0.1 K of 8 K is what he states for his temperature.
     */
    private static final double MOIST_HEAT = 0.02;

    @ParameterizedTest(name = "{0}, {1}: {2}, {3}")
    @CsvFileSource(resources = "/turbulence/cloud-base-bolton.csv", useHeadersInDisplayName = true)
    @DisplayName("is that of Bolton's formula, and 2 to 5 % above 400 ft per degree")
    void agreesWithTheTable(double celsius, double dewPoint, String feet, String by400) {
        double t = UnitScale.CELSIUS.toSi(celsius);
        double vapourPa = MoistAir.saturationVapourPressure(UnitScale.CELSIUS.toSi(dewPoint));
        double ours = UnitScale.FOOT.fromSi(LiftedAir.heightToCondensation(t, vapourPa, 101325.0));
        assertThat(ours).is(relativelyCloseTo(feet, MOIST_HEAT));
        assertThat(
                        UnitScale.FOOT.fromSi(
                                SpreadRule.FEET_400_PER_CELSIUS.heightOfBase(
                                        t, UnitScale.CELSIUS.toSi(dewPoint))))
                .is(closeTo(by400, 0.5))
                .isBetween(0.945 * ours, 0.98 * ours);
    }

    @Test
    @DisplayName("is compared in 3 rows")
    void rows() {
        assertThat(Table.rows("/turbulence/cloud-base-bolton.csv")).hasSize(3);
    }
}
