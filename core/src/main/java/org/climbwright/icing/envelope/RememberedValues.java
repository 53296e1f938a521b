package org.climbwright.icing.envelope;

/**
 * Whether limits count that are only remembered: no page that prints them was seen.
 *
 * <p>Whoever asks chooses; there is no default.
 */
public enum RememberedValues {
    /** A limit from memory is taken as the rule's; the basis of the limit says "from memory". */
    USED,
    /** A limit from memory is not known. */
    LEFT_OUT;

    static final String REASON = "only remembered, and such values are left out";

    boolean isUsed() {
        return this == USED;
    }
}
