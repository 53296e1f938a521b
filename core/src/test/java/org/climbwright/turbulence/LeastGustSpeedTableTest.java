package org.climbwright.turbulence;

import static org.assertj.core.api.Assertions.assertThat;
import static org.climbwright.testing.Agreement.closeTo;

import org.climbwright.atmosphere.Atmosphere;
import org.climbwright.quantity.altitude.PressureAltitude;
import org.climbwright.quantity.speed.EquivalentAirspeed;
import org.climbwright.testing.Table;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

@DisplayName("The least design speed for maximum gust intensity")
class LeastGustSpeedTableTest {
    @ParameterizedTest(name = "{0}, {1}, {2}, {3}, {4}, {5}, {6}: {7}")
    @CsvFileSource(resources = "/turbulence/least-gust-speed.csv", useHeadersInDisplayName = true)
    @DisplayName("is that of the table")
    void agreesWithTheTable(
            double stallKnots,
            double loading,
            double slope,
            double cruiseKnots,
            double fps,
            double chordFeet,
            double feet,
            String knots,
            String increment) {
        double kg =
                GustLoad.ofRuleUnits(loading, chordFeet, slope)
                        .alleviationFactor(Atmosphere.standard().at(PressureAltitude.ofFeet(feet)));
        double byRule = GustLoad.incrementByRule(kg, fps, cruiseKnots, slope, loading);
        assertThat(byRule).is(closeTo(increment, 1e-4)); // its density has five digits
        assertThat(
                        RoughAirSpeed.leastGustSpeed(EquivalentAirspeed.ofKnots(stallKnots), byRule)
                                .inKnots())
                .is(closeTo(knots, 0.01));
    }

    @Test
    @DisplayName("is compared in 2 rows")
    void rows() {
        assertThat(Table.rows("/turbulence/least-gust-speed.csv")).hasSize(2);
    }
}
