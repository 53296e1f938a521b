package org.climbwright.gradient.restriction;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.climbwright.quantity.OutsideModelException;
import org.climbwright.quantity.altitude.AltitudeChange;
import org.climbwright.quantity.altitude.AltitudeOnQnh;
import org.climbwright.quantity.altitude.PressureAltitude;
import org.climbwright.quantity.path.GroundDistance;
import org.climbwright.quantity.pressure.AltimeterSetting;
import org.climbwright.testing.Table;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.ValueSource;

@DisplayName("A restriction of the altitude")
class AltitudeRestrictionTest {
    private static final double HALF_A_FOOT = 0.5;

    private static Level qnhFeet(double feet) {
        return Level.of(AltitudeOnQnh.ofFeet(feet));
    }

    private static Level level(double flightLevel) {
        return Level.of(PressureAltitude.ofFlightLevel(flightLevel));
    }

    private static AltimeterSetting hectopascals(double value) {
        return AltimeterSetting.ofHectopascals(value);
    }

    private static AltitudeRestriction ofRow(String id, String testAt) {
        return switch (id) {
            case "A01" -> AltitudeRestriction.atOrAbove(qnhFeet(Double.parseDouble(testAt)));
            case "A02" -> AltitudeRestriction.atOrBelow(qnhFeet(Double.parseDouble(testAt)));
            case "A03" ->
                    AltitudeRestriction.at(
                            qnhFeet(Double.parseDouble(testAt)),
                            AltitudeChange.ofFeet(HALF_A_FOOT));
            case "A04" -> AltitudeRestriction.recommended(qnhFeet(Double.parseDouble(testAt)));
            default -> {
                String[] window = testAt.split("\\.\\.");
                yield AltitudeRestriction.between(
                        qnhFeet(Double.parseDouble(window[0])),
                        qnhFeet(Double.parseDouble(window[1])));
            }
        };
    }

    @ParameterizedTest(name = "{0}: {1} of {4} at {5} is {6}")
    @CsvFileSource(resources = "/gradient/altitude-restrictions.csv", numLinesToSkip = 1)
    @DisplayName("is met as the table of depictions says, on any QNH")
    void agreesWithTheTable(
            String id,
            String term,
            String depiction,
            String satisfiedWhen,
            String testAt,
            String values,
            String expected,
            String source) {
        assertThat(source).isNotBlank();
        if (id.compareTo("A07") >= 0) {
            return; // rules in words; the tests below say them, and rows-left-out counts them
        }
        if (expected.equals("error")) {
            assertThatThrownBy(() -> ofRow(id, testAt))
                    .isInstanceOf(IllegalArgumentException.class)
                    .hasMessageContaining("4000 ft on QNH")
                    .hasMessageContaining("3000 ft on QNH");
            return;
        }
        AltitudeRestriction restriction = ofRow(id, testAt);
        String[] readings = values.equals("any") ? new String[] {"0", "9000"} : values.split(" / ");
        String[] answers = expected.split(" / ");
        for (double qnh : new double[] {1013.25, 1003, 1030}) {
            for (int i = 0; i < readings.length; i++) {
                PressureAltitude altitude =
                        qnhFeet(Double.parseDouble(readings[i]))
                                .pressureAltitude(hectopascals(qnh));
                assertThat(restriction.isMet(altitude, hectopascals(qnh)))
                        .as("%s at %s ft on %s hPa", restriction, readings[i], qnh)
                        .isEqualTo(answers[Math.min(i, answers.length - 1)].equals("yes"));
            }
        }
    }

    @Test
    @DisplayName("has ten rows in the table, four of them rules in words, each with its reason")
    void rows() {
        assertThat(Table.rows("/gradient/altitude-restrictions.csv")).hasSize(10);
        assertThat(Table.rows("/gradient/speed-rules.csv")).hasSize(5);
        List<String> left = Table.rows("/gradient/rows-left-out-restriction.csv");
        assertThat(left).hasSize(6).allMatch(row -> row.contains(",no figure to compare: "));
        assertThat(left).filteredOn(row -> row.startsWith("altitude-restrictions")).hasSize(4);
    }

    @Test
    @DisplayName("on QNH 1003 is missed at FL100 by 281 ft where 10,000 ft on QNH are the least")
    void lowQnh() {
        AltitudeRestriction least = AltitudeRestriction.atOrAbove(qnhFeet(10000));
        PressureAltitude flown = PressureAltitude.ofFlightLevel(100);
        // row A10: compared without its reference it would pass
        assertThat(flown.inFeet()).isGreaterThanOrEqualTo(10000.0);
        assertThat(least.isMet(flown, hectopascals(1003))).isFalse();
        // 27.4 ft for each of 10.25 hPa, by the hydrostatic equation at sea level, to its curvature
        assertThat(least.margin(flown, hectopascals(1003)).orElseThrow().inFeet())
                .isCloseTo(-10.25 * 27.43, within(1.0));
    }

    @Test
    @DisplayName(
            "on QNH 1030 is missed at FL100 where 10,000 ft on QNH are the most, and so is"
                    + " FL100 at 10,000 ft on QNH where that is the least")
    void highQnh() {
        AltimeterSetting qnh = hectopascals(1030);
        AltitudeRestriction most = AltitudeRestriction.atOrBelow(qnhFeet(10000));
        assertThat(most.isMet(PressureAltitude.ofFlightLevel(100), qnh)).isFalse();
        AltitudeRestriction least = AltitudeRestriction.atOrAbove(level(100));
        assertThat(least.isMet(qnhFeet(10000).pressureAltitude(qnh), qnh)).isFalse();
        assertThat(least.margin(qnhFeet(10000).pressureAltitude(qnh), qnh).orElseThrow().inFeet())
                .isCloseTo(-16.75 * 27.2, within(3.0));
    }

    @ParameterizedTest
    @ValueSource(doubles = {1013.25, 1003, 1030})
    @DisplayName("counts its margin in feet: a bound has none, a foot either side one foot")
    void margins(double hectopascals) {
        AltimeterSetting qnh = hectopascals(hectopascals);
        AltitudeRestriction window = AltitudeRestriction.between(qnhFeet(3000), qnhFeet(4000));
        double[] readings = {2999, 3000, 3001, 3500, 3999, 4000, 4001};
        double[] margins = {-1, 0, 1, 500, 1, 0, -1};
        for (int i = 0; i < readings.length; i++) {
            PressureAltitude altitude = qnhFeet(readings[i]).pressureAltitude(qnh);
            // 1e-8 ft: the nanometre to which a margin is told
            assertThat(window.margin(altitude, qnh).orElseThrow().inFeet())
                    .isCloseTo(margins[i], within(1e-8));
        }
        AltitudeRestriction at = AltitudeRestriction.at(qnhFeet(5000), AltitudeChange.ofFeet(100));
        double[] near = {4899, 4900, 5000, 5100, 5101};
        double[] left = {-1, 0, 100, 0, -1};
        for (int i = 0; i < near.length; i++) {
            PressureAltitude altitude = qnhFeet(near[i]).pressureAltitude(qnh);
            assertThat(at.margin(altitude, qnh).orElseThrow().inFeet())
                    .isCloseTo(left[i], within(1e-8));
            assertThat(at.isMet(altitude, qnh)).isEqualTo(left[i] >= 0);
        }
    }

    @Test
    @DisplayName("of FL100 to 10,200 ft on QNH is a window on QNH 1013.25, and empty on QNH 1030")
    void mixedWindow() {
        AltitudeRestriction window = AltitudeRestriction.between(level(100), qnhFeet(10200));
        assertThat(window.emptyBecause(AltimeterSetting.standard())).isEmpty();
        // on a high QNH the altitude lies lower: 10,200 ft on 1030 hPa are some FL97
        assertThat(window.emptyBecause(hectopascals(1030)).orElseThrow())
                .contains("FL100")
                .contains("10200 ft on QNH")
                .contains("1030");
        assertThat(window.isMet(PressureAltitude.ofFlightLevel(99), hectopascals(1030))).isFalse();
        assertThat(window.isMet(PressureAltitude.ofFlightLevel(101), hectopascals(1013.25)))
                .isTrue();
    }

    @Test
    @DisplayName("that is only recommended has no margin and no bounds")
    void recommended() {
        AltitudeRestriction recommended = AltitudeRestriction.recommended(level(60));
        assertThat(recommended.margin(PressureAltitude.ofFeet(0), hectopascals(1013))).isEmpty();
        assertThat(recommended.lower()).isEmpty();
        assertThat(recommended.upper()).isEmpty();
        assertThat(recommended.emptyBecause(hectopascals(1013))).isEmpty();
    }

    @Test
    @DisplayName("refuses a tolerance below 0, and its margin a level that is none")
    void refuses() {
        assertThatThrownBy(() -> AltitudeRestriction.at(level(60), AltitudeChange.ofFeet(-1)))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("-1");
        double infinity = Double.POSITIVE_INFINITY;
        double[][] refused = {
            {Double.NaN, 0, 1},
            {0, Double.NaN, 1},
            {0, 0, Double.NaN},
            {0, -infinity, infinity},
            {1e6, 0, infinity},
            {0, infinity, infinity},
            {0, -infinity, -infinity}
        };
        for (double[] each : refused) {
            assertThat(AltitudeRestriction.coversMargin(each[0], each[1], each[2])).isFalse();
            assertThatThrownBy(() -> AltitudeRestriction.margin(each[0], each[1], each[2]))
                    .isInstanceOf(OutsideModelException.class);
        }
        assertThat(AltitudeRestriction.coversMargin(0, -infinity, 1)).isTrue();
        assertThat(AltitudeRestriction.margin(0, -infinity, 1)).isEqualTo(1.0);
        assertThat(AltitudeRestriction.coversMargin(0, 1, infinity)).isTrue();
        assertThat(AltitudeRestriction.margin(0, 1, infinity)).isEqualTo(-1.0);
    }

    @Test
    @DisplayName("is cancelled by US practice where a level is restated alone, and holds restated")
    void restated() {
        Restriction first =
                Restriction.of(
                        "A",
                        GroundDistance.ofNauticalMiles(5),
                        AltitudeRestriction.atOrAbove(qnhFeet(3000)));
        Restriction second =
                Restriction.of(
                        "B",
                        GroundDistance.ofNauticalMiles(15),
                        AltitudeRestriction.atOrAbove(qnhFeet(12000)));
        Clearance earlier = new Clearance(level(290), List.of(first));
        assertThat(earlier.restatedByUsPractice(level(250)).restrictions()).isEmpty(); // A07
        Clearance both = earlier.restatedByUsPractice(level(240), List.of(first, second)); // A08
        assertThat(both.restrictions()).containsExactly(first, second);
        assertThat(both.level()).isEqualTo(level(240));
        assertThat(Clearance.RULE).contains("4-4-10(g)");
    }
}
