package org.climbwright.performance.ceiling;

import java.io.Serializable;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import org.climbwright.quantity.altitude.PressureAltitude;

/**
 * One limit of the level: where it lies, or why that cannot be told.
 *
 * <p>Limits of use: computed from the caller's figures; the flight manual decides.
 */
public final class LevelLimit implements Serializable {
    private static final long serialVersionUID = 1L;

    /** What limits the level. */
    public enum Kind {
        /** The certified ceiling. */
        CERTIFIED_CEILING,
        /** Thrust, which leaves a residual rate of climb and no more. */
        THRUST,
        /** Buffet at a load factor. */
        BUFFET,
        /** The gradient with an engine out, as it is. */
        GROSS_GRADIENT,
        /** The gradient with an engine out, reduced as the rules have it. */
        NET_GRADIENT
    }

    /** Where a limit lies. */
    public enum Standing {
        /** At a level. */
        FOUND,
        /** Below the level from which it was looked for: not even that is reached. */
        BELOW_THE_START,
        /** Above the end of the air: it does not limit up to there. */
        ABOVE_THE_END,
        /** Nobody can tell. */
        NOT_KNOWN
    }

    private final Kind kind;
    private final Standing standing;
    private final double levelM;
    private final String reason;

    private LevelLimit(Kind kind, Standing standing, double levelM, String reason) {
        this.kind = Objects.requireNonNull(kind, "kind");
        this.standing = Objects.requireNonNull(standing, "standing");
        this.levelM = levelM;
        this.reason = Objects.requireNonNull(reason, "reason");
    }

    static LevelLimit at(Kind kind, double levelM, String reason) {
        return new LevelLimit(kind, Standing.FOUND, levelM, reason);
    }

    static LevelLimit none(Kind kind, Standing standing, String reason) {
        return new LevelLimit(kind, standing, Double.NaN, reason);
    }

    LevelLimit adding(String toReason) {
        return new LevelLimit(kind, standing, levelM, reason + toReason);
    }

    /**
     * Returns what limits.
     *
     * @return the kind
     */
    public Kind kind() {
        return kind;
    }

    /**
     * Returns where it lies.
     *
     * @return whether it was found, and if not where it must be
     */
    public Standing standing() {
        return standing;
    }

    /**
     * Returns the level.
     *
     * @return the highest level that it allows; empty unless it was found
     */
    public Optional<PressureAltitude> level() {
        return Double.isNaN(levelM)
                ? Optional.empty()
                : Optional.of(PressureAltitude.ofMetres(levelM));
    }

    /**
     * Returns what was found.
     *
     * @return one sentence; may change between versions
     */
    public String reason() {
        return reason;
    }

    /**
     * Returns the limit for reading.
     *
     * @return a text; may change between versions
     */
    @Override
    public String toString() {
        String where =
                level().map(at -> String.format(Locale.ROOT, "%.0f ft", at.inFeet()))
                        .orElse(inWords(standing));
        return inWords(kind) + " " + where + ": " + reason;
    }

    private static String inWords(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }
}
