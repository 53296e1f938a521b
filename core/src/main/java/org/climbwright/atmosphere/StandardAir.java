package org.climbwright.atmosphere;

import static org.climbwright.atmosphere.IcaoConstants.GAS_CONSTANT_J_PER_KG_K;
import static org.climbwright.atmosphere.IcaoConstants.GRAVITY_MPS2;
import static org.climbwright.atmosphere.IcaoConstants.SEA_LEVEL_DENSITY_KG_PER_M3;
import static org.climbwright.atmosphere.IcaoConstants.SEA_LEVEL_PRESSURE_PA;
import static org.climbwright.atmosphere.IcaoConstants.SEA_LEVEL_TEMPERATURE_K;

import java.util.Arrays;
import org.climbwright.quantity.ModelRange;

/**
 * The ICAO standard atmosphere from -5 to 80 km, in SI doubles: no allocation, no units.
 *
 * <p>Altitudes are geopotential, and in this air pressure altitude and geopotential altitude are
 * the same number. For the typed way use {@link Atmosphere#standard()}.
 *
 * <pre>{@code
 * StandardAir.pressureFromAltitude(11000.0)    // 22632.040095007793
 * StandardAir.altitudeFromPressure(50000.0)    // 5574.433808591445
 * }</pre>
 *
 * <p>Limits of use: a model of air for altimetry and comparison. The air of the day is another.
 *
 * @source ICAO Doc 7488/3, Manual of the ICAO Standard Atmosphere, sections 2 and 3: temperature
 *     linear in geopotential altitude by layers, hydrostatic equation, perfect gas
 */
public final class StandardAir {
    /** Base altitude of each layer [m]; the lowest layer also goes down to -5 km. */
    private static final double[] BASE_M = {0, 11000, 20000, 32000, 47000, 51000, 71000};

    /** Lapse of each layer [K/m], positive where it warms upwards. */
    private static final double[] LAPSE_K_PER_M = {-0.0065, 0, 0.001, 0.0028, 0, -0.0028, -0.002};

    private static final double LOWEST_M = -5000.0;
    private static final double HIGHEST_M = 80000.0;
    private static final int TOP_LAYER = BASE_M.length - 1;

    private static final double[] BASE_TEMPERATURE_K = new double[BASE_M.length];
    private static final double[] BASE_PRESSURE_PA = new double[BASE_M.length];
    private static final double[] BASE_DENSITY = new double[BASE_M.length];

    static {
        BASE_TEMPERATURE_K[0] = SEA_LEVEL_TEMPERATURE_K;
        BASE_PRESSURE_PA[0] = SEA_LEVEL_PRESSURE_PA;
        BASE_DENSITY[0] = SEA_LEVEL_DENSITY_KG_PER_M3;
        for (int layer = 1; layer <= TOP_LAYER; layer++) {
            // each base from the layer below, so that layers join to the last bit
            BASE_TEMPERATURE_K[layer] = temperature(layer - 1, BASE_M[layer]);
            BASE_PRESSURE_PA[layer] = pressure(layer - 1, BASE_M[layer]);
            BASE_DENSITY[layer] = density(layer - 1, BASE_M[layer]);
        }
    }

    private static final String END = "the ICAO standard atmosphere is defined no further here";
    private static final ModelRange ALTITUDE =
            new ModelRange("pressure altitude", LOWEST_M, HIGHEST_M, "m", END);
    private static final ModelRange PRESSURE =
            new ModelRange(
                    "static pressure",
                    pressure(TOP_LAYER, HIGHEST_M),
                    pressure(0, LOWEST_M),
                    "Pa",
                    END);
    private static final ModelRange DENSITY =
            new ModelRange(
                    "air density",
                    density(TOP_LAYER, HIGHEST_M),
                    density(0, LOWEST_M),
                    "kg/m³",
                    END);

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
     * @return true from the density at 80 km to that at -5 km
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
        return temperature(layerOfAltitude(ALTITUDE.check(altitudeM)), altitudeM);
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
     * @accuracy 1e-14 relative against 50-digit arithmetic
     * @source see the class comment
     */
    public static double pressureFromAltitude(double altitudeM) {
        return pressure(layerOfAltitude(ALTITUDE.check(altitudeM)), altitudeM);
    }

    /**
     * Returns the density of standard air at an altitude: {@code rho = p / (R T)}.
     *
     * @param altitudeM geopotential altitude [m], -5000 to 80000
     * @return density [kg/m³], falling as altitude rises
     * @throws org.climbwright.quantity.OutsideModelException if the altitude is outside that range
     * @accuracy 1e-14 relative against 50-digit arithmetic
     * @source see the class comment
     */
    public static double densityFromAltitude(double altitudeM) {
        return density(layerOfAltitude(ALTITUDE.check(altitudeM)), altitudeM);
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
     * @accuracy 1e-10 m against 50-digit arithmetic
     * @source see the class comment
     */
    public static double altitudeFromPressure(double pressurePa) {
        int layer = TOP_LAYER;
        PRESSURE.check(pressurePa);
        while (layer > 0 && pressurePa > BASE_PRESSURE_PA[layer]) {
            layer--;
        }
        double power = -GAS_CONSTANT_J_PER_KG_K * LAPSE_K_PER_M[layer] / GRAVITY_MPS2;
        return altitude(layer, pressurePa / BASE_PRESSURE_PA[layer], power);
    }

    /**
     * Returns the altitude at which standard air has a density: the density altitude.
     *
     * @param densityKgPerM3 density [kg/m³], from that at 80 km to that at -5 km
     * @return geopotential altitude in standard air [m]
     * @throws org.climbwright.quantity.OutsideModelException if the density is outside that range
     * @accuracy 1e-10 m against 50-digit arithmetic
     * @source see the class comment; density from pressure and temperature, inverted by layers
     */
    public static double altitudeFromDensity(double densityKgPerM3) {
        int layer = TOP_LAYER;
        DENSITY.check(densityKgPerM3);
        while (layer > 0 && densityKgPerM3 > BASE_DENSITY[layer]) {
            layer--;
        }
        double lapse = LAPSE_K_PER_M[layer];
        double power =
                -GAS_CONSTANT_J_PER_KG_K * lapse / (GRAVITY_MPS2 + GAS_CONSTANT_J_PER_KG_K * lapse);
        return altitude(layer, densityKgPerM3 / BASE_DENSITY[layer], power);
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
        double altitudeM = altitudeFromPressure(pressurePa);
        return temperature(layerOfAltitude(altitudeM), altitudeM);
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
     * @accuracy 1e-14 relative
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
     * @accuracy 1e-14 relative; 1.5e-8 from a ratio taken against the rounded 1.225
     * @source see the class comment
     */
    public static double densityRatioFromAltitude(double altitudeM) {
        return densityFromAltitude(altitudeM) / SEA_LEVEL_DENSITY_KG_PER_M3;
    }

    /** The pressures at which the temperature profile bends [Pa], the highest first. */
    static double[] bendsPa() {
        return Arrays.copyOfRange(BASE_PRESSURE_PA, 1, BASE_PRESSURE_PA.length);
    }

    static ModelRange pressureRange() {
        return PRESSURE;
    }

    private static int layerOfAltitude(double altitudeM) {
        int layer = TOP_LAYER;
        while (layer > 0 && altitudeM < BASE_M[layer]) {
            layer--;
        }
        return layer;
    }

    private static double temperature(int layer, double altitudeM) {
        return BASE_TEMPERATURE_K[layer] + LAPSE_K_PER_M[layer] * (altitudeM - BASE_M[layer]);
    }

    private static double pressure(int layer, double altitudeM) {
        double lapse = LAPSE_K_PER_M[layer];
        double above = altitudeM - BASE_M[layer];
        double base = BASE_TEMPERATURE_K[layer];
        if (lapse == 0.0) {
            double scaleHeight = GAS_CONSTANT_J_PER_KG_K * base / GRAVITY_MPS2;
            return BASE_PRESSURE_PA[layer] * StrictMath.exp(-above / scaleHeight);
        }
        double power = -GRAVITY_MPS2 / (GAS_CONSTANT_J_PER_KG_K * lapse);
        return BASE_PRESSURE_PA[layer] * StrictMath.pow(1.0 + lapse * above / base, power);
    }

    private static double density(int layer, double altitudeM) {
        return pressure(layer, altitudeM)
                / (GAS_CONSTANT_J_PER_KG_K * temperature(layer, altitudeM));
    }

    /** The altitude in a layer where pressure or density is a ratio of its value at the base. */
    private static double altitude(int layer, double ratio, double power) {
        double base = BASE_TEMPERATURE_K[layer];
        double logarithm = StrictMath.log(ratio);
        double lapse = LAPSE_K_PER_M[layer];
        if (lapse == 0.0) {
            return BASE_M[layer] - GAS_CONSTANT_J_PER_KG_K * base / GRAVITY_MPS2 * logarithm;
        }
        return BASE_M[layer] + base / lapse * StrictMath.expm1(power * logarithm);
    }
}
