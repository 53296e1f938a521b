package org.climbwright.atmosphere;

/**
 * The defining constants of the ICAO standard atmosphere, in SI.
 *
 * <p>Three gas constants of air are in circulation; this one is ICAO's. The one of the US Standard
 * Atmosphere 1976 is 287.05307, which makes the pressure at 20 km 2 parts in a million higher.
 *
 * @source ICAO Doc 7488/3, Manual of the ICAO Standard Atmosphere, table A, and ISO 2533:1975; gas
 *     constant and conductivity coefficient from memory, the others seen in the tables 2 to 4 of
 *     NASA-TM-X-74335 (US Standard Atmosphere 1976), which has the same values
 */
public final class IcaoConstants {
    /** Pressure at mean sea level [Pa]. */
    public static final double SEA_LEVEL_PRESSURE_PA = 101325.0;

    /** Temperature at mean sea level [K]. */
    public static final double SEA_LEVEL_TEMPERATURE_K = 288.15;

    /** Standard acceleration of gravity [m/s²]. */
    public static final double GRAVITY_MPS2 = 9.80665;

    /** Specific gas constant of dry air [J/(kg·K)]. */
    public static final double GAS_CONSTANT_J_PER_KG_K = 287.05287;

    /** Ratio of the specific heats of air. */
    public static final double HEAT_CAPACITY_RATIO = 1.4;

    /** Nominal radius of the earth [m]. */
    public static final double EARTH_RADIUS_M = 6356766.0;

    /**
     * Density at mean sea level [kg/m³]: pressure over gas constant and temperature, 1.22500001812
     * and not the rounded 1.225, so that density agrees with pressure and temperature.
     */
    public static final double SEA_LEVEL_DENSITY_KG_PER_M3 =
            SEA_LEVEL_PRESSURE_PA / (GAS_CONSTANT_J_PER_KG_K * SEA_LEVEL_TEMPERATURE_K);

    /** Speed of sound at mean sea level [m/s], 340.293988. */
    public static final double SEA_LEVEL_SPEED_OF_SOUND_MPS =
            Math.sqrt(HEAT_CAPACITY_RATIO * GAS_CONSTANT_J_PER_KG_K * SEA_LEVEL_TEMPERATURE_K);

    private IcaoConstants() {}
}
