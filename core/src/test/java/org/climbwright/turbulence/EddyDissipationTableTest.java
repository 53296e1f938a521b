package org.climbwright.turbulence;

import static org.assertj.core.api.Assertions.assertThat;
import static org.climbwright.testing.Agreement.closeTo;

import org.climbwright.testing.Table;
import org.climbwright.turbulence.EddyDissipationRate.Edition;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;

@DisplayName("An eddy dissipation rate")
class EddyDissipationTableTest {
    @ParameterizedTest(name = "{0}: {1}, {2}")
    @CsvFileSource(resources = "/turbulence/eddy-dissipation.csv", useHeadersInDisplayName = true)
    @DisplayName("has the word of the table as quoted in 2025, and its cube is the energy")
    void hasTheWord(double rate, TurbulenceIntensity word, String energy) {
        EddyDissipationRate edr = EddyDissipationRate.ofSi(rate);
        assertThat(edr.intensity(Edition.AS_QUOTED_IN_2025)).isEqualTo(word);
        assertThat(edr.energyDissipationM2PerS3()).is(closeTo(energy, 1e-15));
        assertThat(EddyDissipationRate.ofEnergyDissipation(Double.parseDouble(energy)).inSi())
                .is(closeTo(Double.toString(rate), 1e-15));
    }

    @ParameterizedTest(name = "{0}, {1}")
    @CsvSource({"0.1, NIL", "0.2, LIGHT", "0.4, LIGHT", "0.45, MODERATE", "0.7, MODERATE"})
    @DisplayName("may have another word in the editions before (from memory)")
    void hadAnotherWord(double rate, TurbulenceIntensity word) {
        assertThat(EddyDissipationRate.ofSi(rate).intensity(Edition.BEFORE)).isEqualTo(word);
    }

    @Test
    @DisplayName("is compared in 8 rows")
    void rows() {
        assertThat(Table.rows("/turbulence/eddy-dissipation.csv")).hasSize(8);
    }
}
