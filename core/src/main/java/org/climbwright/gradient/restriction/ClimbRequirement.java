package org.climbwright.gradient.restriction;

import java.io.Serializable;
import java.util.Objects;
import java.util.Optional;
import org.climbwright.gradient.ClimbGradient;
import org.climbwright.path.ClimbPath;
import org.climbwright.path.ClimbState;
import org.climbwright.quantity.ModelRange;
import org.climbwright.quantity.altitude.AltitudeChange;
import org.climbwright.quantity.path.GroundDistance;
import org.climbwright.quantity.path.GroundGradient;
import org.climbwright.quantity.speed.GroundSpeed;
import org.climbwright.quantity.speed.PressureAltitudeRate;

/**
 * The gradient and the rate that a level at a point takes from where the aeroplane is.
 *
 * <p>The gradient is true height over the ground. The rate is the altimeter's own feet to the level
 * over the time that the climb takes to the point as predicted, and so is the mean that the
 * instrument must show, whatever the temperature: more at first, where the rate falls on the way.
 *
 * <pre>{@code
 * double fromM = PressureAltitude.ofFeet(4000).inMetres();
 * double toM = PressureAltitude.ofFlightLevel(100).inMetres();
 * double wayM = GroundDistance.ofNauticalMiles(20).inMetres();
 * double speedMps = GroundSpeed.ofKnots(280).inMetresPerSecond();
 * double rateMps = ClimbRequirement.instrumentRate(fromM, toM, wayM, speedMps);
 * Math.rint(PressureAltitudeRate.ofMetresPerSecond(rateMps).inFeetPerMinute())   // 1400.0
 * }</pre>
 *
 * <p>Limits of use: for study and simulation, not for use in flight. It is a mean over the way, and
 * no statement about obstacles; the clearance, the published procedure and the flight manual
 * decide.
 */
public final class ClimbRequirement implements Serializable {
    private static final long serialVersionUID = 1L;
    private static final ModelRange ALTITUDE =
            new ModelRange("pressure altitude", -10000.0, 100000.0, "m", "no restriction is there");
    private static final ModelRange RATIO =
            new ModelRange(
                    "true height per pressure altitude",
                    0.5,
                    2.0,
                    "m/m",
                    "no air is so cold or warm");
    private static final ModelRange DISTANCE =
            new ModelRange("distance to the point", 1e-3, 2e7, "m", "a gradient needs a way");
    private static final ModelRange SPEED =
            new ModelRange("ground speed", 1e-3, 2000.0, "m/s", "a rate needs a way");

    /** A point nearer than this is here, and takes no gradient. */
    private static final double NEAREST_M = 10.0;

    private final Restriction restriction;
    private final Level level;
    private final double heightM;
    private final double distanceM;
    private final double rateMps;
    private final Heights heights;

    private ClimbRequirement(
            Restriction restriction,
            Level level,
            double heightM,
            double distanceM,
            double rateMps,
            Heights heights) {
        this.restriction = restriction;
        this.level = level;
        this.heightM = heightM;
        this.distanceM = distanceM;
        this.rateMps = rateMps;
        this.heights = heights;
    }

    /** How the true height to gain is known. */
    public enum Heights {
        /** As the difference of the true altitudes of the air, here and at the level. */
        TRUE_ALTITUDES,
        /**
         * As pressure altitude times temperature over standard temperature, summed through the air
         * of the path; beyond its ends with the air of the end.
         */
        TEMPERATURE
    }

    /** The point must be ahead; the level may be below, and then takes no climb. */
    static ClimbRequirement of(
            ClimbPath path,
            double qnhPa,
            Restriction restriction,
            Level level,
            ClimbState here,
            double distanceM) {
        double levelM = level.pressureAltitude(qnhPa);
        HeightGain gain = HeightGain.of(path, here, levelM);
        double timeS = predictedTimeS(path, here, distanceM);
        double rate =
                timeS > 0.0
                        ? instrumentRate(
                                here.pressureAltitude().inMetres(),
                                levelM,
                                distanceM,
                                distanceM / timeS)
                        : Double.NaN;
        return new ClimbRequirement(
                restriction, level, gain.metres(), distanceM, rate, gain.heights());
    }

    /**
     * How long the path takes from over the aeroplane's place to over the point [s]; NaN where that
     * is not known.
     */
    private static double predictedTimeS(ClimbPath path, ClimbState here, double distanceM) {
        if (here.distance().isEmpty()) {
            return Double.NaN;
        }
        double fromM = here.distance().get().inMetres();
        return timeOverS(path, fromM + distanceM) - timeOverS(path, fromM);
    }

    /** When the path is over a point; after its top at the ground speed that it has there. */
    private static double timeOverS(ClimbPath path, double distanceM) {
        PointOnPath point = PointOnPath.of(path, GroundDistance.ofMetres(distanceM));
        if (point.state() == null) {
            return Double.NaN;
        }
        double beyondM =
                point.isLevelOff()
                        ? distanceM - point.state().distance().orElseThrow().inMetres()
                        : 0.0;
        double speedMps =
                point.state().groundSpeed().map(GroundSpeed::inMetresPerSecond).orElse(Double.NaN);
        return point.state().timeS() + (beyondM > 0.0 ? beyondM / speedMps : 0.0);
    }

    /**
     * Returns the gradient that a level takes, where the ratio of true height to pressure altitude
     * is given.
     *
     * @param pressureAltitudeM pressure altitude of the aeroplane [m], -10000 to 100000
     * @param levelM pressure altitude to reach [m], same range
     * @param geometricPerPressureAltitude true height per pressure altitude between the two [m/m],
     *     0.5 to 2; some {@code T / T_ISA}, see {@link
     *     org.climbwright.atmosphere.altimetry.VerticalRates}
     * @param distanceM distance over the ground to the point [m], 0.001 to 2e7
     * @return gradient over the ground [m/m]; below zero where the level is below
     * @throws org.climbwright.quantity.OutsideModelException if a value is out of range
     * @accuracy 2 ulp of the larger altitude, over the distance
     * @source {@link ClimbGradient#required(double, double)}
     */
    public static double gradient(
            double pressureAltitudeM,
            double levelM,
            double geometricPerPressureAltitude,
            double distanceM) {
        double gain = ALTITUDE.check(levelM) - ALTITUDE.check(pressureAltitudeM);
        return ClimbGradient.required(
                gain * RATIO.check(geometricPerPressureAltitude), DISTANCE.check(distanceM));
    }

    /**
     * Tells whether {@link #gradient(double, double, double, double)} has an answer.
     *
     * @param pressureAltitudeM pressure altitude of the aeroplane [m]
     * @param levelM pressure altitude to reach [m]
     * @param geometricPerPressureAltitude true height per pressure altitude [m/m]
     * @param distanceM distance over the ground to the point [m]
     * @return true if all are in range, and so is the height they make
     */
    public static boolean coversGradient(
            double pressureAltitudeM,
            double levelM,
            double geometricPerPressureAltitude,
            double distanceM) {
        return ALTITUDE.covers(pressureAltitudeM)
                && ALTITUDE.covers(levelM)
                && RATIO.covers(geometricPerPressureAltitude)
                && DISTANCE.covers(distanceM)
                && Math.abs((levelM - pressureAltitudeM) * geometricPerPressureAltitude) <= 1e5;
    }

    /**
     * Returns the rate that the instrument must show to be at a level over a point: {@code (level -
     * Hp) GS / d}.
     *
     * @param pressureAltitudeM pressure altitude of the aeroplane [m], -10000 to 100000
     * @param levelM pressure altitude to reach [m], same range
     * @param distanceM distance over the ground to the point [m], 0.001 to 2e7
     * @param groundSpeedMps ground speed [m/s], 0.001 to 2000
     * @return rate of pressure altitude [m/s]; below zero where the level is below
     * @throws org.climbwright.quantity.OutsideModelException if a value is out of range
     * @accuracy 2 ulp of the larger altitude, over the time
     * @source the altimeter's own height over the time to the point; no temperature enters
     */
    public static double instrumentRate(
            double pressureAltitudeM, double levelM, double distanceM, double groundSpeedMps) {
        double gain = ALTITUDE.check(levelM) - ALTITUDE.check(pressureAltitudeM);
        return gain * SPEED.check(groundSpeedMps) / DISTANCE.check(distanceM);
    }

    /**
     * Tells whether {@link #instrumentRate(double, double, double, double)} has an answer.
     *
     * @param pressureAltitudeM pressure altitude of the aeroplane [m]
     * @param levelM pressure altitude to reach [m]
     * @param distanceM distance over the ground to the point [m]
     * @param groundSpeedMps ground speed [m/s]
     * @return true if all are in range
     */
    public static boolean coversInstrumentRate(
            double pressureAltitudeM, double levelM, double distanceM, double groundSpeedMps) {
        return ALTITUDE.covers(pressureAltitudeM)
                && ALTITUDE.covers(levelM)
                && DISTANCE.covers(distanceM)
                && SPEED.covers(groundSpeedMps);
    }

    /** Tells whether a point so far ahead still takes a gradient. */
    static boolean isAhead(double distanceM) {
        return distanceM >= NEAREST_M;
    }

    /**
     * Returns the restriction that it comes from.
     *
     * @return the restriction
     */
    public Restriction restriction() {
        return restriction;
    }

    /**
     * Returns the level to be at.
     *
     * @return the bound of the restriction; for "at" its level, without the tolerance
     */
    public Level level() {
        return level;
    }

    /**
     * Returns the gradient over the ground, as a mean from here to the point.
     *
     * @return true height over distance; zero or less where the level is not above
     * @accuracy that of the true heights, see {@link #heights()}
     */
    public GroundGradient gradient() {
        return GroundGradient.ofMetresPerMetre(gradientMpm());
    }

    double gradientMpm() {
        return ClimbGradient.required(heightM, distanceM);
    }

    /**
     * Returns the rate that the instrument must show, at the ground speed here.
     *
     * @return rate of pressure altitude; empty where the wind is not known and so no ground speed
     */
    public Optional<PressureAltitudeRate> instrumentRate() {
        return Double.isNaN(rateMps)
                ? Optional.empty()
                : Optional.of(PressureAltitudeRate.ofMetresPerSecond(rateMps));
    }

    /**
     * Returns the true height from here to the level.
     *
     * @return the height, negative downwards
     */
    public AltitudeChange heightToGain() {
        return AltitudeChange.ofMetres(heightM);
    }

    /**
     * Returns the distance from here to the point.
     *
     * @return distance over the ground
     */
    public GroundDistance distance() {
        return GroundDistance.ofMetres(distanceM);
    }

    /**
     * Returns how the true height is known.
     *
     * @return from true altitudes or from the temperature
     */
    public Heights heights() {
        return heights;
    }

    /**
     * Returns the requirement in words.
     *
     * @return a text; may change between versions
     */
    @Override
    public String toString() {
        return restriction.where()
                + ", "
                + level
                + ": "
                + Figures.percent(gradientMpm())
                + " over the ground"
                + instrumentRate().map(rate -> ", " + rate.text()).orElse("");
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof ClimbRequirement that
                && restriction.equals(that.restriction)
                && level.equals(that.level)
                && Double.compare(heightM, that.heightM) == 0
                && Double.compare(distanceM, that.distanceM) == 0
                && Double.compare(rateMps, that.rateMps) == 0
                && heights == that.heights;
    }

    @Override
    public int hashCode() {
        return Objects.hash(restriction, level, heightM, distanceM, rateMps, heights);
    }
}
