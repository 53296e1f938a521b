package org.climbwright.fitting;

import static org.climbwright.fitting.ChebyshevFit.DIGITS;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;

/**
 * A polynomial of a kernel: a function, less its head where it has one, over a domain, of the
 * lowest degree that is accurate enough. Prints itself as a Java method.
 */
final class Polynomial implements Printed {
    /** What the rest of a kernel loses is ten times more. */
    private static final BigDecimal ACCURATE = new BigDecimal("2e-17");

    private static final int HIGHEST_DEGREE = 31;
    private static final int LINE = 100;

    /** Of x in Estrin's scheme; one more would be another product and gain no time. */
    private static final int HIGHEST_POWER = 8;

    private final String name;
    private final String meaning;
    private final BigDecimal from;
    private final BigDecimal to;
    private final BigDecimal centre;
    private final UnaryOperator<BigDecimal> function;
    private UnaryOperator<BigDecimal> weight = x -> BigDecimal.ONE;
    private boolean hasHead;
    private boolean isSteady;

    /**
     * A polynomial of a variable.
     *
     * @param name the name of the method
     * @param meaning first sentence of its comment
     * @param centre what the caller takes off the variable before
     */
    Polynomial(
            String name,
            String meaning,
            BigDecimal from,
            BigDecimal to,
            BigDecimal centre,
            UnaryOperator<BigDecimal> function) {
        this.name = name;
        this.meaning = meaning;
        this.from = from;
        this.to = to;
        this.centre = centre;
        this.function = function;
    }

    /** The weight with which an error counts: by default 1. */
    Polynomial weighedBy(UnaryOperator<BigDecimal> errorWeight) {
        weight = errorWeight;
        return this;
    }

    /** The same without its value at the centre, which the caller adds with the error it makes. */
    Polynomial withHead() {
        hasHead = true;
        return this;
    }

    /**
     * The same with its straight line added last, so that no more than two roundings are as large
     * as the value: neighbouring arguments hardly disagree.
     */
    Polynomial steady() {
        isSteady = true;
        return this;
    }

    @Override
    public boolean isNamed(String other) {
        return name.equals(other);
    }

    /** The Java source of the method and of its constants. */
    @Override
    public String source() {
        double head = hasHead ? function.apply(centre).doubleValue() : 0.0;
        BigDecimal off = new BigDecimal(head);
        ChebyshevFit fit =
                new ChebyshevFit(from, to, centre, x -> function.apply(x).subtract(off, DIGITS));
        for (int degree = 2; degree <= HIGHEST_DEGREE; degree++) {
            double[] coefficients = fit.coefficients(degree);
            BigDecimal error = fit.largestError(coefficients, weight);
            if (error.compareTo(ACCURATE) <= 0 || isRoundedAway(fit, coefficients, error)) {
                return source(coefficients, head, error);
            }
        }
        throw new IllegalStateException(name + " needs a higher degree");
    }

    /** Whether a higher degree gains nothing, because the rounding of coefficients is left. */
    private boolean isRoundedAway(ChebyshevFit fit, double[] coefficients, BigDecimal error) {
        if (error.compareTo(new BigDecimal("1e-16")) > 0) {
            return false;
        }
        BigDecimal next = fit.largestError(fit.coefficients(coefficients.length), weight);
        return next.multiply(new BigDecimal("1.3")).compareTo(error) > 0;
    }

    private String source(double[] coefficients, double head, BigDecimal error) {
        StringBuilder text = new StringBuilder();
        if (centre.signum() != 0) {
            text.append(Constant.source(name + "Centre", centre.doubleValue())).append('\n');
        }
        if (hasHead) {
            text.append(Constant.source(name + "Head", head)).append('\n');
        }
        String taken = centre.signum() == 0 ? "" : ", taken from its centre";
        text.append(
                comment(
                        meaning
                                + (hasHead ? ", less its head" : "")
                                + ". Of x from "
                                + digits(from)
                                + " to "
                                + digits(to)
                                + taken
                                + "; degree "
                                + (coefficients.length - 1)
                                + ", error "
                                + error.round(new MathContext(2, RoundingMode.UP)).doubleValue()
                                + "."));
        text.append("    static double ").append(name).append("(double x) {\n");
        int count = isSteady ? coefficients.length - 2 : coefficients.length;
        for (int power = 2; power <= HIGHEST_POWER && power < count; power *= 2) {
            String half = power == 2 ? "x" : "x" + power / 2;
            text.append("        double x").append(power).append(" = ");
            text.append(half).append(" * ").append(half).append(";\n");
        }
        List<String> sums = new ArrayList<>();
        String result = estrin(coefficients, 0, coefficients.length, sums);
        for (String sum : sums) {
            text.append("        ").append(sum).append('\n');
        }
        return text.append("        return ").append(result).append(";\n    }\n").toString();
    }

    /** Estrin's scheme: halves that know nothing of each other, so that they run side by side. */
    private String estrin(double[] coefficients, int from, int to, List<String> sums) {
        int count = to - from;
        if (count == 1) {
            return Double.toString(coefficients[from]);
        }
        boolean isWhole = count == coefficients.length;
        int split =
                isWhole && isSteady ? 2 : Math.min(HIGHEST_POWER, Integer.highestOneBit(count - 1));
        String high = estrin(coefficients, from + split, to, sums);
        String low = estrin(coefficients, from, from + split, sums);
        String power = split == 1 ? "x" : "x" + split;
        String sum = "Math.fma(" + power + ", " + high + ", " + low + ")";
        if (isWhole) {
            return sum;
        }
        String variable = "c" + from + "to" + (to - 1);
        sums.add("double " + variable + " = " + sum + ";");
        return variable;
    }

    private static String digits(BigDecimal bound) {
        return bound.round(new MathContext(6)).stripTrailingZeros().toPlainString();
    }

    static String comment(String text) {
        String oneLine = "    /** " + text + " */\n";
        if (oneLine.length() <= LINE + 1) {
            return oneLine;
        }
        StringBuilder comment = new StringBuilder("    /**\n");
        StringBuilder line = new StringBuilder("     *");
        for (String word : text.split(" ")) {
            if (line.length() + 1 + word.length() > LINE) {
                comment.append(line).append('\n');
                line = new StringBuilder("     *");
            }
            line.append(' ').append(word);
        }
        return comment.append(line).append("\n     */\n").toString();
    }
}
