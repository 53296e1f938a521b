package org.climbwright.briefing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.time.Duration;
import java.util.List;
import java.util.Optional;
import org.climbwright.briefing.plan.PlannedTurbulence;
import org.climbwright.quantity.OutsideModelException;
import org.climbwright.sounding.Sounding;
import org.climbwright.turbulence.convection.ParcelAscent;
import org.climbwright.turbulence.convection.SeatBeltAdvice;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("What speaks for turbulence in a briefing")
class BriefingTurbulenceTest {
    /** Invented air of summer: moist below, cold above, so that a parcel rises by itself. */
    static final Sounding UNSTABLE =
            Sounding.of(
                    "invented",
                    "",
                    List.of(
                            BriefingScene.level(1000, 100, 28, 22, 5),
                            BriefingScene.level(950, 560, 24, 21, 6),
                            BriefingScene.level(850, 1550, 16, 12, 8),
                            BriefingScene.level(700, 3180, 5, -5, 10),
                            BriefingScene.level(500, 5850, -15, -30, 12),
                            BriefingScene.level(300, 9500, -44, -60, 15),
                            BriefingScene.level(200, 12150, -56, -70, 18),
                            BriefingScene.level(150, 13980, -58, -75, 18)));

    static PlannedTurbulence plan(double shear, Duration lead) {
        return new PlannedTurbulence(500.0, shear, lead, Optional.empty());
    }

    private static TurbulenceBriefing along(Sounding air, double shear, Duration lead) {
        return ClimbBriefing.of(
                        BriefingScene.byThrust(30000).withTurbulence(plan(shear, lead)), air)
                .turbulence()
                .orElseThrow();
    }

    @Test
    @DisplayName("is the shear of each 1,000 ft: 5 to 8 m/s in 430 m of the lowest layer")
    void shear() {
        TurbulenceBriefing calm = along(BriefingScene.AIR, 1000.0, Duration.ZERO);
        // the wind is linear in ln p there; by hand 3 m/s in 430 m are 4.13 kn in 1,000 ft
        double lowest = calm.shear().get(0).orElseThrow().inKnotsPer1000Ft();
        assertThat(lowest).isCloseTo(3.0 / 430.0 * 304.8 * 3600.0 / 1852.0, within(0.15));
        assertThat(calm.spans()).isEmpty();
        assertThat(calm.advice().conclusion())
                .isNotEqualTo(SeatBeltAdvice.Conclusion.REASON_TO_FASTEN);
    }

    @Test
    @DisplayName("has layers that reach the threshold and touch as one stretch, with the strongest")
    void spans() {
        TurbulenceBriefing found = along(BriefingScene.AIR, 4.0, Duration.ofSeconds(5));
        double strongest = 0.0;
        TurbulenceBriefing.Span first = found.spans().get(0);
        for (var layer : found.shear()) {
            if (layer.isKnown()
                    && layer.orElseThrow()
                                    .upper()
                                    .pressureAltitude()
                                    .compareTo(first.exit().pressureAltitude())
                            <= 0) {
                strongest = Math.max(strongest, layer.orElseThrow().inKnotsPer1000Ft());
            }
        }
        assertThat(first.reasons()).hasSize(1);
        assertThat(first.reasons().get(0)).contains(String.format("%.1f kn/1000 ft (", strongest));
        assertThat(found.advice().conclusion())
                .isEqualTo(SeatBeltAdvice.Conclusion.REASON_TO_FASTEN);
        for (TurbulenceBriefing.Span span : found.spans()) {
            assertThat(span.exit().timeS()).isGreaterThan(span.entry().timeS());
            span.onBy()
                    .ifPresent(
                            on ->
                                    assertThat(span.entry().timeS() - on.timeS())
                                            .isCloseTo(5.0, within(1e-6)));
        }
    }

    @Test
    @DisplayName("has the cloud of a parcel where the air is unstable, and belts all through it")
    void cloud() {
        TurbulenceBriefing summer = along(UNSTABLE, 1000.0, Duration.ZERO);
        ParcelAscent ascent = summer.ascent().orElseThrow();
        assertThat(ascent.energyJPerKg()).isGreaterThan(500.0);
        assertThat(summer.advice().conclusion())
                .isEqualTo(SeatBeltAdvice.Conclusion.REASON_TO_FASTEN);
        assertThat(summer.spans()).hasSize(1);
        TurbulenceBriefing.Span span = summer.spans().get(0);
        assertThat(span.reasons().get(0)).contains("convective cloud");
        double baseFt = ascent.cloud().orElseThrow().base().inFeet();
        assertThat(span.entry().pressureAltitude().inFeet()).isBetween(baseFt - 1000.0, baseFt);
    }

    @Test
    @DisplayName("is absent where no thresholds are given")
    void absent() {
        assertThat(ClimbBriefing.of(BriefingScene.plan(30000), BriefingScene.AIR).turbulence())
                .isEmpty();
    }

    @Test
    @DisplayName("refuses thresholds that no air reaches, and a lead that is negative")
    void refuses() {
        assertThatThrownBy(() -> plan(-1.0, Duration.ZERO))
                .isInstanceOf(OutsideModelException.class)
                .hasMessageContaining("threshold of shear")
                .hasMessageContaining("kn/1000 ft");
        assertThatThrownBy(() -> plan(6.0, Duration.ofSeconds(-1)))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("-1.0 s");
    }
}
