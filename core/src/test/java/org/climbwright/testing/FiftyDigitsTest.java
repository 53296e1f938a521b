package org.climbwright.testing;

import static org.assertj.core.api.Assertions.assertThat;

import ch.obermuhlner.math.big.BigDecimalMath;
import java.math.BigDecimal;
import java.math.MathContext;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

@DisplayName("The yardstick of 50 digits")
class FiftyDigitsTest {
    private static final MathContext MORE = new MathContext(80);
    private static final BigDecimal ONE = BigDecimal.ONE;

    @ParameterizedTest
    @ValueSource(doubles = {1e-9, 0.2, 0.75, 0.9999999999999999, 1.0000000000000002, 1.9, 32.6})
    @DisplayName("has the functions that a library of big numbers has")
    void functions(double x) {
        BigDecimal big = new BigDecimal(x);
        BigDecimal power = new BigDecimal("5.2558797");
        agrees(FiftyDigits.log(big), BigDecimalMath.log(big, MORE), "1e-33");
        agrees(FiftyDigits.pow(big, power), BigDecimalMath.pow(big, power, MORE), "1e-46");
        agrees(FiftyDigits.seventhRoot(big), BigDecimalMath.root(big, seven(), MORE), "1e-46");
    }

    @ParameterizedTest
    @ValueSource(doubles = {4.9e-324, 1e-150, 1e-12, 2.2e-8, 2.3e-8, 1e-4, 0.5, 1.0})
    @DisplayName("has the impact pressure of a small Mach number, to 30 digits and more, and back")
    void smallMachNumbers(double mach) {
        BigDecimal big = new BigDecimal(mach);
        BigDecimal x = big.multiply(big).divide(BigDecimal.valueOf(5));
        MathContext all = new MathContext(60 + Math.min(1400, x.scale()));
        BigDecimal exact = BigDecimalMath.sqrt(x.add(ONE).pow(7), all).subtract(ONE);
        BigDecimal impact = FiftyDigits.impactPressure(big, ONE);
        agrees(impact, exact, "1e-32");
        agrees(FiftyDigits.mach(impact, ONE), big, "1e-32");
    }

    @ParameterizedTest
    @ValueSource(doubles = {1.0000000000000002, 1.1, 2.0, 5.0})
    @DisplayName("finds the Mach number of an impact pressure behind a shock")
    void supersonicMachNumbers(double mach) {
        BigDecimal big = new BigDecimal(mach);
        agrees(FiftyDigits.mach(FiftyDigits.impactPressure(big, ONE), ONE), big, "1e-45");
    }

    private static BigDecimal seven() {
        return BigDecimal.valueOf(7);
    }

    private static void agrees(BigDecimal ours, BigDecimal other, String tolerance) {
        assertThat(ours.subtract(other).abs())
                .isLessThan(other.abs().multiply(new BigDecimal(tolerance)));
    }
}
