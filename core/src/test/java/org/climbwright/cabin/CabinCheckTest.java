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
        "19600, 20000, BEYOND_LIMIT, 'the cabin is where the aeroplane is: 19,600 ft at 20,000 ft'",
        "0, 27000, BEYOND_LIMIT, differential at the relief setting or above",
        "0, 25600, BEYOND_LIMIT, differential at the relief setting or above",
        "1600, 1100, DRIFTING, 'cabin altitude 1,380 ft above the expected'",
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
        "8.24, BEYOND_LIMIT, 8.24 psi where at most 8.00 psi is scheduled",
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
        "0, DRIFTING, 'cabin steady, 0 ft/min where 400 ft/min is expected'",
        "-0.4, DRIFTING, 'cabin steady, 0 ft/min where 400 ft/min is expected'",
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
                    CHECK.against(read(20000, 5600), read(10000, 2000)),
                    Verdict.BEYOND_LIMIT,
                    "on average since 10,000 ft by the times of the climb, times not read");
        }

        @Test
        @DisplayName("tells a cabin that climbs with the aeroplane, and names no cause")
        void withTheAeroplane() {
            says(
                    CHECK.against(now(11600), before),
                    Verdict.BEYOND_LIMIT,
                    "the cabin climbed 9,600 ft of the aeroplane's 10,000 ft since 10,000 ft");
            assertThat(CHECK.against(now(11600), before).reasons())
                    .noneMatch(reason -> reason.contains("pressurised"));
        }

        @ParameterizedTest(name = "{0} ft after 1,100 ft of climb: climbed with it {1}")
        @CsvSource({
            // expected is 2,000 then 2,220 ft; the first reads 500 ft low, which is in tolerance
            "2720, false",
            "2721, true",
        })
        @DisplayName("finds nothing in two readings of a short climb that are both in tolerance:")
        void shortClimb(double cabinFeet, boolean isFound) {
            CabinReading low = read(10000, 1500);
            Answer answer = CHECK.against(read(11100, cabinFeet), low);
            assertThat(answer.reasons().stream().anyMatch(reason -> reason.contains("climbed")))
                    .isEqualTo(isFound);
            assertThat(answer.verdict())
                    .isEqualTo(isFound ? Verdict.BEYOND_LIMIT : Verdict.AS_EXPECTED);
        }

        @Test
        @DisplayName("does not call a differential falling that both tolerances explain")
        void bothTolerances() {
            CabinReading high = read(10000, 2000).withDifferential(Cabins.psi(3.74));
            CabinReading low = read(11100, 2220).withDifferential(Cabins.psi(3.70));
            assertThat(CHECK.against(low, high).verdict()).isEqualTo(Verdict.AS_EXPECTED);
            // 500 ft of cabin altitude are 0.25 psi, more than the 0.2 psi of the instrument
            assertThat(CHECK.against(read(11100, 2719), read(10000, 1501)).reasons())
                    .noneMatch(reason -> reason.contains("falls"));
        }

        @Test
        @DisplayName(
                "does not know the average rate where one time was not read, and asks the rest")
        void oneTime() {
            CabinReading late = read(18000, 3600).withTime(Duration.ofMinutes(8));
            says(
                    CHECK.against(read(20000, 4000), late),
                    Verdict.AS_EXPECTED,
                    "average rate not known since 18,000 ft, one time not read");
            says(
                    CHECK.against(read(28000, 13200), late),
                    Verdict.BEYOND_LIMIT,
                    "average rate not known since 18,000 ft, one time not read",
                    "the cabin climbed 9,600 ft of the aeroplane's 10,000 ft since 18,000 ft");
        }

        @Test
        @DisplayName("tells a cabin that rises in level flight: both readings in tolerance")
        void levelFlight() {
            CabinReading first = read(20000, 3600).withTime(Duration.ofMinutes(10));
            CabinReading second = read(20000, 4440).withTime(Duration.ofMinutes(20));
            assertThat(CHECK.against(second).verdict()).isEqualTo(Verdict.AS_EXPECTED);
            says(
                    CHECK.against(second, first),
                    Verdict.DRIFTING,
                    "the cabin rises in level flight, by 840 ft since 20,000 ft where 0 ft is"
                            + " expected: look at",
                    "the differential falls in level flight, 6.13 psi to 5.73 psi as");
            assertThat(CHECK.against(second, first).reasons())
                    .noneMatch(reason -> reason.contains("leak"));
            says(
                    CHECK.against(
                            read(20000, 4000).withDifferential(Cabins.psi(5.8)),
                            read(20020, 4000).withDifferential(Cabins.psi(6.01))),
                    Verdict.DRIFTING,
                    "the differential falls in level flight, 6.01 psi to 5.80 psi since 20,020 ft");
            says(
                    CHECK.against(read(20000, 4090), read(20000, 3600)),
                    Verdict.AS_EXPECTED,
                    "average rate not known since 20,000 ft, times not read");
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

    @ParameterizedTest(name = "{0} ft in the cabin at {1} ft: {2}, \"{3}\"")
    @CsvSource({
        "9999, AS_EXPECTED, cabin altitude within tolerance, 10400",
        "10000, AS_EXPECTED, 'cabin altitude 10,000 ft, at or above the 10,000 ft of the cabin"
                + " altitude warning, as the plan itself has it', 10400",
        "9999, AS_EXPECTED, cabin altitude within tolerance, 9900",
        "10000, BEYOND_LIMIT, 'at or above the 10,000 ft of the cabin altitude warning, where the"
                + " plan has 9,900 ft', 9900",
    })
    @DisplayName("names a cabin at the altitude of the warning, in tolerance or not:")
    void warning(double cabin, Verdict verdict, String words, double planned) {
        CabinPlan high =
                new CabinPlan(
                        CabinSchedule.isobaric(Cabins.cabin(planned)),
                        Cabins.limits(),
                        CabinRateLimits.ofCommonPractice(),
                        PressureAltitude.ofFeet(planned),
                        PressureAltitude.ofFeet(planned),
                        PressureAltitude.ofFlightLevel(350),
                        Cabins.psi(0),
                        CabinPlan.Precedence.DIFFERENTIAL_FIRST);
        ExpectedCabin expected =
                ExpectedCabin.along(Cabins.climb(500), high, Cabins.cabin(planned));
        CabinCheck check = CabinCheck.of(expected);
        Answer answer = check.against(read(34000, cabin));
        says(answer, verdict, words);
        assertThat(answer.reasons().stream().anyMatch(reason -> reason.contains("warning")))
                .isEqualTo(cabin >= 10_000);
        Answer shifted = check.withWarning(Cabins.cabin(14_000)).against(read(34000, cabin));
        assertThat(shifted.verdict()).isEqualTo(Verdict.AS_EXPECTED);
        assertThat(shifted.reasons()).noneMatch(reason -> reason.contains("warning"));
        assertThat(check.withWarning(Cabins.cabin(14_000))).isNotEqualTo(check);
    }

    @Test
    @DisplayName("takes a level a little beside the ends of the climb for them, within tolerance")
    void ends() {
        CabinReading above = read(35020, 7000).withTime(Duration.ofMinutes(80));
        CabinReading below = read(34980, 7000).withTime(Duration.ofMinutes(80));
        for (CabinReading reading : List.of(above, below)) {
            Answer answer = CHECK.against(reading.withRate(rate(0)));
            assertThat(answer.verdict()).as(answer.toString()).isEqualTo(Verdict.AS_EXPECTED);
            assertThat(answer.expected().time()).isEqualTo(Duration.ofMinutes(80));
        }
        assertThat(CHECK.against(read(-10, 0)).verdict()).isEqualTo(Verdict.AS_EXPECTED);
        assertThatThrownBy(() -> CHECK.against(read(-501, 0)))
                .isInstanceOf(OutsideModelException.class);
        assertThat(CHECK.against(read(34000, 6800)).expected().aeroplane())
                .isEqualTo(PressureAltitude.ofFeet(34000));
    }

    /** 1,000 ft/min of cabin wanted, 500 allowed: at FL150 2,500 ft of the 5,000 wanted there. */
    private static CabinCheck lagging() {
        return CabinCheck.of(
                ExpectedCabin.along(
                        Cabins.climb(3000),
                        Cabins.plan(
                                CabinSchedule.proportional(
                                        PressureAltitude.ofFeet(0),
                                        Cabins.cabin(0),
                                        PressureAltitude.ofFlightLevel(350),
                                        Cabins.cabin(35000.0 / 3.0)))));
    }

    @ParameterizedTest(name = "{0} min late {1} ft at {2} ft/min: {3}")
    @CsvSource({
        "0, 2500, 500, AS_EXPECTED",
        "0, 3001, 500, DRIFTING",
        "0, 2500, 0, DRIFTING",
        "2, 2500, 500, AS_EXPECTED",
        "2, 3500, 0, AS_EXPECTED",
        "2, 3999, 500, AS_EXPECTED",
        "2, 4001, 500, DRIFTING",
        "2, 1999, 500, DRIFTING",
        "2, 3500, -201, DRIFTING",
        "60, 5499, 0, AS_EXPECTED",
        "60, 5501, 0, DRIFTING",
    })
    @DisplayName("expects a cabin to have gone on at a level that was reached or left later:")
    void levelledOff(double minutesLate, double cabin, double feetPerMinute, Verdict verdict) {
        CabinReading reading =
                read(15000, cabin)
                        .withRate(rate(feetPerMinute))
                        .withTime(Duration.ofSeconds((long) (60.0 * (5.0 + minutesLate))));
        assertThat(lagging().against(reading).verdict()).isEqualTo(verdict);
    }

    @Test
    @DisplayName("tells the span that it expects where the reading is later than the climb")
    void span() {
        CabinReading late = read(15000, 3000).withRate(rate(300)).withTime(Duration.ofMinutes(7));
        says(
                lagging().against(late.withDifferential(Cabins.psi(5.0))),
                Verdict.AS_EXPECTED,
                "3,000 ft read where 2,500 ft to 3,500 ft is expected at 15,000 ft",
                "5.00 psi read where 4.6",
                "300 ft/min read where 0 ft/min to 500 ft/min is expected");
    }

    @Test
    @DisplayName("expects the settled cabin or the arriving one at the top where no time was read")
    void untimedTop() {
        says(
                CHECK.against(read(35000, 7000).withRate(rate(0))),
                Verdict.AS_EXPECTED,
                "0 ft/min read where 0 ft/min to 400 ft/min is expected");
        assertThat(CHECK.against(read(35000, 7000).withRate(rate(400))).verdict())
                .isEqualTo(Verdict.AS_EXPECTED);
        assertThat(CHECK.against(read(35000, 7000).withRate(rate(-201))).verdict())
                .isEqualTo(Verdict.DRIFTING);
    }

    @Test
    @DisplayName("lets a differential of two altitudes pass a relief setting by the tolerance only")
    void computedDifferential() {
        CabinPlan unrelieved =
                CabinPlan.of(
                        PLAN.schedule(),
                        new DifferentialLimits(Cabins.psi(8.0), Cabins.psi(8.25), Cabins.psi(0)),
                        PLAN.rates(),
                        PLAN.departure(),
                        PLAN.landing(),
                        PLAN.cruise());
        CabinCheck check = CabinCheck.of(ExpectedCabin.along(Cabins.climb(2000), unrelieved));
        assertThat(check.against(read(0, 1)).verdict()).isEqualTo(Verdict.AS_EXPECTED);
        assertThat(check.against(read(0, 300)).verdict()).isEqualTo(Verdict.AS_EXPECTED);
        says(
                check.against(read(0, 450)),
                Verdict.BEYOND_LIMIT,
                "differential at the negative relief setting or beyond: -0.24 psi, as the");
        says(
                check.against(read(0, 0).withDifferential(Cabins.psi(-0.01))),
                Verdict.BEYOND_LIMIT,
                "differential at the negative relief setting or beyond: -0.01 psi");
        // at FL350 5,900 ft make 8.35 psi: above the setting, but not by more than 0.2 psi
        assertThat(CHECK.against(read(35000, 5900)).reasons())
                .anyMatch(reason -> reason.contains("where at most 8.00 psi is scheduled, as the"))
                .noneMatch(reason -> reason.contains("relief"));
    }

    @ParameterizedTest(name = "{0} psi: {1}")
    @CsvSource({"8.25, AS_EXPECTED", "8.44, AS_EXPECTED", "8.46, BEYOND_LIMIT"})
    @DisplayName("does not call a relief setting passed that the plan itself expects:")
    void reliefExpected(double psi, Verdict verdict) {
        ExpectedCabin fast =
                ExpectedCabin.along(
                        Cabins.climb(6000), PLAN.withPrecedence(CabinPlan.Precedence.RATE_FIRST));
        CabinState open = fast.at(PressureAltitude.ofFeet(34900));
        assertThat(open.boundBy()).isEqualTo(CabinState.BoundBy.RELIEF_SETTING);
        CabinReading reading =
                CabinReading.of(open.aeroplane(), open.cabin())
                        .withTime(open.time())
                        .withDifferential(Cabins.psi(psi));
        says(
                CabinCheck.of(fast).against(reading),
                verdict,
                "the plan expects the relief valve to be open here, at 8.25 psi");
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
        CabinReading arriving = read(35000, 7000).withTime(top.time());
        assertThat(check.against(arriving).verdict()).isNotEqualTo(Verdict.AS_EXPECTED);
        CabinReading stuck = CabinReading.of(late.top(), top.cabin());
        says(
                check.against(stuck.withTime(late.settled().time())),
                Verdict.BEYOND_LIMIT,
                " below the expected: ",
                " is scheduled, as the altitudes make it");
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
        assertThatThrownBy(() -> CHECK.against(read(35501, 7000)))
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
