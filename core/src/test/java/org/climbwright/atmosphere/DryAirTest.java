package org.climbwright.atmosphere;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import java.util.function.DoubleUnaryOperator;
import java.util.stream.Stream;
import org.climbwright.quantity.OutsideModelException;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Named;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Its values are compared in {@link StandardAirTableTest} and {@link PrintedTableTest}. */
@DisplayName("Dry air")
class DryAirTest {
    static Stream<Named<DoubleUnaryOperator>> quantities() {
        return Stream.of(
                Named.of("density", t -> DryAir.density(101325.0, t)),
                Named.of("speed of sound", DryAir::speedOfSound),
                Named.of("dynamic viscosity", DryAir::dynamicViscosity),
                Named.of("kinematic viscosity", t -> DryAir.kinematicViscosity(101325.0, t)),
                Named.of("thermal conductivity", DryAir::thermalConductivity));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("quantities")
    @DisplayName("is meant for 100 to 400 K, ends included, and for no other temperature")
    void range(DoubleUnaryOperator quantity) {
        for (double kelvin : new double[] {100.0, 216.65, 288.15, 400.0}) {
            assertThat(DryAir.coversTemperature(kelvin)).isTrue();
            assertThat(quantity.applyAsDouble(kelvin)).isPositive().isFinite();
        }
        for (double kelvin :
                new double[] {
                    Double.NaN,
                    Double.NEGATIVE_INFINITY,
                    -1.0,
                    0.0,
                    Math.nextDown(100.0),
                    Math.nextUp(400.0),
                    Double.POSITIVE_INFINITY
                }) {
            assertThat(DryAir.coversTemperature(kelvin)).isFalse();
            assertThatExceptionOfType(OutsideModelException.class)
                    .isThrownBy(() -> quantity.applyAsDouble(kelvin))
                    .withMessage(
                            "static air temperature must be from 100.0 to 400.0 K, but was "
                                    + kelvin
                                    + " K: no air of the atmosphere is outside, and the formulas"
                                    + " are not meant for it");
        }
    }

    @Test
    @DisplayName("that is warmer is thinner, faster for sound, more viscous and conducts better")
    void warmer() {
        for (double kelvin = 100.0; kelvin < 400.0; kelvin++) {
            double warmer = kelvin + 1.0;
            assertThat(DryAir.density(101325.0, warmer))
                    .isLessThan(DryAir.density(101325.0, kelvin));
            assertThat(DryAir.speedOfSound(warmer)).isGreaterThan(DryAir.speedOfSound(kelvin));
            assertThat(DryAir.dynamicViscosity(warmer))
                    .isGreaterThan(DryAir.dynamicViscosity(kelvin));
            assertThat(DryAir.thermalConductivity(warmer))
                    .isGreaterThan(DryAir.thermalConductivity(kelvin));
        }
    }
}
