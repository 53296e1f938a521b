package org.climbwright.cabin;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.time.Duration;
import org.climbwright.atmosphere.StandardAir;
import org.climbwright.quantity.OutsideModelException;
import org.climbwright.quantity.altitude.CabinAltitude;
import org.climbwright.testing.Streams;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

@DisplayName("The history of a cabin")
class CabinHistoryTest {
    // Up through 2000 m to 4000 m, down to 2000 m, which it touches, up to 3000 m, and level.
    private static final double[] TIME_S = {100.0, 200.0, 300.0, 400.0, 500.0};
    private static final double[] AEROPLANE_M = {1000.0, 5000.0, 9000.0, 9000.0, 9000.0};
    private static final double[] CABIN_M = {0.0, 4000.0, 2000.0, 3000.0, 3000.0};
    private static final CabinHistory HISTORY = CabinHistory.ofSi(TIME_S, AEROPLANE_M, CABIN_M);

    @ParameterizedTest(name = "above {0} m: {1} s, the longest time {2} s")
    @CsvSource({
        // worked by hand from the straight lines above
        "-1, 400, 400",
        "0, 400, 400",
        "1000, 375, 375",
        "1999, 350.025, 350.025",
        "2000, 350, 200",
        "2500, 262.5, 150",
        "3000, 75, 75",
        "3999.5, 0.0375, 0.0375",
        "4000, 0, 0",
        "4001, 0, 0"
    })
    @DisplayName("counts time strictly above a level:")
    void timeAbove(double levelM, double totalS, double longestS) {
        CabinAltitude level = CabinAltitude.ofMetres(levelM);
        assertThat(HISTORY.timeAbove(level)).isEqualTo(seconds(totalS));
        assertThat(HISTORY.longestTimeAbove(level)).isEqualTo(seconds(longestS));
        assertThat(TimeAtAltitude.above(TIME_S, CABIN_M, levelM)).isCloseTo(totalS, within(1e-12));
        assertThat(TimeAtAltitude.atOrBelow(TIME_S, CABIN_M, levelM))
                .isCloseTo(400.0 - totalS, within(1e-12));
        assertThat(TimeAtAltitude.longestAbove(TIME_S, CABIN_M, levelM))
                .isCloseTo(longestS, within(1e-12));
    }

    private static Duration seconds(double seconds) {
        return Duration.ofNanos(Math.round(seconds * 1e9));
    }

    @Test
    @DisplayName("counts a level flown at as below, and one metre above as above")
    void levelItself() {
        double[] level = {3000.0, 3000.0};
        double[] time = {0.0, 60.0};
        assertThat(TimeAtAltitude.above(time, level, 3000.0)).isZero();
        assertThat(TimeAtAltitude.atOrBelow(time, level, 3000.0)).isEqualTo(60.0);
        assertThat(TimeAtAltitude.above(time, level, Math.nextDown(3000.0))).isEqualTo(60.0);
        assertThat(TimeAtAltitude.above(time, level, Math.nextUp(3000.0))).isZero();
        assertThat(TimeAtAltitude.firstAtOrAbove(time, level, 3000.0)).isZero();
        assertThat(TimeAtAltitude.firstAtOrAbove(time, level, Math.nextUp(3000.0))).isNaN();
    }

    @Test
    @DisplayName("knows its highest sample, and the first of equals")
    void highest() {
        assertThat(HISTORY.highest()).isEqualTo(CabinAltitude.ofMetres(4000));
        assertThat(HISTORY.timeOfHighest()).isEqualTo(Duration.ofSeconds(200));
        double[] twice = {1.0, 2.0, 1.0, 2.0};
        double[] time = {0.0, 1.0, 2.0, 3.0};
        assertThat(CabinHistory.ofSi(time, twice, twice).timeOfHighest())
                .isEqualTo(Duration.ofSeconds(1));
    }

    @ParameterizedTest(name = "{0} m: after {1}")
    @CsvSource({"-1, PT1M40S", "0, PT1M40S", "1000, PT2M5S", "4000, PT3M20S"})
    @DisplayName("knows when the cabin was first at a level or above:")
    void firstAtOrAbove(double levelM, Duration time) {
        assertThat(HISTORY.firstAtOrAbove(CabinAltitude.ofMetres(levelM))).hasValue(time);
    }

    @Test
    @DisplayName("has no first time at a level that the cabin did not reach")
    void neverAtOrAbove() {
        double barely = Math.nextUp(4000.0);
        assertThat(HISTORY.firstAtOrAbove(CabinAltitude.ofMetres(barely))).isEmpty();
        assertThat(TimeAtAltitude.firstAtOrAbove(TIME_S, CABIN_M, barely)).isNaN();
    }

    @ParameterizedTest(name = "after {0}: {1} m")
    @CsvSource({"PT1M40S, 0", "PT2M30S, 2000", "PT3M20S, 4000", "PT4M10S, 3000", "PT8M20S, 3000"})
    @DisplayName("has the cabin altitude at a time on the straight line:")
    void cabinAltitudeAt(Duration time, double altitudeM) {
        assertThat(HISTORY.cabinAltitudeAt(time).inMetres()).isEqualTo(altitudeM);
    }

    @Test
    @DisplayName("has the differential pressures of its samples, negative ones as well")
    void differential() {
        DifferentialRange range = HISTORY.differentialRange();
        double highest =
                StandardAir.pressureFromAltitude(2000) - StandardAir.pressureFromAltitude(9000);
        assertThat(range.largestPa()).isEqualTo(highest);
        assertThat(range.timeOfLargest()).isEqualTo(Duration.ofSeconds(300));
        assertThat(range.largest().inPascals()).isEqualTo(highest);

        double[] below = {1000.0, 500.0};
        double[] cabin = {1000.0, 1000.0};
        DifferentialRange squeezed =
                CabinHistory.ofSi(new double[] {0.0, 10.0}, below, cabin).differentialRange();
        assertThat(squeezed.smallest().inPascals()).isNegative();
        assertThat(squeezed.timeOfSmallest()).isEqualTo(Duration.ofSeconds(10));
        assertThat(squeezed.largestPa()).isZero();
    }

    @Test
    @DisplayName("finds a differential that is largest between two samples")
    void differentialBetween() {
        // Slow at first: both climb, the cabin a quarter as fast. In the thin air above, a metre
        // of the aeroplane's climb counts less than a quarter of one of the cabin's, and the
        // differential falls again.
        double[] time = {0.0, 1000.0};
        double[] aeroplane = {0.0, 26000.0};
        double[] cabin = {0.0, 6500.0};
        DifferentialRange range = DifferentialRange.ofSi(time, aeroplane, cabin);
        double atTheEnd =
                StandardAir.pressureFromAltitude(6500) - StandardAir.pressureFromAltitude(26000);
        assertThat(range.largestPa()).isGreaterThan(atTheEnd + 1000.0);
        double share = range.largestAtS() / 1000.0;
        assertThat(StandardAir.densityFromAltitude(26000 * share))
                .isCloseTo(StandardAir.densityFromAltitude(6500 * share) / 4.0, within(1e-9));
    }

    @Test
    @DisplayName("keeps copies: what is done to the arrays afterwards does not reach it")
    void copies() {
        double[] time = TIME_S.clone();
        double[] aeroplane = AEROPLANE_M.clone();
        double[] cabin = CABIN_M.clone();
        CabinHistory history = CabinHistory.ofSi(time, aeroplane, cabin);
        time[0] = 7.0;
        aeroplane[0] = 7.0;
        cabin[0] = 7.0;
        assertThat(history).isEqualTo(HISTORY);
        assertThat(history.timeS(0)).isEqualTo(100.0);
        assertThat(history.pressureAltitudeM(1)).isEqualTo(5000.0);
        assertThat(history.cabinAltitudeM(0)).isZero();
        assertThat(history.size()).isEqualTo(5);
        assertThat(history.length()).isEqualTo(Duration.ofSeconds(400));
    }

    @Test
    @DisplayName("travels as bytes and arrives equal, and so does its range of differentials")
    void travels() throws IOException {
        assertThat(Streams.roundTrip(HISTORY))
                .isEqualTo(HISTORY)
                .hasSameHashCodeAs(HISTORY)
                .hasToString(HISTORY.toString());
        assertThat(Streams.roundTrip(HISTORY.differentialRange()))
                .isEqualTo(HISTORY.differentialRange());
        assertThat(HISTORY)
                .isNotEqualTo(CabinHistory.ofSi(TIME_S, CABIN_M, CABIN_M))
                .isNotEqualTo("another");
    }

    @Nested
    @DisplayName("refuses")
    class Refuses {
        @Test
        @DisplayName("times that do not rise, telling which")
        void times() {
            double[] flat = {0.0, 5.0, 5.0};
            double[] altitude = {0.0, 0.0, 0.0};
            assertThat(CabinHistory.covers(flat, altitude, altitude)).isFalse();
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> CabinHistory.ofSi(flat, altitude, altitude))
                    .withMessage(
                            "times of samples must rise, but 5.0 s came after 5.0 s at index 2");
        }

        @Test
        @DisplayName("arrays of different lengths, and none at all")
        void lengths() {
            double[] one = {0.0};
            double[] two = {0.0, 1.0};
            double[] none = {};
            for (double[][] arrays :
                    new double[][][] {
                        {one, two, one}, {one, one, two}, {two, one, one}, {none, none, none}
                    }) {
                assertThat(CabinHistory.covers(arrays[0], arrays[1], arrays[2])).isFalse();
                assertThatIllegalArgumentException()
                        .isThrownBy(() -> CabinHistory.ofSi(arrays[0], arrays[1], arrays[2]))
                        .withMessageContaining("a record needs");
            }
        }

        @ParameterizedTest
        @ValueSource(doubles = {Double.NaN, -5000.001, 32000.001, Double.POSITIVE_INFINITY})
        @DisplayName("an altitude that is none:")
        void altitudes(double altitudeM) {
            double[] time = {0.0, 1.0};
            double[] good = {0.0, 0.0};
            double[] bad = {0.0, altitudeM};
            assertThat(CabinHistory.covers(time, good, good)).isTrue();
            assertThat(CabinHistory.covers(time, bad, good)).isFalse();
            assertThat(CabinHistory.covers(time, good, bad)).isFalse();
            assertThat(TimeAtAltitude.coversLevel(altitudeM)).isFalse();
            assertThatThrownBy(() -> CabinHistory.ofSi(time, bad, good))
                    .isInstanceOf(OutsideModelException.class)
                    .hasMessageContaining("pressure altitude");
            assertThatThrownBy(() -> CabinHistory.ofSi(time, good, bad))
                    .isInstanceOf(OutsideModelException.class)
                    .hasMessageContaining("cabin altitude");
            assertThatThrownBy(() -> TimeAtAltitude.above(time, good, altitudeM))
                    .isInstanceOf(OutsideModelException.class);
        }

        @Test
        @DisplayName("a time that is none, and one outside the record")
        void outsideTheRecord() {
            double[] good = {0.0, 0.0};
            assertThat(CabinHistory.covers(new double[] {0.0, Double.NaN}, good, good)).isFalse();
            assertThatThrownBy(
                            () ->
                                    CabinHistory.ofSi(
                                            new double[] {0.0, Double.POSITIVE_INFINITY},
                                            good,
                                            good))
                    .isInstanceOf(OutsideModelException.class);
            assertThatExceptionOfType(OutsideModelException.class)
                    .isThrownBy(() -> HISTORY.cabinAltitudeAt(Duration.ofSeconds(501)))
                    .withMessageContaining("from 100.0 to 500.0 s");
        }

        @Test
        @DisplayName("a range of differentials whose ends are not in order")
        void range() {
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> new DifferentialRange(1.0, 0.0, 0.0, 0.0));
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> new DifferentialRange(Double.NaN, 0.0, 0.0, 0.0));
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> new DifferentialRange(0.0, Double.NaN, 0.0, 0.0));
        }
    }
}
