package org.climbwright.performance;

/**
 * The thrust of an aeroplane at a rating: a plug.
 *
 * <p>An implementation is immutable, and smooth in its arguments but where {@link #bend} says.
 */
@FunctionalInterface
public interface ThrustLaw {
    /**
     * Returns the thrust along the path of all engines that run.
     *
     * @param mach Mach number, above 0
     * @param pressurePa static pressure [Pa]
     * @param temperatureK static air temperature [K]
     * @param use how the engines are used
     * @return net thrust [N], 0 or more
     */
    double thrust(double mach, double pressurePa, double temperatureK, EngineUse use);

    /**
     * Tells on which side of a bend of this law a point lies: where the engine passes from one
     * limit to another, as where flat rating ends.
     *
     * <p>Whoever integrates a climb places the bend exactly, where this changes its sign.
     *
     * @param mach Mach number, above 0
     * @param pressurePa static pressure [Pa]
     * @param temperatureK static air temperature [K]
     * @return continuous, negative on one side and positive on the other; always 1 for a law
     *     without a bend
     */
    default double bend(double mach, double pressurePa, double temperatureK) {
        return 1.0;
    }
}
