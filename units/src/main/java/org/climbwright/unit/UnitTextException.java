package org.climbwright.unit;

import java.util.Locale;

/** Thrown when a text is not a number and a unit of the kind asked for: says where, and what is. */
public final class UnitTextException extends IllegalArgumentException {
    private static final long serialVersionUID = 1L;

    private final String text;
    private final int position;
    private final String expected;

    UnitTextException(String term, String text, int position, String expected) {
        super(message(term, text, position, expected));
        this.text = text;
        this.position = position;
        this.expected = expected;
    }

    private static String message(String term, String text, int position, String expected) {
        String found =
                position < text.length()
                        ? "'" + Character.toString(text.codePointAt(position)) + "'"
                        : "the end of the text";
        return String.format(
                Locale.ROOT,
                "cannot read \"%s\" as %s: expected %s at character %d, but found %s",
                text,
                term,
                expected,
                position + 1,
                found);
    }

    /**
     * Returns the text that could not be read.
     *
     * @return the text as given
     */
    public String text() {
        return text;
    }

    /**
     * Returns the place of the fault.
     *
     * @return the index of the first character that does not fit, from 0; the length of the text
     *     when something is missing at its end
     */
    public int position() {
        return position;
    }

    /**
     * Returns what would have been right there.
     *
     * @return a phrase such as {@code "a unit (m, ft, NM)"}
     */
    public String expected() {
        return expected;
    }
}
