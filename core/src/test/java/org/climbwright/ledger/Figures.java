package org.climbwright.ledger;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.Arrays;
import java.util.Locale;
import java.util.stream.Collectors;

/** Numbers as text. */
final class Figures {
    private Figures() {}

    /** A number for reading, to six digits or three of a small one, without zeros at the end. */
    static String plain(double number) {
        if (number != 0.0 && Math.abs(number) < 1e-3) {
            return String.format(Locale.ROOT, "%.2e", number)
                    .replaceFirst("[.]?0+e", "e")
                    .replace("e-0", "e-");
        }
        BigDecimal rounded = new BigDecimal(number).round(new MathContext(6));
        return rounded.stripTrailingZeros().toPlainString();
    }

    /** Inputs in full, to be read back. */
    static String inputs(double[] in) {
        return Arrays.stream(in).mapToObj(Double::toString).collect(Collectors.joining("; "));
    }

    static double[] inputs(String text) {
        return Arrays.stream(text.split("; ")).mapToDouble(Double::parseDouble).toArray();
    }

    /** An error to two digits, rounded up, so that none is printed smaller than it is. */
    static String error(double size) {
        if (size == 0.0) {
            return "0";
        }
        BigDecimal rounded = new BigDecimal(size).round(new MathContext(2, RoundingMode.UP));
        return size >= 0.01 ? rounded.toPlainString() : String.format(Locale.ROOT, "%.1e", rounded);
    }
}
