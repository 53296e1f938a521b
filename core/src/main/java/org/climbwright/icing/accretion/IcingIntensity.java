package org.climbwright.icing.accretion;

import java.util.Optional;
import org.climbwright.unit.UnitScale;

/**
 * Intensity of icing by a rule of numbers: the time in which a quarter of an inch of ice gathers on
 * the unprotected leading edge of the outer wing.
 *
 * <p>An hour or more is trace, 15 minutes or more light, 5 minutes or more moderate, less is
 * severe; in growth that is up to a quarter, 1 and 3 inches an hour.
 *
 * <p>Limits of use: what a crew reports is what the ice does to its aeroplane, and one aeroplane's
 * light icing is another's severe. The flight manual and what the crew sees decide.
 *
 * @source US National Weather Service rule of the time to gather 1/4 inch (seen second hand);
 *     growth of 1/4, 1 and 3 in/h in the wording of FAA AC 91-74B, seen second hand
 */
public enum IcingIntensity {
    /** A quarter of an inch in an hour or more. */
    TRACE(3600.0),
    /** A quarter of an inch in 15 minutes or more. */
    LIGHT(900.0),
    /** A quarter of an inch in 5 minutes or more. */
    MODERATE(300.0),
    /** A quarter of an inch in less than 5 minutes. */
    SEVERE(0.0);

    /** The thickness of the rule [m]: a quarter of an inch. */
    public static final double RULE_THICKNESS_M = 0.25 * 0.0254;

    /** Share of a time that rounding may take from it. */
    private static final double ROUNDING = 1e-12;

    private final double shortestS;

    IcingIntensity(double shortestS) {
        this.shortestS = shortestS;
    }

    /**
     * Returns the shortest time in which a quarter of an inch gathers.
     *
     * @return the time [s], itself included
     */
    public double shortestTimeS() {
        return shortestS;
    }

    /**
     * Returns the intensity for a growth of ice.
     *
     * @param rateMps how fast the ice grows thicker [m/s]
     * @return the intensity; empty if no ice grows, which is no word on what else may come
     * @throws org.climbwright.quantity.OutsideModelException if the rate is above 0.1 m/s
     * @throws IllegalArgumentException if the rate is negative or NaN
     */
    public static Optional<IcingIntensity> ofGrowth(double rateMps) {
        if (!(rateMps >= 0.0)) {
            throw new IllegalArgumentException(
                    "growth of ice must be 0.0 m/s or more, but was " + rateMps + " m/s");
        }
        if (rateMps < Double.MIN_NORMAL) {
            return Optional.empty();
        }
        double timeS = IceGrowth.timeToThickness(RULE_THICKNESS_M, rateMps);
        for (IcingIntensity intensity : values()) {
            if (timeS >= intensity.shortestS * (1.0 - ROUNDING)) {
                return Optional.of(intensity);
            }
        }
        return Optional.of(SEVERE);
    }

    /**
     * Returns the intensity for a growth of ice in the unit of reports.
     *
     * @param inchesPerHour how fast the ice grows thicker [in/h]
     * @return as {@link #ofGrowth}
     * @throws IllegalArgumentException as {@link #ofGrowth}
     */
    public static Optional<IcingIntensity> ofInchesPerHour(double inchesPerHour) {
        return ofGrowth(UnitScale.INCH.toSi(inchesPerHour) / 3600.0);
    }
}
