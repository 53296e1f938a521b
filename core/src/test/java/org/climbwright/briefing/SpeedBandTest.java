package org.climbwright.briefing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.Duration;
import java.util.List;
import java.util.Optional;
import org.climbwright.airspeed.Airspeeds;
import org.climbwright.briefing.plan.PlannedTurbulence;
import org.climbwright.path.SpeedSchedule;
import org.climbwright.performance.InventedAeroplanes;
import org.climbwright.performance.ceiling.BuffetMargin;
import org.climbwright.quantity.speed.CalibratedAirspeed;
import org.climbwright.quantity.speed.Mach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("The speeds around the one that is flown")
class SpeedBandTest {
    private final ClimbBriefing briefing =
            ClimbBriefing.of(
                    BriefingScene.byThrust(35000)
                            .withTurbulence(
                                    new PlannedTurbulence(
                                            500.0,
                                            6.0,
                                            Duration.ZERO,
                                            Optional.of(
                                                    SpeedSchedule.of(
                                                            CalibratedAirspeed.ofKnots(270),
                                                            Mach.of(0.70))))),
                    BriefingScene.AIR);

    private final List<SpeedBand> bands = briefing.speedBand();

    private static double knots(Optional<CalibratedAirspeed> speed) {
        return speed.orElseThrow().inKnots();
    }

    @Test
    @DisplayName("stand in order: minimum below rough air, that below the limit")
    void order() {
        assertThat(bands).hasSameSizeAs(briefing.levels());
        for (SpeedBand band : bands) {
            assertThat(knots(band.minimum())).isEqualTo(200.0);
            assertThat(knots(band.roughAir())).isGreaterThan(200.0);
            assertThat(knots(band.limit())).isGreaterThan(knots(band.roughAir()));
            assertThat(band.state().calibratedAirspeed().inKnots()).isLessThan(knots(band.limit()));
        }
    }

    @Test
    @DisplayName("have the slower of the limit's speed and its Mach number")
    void limit() {
        SpeedBand low = bands.get(0);
        assertThat(knots(low.limit())).isEqualTo(350.0);
        SpeedBand high = bands.get(bands.size() - 1);
        assertThat(Airspeeds.from(high.limit().orElseThrow(), high.state().air()).mach().number())
                .isCloseTo(0.82, within(1e-12));
    }

    @Test
    @DisplayName("have buffet where the load factor to its beginning is 1.3, above and below")
    void buffet() {
        SpeedBand high = bands.get(bands.size() - 1);
        for (Optional<CalibratedAirspeed> edge : List.of(high.slowBuffet(), high.fastBuffet())) {
            Mach mach = Airspeeds.from(edge.orElseThrow(), high.state().air()).mach();
            assertThat(
                            BuffetMargin.of(
                                            InventedAeroplanes.twin().limits(),
                                            high.state().mass(),
                                            high.state().pressureAltitude(),
                                            mach)
                                    .orElseThrow()
                                    .loadFactor())
                    .isCloseTo(1.3, within(1e-9));
        }
        assertThat(knots(high.slowBuffet()))
                .isLessThan(high.state().calibratedAirspeed().inKnots())
                .isLessThan(knots(high.fastBuffet()));
    }

    @Test
    @DisplayName("are not known to a table of rates, but for the speed flown")
    void byRates() {
        for (SpeedBand band :
                ClimbBriefing.of(BriefingScene.plan(30000), BriefingScene.AIR).speedBand()) {
            assertThat(band.minimum()).isEmpty();
            assertThat(band.roughAir()).isEmpty();
            assertThat(band.limit()).isEmpty();
            assertThat(band.slowBuffet()).isEmpty();
            assertThat(band.fastBuffet()).isEmpty();
        }
    }
}
