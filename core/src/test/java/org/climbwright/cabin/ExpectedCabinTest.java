package org.climbwright.cabin;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.time.Duration;
import java.util.List;
import org.climbwright.atmosphere.StandardAir;
import org.climbwright.cabin.CabinPlan.Precedence;
import org.climbwright.cabin.CabinState.BoundBy;
import org.climbwright.cabin.ExpectedCabin.GaveWay;
import org.climbwright.quantity.OutsideModelException;
import org.climbwright.quantity.altitude.CabinAltitude;
import org.climbwright.quantity.altitude.PressureAltitude;
import org.climbwright.testing.Streams;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

@DisplayName("The cabin expected along a climb")
class ExpectedCabinTest {
    private static final CabinPlan ISOBARIC =
            Cabins.plan(CabinSchedule.isobaric(Cabins.cabin(2000)));
    private static final CabinPlan PROPORTIONAL =
            Cabins.plan(
                    CabinSchedule.proportional(
                            PressureAltitude.ofFeet(0),
                            Cabins.cabin(0),
                            PressureAltitude.ofFlightLevel(350),
                            Cabins.cabin(7000)));

    private static CabinState at(ExpectedCabin cabin, double feet) {
        return cabin.at(PressureAltitude.ofFeet(feet));
    }

    private static double feetPerMinute(CabinState state) {
        return state.rate().inFeetPerMinute();
    }

    @Test
    @DisplayName("climbs a fifth of the aeroplane's rate on a schedule of 7,000 ft in 35,000")
    void inProportion() {
        ExpectedCabin cabin = ExpectedCabin.along(Cabins.climb(2000), PROPORTIONAL);
        CabinState half = at(cabin, 17500);
        assertThat(half.cabin().inFeet()).isCloseTo(3500, within(1e-6));
        assertThat(feetPerMinute(half)).isCloseTo(400, within(1e-4));
        assertThat(half.time()).isEqualTo(Duration.ofSeconds(525));
        assertThat(half.boundBy()).isEqualTo(BoundBy.SCHEDULE);
        assertThat(cabin.gaveWay()).isEmpty();
        assertThat(cabin.settled().time()).isEqualTo(Duration.ofSeconds(1050));
    }

    @Test
    @DisplayName("climbs at its limit to an isobaric altitude: 2,000 ft after 4 minutes")
    void towardsTheSchedule() {
        ExpectedCabin cabin = ExpectedCabin.along(Cabins.climb(1500), ISOBARIC);
        CabinState early = cabin.at(Duration.ofMinutes(2));
        assertThat(early.cabin().inFeet()).isCloseTo(1000, within(1e-6));
        assertThat(early.aeroplane().inFeet()).isCloseTo(3000, within(1e-6));
        assertThat(feetPerMinute(early)).isCloseTo(500, within(1e-6));
        assertThat(early.boundBy()).isEqualTo(BoundBy.RATE_LIMIT);

        CabinState there = cabin.at(Duration.ofMinutes(5));
        assertThat(there.cabin().inFeet()).isCloseTo(2000, within(1e-6));
        assertThat(feetPerMinute(there)).isZero();
        assertThat(there.boundBy()).isEqualTo(BoundBy.SCHEDULE);
    }

    @Test
    @DisplayName("begins below the field by the differential on the ground, and not elsewhere")
    void prePressurisation() {
        ExpectedCabin cabin =
                ExpectedCabin.along(
                        Cabins.climb(1500), ISOBARIC.withPrePressurisation(Cabins.psi(0.1)));
        CabinState start = at(cabin, 0);
        assertThat(start.cabin().inFeet()).isCloseTo(-187.782, within(0.0005));
        assertThat(start.differential().inPoundsPerSquareInch()).isCloseTo(0.1, within(1e-9));
        assertThat(cabin.at(Duration.ofMinutes(1)).cabin().inFeet())
                .isCloseTo(312.218, within(0.0005));
    }

    @Test
    @DisplayName("descends from a high field at its limit down")
    void highField() {
        ExpectedCabin cabin =
                ExpectedCabin.along(Cabins.climb(1500), ISOBARIC, CabinAltitude.ofFeet(0));
        assertThat(feetPerMinute(at(cabin, 0))).isCloseTo(500, within(1e-6));

        CabinPlan down = Cabins.plan(CabinSchedule.isobaric(Cabins.cabin(-900)));
        ExpectedCabin descending = ExpectedCabin.along(Cabins.climb(1500), down);
        CabinState later = descending.at(Duration.ofMinutes(2));
        assertThat(later.cabin().inFeet()).isCloseTo(-600, within(1e-6));
        assertThat(feetPerMinute(later)).isCloseTo(-300, within(1e-6));
        assertThat(later.boundBy()).isEqualTo(BoundBy.RATE_LIMIT);
        assertThat(descending.at(Duration.ofMinutes(4)).cabin().inFeet())
                .isCloseTo(-900, within(1e-6));
    }

    @Test
    @DisplayName("is with the aeroplane below an isobaric altitude, if it may climb as fast")
    void withTheAeroplane() {
        ExpectedCabin cabin = ExpectedCabin.along(Cabins.climb(400), ISOBARIC);
        CabinState low = at(cabin, 1000);
        assertThat(low.boundBy()).isEqualTo(BoundBy.AEROPLANE);
        assertThat(low.cabin().inFeet()).isCloseTo(1000, within(1e-9));
        assertThat(feetPerMinute(low)).isCloseTo(400, within(1e-4));
    }

    @Nested
    @DisplayName("where 3,000 ft/min above the knee ask for more than 500 ft/min in the cabin,")
    class Conflict {
        /** dH(cabin) = dH(aeroplane) rho(aeroplane) / rho(cabin), at the knee of 24,127.5 ft. */
        private static final double RATE_AT_THE_KNEE = 3000 * 0.464 / 0.943;

        @Test
        @DisplayName("keeps the differential, and tells the rate that it costs")
        void differentialFirst() {
            ExpectedCabin cabin = ExpectedCabin.along(Cabins.climb(3000), ISOBARIC);
            assertThat(cabin.gaveWay()).hasSize(1);
            GaveWay gave = cabin.gaveWay().get(0);
            assertThat(gave.limit()).isEqualTo(BoundBy.RATE_LIMIT);
            assertThat(gave.kept()).isEqualTo(BoundBy.SCHEDULED_DIFFERENTIAL);
            assertThat(gave.from().aeroplane().inFeet()).isCloseTo(24127.5, within(0.1));
            assertThat(gave.to().aeroplane().inFeet()).isCloseTo(35000, within(1e-6));
            assertThat(feetPerMinute(gave.worst())).isCloseTo(RATE_AT_THE_KNEE, within(10.0));
            assertThat(gave.inWords())
                    .startsWith("cabin rate 1,4")
                    .contains("where the limit is 500 ft/min, from 24,127 ft to 35,000 ft")
                    .endsWith(": the scheduled differential is kept");
            CabinState top = at(cabin, 35000);
            assertThat(top.differential().inPoundsPerSquareInch()).isCloseTo(8.0, within(1e-9));
            assertThat(top.boundBy()).isEqualTo(BoundBy.SCHEDULED_DIFFERENTIAL);
            assertThat(cabin.settled()).isEqualTo(top);
        }

        @Test
        @DisplayName("or keeps the rate up to the relief setting, where both give way")
        void rateFirst() {
            ExpectedCabin cabin =
                    ExpectedCabin.along(
                            Cabins.climb(3000), ISOBARIC.withPrecedence(Precedence.RATE_FIRST));
            List<GaveWay> gave = cabin.gaveWay();
            assertThat(gave)
                    .extracting(GaveWay::limit)
                    .containsExactly(BoundBy.SCHEDULED_DIFFERENTIAL, BoundBy.RATE_LIMIT);
            assertThat(gave)
                    .extracting(GaveWay::kept)
                    .containsExactly(BoundBy.RATE_LIMIT, BoundBy.RELIEF_SETTING);
            assertThat(gave.get(0).from().aeroplane().inFeet()).isCloseTo(24127.5, within(0.1));
            assertThat(gave.get(0).inWords())
                    .startsWith("differential 8.25 psi where 8.00 psi is scheduled")
                    .endsWith(": the rate limit is kept");
            assertThat(gave.get(1).inWords()).endsWith(": the relief valve opens");
            CabinState top = at(cabin, 35000);
            assertThat(top.boundBy()).isEqualTo(BoundBy.RELIEF_SETTING);
            assertThat(top.differential().inPoundsPerSquareInch()).isCloseTo(8.25, within(1e-9));
        }

        @Test
        @DisplayName("goes on climbing in level flight until the differential is the scheduled one")
        void afterTheTop() {
            ExpectedCabin cabin =
                    ExpectedCabin.along(
                            Cabins.climb(3000), ISOBARIC.withPrecedence(Precedence.RATE_FIRST));
            CabinState top = at(cabin, 35000);
            CabinState settled = cabin.settled();
            double way = settled.cabin().inFeet() - top.cabin().inFeet();
            assertThat(way).isGreaterThan(500);
            assertThat(settled.cabin().inFeet()).isCloseTo(6726.58, within(0.01));
            assertThat((settled.time().toMillis() - top.time().toMillis()) / 60e3)
                    .isCloseTo(way / 500.0, within(1e-4));
            CabinState between = cabin.at(top.time().plusSeconds(60));
            assertThat(between.cabin().inFeet() - top.cabin().inFeet())
                    .isCloseTo(500, within(1e-6));
            assertThat(between.boundBy()).isEqualTo(BoundBy.RATE_LIMIT);
            assertThat(feetPerMinute(between)).isCloseTo(500, within(1e-9));
            CabinState later = cabin.at(settled.time().plusHours(1));
            assertThat(later.cabin()).isEqualTo(settled.cabin());
            assertThat(feetPerMinute(later)).isZero();
            assertThat(cabin.gaveWay().get(0).to().time()).isEqualTo(settled.time());
        }
    }

    /**
     * Told a second time in pressures and in hundredths of a second: what the cabin wants is the
     * lesser of two pressures, what it gets is bounded by two rates of altitude. The first plan is
     * the one that a step without its meeting point had a metre off.
     */
    @ParameterizedTest(name = "{0} psi, {1} psi on the ground, {2} ft/min, {3}")
    @CsvSource({
        "0.92, 0.19, 6000, RATE_FIRST",
        "0.92, 0.19, 6000, DIFFERENTIAL_FIRST",
        "0.01, 0.00, 5000, DIFFERENTIAL_FIRST",
        "8.50, 0.10, 3500, RATE_FIRST",
        "8.50, 0.10, 3500, DIFFERENTIAL_FIRST",
        "7.00, 0.10, 1500, DIFFERENTIAL_FIRST",
    })
    @DisplayName("is within 0.1 ft what small steps of time through pressures come to")
    void bySmallSteps(double psi, double ground, double climb, Precedence precedence) {
        CabinPlan plan =
                Cabins.plan(CabinSchedule.constantDifferential(Cabins.psi(psi)))
                        .withPrePressurisation(Cabins.psi(ground))
                        .withPrecedence(precedence);
        ExpectedCabin cabin = ExpectedCabin.along(Cabins.climb(climb), plan);
        double most = Cabins.psi(precedence == Precedence.RATE_FIRST ? 8.25 : 8.0).inPascals();
        double wanted = Cabins.psi(Math.min(psi, 8.0)).inPascals();
        double step = 0.01;
        double altitude = plan.cabinOnGround().inMetres();
        for (int n = 1; n * step * climb / 60 < 35000; n++) {
            double outside = StandardAir.pressureFromAltitude(n * step * climb / 60 * 0.3048);
            double target = StandardAir.altitudeFromPressure(outside + wanted);
            altitude =
                    Math.min(
                            Math.max(target, altitude - 300 * 0.3048 / 60 * step),
                            altitude + 500 * 0.3048 / 60 * step);
            if (StandardAir.pressureFromAltitude(altitude) > outside + most) {
                altitude = StandardAir.altitudeFromPressure(outside + most);
            }
            if (n % 500 == 0) {
                assertThat(cabin.at(Duration.ofMillis(n * 10L)).cabin().inFeet())
                        .isCloseTo(altitude / 0.3048, within(0.1));
            }
        }
    }

    @Test
    @DisplayName(
            "refuses a level off the climb, a time before it and a schedule that ends below it")
    void refuses() {
        ExpectedCabin cabin = ExpectedCabin.along(Cabins.climb(1500), ISOBARIC);
        assertThatThrownBy(() -> at(cabin, 35001))
                .isInstanceOf(OutsideModelException.class)
                .hasMessageContaining("the climb is in between");
        assertThatThrownBy(() -> cabin.at(Duration.ofNanos(-1)))
                .isInstanceOf(OutsideModelException.class);
        CabinPlan shorter =
                Cabins.plan(
                        CabinSchedule.table(
                                List.of(
                                        new CabinSchedule.Row(
                                                PressureAltitude.ofFeet(0), Cabins.cabin(0)),
                                        new CabinSchedule.Row(
                                                PressureAltitude.ofFeet(34999),
                                                Cabins.cabin(7000)))));
        assertThatThrownBy(() -> ExpectedCabin.along(Cabins.climb(1500), shorter))
                .isInstanceOf(OutsideModelException.class)
                .hasMessageContaining("the table of the schedule ends there");
    }

    @Test
    @DisplayName("asked for its ends by level and by time is the same, and a bend belongs upwards")
    void ends() {
        ExpectedCabin cabin = ExpectedCabin.along(Cabins.climb(1500), PROPORTIONAL);
        assertThat(cabin.at(Duration.ZERO)).isEqualTo(cabin.at(cabin.bottom()));
        CabinState top = cabin.at(cabin.top());
        assertThat(cabin.at(top.time()).cabin().inFeet())
                .isCloseTo(top.cabin().inFeet(), within(1e-6));
        assertThat(feetPerMinute(top)).isCloseTo(300, within(1e-4));
        assertThat(feetPerMinute(cabin.at(top.time().plusSeconds(1)))).isZero();
    }

    @Test
    @DisplayName("written to a stream of objects is read back the same")
    void streams() throws Exception {
        ExpectedCabin cabin =
                ExpectedCabin.along(
                        Cabins.climb(3000), ISOBARIC.withPrecedence(Precedence.RATE_FIRST));
        assertThat(Streams.roundTrip(cabin)).isEqualTo(cabin).hasSameHashCodeAs(cabin);
        assertThat(cabin.toString()).startsWith("isobaric at 2,000 ft, ");
        for (GaveWay gave : cabin.gaveWay()) {
            assertThat(Streams.roundTrip(gave)).isEqualTo(gave);
        }
    }
}
