package org.climbwright.performance;

/**
 * An aeroplane as far as a climb knows it: drag, thrust, fuel flow and limits. A plug: figures of a
 * type are the user's, none are here.
 *
 * <p>An aeroplane of your own is three functions:
 *
 * <pre>{@code
 * Aeroplane mine = Aeroplane.of(
 *         2,
 *         (liftN, mach, q, use) -> 120.0 * 0.02 * q + 0.045 * liftN * liftN / (120.0 * q),
 *         (mach, pressurePa, temperatureK, use) -> use.operating() * 1.1 * pressurePa,
 *         (thrustN, mach, pressurePa, temperatureK, use) -> 1.6e-5 * thrustN);
 * mine.drag(6e5, 0.7, 1.2e4, EngineUse.climb(2))      // 40050.0, N
 * }</pre>
 *
 * <p>All methods speak SI doubles, since an integration asks them hundreds of times. An
 * implementation is immutable.
 *
 * <p>Limits of use: a model is as good as its figures; the flight manual decides what an aeroplane
 * can do and may do.
 */
public interface Aeroplane extends DragLaw, ThrustLaw, FuelFlowLaw {
    /**
     * Returns how many engines it has.
     *
     * @return the number, 1 or more
     */
    int engines();

    /**
     * Returns what limits it.
     *
     * @return the limits, as many as are known
     */
    AeroplaneLimits limits();

    /**
     * Returns an aeroplane made of its laws, without known limits.
     *
     * @param engines how many engines it has, 1 or more
     * @param drag its drag
     * @param thrust its thrust
     * @param fuelFlow its fuel flow
     * @return the aeroplane
     * @throws IllegalArgumentException if it has no engine
     */
    static Aeroplane of(int engines, DragLaw drag, ThrustLaw thrust, FuelFlowLaw fuelFlow) {
        return new AeroplaneOfLaws(engines, drag, thrust, fuelFlow, AeroplaneLimits.none());
    }

    /**
     * Returns this aeroplane with limits.
     *
     * @param limits what limits it
     * @return an aeroplane that differs in them
     */
    default Aeroplane withLimits(AeroplaneLimits limits) {
        return new AeroplaneOfLaws(engines(), this, this, this, limits);
    }
}
