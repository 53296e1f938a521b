package org.climbwright.numeric;

import static org.assertj.core.api.Assertions.assertThat;
import static org.climbwright.testing.FiftyDigits.DIGITS;

import java.math.BigDecimal;
import java.util.Random;
import net.jqwik.api.Assume;
import net.jqwik.api.ForAll;
import net.jqwik.api.Label;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import org.climbwright.testing.Agreement;
import org.climbwright.testing.FiftyDigits;

@Label("Logarithm, exponential and powers")
class PowersPropertyTest {
    private static final double ULP = 0x1p-52;

    @Property(tries = 2000)
    @Label("the logarithm is that of 50-digit arithmetic")
    void logarithm(@ForAll @DoubleRange(min = -20.0, max = 20.0) @Scale(12) double binary) {
        double x = StrictMath.pow(2.0, binary);
        Assume.that(x != 1.0);
        assertThat(Agreement.relativeError(Powers.log(x), FiftyDigits.log(new BigDecimal(x))))
                .isBetween(-ULP, ULP);
    }

    @Property(tries = 1000)
    @Label("the logarithm is so near 1, where it is small")
    void nearOne(@ForAll @DoubleRange(min = 0.5, max = 1.5) @Scale(15) double x) {
        Assume.that(x != 1.0);
        assertThat(Agreement.relativeError(Powers.log(x), FiftyDigits.log(new BigDecimal(x))))
                .isBetween(-ULP, ULP);
    }

    @Property(tries = 1000)
    @Label("the logarithm of a ratio keeps its digits however near both are")
    void ratio(
            @ForAll @DoubleRange(min = 0.1, max = 1e4) @Scale(10) double a,
            @ForAll @DoubleRange(min = -0.9, max = 2.0) @Scale(15) double share) {
        double b = a + share * a;
        Assume.that(a != b);
        BigDecimal exact = new BigDecimal(a).divide(new BigDecimal(b), DIGITS);
        assertThat(Agreement.relativeError(Powers.logOfRatio(a, b), FiftyDigits.log(exact)))
                .isBetween(-2.0 * ULP, 2.0 * ULP);
    }

    @Property(tries = 2000)
    @Label("the exponential is that of 50-digit arithmetic")
    void exponential(@ForAll @DoubleRange(min = -700.0, max = 700.0) @Scale(12) double x) {
        assertThat(Agreement.relativeError(Powers.exp(x), FiftyDigits.exp(new BigDecimal(x))))
                .isBetween(-ULP, ULP);
    }

    @Property(tries = 2000)
    @Label("a power is that of 50-digit arithmetic, as the laws of engines ask for it")
    void power(
            @ForAll @DoubleRange(min = -20.0, max = 20.0) @Scale(12) double binary,
            @ForAll @DoubleRange(min = -1.4, max = 1.4) @Scale(12) double y) {
        agrees(StrictMath.pow(2.0, binary), y);
    }

    @Property(tries = 3000)
    @Label("a power is so to the ends of the double range, but for what the exponent magnifies")
    void largePower(@ForAll Random random) {
        double x = StrictMath.pow(2.0, 40.0 * random.nextDouble() - 20.0);
        double y = (1400.0 * random.nextDouble() - 700.0) / StrictMath.log(x);
        Assume.that(Math.abs(y) < 1e9);
        agrees(x, y);
    }

    private static void agrees(double x, double y) {
        double ulps = 0.75 + 0.03 * Math.abs(y * StrictMath.log(x));
        BigDecimal exact =
                FiftyDigits.exp(
                        new BigDecimal(y).multiply(FiftyDigits.log(new BigDecimal(x)), DIGITS));
        assertThat(Agreement.relativeError(Powers.pow(x, y), exact))
                .isBetween(-ulps * ULP, ulps * ULP);
    }

    @Property(tries = 1000)
    @Label("a logarithm leads back to its number")
    void roundTrip(@ForAll @DoubleRange(min = 1e-6, max = 1e6) @Scale(12) double x) {
        // the rounding of a logarithm up to 13.8 is 14 times as large in its number, and 1 besides
        assertThat(Powers.exp(Powers.log(x))).isBetween(x * (1 - 12 * ULP), x * (1 + 12 * ULP));
    }

    @Property(tries = 1000)
    @Label("the inverse exponent leads back to the number")
    void roundTripOfPower(
            @ForAll @DoubleRange(min = 0.01, max = 100.0) @Scale(12) double x,
            @ForAll @DoubleRange(min = 0.2, max = 5.0) @Scale(12) double y) {
        assertThat(Powers.pow(Powers.pow(x, y), 1.0 / y))
                .isBetween(x * (1 - 20 * ULP), x * (1 + 20 * ULP));
    }

    @Property(tries = 1000)
    @Label("never fall where the number grows")
    void monotone(
            @ForAll @DoubleRange(min = 1e-6, max = 1e6) @Scale(12) double x,
            @ForAll @DoubleRange(min = 0.1, max = 3.0) @Scale(3) double y) {
        double more = x * (1.0 + 16.0 * ULP);
        assertThat(Powers.log(more)).isGreaterThanOrEqualTo(Powers.log(x));
        assertThat(Powers.pow(more, y)).isGreaterThanOrEqualTo(Powers.pow(x, y));
        assertThat(Powers.exp(Powers.log(more))).isGreaterThanOrEqualTo(Powers.exp(Powers.log(x)));
    }

    @Property(tries = 300)
    @Label("are exact where nothing is to be done")
    void exact(@ForAll @DoubleRange(min = 1e-6, max = 1e6) @Scale(12) double x) {
        assertThat(Powers.pow(x, 1.0)).isEqualTo(x);
        assertThat(Powers.pow(x, 0.0)).isEqualTo(1.0);
        assertThat(Powers.pow(1.0, x)).isEqualTo(1.0);
    }
}
