package org.climbwright.gradient;

import org.climbwright.atmosphere.AirState;
import org.climbwright.atmosphere.altimetry.VerticalRates;
import org.climbwright.quantity.ModelRange;
import org.climbwright.quantity.altitude.AltitudeChange;
import org.climbwright.quantity.path.GroundDistance;
import org.climbwright.quantity.path.GroundGradient;
import org.climbwright.quantity.speed.GeometricRate;
import org.climbwright.quantity.speed.GroundSpeed;
import org.climbwright.quantity.speed.PressureAltitudeRate;

/**
 * The gradient over the ground that a height at a distance takes, and the rate of climb that a
 * gradient takes at a ground speed.
 *
 * <pre>{@code
 * GroundGradient gradient = GroundGradient.ofPercent(3.3);
 * ClimbGradient.rate(gradient, GroundSpeed.ofKnots(150)).inFeetPerMinute()       // 501.279…
 * gradient.inFeetPerNauticalMile()                                           // 200.511…
 * }</pre>
 *
 * <p>The speed is the one over the ground, not the airspeed. Percent times knots is 1.25 % too
 * little for feet per minute, on the unsafe side.
 *
 * <p>Limits of use: for study and simulation; the published procedure says for which speed, air and
 * place its gradient holds.
 *
 * @source height over horizontal distance, and both per time; exact with the units as defined
 */
public final class ClimbGradient {
    private static final ModelRange DISTANCE =
            new ModelRange("distance", 1e-3, 2e7, "m", "a gradient needs a way");

    private static final ModelRange HEIGHT =
            new ModelRange("height to gain", -1e5, 1e5, "m", "no climb has more");

    private static final ModelRange GRADIENT =
            new ModelRange("gradient", -10.0, 10.0, "m/m", "no aeroplane flies steeper");

    private static final ModelRange SPEED =
            new ModelRange("ground speed", 1e-3, 2000.0, "m/s", "a gradient needs a way");

    private ClimbGradient() {}

    /**
     * Returns the gradient that gains a height in a distance.
     *
     * @param heightM true height to gain [m], -1e5 to 1e5
     * @param distanceM distance over the ground [m], 0.001 to 2e7
     * @return gradient [m/m]
     * @throws org.climbwright.quantity.OutsideModelException if a value is out of range
     * @accuracy half an ulp
     * @source see the class comment
     */
    public static double required(double heightM, double distanceM) {
        return HEIGHT.check(heightM) / DISTANCE.check(distanceM);
    }

    /**
     * Returns the rate in true height that a gradient takes.
     *
     * @param gradient gradient over the ground [m/m], -10 to 10
     * @param groundSpeedMps ground speed [m/s], 0.001 to 2000
     * @return geometric rate [m/s]
     * @throws org.climbwright.quantity.OutsideModelException if a value is out of range
     * @accuracy half an ulp
     * @source see the class comment
     */
    public static double rate(double gradient, double groundSpeedMps) {
        return GRADIENT.check(gradient) * SPEED.check(groundSpeedMps);
    }

    /**
     * Returns the gradient that gains a height in a distance.
     *
     * @param height true height to gain
     * @param distance distance over the ground, above 0
     * @return gradient over the ground
     * @throws org.climbwright.quantity.OutsideModelException if a value is out of range
     * @accuracy half an ulp
     */
    public static GroundGradient required(AltitudeChange height, GroundDistance distance) {
        return GroundGradient.ofMetresPerMetre(required(height.inMetres(), distance.inMetres()));
    }

    /**
     * Returns the rate in true height that a gradient takes.
     *
     * @param gradient gradient over the ground
     * @param groundSpeed ground speed, not airspeed
     * @return geometric rate; {@link #instrumentRate} is what the instrument must show
     * @throws org.climbwright.quantity.OutsideModelException if a value is out of range
     * @accuracy half an ulp
     */
    public static GeometricRate rate(GroundGradient gradient, GroundSpeed groundSpeed) {
        return GeometricRate.ofMetresPerSecond(
                rate(gradient.inMetresPerMetre(), groundSpeed.inMetresPerSecond()));
    }

    /**
     * Returns the rate that the instrument must show for a gradient: more than the true rate where
     * the air is colder than standard.
     *
     * @param gradient gradient over the ground
     * @param groundSpeed ground speed, not airspeed
     * @param air the air there
     * @return rate of pressure altitude
     * @throws org.climbwright.quantity.OutsideModelException if a value is out of range
     * @accuracy see {@link VerticalRates#geometricPerPressureAltitude(AirState)}
     * @source {@link VerticalRates}
     */
    public static PressureAltitudeRate instrumentRate(
            GroundGradient gradient, GroundSpeed groundSpeed, AirState air) {
        return VerticalRates.pressureAltitudeRate(rate(gradient, groundSpeed), air);
    }
}
