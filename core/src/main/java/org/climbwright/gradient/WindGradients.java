package org.climbwright.gradient;

import org.climbwright.path.GroundTrack;
import org.climbwright.quantity.ModelRange;
import org.climbwright.quantity.path.AirGradient;
import org.climbwright.quantity.path.GroundGradient;
import org.climbwright.quantity.speed.AlongTrackWind;
import org.climbwright.quantity.speed.GroundSpeed;
import org.climbwright.quantity.speed.TrueAirspeed;

/**
 * Between the gradient through the air, which thrust and drag fix, and the one over the ground,
 * which obstacles and restrictions need.
 *
 * <p>A headwind makes the second steeper and leaves the first; a tailwind makes it flatter. The
 * horizontal part of the airspeed is {@code sqrt(TAS² - VS²)}, not the airspeed.
 *
 * <pre>{@code
 * TrueAirspeed tas = TrueAirspeed.ofKnots(140);
 * AlongTrackWind headwind = AlongTrackWind.ofKnots(-10);
 * AirGradient air = AirGradient.ofPercent(10.6397852);
 * WindGradients.overGround(air, tas, headwind).inPercent()                        // 11.4632…
 * }</pre>
 *
 * <p>Limits of use: for study and simulation, in a steady wind that does not change with height; a
 * wind that does costs or gives rate besides. Performance for obstacles counts less than the
 * reported headwind and more than the reported tailwind, as the flight manual and the rules say.
 *
 * @source {@link GroundTrack}; for the ground speed on a gradient over the ground the same
 *     triangle, solved for that speed
 */
public final class WindGradients {
    private static final ModelRange GRADIENT =
            new ModelRange("gradient", -10.0, 10.0, "m/m", "no aeroplane flies steeper");

    private static final ModelRange TAS =
            new ModelRange("true airspeed", 1e-3, 2000.0, "m/s", "a gradient needs a way");

    private static final ModelRange WIND =
            new ModelRange("wind", -300.0, 300.0, "m/s", "no wind of the atmosphere is stronger");

    private static final ModelRange FOUND =
            new ModelRange(
                    "share of the airspeed that is left to keep track and gradient",
                    Double.MIN_VALUE,
                    Double.MAX_VALUE,
                    "m/s",
                    "the airspeed is too little for that gradient over the ground in that wind");

    private WindGradients() {}

    /**
     * Tells whether a gradient through the air has one over the ground in a wind.
     *
     * @param airGradient gradient through the air [m/m]
     * @param tasMps true airspeed [m/s]
     * @param alongTrackWindMps wind along the track [m/s], positive from behind
     * @param acrossTrackWindMps wind across the track [m/s]
     * @return true if {@link #overGround(double, double, double, double)} answers
     */
    public static boolean coversOverGround(
            double airGradient,
            double tasMps,
            double alongTrackWindMps,
            double acrossTrackWindMps) {
        if (!areInRange(airGradient, tasMps, alongTrackWindMps, acrossTrackWindMps)) {
            return false;
        }
        double horizontal = horizontal(airGradient, tasMps);
        double across = Math.abs(acrossTrackWindMps);
        return across <= horizontal
                && alongTrackWindMps + Math.sqrt((horizontal - across) * (horizontal + across))
                        > 0.0;
    }

    /**
     * Tells whether an aeroplane can keep a gradient over the ground in a wind.
     *
     * @param groundGradient gradient over the ground [m/m]
     * @param tasMps true airspeed [m/s]
     * @param alongTrackWindMps wind along the track [m/s], positive from behind
     * @param acrossTrackWindMps wind across the track [m/s]
     * @return true if {@link #groundSpeed(double, double, double, double)} answers
     */
    public static boolean coversGroundSpeed(
            double groundGradient,
            double tasMps,
            double alongTrackWindMps,
            double acrossTrackWindMps) {
        return areInRange(groundGradient, tasMps, alongTrackWindMps, acrossTrackWindMps)
                && FOUND.covers(
                        left(groundGradient, tasMps, alongTrackWindMps, acrossTrackWindMps));
    }

    private static boolean areInRange(
            double gradient, double tasMps, double alongTrackWindMps, double acrossTrackWindMps) {
        return GRADIENT.covers(gradient)
                && TAS.covers(tasMps)
                && WIND.covers(alongTrackWindMps)
                && WIND.covers(acrossTrackWindMps);
    }

    /**
     * Returns the gradient over the ground of one through the air.
     *
     * @param airGradient gradient through the air [m/m], -10 to 10
     * @param tasMps true airspeed [m/s], 0.001 to 2000
     * @param alongTrackWindMps wind along the track [m/s], positive from behind, -300 to 300
     * @param acrossTrackWindMps wind across the track [m/s], -300 to 300
     * @return gradient over the ground [m/m]
     * @throws IllegalArgumentException if a value is out of range, or the wind does not let the
     *     track be kept
     * @accuracy 1e-15 of the airspeed over the ground speed, relative
     * @source see the class comment
     */
    public static double overGround(
            double airGradient,
            double tasMps,
            double alongTrackWindMps,
            double acrossTrackWindMps) {
        check(airGradient, tasMps, alongTrackWindMps, acrossTrackWindMps);
        double horizontal = horizontal(airGradient, tasMps);
        return airGradient
                * (horizontal
                        / GroundTrack.groundSpeed(
                                horizontal, alongTrackWindMps, acrossTrackWindMps));
    }

    /**
     * Returns the ground speed at which an aeroplane keeps a gradient over the ground.
     *
     * <p>With {@code W} along and {@code X} across the track, {@code s = (W + sqrt((1 + G²) (TAS² -
     * X²) - G² W²)) / (1 + G²)}.
     *
     * @param groundGradient gradient over the ground [m/m], -10 to 10
     * @param tasMps true airspeed [m/s], 0.001 to 2000
     * @param alongTrackWindMps wind along the track [m/s], positive from behind, -300 to 300
     * @param acrossTrackWindMps wind across the track [m/s], -300 to 300
     * @return ground speed [m/s]
     * @throws org.climbwright.quantity.OutsideModelException if a value is out of range, or the
     *     airspeed is too little
     * @accuracy 1e-15 of the airspeed
     * @source see the class comment
     */
    public static double groundSpeed(
            double groundGradient,
            double tasMps,
            double alongTrackWindMps,
            double acrossTrackWindMps) {
        check(groundGradient, tasMps, alongTrackWindMps, acrossTrackWindMps);
        FOUND.check(left(groundGradient, tasMps, alongTrackWindMps, acrossTrackWindMps));
        double across = Math.abs(acrossTrackWindMps);
        double square = 1.0 + groundGradient * groundGradient;
        double upWind = groundGradient * alongTrackWindMps;
        double root = Math.sqrt(square * (tasMps - across) * (tasMps + across) - upWind * upWind);
        return (alongTrackWindMps + root) / square;
    }

    /**
     * Returns the gradient through the air that keeps one over the ground.
     *
     * @param groundGradient gradient over the ground [m/m], -10 to 10
     * @param tasMps true airspeed [m/s], 0.001 to 2000
     * @param alongTrackWindMps wind along the track [m/s], positive from behind, -300 to 300
     * @param acrossTrackWindMps wind across the track [m/s], -300 to 300
     * @return gradient through the air [m/m]
     * @throws IllegalArgumentException if a value is out of range, or the airspeed is too little
     * @accuracy 1e-14 relative where the wind is below half the airspeed and the gradient below 0.5
     * @source see the class comment
     */
    public static double throughAir(
            double groundGradient,
            double tasMps,
            double alongTrackWindMps,
            double acrossTrackWindMps) {
        double ground = groundSpeed(groundGradient, tasMps, alongTrackWindMps, acrossTrackWindMps);
        return GroundTrack.airGradient(tasMps, groundGradient * ground);
    }

    private static void check(
            double gradient, double tasMps, double alongTrackWindMps, double acrossTrackWindMps) {
        GRADIENT.check(gradient);
        TAS.check(tasMps);
        WIND.check(alongTrackWindMps);
        WIND.check(acrossTrackWindMps);
    }

    private static double horizontal(double airGradient, double tasMps) {
        return tasMps / Math.sqrt(1.0 + airGradient * airGradient);
    }

    /**
     * What is left of the airspeed: against a headwind it must beat the wind, and with a tailwind
     * climb as steeply as the wind alone would have it.
     */
    private static double left(
            double groundGradient,
            double tasMps,
            double alongTrackWindMps,
            double acrossTrackWindMps) {
        double across = Math.abs(acrossTrackWindMps);
        if (!(tasMps > across)) {
            return tasMps - across;
        }
        double taken =
                alongTrackWindMps < 0.0
                        ? -alongTrackWindMps
                        : Math.abs(groundGradient) * alongTrackWindMps;
        return Math.sqrt((tasMps - across) * (tasMps + across)) - taken;
    }

    /**
     * Returns the gradient over the ground of one through the air, on a track with no wind across.
     *
     * @param gradient gradient through the air
     * @param tas true airspeed
     * @param wind wind along the track, positive from behind
     * @return gradient over the ground
     * @throws IllegalArgumentException if a value is out of range, or the headwind is no less than
     *     the airspeed
     * @accuracy 1e-15 of the airspeed over the ground speed, relative
     */
    public static GroundGradient overGround(
            AirGradient gradient, TrueAirspeed tas, AlongTrackWind wind) {
        return GroundGradient.ofMetresPerMetre(
                overGround(
                        gradient.inMetresPerMetre(),
                        tas.inMetresPerSecond(),
                        wind.inMetresPerSecond(),
                        0.0));
    }

    /**
     * Returns the gradient through the air that keeps one over the ground, on a track with no wind
     * across.
     *
     * @param gradient gradient over the ground
     * @param tas true airspeed
     * @param wind wind along the track, positive from behind
     * @return gradient through the air
     * @throws IllegalArgumentException if a value is out of range, or the airspeed is too little
     * @accuracy 1e-14 relative where the wind is below half the airspeed and the gradient below 0.5
     */
    public static AirGradient throughAir(
            GroundGradient gradient, TrueAirspeed tas, AlongTrackWind wind) {
        return AirGradient.ofMetresPerMetre(
                throughAir(
                        gradient.inMetresPerMetre(),
                        tas.inMetresPerSecond(),
                        wind.inMetresPerSecond(),
                        0.0));
    }

    /**
     * Returns the ground speed at which an aeroplane keeps a gradient over the ground, on a track
     * with no wind across.
     *
     * @param gradient gradient over the ground
     * @param tas true airspeed
     * @param wind wind along the track, positive from behind
     * @return ground speed
     * @throws org.climbwright.quantity.OutsideModelException if a value is out of range, or the
     *     airspeed is too little
     * @accuracy 1e-15 of the airspeed
     */
    public static GroundSpeed groundSpeed(
            GroundGradient gradient, TrueAirspeed tas, AlongTrackWind wind) {
        return GroundSpeed.ofMetresPerSecond(
                groundSpeed(
                        gradient.inMetresPerMetre(),
                        tas.inMetresPerSecond(),
                        wind.inMetresPerSecond(),
                        0.0));
    }
}
