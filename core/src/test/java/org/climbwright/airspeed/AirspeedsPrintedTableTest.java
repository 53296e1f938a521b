package org.climbwright.airspeed;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.climbwright.atmosphere.StandardAir;
import org.climbwright.testing.Table;
import org.climbwright.unit.UnitScale;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

@DisplayName("An example that its author worked by hand")
class AirspeedsPrintedTableTest {
    private static final String BY_SLIDE_RULE = "/airspeed/airspeeds-printed.csv";
    private static final String BY_HAND_RULE = "/airspeed/tas-from-total-temperature-printed.csv";

    @ParameterizedTest(name = "{0}, {1}, {2}: {3}")
    @CsvFileSource(resources = BY_SLIDE_RULE, useHeadersInDisplayName = true)
    @DisplayName("on a circular slide rule agrees as far as that can be read")
    void slideRule(double casKnots, double mach, double feet, String answer, double tolerance) {
        double cas = UnitScale.KNOT.toSi(casKnots);
        if (answer.equals("mach")) {
            double p = StandardAir.pressureFromAltitude(UnitScale.FOOT.toSi(feet));
            assertThat(AirspeedConversion.machFromCas(cas, p)).isCloseTo(mach, within(tolerance));
        } else {
            assertThat(answer).isEqualTo("flight level");
            assertThat(UnitScale.FOOT.fromSi(Crossover.altitude(cas, mach)))
                    .isCloseTo(feet, within(100.0 * tolerance));
        }
    }

    @ParameterizedTest(name = "{0}, {1}: {2}")
    @CsvFileSource(resources = BY_HAND_RULE, useHeadersInDisplayName = true)
    @DisplayName("by a rule for true airspeed from total temperature agrees within a knot")
    void handRule(double mach, double totalCelsius, double tasKnots) {
        double air = TotalTemperature.staticFromMach(totalCelsius + 273.15, mach, 1.0);
        assertThat(UnitScale.KNOT.fromSi(AirspeedConversion.tasFromMach(mach, air)))
                .isCloseTo(tasKnots, within(1.0));
    }

    @Test
    @DisplayName("is compared in 3 rows and in 2")
    void rows() {
        assertThat(Table.rows(BY_SLIDE_RULE)).hasSize(3);
        assertThat(Table.rows(BY_HAND_RULE)).hasSize(2);
    }
}
