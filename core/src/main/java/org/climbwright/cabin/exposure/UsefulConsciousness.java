package org.climbwright.cabin.exposure;

import java.io.Serializable;
import java.time.Duration;
import java.util.Objects;
import java.util.Optional;
import org.climbwright.quantity.altitude.CabinAltitude;
import org.jspecify.annotations.Nullable;

/**
 * One row of a published table of times of useful consciousness: how long people could still act
 * with purpose at a cabin altitude without oxygen, from a least to a most time.
 *
 * <p>Not a time until consciousness is lost, which is longer, and not a time in which to decide.
 *
 * <p>Limits of use: an average of healthy people at rest, unless the case says otherwise.
 * Individuals differ widely, as a change to AC 61-107B warns, and nobody notices the end of it. The
 * operator's memory items, the flight manual, local regulations and licensed practice decide.
 */
public final class UsefulConsciousness implements Serializable {
    private static final long serialVersionUID = 1L;

    /** How the people of a table came to be at the altitude, and what they did. */
    public enum Circumstance {
        /** They came up slowly. */
        SLOW_ASCENT("slow ascent"),
        /** The cabin lost its pressure within seconds. */
        AFTER_RAPID_DECOMPRESSION("after rapid decompression"),
        /** At rest; the table says no more. */
        AVERAGE_AT_REST("average, at rest"),
        /** The table does not say. */
        AVERAGE("average"),
        /** After ten deep knee bends. */
        AFTER_EXERCISE("after 10 deep knee bends");

        private final String words;

        Circumstance(String words) {
            this.words = words;
        }

        /**
         * Returns the circumstance as the tables have it.
         *
         * @return a few words
         */
        public String words() {
            return words;
        }
    }

    private final String source;
    private final Evidence evidence;
    private final Circumstance circumstance;
    private final CabinAltitude altitude;
    private final Duration low;
    private final @Nullable Duration high;

    UsefulConsciousness(
            String source,
            Evidence evidence,
            Circumstance circumstance,
            CabinAltitude altitude,
            Duration low,
            @Nullable Duration high) {
        this.source = source;
        this.evidence = evidence;
        this.circumstance = circumstance;
        this.altitude = altitude;
        this.low = low;
        this.high = high;
    }

    /**
     * Returns where the row was published.
     *
     * @return the source in words
     */
    public String source() {
        return source;
    }

    /**
     * Returns how far the row was read.
     *
     * @return the evidence; {@link Evidence#FROM_MEMORY} for a row that nobody here has read
     */
    public Evidence evidence() {
        return evidence;
    }

    /**
     * Returns how the people came to be at the altitude.
     *
     * @return the circumstance
     */
    public Circumstance circumstance() {
        return circumstance;
    }

    /**
     * Returns the altitude of the row.
     *
     * @return cabin altitude, as tabulated
     */
    public CabinAltitude altitude() {
        return altitude;
    }

    /**
     * Returns the least time.
     *
     * @return the time as published
     */
    public Duration low() {
        return low;
    }

    /**
     * Returns the most time.
     *
     * @return the time as published, {@link #low} where the row has one figure; empty where it is
     *     open, as in "30 minutes or more"
     */
    public Optional<Duration> high() {
        return Optional.ofNullable(high);
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof UsefulConsciousness that
                && source.equals(that.source)
                && evidence == that.evidence
                && circumstance == that.circumstance
                && altitude.equals(that.altitude)
                && low.equals(that.low)
                && Objects.equals(high, that.high);
    }

    @Override
    public int hashCode() {
        return Objects.hash(source, evidence, circumstance, altitude, low, high);
    }

    /**
     * Returns the row for reading, with its source, and marked where it was not seen.
     *
     * @return a text; may change between versions
     */
    @Override
    public String toString() {
        StringBuilder text = new StringBuilder(120);
        text.append(altitude.text()).append(", ").append(circumstance.words()).append(": ");
        text.append(low.toSeconds()).append(" s");
        if (high == null) {
            text.append(" or more");
        } else if (!high.equals(low)) {
            text.append(" to ").append(high.toSeconds()).append(" s");
        }
        if (evidence != Evidence.SEEN) {
            text.append(" [").append(evidence.words()).append(']');
        }
        return text.append(" (").append(source).append(')').toString();
    }
}
