package org.climbwright.performance;

/**
 * The drag of an aeroplane: a plug.
 *
 * <p>An implementation is immutable, and smooth in its arguments.
 */
@FunctionalInterface
public interface DragLaw {
    /**
     * Returns the drag.
     *
     * @param liftN lift [N], 0 or more
     * @param mach Mach number, above 0
     * @param dynamicPressurePa dynamic pressure, half the density times true airspeed squared [Pa]
     * @param use how the engines are used: one that stands still has drag
     * @return drag [N], above 0
     */
    double drag(double liftN, double mach, double dynamicPressurePa, EngineUse use);
}
