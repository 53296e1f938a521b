package org.climbwright.icing.envelope;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.climbwright.testing.Table;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

@DisplayName("The largest liquid water content of intermittent maximum icing")
class IntermittentMaximumWaterTableTest {
    private static final String TABLE = "/icing/envelope/intermittent-maximum-water.csv";
    private static final String OF_1949 = "/icing/envelope/recommended-1949.csv";

    @ParameterizedTest(name = "{0}, {1} is {2}")
    @CsvFileSource(resources = TABLE, useHeadersInDisplayName = true)
    @DisplayName("is what is tabulated, to the last digit")
    void agreesWithTheTable(double celsius, double micrometres, double gramsPerM3, String source) {
        assertThat(grams(celsius, micrometres)).isCloseTo(gramsPerM3, within(1e-12));
    }

    @ParameterizedTest(name = "{1}: {2}, {4} is {3}")
    @CsvFileSource(resources = OF_1949, useHeadersInDisplayName = true)
    @DisplayName("is what was recommended in 1949 for cumulus, on the page itself")
    void agreesWith1949(
            String itemClass,
            int item,
            double celsius,
            double gramsPerM3,
            double micrometres,
            double lowestFeet,
            double highestFeet,
            double statuteMiles,
            String source) {
        assertThat(itemClass).startsWith("II-M");
        assertThat(grams(celsius, micrometres)).isCloseTo(gramsPerM3, within(1e-12));
        // its extent is the standard one of the rule, 2.6 NM, within what 3 miles are rounded to
        assertThat(statuteMiles * 1609.344)
                .isCloseTo(IntermittentMaximum.STANDARD_EXTENT_M, within(15.0));
    }

    private static double grams(double celsius, double micrometres) {
        return 1e3 * IntermittentMaximum.liquidWaterContent(micrometres * 1e-6, celsius + 273.15);
    }

    @Test
    @DisplayName("is compared in 24 rows and 9")
    void rows() {
        assertThat(Table.rows(TABLE)).hasSize(24);
        assertThat(Table.rows(OF_1949)).hasSize(9);
    }
}
