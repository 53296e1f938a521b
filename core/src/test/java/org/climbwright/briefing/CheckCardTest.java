package org.climbwright.briefing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.OptionalDouble;
import org.climbwright.path.Side;
import org.climbwright.profile.ClimbDifference;
import org.climbwright.quantity.path.Mass;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("The check card of a briefing")
class CheckCardTest {
    private final ClimbBriefing briefing =
            ClimbBriefing.of(
                    BriefingScene.byThrust(33000).withCabin(BriefingScene.cabin(8.0)),
                    BriefingScene.AIR);

    private final List<CheckPoint> points = briefing.checkCard();

    @Test
    @DisplayName(
            "has each round 10,000 ft, the named points and the top, in the order of the climb")
    void order() {
        assertThat(points)
                .extracting(CheckPoint::name)
                .containsExactlyInAnyOrder(
                        "10000 ft", "20000 ft", "30000 ft", "invented point", "top of climb");
        assertThat(points).extracting(point -> point.state().timeS()).isSorted();
        assertThat(points.get(points.size() - 1).state()).isEqualTo(briefing.topOfClimb());
    }

    @Test
    @DisplayName("has the cabin of the cabin's own checks, and the fuel that the mass has lost")
    void figures() {
        for (CheckPoint point : points) {
            double lost = 60000.0 - point.state().mass().inKilograms();
            assertThat(point.fuel().map(Mass::inKilograms).orElseThrow())
                    .isCloseTo(lost, within(1e-9));
        }
        CheckPoint ten = points.get(0).name().equals("10000 ft") ? points.get(0) : points.get(1);
        assertThat(ten.cabin().orElseThrow())
                .isEqualTo(briefing.cabin().orElseThrow().checks().get(0));
        CheckPoint top = points.get(points.size() - 1);
        assertThat(top.cabin().orElseThrow())
                .isEqualTo(briefing.cabin().orElseThrow().checks().get(3));
    }

    @Test
    @DisplayName("tells a time as far off as the change of it that does most")
    void tolerance() {
        CheckPoint top = points.get(points.size() - 1);
        double most =
                briefing.givenChanges().stream()
                        .mapToDouble(
                                change ->
                                        Math.abs(
                                                change.after()
                                                                .at(
                                                                        change.after().top(),
                                                                        Side.BELOW)
                                                                .timeS()
                                                        - top.state().timeS()))
                        .max()
                        .orElseThrow();
        assertThat(briefing.givenChanges())
                .extracting(ClimbDifference::endsLower)
                .containsOnly(false);
        assertThat(top.toleranceS().orElseThrow()).isEqualTo(most).isPositive();
        double earlier = 0.0;
        for (CheckPoint point : points) {
            if (point.name().endsWith("ft") || point == top) { // by level: it adds up
                assertThat(point.toleranceS().orElseThrow()).isGreaterThan(earlier);
                earlier = point.toleranceS().orElseThrow();
            }
        }
    }

    @Test
    @DisplayName("of a table of rates has no tolerance and no fuel, and without pressure no cabin")
    void unknown() {
        for (CheckPoint point :
                ClimbBriefing.of(BriefingScene.plan(30000), BriefingScene.AIR).checkCard()) {
            assertThat(point.toleranceS()).isEqualTo(OptionalDouble.empty());
            assertThat(point.fuel()).isEmpty();
            assertThat(point.cabin()).isEmpty();
        }
    }
}
