package org.climbwright.turbulence;

import static org.assertj.core.api.Assertions.assertThat;

import org.climbwright.quantity.speed.EquivalentAirspeed;
import org.climbwright.quantity.speed.TrueAirspeed;
import org.climbwright.testing.Table;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;

@DisplayName("A rough-air speed")
class RoughAirSpeedTableTest {
    @ParameterizedTest(name = "{0}, {1}, {2}, {3}, {4}")
    @CsvSource({
        "250, 260, 240, 300, 340, true, true, true",
        "260, 260, 260, 300, 335.1, true, true, true", // equal is not above and not below
        "261, 260, 240, 300, 340, false, true, true",
        "239, 260, 240, 300, 340, true, false, true",
        "250, 260, 240, 300, 335, true, true, false" // the rule says less than
    })
    @DisplayName("is held against each relation on its own")
    void isHeldAgainstTheRelations(
            double knots,
            double gustSpeed,
            double least,
            double tas,
            double limitTas,
            boolean notAbove,
            boolean notBelow,
            boolean margin) {
        RoughAirSpeed found =
                RoughAirSpeed.of(
                        EquivalentAirspeed.ofKnots(knots),
                        EquivalentAirspeed.ofKnots(gustSpeed),
                        EquivalentAirspeed.ofKnots(least),
                        TrueAirspeed.ofKnots(tas),
                        TrueAirspeed.ofKnots(limitTas));
        assertThat(found).isEqualTo(new RoughAirSpeed(notAbove, notBelow, margin));
        assertThat(found.notMet()).hasSize(notAbove && notBelow && margin ? 0 : 1);
    }

    @ParameterizedTest(name = "{0}: {1} {2}")
    @CsvFileSource(
            resources = "/turbulence/rough-air-relations.csv",
            useHeadersInDisplayName = true)
    @DisplayName("is asked for each relation of the table")
    void hasTheRelationsOfTheTable(String item, String statement, String value) {
        boolean holds =
                switch (item) {
                    case "VRA upper bound" -> !of(261.0, 260.0, 240.0, 400.0).isNotAboveGustSpeed();
                    case "VRA lower bound" ->
                            !of(239.0, 260.0, 240.0, 400.0).isNotBelowLeastGustSpeed();
                    case "VRA margin to VMO" -> {
                        double margin = Double.parseDouble(value);
                        yield of(250.0, 260.0, 240.0, 300.0 + margin + 0.01)
                                        .hasMarginToOperatingLimit()
                                && !of(250.0, 260.0, 240.0, 300.0 + margin - 0.01)
                                        .hasMarginToOperatingLimit();
                    }
                    case "VC lower bound" ->
                            RoughAirSpeed.leastCruiseSpeedByRule(200.0, 1.0)
                                    == 200.0 + Double.parseDouble(value);
                    case "VB formula" -> RoughAirSpeed.leastGustSpeed(100.0, 3.0) == 200.0;
                    default -> false;
                };
        assertThat(holds).as(statement).isTrue();
    }

    private static RoughAirSpeed of(double knots, double gustSpeed, double least, double limitTas) {
        return RoughAirSpeed.of(
                EquivalentAirspeed.ofKnots(knots),
                EquivalentAirspeed.ofKnots(gustSpeed),
                EquivalentAirspeed.ofKnots(least),
                TrueAirspeed.ofKnots(300.0),
                TrueAirspeed.ofKnots(limitTas));
    }

    @Test
    @DisplayName("is compared in 5 rows")
    void rows() {
        assertThat(Table.rows("/turbulence/rough-air-relations.csv")).hasSize(5);
    }
}
