package org.climbwright.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import org.assertj.core.api.InstanceOfAssertFactories;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

@DisplayName("The range in which a model holds")
class ModelRangeTest {
    // The example of the class comment.
    private static final ModelRange ALTITUDE =
            new ModelRange("pressure altitude", -5000.0, 80000.0, "m", "the tables end there");

    @ParameterizedTest
    @ValueSource(doubles = {-5000.0, -0.0, 0.0, 11000.0, 80000.0})
    @DisplayName("hands back what lies in it, both ends included")
    void holds(double altitudeM) {
        assertThat(ALTITUDE.covers(altitudeM)).isTrue();
        assertThat(ALTITUDE.check(altitudeM)).isEqualTo(altitudeM);
    }

    @ParameterizedTest
    @ValueSource(
            doubles = {
                Double.NaN,
                Double.NEGATIVE_INFINITY,
                Double.POSITIVE_INFINITY,
                -5000.000000000001,
                80000.00000000001
            })
    @DisplayName("refuses what lies outside, a hair beyond an end and NaN included")
    void refuses(double altitudeM) {
        assertThat(ALTITUDE.covers(altitudeM)).isFalse();
        assertThatExceptionOfType(OutsideModelException.class)
                .isThrownBy(() -> ALTITUDE.check(altitudeM))
                .satisfies(
                        refused -> {
                            // boxed: a NaN equals a NaN
                            assertThat(refused.value()).isEqualTo(Double.valueOf(altitudeM));
                            assertThat(refused.term()).isEqualTo("pressure altitude");
                            assertThat(refused.lowest()).isEqualTo(-5000.0);
                            assertThat(refused.highest()).isEqualTo(80000.0);
                            assertThat(refused.unit()).isEqualTo("m");
                        });
    }

    @Test
    @DisplayName("says term, range, value, unit and reason in one sentence")
    void message() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> ALTITUDE.check(90000.0))
                .withMessage(
                        "pressure altitude must be from -5000.0 to 80000.0 m, but was 90000.0 m:"
                                + " the tables end there");
        assertThatIllegalArgumentException()
                .isThrownBy(
                        () ->
                                new ModelRange("Mach number", 0.0, 5.0, "", "the air ionises")
                                        .check(6.0))
                .withMessage("Mach number must be from 0.0 to 5.0, but was 6.0: the air ionises")
                .extracting(
                        OutsideModelException.class::cast,
                        InstanceOfAssertFactories.type(OutsideModelException.class))
                .extracting(OutsideModelException::unit)
                .isEqualTo("");
    }

    @Test
    @DisplayName("tells its ends and its reason")
    void ends() {
        assertThat(ALTITUDE.lowest()).isEqualTo(-5000.0);
        assertThat(ALTITUDE.highest()).isEqualTo(80000.0);
        assertThat(ALTITUDE.reason()).isEqualTo("the tables end there");
        ModelRange point = new ModelRange("layer", 11000.0, 11000.0, "m", "one level only");
        assertThat(point.covers(11000.0)).isTrue();
    }

    @ParameterizedTest(name = "from {0} to {1}")
    @CsvSource({"1, 0", "NaN, 1", "0, NaN", "0, Infinity", "-Infinity, 0"})
    @DisplayName("cannot be made from ends that are no numbers, or in the wrong order")
    void refusesBounds(double lowest, double highest) {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new ModelRange("altitude", lowest, highest, "m", "none"))
                .withMessage(
                        "a range needs finite bounds in order, but had %s and %s", lowest, highest);
    }
}
