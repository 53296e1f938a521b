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
        // 121.329(b) and (c): 10,000, 12,000, 14,000, 15,000 ft
        "US_PART_121_TURBINE, 8001, 0, 0",
        "US_PART_121_TURBINE, 10000, 0, 0",
        "US_PART_121_TURBINE, 10001, 1, 3",
        "US_PART_121_TURBINE, 12000, 1, 3",
        "US_PART_121_TURBINE, 12001, 1, 2",
        "US_PART_121_TURBINE, 14000, 1, 2",
        "US_PART_121_TURBINE, 14001, 2, 2",
        "US_PART_121_TURBINE, 15000, 2, 2",
        "US_PART_121_TURBINE, 15001, 2, 2",
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
        "US_PART_91, 35001, 3",
        "US_PART_121_TURBINE, 25001, 0",
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

    @ParameterizedTest(name = "cabin at {0} ft: {1}")
    @CsvSource({
        // 121.333(e)(2) and (3): first aid above 8,000 ft, passengers above 10,000 to 14,000 ft
        "8000, 0",
        "8001, 1",
        "10000, 1",
        "10001, 2",
        "14000, 2",
        "14001, 1",
        "30000, 1",
    })
    @DisplayName("keeps apart what holds only after a depressurisation:")
    void afterDepressurisation(double feet, int requirements) {
        CabinAltitude cabin = CabinAltitude.ofFeet(feet);
        List<CabinOxygenBand> after =
                OxygenRuleSet.US_PART_121_TURBINE.afterDepressurisation(cabin);
        assertThat(after).hasSize(requirements);
        assertThat(after).allMatch(band -> band.toString().contains("after a depressurisation"));
        assertThat(OxygenRuleSet.US_PART_121_TURBINE.at(cabin)).noneMatch(after::contains);
        assertThat(OxygenRuleSet.US_PART_91.afterDepressurisation(cabin)).isEmpty();
    }

    @Test
    @DisplayName("answers no superseded figure as in force, and says that it knows no other")
    void superseded() {
        OxygenRuleSet rules = OxygenRuleSet.US_PART_121_TURBINE;
        assertThat(rules.flightBands()).isEmpty();
        assertThat(rules.supersededFlightBands())
                .hasSize(1)
                .allMatch(
                        band ->
                                band.requirement().evidence() == Evidence.SEEN_IN_OLDER_EDITION
                                        && band.toString().contains("has been raised since"));
        assertThat(rules.extent()).contains("121.333(c)(3)").contains("not known here");
        assertThat(OxygenRuleSet.US_PART_91.supersededFlightBands()).isEmpty();
    }

    @Test
    @DisplayName("marks the paragraph that is from memory: one pilot away above flight level 350")
    void fromMemory() {
        List<FlightOxygenBand> remembered =
                OxygenRuleSet.US_PART_91.flightBands().stream()
                        .filter(band -> band.requirement().evidence() == Evidence.FROM_MEMORY)
                        .toList();
        assertThat(remembered).hasSize(1);
        assertThat(remembered.get(0).above()).isEqualTo(PressureAltitude.ofFlightLevel(350));
        assertThat(remembered.get(0)).asString().contains("91.211(b)(2)").contains("from memory");
        assertThat(OxygenRuleSet.US_PART_91.extent()).contains("(b)(2) from memory");
    }

    @Test
    @DisplayName("takes an altitude that rounding put beside a bound for the bound itself")
    void inMetres() {
        OxygenRuleSet rules = OxygenRuleSet.UK_AIR_NAVIGATION_ORDER;
        assertThat(rules.at(CabinAltitude.ofMetres(Math.nextUp(3048.0)))).isEmpty();
        assertThat(rules.at(CabinAltitude.ofFeet(10_000.001))).hasSize(1);
        assertThat(rules.at(CabinAltitude.ofMetres(Math.nextUp(3962.4))))
                .isEqualTo(rules.at(CabinAltitude.ofFeet(13_000)));
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
                                        "a",
                                        "b",
                                        "c",
                                        OxygenRequirement.Condition.ANY_CABIN,
                                        Duration.ofNanos(-1),
                                        "d",
                                        Evidence.SEEN));
    }
}
