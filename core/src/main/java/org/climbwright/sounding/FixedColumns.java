package org.climbwright.sounding;

import java.util.List;
import java.util.regex.Pattern;

/** One line of numbers in fixed columns; what cannot be read becomes NaN and a problem. */
final class FixedColumns {
    private static final Pattern WHOLE_NUMBER = Pattern.compile("-?\\d{1,9}");

    private final int lineNumber;
    private final String line;
    private final List<ReadingProblem> problems;

    FixedColumns(int lineNumber, String line, List<ReadingProblem> problems) {
        this.lineNumber = lineNumber;
        this.line = line;
        this.problems = problems;
    }

    /**
     * The number in a field, in tenths or whatever the format counts in.
     *
     * @param first first column, from 1
     * @param last last column, in which the number ends
     * @return the number; NaN when the code for missing stands there, or nothing legible
     */
    double number(String field, int first, int last) {
        if (line.length() < last) {
            // A number that the end of the line may have cut is none: 118 could have been 11810.
            return problem(field, line.substring(Math.min(first - 1, line.length())), "cut off");
        }
        String text = line.substring(first - 1, last).trim();
        if (!WHOLE_NUMBER.matcher(text).matches()) {
            return problem(field, text, "not a whole number");
        }
        int number = Integer.parseInt(text);
        return isMissing(number) ? Double.NaN : number;
    }

    /** -9999 and -99999 say "missing", -8888 and -88888 "removed by quality assurance". */
    private static boolean isMissing(int number) {
        return number == -9999 || number == -8888 || number == -99999 || number == -88888;
    }

    double problem(String field, String text, String reason) {
        problems.add(new ReadingProblem(lineNumber, field, text, reason + "; taken as missing"));
        return Double.NaN;
    }
}
