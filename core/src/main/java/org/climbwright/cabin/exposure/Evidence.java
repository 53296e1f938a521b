package org.climbwright.cabin.exposure;

/**
 * How far the text behind a published figure was read.
 *
 * <p>Limits of use: a public copy is not the authority's own edition. Before a figure is relied on,
 * it is read there.
 */
public enum Evidence {
    /** The figure was read in a public copy of the text that is named. */
    SEEN("seen"),
    /** The figure was read, but a part of its paragraph was cut off. */
    PARTLY_SEEN("partly seen"),
    /** The figure was read in an edition that has been superseded; the current one may differ. */
    SEEN_IN_OLDER_EDITION("seen in an older edition"),
    /** The figure was read in the rule of another authority with the same paragraphs. */
    SEEN_IN_TWIN_RULE("seen in the twin rule of another authority"),
    /** The paragraph itself was not seen; another, which was, has these bounds of it. */
    IMPLIED("implied by another paragraph"),
    /** The figure was not read anywhere: verify before use. */
    FROM_MEMORY("from memory, not seen");

    private final String words;

    Evidence(String words) {
        this.words = words;
    }

    /**
     * Returns the evidence in words.
     *
     * @return a few words in lower case
     */
    public String words() {
        return words;
    }
}
