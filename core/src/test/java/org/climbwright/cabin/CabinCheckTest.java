package org.climbwright.cabin;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.Duration;
import java.util.List;
import org.climbwright.cabin.CabinCheck.Answer;
import org.climbwright.cabin.CabinCheck.Verdict;
import org.climbwright.quantity.OutsideModelException;
import org.climbwright.quantity.altitude.AltitudeChange;
import org.climbwright.quantity.altitude.PressureAltitude;
import org.climbwright.quantity.pressure.DifferentialPressure;
import org.climbwright.quantity.speed.CabinAltitudeRate;
import org.climbwright.testing.Streams;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A climb at 2,000 ft/min, the cabin a fifth of it: 2,000 ft at FL100, 4,000 at FL200, 7,000. */
@DisplayName("The check of a cabin on the way up")
class CabinCheckTest {
    private static final CabinPlan PLAN =
            Cabins.plan(
                    CabinSchedule.proportional(
                            PressureAltitude.ofFeet(0),
                            Cabins.cabin(0),
                            PressureAltitude.ofFlightLevel(350),
                            Cabins.cabin(7000)));
    private static final CabinCheck CHECK =
            CabinCheck.of(ExpectedCabin.along(Cabins.climb(2000), PLAN));

    private static CabinReading read(double feet, double cabinFeet) {
        return CabinReading.of(PressureAltitude.ofFeet(feet), Cabins.cabin(cabinFeet));
    }

    private static CabinAltitudeRate rate(double feetPerMinute) {
        return CabinAltitudeRate.ofFeetPerMinute(feetPerMinute);
    }

    private static void says(Answer answer, Verdict verdict, String... words) {
        assertThat(answer.verdict()).as(answer.toString()).isEqualTo(verdict);
        for (String word : words) {
            assertThat(answer.reasons()).anyMatch(reason -> reason.contains(word));
        }
        if (verdict != Verdict.AS_EXPECTED) {
            assertThat(answer.reasons()).last().asString().contains("operator's checklist");
        }
    }

    @Test
    @DisplayName("is at each 10,000 ft and at the top, unless told another interval")
    void levels() {
        assertThat(CHECK.levels())
                .extracting(state -> state.aeroplane().inFlightLevels())
                .containsExactly(100.0, 200.0, 300.0, 350.0);
        assertThat(CHECK.levels())
                .extracting(state -> Math.rint(state.cabin().inFeet()))
                .containsExactly(2000.0, 4000.0, 6000.0, 7000.0);
        assertThat(CHECK.levels(AltitudeChange.ofFeet(5000)))
                .extracting(state -> state.aeroplane().inFlightLevels())
                .containsExactly(50.0, 100.0, 150.0, 200.0, 250.0, 300.0, 350.0);
        assertThat(CHECK.levels(AltitudeChange.ofFeet(40000))).hasSize(1);
    }

    @Test
    @DisplayName("of readings within tolerance tells the figures, and that all of them were read")
    void asExpected() {
        Answer answer =
                CHECK.against(
                        read(20000, 4300).withRate(rate(350)).withDifferential(Cabins.psi(5.8)));
        says(
                answer,
                Verdict.AS_EXPECTED,
                "cabin altitude within tolerance: 4,300 ft read where 4,000 ft is expected",
                "differential within tolerance: 5.80 psi read where",
                "cabin rate within tolerance: 350 ft/min read where 400 ft/min is expected");
        assertThat(answer.reasons()).hasSize(3);
        assertThat(answer.expected().cabin().inFeet()).isBetween(3999.9, 4000.1);
    }

    @Test
    @DisplayName("calls what was not read not read, never as expected")
    void notRead() {
        Answer answer = CHECK.against(read(20000, 4000));
        says(
                answer,
                Verdict.AS_EXPECTED,
                "differential not read; the two altitudes make 5.94 psi",
                "cabin rate not read");
        assertThat(answer.reasons()).noneMatch(reason -> reason.matches("(?i).*\\b(safe|ok)\\b.*"));
    }

    @ParameterizedTest(name = "{0} ft in the cabin at {1} ft: {2}, \"{3}\"")
    @CsvSource({
        "4500, 20000, AS_EXPECTED, cabin altitude within tolerance",
        "4501, 20000, DRIFTING, cabin altitude 501 ft above the expected",
        "3499, 20000, DRIFTING, cabin altitude 501 ft below the expected",
        "5400, 20000, DRIFTING, '1,400 ft above the expected: 5,400 ft read where 4,000 ft'",
        "8001, 20000, BEYOND_LIMIT, '8,001 ft where the whole plan has at most 7,000 ft'",
        "19600, 20000, BEYOND_LIMIT, 'it is not pressurised: 19,600 ft at 20,000 ft'",
        "0, 27000, BEYOND_LIMIT, differential at the relief setting or above",
        "0, 25600, BEYOND_LIMIT, differential at the relief setting or above",
    })
    @DisplayName("of the cabin altitude alone, on both sides of a tolerance:")
    void cabinAltitude(double cabin, double aeroplane, Verdict verdict, String words) {
        says(CHECK.against(read(aeroplane, cabin)), verdict, words);
    }

    @ParameterizedTest(name = "{0} psi at FL300 with 6,000 ft: {1}")
    @CsvSource({
        "7.40, AS_EXPECTED, differential within tolerance",
        "7.15, DRIFTING, below the expected",
        "8.15, DRIFTING, above the expected",
        "8.21, BEYOND_LIMIT, 8.21 psi where at most 8.00 psi is scheduled",
        "8.25, BEYOND_LIMIT, 8.25 psi where the relief valve opens at 8.25 psi",
        "-0.30, DRIFTING, the cabin is above the aeroplane: differential -0.30 psi",
        "-0.50, BEYOND_LIMIT, differential at the negative relief setting",
    })
    @DisplayName("of the differential as read, with the limits of the hull:")
    void differential(double psi, Verdict verdict, String words) {
        says(CHECK.against(read(30000, 6000).withDifferential(Cabins.psi(psi))), verdict, words);
    }

    @ParameterizedTest(name = "{0} ft/min: {1}")
    @CsvSource({
        "590, AS_EXPECTED, cabin rate within tolerance",
        "610, DRIFTING, cabin climbing at 610 ft/min where 400 ft/min is expected",
        "1100, BEYOND_LIMIT, 'cabin climbing at 1,100 ft/min where the limit is 500 ft/min'",
        "-400, DRIFTING, cabin descending at 400 ft/min where 400 ft/min is expected",
        "-510, BEYOND_LIMIT, cabin descending at 510 ft/min where the limit is 300 ft/min",
    })
    @DisplayName("of the rate as read:")
    void rates(double feetPerMinute, Verdict verdict, String words) {
        says(CHECK.against(read(20000, 4000).withRate(rate(feetPerMinute))), verdict, words);
    }

    @Test
    @DisplayName("tells that 6.7 psi do not belong to FL300 and 6,100 ft: 7.37 psi do (row P03)")
    void notTogether() {
        Answer answer = CHECK.against(read(30000, 6100).withDifferential(Cabins.psi(6.7)));
        says(
                answer,
                Verdict.DRIFTING,
                "the readings do not belong together: 6,100 ft in the cabin at 30,000 ft makes"
                        + " 7.37 psi, but 6.70 psi was read");
        Answer together = CHECK.against(read(30000, 6100).withDifferential(Cabins.psi(7.37)));
        assertThat(together.reasons()).noneMatch(reason -> reason.contains("belong together"));
    }

    @Nested
    @DisplayName("against the reading before")
    class Trend {
        private final CabinReading before =
                read(10000, 2000)
                        .withTime(Duration.ofMinutes(5))
                        .withDifferential(Cabins.psi(3.55));

        private CabinReading now(double cabinFeet) {
            return read(20000, cabinFeet).withTime(Duration.ofMinutes(10));
        }

        @Test
        @DisplayName("has nothing to add where the differential builds as it should")
        void builds() {
            CabinReading now = now(4000).withDifferential(Cabins.psi(5.93));
            assertThat(CHECK.against(now, before)).isEqualTo(CHECK.against(now));
        }

        @Test
        @DisplayName("tells an average rate above the limit and its tolerance")
        void averageRate() {
            says(
                    CHECK.against(now(5600), before),
                    Verdict.BEYOND_LIMIT,
                    "cabin climbing at 720 ft/min on average since 10,000 ft, the limit is 500");
            assertThat(CHECK.against(now(5400), before).verdict()).isEqualTo(Verdict.DRIFTING);
        }

        @Test
        @DisplayName("takes the times of the climb where none was read, and says so")
        void notTimed() {
            says(
                    CHECK.against(read(20000, 5600), before),
                    Verdict.BEYOND_LIMIT,
                    "on average since 10,000 ft by the times of the climb, times not read");
        }

        @Test
        @DisplayName("tells a cabin that climbs with the aeroplane: it is not being pressurised")
        void withTheAeroplane() {
            says(
                    CHECK.against(now(11600), before),
                    Verdict.BEYOND_LIMIT,
                    "the cabin climbs with the aeroplane, it is not being pressurised: 9,600 ft of"
                            + " 10,000 ft since 10,000 ft");
        }

        @Test
        @DisplayName("tells a differential that falls while climbing, and names no cause")
        void falls() {
            Answer answer = CHECK.against(now(4400).withDifferential(Cabins.psi(3.3)), before);
            says(
                    answer,
                    Verdict.DRIFTING,
                    "the differential falls while climbing, 3.55 psi to 3.30 psi since 10,000 ft:"
                            + " look at");
            assertThat(answer.reasons()).noneMatch(reason -> reason.contains("leak"));
        }

        @Test
        @DisplayName("tells a differential that does not build")
        void doesNotBuild() {
            says(
                    CHECK.against(now(4400).withDifferential(Cabins.psi(3.9)), before),
                    Verdict.DRIFTING,
                    "the differential does not build, 3.55 psi to 3.90 psi since 10,000 ft where it"
                            + " should grow by 2.");
        }

        @Test
        @DisplayName("goes by the altitudes where the differential was read only once")
        void readOnce() {
            Answer answer = CHECK.against(now(11000), before);
            says(
                    answer,
                    Verdict.BEYOND_LIMIT,
                    "the differential falls while climbing, 3.56 psi to 2.97 psi as the altitudes"
                            + " make it, since 10,000 ft");
        }

        @Test
        @DisplayName("refuses one that was later or above")
        void refuses() {
            assertThatThrownBy(() -> CHECK.against(before, now(4000)))
                    .isInstanceOf(IllegalArgumentException.class)
                    .hasMessageContaining("must be before this one");
            assertThatThrownBy(() -> CHECK.against(before, before))
                    .isInstanceOf(IllegalArgumentException.class);
        }
    }

    @Test
    @DisplayName("after the climb expects what the cabin is by then, on its way at its limit")
    void levelFlight() {
        ExpectedCabin late =
                ExpectedCabin.along(
                        Cabins.climb(6000), PLAN.withPrecedence(CabinPlan.Precedence.RATE_FIRST));
        CabinCheck check = CabinCheck.of(late);
        CabinState top = late.at(late.top());
        assertThat(top.cabin().inFeet()).isLessThan(6400);
        CabinReading settled = read(35000, 7000).withTime(late.settled().time());
        assertThat(check.against(settled).verdict()).isEqualTo(Verdict.AS_EXPECTED);
        assertThat(check.against(read(35000, 7000)).verdict()).isNotEqualTo(Verdict.AS_EXPECTED);
    }

    @Test
    @DisplayName("does not call a rate beyond its limit that the plan itself expects")
    void gaveWay() {
        CabinPlan isobaric = Cabins.plan(CabinSchedule.isobaric(Cabins.cabin(2000)));
        ExpectedCabin fast = ExpectedCabin.along(Cabins.climb(3000), isobaric);
        CabinState there = fast.at(PressureAltitude.ofFeet(30000));
        assertThat(there.rate().inFeetPerMinute()).isGreaterThan(1200);
        CabinReading reading =
                CabinReading.of(there.aeroplane(), there.cabin()).withRate(there.rate());
        assertThat(CabinCheck.of(fast).against(reading).verdict()).isEqualTo(Verdict.AS_EXPECTED);
    }

    @Test
    @DisplayName("goes by other tolerances, which must be above 0")
    void tolerances() {
        CabinCheck strict =
                CHECK.withTolerances(
                        new CabinCheck.Tolerances(
                                AltitudeChange.ofFeet(100), rate(50), Cabins.psi(0.05)));
        assertThat(strict.against(read(20000, 4101)).verdict()).isEqualTo(Verdict.DRIFTING);
        assertThatThrownBy(
                        () ->
                                new CabinCheck.Tolerances(
                                        AltitudeChange.ofFeet(100),
                                        rate(0),
                                        DifferentialPressure.ofPascals(1)))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("above 0");
    }

    @Test
    @DisplayName("refuses a level off the climb, a time below 0 and an interval of nothing")
    void refuses() {
        assertThatThrownBy(() -> CHECK.against(read(35001, 7000)))
                .isInstanceOf(OutsideModelException.class);
        assertThatThrownBy(() -> read(35000, 7000).withTime(Duration.ofSeconds(-1)))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> CHECK.levels(AltitudeChange.ofFeet(0)))
                .isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    @DisplayName("does not read a forged reading from a stream: no cabin at 90 km")
    void forged() {
        CabinReading reading = read(20000, 4000).withRate(rate(400)).withTime(Duration.ZERO);
        assertThatThrownBy(() -> Streams.tampered(reading, 4000 * 0.3048, 90000.0))
                .hasStackTraceContaining("cabin altitude must be from");
    }

    @Test
    @DisplayName("written to a stream of objects is read back the same: check, reading, answer")
    void streams() throws Exception {
        CabinReading reading = read(20000, 4000).withRate(rate(400));
        for (var value : List.of(CHECK, reading, CHECK.against(reading))) {
            assertThat(Streams.roundTrip(value)).isEqualTo(value).hasSameHashCodeAs(value);
        }
        assertThat(reading.toString())
                .isEqualTo(
                        "cabin at 4,000 ft with the aeroplane at 20,000 ft, rate 400 ft/min,"
                                + " differential not read");
    }
}
