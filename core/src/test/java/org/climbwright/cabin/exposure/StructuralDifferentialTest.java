package org.climbwright.cabin.exposure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.climbwright.quantity.OutsideModelException;
import org.climbwright.quantity.altitude.PressureAltitude;
import org.climbwright.quantity.pressure.DifferentialPressure;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

@DisplayName("The differential that a structure must bear")
class StructuralDifferentialTest {
    private static final DifferentialPressure RELIEF =
            DifferentialPressure.ofPoundsPerSquareInch(9);

    @ParameterizedTest(name = "9 psi, approved up to {0} ft: {1} psi")
    @CsvSource({"0, 11.97", "41000, 11.97", "45000, 11.97", "45000.001, 15.03", "51000, 15.03"})
    @DisplayName("is 1.33 times the relief setting up to 45,000 ft, and 1.67 times above:")
    void transport(double feet, double psi) {
        assertThat(
                        StructuralDifferential.transport(RELIEF, PressureAltitude.ofFeet(feet))
                                .inPoundsPerSquareInch())
                .isCloseTo(psi, within(1e-9));
    }

    @Test
    @DisplayName("is 1.33 times the relief setting for small aeroplanes")
    void small() {
        assertThat(StructuralDifferential.small(RELIEF).inPoundsPerSquareInch())
                .isCloseTo(11.97, within(1e-9));
    }

    @ParameterizedTest
    @ValueSource(doubles = {-0.001, 32000.001, Double.NaN})
    @DisplayName("has no factor for an altitude that is none:")
    void altitudes(double metres) {
        assertThat(StructuralDifferential.coversApprovedAltitude(metres)).isFalse();
        assertThatThrownBy(() -> StructuralDifferential.transportFactor(metres))
                .isInstanceOf(OutsideModelException.class)
                .hasMessageContaining("approved altitude");
    }

    @ParameterizedTest
    @ValueSource(doubles = {-0.001, 101325.001})
    @DisplayName("has no relief setting that is none:")
    void settings(double pascals) {
        DifferentialPressure relief = DifferentialPressure.ofPascals(pascals);
        assertThat(StructuralDifferential.coversRelief(pascals)).isFalse();
        assertThat(StructuralDifferential.coversRelief(101325.0)).isTrue();
        assertThatThrownBy(() -> StructuralDifferential.small(relief))
                .isInstanceOf(OutsideModelException.class);
        assertThatThrownBy(
                        () -> StructuralDifferential.transport(relief, PressureAltitude.ofFeet(0)))
                .isInstanceOf(OutsideModelException.class);
    }
}
