package org.climbwright.numeric;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

@DisplayName("The search for a zero")
class BracketingSolverTest {
    private static Arguments zero(
            String words, DoubleUnaryOperator function, double from, double to, double zero) {
        return Arguments.of(words, function, from, to, zero);
    }

    /** Functions whose zero follows from their definition. */
    static Stream<Arguments> functions() {
        return Stream.of(
                zero("a straight line", x -> 3.0 * x - 1.5, -10.0, 10.0, 0.5),
                zero("a straight line that falls", x -> 7.0 - x, 0.0, 100.0, 7.0),
                zero("a parabola", x -> x * x - 2.0, 0.0, 5.0, Math.sqrt(2.0)),
                zero("a cosine", Math::cos, 0.0, 3.0, Math.PI / 2.0),
                zero("a logarithm", x -> Math.log(x) - 1.0, 1e-6, 1e6, Math.E),
                zero("a steep exponential", x -> Math.exp(50.0 * (x - 0.3)) - 1.0, -10, 10, 0.3),
                zero("a step", x -> x < 0.123 ? -1.0 : 1.0, -1.0, 1.0, 0.123),
                zero("a pole that changes sign", x -> 1.0 / (x - 0.3), -1.0, 1.0, 0.3),
                zero("a cubic, flat at its zero", x -> Math.pow(x - 1.0, 3), -3.0, 4.0, 1.0),
                zero("a ninth power, very flat", x -> Math.pow(x - 1.0, 9), -3.0, 4.0, 1.0),
                zero("a kink", x -> x < 2.0 ? x - 2.0 : 1e6 * (x - 2.0), 0.0, 9.0, 2.0),
                zero("a bracket given from above", x -> x - 0.25, 1.0, -1.0, 0.25));
    }

    @ParameterizedTest(name = "of {0}")
    @MethodSource("functions")
    @DisplayName("ends within the tolerance of the zero")
    void finds(String words, DoubleUnaryOperator function, double from, double to, double zero) {
        for (double tolerance : new double[] {1e-3, 1e-9, 1e-12}) {
            double found = BracketingSolver.solve(function, from, to, tolerance);
            assertThat(found)
                    .as("%s to %s", words, tolerance)
                    .isCloseTo(zero, within(tolerance + 4 * Math.ulp(zero)));
        }
    }

    @Test
    @DisplayName("asks a smooth function fewer than twenty times where halving would ask forty")
    void fewSteps() {
        AtomicInteger asked = new AtomicInteger();
        BracketingSolver.solve(
                x -> {
                    asked.incrementAndGet();
                    return x * x * x - 5.0;
                },
                0.0,
                10.0,
                1e-12);
        assertThat(asked.get()).isLessThan(20);
    }

    @Test
    @DisplayName("takes a zero at either end as it is")
    void zeroAtAnEnd() {
        assertThat(BracketingSolver.solve(x -> x - 2.0, 2.0, 5.0, 1e-9)).isEqualTo(2.0);
        assertThat(BracketingSolver.solve(x -> x - 5.0, 2.0, 5.0, 1e-9)).isEqualTo(5.0);
        assertThat(BracketingSolver.solve(x -> 0.0, 2.0, 5.0, 1e-9)).isEqualTo(2.0);
    }

    @Test
    @DisplayName("goes to the spacing of doubles when the tolerance asks for more")
    void toTheLastBit() {
        double found = BracketingSolver.solve(x -> x * x - 2.0, 0.0, 2.0, 0.0);
        assertThat(found).isCloseTo(Math.sqrt(2.0), within(4 * Math.ulp(1.4)));
    }

    @Nested
    @DisplayName("is refused")
    class Refuses {
        @Test
        @DisplayName("when both ends have one sign, with the ends and their values")
        void oneSign() {
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> BracketingSolver.solve(x -> x + 2.0, 1.0, 4.0, 1e-9))
                    .withMessage("no change of sign between 1.0 (3.0) and 4.0 (6.0)");
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> BracketingSolver.solve(x -> -x - 2.0, 1.0, 4.0, 1e-9))
                    .withMessage("no change of sign between 1.0 (-3.0) and 4.0 (-6.0)");
        }

        @ParameterizedTest
        @ValueSource(doubles = {1.0, 4.0})
        @DisplayName("when the function has no value at an end")
        void noValueAtAnEnd(double end) {
            DoubleUnaryOperator function = x -> x == end ? Double.NaN : x - 2.0;
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> BracketingSolver.solve(function, 1.0, 4.0, 1e-9))
                    .withMessageContaining("NaN");
        }

        @Test
        @DisplayName("when the function has no value on the way, with the place")
        void noValueOnTheWay() {
            DoubleUnaryOperator function = x -> x > 1.5 && x < 3.5 ? Double.NaN : x - 2.0;
            assertThatExceptionOfType(ArithmeticException.class)
                    .isThrownBy(() -> BracketingSolver.solve(function, 1.0, 4.0, 1e-9))
                    .withMessage("no value at 2.5, between 1.0 and 4.0");
        }
    }
}
