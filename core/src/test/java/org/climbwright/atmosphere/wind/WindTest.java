package org.climbwright.atmosphere.wind;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import org.climbwright.quantity.OutsideModelException;
import org.climbwright.quantity.altitude.PressureAltitude;
import org.climbwright.quantity.path.TrueDirection;
import org.climbwright.quantity.speed.AlongTrackWind;
import org.climbwright.quantity.speed.WindSpeed;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

@DisplayName("A wind")
class WindTest {
    private static final double KNOT = 1852.0 / 3600.0;

    @Test
    @DisplayName("answers as the example in its documentation says")
    void example() {
        double tailwind =
                Wind.from(TrueDirection.ofDegrees(270), WindSpeed.ofKnots(40))
                        .alongTrack(TrueDirection.ofDegrees(90))
                        .inKnots();

        assertThat(tailwind).isEqualTo(40.0);
    }

    @ParameterizedTest(name = "from {0}° goes east at {1}, north at {2} times its speed")
    @CsvSource({
        "  0,  0, -1",
        " 90, -1,  0",
        "180,  0,  1",
        "270,  1,  0",
        "360,  0, -1",
        " 45, -0.7071067811865476, -0.7071067811865476",
        "210,  0.5,  0.8660254037844386",
    })
    @DisplayName("is told by where it comes from and goes the other way")
    void goesTheOtherWay(double degrees, double east, double north) {
        Wind wind = Wind.from(TrueDirection.ofDegrees(degrees), WindSpeed.ofMetresPerSecond(10));

        // sine and cosine of a right angle in radians are 2e-16 from 0
        assertThat(wind.eastwardMps()).isCloseTo(10 * east, within(4e-15));
        assertThat(wind.northwardMps()).isCloseTo(10 * north, within(4e-15));
    }

    @ParameterizedTest(name = "on track {0}°: {1} along, {2} to the right")
    @CsvSource({
        "270, -40,   0",
        " 90,  40,   0",
        "  0,   0,  40",
        "180,   0, -40",
        "300, -34.64101615137755,  20",
        "240, -34.64101615137755, -20",
    })
    @DisplayName("from the west at 40 knots is a headwind, tailwind or crosswind by the track")
    void alongAndAcross(double track, double along, double across) {
        Wind wind = Wind.from(TrueDirection.ofDegrees(270), WindSpeed.ofKnots(40));
        TrueDirection direction = TrueDirection.ofDegrees(track);
        double rad = direction.inRadians();

        assertThat(wind.alongTrack(direction).inKnots()).isCloseTo(along, within(1e-13));
        double right = Wind.acrossTrack(wind.eastwardMps(), wind.northwardMps(), rad);
        assertThat(right / KNOT).isCloseTo(across, within(1e-13));
        assertThat(Wind.alongTrack(wind.eastwardMps(), wind.northwardMps(), rad) + 0.0)
                .isEqualTo(wind.alongTrack(direction).inMetresPerSecond());
    }

    @Test
    @DisplayName("that is calm has no direction: 0 is told")
    void calm() {
        Wind calm = Wind.ofComponents(0.0, -0.0);

        assertThat(calm.speed().inKnots()).isZero();
        assertThat(calm.direction().inDegrees()).isZero();
        assertThat(calm).isEqualTo(Wind.ofComponents(-0.0, 0.0));
    }

    @Test
    @DisplayName("almost from the north, a little to either side, has a direction that can be")
    void justBesideNorth() {
        // the angle is smaller than half an ulp of a full turn
        assertThat(Wind.ofComponents(1e-300, -10.0).direction().inDegrees()).isBetween(0.0, 360.0);
        assertThat(Wind.ofComponents(-1e-300, -10.0).direction().inDegrees()).isBetween(0.0, 360.0);
    }

    @Test
    @DisplayName("equals a wind of the same components")
    void equality() {
        Wind wind = Wind.ofComponents(3.0, 4.0);
        assertThat(wind)
                .isEqualTo(Wind.ofComponents(3.0, 4.0))
                .hasSameHashCodeAs(Wind.ofComponents(3.0, 4.0))
                .isNotEqualTo(Wind.ofComponents(4.0, 3.0))
                .isNotEqualTo(Wind.ofComponents(3.0, 5.0))
                .isNotEqualTo(null)
                .isNotEqualTo("wind");
        assertThat(wind.hashCode()).isNotEqualTo(Wind.ofComponents(4.0, 3.0).hashCode());
    }

    @Test
    @DisplayName("reads as direction and speed")
    void text() {
        assertThat(Wind.from(TrueDirection.ofDegrees(90), WindSpeed.ofKnots(10)))
                .hasToString("wind from 90° true at 10.0 kn");
        assertThat(Wind.ofComponents(0.0, 0.0)).hasToString("calm");
    }

    @ParameterizedTest
    @ValueSource(doubles = {Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY})
    @DisplayName("is refused when a component is not finite")
    void refused(double component) {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Wind.ofComponents(component, 1.0))
                .withMessage(
                        "wind components must be finite, but were " + component + " and 1.0 m/s");
        assertThatIllegalArgumentException().isThrownBy(() -> Wind.ofComponents(1.0, component));
    }

    @Test
    @DisplayName("that is the same everywhere is known at every pressure")
    void uniform() {
        Wind wind = Wind.ofComponents(3.0, 4.0);
        Winds winds = Winds.uniform(wind);

        assertThat(winds.covers(101325.0)).isTrue();
        assertThat(winds.eastward(20000.0)).isEqualTo(3.0);
        assertThat(winds.northward(20000.0)).isEqualTo(4.0);
        assertThat(winds.bendsPa()).isEmpty();
        assertThat(winds.at(PressureAltitude.ofFlightLevel(390))).contains(wind);
        assertThat(Winds.calm().at(PressureAltitude.ofFeet(0)))
                .contains(Wind.ofComponents(0.0, 0.0));
        assertThatExceptionOfType(OutsideModelException.class)
                .isThrownBy(() -> winds.at(PressureAltitude.ofMetres(90000)));
    }

    /** Winds that know the lower half of the air alone. */
    private static final class LowWinds implements Winds {
        @Override
        public double eastward(double pressurePa) {
            return covers(pressurePa) ? 5.0 : Double.NaN;
        }

        @Override
        public double northward(double pressurePa) {
            return covers(pressurePa) ? 0.0 : Double.NaN;
        }

        @Override
        public boolean covers(double pressurePa) {
            return pressurePa >= 50000.0;
        }
    }

    @Test
    @DisplayName("has a part along a track at each altitude at which it is known")
    void alongTrackAtAltitude() {
        Winds winds = new LowWinds();
        TrueDirection east = TrueDirection.ofDegrees(90.0);
        TrueDirection west = TrueDirection.ofDegrees(270.0);
        PressureAltitude low = PressureAltitude.ofFlightLevel(100);
        assertThat(winds.alongTrack(low, east)).contains(AlongTrackWind.ofMetresPerSecond(5.0));
        assertThat(winds.alongTrack(low, west)).contains(AlongTrackWind.ofMetresPerSecond(-5.0));
        assertThat(winds.alongTrack(PressureAltitude.ofFlightLevel(300), east)).isEmpty();
    }

    @Test
    @DisplayName("may be unknown at some levels, and is then not made up")
    void unknown() {
        Winds winds = new LowWinds();
        assertThat(winds.at(PressureAltitude.ofFlightLevel(100)))
                .contains(Wind.ofComponents(5.0, 0.0));
        assertThat(winds.at(PressureAltitude.ofFlightLevel(300))).isEmpty();
        assertThat(winds.bendsPa()).isEmpty();
    }
}
