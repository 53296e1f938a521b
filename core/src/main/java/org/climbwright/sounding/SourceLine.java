package org.climbwright.sounding;

import java.util.List;

/** One line of a file, and where the reader notes what it could not use of it. */
final class SourceLine {
    private final int number;
    private final String text;
    private final List<ReadingProblem> problems;
    private boolean flawed;

    SourceLine(int number, String text, List<ReadingProblem> problems) {
        this.number = number;
        this.text = text;
        this.problems = problems;
    }

    String text() {
        return text;
    }

    /** Whether something of this line could not be used. */
    boolean isFlawed() {
        return flawed;
    }

    /** Notes a field that cannot be used; its number is then NaN. */
    double missing(String field, String fieldText, String reason) {
        note(field, fieldText, reason + "; taken as missing");
        return Double.NaN;
    }

    /** Notes what the whole line cannot be used for because of one of its fields. */
    void unusable(String field, String reason) {
        note(field, text.trim(), reason);
    }

    /** Notes what else is wrong at this line. */
    void note(String field, String fieldText, String reason) {
        flawed = true;
        problems.add(new ReadingProblem(number, field, fieldText, reason));
    }
}
