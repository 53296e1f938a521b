package org.climbwright.atmosphere;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.assertThatIllegalStateException;
import static org.assertj.core.api.Assertions.within;

import org.climbwright.quantity.ModelRange;
import org.climbwright.quantity.OutsideModelException;
import org.climbwright.quantity.altitude.GeopotentialAltitude;
import org.climbwright.quantity.altitude.PressureAltitude;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("An atmosphere of one's own")
class OwnAtmosphereTest {
    /** Four answers, each a line: air of 250 K, altitudes by the formula of an isothermal layer. */
    record Isothermal(double vapourPa, double lowestM) implements Atmosphere {
        @Override
        public ModelRange range() {
            return new ModelRange("static pressure", 1e4, 1e5, "Pa", "my forecast ends there");
        }

        @Override
        public double temperature(double pressurePa) {
            return 250.0;
        }

        @Override
        public double vapourPressure(double pressurePa) {
            return vapourPa;
        }

        @Override
        public double geopotentialAltitude(double pressurePa) {
            return lowestM - 287.05287 * 250.0 / 9.80665 * Math.log(pressurePa / 1e5);
        }
    }

    private static final Atmosphere AIR = new Isothermal(20.0, 100.0);

    @Test
    @DisplayName("of a few lines answers every question that the library asks of one")
    void answers() {
        AirState air = AIR.at(PressureAltitude.ofFlightLevel(200));

        assertThat(air.pressureAltitude().inFlightLevels()).isCloseTo(200.0, within(1e-9));
        assertThat(air.temperatureK()).isEqualTo(250.0);
        assertThat(air.isHumidityKnown()).isTrue();
        assertThat(air.dewPoint()).isPresent();
        assertThat(air.geopotentialAltitude()).isPresent();
        // the table of standard air: 248.526 K at 20,000 ft
        assertThat(air.isaDeviation().inKelvins()).isCloseTo(250.0 - 248.526, within(1e-9));
        assertThat(AIR.bendsPa()).isEmpty();
        assertThat(AIR.covers(1e4)).isTrue();
        assertThat(AIR.covers(9999.9)).isFalse();
    }

    @Test
    @DisplayName("is found by altitude, by a search that the library brings")
    void byAltitude() {
        AirState air = AIR.at(GeopotentialAltitude.ofMetres(5000));

        // the formula solved for the pressure
        double exact = 1e5 * Math.exp((100.0 - 5000.0) * 9.80665 / (287.05287 * 250.0));
        assertThat(air.pressurePa()).isCloseTo(exact, within(1e-13 * exact));
        assertThat(AIR.pressureFromGeopotentialAltitude(100.0)).isEqualTo(1e5);
    }

    @Test
    @DisplayName("may not know its humidity and altitudes, and then nothing is made up")
    void unknown() {
        Atmosphere air = new Isothermal(Double.NaN, Double.NaN);

        AirState state = air.at(PressureAltitude.ofFlightLevel(200));

        assertThat(state.isHumidityKnown()).isFalse();
        assertThat(state.dewPoint()).isEmpty();
        assertThat(state.relativeHumidity()).isEmpty();
        assertThat(state.geopotentialAltitude()).isEmpty();
        assertThat(state.geometricAltitude()).isEmpty();
        assertThatIllegalStateException()
                .isThrownBy(() -> air.at(GeopotentialAltitude.ofMetres(5000)))
                .withMessage("the altitudes of this air are not known");
    }

    @Test
    @DisplayName("is refused outside its own range, in its own words, in metres and in feet")
    void outside() {
        assertThatExceptionOfType(OutsideModelException.class)
                .isThrownBy(() -> AIR.at(PressureAltitude.ofFlightLevel(600)))
                .withMessageStartingWith("pressure altitude must be from 110.88")
                .withMessageContaining(
                        " m, but was 18288.0 m: my forecast ends there (in feet from")
                .withMessageEndingWith(" (in feet from 363.8 to 53083.1, but was 60000.0)");
        assertThatExceptionOfType(OutsideModelException.class)
                .isThrownBy(() -> AIR.at(GeopotentialAltitude.ofMetres(20000)))
                .withMessageStartingWith("geopotential altitude must be from ")
                .withMessageContaining(" m, but was 20000.0 m: my forecast ends there (in feet ")
                .satisfies(
                        refused -> {
                            assertThat(refused.term()).isEqualTo("geopotential altitude");
                            assertThat(refused.unit()).isEqualTo("m");
                            assertThat(refused.value()).isEqualTo(20000.0);
                            assertThat(refused.highest())
                                    .isEqualTo(AIR.geopotentialAltitude(AIR.range().lowest()));
                        });
    }
}
