package org.climbwright.icing.potential;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.climbwright.testing.Table;
import org.climbwright.unit.UnitScale;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

@DisplayName("The potential of a forecast scheme")
class CombinedPotentialTest {
    private static final double HALF_LAST_PRINTED_DIGIT = 5e-7;

    @ParameterizedTest(name = "{0}, {1}, {2}, {3}, {4}: {5}")
    @CsvFileSource(resources = "/icing/interest-combined.csv", useHeadersInDisplayName = true)
    @DisplayName("is the product of three interests, raised by two:")
    void agreesWithTheTable(
            double celsius,
            double humidityPercent,
            double cloudTopC,
            double verticalVelocityPaPerS,
            double cloudWaterGPerKg,
            double potential,
            String source) {
        double cloudTopK = 273.15 + cloudTopC;
        double initial =
                IcingInterest.initialPotential(
                        273.15 + celsius, humidityPercent / 100.0, cloudTopK);
        assertThat(
                        IcingInterest.potential(
                                initial,
                                verticalVelocityPaPerS,
                                UnitScale.GRAM_PER_KILOGRAM.toSi(cloudWaterGPerKg),
                                cloudTopK))
                .isCloseTo(potential, within(HALF_LAST_PRINTED_DIGIT));
    }

    @Test
    @DisplayName("is compared in 8 rows")
    void rows() {
        assertThat(Table.rows("/icing/interest-combined.csv")).hasSize(8);
    }

    @Test
    @DisplayName("is not raised from 0.001 or less")
    void least() {
        assertThat(IcingInterest.potential(0.001, -1.0, 1e-3, 270.0)).isEqualTo(0.001);
        assertThat(IcingInterest.potential(0.0011, -1.0, 1e-3, 270.0))
                .isCloseTo(0.0011 + 0.9989 * 0.65, within(1e-12));
    }

    @Test
    @DisplayName("counts cloud water only under a top from 259.15 to 273.15 K")
    void water() {
        for (double top : new double[] {259.15, 273.15}) {
            assertThat(IcingInterest.potential(0.5, 0, 1e-3, top)).isCloseTo(0.7, within(1e-12));
        }
        for (double top : new double[] {259.14, 273.16}) {
            assertThat(IcingInterest.potential(0.5, 0, 1e-3, top)).isEqualTo(0.5);
        }
    }
}
