package org.climbwright.fitting;

import static org.climbwright.fitting.ChebyshevFit.DIGITS;

import ch.obermuhlner.math.big.BigDecimalMath;
import java.math.BigDecimal;
import java.util.List;
import org.climbwright.testing.FiftyDigits;

/** The polynomials of the pitot tube, between impact ratio q and the square of the Mach number. */
final class PitotPolynomials {
    private static final BigDecimal ONE = BigDecimal.ONE;
    private static final BigDecimal TWO = BigDecimal.valueOf(2);
    private static final BigDecimal FIVE = BigDecimal.valueOf(5);
    private static final BigDecimal SEVEN = BigDecimal.valueOf(7);
    private static final BigDecimal HIGHEST_SQUARE = BigDecimal.valueOf(25);

    private static final BigDecimal SEA_LEVEL = BigDecimal.valueOf(101325);

    private static final BigDecimal SONIC = new BigDecimal("1.2").pow(7).sqrt(DIGITS).subtract(ONE);

    /** To which (q + 1) / M² falls as the Mach number grows. */
    private static final BigDecimal SLOPE =
            new BigDecimal("1.2")
                    .pow(7)
                    .multiply(BigDecimal.valueOf(6).divide(SEVEN, DIGITS).pow(5, DIGITS))
                    .sqrt(DIGITS);

    /**
     * The same as the kernel has it, and its inverse: what the doubles lose, the rests make good.
     */
    private static final BigDecimal SLOPE_DOUBLE = new BigDecimal(SLOPE.doubleValue());

    private static final BigDecimal INVERSE_SLOPE =
            new BigDecimal(ONE.divide(SLOPE, DIGITS).doubleValue());

    /** The largest 1 / (q + 1) of Rayleigh's formula, at M² = 1/2, where its branches meet. */
    private static final BigDecimal BRANCH = ONE.divide(rayleigh(new BigDecimal("0.5")), DIGITS);

    private PitotPolynomials() {}

    static List<Printed> all() {
        BigDecimal sonicRoot = branchRoot(SONIC);
        // rounded down, so that Mach 1 lies inside
        BigDecimal start = new BigDecimal(Math.nextDown(sonicRoot.doubleValue()));
        return List.of(
                new Constant(
                        "slope", "To which (q + 1) / M² falls as the Mach number grows.", SLOPE),
                new Constant("inverseSlope", "To which M² / (q + 1) rises.", INVERSE_SLOPE),
                new Constant(
                        "inverseSoundSquare",
                        "One over the square of the speed of sound at sea level [s²/m²].",
                        ONE.divide(FiftyDigits.seaLevelSpeedOfSound().pow(2), DIGITS)),
                new Constant(
                        "squarePerPascal",
                        "The square of the equivalent airspeed of Mach 1 over pressure"
                                + " [m²/(s²·Pa)].",
                        FiftyDigits.seaLevelSpeedOfSound().pow(2).divide(SEA_LEVEL, DIGITS)),
                new Constant(
                        "branch",
                        "The largest 1 / (q + 1) of Rayleigh's formula, at M² = 1/2.",
                        BRANCH),
                new Polynomial(
                                "subsonicRatioExcess",
                                "What the impact ratio over the square of the Mach number, x,"
                                        + " exceeds 1, up to Mach 1",
                                BigDecimal.ZERO,
                                ONE,
                                new BigDecimal("0.5"),
                                x -> subsonicRatio(x).subtract(ONE))
                        .steady()
                        .weighedBy(x -> ONE.divide(subsonicRatio(x), DIGITS)),
                new Polynomial(
                                "subsonicSquareExcess",
                                "What the square of the Mach number over the impact ratio, x,"
                                        + " exceeds 1, up to Mach 1",
                                BigDecimal.ZERO,
                                SONIC,
                                new BigDecimal("0.4375"),
                                x -> subsonicSquare(x).subtract(ONE))
                        .steady()
                        .weighedBy(x -> ONE.divide(subsonicSquare(x), DIGITS)),
                new Polynomial(
                                "supersonicRatioRest",
                                "What the impact ratio exceeds SLOPE M², of x = 1 / (7 M² - 1)",
                                ONE.divide(SEVEN.multiply(HIGHEST_SQUARE).subtract(ONE), DIGITS),
                                ONE.divide(BigDecimal.valueOf(6), DIGITS),
                                BigDecimal.ZERO,
                                y -> {
                                    BigDecimal square = ofShare(y);
                                    return rayleigh(square)
                                            .subtract(ONE)
                                            .subtract(SLOPE_DOUBLE.multiply(square));
                                })
                        .weighedBy(y -> ONE.divide(rayleigh(ofShare(y)).subtract(ONE), DIGITS)),
                new Polynomial(
                                "supersonicSquareRest",
                                "What M² exceeds INVERSE_SLOPE q, of x = sqrt(BRANCH - 1 / (q +"
                                        + " 1))",
                                start,
                                branchRoot(rayleigh(HIGHEST_SQUARE).subtract(ONE))
                                        .multiply(new BigDecimal("1.000001")),
                                start,
                                v -> {
                                    BigDecimal ratio = ofBranchRoot(v);
                                    return supersonicSquare(ratio)
                                            .subtract(ratio.multiply(INVERSE_SLOPE));
                                })
                        .withHead()
                        .weighedBy(v -> ONE.divide(supersonicSquare(ofBranchRoot(v)), DIGITS)));
    }

    private static BigDecimal subsonicRatio(BigDecimal square) {
        return ONE.add(square.divide(FIVE))
                .pow(7, DIGITS)
                .sqrt(DIGITS)
                .subtract(ONE)
                .divide(square, DIGITS);
    }

    private static BigDecimal subsonicSquare(BigDecimal ratio) {
        return BigDecimalMath.pow(ONE.add(ratio), TWO.divide(SEVEN, DIGITS), DIGITS)
                .subtract(ONE)
                .multiply(FIVE)
                .divide(ratio, DIGITS);
    }

    /** Total pressure behind the shock over static pressure. */
    private static BigDecimal rayleigh(BigDecimal square) {
        BigDecimal shock =
                BigDecimal.valueOf(6)
                        .divide(SEVEN.multiply(square).subtract(ONE), DIGITS)
                        .pow(5, DIGITS);
        return square.multiply(new BigDecimal("1.2")).pow(7, DIGITS).multiply(shock).sqrt(DIGITS);
    }

    /** Rayleigh's inverse by Newton's method. */
    private static BigDecimal supersonicSquare(BigDecimal ratio) {
        BigDecimal total = ratio.add(ONE);
        BigDecimal square = total;
        for (int step = 0; step < 16; step++) {
            BigDecimal value = rayleigh(square);
            BigDecimal slope = // of the logarithm, by the square
                    new BigDecimal("3.5")
                            .divide(square, DIGITS)
                            .subtract(
                                    new BigDecimal("17.5")
                                            .divide(SEVEN.multiply(square).subtract(ONE), DIGITS));
            square =
                    square.subtract(
                            value.subtract(total).divide(value.multiply(slope), DIGITS), DIGITS);
        }
        return square;
    }

    private static BigDecimal ofShare(BigDecimal share) {
        return ONE.divide(share, DIGITS).add(ONE).divide(SEVEN, DIGITS);
    }

    private static BigDecimal branchRoot(BigDecimal ratio) {
        return BRANCH.subtract(ONE.divide(ratio.add(ONE), DIGITS)).sqrt(DIGITS);
    }

    private static BigDecimal ofBranchRoot(BigDecimal root) {
        return ONE.divide(BRANCH.subtract(root.pow(2, DIGITS)), DIGITS).subtract(ONE);
    }
}
