package org.climbwright.briefing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.climbwright.briefing.plan.PlannedCloud;
import org.climbwright.briefing.plan.PlannedLevelOff;
import org.climbwright.gradient.cloudtop.CloudAhead;
import org.climbwright.gradient.leveling.LevelOffLead;
import org.climbwright.gradient.leveling.LevelOffRule;
import org.climbwright.gradient.restriction.AltitudeRestriction;
import org.climbwright.gradient.restriction.Level;
import org.climbwright.gradient.restriction.Restriction;
import org.climbwright.icing.IcingAnswer;
import org.climbwright.icing.IcingSpan;
import org.climbwright.icing.ProtectionPeriod;
import org.climbwright.quantity.altitude.GeometricAltitude;
import org.climbwright.quantity.altitude.PressureAltitude;
import org.climbwright.quantity.path.GroundDistance;
import org.climbwright.quantity.speed.GeometricRate;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("What to expect and what to do on a climb, and by when")
class ExpectationsTest {
    private final ClimbBriefing briefing =
            ClimbBriefing.of(
                    BriefingScene.byThrust(30000)
                            .withCabin(BriefingScene.cabin(8.0))
                            .withLevelOff(
                                    new PlannedLevelOff(
                                            LevelOffRule.tradeFigure(), LevelOffLead.tenPercent())),
                    BriefingScene.AIR);

    private final List<Expectation> items = briefing.expectations();

    private Expectation first(String what) {
        return items.stream().filter(item -> item.what().contains(what)).findFirst().orElseThrow();
    }

    @Test
    @DisplayName("is numbered from 1 in the order in which it is due")
    void order() {
        assertThat(items)
                .extracting(Expectation::number)
                .containsExactlyElementsOf(IntStream.rangeClosed(1, items.size()).boxed().toList());
        assertThat(items).extracting(item -> item.due().timeS()).isSorted();
        assertThat(items.get(0).what()).startsWith("climb begins");
        assertThat(items.get(items.size() - 1).what()).startsWith("climb ends");
    }

    @Test
    @DisplayName("has protection on by its lead before the conditions, and off where they end")
    void protection() {
        ProtectionPeriod period = briefing.iceProtection().get(0).periods().get(0);
        assertThat(period.isOnBeforeClimb()).isTrue();
        Expectation on = first("engine anti-ice on before the climb");
        assertThat(on.kind()).isEqualTo(Expectation.Kind.DO);
        assertThat(on.latest()).isEmpty();
        assertThat(on.at()).isEqualTo(period.spans().get(0).entry());
        assertThat(on.figure()).contains("total air temperature").contains("relative humidity");
        assertThat(on.reason()).contains("common practice, no source");
        assertThat(first("engine anti-ice off").at()).isEqualTo(period.off());
    }

    @Test
    @DisplayName("has a lead that fits before the conditions as the latest point")
    void latest() {
        ClimbBriefing later =
                ClimbBriefing.of(
                        BriefingScene.byThrust(30000)
                                .withTurbulence(
                                        BriefingTurbulenceTest.plan(1000.0, Duration.ofSeconds(5))),
                        BriefingTurbulenceTest.UNSTABLE);
        Expectation belts =
                later.expectations().stream()
                        .filter(item -> item.what().equals("consider the seat-belt sign"))
                        .findFirst()
                        .orElseThrow();
        assertThat(belts.at().timeS() - belts.due().timeS()).isCloseTo(5.0, within(1e-6));
        assertThat(belts.figure()).contains("convective cloud");
        assertThat(belts.reason()).contains("none of them says off");
    }

    @Test
    @DisplayName(
            "has changes of speed, the transition, 0 °C levels, checks with figures, the level-off")
    void all() {
        assertThat(first("accelerate").kind()).isEqualTo(Expectation.Kind.DO);
        assertThat(first("hold the Mach number").figure()).contains("M0.700");
        assertThat(first("set the altimeter to 1013.25 hPa").figure()).contains("5000");
        assertThat(items.stream().filter(item -> item.what().startsWith("0 °C"))).hasSize(3);
        Expectation check = first("figures at 20000 ft");
        assertThat(check.kind()).isEqualTo(Expectation.Kind.CHECK);
        assertThat(check.figure()).contains("cabin at ").contains("psi").contains("fuel ");
        assertThat(first("over invented point").figure()).contains("fuel ");
        assertThat(first("reduce the rate").figure()).contains("ft to go");
        assertThat(items.toString()).doesNotContain("-0.0 °C");
    }

    @Test
    @DisplayName("says a condition that cannot be told as that, never as none")
    void notKnown() {
        Expectation unknown = first("consider engine anti-ice: conditions cannot be told");
        assertThat(unknown.reason()).contains("not known is not \"no icing\"");
    }

    @Test
    @DisplayName("of a table of rates has checks without fuel")
    void byRates() {
        List<Expectation> known =
                ClimbBriefing.of(BriefingScene.plan(30000), BriefingScene.AIR).expectations();
        assertThat(known).anyMatch(item -> item.what().startsWith("figures at"));
        assertThat(known).noneMatch(item -> item.figure().contains("fuel"));
    }

    /** A cloud from 30 to 40 NM, with its base and top about where the climb is there. */
    private static ClimbBriefing towards(double baseFt, double topFt) {
        return ClimbBriefing.of(
                BriefingScene.byThrust(30000)
                        .withTurbulence(BriefingTurbulenceTest.plan(1000.0, Duration.ofSeconds(60)))
                        .withCloud(
                                new PlannedCloud(
                                        new CloudAhead(
                                                GeometricAltitude.ofFeet(baseFt),
                                                GeometricAltitude.ofFeet(topFt),
                                                GroundDistance.ofNauticalMiles(30),
                                                GroundDistance.ofNauticalMiles(40),
                                                GeometricRate.ofFeetPerMinute(0),
                                                GroundDistance.ofNauticalMiles(0)),
                                        Optional.empty())),
                BriefingScene.AIR);
    }

    @Test
    @DisplayName("counts a cloud that the climb enters as visible moisture, and asks for belts")
    void entersCloud() {
        ClimbBriefing into = towards(10000, 35000);
        IcingSpan inCloud =
                into.iceProtection().get(0).spans(IcingAnswer.CONDITIONS).stream()
                        .filter(span -> span.reason().contains("in the cloud ahead"))
                        .findFirst()
                        .orElseThrow();
        assertThat(inCloud.entry().distance().orElseThrow().inNauticalMiles())
                .isCloseTo(30.0, within(1e-3));
        assertThat(inCloud.exit().distance().orElseThrow().inNauticalMiles())
                .isCloseTo(40.0, within(1e-3));
        Expectation belts =
                into.expectations().stream()
                        .filter(item -> item.what().startsWith("enters the cloud ahead"))
                        .findFirst()
                        .orElseThrow();
        assertThat(belts.kind()).isEqualTo(Expectation.Kind.DO);
        assertThat(belts.at().timeS() - belts.due().timeS()).isCloseTo(60.0, within(1e-6));
        assertThat(belts.figure()).contains(" ft below its top");
        assertThat(into.expectations())
                .anyMatch(
                        item ->
                                item.what().equals("engine anti-ice on")
                                        && item.figure().contains("in the cloud ahead"));
    }

    @Test
    @DisplayName("does not count a cloud that the climb tops or passes below")
    void topsCloud() {
        for (ClimbBriefing past : List.of(towards(2000, 5000), towards(40000, 45000))) {
            assertThat(past.iceProtection().get(0).spans())
                    .noneMatch(span -> span.reason().contains("in the cloud ahead"));
        }
        assertThat(towards(2000, 5000).expectations())
                .anyMatch(
                        item ->
                                item.what().equals("over the cloud ahead, with no clearance given")
                                        && item.figure().contains(" ft over its top"));
    }

    @Test
    @DisplayName("has a restriction that is missed where the climb begins, and at its point")
    void missed() {
        GroundDistance thirty = GroundDistance.ofNauticalMiles(30);
        double feet = briefing.path().over(thirty).orElseThrow().pressureAltitude().inFeet();
        List<Expectation> told =
                ClimbBriefing.of(
                                BriefingScene.byThrust(30000)
                                        .withRestrictions(
                                                List.of(
                                                        above("thin", thirty, feet - 20.0),
                                                        above("high", thirty, feet + 500.0))),
                                BriefingScene.AIR)
                        .expectations();
        assertThat(told.stream().filter(item -> item.what().startsWith("plan for")))
                .extracting(Expectation::what)
                .containsExactly("plan for high, missed as planned");
        assertThat(told)
                .anyMatch(
                        item ->
                                item.what().equals("thin: met")
                                        && item.figure()
                                                .startsWith("margin +20 ft; missed with 1000 kg"))
                .anyMatch(
                        item ->
                                item.what().equals("high: missed")
                                        && item.figure().equals("margin -500 ft"));
    }

    private static Restriction above(String name, GroundDistance distance, double feet) {
        return Restriction.of(
                name,
                distance,
                AltitudeRestriction.atOrAbove(Level.of(PressureAltitude.ofFeet(feet))));
    }

    @Test
    @DisplayName("has the rate reduced for a level that a restriction holds on the way")
    void levelOnTheWay() {
        ClimbBriefing held =
                ClimbBriefing.of(
                        BriefingScene.byThrust(30000)
                                .withRestrictions(
                                        List.of(
                                                Restriction.of(
                                                        "invented",
                                                        GroundDistance.ofNauticalMiles(60),
                                                        AltitudeRestriction.atOrBelow(
                                                                Level.of(
                                                                        PressureAltitude
                                                                                .ofFlightLevel(
                                                                                        150))))))
                                .withLevelOff(
                                        new PlannedLevelOff(
                                                LevelOffRule.tradeFigure(),
                                                LevelOffLead.tenPercent())),
                        BriefingScene.AIR);
        assertThat(held.levelOffsOnTheWay()).hasSize(1);
        assertThat(held.expectations())
                .extracting(Expectation::what)
                .containsSubsequence("reduce the rate for FL150", "reduce the rate for FL300");
    }
}
