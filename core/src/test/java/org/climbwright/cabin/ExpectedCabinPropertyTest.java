package org.climbwright.cabin;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.Duration;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Label;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import org.climbwright.cabin.CabinPlan.Precedence;
import org.climbwright.cabin.CabinState.BoundBy;
import org.climbwright.path.ClimbPath;
import org.climbwright.quantity.altitude.CabinAltitude;
import org.climbwright.quantity.altitude.PressureAltitude;

@Label("The cabin expected along a climb, for every plan")
class ExpectedCabinPropertyTest {
    private static final double FOOT = 0.3048;
    private static final double UP = 500 * FOOT / 60;
    private static final double DOWN = 300 * FOOT / 60;

    /**
     * Schedules of the kinds that there are, some too high for the aeroplane or too low for 8 psi.
     */
    @Provide
    Arbitrary<CabinPlan> plans() {
        Arbitrary<CabinAltitude> cabins =
                Arbitraries.doubles().between(-1000, 9000).map(CabinAltitude::ofFeet);
        Arbitrary<CabinSchedule> isobaric = cabins.map(CabinSchedule::isobaric);
        Arbitrary<CabinSchedule> held =
                Arbitraries.doubles()
                        .between(0, 9)
                        .map(Cabins::psi)
                        .map(CabinSchedule::constantDifferential);
        Arbitrary<CabinSchedule> proportional =
                Combinators.combine(cabins, cabins, Arbitraries.doubles().between(20000, 40000))
                        .as(
                                (from, to, level) ->
                                        CabinSchedule.proportional(
                                                PressureAltitude.ofFeet(500),
                                                from,
                                                PressureAltitude.ofFeet(level),
                                                to));
        Arbitrary<CabinSchedule> table =
                cabins.list()
                        .ofSize(4)
                        .map(
                                four ->
                                        CabinSchedule.table(
                                                List.of(
                                                        row(-1000, four.get(0)),
                                                        row(9000, four.get(1)),
                                                        row(20123, four.get(2)),
                                                        row(36000, four.get(3)))));
        return Combinators.combine(
                        Arbitraries.oneOf(isobaric, held, proportional, table),
                        Arbitraries.of(Precedence.class),
                        Arbitraries.doubles().between(0, 0.3))
                .as(
                        (schedule, precedence, psi) ->
                                Cabins.plan(schedule)
                                        .withPrecedence(precedence)
                                        .withPrePressurisation(Cabins.psi(psi)));
    }

    private static CabinSchedule.Row row(double feet, CabinAltitude cabin) {
        return new CabinSchedule.Row(PressureAltitude.ofFeet(feet), cabin);
    }

    @Provide
    Arbitrary<ClimbPath> climbs() {
        Arbitrary<Double> rates = Arbitraries.doubles().between(300, 6000);
        return Arbitraries.oneOf(rates.map(Cabins::climb), rates.map(Cabins::slowing));
    }

    private static double cabinM(ExpectedCabin cabin, double levelM) {
        return cabin.at(PressureAltitude.ofMetres(levelM)).cabin().inMetres();
    }

    private static double[] levels() {
        double[] levels = new double[108];
        for (int i = 0; i < levels.length; i++) {
            levels[i] = i == levels.length - 1 ? 35000 * FOOT : 99.7 * i;
        }
        return levels;
    }

    @Property(tries = 100)
    @Label("a target never passes the scheduled differential, nor the aeroplane")
    void target(@ForAll("plans") CabinPlan plan, @ForAll @DoubleRange(max = 10668) double level) {
        CabinPlan.Target target = plan.target(PressureAltitude.ofMetres(level));
        assertThat(target.differential().inPascals())
                .isLessThanOrEqualTo(plan.limits().scheduled().inPascals() + 2e-6)
                .isGreaterThanOrEqualTo(-1e-9);
        assertThat(target.cabinAltitude().inMetres()).isLessThanOrEqualTo(level);
    }

    @Property(tries = 100)
    @Label("a target has no jump, at the knee neither")
    void continuous(
            @ForAll("plans") CabinPlan plan, @ForAll @DoubleRange(max = 10667) double level) {
        double step = plan.targetM(level + 1e-6) - plan.targetM(level);
        assertThat(step).isCloseTo(0.0, within(3e-6));
    }

    @Property(tries = 60)
    @Label("halving the step changes the cabin by less than 0.01 ft")
    void halving(@ForAll("plans") CabinPlan plan, @ForAll("climbs") ClimbPath path) {
        CabinAltitude ground = plan.cabinOnGround();
        ExpectedCabin once = ExpectedCabin.along(path, plan, ground, ExpectedCabin.STEP_M);
        ExpectedCabin half = ExpectedCabin.along(path, plan, ground, ExpectedCabin.STEP_M / 2);
        for (double level : levels()) {
            assertThat(cabinM(once, level)).isCloseTo(cabinM(half, level), within(0.01 * FOOT));
        }
    }

    @Property(tries = 60)
    @Label("no faster than its limits between two levels, unless a stretch says that they gave way")
    void rates(@ForAll("plans") CabinPlan plan, @ForAll("climbs") ClimbPath path) {
        ExpectedCabin cabin = ExpectedCabin.along(path, plan);
        List<ExpectedCabin.GaveWay> gave =
                cabin.gaveWay().stream()
                        .filter(span -> span.limit() == BoundBy.RATE_LIMIT)
                        .toList();
        CabinState before = null;
        for (double level : levels()) {
            CabinState here = cabin.at(PressureAltitude.ofMetres(level));
            if (before != null) {
                double seconds = seconds(here) - seconds(before);
                double climbed = here.cabin().inMetres() - before.cabin().inMetres();
                assertThat(climbed).isGreaterThanOrEqualTo(-DOWN * seconds - 1e-5);
                if (climbed > UP * seconds + 1e-3) {
                    double from = before.aeroplane().inMetres();
                    assertThat(gave)
                            .anyMatch(
                                    span ->
                                            span.from().aeroplane().inMetres() <= level
                                                    && span.to().aeroplane().inMetres() >= from);
                }
            }
            before = here;
        }
    }

    private static double seconds(CabinState state) {
        return state.time().toNanos() / 1e9;
    }

    @Property(tries = 60)
    @Label("within the differential that its precedence keeps, and never above the aeroplane")
    void differentials(@ForAll("plans") CabinPlan plan, @ForAll("climbs") ClimbPath path) {
        ExpectedCabin cabin = ExpectedCabin.along(path, plan);
        double most =
                (plan.precedence() == Precedence.DIFFERENTIAL_FIRST
                                ? plan.limits().scheduled()
                                : plan.limits().relief())
                        .inPascals();
        boolean isToldOf =
                cabin.gaveWay().stream()
                        .anyMatch(span -> span.limit() == BoundBy.SCHEDULED_DIFFERENTIAL);
        for (double level : levels()) {
            CabinState state = cabin.at(PressureAltitude.ofMetres(level));
            double differential = state.differential().inPascals();
            assertThat(differential).isLessThanOrEqualTo(most + 2e-6).isGreaterThan(-1e-6);
            if (differential > plan.limits().scheduled().inPascals() + 0.1) {
                assertThat(isToldOf).isTrue();
            }
        }
    }

    @Property(tries = 60)
    @Label("settles to the target of the top, and stays there")
    void settles(@ForAll("plans") CabinPlan plan, @ForAll("climbs") ClimbPath path) {
        ExpectedCabin cabin = ExpectedCabin.along(path, plan);
        CabinState settled = cabin.settled();
        double target = plan.targetM(cabin.top().inMetres());
        assertThat(settled.cabin().inMetres()).isCloseTo(target, within(2e-5));
        CabinState later = cabin.at(settled.time().plus(Duration.ofHours(1)));
        assertThat(later.cabin().inMetres()).isCloseTo(target, within(2e-5));
        assertThat(later.rate().inMetresPerSecond()).isZero();
        assertThat(settled.time()).isGreaterThanOrEqualTo(cabin.at(cabin.top()).time());
    }

    @Property(tries = 60)
    @Label("at a time is the cabin at the level of that time")
    void timeAndLevel(
            @ForAll("plans") CabinPlan plan,
            @ForAll("climbs") ClimbPath path,
            @ForAll @DoubleRange(max = 35000) double feet) {
        ExpectedCabin cabin = ExpectedCabin.along(path, plan);
        CabinState byLevel = cabin.at(PressureAltitude.ofFeet(feet));
        CabinState byTime = cabin.at(byLevel.time());
        assertThat(byTime.aeroplane().inFeet()).isCloseTo(feet, within(1e-5));
        assertThat(byTime.cabin().inFeet()).isCloseTo(byLevel.cabin().inFeet(), within(1e-5));
    }

    @Property(tries = 100)
    @Label("rises with the aeroplane by a schedule in proportion or a table whose rows rise")
    void monotone(
            @ForAll @DoubleRange(min = -1000, max = 4000) double low,
            @ForAll @DoubleRange(min = 4000, max = 9000) double high,
            @ForAll @DoubleRange(max = 34000) double feet,
            @ForAll @DoubleRange(max = 1000) double more) {
        CabinSchedule proportional =
                CabinSchedule.proportional(
                        PressureAltitude.ofFeet(0),
                        CabinAltitude.ofFeet(low),
                        PressureAltitude.ofFeet(35000),
                        CabinAltitude.ofFeet(high));
        CabinSchedule table =
                CabinSchedule.table(
                        List.of(
                                row(0, CabinAltitude.ofFeet(low)),
                                row(17000, CabinAltitude.ofFeet(4000)),
                                row(35000, CabinAltitude.ofFeet(high))));
        for (CabinSchedule schedule : List.of(proportional, table)) {
            assertThat(schedule.cabinAltitudeM((feet + more) * FOOT))
                    .isGreaterThanOrEqualTo(schedule.cabinAltitudeM(feet * FOOT) - 1e-9);
        }
    }
}
