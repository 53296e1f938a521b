package org.climbwright.sounding;

import java.util.function.IntPredicate;
import java.util.regex.Pattern;

/** One line of numbers in fixed columns; what cannot be read becomes NaN and a problem. */
final class FixedColumns {
    private static final Pattern WHOLE_NUMBER = Pattern.compile("-?\\d{1,9}");
    private static final Pattern DECIMAL = Pattern.compile("-?\\d{1,5}(\\.\\d{1,2})?");

    private final SourceLine source;
    private final String line;

    FixedColumns(SourceLine source) {
        this(source, source.text());
    }

    /** The columns of a line that lost its blanks at the end, with these restored. */
    FixedColumns(SourceLine source, String line) {
        this.source = source;
        this.line = line;
    }

    /**
     * The whole number in a field, in tenths or whatever the format counts in.
     *
     * @param first first column, from 1
     * @param last last column, in which the number ends
     * @return the field; its number is NaN when the code for missing stands there, or nothing
     *     legible
     */
    Field wholeNumber(String name, int first, int last) {
        String text = text(first, last);
        String fault = faultOfPlace(first, last, FixedColumns::isPartOfNumber);
        if (fault.isEmpty() && !WHOLE_NUMBER.matcher(text).matches()) {
            fault = "not a whole number";
        }
        if (!fault.isEmpty()) {
            return illegible(name, text, fault);
        }
        int number = Integer.parseInt(text);
        return new Field(name, text, isMissing(number) ? Double.NaN : number);
    }

    /**
     * The decimal number that ends in the last column of a field, blanks on both sides; only blanks
     * say "missing".
     *
     * @param first first column, from 1
     * @param last last column, in which the number ends
     * @return the field; its number is NaN when nothing stands there, or nothing legible
     */
    Field decimalOrBlank(String name, int first, int last) {
        String text = text(first, last);
        String fault = faultOfPlace(first, last, there -> there != ' ');
        if (fault.isEmpty() && !text.isEmpty()) {
            fault =
                    line.charAt(last - 1) == ' '
                            ? "not in its columns"
                            : DECIMAL.matcher(text).matches() ? "" : "not a number";
        }
        if (!fault.isEmpty()) {
            return illegible(name, text, fault);
        }
        return new Field(name, text, text.isEmpty() ? Double.NaN : Double.parseDouble(text));
    }

    private Field illegible(String name, String text, String fault) {
        return new Field(name, text, source.missing(name, text, fault));
    }

    private String text(int first, int last) {
        int end = line.length();
        return line.substring(Math.min(first - 1, end), Math.min(last, end)).trim();
    }

    /** What is wrong with where a number stands; empty when nothing is. */
    private String faultOfPlace(int first, int last, IntPredicate runsOn) {
        if (line.length() < last) {
            // A number that the end of the line may have cut is none: 118 could have been 11810.
            return "cut off";
        }
        // In a line that lost or gained a character half a number would look like one.
        boolean runs = runsOn.test(column(first - 1)) || runsOn.test(column(last + 1));
        return runs ? "not in its columns" : "";
    }

    private char column(int column) {
        return column < 1 || column > line.length() ? ' ' : line.charAt(column - 1);
    }

    /** Whether a number runs on, where a blank or a letter belongs. */
    private static boolean isPartOfNumber(int there) {
        return there == '-' || there == '.' || (there >= '0' && there <= '9');
    }

    /** -9999 and -99999 say "missing", -8888 and -88888 "removed by quality assurance". */
    private static boolean isMissing(int number) {
        return number == -9999 || number == -8888 || number == -99999 || number == -88888;
    }
}
