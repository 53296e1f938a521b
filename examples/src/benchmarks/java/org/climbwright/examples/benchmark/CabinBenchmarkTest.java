package org.climbwright.examples.benchmark;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.Duration;
import org.climbwright.atmosphere.Atmosphere;
import org.climbwright.cabin.CabinHistory;
import org.climbwright.cabin.dynamics.CabinAir;
import org.climbwright.cabin.dynamics.CabinFailure;
import org.climbwright.cabin.dynamics.CabinFailureStudy;
import org.climbwright.examples.figure.InventedFlight;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

@DisplayName("The cabin that is timed")
class CabinBenchmarkTest {
    /** What the cabin states for steps of 1 s while its controller works: 1 ft. */
    private static final double FOOT_M = 0.3048;

    private final CabinBenchmark.Climb climb = new CabinBenchmark.Climb();

    @ParameterizedTest(name = "in {0} air")
    @EnumSource
    @DisplayName("ends where the study of the same climb by steps of a second does,")
    void endsWhereTheStudyDoes(CabinAir air) {
        CabinFailure inflow = new CabinFailure.InflowLost();
        CabinFailure hole = new CabinFailure.Hole(InventedFlight.HOLE_M2);
        CabinFailureStudy study =
                new CabinFailureStudy(
                        InventedFlight.HULL.withAir(air),
                        InventedFlight.plan(),
                        InventedFlight.climb(),
                        Atmosphere.standard());
        assertThat(climb.top(air)).isCloseTo(top(study), within(FOOT_M));
        assertThat(climb.top(air, inflow))
                .isCloseTo(top(study.withFailure(inflow, InventedFlight.FAILURE)), within(FOOT_M));
        assertThat(climb.top(air, hole))
                .isCloseTo(top(study.withFailure(hole, InventedFlight.FAILURE)), within(FOOT_M));
    }

    private static double top(CabinFailureStudy study) {
        CabinHistory history = study.run(Duration.ofSeconds(1));
        return history.cabinAltitudeM(history.size() - 1);
    }
}
