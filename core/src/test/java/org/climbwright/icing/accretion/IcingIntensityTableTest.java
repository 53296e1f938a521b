package org.climbwright.icing.accretion;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.Locale;
import org.climbwright.testing.Table;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

@DisplayName("The intensity of icing")
class IcingIntensityTableTest {
    private static final String TABLE = "/icing/accretion/intensity.csv";

    @ParameterizedTest(name = "{0}: {1} {2}")
    @CsvFileSource(resources = TABLE, useHeadersInDisplayName = true)
    @DisplayName("has the bounds of the rule, in inches an hour")
    void agreesWithTheRule(String item, String value, String unit, String status, String source) {
        String name = item.substring(item.lastIndexOf(' ') + 1).toUpperCase(Locale.ROOT);
        IcingIntensity expected = IcingIntensity.valueOf(name);
        double within =
                switch (value.split(" ")[0] + value.split(" ")[1]) {
                    case "<1/4" -> 0.24;
                    case "1/4to" -> 0.251;
                    case "1to" -> 1.01;
                    case ">3" -> 3.01;
                    default -> throw new AssertionError(value);
                };
        assertThat(IcingIntensity.ofInchesPerHour(within)).contains(expected);
        assertThat(unit).isEqualTo("in/h");
    }

    @ParameterizedTest(name = "a quarter of an inch in {0} s is {1}")
    @CsvSource({
        "7200, TRACE",
        "3600, TRACE",
        "3599, LIGHT",
        "900, LIGHT",
        "899, MODERATE",
        "300, MODERATE",
        "299, SEVERE",
        "1, SEVERE"
    })
    @DisplayName("is by the time to gather a quarter of an inch, bounds to the milder side")
    void byTime(double seconds, IcingIntensity expected) {
        assertThat(IcingIntensity.ofGrowth(0.00635 / seconds)).contains(expected);
        assertThat(seconds).isGreaterThanOrEqualTo(expected.shortestTimeS());
    }

    @Test
    @DisplayName("is the same in 6.35, 25.4 and 76.2 mm an hour, and in inches")
    void sameBounds() {
        assertThat(IcingIntensity.ofInchesPerHour(0.25)).contains(IcingIntensity.TRACE);
        assertThat(IcingIntensity.ofInchesPerHour(1.0)).contains(IcingIntensity.LIGHT);
        assertThat(IcingIntensity.ofInchesPerHour(3.0)).contains(IcingIntensity.MODERATE);
        assertThat(IcingIntensity.ofGrowth(0.0762 / 3600.0)).contains(IcingIntensity.MODERATE);
        assertThat(IcingIntensity.RULE_THICKNESS_M).isCloseTo(0.00635, within(1e-18));
    }

    @Test
    @DisplayName("is none where no ice grows, and refuses what is no growth")
    void none() {
        assertThat(IcingIntensity.ofGrowth(0.0)).isEmpty();
        assertThatIllegalArgumentException()
                .isThrownBy(() -> IcingIntensity.ofGrowth(1.0))
                .withMessageContaining("growth of ice must be from");
    }

    @ParameterizedTest
    @ValueSource(doubles = {-1e-9, Double.NaN})
    @DisplayName("refuses what is no growth")
    void refused(double rate) {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> IcingIntensity.ofGrowth(rate))
                .withMessage("growth of ice must be 0.0 m/s or more, but was " + rate + " m/s");
    }

    @Test
    @DisplayName("is compared in 4 rows")
    void rows() {
        assertThat(Table.rows(TABLE)).hasSize(4);
    }
}
