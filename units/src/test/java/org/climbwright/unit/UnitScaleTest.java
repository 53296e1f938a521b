package org.climbwright.unit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.math.BigDecimal;
import java.math.MathContext;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

@DisplayName("The table of units")
class UnitScaleTest {
    // The factors of an angle, the only ones without an exact decimal or fraction.
    private static final Set<UnitScale> ANGLES = EnumSet.of(UnitScale.DEGREE, UnitScale.ARC_MINUTE);

    // 35 digits of pi, more than twice what a double holds.
    private static final BigDecimal PI = new BigDecimal("3.1415926535897932384626433832795029");

    private static final MathContext FORTY_DIGITS = new MathContext(40);

    @ParameterizedTest(name = "{0} is {1} / {2} of its SI unit")
    @CsvFileSource(resources = "/unit/exact-factors.csv", useHeadersInDisplayName = true)
    @DisplayName("has the factor of the definition, to the last bit of a double:")
    void hasTheFactorOfTheDefinition(
            UnitScale scale, BigDecimal numerator, BigDecimal denominator, String source) {
        BigDecimal exact = numerator.divide(denominator, FORTY_DIGITS);

        assertThat(scale.factor()).isEqualTo(exact.doubleValue());
    }

    @Test
    @DisplayName("is compared with the definitions in full: every unit has its row")
    void everyUnitHasARow() throws Exception {
        Map<UnitScale, Integer> rows = new EnumMap<>(UnitScale.class);
        try (var lines = getClass().getResourceAsStream("/unit/exact-factors.csv")) {
            new String(lines.readAllBytes(), StandardCharsets.UTF_8)
                    .lines()
                    .filter(line -> !line.startsWith("#") && !line.startsWith("scale,"))
                    .map(line -> UnitScale.valueOf(line.substring(0, line.indexOf(','))))
                    .forEach(scale -> rows.merge(scale, 1, Integer::sum));
        }
        Set<UnitScale> expected = EnumSet.complementOf(EnumSet.copyOf(ANGLES));
        assertThat(rows.keySet()).isEqualTo(expected);
        assertThat(rows.values()).containsOnly(1);
    }

    @ParameterizedTest(name = "{0}: {1} make half a turn")
    @CsvSource({"DEGREE, 180", "ARC_MINUTE, 10800"})
    @DisplayName("has the angles as parts of pi")
    void angles(UnitScale scale, BigDecimal partsOfHalfATurn) {
        assertThat(scale.factor())
                .isEqualTo(PI.divide(partsOfHalfATurn, FORTY_DIGITS).doubleValue());
    }

    @Test
    @DisplayName("has 29.9212555 inHg for 1013.25 hPa")
    void standardPressureInInches() {
        // 101325 / 3386.388640341 in more digits than a double has.
        BigDecimal exact =
                new BigDecimal("101325").divide(new BigDecimal("3386.388640341"), FORTY_DIGITS);

        assertThat(exact.toString()).startsWith("29.92125557974847");
        assertThat(UnitScale.INCH_OF_MERCURY.fromSi(101325.0)).isEqualTo(exact.doubleValue());
    }

    @ParameterizedTest(name = "{1} {0} is {2} K")
    @CsvSource({
        "CELSIUS, 0, 273.15",
        "CELSIUS, 15, 288.15",
        "CELSIUS, -273.15, 0",
        "FAHRENHEIT, 32, 273.15",
        "FAHRENHEIT, 59, 288.15",
        "FAHRENHEIT, 212, 373.15",
        "FAHRENHEIT, -40, 233.15",
        "KELVIN, 288.15, 288.15",
        "CELSIUS_DIFFERENCE, 15, 15",
        "FAHRENHEIT_DIFFERENCE, 9, 5",
        "KELVIN_DIFFERENCE, 15, 15"
    })
    @DisplayName("has the zero of a temperature scale, and none for an interval:")
    void temperatures(UnitScale scale, double number, double kelvins) {
        // Fahrenheit is a product and a sum: each is rounded once, to half an ulp of some 300 K.
        double twoRoundings = Math.ulp(300.0);
        assertEquals(kelvins, scale.toSi(number), twoRoundings);
        assertEquals(number, scale.fromSi(kelvins), 2.0 * twoRoundings);
    }

    @ParameterizedTest
    @EnumSource
    @DisplayName("has a zero of its own for °C and °F only:")
    void zeroes(UnitScale scale) {
        boolean shifted = scale == UnitScale.CELSIUS || scale == UnitScale.FAHRENHEIT;
        assertThat(scale.offset() != 0.0).isEqualTo(shifted);
        assertThat(scale.toSi(-scale.offset())).isZero();
    }

    @ParameterizedTest
    @EnumSource
    @DisplayName("begins each kind with its SI unit")
    void beginsWithSi(QuantityKind kind) {
        UnitScale first =
                Arrays.stream(UnitScale.values())
                        .filter(scale -> scale.kind() == kind)
                        .findFirst()
                        .orElseThrow();

        assertThat(first.factor()).isEqualTo(1.0);
        assertThat(first.offset()).isZero();
    }

    @ParameterizedTest
    @EnumSource
    @DisplayName("has a label once in each kind, without a space")
    void labelsAreUnique(QuantityKind kind) {
        List<String> labels =
                Arrays.stream(UnitScale.values())
                        .filter(scale -> scale.kind() == kind)
                        .map(UnitScale::label)
                        .collect(Collectors.toList());

        assertThat(labels)
                .isNotEmpty()
                .doesNotHaveDuplicates()
                .allSatisfy(label -> assertThat(label).isNotEmpty().doesNotContainAnyWhitespaces());
    }

    @Test
    @DisplayName("gives back whole feet that a plain division would lose")
    void aPlainDivisionLosesFeet() {
        UnitScale foot = UnitScale.FOOT;
        int lost = 0;
        for (int feet = 0; feet <= 61_000; feet++) {
            double metres = foot.toSi(feet);
            lost += metres / foot.factor() == feet ? 0 : 1;
            assertThat(foot.fromSi(metres) == feet).as("%d ft", feet).isTrue();
        }
        assertThat(lost).as("whole feet that a plain division loses").isPositive();
        assertThat(31_000 * 0.3048 / 0.3048).isNotEqualTo(31_000.0);
    }

    @ParameterizedTest
    @EnumSource
    @DisplayName("lets NaN and the infinities through, for the values to refuse")
    void lettingThrough(UnitScale scale) {
        for (double number :
                new double[] {Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY}) {
            assertThat(Double.valueOf(scale.toSi(number))).isEqualTo(Double.valueOf(number));
            assertThat(Double.valueOf(scale.fromSi(number))).isEqualTo(Double.valueOf(number));
        }
    }
}
