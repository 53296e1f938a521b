package org.climbwright.gradient.procedure;

import org.climbwright.gradient.ClimbGradient;
import org.climbwright.quantity.ModelRange;

/**
 * The relations of both systems between a climb and the surface below it that obstacles may reach,
 * in SI doubles.
 *
 * <p>In the US system the surface rises at 76 % of the climb's gradient and 24 % are clearance; by
 * PANS-OPS the surface rises 0.8 % less than the climb. Both start where the climb starts.
 *
 * <p>Limits of use: as of {@link DepartureCriteria}.
 *
 * @source US: FAA Order 8260.3C, formula 14-1-4, as cited in public (500 ft/NM leaves 120 ft/NM).
 *     PANS-OPS: ICAO Doc 8168, minimum obstacle clearance of 0.8 % of the distance from the
 *     departure end
 */
public final class ObstacleClearance {
    /** What part of the gradient the US surface has. */
    public static final double US_SURFACE_SHARE = 0.76;

    /** How much flatter the surface of PANS-OPS is than the climb [m/m]. */
    public static final double PANS_OPS_CLEARANCE = 0.008;

    private static final ModelRange GRADIENT =
            new ModelRange("gradient", 0.0, 10.0, "m/m", "a departure climbs");

    private ObstacleClearance() {}

    /**
     * Tells whether an obstacle is in range.
     *
     * @param heightM height of the obstacle above the start of the climb [m]
     * @param distanceM distance of the obstacle [m]
     * @return true if {@link #usGradient} and {@link #pansOpsGradient} answer
     */
    public static boolean covers(double heightM, double distanceM) {
        return ClimbGradient.coversRequired(heightM, distanceM);
    }

    /**
     * Tells whether a gradient is that of a climb.
     *
     * @param climbGradient gradient of the climb [m/m]
     * @return true from 0 to 10
     */
    public static boolean coversGradient(double climbGradient) {
        return GRADIENT.covers(climbGradient);
    }

    /**
     * Returns the gradient that clears an obstacle in the US system: {@code h / (0.76 d)}.
     *
     * @param heightM height of the obstacle above the start of the climb [m], -1e5 to 1e5
     * @param distanceM distance of the obstacle [m], 0.001 to 2e7
     * @return gradient of the climb [m/m]
     * @throws org.climbwright.quantity.OutsideModelException if a value is out of range
     * @accuracy 1 ulp
     * @source see the class comment
     */
    public static double usGradient(double heightM, double distanceM) {
        return ClimbGradient.required(heightM, distanceM) / US_SURFACE_SHARE;
    }

    /**
     * Returns the gradient that clears an obstacle by PANS-OPS: {@code h / d + 0.8 %}.
     *
     * @param heightM height of the obstacle above the start of the climb [m], -1e5 to 1e5
     * @param distanceM distance of the obstacle [m], 0.001 to 2e7
     * @return gradient of the climb [m/m]
     * @throws org.climbwright.quantity.OutsideModelException if a value is out of range
     * @accuracy 1 ulp
     * @source see the class comment
     */
    public static double pansOpsGradient(double heightM, double distanceM) {
        return ClimbGradient.required(heightM, distanceM) + PANS_OPS_CLEARANCE;
    }

    /**
     * Returns the gradient of the US surface below a climb.
     *
     * @param climbGradient gradient of the climb [m/m], 0 to 10
     * @return gradient of the surface [m/m]
     * @throws org.climbwright.quantity.OutsideModelException if the gradient is out of range
     * @accuracy half an ulp
     * @source see the class comment
     */
    public static double usSurface(double climbGradient) {
        return US_SURFACE_SHARE * GRADIENT.check(climbGradient);
    }

    /**
     * Returns the gradient of the PANS-OPS surface below a climb.
     *
     * @param climbGradient gradient of the climb [m/m], 0 to 10
     * @return gradient of the surface [m/m]
     * @throws org.climbwright.quantity.OutsideModelException if the gradient is out of range
     * @accuracy half an ulp
     * @source see the class comment
     */
    public static double pansOpsSurface(double climbGradient) {
        return GRADIENT.check(climbGradient) - PANS_OPS_CLEARANCE;
    }
}
