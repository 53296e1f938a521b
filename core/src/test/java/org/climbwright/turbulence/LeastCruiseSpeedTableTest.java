package org.climbwright.turbulence;

import static org.assertj.core.api.Assertions.assertThat;
import static org.climbwright.testing.Agreement.closeTo;

import org.climbwright.quantity.speed.EquivalentAirspeed;
import org.climbwright.testing.Table;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

@DisplayName("The least design cruise speed")
class LeastCruiseSpeedTableTest {
    @ParameterizedTest(name = "{0}: {1}")
    @CsvFileSource(resources = "/turbulence/least-cruise-speed.csv", useHeadersInDisplayName = true)
    @DisplayName("adds 1.32 times a figure in ft/s to one in knots, as the rule prints it")
    void agreesWithTheTable(double fps, String knots) {
        assertThat(RoughAirSpeed.leastCruiseSpeedByRule(0.0, fps)).is(closeTo(knots, 0.005));
        assertThat(
                        RoughAirSpeed.leastCruiseSpeed(
                                                EquivalentAirspeed.ofKnots(230.0),
                                                GustVelocity.ofCallerInFeetPerSecond(fps))
                                        .inKnots()
                                - 230.0)
                .is(closeTo(knots, 0.005));
    }

    @Test
    @DisplayName("is compared in 2 rows")
    void rows() {
        assertThat(Table.rows("/turbulence/least-cruise-speed.csv")).hasSize(2);
    }
}
