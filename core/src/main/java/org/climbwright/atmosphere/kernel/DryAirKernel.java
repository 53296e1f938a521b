package org.climbwright.atmosphere.kernel;

import static org.climbwright.atmosphere.IcaoConstants.GAS_CONSTANT_J_PER_KG_K;
import static org.climbwright.atmosphere.IcaoConstants.HEAT_CAPACITY_RATIO;

/**
 * Density and speed of sound of {@link org.climbwright.atmosphere.DryAir}, without its checks.
 *
 * @source see there
 */
public final class DryAirKernel {
    private DryAirKernel() {}

    /**
     * Returns the density of dry air.
     *
     * @param pressurePa static pressure [Pa]
     * @param temperatureK static air temperature [K]
     * @return density [kg/m³]
     * @accuracy 2 ulp
     * @source see the class comment
     */
    public static double density(double pressurePa, double temperatureK) {
        return pressurePa / (GAS_CONSTANT_J_PER_KG_K * temperatureK);
    }

    /**
     * Returns the speed of sound in dry air.
     *
     * @param temperatureK static air temperature [K]
     * @return speed of sound [m/s]
     * @accuracy 2 ulp
     * @source see the class comment
     */
    public static double speedOfSound(double temperatureK) {
        return Math.sqrt(HEAT_CAPACITY_RATIO * GAS_CONSTANT_J_PER_KG_K * temperatureK);
    }
}
