package org.climbwright.performance;

import java.io.Serializable;
import java.util.Objects;

/**
 * How the engines of an aeroplane are used.
 *
 * <pre>{@code
 * EngineUse climb = EngineUse.climb(2);                                       // both, no bleed
 * EngineUse icing = climb.withBleed(Bleed.ENGINE);
 * EngineUse failed = new EngineUse(1, Rating.MAXIMUM_CONTINUOUS, Bleed.NONE);
 * }</pre>
 *
 * @param operating how many engines run, 1 or more
 * @param rating what they are set to
 * @param bleed what hot air is taken for
 */
public record EngineUse(int operating, Rating rating, Bleed bleed) implements Serializable {
    /**
     * Makes it of parts that can be.
     *
     * @param operating see above
     * @param rating see above
     * @param bleed see above
     * @throws IllegalArgumentException if no engine runs
     */
    public EngineUse {
        if (operating < 1) {
            throw new IllegalArgumentException(
                    "a climb needs an engine that runs, but the number was " + operating);
        }
        Objects.requireNonNull(rating, "rating");
        Objects.requireNonNull(bleed, "bleed");
    }

    /**
     * Returns a climb with all engines.
     *
     * @param engines how many the aeroplane has, 1 or more
     * @return all of them at the rating for the climb, without ice protection
     * @throws IllegalArgumentException if there is none
     */
    public static EngineUse climb(int engines) {
        return new EngineUse(engines, Rating.CLIMB, Bleed.NONE);
    }

    /**
     * Returns this use with other bleed.
     *
     * @param other what hot air is taken for
     * @return a copy that differs in it
     */
    public EngineUse withBleed(Bleed other) {
        return new EngineUse(operating, rating, other);
    }
}
