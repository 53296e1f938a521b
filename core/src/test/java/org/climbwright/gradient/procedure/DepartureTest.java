package org.climbwright.gradient.procedure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.util.List;
import org.climbwright.quantity.OutsideModelException;
import org.climbwright.quantity.altitude.Height;
import org.climbwright.quantity.path.AirGradient;
import org.climbwright.quantity.path.GroundDistance;
import org.climbwright.quantity.path.GroundGradient;
import org.climbwright.testing.Streams;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("A departure")
class DepartureTest {
    private static Obstacle obstacle(double feet, double miles) {
        return new Obstacle(Height.ofFeet(feet), GroundDistance.ofNauticalMiles(miles));
    }

    @Test
    @DisplayName("over an obstacle below the surface takes the least gradient")
    void below() {
        for (DepartureCriteria criteria : DepartureCriteria.values()) {
            ObstacleAssessment low = criteria.assess(obstacle(100, 1));
            assertThat(low.isPenetrating()).isFalse();
            assertThat(low.penetration().inFeet()).isNegative();
            assertThat(low.requiredGradient()).isEqualTo(criteria.leastGradient());
            assertThat(low.isPublishedInstead()).isFalse();
        }
    }

    @Test
    @DisplayName("between 40:1 and 76 % of 200 ft/NM takes no less than 200 ft/NM")
    void between() {
        ObstacleAssessment edge = DepartureCriteria.US.assess(obstacle(35 + 10 * 151.95, 10));
        assertThat(edge.isPenetrating()).isTrue();
        assertThat(edge.requiredGradient()).isEqualTo(DepartureCriteria.US.leastGradient());
    }

    @Test
    @DisplayName(
            "over an obstacle so low and near that it is published has its gradient all the same")
    void closeIn() {
        // 100 ft at 0.2 NM: 65 / (0.76 * 0.2) = 427.6 ft/NM, up to 35 + 65 / 0.76 = 120.5 ft
        ObstacleAssessment trees = DepartureCriteria.US.assess(obstacle(100, 0.2));
        assertThat(trees.isPublishedInstead()).isTrue();
        assertThat(trees.requiredGradient().inFeetPerNauticalMile())
                .isCloseTo(65 / 0.152, within(1e-9));
        assertThat(trees.heightOverObstacle().inFeet()).isCloseTo(35 + 65 / 0.76, within(1e-9));
        // 60 m is 196.85 ft: what goes to 198 ft is published by one system and not by the other
        double feet = 35 + 163 * 0.76;
        assertThat(DepartureCriteria.US.assess(obstacle(feet, 0.3)).isPublishedInstead()).isTrue();
        Obstacle metric = new Obstacle(Height.ofMetres(60.5 - 4.0), GroundDistance.ofMetres(500));
        ObstacleAssessment pansOps = DepartureCriteria.PANS_OPS.assess(metric);
        assertThat(pansOps.heightOverObstacle().inMetres()).isCloseTo(60.5, within(1e-9));
        assertThat(pansOps.isPublishedInstead()).isFalse();
        Obstacle lower = new Obstacle(Height.ofMetres(55.9), GroundDistance.ofMetres(500));
        assertThat(DepartureCriteria.PANS_OPS.assess(lower).isPublishedInstead()).isTrue();
        assertThat(DepartureCriteria.US.assess(obstacle(500, 1)).isPublishedInstead()).isFalse();
    }

    @Test
    @DisplayName("clears the obstacle by what the system asks at the gradient that it takes")
    void clears() {
        for (DepartureCriteria criteria : DepartureCriteria.values()) {
            ObstacleAssessment mast = criteria.assess(obstacle(900, 3));
            double over = mast.heightOverObstacle().inFeet() - 900;
            assertThat(over)
                    .isCloseTo(
                            criteria.clearance(
                                            mast.requiredGradient(),
                                            GroundDistance.ofNauticalMiles(3))
                                    .inFeet(),
                            within(1e-9));
        }
    }

    @Test
    @DisplayName("takes more where the surface starts at the runway itself")
    void fromTheGround() {
        Obstacle mast = obstacle(900, 3);
        for (DepartureCriteria criteria : DepartureCriteria.values()) {
            assertThat(criteria.assess(mast, Height.ofFeet(0)).requiredGradient())
                    .isGreaterThan(criteria.assess(mast).requiredGradient());
        }
    }

    @Test
    @DisplayName("refuses an obstacle at no distance, and a climb that descends")
    void refuses() {
        assertThatThrownBy(() -> obstacle(10, 0))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("must be above 0.0 m");
        assertThat(ObstacleClearance.coversGradient(-0.01)).isFalse();
        assertThat(ObstacleClearance.covers(1.0, 0.0)).isFalse();
        assertThatThrownBy(() -> DepartureCriteria.US.surfaceBelow(GroundGradient.ofPercent(-1)))
                .isInstanceOf(OutsideModelException.class);
    }

    @Test
    @DisplayName("has a net path that is lower at each point by what its way has cost")
    void netPath() {
        List<NetFlightPath.Point> gross =
                List.of(point(0, 10.668), point(1000, 60), point(3000, 180), point(5000, 180));
        AirGradient reduction = NetReduction.TAKEOFF_PATH.reduction(2).orElseThrow();
        List<NetFlightPath.Point> net = NetFlightPath.inStillAir(gross, reduction);
        for (int i = 0; i < gross.size(); i++) {
            double way = gross.get(i).distance().inMetres();
            assertThat(net.get(i).distance()).isEqualTo(gross.get(i).distance());
            assertThat(net.get(i).height().inMetres())
                    .isCloseTo(gross.get(i).height().inMetres() - 0.008 * way, within(1e-10));
        }
        // lowering the end alone and scaling what lies before is another path, here 16 m too low
        double share = (140 - 10.668) / (180 - 10.668);
        double scaled = 10.668 + share * (180 - 10.668);
        assertThat(net.get(2).height().inMetres() - scaled).isCloseTo(16.0, within(1e-9));
        assertThat(net.get(2).height().inMetres()).isCloseTo(156.0, within(1e-10));
        assertThatThrownBy(
                        () ->
                                NetFlightPath.inStillAir(
                                        List.of(point(5, 0), point(5, 1)), reduction))
                .isInstanceOf(OutsideModelException.class);
        assertThat(NetFlightPath.covers(1.0, 0.0, 0.008)).isFalse();
        assertThat(NetFlightPath.covers(1.0, 10.0, 0.008)).isTrue();
    }

    private static NetFlightPath.Point point(double metres, double height) {
        return new NetFlightPath.Point(GroundDistance.ofMetres(metres), Height.ofMetres(height));
    }

    @Test
    @DisplayName("reaches a requirement at its value, and one of \"positive\" only above 0")
    void requirement() {
        assertThat(
                        CertificationGradient.TAKEOFF_GEAR_EXTENDED.isReachedBy(
                                AirGradient.ofPercent(0), 2))
                .isFalse();
        assertThat(
                        CertificationGradient.TAKEOFF_GEAR_EXTENDED.isReachedBy(
                                AirGradient.ofPercent(1e-9), 2))
                .isTrue();
        CertificationGradient second = CertificationGradient.TAKEOFF_GEAR_RETRACTED;
        assertThat(second.isReachedBy(AirGradient.ofPercent(2.4), 2)).isTrue();
        assertThat(second.isReachedBy(AirGradient.ofPercent(2.4), 3)).isFalse();
        assertThatThrownBy(() -> second.least(1))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("number of engines must be from 2 to 4, but was 1");
        for (CertificationGradient each : CertificationGradient.values()) {
            assertThat(each.source()).contains("14 CFR");
        }
        for (NetReduction each : NetReduction.values()) {
            assertThat(each.source()).contains("14 CFR");
        }
    }

    @Test
    @DisplayName("travels as bytes with its assessment and printed heights")
    void travels() throws IOException {
        ObstacleAssessment mast = DepartureCriteria.US.assess(obstacle(900, 3));
        Object arrived = Streams.roundTrip(mast);
        assertThat(arrived).isEqualTo(mast).hasSameHashCodeAs(mast).hasToString(mast.toString());
        PrintedHeight turn = DepartureCriteria.PANS_OPS.turnHeight();
        assertThat(Streams.roundTrip(turn)).isEqualTo(turn).hasToString(turn.toString());
        assertThat(DepartureCriteria.US.turnHeight().second()).isEmpty();
        assertThat(DepartureCriteria.PANS_OPS.source()).contains("from memory");
    }
}
