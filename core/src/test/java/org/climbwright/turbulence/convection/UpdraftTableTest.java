package org.climbwright.turbulence.convection;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.climbwright.testing.Agreement.closeTo;

import org.climbwright.quantity.OutsideModelException;
import org.climbwright.testing.Table;
import org.climbwright.unit.UnitScale;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.ValueSource;

@DisplayName("The upper bound of an updraft")
class UpdraftTableTest {
    @ParameterizedTest(name = "{0}: {1}, {2}, {3}, {4}")
    @CsvFileSource(resources = "/turbulence/updraft.csv", useHeadersInDisplayName = true)
    @DisplayName("is that of the table for the energy")
    void agreesWithTheTable(
            double energy, String mps, String feetPerMinute, String knots, String halfMps) {
        UpdraftBound bound = UpdraftBound.ofEnergy(energy);
        assertThat(bound.atMostInMetresPerSecond()).is(closeTo(mps, 0.5e-4 + 1e-9));
        assertThat(bound.atMostInFeetPerMinute()).is(closeTo(feetPerMinute, 0.05 + 1e-6));
        assertThat(UnitScale.KNOT.fromSi(bound.atMostInMetresPerSecond()))
                .is(closeTo(knots, 0.05 + 1e-6));
        assertThat(0.5 * bound.atMostInMetresPerSecond()).is(closeTo(halfMps, 0.005 + 1e-6));
        assertThat(bound).asString().contains("at most");
    }

    @ParameterizedTest(name = "{0} J/kg")
    @ValueSource(doubles = {-1e-9, -100.0, 20001.0, Double.NaN})
    @DisplayName("has no energy below nothing")
    void isRefused(double energy) {
        assertThat(UpdraftBound.covers(energy)).isFalse();
        assertThatExceptionOfType(OutsideModelException.class)
                .isThrownBy(() -> UpdraftBound.ofEnergy(energy))
                .withMessageContaining("must be from 0.0 to 20000.0 J/kg")
                .withMessageEndingWith("it is never negative; inhibition is another figure");
        assertThatExceptionOfType(OutsideModelException.class)
                .isThrownBy(() -> UpdraftBound.idealUpdraft(energy));
    }

    @Test
    @DisplayName("is compared in 6 rows")
    void rows() {
        assertThat(Table.rows("/turbulence/updraft.csv")).hasSize(6);
    }
}
