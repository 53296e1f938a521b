package org.climbwright.gradient.procedure;

import org.climbwright.quantity.altitude.AltitudeOnQnh;
import org.climbwright.quantity.path.GroundGradient;

/**
 * The gradients that crossing altitudes of US departures assume, by altitude.
 *
 * <p>The source lets bands share their ends. Here an end belongs to the band above, as its "10,000
 * ft and over" says: at 5,000 ft the gradient is 120 ft/NM, just below it 150.
 *
 * <p>Limits of use: what is assumed of aeroplanes, not what one can do; a crossing that cannot be
 * made is told to air traffic control in good time.
 *
 * @source FAA-H-8261-1, chapter 3, as quoted in public
 */
public enum CrossingGradient {
    /** From sea level, and from below it, to less than 5,000 ft. */
    BELOW_5000_FT(150),
    /** From 5,000 ft to less than 10,000 ft. */
    BELOW_10000_FT(120),
    /** From 10,000 ft on. */
    FROM_10000_FT(100);

    private static final AltitudeOnQnh LOWER = AltitudeOnQnh.ofFeet(5000);
    private static final AltitudeOnQnh UPPER = AltitudeOnQnh.ofFeet(10_000);

    private final double feetPerNauticalMile;

    CrossingGradient(double feetPerNauticalMile) {
        this.feetPerNauticalMile = feetPerNauticalMile;
    }

    /**
     * Returns the band of an altitude.
     *
     * @param altitude altitude above mean sea level
     * @return the band; of two that share the altitude the upper one
     */
    public static CrossingGradient at(AltitudeOnQnh altitude) {
        if (altitude.compareTo(LOWER) < 0) {
            return BELOW_5000_FT;
        }
        return altitude.compareTo(UPPER) < 0 ? BELOW_10000_FT : FROM_10000_FT;
    }

    /**
     * Returns the gradient assumed.
     *
     * @return 150, 120 or 100 ft/NM
     */
    public GroundGradient gradient() {
        return GroundGradient.ofFeetPerNauticalMile(feetPerNauticalMile);
    }
}
