package org.climbwright.path;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.climbwright.quantity.path.AirGradient;
import org.climbwright.quantity.path.GroundGradient;
import org.climbwright.quantity.speed.AlongTrackWind;
import org.climbwright.quantity.speed.GeometricRate;
import org.climbwright.quantity.speed.TrueAirspeed;
import org.climbwright.testing.Table;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

@DisplayName("Motion over the ground")
class GroundTrackTest {
    private static final String TABLE = "/path/wind-and-gradient.csv";

    @ParameterizedTest(name = "{0}, {1}, {2} make {4} over the ground")
    @CsvFileSource(resources = TABLE, useHeadersInDisplayName = true)
    @DisplayName("has the gradients of the table")
    void gradients(
            double tasKnots,
            double headwindKnots,
            double feetPerMinute,
            double airPercent,
            double groundPercent,
            double groundFeetPerMile,
            String source) {
        double rate = GeometricRate.ofFeetPerMinute(feetPerMinute).inMetresPerSecond();
        double tas = TrueAirspeed.ofKnots(tasKnots).inMetresPerSecond();
        double horizontal = GroundTrack.horizontalAirspeed(tas, rate);
        double wind = AlongTrackWind.ofKnots(-headwindKnots).inMetresPerSecond();
        GroundGradient ground =
                GroundGradient.ofMetresPerMetre(
                        rate / GroundTrack.groundSpeed(horizontal, wind, 0.0));
        // 1e-8 relative: the digits that the table gives
        assertThat(AirGradient.ofMetresPerMetre(GroundTrack.airGradient(tas, rate)).inPercent())
                .isCloseTo(airPercent, within(1e-8 * airPercent));
        assertThat(ground.inPercent()).isCloseTo(groundPercent, within(1e-8 * groundPercent));
        assertThat(ground.inFeetPerNauticalMile())
                .isCloseTo(groundFeetPerMile, within(1e-8 * groundFeetPerMile));
        assertThat(source).isNotBlank();
    }

    @Test
    @DisplayName("is checked with every row of the table")
    void rows() {
        assertThat(Table.rows(TABLE)).hasSize(ROWS);
    }

    private static final int ROWS = 14;

    @Test
    @DisplayName("has no gradient straight up, nor faster upwards than through the air")
    void straightUp() {
        assertThat(GroundTrack.horizontalAirspeed(100.0, 100.0)).isZero();
        for (double rate : new double[] {100.0, -100.0, 100.5, Double.NaN}) {
            assertThatThrownBy(() -> GroundTrack.airGradient(100.0, rate))
                    .isInstanceOf(IllegalArgumentException.class)
                    .hasMessage(
                            "a gradient needs a rate of climb that is less than the true airspeed"
                                    + " of 100.0 m/s, but it was "
                                    + rate
                                    + " m/s");
        }
        assertThat(GroundTrack.airGradient(5.0, 3.0)).isEqualTo(0.75);
        assertThat(GroundTrack.airGradient(5.0, -3.0)).isEqualTo(-0.75);
    }

    @Test
    @DisplayName("loses to a wind from the side: 5 along and 3 across leave 4 of 5")
    void windFromTheSide() {
        assertThat(GroundTrack.groundSpeed(5.0, 0.0, 3.0)).isEqualTo(4.0);
        assertThat(GroundTrack.groundSpeed(5.0, 0.0, -3.0)).isEqualTo(4.0);
        assertThat(GroundTrack.groundSpeed(5.0, 1.0, 3.0)).isEqualTo(5.0);
    }

    @Test
    @DisplayName("cannot keep a track across a wind faster than the aeroplane, or against one")
    void impossibleTracks() {
        assertThatThrownBy(() -> GroundTrack.groundSpeed(5.0, 0.0, 6.0))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage(
                        "the track cannot be kept: an airspeed of 5.0 m/s in a wind of 0.0 m/s"
                                + " along and 6.0 m/s across it");
        assertThatThrownBy(() -> GroundTrack.groundSpeed(5.0, -5.0, 0.0))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> GroundTrack.groundSpeed(5.0, Double.NaN, 0.0))
                .isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    @DisplayName("refuses a rate of climb faster than the aeroplane")
    void steeperThanVertical() {
        assertThatThrownBy(() -> GroundTrack.horizontalAirspeed(100.0, 101.0))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage(
                        "a rate of climb must be no more than the true airspeed of 100.0 m/s, but"
                                + " was 101.0 m/s");
    }
}
