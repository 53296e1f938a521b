package org.climbwright.profile;

import java.time.Duration;
import java.util.Optional;
import org.climbwright.quantity.altitude.PressureAltitude;
import org.climbwright.quantity.path.GroundDistance;
import org.jspecify.annotations.Nullable;

/**
 * A level held on the way, for a time or until a distance, at the speed with which it was reached.
 */
public final class HeldLevel {
    private final PressureAltitude level;
    private final @Nullable Duration time;
    private final @Nullable GroundDistance until;

    private HeldLevel(
            PressureAltitude level, @Nullable Duration time, @Nullable GroundDistance until) {
        this.level = level;
        this.time = time;
        this.until = until;
    }

    /**
     * Returns a level held for a time.
     *
     * @param level the level
     * @param time how long, above 0
     * @return the level and the time
     * @throws IllegalArgumentException if the time is not above 0
     */
    public static HeldLevel during(PressureAltitude level, Duration time) {
        if (time.isNegative() || time.isZero()) {
            throw new IllegalArgumentException(
                    "a level must be held for a time above 0 s, but it was "
                            + time.toSeconds()
                            + " s");
        }
        return new HeldLevel(level, time, null);
    }

    /**
     * Returns a level held until a distance; not at all if it is reached behind that.
     *
     * @param level the level
     * @param distance distance over the ground since the climb began
     * @return the level and the distance
     */
    public static HeldLevel until(PressureAltitude level, GroundDistance distance) {
        return new HeldLevel(level, null, distance);
    }

    /**
     * Returns the level.
     *
     * @return pressure altitude
     */
    public PressureAltitude level() {
        return level;
    }

    /**
     * Returns how long it is held.
     *
     * @return the time; empty where a distance ends it
     */
    public Optional<Duration> time() {
        return Optional.ofNullable(time);
    }

    /**
     * Returns until where it is held.
     *
     * @return the distance; empty where a time ends it
     */
    public Optional<GroundDistance> until() {
        return Optional.ofNullable(until);
    }
}
