package org.climbwright.profile;

import java.util.Objects;
import org.climbwright.quantity.altitude.PressureAltitude;
import org.climbwright.quantity.speed.PressureAltitudeRate;

/**
 * A rate of climb held between two levels, instead of what the excess of thrust gives.
 *
 * <p>Limits of use: a rate held with the thrust of the climb costs speed where it is more than the
 * aeroplane can, and the speed must be watched.
 *
 * @param from where it begins
 * @param to where it ends, above that
 * @param rate the rate on the instrument, above 0
 * @param gives what gives way, thrust or speed
 */
public record HeldRate(
        PressureAltitude from, PressureAltitude to, PressureAltitudeRate rate, Gives gives) {

    /** What gives way so that a rate can be held. */
    public enum Gives {
        /**
         * Thrust is reduced and the speeds are kept; where thrust is short, the rate is smaller.
         */
        THRUST,
        /**
         * Thrust is left alone, and speed goes where it goes: up at a rate below what the excess
         * gives, down at one above; from the minimum speed on the rate gives way, and from the
         * maximum operating speed on the thrust.
         */
        SPEED
    }

    /**
     * Makes it of parts that can be.
     *
     * @param from see above
     * @param to see above
     * @param rate see above
     * @param gives see above
     * @throws IllegalArgumentException if the levels are not one above the other, or the rate is
     *     not above 0
     */
    public HeldRate {
        Objects.requireNonNull(gives, "gives");
        if (from.compareTo(to) >= 0) {
            throw new IllegalArgumentException(
                    "a rate must be held up to a level above "
                            + from.text()
                            + ", but it was "
                            + to.text());
        }
        if (!(rate.inMetresPerSecond() > 0.0)) {
            throw new IllegalArgumentException(
                    "a rate held in a climb must be above 0 ft/min, but was " + rate.text());
        }
    }
}
