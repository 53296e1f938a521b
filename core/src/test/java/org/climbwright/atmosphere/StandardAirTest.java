package org.climbwright.atmosphere;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.within;

import org.climbwright.quantity.OutsideModelException;
import org.climbwright.quantity.altitude.PressureAltitude;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

@DisplayName("Standard air")
class StandardAirTest {
    @Test
    @DisplayName("answers as the example in its documentation says")
    void example() {
        assertThat(StandardAir.pressureFromAltitude(11000.0)).hasToString("22632.0400950078");
        assertThat(StandardAir.altitudeFromPressure(50000.0)).hasToString("5574.433808591446");
    }

    @Test
    @DisplayName("at mean sea level is 15 °C, 1013.25 hPa and 1.225 kg/m³")
    void seaLevel() {
        assertThat(StandardAir.temperatureFromAltitude(0.0)).isEqualTo(288.15);
        assertThat(StandardAir.pressureFromAltitude(0.0)).isEqualTo(101325.0);
        assertThat(StandardAir.densityFromAltitude(0.0)).isCloseTo(1.225, within(2e-8));
        assertThat(StandardAir.altitudeFromPressure(101325.0)).isZero();
        assertThat(StandardAir.temperatureRatioFromAltitude(0.0)).isEqualTo(1.0);
        assertThat(StandardAir.pressureRatioFromAltitude(0.0)).isEqualTo(1.0);
        assertThat(StandardAir.densityRatioFromAltitude(0.0)).isEqualTo(1.0);
    }

    @ParameterizedTest(name = "at {0} m")
    @ValueSource(doubles = {0, 11000, 20000, 32000, 47000, 51000, 71000})
    @DisplayName("has no step where two layers meet")
    void continuous(double bound) {
        double below = Math.nextDown(bound);
        double above = Math.nextUp(bound);
        // to a neighbouring double it is at most 1.5e-11 m, 2.3e-15 of the pressure; the formulas
        // round by as much again
        assertThat(StandardAir.temperatureFromAltitude(below))
                .isCloseTo(StandardAir.temperatureFromAltitude(bound), within(6e-14));
        assertThat(StandardAir.temperatureFromAltitude(above))
                .isCloseTo(StandardAir.temperatureFromAltitude(bound), within(6e-14));
        double p = StandardAir.pressureFromAltitude(bound);
        assertThat(StandardAir.pressureFromAltitude(below)).isBetween(p, p * (1.0 + 1e-14));
        assertThat(StandardAir.pressureFromAltitude(above)).isBetween(p * (1.0 - 1e-14), p);
        double rho = StandardAir.densityFromAltitude(bound);
        assertThat(StandardAir.densityFromAltitude(below)).isCloseTo(rho, within(1e-14 * rho));
        assertThat(StandardAir.densityFromAltitude(above)).isCloseTo(rho, within(1e-14 * rho));
        // and back, from the neighbouring pressures and densities
        double metres = 8 * Math.ulp(Math.max(bound, 8000.0));
        assertThat(StandardAir.altitudeFromPressure(p)).isEqualTo(bound);
        assertThat(StandardAir.altitudeFromPressure(Math.nextUp(p)))
                .isCloseTo(bound, within(metres));
        assertThat(StandardAir.altitudeFromPressure(Math.nextDown(p)))
                .isCloseTo(bound, within(metres));
        assertThat(StandardAir.altitudeFromDensity(rho)).isEqualTo(bound);
        assertThat(StandardAir.altitudeFromDensity(Math.nextUp(rho)))
                .isCloseTo(bound, within(metres));
        assertThat(StandardAir.altitudeFromDensity(Math.nextDown(rho)))
                .isCloseTo(bound, within(metres));
    }

    @ParameterizedTest(name = "at {0} m")
    @ValueSource(doubles = {11000, 20000, 32000, 47000, 51000, 71000})
    @DisplayName("never has more pressure at a higher double, where two layers meet")
    void monotonicAroundABound(double bound) {
        double altitude = bound - 20 * Math.ulp(bound);
        double pressure = StandardAir.pressureFromAltitude(altitude);
        for (int step = 0; step < 40; step++) {
            altitude = Math.nextUp(altitude);
            double above = StandardAir.pressureFromAltitude(altitude);
            assertThat(above).isLessThanOrEqualTo(pressure);
            pressure = above;
        }
        assertThat(pressure).isLessThan(StandardAir.pressureFromAltitude(bound));
        double p = StandardAir.pressureFromAltitude(bound) * (1.0 + 20 * Math.ulp(1.0));
        double lower = StandardAir.altitudeFromPressure(p);
        for (int step = 0; step < 40; step++) {
            p = Math.nextDown(p);
            double higher = StandardAir.altitudeFromPressure(p);
            assertThat(higher).isGreaterThanOrEqualTo(lower);
            lower = higher;
        }
    }

    @Test
    @DisplayName("reaches from -5 km to 80 km, ends included")
    void ends() {
        assertThat(StandardAir.altitudeFromPressure(StandardAir.pressureFromAltitude(-5000.0)))
                .isCloseTo(-5000.0, within(1e-9));
        assertThat(StandardAir.altitudeFromPressure(StandardAir.pressureFromAltitude(80000.0)))
                .isCloseTo(80000.0, within(1e-9));
        assertThat(StandardAir.altitudeFromDensity(StandardAir.densityFromAltitude(-5000.0)))
                .isCloseTo(-5000.0, within(1e-9));
        assertThat(StandardAir.altitudeFromDensity(StandardAir.densityFromAltitude(80000.0)))
                .isCloseTo(80000.0, within(1e-9));
        assertThat(StandardAir.coversAltitude(-5000.0)).isTrue();
        assertThat(StandardAir.coversAltitude(80000.0)).isTrue();
        assertThat(StandardAir.coversAltitude(Math.nextDown(-5000.0))).isFalse();
        assertThat(StandardAir.coversAltitude(Math.nextUp(80000.0))).isFalse();
    }

    @Nested
    @DisplayName("refuses")
    class Refuses {
        @Test
        @DisplayName("a pressure altitude of 90 km, with term, range, value and reason")
        void ninetyKilometres() {
            assertThatExceptionOfType(OutsideModelException.class)
                    .isThrownBy(() -> Atmosphere.standard().at(PressureAltitude.ofMetres(90000)))
                    .withMessage(
                            "pressure altitude must be from -5000.0 to 80000.0 m, but was 90000.0"
                                + " m: the ICAO standard atmosphere is defined no further here");
        }

        @ParameterizedTest
        @ValueSource(doubles = {Double.NaN, 0.0, 0.5, -1.0, 180000.0, Double.POSITIVE_INFINITY})
        @DisplayName("a pressure that it has nowhere")
        void aPressure(double pascal) {
            assertThat(StandardAir.coversPressure(pascal)).isFalse();
            assertThatExceptionOfType(OutsideModelException.class)
                    .isThrownBy(() -> StandardAir.altitudeFromPressure(pascal))
                    .withMessage(
                            "static pressure must be from 0.886272238579076 to 177687.04571454573"
                                    + " Pa, but was "
                                    + pascal
                                    + " Pa: the ICAO standard atmosphere is defined no further"
                                    + " here");
            assertThatExceptionOfType(OutsideModelException.class)
                    .isThrownBy(() -> StandardAir.temperatureFromPressure(pascal));
        }

        @ParameterizedTest
        @ValueSource(doubles = {Double.NaN, 0.0, 1e-5, -1.0, 2.0, Double.POSITIVE_INFINITY})
        @DisplayName("a density that it has nowhere")
        void aDensity(double density) {
            assertThat(StandardAir.coversDensity(density)).isFalse();
            assertThatExceptionOfType(OutsideModelException.class)
                    .isThrownBy(() -> StandardAir.altitudeFromDensity(density))
                    .withMessageStartingWith("air density must be from 1.57004211")
                    .withMessageContaining(" kg/m³, but was " + density + " kg/m³: ");
        }

        @Test
        @DisplayName("one step of a double beyond its lowest and highest pressure and density")
        void justOutside() {
            double highest = StandardAir.pressureFromAltitude(-5000.0);
            double lowest = StandardAir.pressureFromAltitude(80000.0);
            assertThat(StandardAir.coversPressure(Math.nextUp(highest))).isFalse();
            assertThat(StandardAir.coversPressure(Math.nextDown(lowest))).isFalse();
            double densest = StandardAir.densityFromAltitude(-5000.0);
            double thinnest = StandardAir.densityFromAltitude(80000.0);
            assertThat(StandardAir.coversDensity(densest * (1.0 + 2e-15))).isFalse();
            assertThat(StandardAir.coversDensity(thinnest * (1.0 - 2e-15))).isFalse();
            // the density of the pressure and temperature there may round to the next double
            assertThat(StandardAir.altitudeFromDensity(Math.nextUp(densest))).isEqualTo(-5000.0);
            assertThat(StandardAir.altitudeFromDensity(Math.nextDown(thinnest))).isEqualTo(80000.0);
        }
    }
}
