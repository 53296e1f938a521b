package org.climbwright.examples.briefing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("The briefing as JSON")
class JsonReportTest {
    private static Program run;
    private static JsonNode json;

    @BeforeAll
    static void run() throws Exception {
        run = Program.run("--format", "json");
        json = new ObjectMapper().readTree(run.out());
    }

    @Test
    @DisplayName("is JSON and nothing else on standard output")
    void nothingElse() {
        assertThat(run.code()).isZero();
        assertThat(run.out()).startsWith("{").endsWith("}\n");
    }

    @Test
    @DisplayName("has every figure of every level, a number or null, with its unit in the name")
    void levels() {
        assertThat(json.get("levels").size()).isGreaterThan(20);
        for (JsonNode level : json.get("levels")) {
            List<String> names = new ArrayList<>();
            level.fieldNames().forEachRemaining(names::add);
            assertThat(names)
                    .containsExactly(
                            "pressureAltitudeFt",
                            "altitudeOnQnhFt",
                            "geopotentialAltitudeFt",
                            "trueAltitudeFt",
                            "staticAirTemperatureC",
                            "isaDeviationK",
                            "totalAirTemperatureC",
                            "calibratedAirspeedKn",
                            "mach",
                            "trueAirspeedKn",
                            "alongTrackWindKn",
                            "groundSpeedKn",
                            "rateFtPerMin",
                            "gradientPercent",
                            "gradientFtPerNm",
                            "timeS",
                            "distanceNm",
                            "massKg",
                            "fuelKg",
                            "events");
            for (String name : names.subList(0, names.size() - 1)) {
                assertThat(level.get(name).isNumber() || level.get(name).isNull())
                        .as(name)
                        .isTrue();
            }
        }
    }

    @Test
    @DisplayName("has numbers as they came in: 8000 and not 8000.000000000001, 290 and not 289.99")
    void numbersAsTheyCameIn() {
        assertThat(run.out()).contains("\"pressureAltitudeFt\" : 8000,");
        assertThat(run.out()).contains("\"pressureAltitudeFt\" : 34000,");
        assertThat(run.out()).contains("\"calibratedAirspeedKn\" : 290,");
        assertThat(run.out()).contains("\"mach\" : 0.76,");
        assertThat(run.out()).contains("\"elevationFt\" : 1200,");
        assertThat(run.out()).contains("\"altitudeOnQnhFt\" : 1200,");
        assertThat(run.out()).contains("\"staticAirTemperatureC\" : 0,");
        assertThat(run.out()).doesNotContain("0000000000").doesNotContain("9999999999");
    }

    @Test
    @DisplayName("has the 0 °C levels with their direction, to 1 m and 1 ft of the answers")
    void freezingLevels() {
        // independent computation, T linear in ln p between the levels of the listing
        freezingLevel(0, 4118.65, 1279.94, "falling");
        freezingLevel(1, 5398.06, 1662.61, "rising");
        freezingLevel(2, 9956.26, 3077.0, "falling");
        assertThat(json.get("freezingLevels").size()).isEqualTo(3);
    }

    private static void freezingLevel(int i, double feet, double metres, String direction) {
        JsonNode level = json.get("freezingLevels").get(i);
        assertThat(level.get("pressureAltitudeFt").doubleValue()).isCloseTo(feet, within(1.0));
        assertThat(level.get("geopotentialAltitudeFt").doubleValue() * 0.3048)
                .isCloseTo(metres, within(1.0));
        assertThat(level.get("direction").textValue()).isEqualTo(direction);
    }

    @Test
    @DisplayName("has the icing conditions with levels and reason")
    void icing() {
        JsonNode spans = json.get("icingConditions");
        assertThat(spans.findValuesAsText("part")).containsExactly("engine", "airframe");
        JsonNode span = spans.get(0);
        assertThat(span.get("fromFt").doubleValue()).isLessThan(span.get("toFt").doubleValue());
        assertThat(span.get("entryTimeS").doubleValue() - span.get("exitTimeS").doubleValue())
                .isNegative();
        assertThat(span.get("protectionOnByFt").doubleValue())
                .isLessThan(span.get("fromFt").doubleValue());
        assertThat(span.get("protectionOffAfterFt")).isEqualTo(span.get("toFt"));
        assertThat(span.get("reason").textValue()).contains("total air temperature");
        assertThat(span.get("protectionOffAfterAltitudeText"))
                .isEqualTo(span.get("toAltitudeText"));
        JsonNode due = json.get("whatByWhen").get(3);
        assertThat(due.get("what").textValue()).isEqualTo("engine anti-ice on");
        assertThat(span.get("fromAltitudeText")).isEqualTo(due.get("altitudeText"));
        assertThat(span.get("protectionOnByAltitudeText"))
                .isEqualTo(due.get("latest").get("altitudeText"));
        assertThat(json.get("icingNotKnown").isArray()).isTrue();
        assertThat(json.get("icingColderThanTheRule").isArray()).isTrue();
    }

    @Test
    @DisplayName("has the cabin at 10,000, 20,000 and 30,000 ft and at the cruise level")
    void cabinChecks() {
        JsonNode checks = json.get("cabinChecks");
        assertThat(checks.findValuesAsText("atFt"))
                .containsExactly("10000", "20000", "30000", "35000");
        for (JsonNode check : checks) {
            List<String> names = new ArrayList<>();
            check.fieldNames().forEachRemaining(names::add);
            assertThat(names)
                    .containsExactly(
                            "atFt",
                            "timeS",
                            "cabinAltitudeFt",
                            "cabinRateFtPerMin",
                            "differentialPsi",
                            "maxDifferentialPsi",
                            "reliefDifferentialPsi",
                            "boundBy");
            assertThat(check.get("maxDifferentialPsi").doubleValue()).isEqualTo(7.8);
            assertThat(check.get("differentialPsi").doubleValue()).isBetween(0.0, 7.8);
        }
        // at 500 ft/min from 0.1 psi below the field of 1046.1 ft: 193.6 ft, computed apart
        JsonNode first = checks.get(0);
        double climbed = 500.0 / 60.0 * first.get("timeS").doubleValue();
        assertThat(first.get("cabinAltitudeFt").doubleValue())
                .isCloseTo(1046.1 - 193.6 + climbed, within(1.0));
        assertThat(first.get("cabinRateFtPerMin").doubleValue()).isCloseTo(500.0, within(0.01));
        // 7.8 psi at 35,500 ft, 23280.39 Pa outside, computed apart
        assertThat(checks.get(3).get("cabinAltitudeFt").doubleValue())
                .isCloseTo(7381.53, within(0.01));
    }

    @Test
    @DisplayName(
            "has each restriction with what it takes, the margin in its own feet, and a verdict")
    void restrictions() {
        JsonNode restrictions = json.get("restrictions");
        assertThat(restrictions.findValuesAsText("verdict"))
                .containsExactly("met", "met", "met", "missed");
        JsonNode alder = restrictions.get(0);
        assertThat(alder.get("required").textValue()).isEqualTo("at or above 4000 ft on QNH");
        assertThat(alder.get("predictedFt").doubleValue() - alder.get("marginFt").doubleValue())
                .isCloseTo(4000.0, within(1e-6));
        JsonNode hazel = restrictions.get(3);
        assertThat(hazel.get("predictedFt").doubleValue() - hazel.get("marginFt").doubleValue())
                .isCloseTo(27000.0, within(1e-6));
        assertThat(hazel.get("marginFt").doubleValue()).isNegative();
        for (JsonNode restriction : restrictions) {
            for (String name :
                    List.of(
                            "predictedFt",
                            "marginFt",
                            "requiredGradientFtPerNm",
                            "requiredRateFtPerMin")) {
                assertThat(restriction.get(name).isNumber() || restriction.get(name).isNull())
                        .as(name)
                        .isTrue();
            }
        }
        assertThat(json.get("steepestRequiredAt").textValue()).isEqualTo("BIRCH (invented)");
        assertThat(json.get("leastAllowedAt").textValue()).isEqualTo("CEDAR (invented)");
        assertThat(json.get("restrictionConflicts").size()).isZero();
        // an upper bound takes no gradient
        assertThat(restrictions.get(2).get("requiredGradientFtPerNm").isNull()).isTrue();
    }

    @Test
    @DisplayName("has what the altimeter shows on QNH to 6,000 ft, then on 1013.25 hPa, as texts")
    void altitudeTexts() {
        JsonNode path = json.get("path");
        assertThat(path.get("altitudeText").size()).isEqualTo(path.get("timeS").size());
        for (int i = 0; i < path.get("timeS").size(); i++) {
            double onQnh = path.get("altitudeOnQnhFt").get(i).doubleValue();
            double onStandard = path.get("pressureAltitudeFt").get(i).doubleValue();
            String text = path.get("altitudeText").get(i).textValue();
            double told = Double.parseDouble(text.replaceAll("[^0-9]", ""));
            if (onQnh <= 6000.0 + 1e-6) {
                assertThat(text).endsWith(" ft QNH");
                assertThat(told).isCloseTo(onQnh, within(0.501));
            } else {
                assertThat(text).matches("FL\\d{3}|\\d+ ft");
                assertThat(text.startsWith("FL") ? 100 * told : told)
                        .isCloseTo(onStandard, within(0.501));
            }
        }
        assertThat(json.get("topOfClimb").get("altitudeText").textValue()).isEqualTo("FL350");
        assertThat(json.get("speeds").get("limitBelowText").textValue()).isEqualTo("10000 ft QNH");
        assertThat(json.get("restrictions").findValuesAsText("predictedText"))
                .allMatch(text -> text.matches("\\d+ ft( QNH)?"));
        assertThat(json.get("restrictions").get(0).get("predictedText").textValue())
                .endsWith(" ft QNH");
    }

    @Test
    @DisplayName("has the top of the climb with its fuel, which is what the mass has lost")
    void topOfClimb() {
        JsonNode top = json.get("topOfClimb");
        assertThat(top.get("pressureAltitudeFt").doubleValue()).isEqualTo(35000);
        assertThat(top.get("timeS").doubleValue()).isPositive();
        assertThat(top.get("distanceNm").doubleValue()).isPositive();
        assertThat(top.get("fuelKg").doubleValue() + top.get("massKg").doubleValue())
                .isCloseTo(58000, within(1e-6));
        assertThat(top.get("endsBecause").textValue()).isEqualTo("level reached");
        JsonNode levels = json.get("levels");
        JsonNode last = levels.get(levels.size() - 1);
        assertThat(last.get("massKg")).isEqualTo(top.get("massKg"));
        assertThat(last.get("fuelKg")).isEqualTo(top.get("fuelKg"));
    }

    @Test
    @DisplayName("has every event with its level, time, distance, fuel and the rates on both sides")
    void events() {
        List<String> kinds = new ArrayList<>();
        double time = 0.0;
        for (JsonNode event : json.get("events")) {
            kinds.add(event.get("kind").textValue());
            assertThat(event.get("timeS").doubleValue()).isGreaterThanOrEqualTo(time);
            time = event.get("timeS").doubleValue();
            assertThat(event.get("fuelKg").doubleValue()).isNotNegative();
            assertThat(event.get("rateBelowFtPerMin").isNumber()).isTrue();
            assertThat(event.get("rateAboveFtPerMin").isNumber()).isTrue();
        }
        assertThat(kinds)
                .startsWith("bottom")
                .endsWith("top")
                .contains("change of speed", "speed reached", "crossover", "bleed", "named point");
    }

    @Test
    @DisplayName("has what the wind's change is worth, and what changes the climb by how much")
    void powerAndChanges() {
        assertThat(json.get("power").size()).isGreaterThan(10);
        for (JsonNode point : json.get("power")) {
            assertThat(point.get("windGradientWorthFtPerMin").isNumber()).isTrue();
            double parts =
                    point.get("powerOfClimbFtPerMin").doubleValue()
                            + point.get("powerOfAccelerationFtPerMin").doubleValue()
                            + point.get("powerOfWindChangeFtPerMin").doubleValue();
            assertThat(point.get("specificExcessPowerFtPerMin").doubleValue())
                    .isCloseTo(parts, within(1e-6));
            assertThat(point.get("thrustN").doubleValue())
                    .isGreaterThan(point.get("dragN").doubleValue());
        }
        JsonNode heavier = json.get("changes").get(0);
        assertThat(heavier.get("change").textValue()).isEqualTo("1000 kg heavier");
        assertThat(heavier.get("moreTimeS").doubleValue()).isPositive();
        assertThat(heavier.get("moreFuelKg").doubleValue()).isPositive();
    }

    @Test
    @DisplayName("has the level-off and the cloud ahead")
    void levelOffAndCloud() {
        JsonNode levelOff = json.get("levelOff");
        double rate = levelOff.get("arrivalRateFtPerMin").doubleValue();
        assertThat(levelOff.get("beginsLevellingFtToGo").doubleValue())
                .isCloseTo(0.1 * rate, within(0.01));
        assertThat(levelOff.get("costS").doubleValue()).isZero();
        JsonNode cloud = json.get("cloudTop");
        assertThat(cloud.get("answer").textValue()).isEqualTo("tops by less");
        assertThat(cloud.get("nearEdgeLeastMarginFt").doubleValue())
                .isLessThan(cloud.get("nearEdgeMarginFt").doubleValue());
    }

    @Test
    @DisplayName("carries its limits")
    void limits() {
        assertThat(json.get("limits").size()).isGreaterThanOrEqualTo(5);
    }
}
