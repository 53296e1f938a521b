package org.climbwright.atmosphere;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import org.apache.commons.math3.analysis.integration.IterativeLegendreGaussIntegrator;
import org.climbwright.quantity.ModelRange;
import org.climbwright.quantity.OutsideModelException;
import org.climbwright.quantity.altitude.GeopotentialAltitude;
import org.climbwright.quantity.altitude.PressureAltitude;
import org.climbwright.quantity.pressure.AltimeterSetting;
import org.climbwright.quantity.pressure.StaticPressure;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

@DisplayName("Weather of one's own, from a temperature at each pressure")
class OwnWeatherTest {
    private static final AltitudeDatum STANDARD_DATUM =
            AltitudeDatum.onQnh(AltimeterSetting.ofHectopascals(1013.25));

    /** A smooth temperature, some 303 K at 1000 hPa and 241 K at 100 hPa. */
    private static double smoothTemperature(double pressurePa) {
        return 300.0 + 25.0 * Math.log(pressurePa / 1e5) - 3.0 * Math.sin(pressurePa / 2e4);
    }

    private static final Atmosphere SMOOTH_DAY =
            Atmosphere.of(
                    new TemperatureProfile() {
                        @Override
                        public double temperature(double pressurePa) {
                            return smoothTemperature(pressurePa);
                        }

                        @Override
                        public ModelRange range() {
                            return new ModelRange(
                                    "static pressure", 10000.0, 105000.0, "Pa", "no data beyond");
                        }
                    },
                    new AltitudeDatum(
                            StaticPressure.ofPascals(100000.0),
                            GeopotentialAltitude.ofMetres(111.0)));

    @Test
    @DisplayName("answers as the example in its documentation says")
    void example() {
        Atmosphere warmDay =
                Atmosphere.of(
                        pressurePa -> StandardAir.temperatureFromPressure(pressurePa) + 15.0,
                        AltitudeDatum.onQnh(AltimeterSetting.ofHectopascals(1020.0)));

        assertThat(warmDay.at(PressureAltitude.ofFeet(30000)).isaDeviation()).hasToString("15.0 K");
    }

    @Test
    @DisplayName("has the altitudes of standard air when its temperature is the standard one")
    void standardTemperatureGivesStandardAltitudes() {
        Atmosphere air = Atmosphere.of(StandardAir::temperatureFromPressure, STANDARD_DATUM);

        for (int metres = -5000; metres <= 80000; metres += 125) {
            double p = StandardAir.pressureFromAltitude(metres);
            // what Atmosphere.of states: to 1e-6 m below the first bend, above it to 0.01 m
            double tolerance = metres < 10900 ? 1e-6 : 0.01;
            assertThat(air.geopotentialAltitude(p)).isCloseTo(metres, within(tolerance));
        }
    }

    @ParameterizedTest(name = "at {0} Pa")
    @ValueSource(doubles = {10000, 20000, 31234.5, 50000, 70000, 99999, 101325, 105000})
    @DisplayName("has the altitudes that another integrator finds")
    void agreesWithAnotherIntegrator(double pressurePa) {
        double low = Math.log(Math.min(pressurePa, 100000.0));
        double high = Math.log(Math.max(pressurePa, 100000.0));
        double integral =
                new IterativeLegendreGaussIntegrator(16, 1e-12, 1e-9)
                        .integrate(1_000_000, x -> smoothTemperature(Math.exp(x)), low, high);
        double thickness = 287.05287 / 9.80665 * integral;
        double exact = 111.0 + (pressurePa < 100000.0 ? thickness : -thickness);

        // 1e-6 m is what Atmosphere.of states for a smooth temperature
        assertThat(SMOOTH_DAY.geopotentialAltitude(pressurePa)).isCloseTo(exact, within(1e-6));
    }

    @Test
    @DisplayName("has the known altitude at the known pressure")
    void datum() {
        assertThat(SMOOTH_DAY.geopotentialAltitude(100000.0)).isCloseTo(111.0, within(1e-9));
    }

    @Test
    @DisplayName("finds the pressure of an altitude")
    void pressureFromAltitude() {
        for (int metres = -200; metres < 16000; metres += 200) {
            double p = SMOOTH_DAY.pressureFromGeopotentialAltitude(metres);
            // 1e-9 m is what the inverse states
            assertThat(SMOOTH_DAY.geopotentialAltitude(p)).isCloseTo(metres, within(1e-9));
        }
        AirState air = SMOOTH_DAY.at(GeopotentialAltitude.ofMetres(5000));
        assertThat(air.geopotentialAltitude().orElseThrow().inMetres())
                .isCloseTo(5000.0, within(1e-9));
        assertThat(air.temperatureK()).isEqualTo(SMOOTH_DAY.temperature(air.pressurePa()));
    }

    @Test
    @DisplayName(
            "tells no humidity unless its profile does, and covers the pressures of its profile,"
                    + " ends included")
    void range() {
        assertThat(SMOOTH_DAY.vapourPressure(50000.0)).isNaN();
        assertThat(SMOOTH_DAY.bendsPa()).isEmpty();
        assertThat(SMOOTH_DAY.covers(10000.0)).isTrue();
        assertThat(SMOOTH_DAY.covers(105000.0)).isTrue();
        assertThat(SMOOTH_DAY.covers(Math.nextDown(10000.0))).isFalse();
        assertThat(SMOOTH_DAY.covers(Math.nextUp(105000.0))).isFalse();
        assertThat(SMOOTH_DAY.geopotentialAltitude(10000.0)).isGreaterThan(15000.0);
        assertThat(SMOOTH_DAY.geopotentialAltitude(105000.0)).isLessThan(111.0);
        assertThat(SMOOTH_DAY.range().lowest()).isEqualTo(10000.0);
    }

    @Test
    @DisplayName("has the altitudes of moist air where its profile tells the vapour")
    void moistProfile() {
        Atmosphere humid =
                Atmosphere.of(
                        new TemperatureProfile() {
                            @Override
                            public double temperature(double pressurePa) {
                                return smoothTemperature(pressurePa);
                            }

                            @Override
                            public double vapourPressure(double pressurePa) {
                                return 0.02 * pressurePa;
                            }

                            @Override
                            public ModelRange range() {
                                return SMOOTH_DAY.range();
                            }
                        },
                        new AltitudeDatum(
                                StaticPressure.ofPascals(100000.0),
                                GeopotentialAltitude.ofMetres(111.0)));
        // the vapour is the same share of the pressure everywhere, and so is what it adds
        double share = 1.0 / (1.0 - (1.0 - 287.05287 / 461.523) * 0.02);
        for (double pressurePa : new double[] {20000, 50000, 90000}) {
            double dry = SMOOTH_DAY.geopotentialAltitude(pressurePa) - 111.0;
            assertThat(humid.geopotentialAltitude(pressurePa) - 111.0)
                    .isCloseTo(share * dry, within(1e-6));
        }
    }

    @Nested
    @DisplayName("refuses")
    class Refuses {
        @ParameterizedTest
        @ValueSource(doubles = {Double.NaN, 9999.0, 105001.0})
        @DisplayName("a pressure outside, in one sentence")
        void aPressure(double pressurePa) {
            assertThatExceptionOfType(OutsideModelException.class)
                    .isThrownBy(() -> SMOOTH_DAY.temperature(pressurePa))
                    .withMessage(
                            "static pressure must be from 10000.0 to 105000.0 Pa, but was "
                                    + pressurePa
                                    + " Pa: no data beyond");
            assertThatExceptionOfType(OutsideModelException.class)
                    .isThrownBy(() -> SMOOTH_DAY.geopotentialAltitude(pressurePa));
            assertThatExceptionOfType(OutsideModelException.class)
                    .isThrownBy(() -> SMOOTH_DAY.vapourPressure(pressurePa));
        }

        @ParameterizedTest
        @ValueSource(doubles = {Double.NaN, -1000.0, 20000.0})
        @DisplayName("an altitude outside, in one sentence")
        void anAltitude(double altitudeM) {
            assertThatExceptionOfType(OutsideModelException.class)
                    .isThrownBy(() -> SMOOTH_DAY.pressureFromGeopotentialAltitude(altitudeM))
                    .withMessageStartingWith("geopotential altitude must be from -")
                    .withMessageContaining(
                            ", but was " + altitudeM + " m: no data beyond (in feet from -1057.2")
                    .withMessageContaining(" to 60033.3, but was ");
        }

        @Test
        @DisplayName("a temperature that no air has, with the pressure where it stands")
        void temperature() {
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> Atmosphere.of(pressurePa -> 15.0, STANDARD_DATUM))
                    .withMessageMatching(
                            "a temperature profile must give 100\\.0 to 400\\.0 K, but gave 15\\.0"
                                    + " K at [0-9.]+ Pa");
        }

        @Test
        @DisplayName("a known altitude at a pressure that the profile does not have")
        void datum() {
            AltitudeDatum outside =
                    new AltitudeDatum(
                            StaticPressure.ofPascals(0.5), GeopotentialAltitude.ofMetres(0));
            assertThatExceptionOfType(OutsideModelException.class)
                    .isThrownBy(() -> Atmosphere.of(StandardAir::temperatureFromPressure, outside));
        }
    }
}
