package org.climbwright.atmosphere;

import org.climbwright.atmosphere.kernel.DryAirKernel;
import org.climbwright.quantity.ModelRange;

/**
 * What follows from pressure and temperature of dry air, standard or not, in SI doubles.
 *
 * @source ICAO Doc 7488/3, Manual of the ICAO Standard Atmosphere, section 2: perfect gas, speed of
 *     sound, Sutherland's viscosity, thermal conductivity
 */
public final class DryAir {
    private static final ModelRange TEMPERATURE =
            new ModelRange(
                    "static air temperature",
                    100.0,
                    400.0,
                    "K",
                    "no air of the atmosphere is outside, and the formulas are not meant for it");

    private static final ModelRange PRESSURE =
            new ModelRange(
                    "static pressure", 0.1, 1e6, "Pa", "no air of the atmosphere is outside");

    /** Sutherland's coefficient [kg/(m·s·K^½)]. */
    private static final double VISCOSITY_COEFFICIENT = 1.458e-6;

    /** Sutherland's temperature [K]; the table of NASA-TM-X-74335 prints 110, its errata 110.4. */
    private static final double SUTHERLAND_TEMPERATURE_K = 110.4;

    /** Coefficient of thermal conductivity [W/(m·K^(3/2))]; the US standard has 2.64638e-3. */
    private static final double CONDUCTIVITY_COEFFICIENT = 2.648151e-3;

    private DryAir() {}

    /**
     * Tells whether the functions here take a temperature.
     *
     * @param temperatureK static air temperature [K]
     * @return true from 100 to 400 K
     */
    public static boolean coversTemperature(double temperatureK) {
        return TEMPERATURE.covers(temperatureK);
    }

    /**
     * Tells whether the functions here take a pressure.
     *
     * @param pressurePa static pressure [Pa]
     * @return true from 0.1 to 1e6 Pa
     */
    public static boolean coversPressure(double pressurePa) {
        return PRESSURE.covers(pressurePa);
    }

    /**
     * Returns the density of dry air: {@code rho = p / (R T)}.
     *
     * @param pressurePa static pressure [Pa], 0.1 to 1e6
     * @param temperatureK static air temperature [K], 100 to 400; the virtual one for moist air
     * @return density [kg/m³]
     * @throws org.climbwright.quantity.OutsideModelException if a value is out of range
     * @accuracy 2 ulp
     * @source see the class comment
     */
    public static double density(double pressurePa, double temperatureK) {
        return DryAirKernel.density(PRESSURE.check(pressurePa), TEMPERATURE.check(temperatureK));
    }

    /**
     * Returns the speed of sound in dry air: {@code a = sqrt(gamma R T)}.
     *
     * @param temperatureK static air temperature [K], 100 to 400
     * @return speed of sound [m/s]
     * @throws org.climbwright.quantity.OutsideModelException if the temperature is out of range
     * @accuracy 2 ulp; humidity would add up to 0.5 % in tropical air, which air data leaves out
     * @source see the class comment
     */
    public static double speedOfSound(double temperatureK) {
        return DryAirKernel.speedOfSound(TEMPERATURE.check(temperatureK));
    }

    /**
     * Returns the dynamic viscosity of air: {@code mu = 1.458e-6 T^(3/2) / (T + 110.4)}.
     *
     * @param temperatureK static air temperature [K], 100 to 400
     * @return dynamic viscosity [Pa·s]
     * @throws org.climbwright.quantity.OutsideModelException if the temperature is out of range
     * @accuracy 4 ulp
     * @source see the class comment
     */
    public static double dynamicViscosity(double temperatureK) {
        double t = TEMPERATURE.check(temperatureK);
        return VISCOSITY_COEFFICIENT * (t * Math.sqrt(t)) / (t + SUTHERLAND_TEMPERATURE_K);
    }

    /**
     * Returns the kinematic viscosity of air: dynamic viscosity over density.
     *
     * @param pressurePa static pressure [Pa], 0.1 to 1e6
     * @param temperatureK static air temperature [K], 100 to 400
     * @return kinematic viscosity [m²/s]
     * @throws org.climbwright.quantity.OutsideModelException if a value is out of range
     * @accuracy 5 ulp
     * @source see the class comment
     */
    public static double kinematicViscosity(double pressurePa, double temperatureK) {
        return dynamicViscosity(temperatureK) / density(pressurePa, temperatureK);
    }

    /**
     * Returns the thermal conductivity of air: {@code 2.648151e-3 T^(3/2) / (T + 245.4 · 10^(-12 /
     * T))}.
     *
     * @param temperatureK static air temperature [K], 100 to 400
     * @return thermal conductivity [W/(m·K)]
     * @throws org.climbwright.quantity.OutsideModelException if the temperature is out of range
     * @accuracy 1e-15 relative
     * @source see the class comment; the coefficient from memory
     */
    public static double thermalConductivity(double temperatureK) {
        double t = TEMPERATURE.check(temperatureK);
        return CONDUCTIVITY_COEFFICIENT
                * (t * Math.sqrt(t))
                / (t + 245.4 * StrictMath.pow(10.0, -12.0 / t));
    }
}
