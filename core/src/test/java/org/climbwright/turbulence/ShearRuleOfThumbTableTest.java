package org.climbwright.turbulence;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import org.climbwright.testing.Table;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.ValueSource;

@DisplayName("The rule of thumb for vertical wind shear")
class ShearRuleOfThumbTableTest {
    @ParameterizedTest(name = "{0}: {1}")
    @CsvFileSource(
            resources = "/turbulence/shear-rule-of-thumb.csv",
            useHeadersInDisplayName = true)
    @DisplayName("has the word of the table from bound to bound of its band")
    void agreesWithTheTable(TurbulenceIntensity word, String band) {
        String[] bounds = band.replaceAll("[^0-9-]*/.*", "").replaceAll("[^0-9-]", "").split("-");
        double first = Double.parseDouble(bounds[0]);
        if (bounds.length == 1) {
            assertThat(of(first).value()).isNotEqualTo(Optional.of(word));
            assertThat(of(Math.nextUp(first)).orElseThrow()).isEqualTo(word);
        } else {
            double last = Double.parseDouble(bounds[1]);
            assertThat(of(first).orElseThrow()).isEqualTo(word);
            assertThat(of(last).orElseThrow()).isEqualTo(word);
            assertThat(of(0.5 * (first + last)).orElseThrow()).isEqualTo(word);
        }
    }

    @ParameterizedTest(name = "{0} kn/1000 ft")
    @ValueSource(doubles = {0.0, 2.9, 5.5, 9.5})
    @DisplayName("has no word between its bands and below them, and says why")
    void hasNoWordBetween(double shear) {
        assertThat(of(shear).isKnown()).isFalse();
        assertThat(of(shear).reason().orElseThrow())
                .startsWith(shear + " kn/1000 ft is in no band");
    }

    private static Answer<TurbulenceIntensity> of(double shear) {
        return TurbulenceIntensity.ofShearByRuleOfThumb(shear);
    }

    @Test
    @DisplayName("is compared in 4 rows")
    void rows() {
        assertThat(Table.rows("/turbulence/shear-rule-of-thumb.csv")).hasSize(4);
    }
}
