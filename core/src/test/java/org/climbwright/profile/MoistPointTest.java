package org.climbwright.profile;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.climbwright.atmosphere.AltitudeDatum;
import org.climbwright.atmosphere.Atmosphere;
import org.climbwright.atmosphere.MoistAir;
import org.climbwright.atmosphere.StandardAir;
import org.climbwright.atmosphere.TemperatureProfile;
import org.climbwright.atmosphere.wind.Winds;
import org.climbwright.path.Side;
import org.climbwright.performance.ClimbPoint;
import org.climbwright.quantity.ModelRange;
import org.climbwright.quantity.altitude.PressureAltitude;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("The forces at a level of a climb through saturated air, 15 K above standard")
class MoistPointTest {
    private static final ClimbProfile CLIMB =
            ProfileScene.climb(
                            58000,
                            ProfileScene.programme(),
                            ProfileScene.air(
                                    Atmosphere.of(new Saturated(), AltitudeDatum.standard()),
                                    Winds.calm()))
                    .between(ProfileScene.BOTTOM, ProfileScene.LEVEL);

    private record Saturated() implements TemperatureProfile {
        @Override
        public ModelRange range() {
            return new ModelRange("static pressure", 10000.0, 104000.0, "Pa", "it ends there");
        }

        @Override
        public double temperature(double pressurePa) {
            return StandardAir.temperatureFromPressure(pressurePa) + 15.0;
        }

        @Override
        public double vapourPressure(double pressurePa) {
            return MoistAir.saturationVapourPressure(temperature(pressurePa));
        }

        @Override
        public double[] bendsPa() {
            return new double[] {Atmosphere.standard().bendsPa()[0]};
        }
    }

    @Test
    @DisplayName("give the rate at which the climb is flown")
    void sameRate() {
        int asked = 0;
        for (double feet = 1500.0; feet <= 33000.0; feet += 500.0) {
            PressureAltitude level = PressureAltitude.ofFeet(feet);
            ClimbPoint point = CLIMB.pointAt(level, Side.ABOVE).orElse(null);
            if (point == null) {
                continue; // the speed is being changed
            }
            asked++;
            assertThat(point.pressureAltitudeRate().inMetresPerSecond())
                    .isCloseTo(
                            CLIMB.at(level, Side.ABOVE).pressureAltitudeRate().inMetresPerSecond(),
                            within(1e-9));
        }
        assertThat(asked).isGreaterThan(40);
    }

    @Test
    @DisplayName("have a drag that goes by the density of the moist air")
    void moistDensity() {
        PressureAltitude level = PressureAltitude.ofFeet(3000);
        ClimbPoint point = CLIMB.pointAt(level, Side.ABOVE).orElseThrow();
        double pressure = StandardAir.pressureFromAltitude(level.inMetres());
        double temperature = StandardAir.temperatureFromPressure(pressure) + 15.0;
        double virtual =
                MoistAir.virtualTemperature(
                        temperature, MoistAir.saturationVapourPressure(temperature), pressure);
        double tas = point.trueAirspeed().inMetresPerSecond();
        double q = 0.5 * pressure / (287.05287 * virtual) * tas * tas;
        // the polar of the scene, below its rise
        double byHand = q * 120.0 * 0.021 + 0.045 * point.liftN() * point.liftN() / (q * 120.0);
        assertThat(point.dragN()).isCloseTo(byHand, within(1e-7 * byHand));
    }
}
