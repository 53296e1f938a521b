package org.climbwright.turbulence;

import static org.assertj.core.api.Assertions.assertThat;

import org.climbwright.testing.Table;
import org.climbwright.turbulence.EddyDissipationRate.Edition;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

@DisplayName("A bound of the words for eddy dissipation rates")
class EddyDissipationBoundsTableTest {
    @ParameterizedTest(name = "{0}, {1}: {2} {3}, {4} {5}")
    @CsvFileSource(
            resources = "/turbulence/eddy-dissipation-bounds.csv",
            useHeadersInDisplayName = true)
    @DisplayName("belongs to the word that the edition gives it, and the next number does not")
    void belongsWhereItIsWritten(
            Edition edition,
            TurbulenceIntensity word,
            double lower,
            String lowerBound,
            Double upper,
            String upperBound) {
        assertThat(of(lower, edition) == word).isEqualTo(lowerBound.equals("closed"));
        assertThat(of(Math.nextUp(lower), edition)).isEqualTo(word);
        if (lower > 0.0) {
            assertThat(of(Math.nextDown(lower), edition)).isNotEqualTo(word);
        }
        if (upper == null) {
            assertThat(of(5.0, edition)).isEqualTo(word);
        } else {
            assertThat(of(upper, edition) == word).isEqualTo(upperBound.equals("closed"));
            assertThat(of(Math.nextDown(upper), edition)).isEqualTo(word);
            assertThat(of(Math.nextUp(upper), edition)).isNotEqualTo(word);
        }
    }

    private static TurbulenceIntensity of(double rate, Edition edition) {
        return EddyDissipationRate.ofSi(rate).intensity(edition);
    }

    @Test
    @DisplayName("is compared in 7 rows")
    void rows() {
        assertThat(Table.rows("/turbulence/eddy-dissipation-bounds.csv")).hasSize(7);
    }
}
