package org.climbwright.turbulence.convection;

import java.io.Serializable;
import java.util.Objects;

/**
 * One figure held against a threshold of the caller's: what it was, and what came of it.
 *
 * <p>Limits of use: a figure of one sounding, forecast or report; see {@link SeatBeltAdvice}.
 *
 * @param what what was looked at, in words
 * @param figure the figure with its unit, or why it is not known
 * @param threshold the threshold, in words
 * @param outcome what came of it
 */
public record Evidence(String what, String figure, String threshold, Outcome outcome)
        implements Serializable {
    /** What comes of a figure and a threshold. */
    public enum Outcome {
        /** The figure reaches the threshold. */
        REACHED,
        /** The figure is known and does not reach it. */
        NOT_REACHED,
        /** The figure is not known: neither the one nor the other. */
        NOT_KNOWN
    }

    /**
     * Makes it of parts that are all there.
     *
     * @param what see above
     * @param figure see above
     * @param threshold see above
     * @param outcome see above
     */
    public Evidence {
        Objects.requireNonNull(what, "what");
        Objects.requireNonNull(figure, "figure");
        Objects.requireNonNull(threshold, "threshold");
        Objects.requireNonNull(outcome, "outcome");
    }

    /**
     * Returns the evidence as a sentence.
     *
     * @return a text; may change between versions
     */
    public String inWords() {
        String ends =
                switch (outcome) {
                    case REACHED -> "reached";
                    case NOT_REACHED -> "not reached";
                    case NOT_KNOWN -> "not known whether it is reached";
                };
        return what + ": " + figure + " (" + threshold + ": " + ends + ")";
    }
}
