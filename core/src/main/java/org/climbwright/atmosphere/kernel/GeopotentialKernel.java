package org.climbwright.atmosphere.kernel;

import static org.climbwright.atmosphere.IcaoConstants.EARTH_RADIUS_M;

/**
 * Geometric and geopotential altitude of {@link org.climbwright.atmosphere.Geopotential}, without
 * its checks.
 *
 * @source see there
 */
public final class GeopotentialKernel {
    private GeopotentialKernel() {}

    /**
     * Returns the geopotential altitude of a geometric one.
     *
     * @param geometricM geometric altitude [m]
     * @return geopotential altitude [m]
     * @accuracy 2 ulp
     * @source see the class comment
     */
    public static double geopotential(double geometricM) {
        return EARTH_RADIUS_M * geometricM / (EARTH_RADIUS_M + geometricM);
    }

    /**
     * Returns the geometric altitude of a geopotential one.
     *
     * @param geopotentialM geopotential altitude [m]
     * @return geometric altitude [m]
     * @accuracy 2 ulp
     * @source see the class comment
     */
    public static double geometric(double geopotentialM) {
        return EARTH_RADIUS_M * geopotentialM / (EARTH_RADIUS_M - geopotentialM);
    }

    /**
     * Returns how much faster geometric altitude grows than geopotential altitude at one of these.
     *
     * @param geopotentialM geopotential altitude [m]
     * @return {@code dZ/dH}
     * @accuracy 3 ulp
     * @source derivative of {@link #geometric}
     */
    public static double geometricPerGeopotential(double geopotentialM) {
        double ratio = EARTH_RADIUS_M / (EARTH_RADIUS_M - geopotentialM);
        return ratio * ratio;
    }
}
