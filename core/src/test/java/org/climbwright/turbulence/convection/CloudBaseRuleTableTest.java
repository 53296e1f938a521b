package org.climbwright.turbulence.convection;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.climbwright.testing.Agreement.closeTo;

import org.climbwright.quantity.OutsideModelException;
import org.climbwright.quantity.temperature.DewPoint;
import org.climbwright.quantity.temperature.StaticAirTemperature;
import org.climbwright.testing.Table;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.EnumSource;

@DisplayName("The height of a cumulus by a rule")
class CloudBaseRuleTableTest {
    /** The table has whole feet; kelvins and degrees Celsius differ by some 1e-11 ft. */
    private static final double HALF_A_FOOT = 0.5 + 1e-6;

    @ParameterizedTest(name = "{0}, {1}: {2}, {3}, {4}")
    @CsvFileSource(resources = "/turbulence/cloud-base-rule.csv", useHeadersInDisplayName = true)
    @DisplayName("is that of the table for each rule it has")
    void agreesWithTheTable(
            double celsius, double dewPoint, String by400, String by24, String by44) {
        // "examples exact": 400 ft per degree leaves no digit to round
        assertThat(feet(SpreadRule.FEET_400_PER_CELSIUS, celsius, dewPoint))
                .is(closeTo(by400, 1e-6));
        if (by24 != null) {
            assertThat(feet(SpreadRule.CELSIUS_2_4_PER_1000_FEET, celsius, dewPoint))
                    .is(closeTo(by24, HALF_A_FOOT));
            assertThat(feet(SpreadRule.FAHRENHEIT_4_4_PER_1000_FEET, celsius, dewPoint))
                    .is(closeTo(by44, HALF_A_FOOT));
        }
    }

    private static double feet(SpreadRule rule, double celsius, double dewPoint) {
        return rule.heightOfBase(
                        StaticAirTemperature.ofCelsius(celsius), DewPoint.ofCelsius(dewPoint))
                .inFeet();
    }

    @ParameterizedTest(name = "{0}")
    @EnumSource
    @DisplayName("is refused without a spread that can be, and outside the temperatures of air")
    void isRefused(SpreadRule rule) {
        assertThat(SpreadRule.covers(288.0, 288.1)).isFalse();
        assertThatExceptionOfType(OutsideModelException.class)
                .isThrownBy(() -> rule.heightOfBase(288.0, 288.1))
                .withMessageContaining("dew point must be from 123.0 to 288.0 K");
        assertThatExceptionOfType(OutsideModelException.class)
                .isThrownBy(() -> rule.heightOfBase(Double.NaN, 280.0));
    }

    @Test
    @DisplayName("is compared in 5 rows")
    void rows() {
        assertThat(Table.rows("/turbulence/cloud-base-rule.csv")).hasSize(5);
    }
}
