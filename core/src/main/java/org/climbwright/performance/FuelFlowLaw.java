package org.climbwright.performance;

/**
 * The fuel flow of an aeroplane: a plug.
 *
 * <p>An implementation is immutable, and smooth in its arguments.
 */
@FunctionalInterface
public interface FuelFlowLaw {
    /**
     * Returns the fuel flow of all engines that run.
     *
     * @param thrustN thrust of all of them [N], from none to that of the rating
     * @param mach Mach number, above 0
     * @param pressurePa static pressure [Pa]
     * @param temperatureK static air temperature [K]
     * @param use how the engines are used
     * @return mass of fuel per time [kg/s], 0 or more
     */
    double fuelFlow(
            double thrustN, double mach, double pressurePa, double temperatureK, EngineUse use);
}
