package org.climbwright.profile;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.climbwright.profile.ProfileScene.BOTTOM;
import static org.climbwright.profile.ProfileScene.LEVEL;
import static org.climbwright.profile.ProfileScene.climb;
import static org.climbwright.profile.ProfileScene.profile;
import static org.climbwright.profile.ProfileScene.programme;
import static org.climbwright.profile.ProfileScene.speeds;

import java.time.Duration;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.climbwright.atmosphere.Atmosphere;
import org.climbwright.atmosphere.wind.Winds;
import org.climbwright.cabin.CabinCheck;
import org.climbwright.cabin.CabinHistory;
import org.climbwright.cabin.CabinPlan;
import org.climbwright.cabin.CabinRateLimits;
import org.climbwright.cabin.CabinReading;
import org.climbwright.cabin.CabinSchedule;
import org.climbwright.cabin.CabinState;
import org.climbwright.cabin.DifferentialLimits;
import org.climbwright.cabin.ExpectedCabin;
import org.climbwright.cabin.dynamics.AltitudeHistory;
import org.climbwright.cabin.dynamics.CabinAir;
import org.climbwright.cabin.dynamics.CabinFailureStudy;
import org.climbwright.cabin.dynamics.CabinHull;
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
import org.climbwright.quantity.altitude.CabinAltitude;
import org.climbwright.quantity.altitude.GeometricAltitude;
import org.climbwright.quantity.altitude.PressureAltitude;
import org.climbwright.quantity.path.GroundDistance;
import org.climbwright.quantity.pressure.AltimeterSetting;
import org.climbwright.quantity.pressure.DifferentialPressure;
import org.climbwright.quantity.speed.GeometricRate;
import org.climbwright.quantity.speed.PressureAltitudeRate;
import org.climbwright.quantity.temperature.TotalAirTemperature;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** A climb that holds FL180 for ten minutes, and the questions that are asked of climbs. */
@DisplayName("A level held on the way")
class HeldLevelQuestionsTest {
    private static final PressureAltitude FL180 = level(180);
    private static final ClimbPath PATH = holding(Duration.ofMinutes(10));
    private static final ClimbState ARRIVING = PATH.at(FL180, Side.BELOW);
    private static final ClimbState LEAVING = PATH.at(FL180, Side.ABOVE);
    private static final AltimeterSetting QNH = AltimeterSetting.ofHectopascals(1013.25);

    /** A climb that cannot begin. */
    private static final ClimbPath NOWHERE =
            climb(400000, programme(), ProfileScene.calm()).between(BOTTOM, LEVEL);

    private static PressureAltitude level(double flightLevel) {
        return PressureAltitude.ofFlightLevel(flightLevel);
    }

    private static ClimbProfile holding(Duration time) {
        return profile(programme().withHeldLevels(List.of(HeldLevel.during(FL180, time))));
    }

    private static double metres(ClimbState state) {
        return state.distance().orElseThrow().inMetres();
    }

    private static Duration after(ClimbState state, double seconds) {
        return Duration.ofNanos(Math.round((state.timeS() + seconds) * 1e9));
    }

    /** A path of which no more is known than a path must tell; it may be cut at a level. */
    record Plain(ClimbPath path, PressureAltitude top) implements ClimbPath {
        @Override
        public PressureAltitude bottom() {
            return path.bottom();
        }

        @Override
        public String endsBecause() {
            return "cut there";
        }

        @Override
        public boolean reachesItsLevel() {
            return true;
        }

        @Override
        public ClimbState at(PressureAltitude altitude, Side side) {
            return path.at(altitude, side);
        }

        @Override
        public double[] bendsM() {
            double end = top.inMetres();
            return Arrays.stream(path.bendsM()).filter(level -> level < end).toArray();
        }
    }

    private static final ClimbPath ENDS_HOLDING = new Plain(PATH, FL180);

    @Nested
    @DisplayName("is in a path")
    class InPaths {
        @Test
        @DisplayName("where its time jumps, whether the path says so itself or is asked")
        void heldLevels() {
            assertThat(PATH.heldLevelsM()).containsExactly(FL180.inMetres());
            assertThat(new Plain(PATH, PATH.top()).heldLevelsM()).contains(FL180.inMetres());
            assertThat(ENDS_HOLDING.heldLevelsM()).contains(FL180.inMetres());
            assertThat(profile(programme()).heldLevelsM()).isEmpty();
            assertThat(NOWHERE.heldLevelsM()).isEmpty();
        }

        @Test
        @DisplayName("found by time and by distance, also by what every path can tell")
        void byTimeAndDistance() {
            ClimbPath plain = new Plain(PATH, PATH.top());
            for (double seconds : new double[] {-60, 0, 1, 200, 599, 600, 700}) {
                ClimbState own = PATH.at(after(ARRIVING, seconds));
                ClimbState byTime = plain.at(after(ARRIVING, seconds));
                ClimbState byDistance = plain.at(own.distance().orElseThrow());
                for (ClimbState other : List.of(byTime, byDistance)) {
                    assertThat(other.pressureAltitude().inMetres())
                            .isCloseTo(own.pressureAltitude().inMetres(), within(1e-5));
                    assertThat(other.timeS()).isCloseTo(own.timeS(), within(1e-5));
                    assertThat(metres(other)).isCloseTo(metres(own), within(1e-3));
                    // between arriving and leaving as if fuel were burnt evenly
                    assertThat(other.mass().inKilograms())
                            .isCloseTo(own.mass().inKilograms(), within(0.2));
                }
            }
            assertThat(ENDS_HOLDING.at(after(ARRIVING, 300)).pressureAltitude()).isEqualTo(FL180);
            assertThat(ENDS_HOLDING.at(LEAVING.distance().orElseThrow()).timeS())
                    .isCloseTo(LEAVING.timeS(), within(1e-6));
        }

        @Test
        @DisplayName("over a place, as far as distances are known")
        void over() {
            double middle = 0.5 * (metres(ARRIVING) + metres(LEAVING));
            ClimbPath unknown =
                    climb(
                                    58000,
                                    programme()
                                            .withHeldLevels(
                                                    List.of(
                                                            HeldLevel.during(
                                                                    FL180,
                                                                    Duration.ofMinutes(10)))),
                                    ProfileScene.air(Atmosphere.standard(), knownBelow(50000)))
                            .between(BOTTOM, LEVEL);
            for (ClimbPath path : List.of(PATH, unknown, new Plain(unknown, unknown.top()))) {
                ClimbState there = path.over(GroundDistance.ofMetres(middle)).orElseThrow();
                assertThat(there.pressureAltitude()).isEqualTo(FL180);
                assertThat(there.timeS())
                        .isCloseTo(0.5 * (ARRIVING.timeS() + LEAVING.timeS()), within(1e-2));
                double early = 0.5 * metres(ARRIVING);
                assertThat(path.over(GroundDistance.ofMetres(early)).orElseThrow().timeS())
                        .isCloseTo(PATH.at(GroundDistance.ofMetres(early)).timeS(), within(1e-5));
            }
            assertThat(unknown.over(PATH.at(level(250)).distance().orElseThrow())).isEmpty();
            assertThat(PATH.over(GroundDistance.ofNauticalMiles(2000))).isEmpty();
        }

        @Test
        @DisplayName("that reaches its level, or does not and is of no length")
        void reaches() {
            assertThat(PATH.reachesItsLevel()).isTrue();
            assertThat(NOWHERE.reachesItsLevel()).isFalse();
            assertThat(climb(72000, programme(), ProfileScene.calm()).between(BOTTOM, level(500)))
                    .returns(false, ClimbPath::reachesItsLevel);
        }
    }

    private static Winds knownBelow(double leastPa) {
        return new Winds() {
            @Override
            public double eastward(double pressurePa) {
                return pressurePa < leastPa ? Double.NaN : 0.0;
            }

            @Override
            public double northward(double pressurePa) {
                return eastward(pressurePa);
            }

            @Override
            public boolean covers(double pressurePa) {
                return pressurePa >= leastPa;
            }

            @Override
            public double[] bendsPa() {
                return new double[] {leastPa};
            }
        };
    }

    private static DifferentialPressure psi(double psi) {
        return DifferentialPressure.ofPoundsPerSquareInch(psi);
    }

    /** A cabin that goes to 7,000 ft, wherever the aeroplane is above it. */
    private static CabinPlan cabinPlan() {
        return CabinPlan.of(
                CabinSchedule.isobaric(CabinAltitude.ofFeet(7000)),
                new DifferentialLimits(psi(8.0), psi(8.5), psi(-0.5)),
                CabinRateLimits.ofCommonPractice(),
                BOTTOM,
                PressureAltitude.ofFeet(500),
                LEVEL);
    }

    @Nested
    @DisplayName("has a cabin")
    class Cabin {
        @Test
        @DisplayName("that goes on to its target at its limit, and then stays")
        void goesOn() {
            ExpectedCabin expected = ExpectedCabin.along(PATH, cabinPlan());
            CabinState arriving = expected.at(ARRIVING.time());
            double limit = cabinPlan().rates().up().inFeetPerMinute();
            double first = arriving.cabin().inFeet();
            assertThat(first).isBetween(2000.0, 6500.0);
            for (int seconds = 0; seconds < 600; seconds += 7) {
                CabinState state = expected.at(after(ARRIVING, seconds));
                double byHand = Math.min(7000.0, first + limit * seconds / 60.0);
                assertThat(state.cabin().inFeet()).isCloseTo(byHand, within(0.01));
                assertThat(state.aeroplane()).isEqualTo(FL180);
                assertThat(state.rate().inFeetPerMinute())
                        .isCloseTo(byHand < 7000.0 ? limit : 0.0, within(0.01));
            }
            CabinState leaving = expected.at(FL180);
            assertThat(leaving.time()).isEqualTo(LEAVING.time());
            assertThat(leaving.cabin().inFeet()).isCloseTo(7000.0, within(1e-6));
        }

        @Test
        @DisplayName("that below the hold is the one of the climb without it")
        void belowTheHold() {
            ExpectedCabin expected = ExpectedCabin.along(PATH, cabinPlan());
            ExpectedCabin without = ExpectedCabin.along(profile(programme()), cabinPlan());
            for (double flightLevel : new double[] {20, 100, 179, 179.9}) {
                assertThat(expected.at(level(flightLevel)).cabin().inFeet())
                        .isCloseTo(without.at(level(flightLevel)).cabin().inFeet(), within(0.01));
            }
        }

        @ParameterizedTest(name = "{0}")
        @EnumSource(CabinPlan.Precedence.class)
        @DisplayName("that is the stepped one within 1 ft")
        void stepped(CabinPlan.Precedence precedence) {
            CabinPlan plan = cabinPlan().withPrePressurisation(psi(0.1)).withPrecedence(precedence);
            ExpectedCabin expected = ExpectedCabin.along(PATH, plan);
            CabinHistory stepped =
                    new CabinFailureStudy(
                                    new CabinHull(
                                            140.0,
                                            297.15,
                                            0.9,
                                            290.0,
                                            6e-4,
                                            0.03,
                                            CabinAir.ISOTHERMAL),
                                    plan,
                                    AltitudeHistory.along(PATH).hold(Duration.ofMinutes(5)),
                                    Atmosphere.standard())
                            .run(Duration.ofMillis(100));
            for (int i = 0; i < stepped.size(); i += 50) {
                CabinState state =
                        expected.at(Duration.ofNanos(Math.round(stepped.timeS(i) * 1e9)));
                assertThat(stepped.cabinAltitudeM(i) / 0.3048)
                        .as("at %s", state.time())
                        .isCloseTo(state.cabin().inFeet(), within(1.0));
            }
        }

        @Test
        @DisplayName("in a history that stays at its level")
        void plateau() {
            for (ClimbPath path : List.of(PATH, ENDS_HOLDING)) {
                AltitudeHistory history = AltitudeHistory.along(path);
                for (int seconds = 0; seconds <= 600; seconds += 50) {
                    assertThat(history.pressureAltitudeM(ARRIVING.timeS() + seconds))
                            .isCloseTo(FL180.inMetres(), within(1e-9));
                }
            }
            assertThat(AltitudeHistory.along(ENDS_HOLDING).lengthS()).isEqualTo(LEAVING.timeS());
            assertThat(AltitudeHistory.along(NOWHERE).lengthS()).isZero();
        }

        @Test
        @DisplayName("whose readings are expected from arriving to leaving, or at their time")
        void readings() {
            ExpectedCabin expected = ExpectedCabin.along(PATH, cabinPlan());
            CabinCheck check = CabinCheck.of(expected);
            CabinAltitude middle = expected.at(after(ARRIVING, 150)).cabin();
            CabinReading reading = CabinReading.of(FL180, middle);
            assertThat(check.against(reading).verdict()).isEqualTo(CabinCheck.Verdict.AS_EXPECTED);
            assertThat(check.against(reading.withTime(after(ARRIVING, 150))).verdict())
                    .isEqualTo(CabinCheck.Verdict.AS_EXPECTED);
            assertThat(check.against(reading.withTime(after(ARRIVING, 595))).verdict())
                    .isNotEqualTo(CabinCheck.Verdict.AS_EXPECTED);
        }

        @Test
        @DisplayName("that goes on at the top where the climb ends while it holds")
        void atTheTop() {
            ExpectedCabin expected = ExpectedCabin.along(ENDS_HOLDING, cabinPlan());
            ExpectedCabin whole = ExpectedCabin.along(PATH, cabinPlan());
            assertThat(expected.at(after(ARRIVING, 100)).cabin().inFeet())
                    .isCloseTo(whole.at(after(ARRIVING, 100)).cabin().inFeet(), within(1e-6));
            assertThat(expected.at(FL180).time()).isEqualTo(ARRIVING.time());
            assertThat(expected.settled().cabin().inFeet()).isCloseTo(7000.0, within(0.01));
        }

        @Test
        @DisplayName("that goes on where a climb of no length stays")
        void noLength() {
            ExpectedCabin expected = ExpectedCabin.along(NOWHERE, cabinPlan());
            assertThat(expected.at(BOTTOM).cabin().inFeet()).isCloseTo(1500.0, within(0.01));
            assertThat(expected.at(Duration.ofMinutes(1)).aeroplane()).isEqualTo(BOTTOM);
            assertThat(expected.settled().time()).isEqualTo(Duration.ZERO);
            assertThat(expected.gaveWay()).isEmpty();
            assertThat(CabinCheck.of(expected).levels()).isNotEmpty();
        }
    }

    private static IcingRule bands(double... flightLevels) {
        MoistureBand band =
                new MoistureBand(
                        MoistureForm.values()[0], level(flightLevels[0]), level(flightLevels[1]));
        return IcingRule.engine(VisibleMoisture.inBands(List.of(band)));
    }

    private static ProtectionPeriod period(IcingRule rule, Duration lead) {
        return ProtectionAdvice.along(PATH, ProtectionPlan.antiIce(rule, lead, Duration.ZERO))
                .periods()
                .get(0);
    }

    @Nested
    @DisplayName("counts in icing conditions")
    class Icing {
        @Test
        @DisplayName("that begin, end or go on there")
        void spans() {
            IcingSpan begins = IcingSpan.along(PATH, bands(180, 200)).get(0);
            assertThat(begins.entry().timeS()).isEqualTo(ARRIVING.timeS());
            IcingSpan ends = IcingSpan.along(PATH, bands(160, 180)).get(0);
            assertThat(ends.exit().timeS()).isEqualTo(LEAVING.timeS());
            IcingSpan goesOn = IcingSpan.along(PATH, bands(160, 200)).get(0);
            assertThat(goesOn.duration())
                    .isEqualTo(PATH.at(level(200)).time().minus(PATH.at(level(160)).time()));
            assertThat(IcingSpan.along(ENDS_HOLDING, bands(160, 200)).get(0).exit().timeS())
                    .isEqualTo(LEAVING.timeS());
        }

        @Test
        @DisplayName("that end while speed is gathered in level flight, at that time")
        void whileSpeedIsGathered() {
            ClimbPath path =
                    climb(58000, ClimbProgramme.of(speeds(), 0.0), ProfileScene.warmer(10.0))
                            .between(BOTTOM, LEVEL);
            PressureAltitude fl100 = level(100);
            double slow = kelvins(path.at(fl100, Side.BELOW));
            double fast = kelvins(path.at(fl100, Side.ABOVE));
            assertThat(fast).isGreaterThan(slow + 1.0);
            double between = 0.5 * (slow + fast);
            IcingRule rule =
                    bands(95, 105).withWarmestTotal(TotalAirTemperature.ofKelvins(between));
            List<IcingSpan> spans = IcingSpan.along(path, rule);
            IcingSpan span = spans.get(0);
            assertThat(span.top()).isEqualTo(fl100);
            assertThat(span.exit().timeS())
                    .isStrictlyBetween(
                            path.at(fl100, Side.BELOW).timeS(), path.at(fl100, Side.ABOVE).timeS());
            assertThat(kelvins(span.exit())).isCloseTo(between, within(1e-3));
            if (spans.size() > 1) {
                // it is cold enough again a little higher
                ProtectionAdvice advice =
                        ProtectionAdvice.along(path, ProtectionPlan.deIce(rule, Duration.ZERO));
                assertThat(advice.periods()).hasSize(2);
            }
        }

        private double kelvins(ClimbState state) {
            return state.totalAirTemperature().inKelvins();
        }

        @Test
        @DisplayName("ahead of which the lead is counted on the clock")
        void lead() {
            ProtectionPeriod at = period(bands(180, 200), Duration.ofSeconds(60));
            assertThat(at.on().timeS()).isCloseTo(ARRIVING.timeS() - 60.0, within(1e-6));
            assertThat(at.on().pressureAltitude()).isLessThan(FL180);
            ProtectionPeriod above = period(bands(185, 200), Duration.ofMinutes(5));
            assertThat(above.on().pressureAltitude()).isEqualTo(FL180);
            assertThat(above.on().timeS())
                    .isCloseTo(PATH.at(level(185)).timeS() - 300.0, within(1e-3));
            assertThat(above.duration().toMillis() / 1000.0)
                    .isCloseTo(
                            300.0 + PATH.at(level(200)).timeS() - PATH.at(level(185)).timeS(),
                            within(0.01));
        }

        @Test
        @DisplayName("where a climb of no length is in them, for no time")
        void noLength() {
            IcingRule rule = bands(0, 100).withWarmestTotal(TotalAirTemperature.ofCelsius(60));
            IcingSpan span = IcingSpan.along(NOWHERE, rule).get(0);
            assertThat(span.duration()).isZero();
            assertThat(span.bottom()).isEqualTo(BOTTOM);
        }
    }

    private static Restriction beech(double metres) {
        return Restriction.of(
                "BEECH",
                GroundDistance.ofMetres(metres),
                AltitudeRestriction.atOrAbove(Level.of(level(200))));
    }

    @Nested
    @DisplayName("over which a restriction")
    class OverPoints {
        @Test
        @DisplayName("has that level, and the time to it from the bottom and from within")
        void inTheHold() {
            double middle = 0.5 * (metres(ARRIVING) + metres(LEAVING));
            Restrictions found = Restrictions.along(PATH, QNH, List.of(beech(middle)));
            RestrictionOutcome outcome = found.outcomes().get(0);
            assertThat(outcome.predicted()).contains(FL180);
            double seconds = ARRIVING.timeS() + 300.0;
            assertThat(rate(outcome.required().orElseThrow().instrumentRate()))
                    .isCloseTo(18500.0 / seconds * 60.0, within(1e-2));
            ClimbState within = PATH.at(after(ARRIVING, 200));
            assertThat(rate(found.from(within).governing().orElseThrow().instrumentRate()))
                    .isCloseTo(2000.0 / 100.0 * 60.0, within(1e-2));
        }

        private double rate(Optional<PressureAltitudeRate> rate) {
            return rate.orElseThrow().inFeetPerMinute();
        }

        @Test
        @DisplayName("is known to the end of a climb that ends while it holds, and after it")
        void endsHolding() {
            for (double ahead : new double[] {-1000.0, 0.0, 1000.0}) {
                RestrictionOutcome outcome =
                        Restrictions.along(
                                        ENDS_HOLDING, QNH, List.of(beech(metres(LEAVING) + ahead)))
                                .outcomes()
                                .get(0);
                assertThat(outcome.predicted()).contains(FL180);
            }
        }

        @Test
        @DisplayName("is not known beyond a climb of no length, with its reason")
        void noLength() {
            RestrictionOutcome outcome =
                    Restrictions.along(NOWHERE, QNH, List.of(beech(10000))).outcomes().get(0);
            assertThat(outcome.verdict()).isEqualTo(RestrictionOutcome.Verdict.NOT_KNOWN);
            assertThat(outcome.reasons().get(0)).contains("ceiling reached");
        }
    }

    @Nested
    @DisplayName("before a level-off")
    class LevelOffs {
        private final LevelOffRule rule = LevelOffRule.tradeFigure();
        private final LevelOffLead lead = LevelOffLead.tenPercent();

        private LevelOffPlan plan(Duration time, double flightLevel) {
            return LevelOffPlan.along(holding(time), level(flightLevel), rule, lead);
        }

        @Test
        @DisplayName("is where the climb to it begins anew")
        void beginsAnew() {
            LevelOffPlan plan = plan(Duration.ofMinutes(10), 185);
            assertThat(plan.beginsReducing().inFeet()).isLessThanOrEqualTo(500.0);
            assertThat(plan.remarks())
                    .anyMatch(remark -> remark.startsWith("the climb goes on from a level held"));
            LevelOffPlan there = plan(Duration.ofMinutes(10), 180);
            assertThat(there.arrival())
                    .isEqualTo(LevelOffPlan.along(PATH, FL180, rule, lead).arrival());
            assertThat(there.timeInForce()).isLessThan(Duration.ofMinutes(2));
        }

        @Test
        @DisplayName("is passed where it is held for less than levelling off takes")
        void isPassed() {
            LevelOffPlan without = LevelOffPlan.along(profile(programme()), level(185), rule, lead);
            LevelOffPlan passed = plan(Duration.ofSeconds(1), 185);
            assertThat(passed.beginsReducing().inFeet())
                    .isCloseTo(without.beginsReducing().inFeet(), within(0.5));
            assertThat(passed.beginsReducing().inFeet()).isGreaterThan(500.0);
        }

        @Test
        @DisplayName("refuses a climb of no length in one sentence")
        void noLength() {
            assertThatThrownBy(() -> LevelOffPlan.along(NOWHERE, BOTTOM, rule, lead))
                    .isInstanceOf(IllegalArgumentException.class)
                    .hasMessageStartingWith(
                            "a climb of no length has no level to stop at, and this one is over"
                                    + " at");
        }
    }

    private static CloudAhead cloud(double nearM, double farM) {
        return new CloudAhead(
                GeometricAltitude.ofFeet(5000),
                GeometricAltitude.ofFeet(12000),
                GroundDistance.ofMetres(nearM),
                GroundDistance.ofMetres(farM),
                GeometricRate.ofFeetPerMinute(500),
                GroundDistance.ofMetres(100.0));
    }

    @Nested
    @DisplayName("over a cloud")
    class OverClouds {
        private double margin(double atM) {
            ClimbState state = PATH.at(GroundDistance.ofMetres(atM));
            return state.air().geometricAltitude().orElseThrow().inFeet()
                    - 12000.0
                    - 500.0 / 60.0 * state.timeS();
        }

        private void isLeast(double nearM, double farM, double byHand) {
            CloudTop found = CloudTop.along(PATH, cloud(nearM, farM));
            assertThat(found.overCloud().orElseThrow().asGiven().inFeet())
                    .isCloseTo(byHand, within(1e-3));
            assertThat(found.nearEdge().orElseThrow().asGiven().inFeet())
                    .isCloseTo(margin(nearM), within(1e-3));
        }

        @Test
        @DisplayName("lets it grow: the margin is least as the level is left, or at the far edge")
        void grows() {
            double arriving = metres(ARRIVING);
            double leaving = metres(LEAVING);
            double middle = 0.5 * (arriving + leaving);
            isLeast(arriving - 5000.0, leaving + 5000.0, margin(leaving));
            isLeast(arriving - 5000.0, middle, margin(middle));
            isLeast(middle, leaving + 5000.0, margin(leaving));
            isLeast(arriving + 5000.0, middle, margin(middle));
            assertThat(margin(leaving)).isLessThan(margin(arriving) - 4000.0);
        }

        @Test
        @DisplayName("is looked at to the end of a climb that ends while it holds")
        void endsHolding() {
            double middle = 0.5 * (metres(ARRIVING) + metres(LEAVING));
            CloudTop found = CloudTop.along(ENDS_HOLDING, cloud(20000.0, middle));
            assertThat(found.answer()).isEqualTo(CloudTop.Answer.NO_VERDICT);
            assertThat(found.overCloud().orElseThrow().asGiven().inFeet())
                    .isCloseTo(Math.min(margin(20000.0), margin(middle)), within(1e-2));
        }

        @Test
        @DisplayName("cannot be told from a climb of no length")
        void noLength() {
            CloudTop found =
                    CloudTop.along(NOWHERE, cloud(5000.0, 8000.0), AltitudeChange.ofFeet(1000));
            assertThat(found.answer()).isEqualTo(CloudTop.Answer.CANNOT_BE_TOLD);
        }
    }
}
