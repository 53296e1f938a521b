package org.climbwright.profile;

import java.util.List;
import org.climbwright.profile.Leg.Law;
import org.jspecify.annotations.Nullable;

/**
 * Levels between which a programme says one thing: one speed, one rate or none, one bleed.
 *
 * @param toM where it ends [m]
 * @param speed how it is flown at its speed
 * @param faster how it comes to its speed from a lower one
 * @param slower how it comes to its speed from a higher one
 * @param rate how its rate is held; null if none is
 * @param fastest the most speed while speed gives
 * @param slowest the least speed while speed gives
 * @param isSupersonic whether its speed is above Mach 1 at its top
 * @param stays what is held at the level where it ends, before the next begins
 */
record Stage(
        double toM,
        Leg speed,
        Leg faster,
        Leg slower,
        @Nullable Leg rate,
        @Nullable Leg fastest,
        @Nullable Leg slowest,
        boolean isSupersonic,
        List<Stay> stays) {

    /**
     * A level to be held.
     *
     * @param seconds how long; NaN if a distance ends it
     * @param untilM distance that ends it; NaN if a time does
     * @param text why
     */
    record Stay(double seconds, double untilM, String text) {}

    boolean isSpeedGiving() {
        return rate != null && rate.law() == Law.RATE_BY_SPEED;
    }
}
