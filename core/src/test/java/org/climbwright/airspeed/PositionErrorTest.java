package org.climbwright.airspeed;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.io.Serializable;
import java.util.Arrays;
import org.climbwright.quantity.OutsideModelException;
import org.climbwright.quantity.speed.CalibratedAirspeed;
import org.climbwright.quantity.speed.IndicatedAirspeed;
import org.climbwright.testing.Streams;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/** The curve is invented. */
@DisplayName("A position-error curve")
class PositionErrorTest {
    private static final double[] INDICATED = {40.0, 60.0, 100.0, 150.0};
    private static final double[] CALIBRATED = {42.5, 61.0, 100.0, 149.25};
    private static final PositionError CURVE = curve(INDICATED, CALIBRATED);

    private static PositionError curve(double[] indicated, double[] calibrated) {
        return PositionError.table(
                Arrays.stream(indicated).mapToObj(IndicatedAirspeed::ofMetresPerSecond).toList(),
                Arrays.stream(calibrated).mapToObj(CalibratedAirspeed::ofMetresPerSecond).toList());
    }

    @Test
    @DisplayName("is its table at the points and a straight line between them")
    void points() {
        for (int i = 0; i < INDICATED.length; i++) {
            assertThat(CURVE.calibratedFromIndicated(INDICATED[i])).isEqualTo(CALIBRATED[i]);
            assertThat(CURVE.indicatedFromCalibrated(CALIBRATED[i])).isEqualTo(INDICATED[i]);
        }
        assertThat(CURVE.calibratedFromIndicated(50.0)).isCloseTo(51.75, within(1e-13));
        assertThat(CURVE.calibratedFromIndicated(125.0)).isCloseTo(124.625, within(1e-13));
    }

    @Test
    @DisplayName("gives back what came in, everywhere")
    void roundTrip() {
        double before = 0.0;
        for (double ias = 40.0; ias <= 150.0; ias += 0.37) {
            double cas = CURVE.calibratedFromIndicated(ias);
            assertThat(CURVE.coversCalibrated(cas)).isTrue();
            assertThat(CURVE.indicatedFromCalibrated(cas)).isCloseTo(ias, within(1e-13));
            assertThat(cas).isGreaterThan(before);
            before = cas;
        }
    }

    @Test
    @DisplayName("takes and gives values, which are the same numbers")
    void values() {
        assertThat(CURVE.calibrated(IndicatedAirspeed.ofMetresPerSecond(73.0)).inMetresPerSecond())
                .isEqualTo(CURVE.calibratedFromIndicated(73.0));
        assertThat(CURVE.indicated(CalibratedAirspeed.ofMetresPerSecond(73.0)).inMetresPerSecond())
                .isEqualTo(CURVE.indicatedFromCalibrated(73.0));
    }

    @Test
    @DisplayName("is known between its ends and nowhere else")
    void outside() {
        assertThat(CURVE.coversIndicated(39.9)).isFalse();
        assertThat(CURVE.coversIndicated(150.0)).isTrue();
        assertThat(CURVE.coversCalibrated(149.3)).isFalse();
        assertThatExceptionOfType(OutsideModelException.class)
                .isThrownBy(() -> CURVE.calibratedFromIndicated(39.0))
                .withMessage(
                        "indicated airspeed must be from 40.0 to 150.0 m/s, but was 39.0 m/s: the"
                                + " table of position errors ends there");
        assertThatExceptionOfType(OutsideModelException.class)
                .isThrownBy(() -> CURVE.indicatedFromCalibrated(Double.NaN))
                .withMessage(
                        "calibrated airspeed must be from 42.5 to 149.25 m/s, but was NaN m/s: the"
                                + " table of position errors ends there");
    }

    @Test
    @DisplayName("of an indicator without error changes no bit")
    void none() {
        PositionError none = PositionError.none();
        for (double speed : new double[] {0.0, 1e-9, 77.7, 154.3333333333333, 340.3, 1701.0}) {
            assertThat(none.calibratedFromIndicated(speed)).isEqualTo(speed);
            assertThat(none.indicatedFromCalibrated(speed)).isEqualTo(speed);
        }
        assertThat(none.coversIndicated(1702.0)).isFalse();
        assertThat(none).isEqualTo(PositionError.none()).isNotEqualTo(CURVE);
    }

    @Test
    @DisplayName("is refused when it does not rise, or has too few points")
    void refused() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> curve(new double[] {50, 50}, new double[] {50, 60}))
                .withMessage(
                        "the indicated airspeeds of a table of position errors must rise from 0.0"
                                + " m/s or more, but were [50.0, 50.0] m/s");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> curve(new double[] {50, 60}, new double[] {60, 50}))
                .withMessageStartingWith("the calibrated airspeeds of a table of position errors");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> curve(new double[] {50}, new double[] {50}))
                .withMessage(
                        "a table of position errors needs two points or more, with as many"
                                + " calibrated as indicated airspeeds, but had 1 indicated and 1"
                                + " calibrated");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> curve(new double[] {50, 60}, new double[] {50, 60, 70}));
    }

    @Test
    @DisplayName("comes out of a stream as it went in, and is refused when tampered with")
    void stream() throws IOException {
        Serializable curve = (Serializable) CURVE;
        assertThat(Streams.roundTrip(curve)).isEqualTo(CURVE).hasSameHashCodeAs(CURVE);
        assertThat(Streams.roundTrip((Serializable) PositionError.none()))
                .isEqualTo(PositionError.none())
                .hasToString("position errors from 0.0 to 1701.469940130445 m/s indicated");
        assertThatIllegalArgumentException().isThrownBy(() -> Streams.tampered(curve, 61.0, 161.0));
    }
}
