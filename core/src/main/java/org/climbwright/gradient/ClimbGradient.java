package org.climbwright.gradient;

import org.climbwright.atmosphere.AirState;
import org.climbwright.atmosphere.StandardAir;
import org.climbwright.atmosphere.altimetry.VerticalRates;
import org.climbwright.quantity.ModelRange;
import org.climbwright.quantity.altitude.AltitudeChange;
import org.climbwright.quantity.altitude.PressureAltitude;
import org.climbwright.quantity.path.GroundDistance;
import org.climbwright.quantity.path.GroundGradient;
import org.climbwright.quantity.speed.GeometricRate;
import org.climbwright.quantity.speed.GroundSpeed;
import org.climbwright.quantity.speed.PressureAltitudeRate;
import org.climbwright.quantity.temperature.StaticAirTemperature;

/**
 * The gradient over the ground that a height at a distance takes, and the rate of climb that a
 * gradient takes at a ground speed.
 *
 * <pre>{@code
 * GroundGradient gradient = GroundGradient.ofPercent(3.3);
 * ClimbGradient.rate(gradient, GroundSpeed.ofKnots(150)).inFeetPerMinute()       // 501.279…
 * gradient.inFeetPerNauticalMile()                                           // 200.511…
 *
 * AltitudeChange height = AltitudeChange.ofFeet(6000);
 * GroundDistance distance = GroundDistance.ofNauticalMiles(20);
 * GeometricRate rate = ClimbGradient.requiredRate(height, distance, GroundSpeed.ofKnots(280));
 * Math.round(rate.inFeetPerMinute())                                             // 1400
 *
 * PressureAltitude altitude = PressureAltitude.ofFeet(4259);
 * StaticAirTemperature cold = StaticAirTemperature.ofCelsius(-31);
 * PressureAltitudeRate shown =
 *         ClimbGradient.instrumentRate(GeometricRate.ofFeetPerMinute(568), altitude, cold);
 * Math.round(shown.inFeetPerMinute())                                            // 656
 * }</pre>
 *
 * <p>The speed is the one over the ground, not the airspeed; {@link WindGradients} lies between.
 * Percent times knots is 1.25 % too little for feet per minute, on the unsafe side. {@link
 * RoundedUp} rounds on the safe one.
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

    private static final ModelRange RATE =
            new ModelRange("geometric rate", -2000.0, 2000.0, "m/s", "no aeroplane climbs faster");

    private static final ModelRange TEMPERATURE =
            new ModelRange(
                    "static air temperature",
                    100.0,
                    400.0,
                    "K",
                    "no air of the atmosphere is outside");

    private static final ModelRange DISTANCE_FOUND =
            new ModelRange(
                    "distance in which the gradient gains the height",
                    0.0,
                    DISTANCE.highest(),
                    "m",
                    "a gradient gains height of its own sign, and only as long as the earth is");

    private ClimbGradient() {}

    /**
     * Tells whether a height and a distance are in range.
     *
     * @param heightM true height to gain [m]
     * @param distanceM distance over the ground [m]
     * @return true if {@link #required(double, double)} answers
     */
    public static boolean coversRequired(double heightM, double distanceM) {
        return HEIGHT.covers(heightM) && DISTANCE.covers(distanceM);
    }

    /**
     * Tells whether a gradient and a ground speed are in range.
     *
     * @param gradient gradient over the ground [m/m]
     * @param groundSpeedMps ground speed [m/s]
     * @return true if {@link #rate(double, double)} answers
     */
    public static boolean coversRate(double gradient, double groundSpeedMps) {
        return GRADIENT.covers(gradient) && SPEED.covers(groundSpeedMps);
    }

    /**
     * Tells whether a rate and a ground speed are in range.
     *
     * @param geometricRateMps geometric rate [m/s]
     * @param groundSpeedMps ground speed [m/s]
     * @return true if {@link #gradient(double, double)} answers
     */
    public static boolean coversGradient(double geometricRateMps, double groundSpeedMps) {
        return RATE.covers(geometricRateMps) && SPEED.covers(groundSpeedMps);
    }

    /**
     * Tells whether a height, a distance and a ground speed are in range.
     *
     * @param heightM true height to gain [m]
     * @param distanceM distance over the ground [m]
     * @param groundSpeedMps ground speed [m/s]
     * @return true if {@link #requiredRate(double, double, double)} answers
     */
    public static boolean coversRequiredRate(
            double heightM, double distanceM, double groundSpeedMps) {
        return coversRequired(heightM, distanceM)
                && coversRate(heightM / distanceM, groundSpeedMps);
    }

    /**
     * Tells whether a rate, a pressure altitude and a temperature are in range.
     *
     * @param geometricRateMps geometric rate [m/s]
     * @param pressureAltitudeM pressure altitude [m]
     * @param temperatureK static air temperature [K]
     * @return true if {@link #instrumentRate(double, double, double)} answers
     */
    public static boolean coversInstrumentRate(
            double geometricRateMps, double pressureAltitudeM, double temperatureK) {
        return RATE.covers(geometricRateMps)
                && StandardAir.coversAltitude(pressureAltitudeM)
                && TEMPERATURE.covers(temperatureK);
    }

    /**
     * Tells whether a gradient and a distance are in range.
     *
     * @param gradient gradient over the ground [m/m]
     * @param distanceM distance over the ground [m]
     * @return true if {@link #heightGained(double, double)} answers
     */
    public static boolean coversHeightGained(double gradient, double distanceM) {
        return GRADIENT.covers(gradient) && DISTANCE.covers(distanceM);
    }

    /**
     * Tells whether a gradient gains a height in some distance on the earth.
     *
     * @param heightM true height to gain [m]
     * @param gradient gradient over the ground [m/m]
     * @return true if {@link #distanceFor(double, double)} answers
     */
    public static boolean coversDistanceFor(double heightM, double gradient) {
        return HEIGHT.covers(heightM)
                && GRADIENT.covers(gradient)
                && DISTANCE_FOUND.covers(heightM / gradient);
    }

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
     * Returns the gradient that a rate in true height makes at a ground speed.
     *
     * @param geometricRateMps geometric rate [m/s], -2000 to 2000
     * @param groundSpeedMps ground speed [m/s], 0.001 to 2000
     * @return gradient over the ground [m/m]
     * @throws org.climbwright.quantity.OutsideModelException if a value is out of range
     * @accuracy half an ulp
     * @source see the class comment
     */
    public static double gradient(double geometricRateMps, double groundSpeedMps) {
        return RATE.check(geometricRateMps) / SPEED.check(groundSpeedMps);
    }

    /**
     * Returns the height that a gradient gains in a distance.
     *
     * @param gradient gradient over the ground [m/m], -10 to 10
     * @param distanceM distance over the ground [m], 0.001 to 2e7
     * @return true height gained [m]
     * @throws org.climbwright.quantity.OutsideModelException if a value is out of range
     * @accuracy half an ulp
     * @source see the class comment
     */
    public static double heightGained(double gradient, double distanceM) {
        return GRADIENT.check(gradient) * DISTANCE.check(distanceM);
    }

    /**
     * Returns the distance in which a gradient gains a height.
     *
     * @param heightM true height to gain [m], -1e5 to 1e5
     * @param gradient gradient over the ground [m/m], -10 to 10, of the sign of the height
     * @return distance over the ground [m], 0 to 2e7
     * @throws org.climbwright.quantity.OutsideModelException if a value is out of range, or the
     *     gradient never gains the height
     * @accuracy half an ulp
     * @source see the class comment
     */
    public static double distanceFor(double heightM, double gradient) {
        return DISTANCE_FOUND.check(HEIGHT.check(heightM) / GRADIENT.check(gradient));
    }

    /**
     * Returns the rate in true height that gains a height in a distance.
     *
     * @param heightM true height to gain [m], -1e5 to 1e5
     * @param distanceM distance over the ground [m], 0.001 to 2e7, of a gradient up to 10
     * @param groundSpeedMps ground speed [m/s], 0.001 to 2000
     * @return geometric rate [m/s]
     * @throws org.climbwright.quantity.OutsideModelException if a value is out of range
     * @accuracy 1 ulp
     * @source see the class comment
     */
    public static double requiredRate(double heightM, double distanceM, double groundSpeedMps) {
        return rate(required(heightM, distanceM), groundSpeedMps);
    }

    /**
     * Returns the rate that the instrument must show for a rate in true height.
     *
     * @param geometricRateMps geometric rate [m/s], -2000 to 2000
     * @param pressureAltitudeM pressure altitude [m], -5000 to 80000
     * @param temperatureK static air temperature [K], 100 to 400; the virtual one for moist air
     * @return rate of pressure altitude [m/s]
     * @throws org.climbwright.quantity.OutsideModelException if a value is out of range
     * @accuracy 7 ulp, and see {@link VerticalRates#geometricPerPressureAltitude(double, double)}
     * @source {@link VerticalRates}
     */
    public static double instrumentRate(
            double geometricRateMps, double pressureAltitudeM, double temperatureK) {
        return RATE.check(geometricRateMps)
                / VerticalRates.geometricPerPressureAltitude(
                        pressureAltitudeM, TEMPERATURE.check(temperatureK));
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
     * Returns the gradient that a rate in true height makes at a ground speed.
     *
     * @param rate geometric rate
     * @param groundSpeed ground speed, not airspeed
     * @return gradient over the ground
     * @throws org.climbwright.quantity.OutsideModelException if a value is out of range
     * @accuracy half an ulp
     */
    public static GroundGradient gradient(GeometricRate rate, GroundSpeed groundSpeed) {
        return GroundGradient.ofMetresPerMetre(
                gradient(rate.inMetresPerSecond(), groundSpeed.inMetresPerSecond()));
    }

    /**
     * Returns the height that a gradient gains in a distance.
     *
     * @param gradient gradient over the ground
     * @param distance distance over the ground, above 0
     * @return true height gained
     * @throws org.climbwright.quantity.OutsideModelException if a value is out of range
     * @accuracy half an ulp
     */
    public static AltitudeChange heightGained(GroundGradient gradient, GroundDistance distance) {
        return AltitudeChange.ofMetres(
                heightGained(gradient.inMetresPerMetre(), distance.inMetres()));
    }

    /**
     * Returns the distance in which a gradient gains a height.
     *
     * @param height true height to gain
     * @param gradient gradient over the ground, of the sign of the height
     * @return distance over the ground
     * @throws org.climbwright.quantity.OutsideModelException if a value is out of range, or the
     *     gradient never gains the height
     * @accuracy half an ulp
     */
    public static GroundDistance distanceFor(AltitudeChange height, GroundGradient gradient) {
        return GroundDistance.ofMetres(distanceFor(height.inMetres(), gradient.inMetresPerMetre()));
    }

    /**
     * Returns the rate in true height that gains a height in a distance.
     *
     * @param height true height to gain
     * @param distance distance over the ground, above 0
     * @param groundSpeed ground speed, not airspeed
     * @return geometric rate
     * @throws org.climbwright.quantity.OutsideModelException if a value is out of range
     * @accuracy 1 ulp
     */
    public static GeometricRate requiredRate(
            AltitudeChange height, GroundDistance distance, GroundSpeed groundSpeed) {
        return GeometricRate.ofMetresPerSecond(
                requiredRate(
                        height.inMetres(), distance.inMetres(), groundSpeed.inMetresPerSecond()));
    }

    /**
     * Returns the rate that the instrument must show for a rate in true height: more where the air
     * is colder than standard.
     *
     * @param rate geometric rate
     * @param altitude pressure altitude
     * @param temperature static air temperature there
     * @return rate of pressure altitude
     * @throws org.climbwright.quantity.OutsideModelException if a value is out of range
     * @accuracy see {@link #instrumentRate(double, double, double)}; for dry air
     * @source {@link VerticalRates}
     */
    public static PressureAltitudeRate instrumentRate(
            GeometricRate rate, PressureAltitude altitude, StaticAirTemperature temperature) {
        return PressureAltitudeRate.ofMetresPerSecond(
                instrumentRate(
                        rate.inMetresPerSecond(), altitude.inMetres(), temperature.inKelvins()));
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
