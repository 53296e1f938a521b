package org.climbwright.testing;

import java.math.BigDecimal;
import java.math.MathContext;
import org.assertj.core.api.Condition;

/**
 * How well a number of ours agrees with a number from outside, which comes as the text that was
 * printed: its digits say how far it can be trusted.
 */
public final class Agreement {
    /**
     * What our own number may be off besides: the accuracy that its Javadoc states. It matters only
     * where the unrounded value ends in a five that a source may have rounded either way.
     */
    private static final BigDecimal OURS = new BigDecimal("1e-12");

    private Agreement() {}

    /** Ours rounds to the printed number: within half a unit of the last digit written. */
    public static Condition<Double> printedAs(String printed) {
        BigDecimal outside = new BigDecimal(printed);
        return within(outside, halfUnit(outside, outside.ulp()), "half a unit of the last digit");
    }

    /** As {@link #printedAs}, in a table that does not write the zeros at the end of a number. */
    public static Condition<Double> printedAs(String printed, int significantDigits) {
        BigDecimal outside = new BigDecimal(printed);
        return within(
                outside,
                halfUnit(outside, unitOf(outside, significantDigits)),
                "half a unit of digit " + significantDigits);
    }

    /** Ours lies so near to the number from outside, relative to it. */
    public static Condition<Double> relativelyCloseTo(String outside, double tolerance) {
        BigDecimal number = new BigDecimal(outside);
        return within(
                number, number.abs().multiply(new BigDecimal(tolerance)), tolerance + " of it");
    }

    /**
     * Ours lies within 1e-12 of the number from outside, relative to it; in a column of fewer than
     * 13 digits within half a unit of the last of them.
     */
    public static Condition<Double> computedAs(String outside, int significantDigits) {
        return significantDigits < 13
                ? printedAs(outside, significantDigits)
                : relativelyCloseTo(outside, 1e-12);
    }

    /** Ours lies so near to the number from outside, in its own unit. */
    public static Condition<Double> closeTo(String outside, double tolerance) {
        return within(
                new BigDecimal(outside), new BigDecimal(tolerance), Double.toString(tolerance));
    }

    /** How far ours is from the exact number, relative to it. */
    public static double relativeError(double ours, BigDecimal exact) {
        return new BigDecimal(ours)
                .subtract(exact)
                .divide(exact, MathContext.DECIMAL64)
                .doubleValue();
    }

    /** How far ours is from the exact number, in its unit. */
    public static double error(double ours, BigDecimal exact) {
        return new BigDecimal(ours).subtract(exact).doubleValue();
    }

    private static Condition<Double> within(
            BigDecimal outside, BigDecimal tolerance, String words) {
        return new Condition<>(
                ours -> new BigDecimal(ours).subtract(outside).abs().compareTo(tolerance) <= 0,
                "%s, to within %s",
                outside.toPlainString(),
                words);
    }

    private static BigDecimal halfUnit(BigDecimal outside, BigDecimal unit) {
        return unit.divide(BigDecimal.valueOf(2)).add(outside.abs().multiply(OURS));
    }

    private static BigDecimal unitOf(BigDecimal number, int significantDigits) {
        return BigDecimal.ONE.scaleByPowerOfTen(
                number.precision() - number.scale() - significantDigits);
    }
}
