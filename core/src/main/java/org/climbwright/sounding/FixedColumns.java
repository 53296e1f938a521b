package org.climbwright.sounding;

import java.util.regex.Pattern;

/** One line of numbers in fixed columns; what cannot be read becomes NaN and a problem. */
final class FixedColumns {
    private static final Pattern WHOLE_NUMBER = Pattern.compile("-?\\d{1,9}");

    private final SourceLine source;
    private final String line;

    FixedColumns(SourceLine source) {
        this.source = source;
        this.line = source.text();
    }

    /**
     * The number in a field, in tenths or whatever the format counts in.
     *
     * @param first first column, from 1
     * @param last last column, in which the number ends
     * @return the field; its number is NaN when the code for missing stands there, or nothing
     *     legible
     */
    Field field(String name, int first, int last) {
        if (line.length() < last) {
            // A number that the end of the line may have cut is none: 118 could have been 11810.
            String rest = line.substring(Math.min(first - 1, line.length())).trim();
            return new Field(name, rest, source.missing(name, rest, "cut off"));
        }
        String text = line.substring(first - 1, last).trim();
        if (isPartOfNumber(first - 1) || isPartOfNumber(last + 1)) {
            // In a line that lost or gained a character half a number would look like one.
            return new Field(name, text, source.missing(name, text, "not in its columns"));
        }
        if (!WHOLE_NUMBER.matcher(text).matches()) {
            return new Field(name, text, source.missing(name, text, "not a whole number"));
        }
        int number = Integer.parseInt(text);
        return new Field(name, text, isMissing(number) ? Double.NaN : number);
    }

    /** Whether a number runs on in a column beside the field, where a blank or a letter belongs. */
    private boolean isPartOfNumber(int column) {
        if (column < 1 || column > line.length()) {
            return false;
        }
        char there = line.charAt(column - 1);
        return there == '-' || (there >= '0' && there <= '9');
    }

    /** -9999 and -99999 say "missing", -8888 and -88888 "removed by quality assurance". */
    private static boolean isMissing(int number) {
        return number == -9999 || number == -8888 || number == -99999 || number == -88888;
    }
}
