package org.climbwright.cabin.exposure;

import java.io.Serializable;
import java.time.Duration;
import java.util.Objects;
import java.util.Optional;

/**
 * What one paragraph of a rule requires, and of whom; the altitudes for which it does stand in
 * {@link CabinOxygenBand} or {@link FlightOxygenBand}.
 *
 * <p>Limits of use: a paragraph in few words is not the rule; exceptions and definitions are in its
 * text.
 *
 * @param paragraph the rule and its paragraph
 * @param who who is to have oxygen
 * @param what what is required, with the conditions that the paragraph has
 * @param condition what must have happened before it is in force
 * @param timeExempt the time at these altitudes for which nothing is required yet; zero where the
 *     requirement begins at once
 * @param source where the text was read
 * @param evidence how far it was read
 */
public record OxygenRequirement(
        String paragraph,
        String who,
        String what,
        Condition condition,
        Duration timeExempt,
        String source,
        Evidence evidence)
        implements Serializable {
    /** What must have happened before a requirement is in force. */
    public enum Condition {
        /** Nothing: it holds in any cabin. */
        ANY_CABIN,
        /** The cabin has lost its pressure. */
        AFTER_DEPRESSURISATION
    }

    /**
     * Makes a requirement.
     *
     * @param paragraph the rule and its paragraph
     * @param who who is to have oxygen
     * @param what what is required
     * @param condition what must have happened
     * @param timeExempt the time for which nothing is required yet, zero or more
     * @param source where the text was read
     * @param evidence how far it was read
     * @throws IllegalArgumentException if the time is negative
     */
    public OxygenRequirement {
        Objects.requireNonNull(paragraph, "paragraph");
        Objects.requireNonNull(who, "who");
        Objects.requireNonNull(what, "what");
        Objects.requireNonNull(condition, "condition");
        Objects.requireNonNull(source, "source");
        Objects.requireNonNull(evidence, "evidence");
        if (timeExempt.isNegative()) {
            throw new IllegalArgumentException(
                    "the time exempt from a requirement must be 0 or more, but was " + timeExempt);
        }
    }

    /**
     * Returns the condition of time, where the paragraph has one.
     *
     * @return the time that must be exceeded at these altitudes; empty where there is no condition
     */
    public Optional<Duration> onlyBeyond() {
        return timeExempt.isZero() ? Optional.empty() : Optional.of(timeExempt);
    }

    /**
     * Tells whether the requirement is in force after some time at its altitudes.
     *
     * @param there the time spent there; the time that is exempt is not beyond itself
     * @return true if there is no condition of time, or the time is beyond it
     */
    public boolean isInForceAfter(Duration there) {
        return timeExempt.isZero() || there.compareTo(timeExempt) > 0;
    }

    /**
     * Returns the requirement for reading.
     *
     * @return a text; may change between versions
     */
    @Override
    public String toString() {
        String read = evidence == Evidence.SEEN ? "" : " [" + evidence.words() + "]";
        return paragraph + ": " + who + ": " + what + read;
    }
}
