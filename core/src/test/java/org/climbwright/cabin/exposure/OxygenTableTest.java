package org.climbwright.cabin.exposure;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.climbwright.quantity.altitude.CabinAltitude;
import org.climbwright.quantity.altitude.PressureAltitude;
import org.climbwright.testing.Table;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

/** Both readings; a row that is not left out and has no band fails. */
@DisplayName("A band of a rule on oxygen")
class OxygenTableTest {
    private static final Pattern BEYOND_30_MINUTES =
            Pattern.compile("(longer than|beyond|part of flight >) ?30 min");

    @ParameterizedTest(name = "{0} {1}, {2}: above {4} ft to {6} ft")
    @CsvFileSource(resources = "/cabin/oxygen-altitudes.csv", useHeadersInDisplayName = true)
    @DisplayName("is the one of the first reading:")
    void first(
            String id,
            String rule,
            String who,
            String cabinOrFlight,
            String lower,
            String lowerIncluded,
            String upper,
            String upperIncluded,
            String requirement,
            String source,
            String seen) {
        if (!LeftOut.rows("oxygen-altitudes.csv").contains(id)) {
            compare(
                    rule,
                    who,
                    cabinOrFlight,
                    lower,
                    lowerIncluded,
                    upper,
                    upperIncluded,
                    requirement,
                    source,
                    seen);
        }
    }

    @ParameterizedTest(name = "{0} {1}, {2}: above {4} ft to {6} ft")
    @CsvFileSource(resources = "/cabin/second-oxygen-altitudes.csv", useHeadersInDisplayName = true)
    @DisplayName("is the one of the second reading:")
    void second(
            String id,
            String rule,
            String who,
            String cabinOrFlight,
            String lower,
            String lowerIncluded,
            String upper,
            String upperIncluded,
            String requirement,
            String source,
            String seen) {
        if (!LeftOut.rows("second-oxygen-altitudes.csv").contains(id)) {
            compare(
                    rule,
                    who,
                    cabinOrFlight,
                    lower,
                    lowerIncluded,
                    upper,
                    upperIncluded,
                    requirement,
                    source,
                    seen);
        }
    }

    private static void compare(
            String rule,
            String who,
            String cabinOrFlight,
            String lower,
            String lowerIncluded,
            String upper,
            String upperIncluded,
            String requirement,
            String source,
            String seen) {
        assertThat(lowerIncluded).as("every band is open below").isEqualTo("no");
        assertThat(upperIncluded).as("and closed above").isEqualTo(upper == null ? null : "yes");
        double lowerFt = Double.parseDouble(lower);
        Optional<Double> upperFt = Optional.ofNullable(upper).map(Double::valueOf);
        OxygenRequirement found =
                cabinOrFlight.equals("cabin")
                        ? cabin(rule, who, lowerFt, upperFt)
                        : flight(rule, who, lowerFt, upperFt);
        assertThat(found.source()).isEqualTo(source);
        assertThat(found.evidence()).isEqualTo(evidence(seen));
        assertThat(found.condition() == OxygenRequirement.Condition.AFTER_DEPRESSURISATION)
                .as("holds only after a depressurisation")
                .isEqualTo(requirement.contains("after depressurisation"));
        assertThat(found.onlyBeyond().isPresent())
                .as("has a condition of 30 minutes")
                .isEqualTo(BEYOND_30_MINUTES.matcher(requirement).find());
        found.onlyBeyond().ifPresent(time -> assertThat(time).hasMinutes(30));
    }

    private static Evidence evidence(String seen) {
        if (seen.contains("twin rule")) {
            return Evidence.SEEN_IN_TWIN_RULE;
        }
        if (seen.contains("older edition")) {
            return Evidence.SEEN_IN_OLDER_EDITION;
        }
        return seen.contains("indirectly") ? Evidence.IMPLIED : Evidence.SEEN;
    }

    private static OxygenRequirement cabin(
            String rule, String who, double lowerFt, Optional<Double> upperFt) {
        List<CabinOxygenBand> bands =
                Arrays.stream(OxygenRuleSet.values())
                        .flatMap(set -> set.cabinBands().stream())
                        .filter(band -> band.requirement().paragraph().equals(rule))
                        .filter(band -> band.requirement().who().equals(who))
                        .filter(band -> band.above().inFeet() == lowerFt)
                        .toList();
        assertThat(bands).hasSize(1);
        CabinOxygenBand band = bands.get(0);
        assertThat(band.upToAndIncluding().map(CabinAltitude::inFeet)).isEqualTo(upperFt);
        double lowerM = CabinAltitude.ofFeet(lowerFt).inMetres();
        assertThat(band.contains(CabinAltitude.ofMetres(lowerM))).isFalse();
        assertThat(band.contains(CabinAltitude.ofMetres(lowerM + 9e-7))).isFalse();
        assertThat(band.contains(CabinAltitude.ofFeet(lowerFt + 0.001))).isTrue();
        double upperM = CabinAltitude.ofFeet(upperFt.orElse(100_000.0)).inMetres();
        assertThat(band.contains(CabinAltitude.ofMetres(upperM))).isTrue();
        assertThat(band.contains(CabinAltitude.ofMetres(upperM + 9e-7))).isTrue();
        assertThat(band.contains(CabinAltitude.ofFeet(upperFt.orElse(100_000.0) + 0.001)))
                .isEqualTo(upperFt.isEmpty());
        return band.requirement();
    }

    private static OxygenRequirement flight(
            String rule, String who, double lowerFt, Optional<Double> upperFt) {
        List<FlightOxygenBand> bands =
                Arrays.stream(OxygenRuleSet.values())
                        .flatMap(
                                set ->
                                        Stream.concat(
                                                set.flightBands().stream(),
                                                set.supersededFlightBands().stream()))
                        .filter(band -> band.requirement().paragraph().equals(rule))
                        .filter(band -> band.requirement().who().equals(who))
                        .filter(band -> band.above().inFeet() == lowerFt)
                        .toList();
        assertThat(bands).hasSize(1);
        FlightOxygenBand band = bands.get(0);
        assertThat(band.upToAndIncluding().map(PressureAltitude::inFeet)).isEqualTo(upperFt);
        double lowerM = PressureAltitude.ofFeet(lowerFt).inMetres();
        assertThat(band.contains(PressureAltitude.ofMetres(lowerM))).isFalse();
        assertThat(band.contains(PressureAltitude.ofMetres(lowerM + 9e-7))).isFalse();
        assertThat(band.contains(PressureAltitude.ofFeet(lowerFt + 0.001))).isTrue();
        double upperM = PressureAltitude.ofFeet(upperFt.orElse(100_000.0)).inMetres();
        assertThat(band.contains(PressureAltitude.ofMetres(upperM))).isTrue();
        assertThat(band.contains(PressureAltitude.ofMetres(upperM + 9e-7))).isTrue();
        assertThat(band.contains(PressureAltitude.ofFeet(upperFt.orElse(100_000.0) + 0.001)))
                .isEqualTo(upperFt.isEmpty());
        return band.requirement();
    }

    @Test
    @DisplayName("is offered only where a row has it, or from memory: 22 bands for 22 rows")
    void noBandWithoutARow() {
        List<Object> bands = new ArrayList<>();
        for (OxygenRuleSet set : OxygenRuleSet.values()) {
            bands.addAll(set.cabinBands());
            bands.addAll(set.flightBands());
            bands.addAll(set.supersededFlightBands());
        }
        bands.removeIf(band -> band.toString().contains("from memory, not seen"));
        int rows =
                Table.rows("/cabin/oxygen-altitudes.csv").size()
                        - LeftOut.rows("oxygen-altitudes.csv").size()
                        + Table.rows("/cabin/second-oxygen-altitudes.csv").size()
                        - LeftOut.rows("second-oxygen-altitudes.csv").size();
        assertThat(rows).isEqualTo(22);
        assertThat(bands).hasSize(rows).doesNotHaveDuplicates();
    }
}
