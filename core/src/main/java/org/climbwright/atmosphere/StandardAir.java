package org.climbwright.atmosphere;

import static org.climbwright.atmosphere.IcaoConstants.GAS_CONSTANT_J_PER_KG_K;
import static org.climbwright.atmosphere.IcaoConstants.GRAVITY_MPS2;
import static org.climbwright.atmosphere.IcaoConstants.SEA_LEVEL_DENSITY_KG_PER_M3;
import static org.climbwright.atmosphere.IcaoConstants.SEA_LEVEL_PRESSURE_PA;
import static org.climbwright.atmosphere.IcaoConstants.SEA_LEVEL_TEMPERATURE_K;

import org.climbwright.quantity.ModelRange;

/**
 * The ICAO standard atmosphere from -5 to 80 km, in SI doubles: no allocation, no units.
 *
 * <p>Altitudes are geopotential, and in this air pressure altitude and geopotential altitude are
 * the same number. For the typed way use {@link Atmosphere#standard()}.
 *
 * <pre>{@code
 * StandardAir.pressureFromAltitude(11000.0)    // 22632.0400950078
 * StandardAir.altitudeFromPressure(50000.0)    // 5574.433808591446
 * }</pre>
 *
 * <p>Limits of use: a model of air for altimetry and comparison. The air of the day is another.
 *
 * @source ICAO Doc 7488/3, Manual of the ICAO Standard Atmosphere, sections 2 and 3: temperature
 *     linear in geopotential altitude by layers, hydrostatic equation, perfect gas
 */
public final class StandardAir {
    private static final double ROUNDING = 1e-15;

    private static final String END = "the ICAO standard atmosphere is defined no further here";
    private static final ModelRange ALTITUDE =
            new ModelRange(
                    "pressure altitude", LayeredAir.LOWEST_M, LayeredAir.HIGHEST_M, "m", END);
    private static final ModelRange PRESSURE =
            new ModelRange(
                    "static pressure",
                    StandardAirKernel.pressure(LayeredAir.HIGHEST_M),
                    StandardAirKernel.pressure(LayeredAir.LOWEST_M),
                    "Pa",
                    END);
    private static final ModelRange DENSITY =
            new ModelRange(
                    "air density",
                    // a density made of pressure and temperature may round to some ulp beyond
                    StandardAirKernel.density(LayeredAir.HIGHEST_M) * (1.0 - ROUNDING),
                    StandardAirKernel.density(LayeredAir.LOWEST_M) * (1.0 + ROUNDING),
                    "kg/m³",
                    END);

    private static final ModelRange DEVIATION =
            new ModelRange(
                    "deviation from standard temperature",
                    -200.0,
                    200.0,
                    "K",
                    "no air of the earth is farther from standard");

    private StandardAir() {}

    /**
     * Tells whether the standard atmosphere reaches an altitude.
     *
     * @param altitudeM geopotential altitude [m]
     * @return true from -5000 to 80000 m
     */
    public static boolean coversAltitude(double altitudeM) {
        return ALTITUDE.covers(altitudeM);
    }

    /**
     * Tells whether the standard atmosphere has a pressure.
     *
     * @param pressurePa static pressure [Pa]
     * @return true from the pressure at 80 km (0.886 Pa) to that at -5 km (177687 Pa)
     */
    public static boolean coversPressure(double pressurePa) {
        return PRESSURE.covers(pressurePa);
    }

    /**
     * Tells whether the standard atmosphere has a density.
     *
     * @param densityKgPerM3 density [kg/m³]
     * @return true from the density at 80 km to that at -5 km, and for the rounding of a density
     *     made of pressure and temperature, 1e-15, beyond
     */
    public static boolean coversDensity(double densityKgPerM3) {
        return DENSITY.covers(densityKgPerM3);
    }

    /**
     * Returns the temperature of standard air at an altitude: {@code T = Tb + L (H - Hb)}.
     *
     * @param altitudeM geopotential altitude [m], -5000 to 80000
     * @return static air temperature [K]
     * @throws org.climbwright.quantity.OutsideModelException if the altitude is outside that range
     * @accuracy 1e-15 relative; continuous at layer bounds to the last bit
     * @source see the class comment
     */
    public static double temperatureFromAltitude(double altitudeM) {
        return StandardAirKernel.temperature(ALTITUDE.check(altitudeM));
    }

    /**
     * Returns the pressure of standard air at an altitude.
     *
     * <p>In a layer that warms or cools, {@code p = pb (1 + L (H - Hb) / Tb)^(-g0 / (R L))}; in an
     * isothermal one, {@code p = pb exp(-g0 (H - Hb) / (R Tb))}.
     *
     * @param altitudeM geopotential altitude [m], -5000 to 80000
     * @return static pressure [Pa], falling as altitude rises
     * @throws org.climbwright.quantity.OutsideModelException if the altitude is outside that range
     * @accuracy 4 ulp against 50-digit arithmetic, 5e-16 relative
     * @source see the class comment
     */
    public static double pressureFromAltitude(double altitudeM) {
        return StandardAirKernel.pressure(ALTITUDE.check(altitudeM));
    }

    /**
     * Returns the density of standard air at an altitude: {@code rho = p / (R T)}.
     *
     * @param altitudeM geopotential altitude [m], -5000 to 80000
     * @return density [kg/m³], falling as altitude rises
     * @throws org.climbwright.quantity.OutsideModelException if the altitude is outside that range
     * @accuracy 4 ulp against 50-digit arithmetic, 5e-16 relative
     * @source see the class comment
     */
    public static double densityFromAltitude(double altitudeM) {
        return StandardAirKernel.density(ALTITUDE.check(altitudeM));
    }

    /**
     * Returns the altitude at which standard air has a pressure: the pressure altitude.
     *
     * <p>In a layer that warms or cools, {@code H = Hb + Tb / L ((p / pb)^(-R L / g0) - 1)}; in an
     * isothermal one, {@code H = Hb - R Tb / g0 ln(p / pb)}.
     *
     * @param pressurePa static pressure [Pa], 0.886 to 177687
     * @return geopotential altitude in standard air [m]
     * @throws org.climbwright.quantity.OutsideModelException if the pressure is outside that range
     * @accuracy 1e-11 m, or 2 ulp where that is more, against 50-digit arithmetic
     * @source see the class comment
     */
    public static double altitudeFromPressure(double pressurePa) {
        return StandardAirKernel.altitudeFromPressure(PRESSURE.check(pressurePa));
    }

    /**
     * Returns the altitude at which standard air has a density: the density altitude.
     *
     * @param densityKgPerM3 density [kg/m³], from that at 80 km to that at -5 km
     * @return geopotential altitude in standard air [m]
     * @throws org.climbwright.quantity.OutsideModelException if the density is outside that range
     * @accuracy 1e-11 m, or 2 ulp where that is more, against 50-digit arithmetic
     * @source see the class comment; density from pressure and temperature, inverted by layers
     */
    public static double altitudeFromDensity(double densityKgPerM3) {
        double altitudeM = StandardAirKernel.altitudeFromDensity(DENSITY.check(densityKgPerM3));
        if (altitudeM < LayeredAir.LOWEST_M) {
            return LayeredAir.LOWEST_M;
        }
        return altitudeM > LayeredAir.HIGHEST_M ? LayeredAir.HIGHEST_M : altitudeM;
    }

    /**
     * Returns the temperature that standard air has at a pressure: what ISA deviation counts from.
     *
     * @param pressurePa static pressure [Pa], 0.886 to 177687
     * @return static air temperature [K]
     * @throws org.climbwright.quantity.OutsideModelException if the pressure is outside that range
     * @accuracy 1e-15 relative
     * @source see the class comment
     */
    public static double temperatureFromPressure(double pressurePa) {
        return StandardAirKernel.temperature(altitudeFromPressure(pressurePa));
    }

    /**
     * Returns the temperature ratio θ of standard air at an altitude.
     *
     * @param altitudeM geopotential altitude [m], -5000 to 80000
     * @return temperature over that at mean sea level
     * @throws org.climbwright.quantity.OutsideModelException if the altitude is outside that range
     * @accuracy 1e-15 relative
     * @source see the class comment
     */
    public static double temperatureRatioFromAltitude(double altitudeM) {
        return temperatureFromAltitude(altitudeM) / SEA_LEVEL_TEMPERATURE_K;
    }

    /**
     * Returns the pressure ratio δ of standard air at an altitude.
     *
     * @param altitudeM geopotential altitude [m], -5000 to 80000
     * @return pressure over that at mean sea level
     * @throws org.climbwright.quantity.OutsideModelException if the altitude is outside that range
     * @accuracy 4 ulp, 5e-16 relative
     * @source see the class comment
     */
    public static double pressureRatioFromAltitude(double altitudeM) {
        return pressureFromAltitude(altitudeM) / SEA_LEVEL_PRESSURE_PA;
    }

    /**
     * Returns the density ratio σ of standard air at an altitude.
     *
     * @param altitudeM geopotential altitude [m], -5000 to 80000
     * @return density over that at mean sea level, which is 1.22500001812 and not 1.225
     * @throws org.climbwright.quantity.OutsideModelException if the altitude is outside that range
     * @accuracy 4 ulp, 5e-16 relative; 1.5e-8 from a ratio taken against the rounded 1.225
     * @source see the class comment
     */
    public static double densityRatioFromAltitude(double altitudeM) {
        return densityFromAltitude(altitudeM) / SEA_LEVEL_DENSITY_KG_PER_M3;
    }

    /**
     * Returns the geopotential thickness of air that is warmer than standard by the same amount at
     * every pressure: {@code Hp2 - Hp1 + (R dT / g0) ln(p1 / p2)}.
     *
     * @param lowerPa static pressure at the lower end [Pa], 0.886 to 177687
     * @param upperPa static pressure at the upper end [Pa], 0.886 to 177687
     * @param deviationK how much warmer the air is [K], -200 to 200; 0 for standard air
     * @return altitude of the upper end less that of the lower [m], negative if they are exchanged
     * @throws org.climbwright.quantity.OutsideModelException if a value is out of range
     * @accuracy 2e-10 m against 50-digit arithmetic
     * @source hydrostatic equation, {@code dH = -(R T / g0) d(ln p)}; see the class comment
     */
    public static double thicknessWithDeviation(double lowerPa, double upperPa, double deviationK) {
        double standard = altitudeFromPressure(upperPa) - altitudeFromPressure(lowerPa);
        DEVIATION.check(deviationK);
        double metresPerKelvin =
                GAS_CONSTANT_J_PER_KG_K / GRAVITY_MPS2 * StrictMath.log(lowerPa / upperPa);
        return standard + deviationK * metresPerKelvin;
    }

    static double[] bendsPa() {
        return StandardAirKernel.bendsPa();
    }

    static ModelRange pressureRange() {
        return PRESSURE;
    }
}
