package org.climbwright.cabin.exposure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.io.IOException;
import java.time.Duration;
import java.util.List;
import org.climbwright.quantity.altitude.CabinAltitude;
import org.climbwright.quantity.altitude.PressureAltitude;
import org.climbwright.testing.Streams;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

@DisplayName("A set of rules on oxygen")
class OxygenRuleSetTest {
    private static final Duration HALF_AN_HOUR = Duration.ofMinutes(30);

    @ParameterizedTest(name = "{0}, cabin at {1} ft: {2} at once, {3} after 30 min and a moment")
    @CsvSource({
        // bounds of 14 CFR 91.211(a): 12,500, 14,000 and 15,000 ft, and a foot above each
        "US_PART_91, 12500, 0, 0",
        "US_PART_91, 12501, 0, 1",
        "US_PART_91, 14000, 0, 1",
        "US_PART_91, 14001, 1, 1",
        "US_PART_91, 15000, 1, 1",
        "US_PART_91, 15001, 2, 2",
        // 121.329(b), (c) and 121.333(e): 8,000 ft of first aid, then 10,000, 12,000, 14,000,
        // 15,000
        "US_PART_121_TURBINE, 8000, 0, 0",
        "US_PART_121_TURBINE, 8001, 1, 1",
        "US_PART_121_TURBINE, 10000, 1, 1",
        "US_PART_121_TURBINE, 10001, 3, 5",
        "US_PART_121_TURBINE, 12000, 3, 5",
        "US_PART_121_TURBINE, 12001, 3, 4",
        "US_PART_121_TURBINE, 14000, 3, 4",
        "US_PART_121_TURBINE, 14001, 3, 3",
        "US_PART_121_TURBINE, 15000, 3, 3",
        "US_PART_121_TURBINE, 15001, 3, 3",
        "US_PART_135, 10000, 0, 0",
        "US_PART_135, 10001, 0, 1",
        "US_PART_135, 15000, 0, 1",
        "US_PART_135, 15001, 1, 1",
        "UK_AIR_NAVIGATION_ORDER, 10000, 0, 0",
        "UK_AIR_NAVIGATION_ORDER, 10001, 0, 1",
        "UK_AIR_NAVIGATION_ORDER, 13000, 0, 1",
        "UK_AIR_NAVIGATION_ORDER, 13001, 1, 1",
    })
    @DisplayName("has so many requirements in force:")
    void inForce(OxygenRuleSet rules, double feet, int atOnce, int beyond) {
        CabinAltitude cabin = CabinAltitude.ofFeet(feet);
        assertThat(rules.inForce(cabin, Duration.ZERO)).hasSize(atOnce);
        assertThat(rules.inForce(cabin, HALF_AN_HOUR)).hasSize(atOnce);
        assertThat(rules.inForce(cabin, HALF_AN_HOUR.plusNanos(1))).hasSize(beyond);
        assertThat(rules.at(cabin)).hasSize(beyond);
    }

    @ParameterizedTest(name = "{0} at {1} ft: {2}")
    @CsvSource({
        "US_PART_91, 25000, 0",
        "US_PART_91, 25001, 1",
        "US_PART_91, 35000, 1",
        "US_PART_91, 35001, 2",
        "US_PART_121_TURBINE, 25000, 0",
        "US_PART_121_TURBINE, 25001, 1",
        "US_PART_121_RECIPROCATING, 8000, 0",
        "US_PART_121_RECIPROCATING, 8001, 1",
        "US_PART_121_RECIPROCATING, 10000, 1",
        "US_PART_121_RECIPROCATING, 10001, 2",
        "US_PART_121_RECIPROCATING, 25000, 2",
        "US_PART_121_RECIPROCATING, 25001, 1",
        "US_PART_135, 25000, 0",
        "US_PART_135, 25001, 1",
        "EUROPEAN_AIR_OPERATIONS, 25000, 0",
        "EUROPEAN_AIR_OPERATIONS, 25001, 1",
        "UK_AIR_NAVIGATION_ORDER, 45000, 0",
    })
    @DisplayName("has so many requirements of an aeroplane, whatever its cabin:")
    void atFlightLevel(OxygenRuleSet rules, double feet, int requirements) {
        assertThat(rules.atFlightLevel(PressureAltitude.ofFeet(feet))).hasSize(requirements);
    }

    @Test
    @DisplayName(
            "differs from others: at 11,000 ft one general rule asks for nothing, another does")
    void setsDiffer() {
        CabinAltitude cabin = CabinAltitude.ofFeet(11_000);
        assertThat(OxygenRuleSet.US_PART_91.at(cabin)).isEmpty();
        assertThat(OxygenRuleSet.UK_AIR_NAVIGATION_ORDER.at(cabin)).isNotEmpty();
    }

    @Test
    @DisplayName("marks the paragraph that no source showed")
    void implied() {
        List<CabinOxygenBand> implied =
                OxygenRuleSet.US_PART_121_TURBINE.cabinBands().stream()
                        .filter(band -> band.requirement().evidence() == Evidence.IMPLIED)
                        .toList();
        assertThat(implied).hasSize(1);
        assertThat(implied.get(0).requirement().paragraph()).startsWith("14 CFR 121.329(c)(1)");
        assertThat(implied.get(0)).asString().contains("implied by another paragraph");
        assertThat(OxygenRuleSet.US_PART_121_TURBINE.extent()).contains("(c)(1) is implied");
    }

    @ParameterizedTest
    @EnumSource
    @DisplayName("has a name, an extent and a source on each band:")
    void isNamed(OxygenRuleSet rules) throws IOException {
        assertThat(rules.words()).isNotBlank();
        assertThat(rules.extent()).isNotBlank();
        for (CabinOxygenBand band : rules.cabinBands()) {
            assertThat(band.requirement().source()).isNotBlank();
            assertThat(band).asString().startsWith("cabin altitude above ");
            assertThat(Streams.roundTrip(band)).isEqualTo(band).hasSameHashCodeAs(band);
            assertThat(band).isNotEqualTo("another");
        }
        for (FlightOxygenBand band : rules.flightBands()) {
            assertThat(band.requirement().source()).isNotBlank();
            assertThat(band).asString().startsWith("flight altitude above ");
            assertThat(Streams.roundTrip(band)).isEqualTo(band).hasSameHashCodeAs(band);
            assertThat(band).isNotEqualTo("another");
        }
    }

    @Test
    @DisplayName("refuses a time below zero, and a band without extent")
    void refuses() {
        CabinAltitude cabin = CabinAltitude.ofFeet(13_000);
        assertThatIllegalArgumentException()
                .isThrownBy(() -> OxygenRuleSet.US_PART_91.inForce(cabin, Duration.ofNanos(-1)))
                .withMessageContaining("0 or more");
        OxygenRequirement any = OxygenRuleSet.US_PART_91.cabinBands().get(0).requirement();
        assertThatIllegalArgumentException()
                .isThrownBy(() -> CabinOxygenBand.between(cabin, cabin, any));
        PressureAltitude level = PressureAltitude.ofFlightLevel(250);
        assertThatIllegalArgumentException()
                .isThrownBy(() -> FlightOxygenBand.between(level, level, any));
        assertThatIllegalArgumentException()
                .isThrownBy(
                        () ->
                                new OxygenRequirement(
                                        "a", "b", "c", Duration.ofNanos(-1), "d", Evidence.SEEN));
    }
}
