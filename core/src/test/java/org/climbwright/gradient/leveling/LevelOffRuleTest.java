package org.climbwright.gradient.leveling;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.climbwright.gradient.leveling.LevelOffRule.Bound;
import org.climbwright.quantity.altitude.AltitudeChange;
import org.climbwright.quantity.speed.PressureAltitudeRate;
import org.climbwright.testing.Table;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

@DisplayName("A rule for the last thousand feet")
class LevelOffRuleTest {
    private static LevelOffRule rule(String name) {
        return switch (name) {
            case "UNITED_STATES" -> LevelOffRule.unitedStates();
            case "ICAO_METRES" -> LevelOffRule.icaoInMetres();
            case "ICAO_FEET" -> LevelOffRule.icaoInFeet();
            case "UNITED_KINGDOM" -> LevelOffRule.unitedKingdom();
            default -> LevelOffRule.tradeFigure();
        };
    }

    private static PressureAltitudeRate rate(double value, String unit) {
        return unit.equals("m/s")
                ? PressureAltitudeRate.ofMetresPerSecond(value)
                : PressureAltitudeRate.ofFeetPerMinute(value);
    }

    private static PressureAltitudeRate fpm(double feetPerMinute) {
        return PressureAltitudeRate.ofFeetPerMinute(feetPerMinute);
    }

    private static AltitudeChange feet(double feet) {
        return AltitudeChange.ofFeet(feet);
    }

    @ParameterizedTest(name = "{0}")
    @CsvFileSource(resources = "/gradient/level-off-rules.csv", useHeadersInDisplayName = true)
    @DisplayName("is as printed, in the units in which it is printed")
    void isAsPrinted(
            String name,
            double heightToGo,
            String heightUnit,
            double largest,
            String rateUnit,
            boolean isLargestAllowed,
            double leastAdvised,
            double mostAdvised) {
        LevelOffRule rule = rule(name);
        AltitudeChange edge =
                heightUnit.equals("m")
                        ? AltitudeChange.ofMetres(heightToGo)
                        : AltitudeChange.ofFeet(heightToGo);
        PressureAltitudeRate rate = rate(largest, rateUnit);
        assertThat(rule.heightToGo()).isEqualTo(edge);
        assertThat(rule.largest()).isEqualTo(rate);
        assertThat(rule.leastAdvised()).isEqualTo(rate(leastAdvised, rateUnit));
        assertThat(rule.mostAdvised()).isEqualTo(rate(mostAdvised, rateUnit));
        assertThat(rule.isKept(edge, rate)).isEqualTo(isLargestAllowed);
        assertThat(rule.isKept(edge, rule.largestAllowed())).isTrue();
        PressureAltitudeRate more =
                PressureAltitudeRate.ofMetresPerSecond(
                        Math.nextUp(rule.largestAllowed().inMetresPerSecond()));
        assertThat(rule.isKept(edge, more)).isFalse();
    }

    @Test
    @DisplayName("has 5 rows in the table")
    void rows() {
        assertThat(Table.rows("/gradient/level-off-rules.csv")).hasSize(5);
    }

    @Test
    @DisplayName("of ICAO is not the same in metres and in feet: 1,575 ft/min and 984 ft")
    void metresAreNotFeet() {
        LevelOffRule metric = LevelOffRule.icaoInMetres();
        assertThat(metric.largest().inFeetPerMinute()).isCloseTo(1574.8, within(0.05));
        assertThat(metric.heightToGo().inFeet()).isCloseTo(984.252, within(0.0005));
        assertThat(metric.isKept(feet(500), fpm(1550))).isTrue();
        assertThat(LevelOffRule.icaoInFeet().isKept(feet(500), fpm(1550))).isFalse();
        assertThat(metric.isKept(feet(990), fpm(2000))).isTrue();
        assertThat(LevelOffRule.icaoInFeet().isKept(feet(990), fpm(2000))).isFalse();
    }

    @Test
    @DisplayName("is in force at its edge, on both sides of the level, up and down alike")
    void edges() {
        LevelOffRule rule = LevelOffRule.tradeFigure();
        assertThat(rule.isInForce(feet(1000))).isTrue();
        assertThat(rule.isInForce(feet(-1000))).isTrue();
        assertThat(rule.isInForce(feet(1000.0001))).isFalse();
        assertThat(rule.isKept(feet(1000.0001), fpm(6000))).isTrue();
        assertThat(rule.isKept(feet(-300), fpm(-1500))).isTrue();
        assertThat(rule.isKept(feet(-300), fpm(-1501))).isFalse();
    }

    @Test
    @DisplayName("takes 40 s for 1,000 ft at 1,500 ft/min")
    void fortySeconds() {
        assertThat(LevelOffRule.tradeFigure().leastTime().toMillis()).isEqualTo(40_000);
    }

    @Test
    @DisplayName("can be flown slower than it allows, but not faster")
    void flownAtMost() {
        LevelOffRule slower = LevelOffRule.unitedKingdom().flownAtMost(fpm(800));
        assertThat(slower.largestAllowed()).isEqualTo(fpm(800));
        assertThat(slower.mostAdvised()).isEqualTo(fpm(800));
        assertThat(slower.leastAdvised()).isEqualTo(fpm(500));
        assertThat(slower.heightToGo()).isEqualTo(feet(1500));
        assertThat(slower.isKept(feet(100), fpm(801))).isFalse();
        LevelOffRule open = LevelOffRule.icaoInFeet();
        assertThatThrownBy(() -> open.flownAtMost(fpm(1500)))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("a choice must keep the rule");
        assertThat(open.flownAtMost(fpm(1499)).bound()).isEqualTo(Bound.AT_MOST);
        assertThatThrownBy(() -> open.flownAtMost(fpm(0)))
                .isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    @DisplayName("that cannot be is refused")
    void refuses() {
        assertThatThrownBy(() -> own(feet(0), fpm(1500), fpm(0), fpm(1500)))
                .hasMessageContaining("needs a height to go and a rate above 0");
        assertThatThrownBy(() -> own(feet(1000), fpm(1500), fpm(600), fpm(500)))
                .hasMessageContaining("advised rates must be from 0 to the largest");
        assertThatThrownBy(() -> own(feet(1000), fpm(1500), fpm(0), fpm(1600)))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> own(feet(1000), fpm(1500), fpm(-1), fpm(1500)))
                .isInstanceOf(IllegalArgumentException.class);
    }

    private static LevelOffRule own(
            AltitudeChange edge,
            PressureAltitudeRate largest,
            PressureAltitudeRate least,
            PressureAltitudeRate most) {
        return new LevelOffRule("own", edge, largest, Bound.AT_MOST, least, most, "", "");
    }
}
