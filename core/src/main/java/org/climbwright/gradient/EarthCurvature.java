package org.climbwright.gradient;

import org.climbwright.numeric.Trigonometry;
import org.climbwright.quantity.ModelRange;
import org.climbwright.quantity.altitude.AltitudeChange;
import org.climbwright.quantity.path.GroundDistance;
import org.climbwright.quantity.path.GroundGradient;

/**
 * How far a straight line rises above the curved earth: for lines of sight, not for procedures.
 *
 * <p>Gradients of procedures follow the curved surface: nothing is added to them. A line that
 * leaves the ground level is 0.9 ft above it after 1 NM, 88 ft after 10 NM and 2208 ft after 50 NM.
 *
 * <pre>{@code
 * EarthCurvature.tangentHeight(GroundDistance.ofNauticalMiles(10)).inFeet()       // 88.3141…
 * EarthCurvature.straightLineHeight(
 *         GroundGradient.ofPercent(2.5), GroundDistance.ofNauticalMiles(10)).inFeet()  // 1607.…
 * }</pre>
 *
 * <p>The radius is a parameter. Without one it is {@link #MEAN_RADIUS_M}, that of the earth as it
 * is on average, and not the nominal radius of 6,356,766 m that the standard atmosphere uses for
 * its gravity at 45 degrees of latitude: with that one the heights are 0.22 % more.
 *
 * <p>Limits of use: geometry alone; light is bent by the air, and sees farther than straight lines.
 *
 * @source circle and straight line: {@code h = R (1 / (cos a - G sin a) - 1)} where {@code a} is
 *     distance over radius and {@code G} the gradient at the start
 */
public final class EarthCurvature {
    /**
     * Mean radius of the earth [m]: {@code (2 a + b) / 3} of the semi-axes 6,378,137 m and
     * 6,356,752.3 m of WGS 84, to a decimetre.
     */
    public static final double MEAN_RADIUS_M = 6371008.8;

    private static final ModelRange DISTANCE =
            new ModelRange("distance", 0.0, 2e6, "m", "no one sees farther");

    private static final ModelRange GRADIENT =
            new ModelRange("gradient", -1.0, 1.0, "m/m", "a steeper line needs no such correction");

    private static final ModelRange RADIUS =
            new ModelRange("radius of the earth", 6.3e6, 6.5e6, "m", "the earth has no other");

    private EarthCurvature() {}

    /**
     * Tells whether a straight line is in range.
     *
     * @param gradient gradient of the line at its start [m/m]
     * @param distanceM distance over the ground [m]
     * @param radiusM radius of the earth [m]
     * @return true if {@link #straightLineHeight(double, double, double)} answers
     */
    public static boolean covers(double gradient, double distanceM, double radiusM) {
        return GRADIENT.covers(gradient) && DISTANCE.covers(distanceM) && RADIUS.covers(radiusM);
    }

    /**
     * Returns how high a straight line is above the earth's surface.
     *
     * @param gradient gradient of the line at its start [m/m], -1 to 1
     * @param distanceM distance over the ground, along the surface [m], 0 to 2e6
     * @param radiusM radius of the earth [m], 6.3e6 to 6.5e6
     * @return height above the surface [m]; negative where the line is below it
     * @throws org.climbwright.quantity.OutsideModelException if a value is out of range
     * @accuracy 6 ulp where the gradient is 0 or more; on a sphere
     * @source see the class comment
     */
    public static double straightLineHeight(double gradient, double distanceM, double radiusM) {
        GRADIENT.check(gradient);
        double angle = DISTANCE.check(distanceM) / RADIUS.check(radiusM);
        double sinHalf = Trigonometry.sin(0.5 * angle);
        double cosHalf = Trigonometry.cos(0.5 * angle);
        double slant = Trigonometry.cos(angle) - gradient * Trigonometry.sin(angle);
        // 1 - cos a and sin a by the half angle: nothing is lost where the distance is short
        return 2.0 * radiusM * sinHalf * (sinHalf + gradient * cosHalf) / slant;
    }

    /**
     * Returns how high a line that leaves the surface level is above it: {@code R (1 / cos(d / R) -
     * 1)}.
     *
     * @param distanceM distance over the ground, along the surface [m], 0 to 2e6
     * @param radiusM radius of the earth [m], 6.3e6 to 6.5e6
     * @return height above the surface [m]
     * @throws org.climbwright.quantity.OutsideModelException if a value is out of range
     * @accuracy 6 ulp; on a sphere
     * @source see the class comment
     */
    public static double tangentHeight(double distanceM, double radiusM) {
        return straightLineHeight(0.0, distanceM, radiusM);
    }

    /**
     * Returns an approximation to {@link #tangentHeight(double, double)}: {@code d² / (2 R)}.
     *
     * @param distanceM distance over the ground, along the surface [m], 0 to 2e6
     * @param radiusM radius of the earth [m], 6.3e6 to 6.5e6
     * @return height above the surface [m], less than the exact one
     * @throws org.climbwright.quantity.OutsideModelException if a value is out of range
     * @accuracy too little by {@code 5/12 (d / R)²}, relative: 4e-6 at 10 NM, 9e-5 at 50 NM, 4.2 %
     *     at 2e6 m
     * @source first term of the series of the exact one
     */
    public static double approximateTangentHeight(double distanceM, double radiusM) {
        return DISTANCE.check(distanceM) * distanceM / (2.0 * RADIUS.check(radiusM));
    }

    /**
     * Returns how high a line that leaves the surface level is above it, on the mean radius.
     *
     * @param distance distance over the ground
     * @return height above the surface
     * @throws org.climbwright.quantity.OutsideModelException if the distance is more than 2e6 m
     * @accuracy see {@link #tangentHeight(double, double)}
     */
    public static AltitudeChange tangentHeight(GroundDistance distance) {
        return AltitudeChange.ofMetres(tangentHeight(distance.inMetres(), MEAN_RADIUS_M));
    }

    /**
     * Returns how high a straight line is above the earth's surface, on the mean radius.
     *
     * @param gradient gradient of the line at its start
     * @param distance distance over the ground
     * @return height above the surface; negative where the line is below it
     * @throws org.climbwright.quantity.OutsideModelException if a value is out of range
     * @accuracy see {@link #straightLineHeight(double, double, double)}
     */
    public static AltitudeChange straightLineHeight(
            GroundGradient gradient, GroundDistance distance) {
        return AltitudeChange.ofMetres(
                straightLineHeight(
                        gradient.inMetresPerMetre(), distance.inMetres(), MEAN_RADIUS_M));
    }
}
