package org.climbwright.gradient;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.climbwright.atmosphere.AirState;
import org.climbwright.atmosphere.StandardAir;
import org.climbwright.quantity.OutsideModelException;
import org.climbwright.quantity.path.GroundDistance;
import org.climbwright.quantity.path.GroundGradient;
import org.climbwright.quantity.speed.GeometricRate;
import org.climbwright.quantity.speed.GroundSpeed;
import org.climbwright.quantity.speed.PressureAltitudeRate;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("A gradient")
class ClimbGradientTest {
    @Test
    @DisplayName("takes the same rate on the instrument by plain numbers as by the air there")
    void instrumentRate() {
        AirState cold =
                AirState.ofSi(
                        StandardAir.pressureFromAltitude(1500.0), 250.0, Double.NaN, Double.NaN);
        GroundGradient gradient = GroundGradient.ofPercent(3.3);
        GroundSpeed speed = GroundSpeed.ofKnots(150);
        double rate = ClimbGradient.rate(gradient, speed).inMetresPerSecond();
        PressureAltitudeRate shown = ClimbGradient.instrumentRate(gradient, speed, cold);
        assertThat(shown.inMetresPerSecond())
                .isCloseTo(ClimbGradient.instrumentRate(rate, 1500.0, 250.0), within(1e-13))
                .isGreaterThan(rate);
    }

    @Test
    @DisplayName("never gains a height of the other sign, nor any when level")
    void neverGains() {
        for (double gradient : new double[] {-0.033, 0.0, 1e-9, Double.NaN}) {
            assertThat(ClimbGradient.coversDistanceFor(1000.0, gradient)).isFalse();
            assertThatThrownBy(() -> ClimbGradient.distanceFor(1000.0, gradient))
                    .isInstanceOf(OutsideModelException.class);
        }
        assertThatThrownBy(() -> ClimbGradient.distanceFor(1000.0, -0.5))
                .hasMessage(
                        "distance in which the gradient gains the height must be from 0.0 to 2.0E7"
                                + " m, but was -2000.0 m: a gradient gains height of its own sign,"
                                + " and only as long as the earth is");
        assertThat(ClimbGradient.distanceFor(-1000.0, -0.5)).isEqualTo(2000.0);
        assertThat(ClimbGradient.coversDistanceFor(-1000.0, -0.5)).isTrue();
    }

    @Test
    @DisplayName("is told to be out of range where it is refused, and only there")
    void ranges() {
        double nan = Double.NaN;
        assertThat(ClimbGradient.coversRequired(1.0, 0.0)).isFalse();
        assertThat(ClimbGradient.coversRequired(1.0, 0.001)).isTrue();
        assertThat(ClimbGradient.coversRate(0.1, nan)).isFalse();
        assertThat(ClimbGradient.coversRate(10.0, 2000.0)).isTrue();
        assertThat(ClimbGradient.coversGradient(2000.1, 100.0)).isFalse();
        assertThat(ClimbGradient.coversHeightGained(10.1, 100.0)).isFalse();
        assertThat(ClimbGradient.coversRequiredRate(100.0, 9.0, 100.0)).isFalse();
        assertThat(ClimbGradient.coversRequiredRate(100.0, 10.0, 100.0)).isTrue();
        assertThat(ClimbGradient.coversInstrumentRate(1.0, 81000.0, 250.0)).isFalse();
        assertThat(ClimbGradient.coversInstrumentRate(1.0, 1000.0, 99.0)).isFalse();
        assertThat(ClimbGradient.coversInstrumentRate(1.0, 1000.0, 250.0)).isTrue();
        assertThat(EarthCurvature.covers(1.1, 1.0, 6.4e6)).isFalse();
        assertThat(EarthCurvature.covers(1.0, 2e6, 6.4e6)).isTrue();
        assertThat(ClimbAngles.coversAngle(ClimbAngles.angle(10.0))).isTrue();
        assertThat(ClimbAngles.coversSine(1.0)).isFalse();
        assertThat(ClimbAngles.coversGradient(nan)).isFalse();
        assertThat(ClimbAngles.coversAlongPath(-1.0, 0.0)).isFalse();
        assertThat(ClimbAngles.coversRateAlongPath(1.0, 1.5)).isFalse();
        assertThat(RoundedUp.covers(1.0, 0.0)).isFalse();
        assertThatThrownBy(() -> ClimbGradient.rate(nan, 100.0))
                .isInstanceOf(OutsideModelException.class);
        assertThatThrownBy(() -> ClimbAngles.gradient(1.6))
                .isInstanceOf(OutsideModelException.class);
        assertThatThrownBy(() -> RoundedUp.of(1.0, 0.0)).isInstanceOf(OutsideModelException.class);
        assertThatThrownBy(() -> EarthCurvature.tangentHeight(1.0, 6.2e6))
                .isInstanceOf(OutsideModelException.class);
    }

    @Test
    @DisplayName("stays at whole steps where only rounding noise exceeds them")
    void noise() {
        assertThat(RoundedUp.of(500.00000000000006, 10.0)).isEqualTo(500.0);
        assertThat(RoundedUp.of(500.0, 10.0)).isEqualTo(500.0);
        assertThat(RoundedUp.of(499.99999999999994, 10.0)).isEqualTo(500.0);
        assertThat(RoundedUp.of(500.000001, 10.0)).isEqualTo(510.0);
        assertThat(RoundedUp.of(0.0, 10.0)).isEqualTo(0.0);
        assertThat(RoundedUp.of(-5.0, 10.0)).isEqualTo(0.0);
        PressureAltitudeRate rate = PressureAltitudeRate.ofFeetPerMinute(655.98);
        assertThat(RoundedUp.of(rate, PressureAltitudeRate.ofFeetPerMinute(50)).inFeetPerMinute())
                .isEqualTo(700.0);
        assertThat(
                        RoundedUp.of(
                                        GeometricRate.ofFeetPerMinute(465),
                                        GeometricRate.ofFeetPerMinute(10))
                                .inFeetPerMinute())
                .isEqualTo(470.0);
    }

    @Test
    @DisplayName("is as long along the path as the triangle of 3, 4 and 5")
    void alongPath() {
        assertThat(
                        ClimbAngles.metresAlongPath(
                                GroundDistance.ofMetres(4), GroundGradient.ofMetresPerMetre(0.75)))
                .isEqualTo(5.0);
        assertThat(ClimbAngles.sine(0.75)).isEqualTo(0.6);
    }
}
