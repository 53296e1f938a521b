package org.climbwright.gradient.leveling;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.time.Duration;
import java.util.List;
import org.climbwright.atmosphere.AirState;
import org.climbwright.atmosphere.Atmosphere;
import org.climbwright.atmosphere.wind.Winds;
import org.climbwright.gradient.leveling.LevelOffPlan.Action;
import org.climbwright.gradient.leveling.LevelOffPlan.Stretch;
import org.climbwright.path.ClimbPath;
import org.climbwright.path.ClimbRates;
import org.climbwright.path.Scene;
import org.climbwright.quantity.OutsideModelException;
import org.climbwright.quantity.altitude.PressureAltitude;
import org.climbwright.quantity.speed.PressureAltitudeRate;
import org.climbwright.quantity.temperature.IsaDeviation;
import org.climbwright.testing.Streams;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

@DisplayName("The plan of a level-off")
class LevelOffPlanTest {
    private static final LevelOffRule RULE = LevelOffRule.tradeFigure();
    private static final LevelOffLead TEN = LevelOffLead.tenPercent();
    private static final PressureAltitude FL300 = PressureAltitude.ofFlightLevel(300);

    private static PressureAltitudeRate fpm(double feetPerMinute) {
        return PressureAltitudeRate.ofFeetPerMinute(feetPerMinute);
    }

    private static double seconds(Duration time) {
        return time.toNanos() / 1e9;
    }

    private static ClimbPath path(ClimbRates.Row... rows) {
        return Scene.path(Scene.rates(rows), Atmosphere.standard(), Winds.calm());
    }

    @Test
    @DisplayName(
            "from 3,000 ft/min reduces at 1,225 ft to go, and is in the last 1,000 ft for 46 s")
    void reducesBeforeTheEdge() {
        // by hand: 3000 to 1500 ft/min at 3000/12 ft/min each s takes 6 s and 6 * 2250 / 60 ft;
        // 850 ft at 25 ft/s and 12 s; without: 925 ft at 50 ft/s and 12 s
        LevelOffPlan plan = LevelOffPlan.of(fpm(3000), RULE, TEN);
        assertThat(plan.isReducedForRule()).isTrue();
        assertThat(plan.beginsReducing().inFeet()).isCloseTo(1225.0, within(1e-9));
        assertThat(plan.rateInForce()).isEqualTo(fpm(1500));
        assertThat(plan.beginsLevelling().inFeet()).isCloseTo(150.0, within(1e-9));
        assertThat(seconds(plan.timeInForce())).isCloseTo(46.0, within(1e-8));
        assertThat(seconds(plan.cost())).isCloseTo(52.0 - 30.5, within(1e-8));
        assertThat(plan.levelWhereReducing()).isEmpty();
        assertThat(plan.stretches())
                .extracting(Stretch::action)
                .containsExactly(Action.REDUCING, Action.KEEPING, Action.LEVELLING);
    }

    @Test
    @DisplayName("in a descent is that of the climb with its rates negative")
    void descends() {
        LevelOffPlan down = LevelOffPlan.of(fpm(-3000), RULE, TEN);
        LevelOffPlan up = LevelOffPlan.of(fpm(3000), RULE, TEN);
        assertThat(down.beginsReducing()).isEqualTo(up.beginsReducing());
        assertThat(down.rateInForce()).isEqualTo(fpm(-1500));
        assertThat(down.cost()).isEqualTo(up.cost());
    }

    @Test
    @DisplayName("of a rate within the rule costs nothing and begins at the lead")
    void costsNothing() {
        LevelOffPlan plan = LevelOffPlan.of(fpm(1500), RULE, TEN);
        assertThat(plan.isReducedForRule()).isFalse();
        assertThat(plan.cost()).isZero();
        assertThat(plan.beginsReducing().inFeet()).isCloseTo(150.0, within(1e-9));
        assertThat(plan.stretches()).hasSize(2);
        assertThat(seconds(plan.timeInForce())).isCloseTo(46.0, within(1e-8));
        LevelOffPlan open = LevelOffPlan.of(fpm(1500), LevelOffRule.icaoInFeet(), TEN);
        assertThat(open.isReducedForRule()).isTrue();
        assertThat(open.rateInForce()).isLessThan(fpm(1500));
        assertThat(open.rule().isKept(open.rule().heightToGo(), open.rateInForce())).isTrue();
    }

    @Test
    @DisplayName("leaves a rate alone that a gentle level-off has brought down by the edge")
    void gentle() {
        LevelOffLead gentle = LevelOffLead.ofDeceleration(0.09);
        LevelOffPlan plan = LevelOffPlan.of(fpm(3000), RULE, gentle);
        assertThat(plan.isReducedForRule()).isFalse();
        assertThat(plan.beginsReducing().inFeet()).isGreaterThan(4000.0);
        assertThat(plan.stretches()).hasSize(1);
        // from the edge at sqrt(2 a h), and so level after sqrt(2 h / a)
        assertThat(seconds(plan.timeInForce()))
                .isCloseTo(Math.sqrt(2.0 * 304.8 / 0.09), within(1e-8));
    }

    @Test
    @DisplayName("of a lead longer than the edge has the rule's rate where the level-off begins")
    void longLead() {
        LevelOffPlan plan = LevelOffPlan.of(fpm(20000), RULE, LevelOffLead.ofPercentOfRate(80.0));
        assertThat(plan.beginsLevelling().inFeet()).isCloseTo(1200.0, within(1e-9));
        assertThat(plan.stretches())
                .extracting(Stretch::action)
                .containsExactly(Action.REDUCING, Action.LEVELLING);
        assertThat(plan.cost()).isPositive();
    }

    @Test
    @DisplayName("by a true deceleration begins earlier in warm air, by 10 % no earlier")
    void warmAir() {
        AirState warm =
                Atmosphere.withDeviationAtEachPressure(IsaDeviation.ofKelvins(20)).at(FL300);
        LevelOffLead byG = LevelOffLead.ofLoadFactorChange(0.05);
        double standard = LevelOffPlan.of(fpm(1500), RULE, byG).beginsReducing().inFeet();
        double inWarm = LevelOffPlan.of(fpm(1500), RULE, byG, warm).beginsReducing().inFeet();
        double expected = warm.temperatureK() / (warm.temperatureK() - 20.0);
        assertThat(inWarm / standard).isCloseTo(expected, within(0.004)); // gravity at FL300
        assertThat(LevelOffPlan.of(fpm(3000), RULE, TEN, warm).beginsReducing().inFeet())
                .isCloseTo(1225.0, within(1e-9));
    }

    @Test
    @DisplayName("along a climb of one rate is that of the rate, and knows its level")
    void alongOneRate() {
        LevelOffPlan plan =
                LevelOffPlan.along(path(row(0, 3000), row(45000, 3000)), FL300, RULE, TEN);
        assertThat(plan.beginsReducing().inFeet()).isCloseTo(1225.0, within(1e-5));
        assertThat(plan.levelWhereReducing().orElseThrow().inFeet())
                .isCloseTo(28775.0, within(1e-5));
        assertThat(plan.remarks()).isEmpty();
    }

    private static ClimbRates.Row row(double feet, double feetPerMinute) {
        return Scene.row(feet, feetPerMinute);
    }

    @Test
    @DisplayName("along a climb that slows takes the rate where the reduction begins")
    void alongAClimbThatSlows() {
        ClimbPath path = path(row(0, 4000), row(45000, 1000));
        LevelOffPlan plan = LevelOffPlan.along(path, FL300, RULE, TEN);
        PressureAltitude begins = plan.levelWhereReducing().orElseThrow();
        assertThat(path.at(begins).pressureAltitudeRate().inFeetPerMinute())
                .isCloseTo(plan.arrival().inFeetPerMinute(), within(1e-6));
        assertThat(plan.isReducedForRule()).isTrue();
        LevelOffPlan high = LevelOffPlan.along(path, PressureAltitude.ofFeet(35000), RULE, TEN);
        assertThat(high.isReducedForRule()).isTrue();
    }

    @Test
    @DisplayName("along a climb says where it is slower, faster within the edge, or too near")
    void remarks() {
        ClimbPath slow = path(row(0, 3000), row(29500, 3000), row(29500, 800), row(45000, 800));
        assertThat(LevelOffPlan.along(slow, FL300, RULE, TEN).remarks())
                .singleElement()
                .asString()
                .contains("takes longer than told");
        ClimbPath fast = path(row(0, 1000), row(29500, 1000), row(29500, 3000), row(45000, 3000));
        LevelOffPlan held = LevelOffPlan.along(fast, FL300, RULE, TEN);
        assertThat(held.remarks()).singleElement().asString().contains("is held to the rule there");
        assertThat(held.rateInForce().inFeetPerMinute()).isCloseTo(1500.0, within(1e-6));
        ClimbPath late = path(row(0, 3000), row(45000, 3000));
        assertThat(LevelOffPlan.along(late, PressureAltitude.ofFeet(2100), RULE, TEN).remarks())
                .anySatisfy(remark -> assertThat(remark).contains("too near to the level"));
    }

    @Test
    @DisplayName("is refused for no rate and for a level that the climb does not pass")
    void refuses() {
        assertThatThrownBy(() -> LevelOffPlan.of(fpm(0), RULE, TEN))
                .isInstanceOf(OutsideModelException.class)
                .hasMessageContaining("rate of arrival must be from");
        ClimbPath path = path(row(0, 3000), row(45000, 3000));
        for (double feet : new double[] {1000, 35001}) {
            assertThatThrownBy(
                            () ->
                                    LevelOffPlan.along(
                                            path, PressureAltitude.ofFeet(feet), RULE, TEN))
                    .isInstanceOf(OutsideModelException.class)
                    .hasMessageContaining("level to stop at");
        }
    }

    @Test
    @DisplayName("travels as bytes and arrives equal, its parts too")
    void travels() throws IOException {
        LevelOffPlan plan =
                LevelOffPlan.along(path(row(0, 3000), row(45000, 900)), FL300, RULE, TEN);
        for (Object value : List.of(plan, plan.rule(), plan.lead(), plan.stretches().get(0))) {
            Object arrived = Streams.roundTrip((java.io.Serializable) value);
            assertThat(arrived)
                    .isEqualTo(value)
                    .hasSameHashCodeAs(value)
                    .hasToString(value.toString());
        }
        assertThat(plan).isNotEqualTo(LevelOffPlan.of(fpm(3000), RULE, TEN));
    }

    @Test
    @DisplayName("has no more to go than the climb, where that begins within the edge of the rule")
    void beginsWithinTheEdge() {
        ClimbPath path =
                Scene.climb(Scene.constantRate(2900), Atmosphere.standard(), Winds.calm())
                        .between(PressureAltitude.ofFeet(1000), PressureAltitude.ofFeet(1200));
        LevelOffPlan plan =
                LevelOffPlan.along(
                        path,
                        PressureAltitude.ofFeet(1200),
                        LevelOffRule.tradeFigure(),
                        LevelOffLead.tenPercent());
        assertThat(plan.stretches().get(0).from().inFeet()).isCloseTo(200.0, within(1e-6));
        // 50 ft at 1,500 ft/min, and 12 s
        assertThat(plan.timeInForce().toNanos() / 1e9).isCloseTo(14.0, within(0.1));
        assertThat(plan.remarks()).anyMatch(remark -> remark.contains("begins within the edge"));
    }

    @ParameterizedTest(name = "{0} ft/min, {1} %")
    @CsvSource({"2, 10", "40, 200", "1500, 0.1"})
    @DisplayName("has a lead for any rate and share")
    void anyRate(double feetPerMinute, double percent) {
        LevelOffPlan plan =
                LevelOffPlan.of(
                        PressureAltitudeRate.ofFeetPerMinute(feetPerMinute),
                        LevelOffRule.tradeFigure(),
                        LevelOffLead.ofPercentOfRate(percent));
        assertThat(plan.beginsLevelling().inFeet())
                .isCloseTo(feetPerMinute * percent / 100.0, within(1e-9));
    }
}
