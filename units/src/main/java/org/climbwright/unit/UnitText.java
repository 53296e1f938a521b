package org.climbwright.unit;

import java.math.BigDecimal;
import java.util.Objects;

/**
 * The strict text form of a number with its unit: {@code "35000 ft"}, {@code "-12.5 °C"}.
 *
 * <p>A number, one space, the label of a unit of the right kind, and nothing else. The number has
 * an optional sign, digits, optionally a full stop with digits and an exponent; no thousands
 * separator, no comma, no locale. What {@link #format} writes, {@link #parse} reads back to the
 * same double.
 */
public final class UnitText {
    private UnitText() {}

    /**
     * Returns the SI value that a text stands for.
     *
     * @param term what is being read, for the error message: {@code "pressure altitude"}
     * @param text the text, such as {@code "35000 ft"}
     * @param kind the kind of quantity that the unit must be of
     * @return the value in SI, finite
     * @throws UnitTextException if the text is of any other form, or its unit of another kind
     * @accuracy the number as the nearest double, then {@link UnitScale#toSi}
     */
    public static double parse(String term, String text, QuantityKind kind) {
        Objects.requireNonNull(text, "text");
        int end = endOfNumber(term, text, 0);
        if (end == text.length() || text.charAt(end) != ' ') {
            throw new UnitTextException(term, text, end, "a space and " + unitsOf(kind));
        }
        UnitScale scale = scale(term, text, end + 1, kind);
        return finite(term, text, scale.toSi(Double.parseDouble(text.substring(0, end))));
    }

    /**
     * Returns the number that a text of a prefix and a number stands for: {@code "FL350"}.
     *
     * @param term what is being read, for the error message
     * @param prefix what stands before the number, such as {@code "FL"}
     * @param text the text
     * @return the number, finite
     * @throws UnitTextException if the text is of any other form
     */
    public static double parsePrefixed(String term, String prefix, String text) {
        Objects.requireNonNull(text, "text");
        if (!text.startsWith(prefix)) {
            throw new UnitTextException(term, text, 0, prefix + " and a number");
        }
        int end = endOfNumber(term, text, prefix.length());
        if (end < text.length()) {
            throw new UnitTextException(term, text, end, "the end of the text");
        }
        return finite(term, text, Double.parseDouble(text.substring(prefix.length())));
    }

    /**
     * Returns the text form of an SI value in a unit: {@code "35000 ft"}.
     *
     * <p>Where no number of that unit reads back as the same double, the text is in the SI unit:
     * the doubles of one unit are in places sparser than those of the other.
     *
     * @param si the value in SI, finite
     * @param scale the unit to write it in
     * @return the shortest text that reads back as the same double
     */
    public static String format(double si, UnitScale scale) {
        double value = scale.fromSi(si);
        return scale.toSi(value) == si
                ? labelled(value, scale.label())
                : labelled(si, siUnit(scale.kind()).label());
    }

    private static String labelled(double value, String label) {
        return new StringBuilder(number(value)).append(' ').append(label).toString();
    }

    private static UnitScale siUnit(QuantityKind kind) {
        for (UnitScale scale : UnitScale.values()) {
            if (scale.kind() == kind) {
                return scale; // the first of its kind
            }
        }
        throw new IllegalArgumentException(kind.term());
    }

    /**
     * Returns the unit that a readable text is in.
     *
     * @param term what is being read, for the error message
     * @param text a text that {@link #parse} reads
     * @param kind the kind of quantity that the unit must be of
     * @return the unit behind the number
     * @throws UnitTextException if there is no unit of that kind
     */
    public static UnitScale unit(String term, String text, QuantityKind kind) {
        return scale(term, text, text.indexOf(' ') + 1, kind);
    }

    /**
     * Returns the shortest decimal text of a number, without an exponent or a trailing ".0".
     *
     * @param value any finite number
     * @return the digits, such as {@code "35000"} or {@code "29.92"}
     */
    public static String number(double value) {
        return new BigDecimal(Double.toString(value)).stripTrailingZeros().toPlainString();
    }

    private static UnitScale scale(String term, String text, int start, QuantityKind kind) {
        String label = text.substring(start);
        for (UnitScale scale : UnitScale.values()) {
            if (scale.kind() == kind && scale.label().equals(label)) {
                return scale;
            }
        }
        int end = endOfUnit(text, start, kind);
        throw end > start
                ? new UnitTextException(term, text, end, "the end of the text")
                : new UnitTextException(term, text, start, unitsOf(kind));
    }

    /** Where a unit of the kind ends that something else follows; the start if there is none. */
    private static int endOfUnit(String text, int start, QuantityKind kind) {
        for (UnitScale scale : UnitScale.values()) {
            int end = start + scale.label().length();
            if (scale.kind() == kind
                    && text.startsWith(scale.label(), start)
                    && end < text.length()
                    && !Character.isLetterOrDigit(text.charAt(end))
                    && text.charAt(end) != '/') {
                return end;
            }
        }
        return start;
    }

    private static double finite(String term, String text, double value) {
        if (!Double.isFinite(value)) {
            throw new UnitTextException(term, text, 0, "a number within the range of a double");
        }
        return value;
    }

    private static int endOfNumber(String term, String text, int from) {
        boolean signed = text.startsWith("-", from) || text.startsWith("+", from);
        int start = signed ? from + 1 : from;
        int end = endOfDigits(text, start);
        if (end == start) {
            throw new UnitTextException(term, text, end, "a digit");
        }
        if (end < text.length() && text.charAt(end) == '.') {
            int decimals = end + 1;
            end = endOfDigits(text, decimals);
            if (end == decimals) {
                throw new UnitTextException(term, text, end, "a digit");
            }
        }
        if (end < text.length() && (text.charAt(end) == 'e' || text.charAt(end) == 'E')) {
            int sign = end + 1;
            boolean signedExponent = text.startsWith("-", sign) || text.startsWith("+", sign);
            int exponent = signedExponent ? sign + 1 : sign;
            end = endOfDigits(text, exponent);
            if (end == exponent) {
                throw new UnitTextException(term, text, end, "a digit of the exponent");
            }
        }
        return end;
    }

    private static int endOfDigits(String text, int start) {
        int end = start;
        // Only the ten ASCII digits: Character.isDigit would take those of other scripts too.
        while (end < text.length() && text.charAt(end) >= '0' && text.charAt(end) <= '9') {
            end++;
        }
        return end;
    }

    private static String unitsOf(QuantityKind kind) {
        StringBuilder units = new StringBuilder("a unit of ").append(kind.term()).append(" (");
        String separator = "";
        for (UnitScale scale : UnitScale.values()) {
            if (scale.kind() == kind) {
                units.append(separator).append(scale.label());
                separator = ", ";
            }
        }
        return units.append(')').toString();
    }
}
