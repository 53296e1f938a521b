package org.climbwright.sounding.surface;

import java.io.Serializable;
import java.util.Objects;

/**
 * Why a report does not tell an element.
 *
 * @param element what is not told
 * @param cause the kind of reason
 * @param text the group in question as it stands in the report; empty when there is none
 * @param reason the reason in words
 */
public record Absence(ReportElement element, Cause cause, String text, String reason)
        implements Serializable {

    /**
     * Makes a reason of parts that are there.
     *
     * @param element what is not told
     * @param cause the kind of reason
     * @param text the group in question; may be empty
     * @param reason the reason in words
     */
    public Absence {
        Objects.requireNonNull(element, "element");
        Objects.requireNonNull(cause, "cause");
        Objects.requireNonNull(text, "text");
        Objects.requireNonNull(reason, "reason");
    }

    /** The kinds of reason. */
    public enum Cause {
        /** The report has no such group. */
        GROUP_ABSENT,
        /** The report says that it does not know: slashes, or NIL. */
        REPORTED_MISSING,
        /** A group stands there that cannot be read, or tells what cannot be. */
        NOT_USABLE
    }

    static Absence ofGroup(ReportElement element) {
        return new Absence(element, Cause.GROUP_ABSENT, "", "the report has no such group");
    }

    /**
     * Returns element, reason and group as one line for a person.
     *
     * @return a text such as {@code no QNH: reported as missing, "Q////"}
     */
    @Override
    public String toString() {
        return "no " + element + ": " + reason + (text.isEmpty() ? "" : ", \"" + text + "\"");
    }
}
