package org.climbwright.atmosphere;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.within;

import org.climbwright.quantity.OutsideModelException;
import org.climbwright.quantity.altitude.GeometricAltitude;
import org.climbwright.quantity.altitude.GeopotentialAltitude;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("The standard atmosphere as a plug")
class StandardAtmosphereTest {
    private static final Atmosphere STANDARD = Atmosphere.standard();

    @Test
    @DisplayName("is dry")
    void dry() {
        assertThat(STANDARD.vapourPressure(50000.0)).isZero();
        assertThatExceptionOfType(OutsideModelException.class)
                .isThrownBy(() -> STANDARD.vapourPressure(0.1));
    }

    @Test
    @DisplayName("bends at the six bounds between its layers")
    void bendsPa() {
        double[] bounds = {11000, 20000, 32000, 47000, 51000, 71000};
        double[] bends = STANDARD.bendsPa();
        assertThat(bends).hasSize(6);
        for (int i = 0; i < 6; i++) {
            assertThat(bends[i]).isEqualTo(StandardAir.pressureFromAltitude(bounds[i]));
        }
        bends[0] = 0.0;
        assertThat(STANDARD.bendsPa()[0]).isPositive(); // nobody changes it from outside
    }

    @Test
    @DisplayName("finds the pressure of an altitude as its formula has it, ends included")
    void pressureFromAltitude() {
        for (int metres = -5000; metres <= 80000; metres += 250) {
            double p = STANDARD.pressureFromGeopotentialAltitude(metres);
            assertThat(p).isEqualTo(StandardAir.pressureFromAltitude(metres));
            assertThat(STANDARD.geopotentialAltitude(p)).isCloseTo(metres, within(1e-9));
        }
        assertThatExceptionOfType(OutsideModelException.class)
                .isThrownBy(() -> STANDARD.pressureFromGeopotentialAltitude(90000.0));
    }

    @Test
    @DisplayName("is found by geopotential and by geometric altitude")
    void byAltitude() {
        AirState air = STANDARD.at(GeopotentialAltitude.ofMetres(11000));
        assertThat(air.temperatureK()).isCloseTo(216.65, within(1e-10));
        // the table of layers: 11019.067832 m
        assertThat(air.geometricAltitude().orElseThrow().inMetres())
                .isCloseTo(11019.067832, within(1e-6));
        AirState same = STANDARD.at(GeometricAltitude.ofMetres(11019.067832));
        assertThat(same.pressureAltitude().inMetres()).isCloseTo(11000.0, within(1e-6));
    }
}
