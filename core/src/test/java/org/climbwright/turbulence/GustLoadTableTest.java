package org.climbwright.turbulence;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.climbwright.testing.Agreement.closeTo;

import org.climbwright.atmosphere.AirState;
import org.climbwright.atmosphere.Atmosphere;
import org.climbwright.quantity.altitude.PressureAltitude;
import org.climbwright.quantity.speed.EquivalentAirspeed;
import org.climbwright.testing.Table;
import org.climbwright.unit.UnitScale;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

@DisplayName("The load that a gust adds")
class GustLoadTableTest {
    /** The table has the density of its altitude to five digits, and g to eight. */
    private static final double DENSITY = 1e-4;

    @ParameterizedTest(name = "{0}, {1}, {2}, {3}, {4}, {5}: {9}, {10}")
    @CsvFileSource(resources = "/turbulence/gust-load.csv", useHeadersInDisplayName = true)
    @DisplayName("is that of the table by the rule and in SI, with its mass ratio and factor")
    void agreesWithTheTable(
            double loading,
            double chordFeet,
            double slope,
            double knots,
            double fps,
            double feet,
            double slugs,
            String massRatio,
            String factor,
            String byRule,
            String inSi) {
        GustLoad wing = GustLoad.ofRuleUnits(loading, chordFeet, slope);
        AirState air = Atmosphere.standard().at(PressureAltitude.ofFeet(feet));
        double kg = wing.alleviationFactor(air);
        GustVelocity gust = GustVelocity.ofCallerInFeetPerSecond(fps);
        double increment = wing.increment(gust, EquivalentAirspeed.ofKnots(knots), air);

        // slug of 14.5939 kg, from the pound and the foot
        assertThat(air.densityKgPerM3() / (14.593903 / (0.3048 * 0.3048 * 0.3048)))
                .isCloseTo(slugs, within(0.5e-7 + 1e-9));
        assertThat(wing.massRatio(air)).is(closeTo(massRatio, DENSITY * 100.0));
        assertThat(kg).is(closeTo(factor, DENSITY));
        assertThat(GustLoad.incrementByRule(kg, fps, knots, slope, loading))
                .is(closeTo(byRule, DENSITY));
        assertThat(increment).is(closeTo(inSi, DENSITY));
        assertThat(wing.speedForIncrement(gust, increment, air).inKnots())
                .isCloseTo(knots, within(1e-9));
    }

    @Test
    @DisplayName("is 0.11 % more by the rule than in SI, since its 498 is 498.5 but for rounding")
    void theRuleRounds() {
        double si =
                GustLoad.increment(
                        0.8,
                        UnitScale.FOOT_PER_SECOND.toSi(50.0),
                        UnitScale.KNOT.toSi(250.0),
                        5.0,
                        UnitScale.POUND_FORCE.toSi(80.0) / (0.3048 * 0.3048));
        assertThat(498.0 * GustLoad.incrementByRule(0.8, 50.0, 250.0, 5.0, 80.0) / si)
                .isCloseTo(498.535, within(0.005));
    }

    @Test
    @DisplayName("is compared in 7 rows")
    void rows() {
        assertThat(Table.rows("/turbulence/gust-load.csv")).hasSize(7);
    }
}
