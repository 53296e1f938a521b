package org.climbwright.path;

import java.io.Serializable;
import java.time.Duration;
import java.util.Arrays;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import org.climbwright.airspeed.AirspeedConversion;
import org.climbwright.airspeed.TotalTemperature;
import org.climbwright.atmosphere.AirState;
import org.climbwright.atmosphere.altimetry.VerticalRates;
import org.climbwright.quantity.altitude.PressureAltitude;
import org.climbwright.quantity.path.AirGradient;
import org.climbwright.quantity.path.GroundDistance;
import org.climbwright.quantity.path.GroundGradient;
import org.climbwright.quantity.path.Mass;
import org.climbwright.quantity.speed.AlongTrackWind;
import org.climbwright.quantity.speed.CalibratedAirspeed;
import org.climbwright.quantity.speed.GeometricRate;
import org.climbwright.quantity.speed.GroundSpeed;
import org.climbwright.quantity.speed.Mach;
import org.climbwright.quantity.speed.PressureAltitudeRate;
import org.climbwright.quantity.speed.TrueAirspeed;
import org.climbwright.quantity.temperature.TotalAirTemperature;

/**
 * The aeroplane at one point of its climb, and the air around it.
 *
 * <p>What needs a wind is empty where the wind is not known, and the distance is empty from there
 * on. Distance counts along the surface of the earth below the track, which at 10 km is 0.16 % less
 * than at the level flown; ground speed and gradient are those at that level.
 */
public final class ClimbState implements Serializable {
    private static final long serialVersionUID = 1L;

    private final AirState air;
    private final double pressureAltitudeM;
    private final double casMps;
    private final double mach;
    private final double rateMps;
    private final double massKg;
    private final double alongTrackWindMps;
    private final double acrossTrackWindMps;
    private final double timeS;
    private final double distanceM;

    private ClimbState(
            AirState air,
            double pressureAltitudeM,
            double casMps,
            double mach,
            double rateMps,
            double massKg,
            double alongTrackWindMps,
            double acrossTrackWindMps,
            double timeS,
            double distanceM) {
        this.air = air;
        this.pressureAltitudeM = pressureAltitudeM;
        this.casMps = casMps;
        this.mach = mach;
        this.rateMps = rateMps;
        this.massKg = massKg;
        this.alongTrackWindMps = alongTrackWindMps;
        this.acrossTrackWindMps = acrossTrackWindMps;
        this.timeS = timeS;
        this.distanceM = distanceM;
    }

    /**
     * Returns a point of a climb, for those who make a {@link ClimbPath} of their own.
     *
     * <p>Level and calibrated airspeed are told beside the pressure and the Mach number that they
     * belong to, so that a 250 kn and a FL100 that somebody gave leave as they came.
     *
     * @param air the air there
     * @param pressureAltitudeM pressure altitude of the air's pressure [m]
     * @param casMps calibrated airspeed of the Mach number at the pressure [m/s], above 0
     * @param mach Mach number, above 0
     * @param rateMps rate of pressure altitude [m/s], 0 or more
     * @param massKg mass [kg], above 0
     * @param alongTrackWindMps wind along the track [m/s], positive from behind; NaN when not known
     * @param acrossTrackWindMps wind across the track [m/s], positive towards the right; NaN when
     *     not known
     * @param timeS time since the climb began [s], 0 or more
     * @param distanceM distance over the ground since then [m], 0 or more; NaN when not known
     * @return the point
     * @throws IllegalArgumentException if a number cannot be, or only one part of the wind is known
     */
    public static ClimbState ofSi(
            AirState air,
            double pressureAltitudeM,
            double casMps,
            double mach,
            double rateMps,
            double massKg,
            double alongTrackWindMps,
            double acrossTrackWindMps,
            double timeS,
            double distanceM) {
        Objects.requireNonNull(air, "air");
        boolean moves = isPositive(casMps) && isPositive(mach) && isFrom0(rateMps);
        boolean isThere = Math.abs(pressureAltitudeM) <= Double.MAX_VALUE && isPositive(massKg);
        boolean counts = isFrom0(timeS) && (Double.isNaN(distanceM) || isFrom0(distanceM));
        boolean blows =
                Math.abs(alongTrackWindMps) <= Double.MAX_VALUE
                        && Math.abs(acrossTrackWindMps) <= Double.MAX_VALUE;
        boolean isUnknown = Double.isNaN(alongTrackWindMps) && Double.isNaN(acrossTrackWindMps);
        if (!(moves && isThere && counts && (blows || isUnknown))) {
            throw new IllegalArgumentException(
                    "a point of a climb needs a level, speeds and a mass above 0, a rate, a time"
                            + " and a distance of 0 or more and both parts of a wind, but had "
                            + pressureAltitudeM
                            + " m, "
                            + casMps
                            + " m/s, Mach "
                            + mach
                            + ", "
                            + massKg
                            + " kg, "
                            + rateMps
                            + " m/s, "
                            + timeS
                            + " s, "
                            + distanceM
                            + " m, "
                            + alongTrackWindMps
                            + " and "
                            + acrossTrackWindMps
                            + " m/s");
        }
        return new ClimbState(
                air,
                pressureAltitudeM,
                casMps,
                mach,
                rateMps,
                massKg,
                alongTrackWindMps,
                acrossTrackWindMps,
                timeS,
                distanceM);
    }

    private static boolean isPositive(double value) {
        return value > 0.0 && value <= Double.MAX_VALUE;
    }

    private static boolean isFrom0(double value) {
        return value >= 0.0 && value <= Double.MAX_VALUE;
    }

    /**
     * The aeroplane while it holds a level, by how it arrived there and how it leaves; what changes
     * does so in the share of the time, or of the distance, that it is asked by.
     */
    static ClimbState holding(ClimbState arriving, ClimbState leaving, double share) {
        boolean isSameSpeed = arriving.mach == leaving.mach;
        double mach = between(arriving.mach, leaving.mach, share);
        return ofSi(
                arriving.air,
                arriving.pressureAltitudeM,
                isSameSpeed
                        ? arriving.casMps
                        : AirspeedConversion.casFromMach(mach, arriving.air.pressurePa()),
                mach,
                0.0,
                between(arriving.massKg, leaving.massKg, share),
                arriving.alongTrackWindMps,
                arriving.acrossTrackWindMps,
                between(arriving.timeS, leaving.timeS, share),
                between(arriving.distanceM, leaving.distanceM, share));
    }

    private static double between(double from, double to, double share) {
        return share == 1.0 ? to : from + share * (to - from);
    }

    /**
     * Returns the air around the aeroplane.
     *
     * @return pressure, temperature, humidity, true altitude
     */
    public AirState air() {
        return air;
    }

    /**
     * Returns the level.
     *
     * @return pressure altitude
     */
    public PressureAltitude pressureAltitude() {
        return PressureAltitude.ofMetres(pressureAltitudeM);
    }

    /**
     * Returns the calibrated airspeed.
     *
     * @return calibrated airspeed
     */
    public CalibratedAirspeed calibratedAirspeed() {
        return CalibratedAirspeed.ofMetresPerSecond(casMps);
    }

    /**
     * Returns the Mach number.
     *
     * @return Mach number
     */
    public Mach mach() {
        return Mach.of(mach);
    }

    /**
     * Returns the true airspeed.
     *
     * @return true airspeed
     */
    public TrueAirspeed trueAirspeed() {
        return TrueAirspeed.ofMetresPerSecond(tasMps());
    }

    /**
     * Returns the temperature that a probe of full recovery feels.
     *
     * @return total air temperature
     */
    public TotalAirTemperature totalAirTemperature() {
        return TotalAirTemperature.ofKelvins(
                TotalTemperature.fromMach(mach, air.temperatureK(), 1.0));
    }

    /**
     * Returns the rate that the instrument shows.
     *
     * @return rate of pressure altitude
     */
    public PressureAltitudeRate pressureAltitudeRate() {
        return PressureAltitudeRate.ofMetresPerSecond(rateMps);
    }

    /**
     * Returns the rate in true height.
     *
     * @return geometric rate: more than the instrument's when the air is warmer than standard
     * @accuracy rounding, where humidity and true altitude are known. Unknown humidity counts as
     *     none, which is 2.1 % too little in saturated air of 35 °C at sea level and less in
     *     colder; where the pressure altitude stands in for the true one, each kilometre between
     *     the two costs 0.03 %
     */
    public GeometricRate geometricRate() {
        return GeometricRate.ofMetresPerSecond(geometricRateMps());
    }

    /**
     * Returns the mass.
     *
     * @return mass of the aeroplane
     */
    public Mass mass() {
        return Mass.ofKilograms(massKg);
    }

    /**
     * Returns the wind along the track.
     *
     * @return positive from behind; empty when the wind is not known
     */
    public Optional<AlongTrackWind> alongTrackWind() {
        return isWindKnown()
                ? Optional.of(AlongTrackWind.ofMetresPerSecond(alongTrackWindMps))
                : Optional.empty();
    }

    /**
     * Returns the speed over the ground, the wind from the side taken into account.
     *
     * @return ground speed; empty when the wind is not known
     */
    public Optional<GroundSpeed> groundSpeed() {
        return isWindKnown()
                ? Optional.of(GroundSpeed.ofMetresPerSecond(groundSpeedMps()))
                : Optional.empty();
    }

    /**
     * Returns the gradient through the air.
     *
     * @return true height gained per horizontal distance through the air
     */
    public AirGradient airGradient() {
        return AirGradient.ofMetresPerMetre(GroundTrack.airGradient(tasMps(), geometricRateMps()));
    }

    /**
     * Returns the gradient over the ground.
     *
     * @return true height gained per distance over the ground; empty when the wind is not known
     */
    public Optional<GroundGradient> groundGradient() {
        return isWindKnown()
                ? Optional.of(
                        GroundGradient.ofMetresPerMetre(geometricRateMps() / groundSpeedMps()))
                : Optional.empty();
    }

    /**
     * Returns the time since the climb began.
     *
     * @return seconds
     */
    public double timeS() {
        return timeS;
    }

    /**
     * Returns the time since the climb began.
     *
     * @return the time, to a nanosecond
     */
    public Duration time() {
        return Duration.ofNanos(Math.round(timeS * 1e9));
    }

    /**
     * Returns the distance covered over the ground since the climb began.
     *
     * @return the distance; empty when the wind was not known somewhere below
     */
    public Optional<GroundDistance> distance() {
        return Double.isNaN(distanceM)
                ? Optional.empty()
                : Optional.of(GroundDistance.ofMetres(distanceM));
    }

    double distanceM() {
        return distanceM;
    }

    double rateMps() {
        return rateMps;
    }

    /** Ground speed [m/s]; NaN when the wind is not known. */
    double groundSpeedMps() {
        return isWindKnown()
                ? GroundTrack.groundSpeed(
                        GroundTrack.horizontalAirspeed(tasMps(), geometricRateMps()),
                        alongTrackWindMps,
                        acrossTrackWindMps)
                : Double.NaN;
    }

    private boolean isWindKnown() {
        return !Double.isNaN(alongTrackWindMps);
    }

    private double tasMps() {
        return AirspeedConversion.tasFromMach(mach, air.temperatureK());
    }

    private double geometricRateMps() {
        return rateMps * VerticalRates.geometricPerPressureAltitude(air);
    }

    /**
     * Returns the point for reading.
     *
     * @return a text; may change between versions
     */
    @Override
    public String toString() {
        return String.format(
                Locale.ROOT,
                "%.0f ft, CAS %.1f kn, M%.4f, %.0f ft/min, %.1f s, %s",
                pressureAltitude().inFeet(),
                calibratedAirspeed().inKnots(),
                mach,
                pressureAltitudeRate().inFeetPerMinute(),
                timeS,
                distance()
                        .map(way -> String.format(Locale.ROOT, "%.2f NM", way.inNauticalMiles()))
                        .orElse("distance not known"));
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof ClimbState that
                && air.equals(that.air)
                && Arrays.equals(numbers(), that.numbers());
    }

    @Override
    public int hashCode() {
        return 31 * air.hashCode() + Arrays.hashCode(numbers());
    }

    private double[] numbers() {
        return new double[] {
            pressureAltitudeM,
            casMps,
            mach,
            rateMps,
            massKg,
            alongTrackWindMps,
            acrossTrackWindMps,
            timeS,
            distanceM
        };
    }

    private Object readResolve() {
        return ofSi(
                air,
                pressureAltitudeM,
                casMps,
                mach,
                rateMps,
                massKg,
                alongTrackWindMps,
                acrossTrackWindMps,
                timeS,
                distanceM);
    }
}
