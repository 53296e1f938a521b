package org.climbwright.sounding;

import java.io.Serializable;

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
     * Returns the problem as one line for a person.
     *
     * @return a text such as {@code line 7, TEMP "-3x": not a whole number; taken as missing}
     */
    @Override
    public String toString() {
        return "line " + line + ", " + field + " \"" + text + "\": " + reason;
    }
}
