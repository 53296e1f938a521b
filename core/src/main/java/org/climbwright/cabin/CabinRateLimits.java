package org.climbwright.cabin;

import java.io.Serializable;
import java.util.Locale;
import java.util.Objects;
import org.climbwright.quantity.speed.CabinAltitudeRate;

/**
 * How fast the controller lets the cabin climb and descend, for the ears aboard.
 *
 * @param up the fastest climb, above 0
 * @param down the fastest descent, told as a positive rate, above 0
 */
public record CabinRateLimits(CabinAltitudeRate up, CabinAltitudeRate down)
        implements Serializable {
    /**
     * Makes the limits.
     *
     * @param up the fastest climb, above 0
     * @param down the fastest descent, told as a positive rate, above 0
     * @throws IllegalArgumentException if a rate is not above 0
     */
    public CabinRateLimits {
        Objects.requireNonNull(up, "up");
        Objects.requireNonNull(down, "down");
        if (!(up.inMetresPerSecond() > 0.0 && down.inMetresPerSecond() > 0.0)) {
            throw new IllegalArgumentException(
                    "both limits of a cabin's rate must be above 0 ft/min, but were "
                            + up.text()
                            + " up and "
                            + down.text()
                            + " down");
        }
    }

    /**
     * Returns the limits of common practice: 500 ft/min up, 300 ft/min down (common practice, no
     * source).
     *
     * @return the limits
     */
    public static CabinRateLimits ofCommonPractice() {
        return new CabinRateLimits(
                CabinAltitudeRate.ofFeetPerMinute(500), CabinAltitudeRate.ofFeetPerMinute(300));
    }

    /**
     * Returns the limits for reading.
     *
     * @return a text; may change between versions
     */
    @Override
    public String toString() {
        return String.format(
                Locale.ROOT,
                "cabin at most %.0f ft/min up, %.0f ft/min down",
                up.inFeetPerMinute(),
                down.inFeetPerMinute());
    }
}
