package org.climbwright.icing.envelope;

import java.io.Serializable;
import java.util.List;
import java.util.Objects;

/**
 * Whether some conditions are inside a design envelope, and by how much of each limit.
 *
 * <p>Limits of use: inside an envelope is not "safe", outside is not "impossible". The envelopes
 * are what aeroplanes are designed for; the flight manual says what one is approved for.
 *
 * @param envelope which envelope, with the rule that has it
 * @param margins one margin for each limit of the envelope
 */
public record EnvelopeVerdict(String envelope, List<LimitMargin> margins) implements Serializable {
    /** The answer in one word. */
    public enum Answer {
        /** Every limit is known and kept. */
        INSIDE,
        /** At least one limit is not kept. */
        OUTSIDE,
        /** No known limit is exceeded, but not every limit is known. */
        NOT_KNOWN
    }

    /**
     * Makes a verdict.
     *
     * @param envelope which envelope
     * @param margins one margin for each limit
     */
    public EnvelopeVerdict {
        Objects.requireNonNull(envelope, "envelope");
        margins = List.copyOf(margins);
    }

    /**
     * Returns the answer in one word.
     *
     * @return outside if a limit is exceeded, else not known if a limit is not known, else inside
     */
    public Answer answer() {
        if (!exceeded().isEmpty()) {
            return Answer.OUTSIDE;
        }
        return margins.stream().allMatch(LimitMargin::isKnown) ? Answer.INSIDE : Answer.NOT_KNOWN;
    }

    /**
     * Returns the limits that are not kept.
     *
     * @return their margins, all negative; empty if none is exceeded
     */
    public List<LimitMargin> exceeded() {
        return margins.stream().filter(LimitMargin::isExceeded).toList();
    }

    /**
     * Returns the margin of one limit.
     *
     * @param limit the limit
     * @return its margin
     * @throws IllegalArgumentException if this envelope has no such limit
     */
    public LimitMargin margin(LimitMargin.Limit limit) {
        return margins.stream()
                .filter(margin -> margin.limit() == limit)
                .findFirst()
                .orElseThrow(
                        () -> new IllegalArgumentException(envelope + " has no limit " + limit));
    }
}
