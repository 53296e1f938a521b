package org.climbwright.cabin.exposure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.time.Duration;
import java.util.List;
import org.climbwright.cabin.CabinHistory;
import org.climbwright.cabin.exposure.CabinAltitudeRule.Circumstance;
import org.climbwright.cabin.exposure.CabinAltitudeRule.Finding;
import org.climbwright.cabin.exposure.CabinAltitudeRule.Limit;
import org.climbwright.quantity.OutsideModelException;
import org.climbwright.quantity.altitude.CabinAltitude;
import org.climbwright.quantity.altitude.GeopotentialAltitude;
import org.climbwright.quantity.altitude.PressureAltitude;
import org.climbwright.testing.Streams;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

@DisplayName("A rule for cabin altitude")
class CabinAltitudeRuleTest {
    private static final CabinAltitudeRule TRANSPORT = CabinAltitudeRule.transport();

    /** A cabin that steps to an altitude within the first second and stays for some time. */
    private static CabinHistory at(double feet, double seconds) {
        double metres = CabinAltitude.ofFeet(feet).inMetres();
        return CabinHistory.ofSi(
                new double[] {0.0, seconds},
                new double[] {0.0, 0.0},
                new double[] {metres, metres});
    }

    private static List<Boolean> exceeded(CabinAltitudeRule rule, CabinHistory history) {
        return rule.assess(history).stream().map(Finding::isExceeded).toList();
    }

    @ParameterizedTest(
            name = "{0} ft for {1} s: normal {2}, failure {3}, above 25,000 {4}, never {5}")
    @CsvSource({
        // 14 CFR 25.841(a): 8,000, 15,000, 2 min above 25,000, 40,000 ft; each bound and beyond
        "8000, 600, false, false, false, false",
        "8000.001, 600, true, false, false, false",
        "15000, 600, true, false, false, false",
        "15000.001, 600, true, true, false, false",
        "25000, 600, true, true, false, false",
        "25000.001, 119.999, true, true, false, false",
        "25000.001, 120, true, true, false, false",
        "25000.001, 120.000000001, true, true, true, false",
        "40000, 120, true, true, false, false",
        "40000.001, 1, true, true, false, true",
    })
    @DisplayName("for transport aeroplanes finds exceeded:")
    void transport(
            double feet,
            double seconds,
            boolean normal,
            boolean failure,
            boolean time,
            boolean never) {
        assertThat(exceeded(TRANSPORT, at(feet, seconds)))
                .containsExactly(normal, failure, time, never);
    }

    @ParameterizedTest(
            name = "{0} ft for {1} s: normal {2}, failure {3}, above 15,000 {4}, never {5}")
    @CsvSource({
        // 14 CFR 23.841(a) of 2011: 15,000, 10 s above 15,000, 25,000 ft; (d) of 2014: 8,000 ft
        "8000, 600, false, false, false, false",
        "8000.001, 600, true, false, false, false",
        "15000, 600, true, false, false, false",
        "15000.001, 10, true, true, false, false",
        "15000.001, 10.000000001, true, true, true, false",
        "25000, 10, true, true, false, false",
        "25000.001, 1, true, true, false, true",
    })
    @DisplayName("for small aeroplanes finds exceeded:")
    void small(
            double feet,
            double seconds,
            boolean normal,
            boolean failure,
            boolean time,
            boolean never) {
        assertThat(exceeded(CabinAltitudeRule.small(), at(feet, seconds)))
                .containsExactly(normal, failure, time, never);
    }

    @ParameterizedTest(
            name =
                    "aerodrome at {0} ft, {1} ft at most: normal {2} ft, failure {3} ft, warning"
                            + " {4} ft")
    @CsvSource({
        "0, 14500, 8000, 15000, 10000",
        "7999.999, 14500, 8000, 15000, 10000",
        "8000, 8400, 10000, 15000, 15000",
        "8000, 14500, 10000, 15000, 16500",
        "8530, 13000, 10530, 15000, 15000",
        "8530, 13001, 10530, 15000, 15001",
        "13000, 14500, 15000, 15000, 16500",
        "13001, 13001, 15001, 15001, 15001",
        "14472, 14500, 16472, 16472, 16500",
    })
    @DisplayName("for transport aeroplanes rises with a high aerodrome, 25.841(c) and (d):")
    void highAerodromes(
            double elevation, double most, double normal, double failure, double warning) {
        CabinAltitudeRule rule =
                CabinAltitudeRule.transportAt(
                        GeopotentialAltitude.ofFeet(elevation), PressureAltitude.ofFeet(most));
        assertThat(rule.limits().get(0).level().inFeet()).isEqualTo(normal);
        assertThat(rule.limits().get(1).level().inFeet()).isEqualTo(failure);
        assertThat(rule.highestWarning().inFeet()).isEqualTo(warning);
        assertThat(rule.warning().inFeet()).isEqualTo(10_000.0);
        assertThat(exceeded(rule, at(normal, 60)).get(0)).isFalse();
        assertThat(exceeded(rule, at(normal + 0.001, 60)).get(0)).isTrue();
        assertThat(exceeded(rule, at(failure, 60)).get(1)).isFalse();
        assertThat(exceeded(rule, at(failure + 0.001, 60)).get(1)).isTrue();
    }

    @Test
    @DisplayName("does not call a cabin above its level that is there but for rounding")
    void rounding() {
        double level = CabinAltitude.ofFeet(8000).inMetres();
        double above = Math.nextUp(level);
        CabinHistory history =
                CabinHistory.ofSi(
                        new double[] {0, 1860}, new double[] {0, 0}, new double[] {above, above});
        Finding finding = TRANSPORT.assess(history).get(0);
        assertThat(finding.isExceeded()).isFalse();
        assertThat(finding.timeAbove()).isZero();
        assertThat(finding.longestAbove()).isZero();
        assertThat(finding).asString().contains("above for 0.0 s, not exceeded");
        Finding beyond = TRANSPORT.assess(at(8000.001, 1860)).get(0);
        assertThat(beyond.isExceeded()).isTrue();
        assertThat(beyond.timeAbove()).isEqualTo(Duration.ofSeconds(1860));
    }

    @Test
    @DisplayName("is that of a high aerodrome at 2,438.4 m as well, which is 8,000 ft")
    void inMetres() {
        PressureAltitude most = PressureAltitude.ofFeet(10_000);
        assertThat(
                        CabinAltitudeRule.transportAt(GeopotentialAltitude.ofMetres(2438.4), most)
                                .limits()
                                .get(0)
                                .paragraph())
                .isEqualTo("25.841(c)");
    }

    @Test
    @DisplayName("adds up the time of all excursions: twice a minute and a half is too long")
    void accumulates() {
        double up = CabinAltitude.ofFeet(26_000).inMetres();
        double down = CabinAltitude.ofFeet(24_000).inMetres();
        // Above 25,000 ft from half way up to half way down: 10 + 70 + 10 s, twice.
        CabinHistory history =
                CabinHistory.ofSi(
                        new double[] {0, 20, 90, 110, 200, 220, 290, 310},
                        new double[] {0, 0, 0, 0, 0, 0, 0, 0},
                        new double[] {down, up, up, down, down, up, up, down});
        Finding finding = TRANSPORT.assess(history).get(2);
        // a crossing at 100 ft/s = 30.48 m/s passes the 1e-6 m of rounding in 32.8 ns
        assertThat(finding.timeAbove()).isEqualTo(Duration.ofSeconds(180).minusNanos(131));
        assertThat(finding.longestAbove()).isEqualTo(Duration.ofSeconds(90).minusNanos(66));
        assertThat(finding.timeMargin()).isEqualTo(Duration.ofSeconds(-60).plusNanos(131));
        assertThat(finding.isExceeded()).isTrue();
    }

    @Test
    @DisplayName("tells what was reached and what was left, and never that an aeroplane complies")
    void margins() {
        Finding normal = TRANSPORT.assess(at(7500, 60)).get(0);
        assertThat(normal.highest().inFeet()).isEqualTo(7500.0);
        assertThat(normal.altitudeMargin().inFeet()).isCloseTo(500.0, within());
        assertThat(normal)
                .asString()
                .contains("highest 7500 ft")
                .endsWith("not exceeded in this record");
        Finding time = TRANSPORT.assess(at(26_000, 90)).get(2);
        assertThat(time.timeMargin()).isEqualTo(Duration.ofSeconds(30));
        assertThat(time.altitudeMargin().inFeet()).isCloseTo(-1000.0, within());
        assertThat(time)
                .asString()
                .contains("above 25000 ft for PT2M")
                .contains("above for 90.0 s");
        assertThat(TRANSPORT.assess(at(41_000, 1)).get(3)).asString().endsWith(", exceeded");
        for (double feet : new double[] {0.0, 7500.0, 41_000.0}) {
            assertThat(TRANSPORT.assess(at(feet, 60)).toString().toLowerCase(java.util.Locale.ROOT))
                    .doesNotContain("compl")
                    .doesNotContain("safe");
        }
    }

    private static org.assertj.core.data.Offset<Double> within() {
        return org.assertj.core.api.Assertions.within(1e-9);
    }

    @Test
    @DisplayName("is asked for one circumstance, since a record does not tell what had happened")
    void byCircumstance() {
        CabinHistory history = at(9000, 60);
        assertThat(TRANSPORT.assess(history, Circumstance.NORMAL_OPERATION)).hasSize(1);
        assertThat(TRANSPORT.assess(history, Circumstance.PROBABLE_FAILURE)).hasSize(1);
        assertThat(TRANSPORT.assess(history, Circumstance.DECOMPRESSION)).hasSize(2);
        assertThat(TRANSPORT.assess(history, Circumstance.PROBABLE_FAILURE).get(0).isExceeded())
                .isFalse();
    }

    @Test
    @DisplayName("says of each limit how far it was read")
    void evidence() {
        assertThat(TRANSPORT.limits())
                .extracting(Limit::evidence)
                .containsExactly(
                        Evidence.SEEN_IN_TWIN_RULE,
                        Evidence.SEEN_IN_TWIN_RULE,
                        Evidence.SEEN,
                        Evidence.SEEN);
        assertThat(TRANSPORT.warningBasis()).contains("number of the paragraph from memory");
        assertThat(Evidence.FROM_MEMORY.words()).contains("from memory");
    }

    @Test
    @DisplayName("travels as bytes and arrives equal, and so do its findings")
    void travels() throws IOException {
        assertThat(Streams.roundTrip(TRANSPORT)).isEqualTo(TRANSPORT);
        Finding finding = TRANSPORT.assess(at(9000, 60)).get(0);
        assertThat(Streams.roundTrip(finding)).isEqualTo(finding);
    }

    @ParameterizedTest
    @ValueSource(doubles = {-500.001, 5000.001})
    @DisplayName("refuses an aerodrome that there is not:")
    void aerodromes(double elevationM) {
        assertThatThrownBy(
                        () ->
                                CabinAltitudeRule.transportAt(
                                        GeopotentialAltitude.ofMetres(elevationM),
                                        PressureAltitude.ofMetres(3000)))
                .isInstanceOf(OutsideModelException.class)
                .hasMessageContaining("elevation of the aerodrome");
        assertThatThrownBy(
                        () ->
                                CabinAltitudeRule.transportAt(
                                        GeopotentialAltitude.ofMetres(3000),
                                        PressureAltitude.ofMetres(elevationM)))
                .isInstanceOf(OutsideModelException.class)
                .hasMessageContaining("highest altitude for take-off and landing");
    }

    @Test
    @DisplayName("refuses a warning that is shifted down, and a time allowed below zero")
    void refuses() {
        CabinAltitude high = CabinAltitude.ofFeet(10_000);
        CabinAltitude low = CabinAltitude.ofFeet(9000);
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new CabinAltitudeRule("own", List.of(), high, low, "own"));
        assertThatIllegalArgumentException()
                .isThrownBy(
                        () ->
                                new Limit(
                                        Circumstance.DECOMPRESSION,
                                        "own",
                                        high,
                                        Duration.ofNanos(-1),
                                        "own",
                                        "own",
                                        Evidence.SEEN));
    }
}
