package org.climbwright.icing;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Set;
import org.climbwright.icing.ground.GroundIcingRule;
import org.climbwright.quantity.humidity.RelativeHumidity;
import org.climbwright.quantity.temperature.StaticAirTemperature;
import org.climbwright.testing.Table;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

@DisplayName("What documents say of operational icing conditions")
class OperationalDefinitionsTest {
    private static final String TABLE = "/icing/operational-definitions.csv";
    private static final String LEFT_OUT = "/icing/rows-left-out-operational.csv";
    private static final Set<String> REASONS =
            Set.of(
                    "intensity by the time to gather ice, which is compared where accretion is"
                            + " computed",
                    "intensity by its effect on an aeroplane, which nothing here computes",
                    "a definition of drops or of certification, no operational rule",
                    "climatology or form of ice, no operational rule",
                    "words of practice that are followed, without a figure to compare");

    private static final VisibleMoisture MOISTURE =
            VisibleMoisture.ofRelativeHumidity(RelativeHumidity.ofPercent(80));

    @ParameterizedTest(name = "{0}: {1} {2}")
    @CsvFileSource(resources = TABLE, useHeadersInDisplayName = true)
    @DisplayName("is what the usual rules have")
    void usualRules(String item, String value, String unit, String source) {
        switch (item) {
            case "conducive-to-airframe-icing" -> {
                assertThat(value).isEqualTo("SAT 5; TAT 10");
                assertThat(IcingRule.airframe(MOISTURE).toString())
                        .contains("TAT to 10.0 °C, SAT to 5.0 °C");
            }
            case "engine anti-ice icing condition (type-specific AFM wording)" -> {
                assertThat(value).contains("+10 by FAA AD");
                assertThat(GroundIcingRule.usual().warmest())
                        .isEqualTo(StaticAirTemperature.ofCelsius(10));
            }
            case "fog visibility limit inside the visible-moisture definition" -> {
                assertThat(value + " " + unit).isEqualTo("1 mile");
                assertThat(GroundIcingRule.usual().fogVisibility().inMetres()).isEqualTo(1609.344);
            }
            default ->
                    assertThat(IcingRule.engine(MOISTURE).toString())
                            .contains("not below SAT " + value + ".0 °C");
        }
        assertThat(source).isNotBlank();
    }

    @Test
    @DisplayName("is compared in 5 rows, and left out in 30, each with a reason")
    void rows() {
        assertThat(Table.rows(TABLE)).hasSize(5);
        List<String> leftOut = Table.rows(LEFT_OUT);
        assertThat(leftOut).hasSize(30);
        assertThat(leftOut).allMatch(row -> REASONS.stream().anyMatch(row::contains));
    }
}
