package org.climbwright.sounding;

import java.io.Serializable;
import java.util.Objects;

/**
 * One thing in a file that could not be used: where it stands, what stands there, and why not.
 *
 * @param line line of the file, from 1
 * @param field name of the field in the format's own words; {@code "line"} for a whole line
 * @param text what stands there
 * @param reason why it was left out, and what else was left out with it
 */
public record ReadingProblem(int line, String field, String text, String reason)
        implements Serializable {
    /**
     * Makes a problem of parts that are there.
     *
     * @param line line of the file
     * @param field name of the field
     * @param text what stands there; may be empty
     * @param reason why it was left out
     */
    public ReadingProblem {
        Objects.requireNonNull(field, "field");
        Objects.requireNonNull(text, "text");
        Objects.requireNonNull(reason, "reason");
    }

    /**
     * Returns the problem as one line for a person.
     *
     * @return a text such as {@code line 7, TEMP "-3x": not a whole number; taken as missing}
     */
    @Override
    public String toString() {
        return "line " + line + ", " + field + " \"" + text + "\": " + reason;
    }
}
