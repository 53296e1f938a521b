package org.climbwright.gradient;

import org.climbwright.quantity.ModelRange;
import org.climbwright.quantity.path.GroundGradient;
import org.climbwright.quantity.speed.GeometricRate;
import org.climbwright.quantity.speed.PressureAltitudeRate;

/**
 * What a climb must do at least, rounded to whole steps on the safe side: never to less.
 *
 * <pre>{@code
 * GeometricRate exact = GeometricRate.ofFeetPerMinute(465);
 * RoundedUp.of(exact, GeometricRate.ofFeetPerMinute(10)).inFeetPerMinute()        // 470.0
 * }</pre>
 *
 * <p>A whole number of steps stays as it is, even where the arithmetic that led to it has left
 * 500.00000000000006 of 500: what exceeds a step by less than 1e-14 of the value is the noise of
 * doubles and not a demand, far below any input.
 *
 * <p>Limits of use: for what is required. What an aeroplane can do is rounded the other way.
 *
 * @source that published tables of required rates are rounded up: 465 ft/min stands there as 470
 */
public final class RoundedUp {
    /** Some 45 ulp, more than the formulas of a rate lose together. */
    private static final double NOISE = 1e-14;

    private static final ModelRange VALUE =
            new ModelRange("value to round up", -1e6, 1e6, "", "no gradient or rate is more");

    private static final ModelRange STEP =
            new ModelRange("step to round up to", 1e-6, 1e6, "", "a step must lead somewhere");

    private RoundedUp() {}

    /**
     * Tells whether a value and a step are in range.
     *
     * @param value a value in SI
     * @param step a step in the same unit
     * @return true if {@link #steps} answers
     */
    public static boolean covers(double value, double step) {
        return VALUE.covers(value) && STEP.covers(step);
    }

    /**
     * Returns the least whole number of steps that is not less than a value.
     *
     * @param value a value in SI, -1e6 to 1e6
     * @param step a step in the same unit, 1e-6 to 1e6
     * @return number of steps, whole
     * @throws org.climbwright.quantity.OutsideModelException if a value is out of range
     * @accuracy exact but for a value that exceeds whole steps by less than 1e-14 of itself
     */
    public static double steps(double value, double step) {
        double exact = VALUE.check(value) / STEP.check(step);
        return Math.ceil(exact - NOISE * Math.abs(exact)) + 0.0; // + 0.0 makes -0.0 into 0.0
    }

    /**
     * Returns the least whole multiple of a step that is not less than a value.
     *
     * @param value a value in SI, -1e6 to 1e6
     * @param step a step in the same unit, 1e-6 to 1e6
     * @return the multiple, in that unit
     * @throws org.climbwright.quantity.OutsideModelException if a value is out of range
     * @accuracy see {@link #steps}
     */
    public static double of(double value, double step) {
        return steps(value, step) * step;
    }

    /**
     * Returns a required rate in true height in whole steps.
     *
     * @param rate the rate required
     * @param step the step, such as 10 ft/min
     * @return a rate that is not less, whole in the feet per minute of the step
     * @throws org.climbwright.quantity.OutsideModelException if the step is not above 0
     * @accuracy see {@link #steps}
     */
    public static GeometricRate of(GeometricRate rate, GeometricRate step) {
        return GeometricRate.ofFeetPerMinute(
                steps(rate.inMetresPerSecond(), step.inMetresPerSecond()) * step.inFeetPerMinute());
    }

    /**
     * Returns a rate required on the instrument in whole steps.
     *
     * @param rate the rate required
     * @param step the step, such as 10 ft/min
     * @return a rate that is not less, whole in the feet per minute of the step
     * @throws org.climbwright.quantity.OutsideModelException if the step is not above 0
     * @accuracy see {@link #steps}
     */
    public static PressureAltitudeRate of(PressureAltitudeRate rate, PressureAltitudeRate step) {
        return PressureAltitudeRate.ofFeetPerMinute(
                steps(rate.inMetresPerSecond(), step.inMetresPerSecond()) * step.inFeetPerMinute());
    }

    /**
     * Returns a required gradient in whole steps.
     *
     * @param gradient the gradient required
     * @param step the step, such as 20 ft/NM
     * @return a gradient that is not less, whole in the feet per nautical mile of the step
     * @throws org.climbwright.quantity.OutsideModelException if the step is not above 0
     * @accuracy see {@link #steps}
     */
    public static GroundGradient of(GroundGradient gradient, GroundGradient step) {
        return GroundGradient.ofFeetPerNauticalMile(
                steps(gradient.inMetresPerMetre(), step.inMetresPerMetre())
                        * step.inFeetPerNauticalMile());
    }
}
