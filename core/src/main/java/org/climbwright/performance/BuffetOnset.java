package org.climbwright.performance;

/**
 * The lift coefficient at which buffet begins, by Mach number: a plug.
 *
 * <p>An implementation is immutable and continuous.
 */
@FunctionalInterface
public interface BuffetOnset {
    /**
     * Returns the lift coefficient at which buffet begins.
     *
     * @param mach Mach number, above 0
     * @return lift coefficient, above 0; NaN when not known
     */
    double liftCoefficient(double mach);
}
