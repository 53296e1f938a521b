package org.climbwright.icing.potential;

import java.io.Serializable;
import java.util.Objects;
import java.util.Optional;
import org.climbwright.atmosphere.AirState;
import org.jspecify.annotations.Nullable;

/**
 * The cloud that thresholds of relative humidity make of a profile: {@link
 * CloudThresholds#cloudIn}.
 *
 * <p>Limits of use: what a forecast scheme would say, not what is in the sky; {@link
 * CloudThresholds} says what it is known to miss.
 */
public final class ForecastCloud implements Serializable {
    private static final long serialVersionUID = 1L;

    private final Kind kind;
    private final @Nullable AirState base;
    private final @Nullable AirState top;
    private final String reason;

    ForecastCloud(Kind kind, Optional<AirState> base, Optional<AirState> top, String reason) {
        this.kind = kind;
        this.base = base.orElse(null);
        this.top = top.orElse(null);
        this.reason = reason;
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

    /**
     * Returns what the scheme says.
     *
     * @return cloud, clear or not decided
     */
    public Kind kind() {
        return kind;
    }

    /**
     * Returns the base.
     *
     * @return the air there; empty unless found
     */
    public Optional<AirState> base() {
        return Optional.ofNullable(base);
    }

    /**
     * Returns the top.
     *
     * @return the air there; empty unless found
     */
    public Optional<AirState> top() {
        return Optional.ofNullable(top);
    }

    /**
     * Returns why it says so.
     *
     * @return words, for reading
     */
    public String reason() {
        return reason;
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof ForecastCloud that
                && kind == that.kind
                && Objects.equals(base, that.base)
                && Objects.equals(top, that.top)
                && reason.equals(that.reason);
    }

    @Override
    public int hashCode() {
        return Objects.hash(kind, base, top, reason);
    }

    /**
     * Returns it for reading.
     *
     * @return a text; may change between versions
     */
    @Override
    public String toString() {
        return kind + ": " + reason;
    }
}
