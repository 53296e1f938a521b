package org.climbwright.fitting;

import ch.obermuhlner.math.big.BigDecimalMath;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Arrays;
import java.util.function.UnaryOperator;

/**
 * A polynomial through a function at the nodes of Chebyshev, in 60 digits: within a small factor of
 * the best there is of its degree.
 */
final class ChebyshevFit {
    static final MathContext DIGITS = new MathContext(60);

    private final BigDecimal from;
    private final BigDecimal to;
    private final BigDecimal centre;
    private final UnaryOperator<BigDecimal> function;

    /**
     * A fit over an interval.
     *
     * @param centre what the polynomial takes off its argument first
     */
    ChebyshevFit(
            BigDecimal from, BigDecimal to, BigDecimal centre, UnaryOperator<BigDecimal> function) {
        this.from = from;
        this.to = to;
        this.centre = centre;
        this.function = function;
    }

    /** The coefficients of a degree, the constant first, each rounded to a double. */
    double[] coefficients(int degree) {
        BigDecimal[] nodes = nodes(degree + 1);
        BigDecimal[] newton = dividedDifferences(nodes);
        BigDecimal[] powers = new BigDecimal[degree + 1];
        Arrays.fill(powers, BigDecimal.ZERO);
        for (int k = degree; k >= 0; k--) { // Horner: times (x - node), plus the next difference
            for (int j = degree; j >= 0; j--) {
                BigDecimal below = j == 0 ? newton[k] : powers[j - 1];
                powers[j] = below.subtract(powers[j].multiply(nodes[k]), DIGITS);
            }
        }
        return Arrays.stream(powers).mapToDouble(BigDecimal::doubleValue).toArray();
    }

    /** The largest error of rounded coefficients in exact arithmetic, times a weight. */
    BigDecimal largestError(double[] coefficients, UnaryOperator<BigDecimal> weight) {
        BigDecimal largest = BigDecimal.ZERO;
        for (BigDecimal node : nodes(4 * coefficients.length + 1)) {
            BigDecimal value = BigDecimal.ZERO;
            for (int k = coefficients.length - 1; k >= 0; k--) {
                value = value.multiply(node, DIGITS).add(new BigDecimal(coefficients[k]));
            }
            BigDecimal x = node.add(centre);
            BigDecimal error = value.subtract(function.apply(x)).multiply(weight.apply(x), DIGITS);
            largest = largest.max(error.abs());
        }
        return largest;
    }

    /** The nodes, from the centre on. */
    private BigDecimal[] nodes(int count) {
        BigDecimal middle = from.add(to).divide(BigDecimal.valueOf(2)).subtract(centre);
        BigDecimal half = to.subtract(from).divide(BigDecimal.valueOf(2));
        BigDecimal pi = BigDecimalMath.pi(DIGITS);
        BigDecimal[] nodes = new BigDecimal[count];
        for (int k = 0; k < count; k++) {
            BigDecimal angle =
                    pi.multiply(BigDecimal.valueOf(2L * k + 1))
                            .divide(BigDecimal.valueOf(2L * count), DIGITS);
            nodes[k] = middle.add(half.multiply(BigDecimalMath.cos(angle, DIGITS)));
        }
        return nodes;
    }

    private BigDecimal[] dividedDifferences(BigDecimal[] nodes) {
        BigDecimal[] differences = new BigDecimal[nodes.length];
        for (int k = 0; k < nodes.length; k++) {
            differences[k] = function.apply(nodes[k].add(centre));
        }
        for (int order = 1; order < nodes.length; order++) {
            for (int k = nodes.length - 1; k >= order; k--) {
                differences[k] =
                        differences[k]
                                .subtract(differences[k - 1])
                                .divide(nodes[k].subtract(nodes[k - order]), DIGITS);
            }
        }
        return differences;
    }
}
