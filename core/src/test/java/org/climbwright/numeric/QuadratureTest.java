package org.climbwright.numeric;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import org.climbwright.testing.Agreement;
import org.climbwright.testing.FiftyDigits;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Five points of Gauss and Legendre leave an error of {@code (b - a)^11 (5!)^4 / (11 (10!)^3)}
 * times the tenth derivative somewhere inside (Abramowitz and Stegun, 25.4.30, from memory).
 */
@DisplayName("An integral over one stretch")
class QuadratureTest {
    private static final double FACTORIAL_10 = 3628800.0;
    private static final double FACTOR = Math.pow(120.0, 4) / (11.0 * Math.pow(FACTORIAL_10, 3));

    @ParameterizedTest(name = "of x to the {0}")
    @ValueSource(ints = {0, 1, 2, 3, 4, 5, 6, 7, 8, 9})
    @DisplayName("is exact but for rounding up to the ninth power")
    void exactToDegreeNine(int degree) {
        double from = -0.75;
        double to = 2.0;
        double exact = (Math.pow(to, degree + 1) - Math.pow(from, degree + 1)) / (degree + 1);
        assertThat(Quadrature.integrate(x -> Math.pow(x, degree), from, to))
                .isCloseTo(exact, within(4e-15 * exact));
    }

    @Test
    @DisplayName("of the tenth power is off by what the theory says, and no less")
    void degreeTen() {
        double error = 2.0 / 11.0 - Quadrature.integrate(x -> Math.pow(x, 10), -1.0, 1.0);
        double theory = Math.pow(2.0, 11) * FACTOR * FACTORIAL_10;
        assertThat(error).isCloseTo(theory, within(1e-12 * theory + 1e-15));
    }

    @ParameterizedTest(name = "from {0} to {1}")
    @CsvSource({"0, 1", "-1, 1", "2, 2.5", "0, 3", "1, -1"})
    @DisplayName("of the exponential is that of 50 digits, to the error that the theory allows")
    void exponential(double from, double to) {
        BigDecimal exact =
                FiftyDigits.exp(new BigDecimal(to)).subtract(FiftyDigits.exp(new BigDecimal(from)));
        double ours = Quadrature.integrate(Math::exp, from, to);
        double highest = Math.exp(Math.max(from, to));
        double theory = Math.pow(Math.abs(to - from), 11) * FACTOR * highest;
        assertThat(Agreement.error(ours, exact)).isCloseTo(0.0, within(theory + 4e-16 * highest));
    }

    @ParameterizedTest(name = "from {0} to {1}")
    @CsvSource({"1, 1.5", "1, 2", "2, 2.1", "10, 8"})
    @DisplayName("of 1 / x is the logarithm of 50 digits, to the error that the theory allows")
    void reciprocal(double from, double to) {
        BigDecimal exact =
                FiftyDigits.log(new BigDecimal(to)).subtract(FiftyDigits.log(new BigDecimal(from)));
        double ours = Quadrature.integrate(x -> 1.0 / x, from, to);
        // the tenth derivative of 1 / x is 10! / x^11
        double derivative = FACTORIAL_10 / Math.pow(Math.min(from, to), 11);
        double theory = Math.pow(Math.abs(to - from), 11) * FACTOR * derivative;
        assertThat(Agreement.error(ours, exact)).isCloseTo(0.0, within(theory + 4e-16));
    }

    @Test
    @DisplayName("changes sign with its direction, and is nothing over nothing")
    void direction() {
        double up = Quadrature.integrate(Math::sin, 0.2, 0.9);
        assertThat(Quadrature.integrate(Math::sin, 0.9, 0.2)).isEqualTo(-up);
        assertThat(Quadrature.integrate(Math::sin, 0.9, 0.9)).isZero();
    }

    @Test
    @DisplayName("never asks the ends, where a function may jump")
    void endsAreNotAsked() {
        assertThat(Quadrature.integrate(x -> x == 0.0 || x == 1.0 ? Double.NaN : 1.0, 0.0, 1.0))
                .isCloseTo(1.0, within(4e-16));
    }
}
