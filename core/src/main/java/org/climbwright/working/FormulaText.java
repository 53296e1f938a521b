package org.climbwright.working;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Map;
import java.util.Set;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** Formulas as text: which symbols they name, and the numbers put in for those. */
final class FormulaText {
    private static final Pattern SYMBOL = Pattern.compile("\\p{L}[\\p{L}\\p{N}_]*");
    private static final Set<String> FUNCTIONS = Set.of("ln", "exp");

    /** Enough to follow every line on a pocket calculator to what its reading shows. */
    private static final MathContext DIGITS = new MathContext(7);

    private FormulaText() {}

    static void requireSymbol(String symbol) {
        if (!SYMBOL.matcher(symbol).matches() || FUNCTIONS.contains(symbol)) {
            throw new IllegalArgumentException(
                    "a symbol must be a letter, then letters, digits and underscores, and no name"
                            + " of a function, but was \""
                            + symbol
                            + "\"");
        }
    }

    static void requireNumber(String symbol, double value) {
        if (!(Math.abs(value) <= Double.MAX_VALUE)) {
            throw new IllegalArgumentException(
                    "the value of a line of a working must be a finite number, but "
                            + symbol
                            + " was "
                            + value);
        }
    }

    /** The symbols of a formula, functions left out. */
    static Set<String> symbols(String formula) {
        return SYMBOL.matcher(formula)
                .results()
                .map(MatchResult::group)
                .filter(word -> !FUNCTIONS.contains(word))
                .collect(Collectors.toUnmodifiableSet());
    }

    /** The formula with rounded numbers for its symbols; negative ones in brackets. */
    static String withNumbers(String formula, Map<String, Double> values) {
        return SYMBOL.matcher(formula)
                .replaceAll(
                        match -> {
                            Double value = values.get(match.group());
                            return value == null
                                    ? match.group()
                                    : Matcher.quoteReplacement(inFormula(value));
                        });
    }

    private static String inFormula(double value) {
        String text = rounded(value);
        return text.startsWith("-") ? "(" + text + ")" : text;
    }

    /** A number rounded for reading, never in powers of ten. */
    static String rounded(double value) {
        return value == 0.0
                ? "0"
                : new BigDecimal(value).round(DIGITS).stripTrailingZeros().toPlainString();
    }
}
