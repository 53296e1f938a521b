package org.climbwright.examples.benchmark;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.climbwright.profile.AeroplaneClimb;
import org.climbwright.profile.ClimbProfile;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("The climb that is timed")
class ClimbProfileBenchmarkTest {
    private final ClimbProfileBenchmark.Climbs climbs = new ClimbProfileBenchmark.Climbs();

    @Test
    @DisplayName("takes the same time and way by both integrations, to what is promised of one")
    void bothAgree() {
        for (AeroplaneClimb climb :
                List.of(climbs.free(), climbs.restricted(), climbs.inNewAir())) {
            ClimbProfile own = climbs.own(climb);
            ClimbProfile adaptive = climbs.adaptive(climb);
            assertThat(own.endsBecause()).isEqualTo("level reached");
            assertThat(own.timeS()).isCloseTo(adaptive.timeS(), within(0.01));
            assertThat(wayM(own)).isCloseTo(wayM(adaptive), within(0.1));
            assertThat(own.fuel().inKilograms())
                    .isCloseTo(adaptive.fuel().inKilograms(), within(0.01));
        }
    }

    private static double wayM(ClimbProfile profile) {
        return profile.at(profile.top()).distance().orElseThrow().inMetres();
    }
}
