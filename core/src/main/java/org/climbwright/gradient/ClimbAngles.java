package org.climbwright.gradient;

import org.climbwright.numeric.Trigonometry;
import org.climbwright.quantity.ModelRange;
import org.climbwright.quantity.path.AirGradient;
import org.climbwright.quantity.path.ClimbAngle;
import org.climbwright.quantity.path.GroundDistance;
import org.climbwright.quantity.path.GroundGradient;
import org.climbwright.quantity.path.Slope;

/**
 * Between a gradient, which is the tangent of the angle of the path, the angle itself and its sine,
 * which is height over the way along the path.
 *
 * <p>Procedures are published with tangents; excess thrust over weight is a sine. At 2.5 degrees
 * the two are 0.1 % apart, at 10 degrees 1.5 %.
 *
 * <pre>{@code
 * ClimbAngles.angle(GroundGradient.ofPercent(5)).inDegrees()                      // 2.862…
 * ClimbAngles.airGradient(ClimbAngle.ofDegrees(3)).inFeetPerNauticalMile()        // 318.43…
 * }</pre>
 *
 * <p>Limits of use: for study and simulation; an angle that is spoken of is often a rounded one.
 *
 * @source trigonometry of the right triangle of distance, height and path
 */
public final class ClimbAngles {
    private static final ModelRange GRADIENT =
            new ModelRange("gradient", -10.0, 10.0, "m/m", "no aeroplane flies steeper");

    private static final ModelRange ANGLE =
            new ModelRange(
                    "climb angle",
                    -StrictMath.atan(10.0),
                    StrictMath.atan(10.0),
                    "rad",
                    "no aeroplane flies steeper");

    private static final ModelRange SINE =
            new ModelRange(
                    "sine of the climb angle",
                    -Trigonometry.sin(StrictMath.atan(10.0)),
                    Trigonometry.sin(StrictMath.atan(10.0)),
                    "",
                    "no aeroplane flies steeper");

    private static final ModelRange DISTANCE =
            new ModelRange("distance", 0.0, 2e7, "m", "the earth is no longer");

    private static final ModelRange SPEED =
            new ModelRange("speed along the path", 0.0, 2000.0, "m/s", "no aeroplane is faster");

    private ClimbAngles() {}

    /**
     * Tells whether a gradient is in range.
     *
     * @param gradient gradient [m/m]
     * @return true from -10 to 10
     */
    public static boolean coversGradient(double gradient) {
        return GRADIENT.covers(gradient);
    }

    /**
     * Tells whether an angle is in range.
     *
     * @param angleRad angle of the path above the horizontal [rad]
     * @return true between the angles of gradients of -10 and 10, which are 84.3 degrees
     */
    public static boolean coversAngle(double angleRad) {
        return ANGLE.covers(angleRad);
    }

    /**
     * Tells whether a sine is in range.
     *
     * @param sine height over the way along the path
     * @return true between the sines of gradients of -10 and 10, which are 0.995
     */
    public static boolean coversSine(double sine) {
        return SINE.covers(sine);
    }

    /**
     * Tells whether a distance and a gradient are in range.
     *
     * @param distanceM horizontal distance [m]
     * @param gradient gradient [m/m]
     * @return true if {@link #alongPath(double, double)} answers
     */
    public static boolean coversAlongPath(double distanceM, double gradient) {
        return DISTANCE.covers(distanceM) && GRADIENT.covers(gradient);
    }

    /**
     * Tells whether a speed and an angle are in range.
     *
     * @param speedMps speed along the path [m/s]
     * @param angleRad angle of the path above the horizontal [rad]
     * @return true if {@link #rateAlongPath(double, double)} answers
     */
    public static boolean coversRateAlongPath(double speedMps, double angleRad) {
        return SPEED.covers(speedMps) && ANGLE.covers(angleRad);
    }

    /**
     * Returns the angle of a gradient: {@code atan(G)}.
     *
     * @param gradient gradient [m/m], -10 to 10
     * @return angle above the horizontal [rad]
     * @throws org.climbwright.quantity.OutsideModelException if the gradient is out of range
     * @accuracy 1 ulp
     * @source see the class comment
     */
    public static double angle(double gradient) {
        return StrictMath.atan(GRADIENT.check(gradient));
    }

    /**
     * Returns the gradient of an angle: {@code tan(angle)}.
     *
     * @param angleRad angle above the horizontal [rad], up to 84.3 degrees either way
     * @return gradient [m/m]
     * @throws org.climbwright.quantity.OutsideModelException if the angle is out of range
     * @accuracy 1 ulp
     * @source see the class comment
     */
    public static double gradient(double angleRad) {
        return Trigonometry.tan(ANGLE.check(angleRad));
    }

    /**
     * Returns the gradient of a sine, such as of excess thrust over weight: {@code s / sqrt(1 -
     * s²)}.
     *
     * @param sine height over the way along the path, up to 0.995 either way
     * @return gradient [m/m], steeper than the sine
     * @throws org.climbwright.quantity.OutsideModelException if the sine is out of range
     * @accuracy 3 ulp where the sine is below 0.5
     * @source see the class comment
     */
    public static double gradientFromSine(double sine) {
        SINE.check(sine);
        return sine / Math.sqrt((1.0 - sine) * (1.0 + sine));
    }

    /**
     * Returns the sine of a gradient, height over the way along the path: {@code G / sqrt(1 + G²)}.
     *
     * @param gradient gradient [m/m], -10 to 10
     * @return sine of the angle, less than the gradient
     * @throws org.climbwright.quantity.OutsideModelException if the gradient is out of range
     * @accuracy 3 ulp
     * @source see the class comment
     */
    public static double sine(double gradient) {
        return GRADIENT.check(gradient) / perHorizontal(gradient);
    }

    /**
     * Returns the way along a straight path above a horizontal distance.
     *
     * @param distanceM horizontal distance [m], 0 to 2e7
     * @param gradient gradient [m/m], -10 to 10
     * @return way along the path [m], no less than the distance
     * @throws org.climbwright.quantity.OutsideModelException if a value is out of range
     * @accuracy 3 ulp; on a flat earth, see {@link EarthCurvature}
     * @source see the class comment
     */
    public static double alongPath(double distanceM, double gradient) {
        return DISTANCE.check(distanceM) * perHorizontal(GRADIENT.check(gradient));
    }

    /**
     * Returns the vertical part of a speed along the path: {@code V sin(angle)}.
     *
     * <p>Not the rate of a ground speed, which is that speed times the tangent. A table that gives
     * the sine for ground speeds is up to 2.5 % low at 12 degrees, on the unsafe side in a climb.
     *
     * @param speedMps speed along the path, such as true airspeed in still air [m/s], 0 to 2000
     * @param angleRad angle above the horizontal [rad], up to 84.3 degrees either way
     * @return geometric rate [m/s]
     * @throws org.climbwright.quantity.OutsideModelException if a value is out of range
     * @accuracy 2 ulp
     * @source see the class comment
     */
    public static double rateAlongPath(double speedMps, double angleRad) {
        return SPEED.check(speedMps) * Trigonometry.sin(ANGLE.check(angleRad));
    }

    private static double perHorizontal(double gradient) {
        return Math.sqrt(1.0 + gradient * gradient);
    }

    /**
     * Returns the angle of a gradient.
     *
     * @param gradient gradient through the air or over the ground
     * @return angle of the path in the same frame
     * @throws org.climbwright.quantity.OutsideModelException if the gradient is out of range
     * @accuracy 1 ulp
     */
    public static ClimbAngle angle(Slope<?> gradient) {
        return ClimbAngle.ofRadians(angle(gradient.inMetresPerMetre()));
    }

    /**
     * Returns the gradient over the ground of an angle over the ground.
     *
     * @param angle angle of the path as seen from the ground
     * @return gradient over the ground
     * @throws org.climbwright.quantity.OutsideModelException if the angle is out of range
     * @accuracy 1 ulp
     */
    public static GroundGradient groundGradient(ClimbAngle angle) {
        return GroundGradient.ofMetresPerMetre(gradient(angle.inRadians()));
    }

    /**
     * Returns the gradient through the air of an angle through the air.
     *
     * @param angle angle of the path as seen from the air
     * @return gradient through the air
     * @throws org.climbwright.quantity.OutsideModelException if the angle is out of range
     * @accuracy 1 ulp
     */
    public static AirGradient airGradient(ClimbAngle angle) {
        return AirGradient.ofMetresPerMetre(gradient(angle.inRadians()));
    }

    /**
     * Returns the way along a straight path above a distance on the ground, in metres.
     *
     * @param distance horizontal distance
     * @param gradient gradient over the ground
     * @return way along the path [m]
     * @throws org.climbwright.quantity.OutsideModelException if a value is out of range
     * @accuracy 3 ulp; on a flat earth
     */
    public static double metresAlongPath(GroundDistance distance, GroundGradient gradient) {
        return alongPath(distance.inMetres(), gradient.inMetresPerMetre());
    }
}
