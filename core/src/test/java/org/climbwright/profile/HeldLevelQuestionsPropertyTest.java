package org.climbwright.profile;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.climbwright.profile.ProfileScene.BOTTOM;
import static org.climbwright.profile.ProfileScene.LEVEL;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Label;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.climbwright.cabin.CabinPlan;
import org.climbwright.cabin.CabinRateLimits;
import org.climbwright.cabin.CabinState;
import org.climbwright.cabin.DifferentialLimits;
import org.climbwright.cabin.ExpectedCabin;
import org.climbwright.cabin.dynamics.AltitudeHistory;
import org.climbwright.gradient.cloudtop.CloudAhead;
import org.climbwright.gradient.cloudtop.CloudTop;
import org.climbwright.gradient.leveling.LevelOffLead;
import org.climbwright.gradient.leveling.LevelOffPlan;
import org.climbwright.gradient.leveling.LevelOffRule;
import org.climbwright.gradient.restriction.AltitudeRestriction;
import org.climbwright.gradient.restriction.Level;
import org.climbwright.gradient.restriction.Restriction;
import org.climbwright.gradient.restriction.RestrictionOutcome;
import org.climbwright.gradient.restriction.Restrictions;
import org.climbwright.gradient.restriction.SpeedRestriction;
import org.climbwright.icing.IcingRule;
import org.climbwright.icing.IcingSpan;
import org.climbwright.icing.MoistureBand;
import org.climbwright.icing.MoistureForm;
import org.climbwright.icing.ProtectionAdvice;
import org.climbwright.icing.ProtectionPeriod;
import org.climbwright.icing.ProtectionPlan;
import org.climbwright.icing.VisibleMoisture;
import org.climbwright.path.ClimbPath;
import org.climbwright.path.ClimbState;
import org.climbwright.path.Side;
import org.climbwright.quantity.altitude.AltitudeChange;
import org.climbwright.quantity.altitude.AltitudeOnQnh;
import org.climbwright.quantity.altitude.GeometricAltitude;
import org.climbwright.quantity.altitude.PressureAltitude;
import org.climbwright.quantity.path.GroundDistance;
import org.climbwright.quantity.pressure.AltimeterSetting;
import org.climbwright.quantity.pressure.DifferentialPressure;
import org.climbwright.quantity.speed.CalibratedAirspeed;
import org.climbwright.quantity.speed.GeometricRate;
import org.climbwright.quantity.temperature.TotalAirTemperature;

@Label("The questions asked of any climb by thrust and drag")
class HeldLevelQuestionsPropertyTest {
    private static final AltimeterSetting QNH = AltimeterSetting.ofHectopascals(1005);

    /** All the figures that the questions find, in an order of their own. */
    private static final class Figures {
        private final List<Double> found = new ArrayList<>();

        void add(double figure) {
            assertThat(figure).isFinite();
            found.add(figure);
        }

        void add(ClimbState state) {
            add(state.pressureAltitude().inFeet());
            add(state.timeS());
        }

        void add(CabinState state) {
            add(state.cabin().inFeet());
            // a mean over a step, which a node more divides otherwise
            assertThat(state.rate().inFeetPerMinute()).isFinite();
            // within a step of 5 m a level is a straight line and may be 0.2 ft off, which outside
            // is 0.7 Pa at most: that counts as 0.05 here
            add(state.differential().inPascals() / 14.0);
        }
    }

    private static Figures ask(ClimbPath path, long seed) {
        Random random = new Random(seed);
        Figures figures = new Figures();
        double bottom = path.bottom().inMetres();
        double top = path.top().inMetres();
        PressureAltitude middle =
                PressureAltitude.ofMetres(bottom + random.nextDouble() * (top - bottom));
        ClimbState end = path.at(path.top(), Side.ABOVE);
        cabin(figures, path, middle, random.nextBoolean());
        icing(figures, path, 5000 + random.nextInt(15000), 10.0 - random.nextInt(15));
        ClimbState within = path.at(Duration.ofNanos((long) (0.6e9 * end.timeS())));
        double miles = random.nextDouble() * 150.0;
        restrictions(figures, path, within, miles, middle);
        cloud(figures, path, random.nextDouble() * end.distance().orElseThrow().inMetres());
        if (bottom < top) {
            PressureAltitude level = middle.inMetres() > bottom ? middle : path.top();
            for (PressureAltitude stop : List.of(level, path.top())) {
                LevelOffPlan plan =
                        LevelOffPlan.along(
                                path, stop, LevelOffRule.tradeFigure(), LevelOffLead.tenPercent());
                figures.add(plan.beginsReducing().inFeet());
                figures.add(plan.timeInForce().toNanos() / 1e9);
                figures.add(plan.arrival().inFeetPerMinute());
            }
        }
        return figures;
    }

    private static DifferentialPressure psi(double psi) {
        return DifferentialPressure.ofPoundsPerSquareInch(psi);
    }

    private static void cabin(
            Figures figures, ClimbPath path, PressureAltitude middle, boolean isRateFirst) {
        CabinPlan plan =
                CabinPlan.forCruise(
                                new DifferentialLimits(psi(8.0), psi(8.5), psi(-0.5)),
                                CabinRateLimits.ofCommonPractice(),
                                BOTTOM,
                                PressureAltitude.ofFeet(500),
                                LEVEL,
                                AltitudeChange.ofFeet(500))
                        .withPrecedence(
                                isRateFirst
                                        ? CabinPlan.Precedence.RATE_FIRST
                                        : CabinPlan.Precedence.DIFFERENTIAL_FIRST);
        ExpectedCabin expected = ExpectedCabin.along(path, plan);
        figures.add(expected.at(middle));
        figures.add(expected.at(path.top()));
        figures.add(expected.settled());
        AltitudeHistory history = AltitudeHistory.along(path);
        double length = path.at(path.top(), Side.ABOVE).timeS();
        assertThat(history.lengthS()).isCloseTo(length, within(1e-9));
        for (int i = 0; i <= 40; i++) {
            Duration time = Duration.ofNanos((long) (1e9 * length * i / 40));
            CabinState state = expected.at(time);
            figures.add(state);
            double there = path.at(time).pressureAltitude().inFeet();
            // A straight line from step to step, of 5 m here and of 100 ft there: from what is
            // between it departs by an eighth of the step times what part of itself the rate
            // changes by in it. That is a tenth in 5 m at most, and half in 100 ft, as where the
            // airspeed gives.
            assertThat(state.aeroplane().inFeet()).isCloseTo(there, within(0.2));
            assertThat(history.at(time).inFeet()).isCloseTo(there, within(100.0 / 8.0 / 2.0));
        }
        // where it is worst is known to a step of 5 m, in which the cabin moves a little too
        figures.add(expected.gaveWay().size());
        expected.gaveWay().forEach(gave -> assertThat(gave.worst().cabin().inFeet()).isFinite());
    }

    private static void icing(Figures figures, ClimbPath path, double feet, double celsius) {
        MoistureBand band =
                new MoistureBand(
                        MoistureForm.values()[0],
                        PressureAltitude.ofFeet(feet),
                        PressureAltitude.ofFeet(feet + 5000));
        IcingRule rule =
                IcingRule.engine(VisibleMoisture.inBands(List.of(band)))
                        .withWarmestTotal(TotalAirTemperature.ofCelsius(celsius));
        ProtectionAdvice advice =
                ProtectionAdvice.along(
                        path,
                        ProtectionPlan.antiIce(
                                rule, Duration.ofSeconds(90), Duration.ofSeconds(60)));
        for (IcingSpan span : advice.spans()) {
            figures.add(span.entry());
            figures.add(span.exit());
            assertThat(span.duration()).isGreaterThanOrEqualTo(Duration.ZERO);
        }
        for (ProtectionPeriod period : advice.periods()) {
            figures.add(period.on());
            figures.add(period.off());
            if (!period.isOnBeforeClimb()) {
                assertThat(period.spans().get(0).entry().timeS() - period.on().timeS())
                        .isCloseTo(90.0, within(1e-6));
            }
        }
    }

    private static void restrictions(
            Figures figures,
            ClimbPath path,
            ClimbState within,
            double miles,
            PressureAltitude middle) {
        SpeedRestriction slow =
                SpeedRestriction.below(
                        AltitudeOnQnh.ofFeet(10000), CalibratedAirspeed.ofKnots(250));
        Restrictions found =
                Restrictions.along(
                        path,
                        QNH,
                        List.of(
                                Restriction.of(
                                        "BEECH",
                                        GroundDistance.ofNauticalMiles(miles),
                                        AltitudeRestriction.atOrAbove(Level.of(middle)))));
        RestrictionOutcome outcome = found.outcomes().get(0);
        assertThat(outcome.predicted().isPresent())
                .isEqualTo(outcome.verdict() != RestrictionOutcome.Verdict.NOT_KNOWN);
        outcome.altitudeMargin().ifPresent(margin -> figures.add(margin.inFeet()));
        outcome.required()
                .ifPresent(
                        required -> {
                            figures.add(required.gradient().inPercent());
                            required.instrumentRate()
                                    .ifPresent(rate -> figures.add(rate.inFeetPerMinute()));
                        });
        assertThat(found.from(within).isKnown()).isTrue();
        slow.leastMargin(path, QNH).ifPresent(margin -> figures.add(margin.inKnots()));
    }

    private static void cloud(Figures figures, ClimbPath path, double nearM) {
        CloudTop found =
                CloudTop.along(
                        path,
                        new CloudAhead(
                                GeometricAltitude.ofFeet(3000),
                                GeometricAltitude.ofFeet(9000),
                                GroundDistance.ofMetres(nearM),
                                GroundDistance.ofMetres(nearM + 20000.0),
                                GeometricRate.ofFeetPerMinute(400),
                                GroundDistance.ofMetres(500)));
        found.overCloud()
                .ifPresent(
                        margin -> {
                            figures.add(margin.least().inFeet());
                            figures.add(margin.most().inFeet());
                            assertThat(margin.least()).isLessThanOrEqualTo(margin.asGiven());
                        });
        assertThat(found.reasons()).isNotEmpty();
    }

    @Property(tries = 150)
    @Label("have finite answers that agree with where the aeroplane is at each time")
    void answered(@ForAll long seed) {
        ask(new RandomClimbs(seed).climb().between(BOTTOM, LEVEL), seed);
    }

    @Property(tries = 60)
    @Label("have the answers of the climb without it where a level is held for nearly no time")
    void nearlyNoTime(
            @ForAll long seed, @ForAll @DoubleRange(min = 2000, max = 30000) double feet) {
        RandomClimbs random = new RandomClimbs(seed);
        AeroplaneClimb without = random.climb();
        List<HeldLevel> levels = new ArrayList<>(without.programme().heldLevels());
        levels.add(HeldLevel.during(PressureAltitude.ofFeet(feet), Duration.ofNanos(1000)));
        AeroplaneClimb held =
                new AeroplaneClimb(
                        without.aeroplane(),
                        without.mass(),
                        without.programme().withHeldLevels(levels),
                        without.air());
        List<Double> one = ask(without.between(BOTTOM, LEVEL), seed).found;
        List<Double> other = ask(held.between(BOTTOM, LEVEL), seed).found;
        assertThat(other).hasSameSizeAs(one);
        for (int i = 0; i < one.size(); i++) {
            assertThat(other.get(i))
                    .as("figure %d", i)
                    .isCloseTo(one.get(i), within(0.05 + 1e-5 * Math.abs(one.get(i))));
        }
    }
}
