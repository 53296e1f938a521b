package org.climbwright.turbulence;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import org.climbwright.atmosphere.Atmosphere;
import org.climbwright.quantity.OutsideModelException;
import org.climbwright.quantity.altitude.PressureAltitude;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

@DisplayName("A gust, its load and its words")
class GustTest {
    @ParameterizedTest(name = "{0} m")
    @ValueSource(doubles = {-0.1, 18288.1, Double.NaN})
    @DisplayName("are refused outside sea level to 60,000 ft")
    void altitudes(double metres) {
        assertThat(GustRule.covers(metres)).isFalse();
        assertThatExceptionOfType(OutsideModelException.class)
                .isThrownBy(() -> GustRule.referenceGustUpToCruiseSpeed(metres))
                .withMessageContaining("pressure altitude must be from 0.0 to 18288.0 m");
        assertThatExceptionOfType(OutsideModelException.class)
                .isThrownBy(() -> GustRule.limitTurbulenceIntensity(metres, 1.0));
    }

    @ParameterizedTest(name = "{0} m")
    @ValueSource(doubles = {9.143, 106.69, Double.NaN})
    @DisplayName("are refused for gradients that the rule does not look at")
    void gradients(double metres) {
        assertThat(GustRule.coversGradient(metres)).isFalse();
        assertThatExceptionOfType(OutsideModelException.class)
                .isThrownBy(() -> GustRule.designGust(17.0, 0.8, metres));
        assertThatExceptionOfType(OutsideModelException.class)
                .isThrownBy(() -> GustRule.gustAfter(1.0, metres, 17.0));
    }

    @Test
    @DisplayName("are refused beyond the maximum operating altitude and beyond the gust's end")
    void ends() {
        assertThatExceptionOfType(OutsideModelException.class)
                .isThrownBy(() -> GustRule.alleviation(10000.1, 10000.0, 0.8, 0.8))
                .withMessageContaining("must be from 0.0 to 10000.0 m");
        assertThatExceptionOfType(OutsideModelException.class)
                .isThrownBy(() -> GustRule.gustAfter(60.1, 30.0, 17.0))
                .withMessageContaining("distance into the gust must be from 0.0 to 60.0 m");
    }

    @Test
    @DisplayName("are refused for a lift slope per degree")
    void slopePerDegree() {
        assertThat(GustLoad.covers(5000.0, 4.0, 0.096)).isFalse();
        assertThatExceptionOfType(OutsideModelException.class)
                .isThrownBy(() -> GustLoad.ofSi(5000.0, 4.0, 0.096))
                .withMessageEndingWith("it is per radian; a slope per degree is some 0.1");
    }

    @Test
    @DisplayName("have no speed for a limit where there is no gust")
    void noGust() {
        GustLoad wing = GustLoad.ofSi(5000.0, 4.0, 5.5);
        assertThatExceptionOfType(OutsideModelException.class)
                .isThrownBy(
                        () ->
                                wing.speedForIncrement(
                                        GustVelocity.ofCallerInMetresPerSecond(0.0),
                                        1.0,
                                        Atmosphere.standard().at(PressureAltitude.ofFeet(0))));
    }

    @ParameterizedTest(name = "{0}")
    @ValueSource(doubles = {-0.001, 101.0, Double.NaN, Double.POSITIVE_INFINITY})
    @DisplayName("are refused when they are no gust")
    void noGustVelocity(double mps) {
        assertThatExceptionOfType(OutsideModelException.class)
                .isThrownBy(() -> GustVelocity.ofCallerInMetresPerSecond(mps));
        assertThatExceptionOfType(OutsideModelException.class)
                .isThrownBy(() -> EddyDissipationRate.ofSi(mps));
        assertThatExceptionOfType(OutsideModelException.class)
                .isThrownBy(() -> TurbulenceIntensity.ofAcceleration(mps));
    }

    @Test
    @DisplayName("are covered where they are answered")
    void covered() {
        assertThat(GustRule.coversAlleviation(0.0, 12000.0, 0.8, 0.7)).isTrue();
        assertThat(GustRule.coversAlleviation(12001.0, 12000.0, 0.8, 0.7)).isFalse();
        assertThat(GustRule.coversAlleviation(0.0, 12000.0, 1.1, 0.7)).isFalse();
        assertThat(GustRule.coversGust(17.0, 0.8, 50.0)).isTrue();
        assertThat(GustRule.coversGust(17.0, 1.1, 50.0)).isFalse();
        assertThat(GustLoad.coversIncrement(0.8, 15.0, 120.0, 5.5, 5000.0)).isTrue();
        assertThat(GustLoad.coversIncrement(0.9, 15.0, 120.0, 5.5, 5000.0)).isFalse();
        assertThat(GustLoad.hasSpeed(0.8, 15.0, 1.5, 5.5, 5000.0)).isTrue();
        assertThat(GustLoad.hasSpeed(0.8, 0.0, 1.5, 5.5, 5000.0)).isFalse();
        assertThat(GustLoad.hasSpeed(0.8, 15.0, -1.5, 5.5, 5000.0)).isFalse();
        assertThat(RoughAirSpeed.coversGustSpeed(60.0, 1.2)).isTrue();
        assertThat(RoughAirSpeed.coversGustSpeed(60.0, -0.1)).isFalse();
        assertThat(RoughAirSpeed.coversCruiseSpeed(250.0, 56.0)).isTrue();
        assertThat(RoughAirSpeed.coversCruiseSpeed(250.0, Double.NaN)).isFalse();
        assertThat(TurbulenceIntensity.coversAcceleration(-0.1)).isFalse();
        assertThat(TurbulenceIntensity.coversShear(5.5)).isTrue();
        assertThat(EddyDissipationRate.covers(5.1)).isFalse();
        assertThat(TurbulenceReport.Frequency.covers(1.1)).isFalse();
    }

    @Test
    @DisplayName("tell whose they are")
    void tellWhoseTheyAre() {
        assertThat(GustVelocity.ofCallerInMetresPerSecond(10.0).basis()).isEqualTo("the caller's");
        assertThat(
                        GustVelocity.reference(
                                PressureAltitude.ofFeet(0.0),
                                GustVelocity.DesignSpeed.AT_DIVE_SPEED))
                .hasToString(
                        "gust of 8.53 m/s equivalent airspeed (reference gust of 14 CFR"
                                + " 25.341(a)(5), at VD)");
    }
}
