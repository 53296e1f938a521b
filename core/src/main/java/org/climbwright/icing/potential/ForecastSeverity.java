package org.climbwright.icing.potential;

import org.climbwright.quantity.ModelRange;

/**
 * The classes into which a forecast scheme divides its severity of icing, a figure from 0 to 1.
 *
 * <p>They are the scheme's, and not those of pilots' reports, which go by what ice does to an
 * aeroplane.
 *
 * <p>Limits of use: severity of a forecast model's cloud, the same for every aeroplane. {@link
 * #NONE} is not "no icing".
 *
 * @source post-processor of the US National Centers for Environmental Prediction, comment in the
 *     public source of its global forecast icing module (2015)
 */
public enum ForecastSeverity {
    /** Below 0.08. */
    NONE,
    /** From 0.08 to 0.21, both included. */
    TRACE,
    /** Above 0.21, up to 0.37. */
    LIGHT,
    /** Above 0.37, up to 0.67. */
    MODERATE,
    /** Above 0.67, up to 1. */
    HEAVY;

    private static final ModelRange SEVERITY =
            new ModelRange("icing severity", 0.0, 1.0, "", "the scheme's figure ends there");

    /**
     * Tells whether a severity has a class.
     *
     * @param severity the scheme's severity, a ratio
     * @return true from 0 to 1
     */
    public static boolean covers(double severity) {
        return SEVERITY.covers(severity);
    }

    /**
     * Returns the class of a severity.
     *
     * @param severity the scheme's severity, a ratio from 0 to 1
     * @return its class
     * @throws org.climbwright.quantity.OutsideModelException if the severity is out of range
     * @accuracy exact
     * @source see the class comment
     */
    public static ForecastSeverity of(double severity) {
        SEVERITY.check(severity);
        if (severity < 0.08) {
            return NONE;
        }
        if (severity <= 0.21) {
            return TRACE;
        }
        if (severity <= 0.37) {
            return LIGHT;
        }
        return severity <= 0.67 ? MODERATE : HEAVY;
    }
}
