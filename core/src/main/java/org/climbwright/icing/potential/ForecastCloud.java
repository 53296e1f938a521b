package org.climbwright.icing.potential;

import java.io.Serializable;
import java.util.Objects;
import java.util.Optional;
import org.climbwright.atmosphere.AirState;

/**
 * The cloud that thresholds of relative humidity make of a profile: {@link
 * CloudThresholds#cloudIn}.
 *
 * <p>Limits of use: what a forecast scheme would say, not what is in the sky; {@link
 * CloudThresholds} says what it is known to miss.
 *
 * @param kind what the scheme says
 * @param base the air at the base; empty unless found
 * @param top the air at the top; empty unless found
 * @param reason why, in words
 */
public record ForecastCloud(
        Kind kind, Optional<AirState> base, Optional<AirState> top, String reason)
        implements Serializable {
    /**
     * Makes it of parts that are there.
     *
     * @param kind what the scheme says
     * @param base the air at the base
     * @param top the air at the top
     * @param reason why, in words
     */
    public ForecastCloud {
        Objects.requireNonNull(kind, "kind");
        Objects.requireNonNull(base, "base");
        Objects.requireNonNull(top, "top");
        Objects.requireNonNull(reason, "reason");
    }

    /** What the scheme says. */
    public enum Kind {
        /** A base and a top were found. */
        CLOUD,
        /** All of the air looked at is drier than the threshold of the top. */
        CLEAR,
        /** It cannot be told, or the scheme does not say. */
        NOT_DECIDED
    }
}
