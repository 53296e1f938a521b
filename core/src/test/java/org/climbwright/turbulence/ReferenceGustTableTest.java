package org.climbwright.turbulence;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.climbwright.testing.Agreement.closeTo;

import org.climbwright.quantity.altitude.PressureAltitude;
import org.climbwright.testing.Table;
import org.climbwright.unit.UnitScale;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;

@DisplayName("The reference gust of the rule for transport aeroplanes")
class ReferenceGustTableTest {
    @ParameterizedTest(name = "{0}, {1}: {2}")
    @CsvFileSource(resources = "/turbulence/reference-gust.csv", useHeadersInDisplayName = true)
    @DisplayName("is that of the table at its altitude and design speed")
    void agreesWithTheTable(double feet, String speed, String fps, String mps, String knots) {
        GustVelocity gust =
                GustVelocity.reference(
                        PressureAltitude.ofFeet(feet),
                        speed.equals("VD")
                                ? GustVelocity.DesignSpeed.AT_DIVE_SPEED
                                : GustVelocity.DesignSpeed.UP_TO_CRUISE_SPEED);
        assertThat(gust.inFeetPerSecond()).is(closeTo(fps, 0.5e-4 + 1e-9));
        assertThat(gust.inMetresPerSecond()).is(closeTo(mps, 0.5e-4 + 1e-9));
        assertThat(UnitScale.KNOT.fromSi(gust.inMetresPerSecond()))
                .is(closeTo(knots, 0.5e-3 + 1e-9));
        assertThat(gust.basis()).contains("25.341(a)(5)").contains(speed.substring(0, 2));
    }

    @ParameterizedTest(name = "{0} ft: {1} ft/s")
    @CsvSource({"0, 56.0", "15000, 44.0", "60000, 20.86"})
    @DisplayName("is what the rule prints, to a part in 1e9")
    void isWhatTheRulePrints(double feet, double fps) {
        assertThat(
                        UnitScale.FOOT_PER_SECOND.fromSi(
                                GustRule.referenceGustUpToCruiseSpeed(UnitScale.FOOT.toSi(feet))))
                .isCloseTo(fps, within(1e-9 * fps));
    }

    @Test
    @DisplayName("is compared in 16 rows")
    void rows() {
        assertThat(Table.rows("/turbulence/reference-gust.csv")).hasSize(16);
    }
}
