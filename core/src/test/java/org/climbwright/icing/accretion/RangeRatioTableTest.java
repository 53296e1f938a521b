package org.climbwright.icing.accretion;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.climbwright.testing.Table;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

@DisplayName("How far a drop flies against Stokes's law")
class RangeRatioTableTest {
    private static final String TABLE = "/icing/accretion/range-ratio.csv";

    @ParameterizedTest(name = "{0} is {1}")
    @CsvFileSource(resources = TABLE, useHeadersInDisplayName = true)
    @DisplayName("is that of the table, to what each formula says of itself")
    void agreesWithTheTable(double reynolds, double ratio, String source) {
        double ofIntegral = reynolds <= 1000.0 ? 0.02 : 0.06;
        double ofFit = reynolds < 10.0 ? 0.065 : reynolds <= 1000.0 ? 0.011 : 0.042;
        assertThat(DropImpingement.rangeRatioByIntegral(reynolds))
                .isCloseTo(ratio, within(ofIntegral * ratio));
        assertThat(DropImpingement.rangeRatioByFit(reynolds))
                .isCloseTo(ratio, within(ofFit * ratio));
    }

    @Test
    @DisplayName("has a series near rest that meets the closed form")
    void series() {
        double joint = StrictMath.pow(6.0 * 1e-3, 1.5);
        double below = DropImpingement.rangeRatioByIntegral(joint * (1.0 - 1e-9));
        double above = DropImpingement.rangeRatioByIntegral(joint * (1.0 + 1e-9));
        assertThat(below).isCloseTo(above, within(2e-12));
        assertThat(DropImpingement.rangeRatioByIntegral(0.0)).isEqualTo(1.0);
        assertThat(DropImpingement.rangeRatioByFit(0.0)).isEqualTo(1.0);
    }

    @Test
    @DisplayName("is compared in 54 rows")
    void rows() {
        assertThat(Table.rows(TABLE)).hasSize(54);
    }
}
