package org.climbwright.atmosphere;

import static org.climbwright.atmosphere.IcaoConstants.EARTH_RADIUS_M;
import static org.climbwright.atmosphere.IcaoConstants.GRAVITY_MPS2;

import org.climbwright.atmosphere.kernel.GeopotentialKernel;
import org.climbwright.quantity.ModelRange;
import org.climbwright.quantity.altitude.GeometricAltitude;
import org.climbwright.quantity.altitude.GeopotentialAltitude;

/**
 * Between geopotential altitude, which the hydrostatic equation needs, and geometric altitude,
 * which a tape would measure: 19 m apart at 11 km.
 *
 * @source ICAO Doc 7488/3, section 2.3: gravity falls with the square of the distance from the
 *     earth's centre, nominal radius 6,356,766 m
 */
public final class Geopotential {
    private static final String NEAR_THE_EARTH = "the relation is meant for the air near the earth";
    private static final ModelRange GEOMETRIC =
            new ModelRange("geometric altitude", -10000.0, 200000.0, "m", NEAR_THE_EARTH);
    private static final ModelRange GEOPOTENTIAL =
            new ModelRange(
                    "geopotential altitude",
                    GeopotentialKernel.geopotential(GEOMETRIC.lowest()),
                    GeopotentialKernel.geopotential(GEOMETRIC.highest()),
                    "m",
                    NEAR_THE_EARTH);

    private Geopotential() {}

    /**
     * Tells whether a geometric altitude is near enough to the earth.
     *
     * @param geometricM geometric altitude [m]
     * @return true from -10000 to 200000 m
     */
    public static boolean coversGeometric(double geometricM) {
        return GEOMETRIC.covers(geometricM);
    }

    /**
     * Tells whether a geopotential altitude is near enough to the earth.
     *
     * @param geopotentialM geopotential altitude [m]
     * @return true from -10015.8 to 193899 m
     */
    public static boolean coversGeopotential(double geopotentialM) {
        return GEOPOTENTIAL.covers(geopotentialM);
    }

    /**
     * Returns the geopotential altitude of a geometric one: {@code H = r Z / (r + Z)}.
     *
     * @param geometricM geometric altitude above mean sea level [m], -10000 to 200000
     * @return geopotential altitude [m]
     * @throws org.climbwright.quantity.OutsideModelException if the altitude is out of range
     * @accuracy 2 ulp
     * @source see the class comment
     */
    public static double geopotentialFromGeometric(double geometricM) {
        return GeopotentialKernel.geopotential(GEOMETRIC.check(geometricM));
    }

    /**
     * Returns the geometric altitude of a geopotential one: {@code Z = r H / (r - H)}.
     *
     * @param geopotentialM geopotential altitude above mean sea level [m], -10015.8 to 193899
     * @return geometric altitude [m]
     * @throws org.climbwright.quantity.OutsideModelException if the altitude is out of range
     * @accuracy 2 ulp
     * @source see the class comment
     */
    public static double geometricFromGeopotential(double geopotentialM) {
        return GeopotentialKernel.geometric(GEOPOTENTIAL.check(geopotentialM));
    }

    /**
     * Returns the acceleration of gravity at an altitude: {@code g = g0 (r / (r + Z))²}.
     *
     * @param geometricM geometric altitude above mean sea level [m], -10000 to 200000
     * @return acceleration [m/s²]
     * @throws org.climbwright.quantity.OutsideModelException if the altitude is out of range
     * @accuracy 3 ulp of the nominal relation, which knows no latitude
     * @source see the class comment
     */
    public static double gravity(double geometricM) {
        double ratio = EARTH_RADIUS_M / (EARTH_RADIUS_M + GEOMETRIC.check(geometricM));
        return GRAVITY_MPS2 * ratio * ratio;
    }

    /**
     * Returns how much faster geometric altitude grows than geopotential altitude there.
     *
     * @param geometricM geometric altitude above mean sea level [m], -10000 to 200000
     * @return {@code dZ/dH = ((r + Z) / r)²}, 1.0035 at 11 km
     * @throws org.climbwright.quantity.OutsideModelException if the altitude is out of range
     * @accuracy 3 ulp
     * @source derivative of {@link #geometricFromGeopotential}
     */
    public static double geometricPerGeopotential(double geometricM) {
        double ratio = (EARTH_RADIUS_M + GEOMETRIC.check(geometricM)) / EARTH_RADIUS_M;
        return ratio * ratio;
    }

    /**
     * Returns the same of a geopotential altitude.
     *
     * @param geopotentialM geopotential altitude above mean sea level [m], -10015.8 to 193899
     * @return {@code dZ/dH = (r / (r - H))²}, 1.0035 at 11 km
     * @throws org.climbwright.quantity.OutsideModelException if the altitude is out of range
     * @accuracy 3 ulp
     * @source derivative of {@link #geometricFromGeopotential}
     */
    public static double geometricPerGeopotentialAtGeopotential(double geopotentialM) {
        return GeopotentialKernel.geometricPerGeopotential(GEOPOTENTIAL.check(geopotentialM));
    }

    /**
     * Returns the geopotential altitude of a geometric one; see {@link
     * #geopotentialFromGeometric(double)}.
     *
     * @param altitude the geometric altitude
     * @return the geopotential altitude, the smaller of the two in size above the sea
     * @throws org.climbwright.quantity.OutsideModelException if the altitude is out of range
     */
    public static GeopotentialAltitude from(GeometricAltitude altitude) {
        return GeopotentialAltitude.ofMetres(geopotentialFromGeometric(altitude.inMetres()));
    }

    /**
     * Returns the geometric altitude of a geopotential one; see {@link
     * #geometricFromGeopotential(double)}.
     *
     * @param altitude the geopotential altitude
     * @return the geometric altitude, the larger of the two in size above the sea
     * @throws org.climbwright.quantity.OutsideModelException if the altitude is out of range
     */
    public static GeometricAltitude toGeometric(GeopotentialAltitude altitude) {
        return GeometricAltitude.ofMetres(geometricFromGeopotential(altitude.inMetres()));
    }
}
