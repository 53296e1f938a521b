package org.climbwright.turbulence;

import static org.climbwright.atmosphere.IcaoConstants.GRAVITY_MPS2;
import static org.climbwright.atmosphere.IcaoConstants.HEAT_CAPACITY_RATIO;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.DoubleStream;
import org.climbwright.atmosphere.AirState;
import org.climbwright.atmosphere.Atmosphere;
import org.climbwright.atmosphere.wind.Winds;
import org.climbwright.quantity.ModelRange;
import org.climbwright.quantity.altitude.AltitudeChange;
import org.climbwright.quantity.pressure.StaticPressure;
import org.climbwright.unit.UnitScale;

/**
 * The change of the wind between two levels, and the Richardson number of the layer between them:
 * whether its stratification holds its shear down.
 *
 * <p>A number below 0.25 somewhere is necessary for shear to break up into turbulence (theory of
 * Miles and Howard, from memory). That of a deep layer says less: thin layers inside may be below
 * it while the whole is above. {@link #inStretches} therefore goes from bend to bend.
 *
 * <p>Limits of use: two levels of a sounding or a forecast, not the air on the way; no shear found
 * is not "no turbulence".
 *
 * @source Richardson number {@code (g / theta) dtheta dz / (du² + dv²)} with virtual potential
 *     temperature: textbook of boundary-layer meteorology, from memory
 */
public final class WindShear implements Serializable {
    private static final long serialVersionUID = 1L;

    private static final double KNOT_PER_1000_FT =
            UnitScale.KNOT.toSi(1.0) / UnitScale.FOOT.toSi(1000.0);

    private static final double KAPPA = (HEAT_CAPACITY_RATIO - 1.0) / HEAT_CAPACITY_RATIO;

    private static final ModelRange THETA =
            new ModelRange(
                    "potential temperature", 50.0, 5000.0, "K", "no air of the atmosphere has it");

    private static final ModelRange DEPTH =
            new ModelRange(
                    "depth of a layer", 1e-3, 1e5, "m", "the upper level is above the lower");

    private static final ModelRange CHANGE =
            new ModelRange(
                    "change of the wind", 1e-6, 1e3, "m/s", "without shear the number is infinite");

    private final AirState lower;
    private final AirState upper;
    private final double eastwardMps;
    private final double northwardMps;

    private WindShear(AirState lower, AirState upper, double eastwardMps, double northwardMps) {
        this.lower = lower;
        this.upper = upper;
        this.eastwardMps = eastwardMps;
        this.northwardMps = northwardMps;
    }

    /**
     * Returns the shear between two levels.
     *
     * @param air the air of the day
     * @param winds the winds of the day
     * @param lower the pressure at the lower level
     * @param upper the pressure at the upper level, less than at the lower
     * @return the shear; not known where the air does not reach, its altitude is not known, or the
     *     wind is not
     * @throws IllegalArgumentException if the upper level is not above the lower
     */
    public static Answer<WindShear> between(
            Atmosphere air, Winds winds, StaticPressure lower, StaticPressure upper) {
        if (!(upper.inPascals() < lower.inPascals())) {
            throw new IllegalArgumentException(
                    "the upper level must have less pressure than the lower, "
                            + lower
                            + ", but has "
                            + upper);
        }
        for (StaticPressure level : List.of(lower, upper)) {
            double pressurePa = level.inPascals();
            if (!air.covers(pressurePa)) {
                return Answer.notKnown("the air is not known at " + hectopascals(level));
            }
            if (Double.isNaN(air.geopotentialAltitude(pressurePa))) {
                return Answer.notKnown("the altitude of " + hectopascals(level) + " is not known");
            }
            if (!winds.covers(pressurePa)) {
                return Answer.notKnown("the wind is not known at " + hectopascals(level));
            }
        }
        if (!(air.geopotentialAltitude(upper.inPascals())
                > air.geopotentialAltitude(lower.inPascals()))) {
            return Answer.notKnown(
                    "the altitude of "
                            + hectopascals(upper)
                            + " is not above that of "
                            + hectopascals(lower));
        }
        return Answer.known(
                new WindShear(
                        air.at(lower),
                        air.at(upper),
                        winds.eastward(upper.inPascals()) - winds.eastward(lower.inPascals()),
                        winds.northward(upper.inPascals()) - winds.northward(lower.inPascals())));
    }

    /** A level as a reason tells it: as a sounding prints it, not in full. */
    private static String hectopascals(StaticPressure level) {
        return String.format(Locale.ROOT, "%.1f hPa", level.inHectopascals());
    }

    /**
     * Returns the shear in every stretch between two bends of the air or the winds.
     *
     * <p>From bend to bend air and wind are straight, and the Richardson number of a stretch is
     * that of its gradients.
     *
     * @param air the air of the day
     * @param winds the winds of the day
     * @param lower the pressure at the lowest level
     * @param upper the pressure at the highest level, less than at the lowest
     * @return the stretches from below, each known or with its reason; one at least
     * @throws IllegalArgumentException if the upper level is not above the lower
     */
    public static List<Answer<WindShear>> inStretches(
            Atmosphere air, Winds winds, StaticPressure lower, StaticPressure upper) {
        double[] levels =
                DoubleStream.concat(
                                DoubleStream.of(lower.inPascals(), upper.inPascals()),
                                DoubleStream.concat(
                                                DoubleStream.of(air.bendsPa()),
                                                DoubleStream.of(winds.bendsPa()))
                                        .filter(p -> p < lower.inPascals())
                                        .filter(p -> p > upper.inPascals()))
                        .map(p -> -p)
                        .sorted()
                        .map(p -> -p)
                        .distinct()
                        .toArray();
        List<Answer<WindShear>> stretches = new ArrayList<>();
        StaticPressure below = lower;
        for (int i = 1; i < levels.length; i++) {
            StaticPressure level = StaticPressure.ofPascals(levels[i]);
            stretches.add(between(air, winds, below, level));
            below = level;
        }
        if (stretches.isEmpty()) {
            stretches.add(between(air, winds, lower, upper)); // refuses levels out of order
        }
        return List.copyOf(stretches);
    }

    /**
     * Tells whether {@link #richardsonNumber(double, double, double, double)} takes these.
     *
     * @param lowerThetaK potential temperature at the lower level [K]
     * @param upperThetaK potential temperature at the upper level [K]
     * @param depthM geopotential distance between the levels [m]
     * @param changeMps size of the change of the wind vector [m/s]
     * @return true if it answers
     */
    public static boolean covers(
            double lowerThetaK, double upperThetaK, double depthM, double changeMps) {
        return THETA.covers(lowerThetaK)
                && THETA.covers(upperThetaK)
                && DEPTH.covers(depthM)
                && CHANGE.covers(changeMps);
    }

    /**
     * Returns the Richardson number of a layer: {@code (g / theta) dtheta dz / dV²}, with the mean
     * potential temperature of its two ends.
     *
     * @param lowerThetaK potential temperature at the lower level, virtual for moist air [K], 50 to
     *     5000
     * @param upperThetaK the same at the upper level [K], 50 to 5000
     * @param depthM geopotential distance between the levels [m], 0.001 to 100,000
     * @param changeMps size of the change of the wind vector [m/s], 1e-6 to 1000
     * @return a plain number, negative in air that overturns by itself
     * @throws org.climbwright.quantity.OutsideModelException if a value is out of range
     * @accuracy 5 ulp of the inputs, and the difference of the temperatures as given; with the
     *     potential temperature of the lower level instead of the mean, as some have it, a deep
     *     layer's is some per cent more
     * @source see the class comment
     */
    public static double richardsonNumber(
            double lowerThetaK, double upperThetaK, double depthM, double changeMps) {
        double mean = 0.5 * (THETA.check(lowerThetaK) + THETA.check(upperThetaK));
        CHANGE.check(changeMps);
        return GRAVITY_MPS2
                / mean
                * (upperThetaK - lowerThetaK)
                * DEPTH.check(depthM)
                / (changeMps * changeMps);
    }

    /**
     * Returns the potential temperature: that of the air brought dry to 1000 hPa.
     *
     * @param temperatureK static air temperature, virtual for the virtual one [K]
     * @param pressurePa static pressure [Pa]
     * @return potential temperature [K]
     * @accuracy 2e-15 relative; with the exponent 2/7
     */
    private static double potentialTemperature(double temperatureK, double pressurePa) {
        return temperatureK * StrictMath.pow(100000.0 / pressurePa, KAPPA);
    }

    /**
     * Returns the air at the lower level.
     *
     * @return its state
     */
    public AirState lower() {
        return lower;
    }

    /**
     * Returns the air at the upper level.
     *
     * @return its state
     */
    public AirState upper() {
        return upper;
    }

    /**
     * Returns how far the levels are apart.
     *
     * @return geopotential distance, above 0
     */
    public AltitudeChange depth() {
        return upper.geopotentialAltitude()
                .orElseThrow()
                .minus(lower.geopotentialAltitude().orElseThrow());
    }

    /**
     * Returns how much the wind vector changes, turning included.
     *
     * @return the size of the difference [m/s], 0 or more
     */
    public double changeMps() {
        return StrictMath.hypot(eastwardMps, northwardMps);
    }

    /**
     * Returns the shear.
     *
     * @return change of the wind vector per height [1/s], 0 or more
     */
    public double perSecond() {
        return changeMps() / depth().inMetres();
    }

    /**
     * Returns the shear in the unit of the rules of thumb.
     *
     * @return change of the wind vector per height [kn/1000 ft], 0 or more
     */
    public double inKnotsPer1000Ft() {
        return perSecond() / KNOT_PER_1000_FT;
    }

    /**
     * Returns the Richardson number with virtual potential temperature: the bulk one of a layer,
     * the gradient one of a stretch without bends.
     *
     * @return the number; not known without humidity at both levels, or where there is no shear
     * @source {@link #richardsonNumber(double, double, double, double)}
     */
    public Answer<Double> richardsonNumber() {
        if (!lower.isHumidityKnown() || !upper.isHumidityKnown()) {
            return Answer.notKnown("the humidity is not known at both levels");
        }
        return richardsonNumber(lower.virtualTemperatureK(), upper.virtualTemperatureK());
    }

    /**
     * Returns the Richardson number of air taken as dry, which moist air is not: where humidity
     * falls with height the real one is lower.
     *
     * @return the number; not known where there is no shear
     * @source {@link #richardsonNumber(double, double, double, double)}
     */
    public Answer<Double> richardsonNumberOfDryAir() {
        return richardsonNumber(lower.temperatureK(), upper.temperatureK());
    }

    private Answer<Double> richardsonNumber(double lowerK, double upperK) {
        double lowerTheta = potentialTemperature(lowerK, lower.pressurePa());
        double upperTheta = potentialTemperature(upperK, upper.pressurePa());
        double depthM = depth().inMetres();
        return covers(lowerTheta, upperTheta, depthM, changeMps())
                ? Answer.known(richardsonNumber(lowerTheta, upperTheta, depthM, changeMps()))
                : Answer.notKnown(
                        String.format(
                                Locale.ROOT,
                                "the wind changes by %.2f m/s over %.1f m, which has no Richardson"
                                        + " number",
                                changeMps(),
                                depthM));
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof WindShear that
                && lower.equals(that.lower)
                && upper.equals(that.upper)
                && Double.compare(eastwardMps, that.eastwardMps) == 0
                && Double.compare(northwardMps, that.northwardMps) == 0;
    }

    @Override
    public int hashCode() {
        return 31 * (31 * lower.hashCode() + upper.hashCode())
                + Double.hashCode(eastwardMps)
                + 7 * Double.hashCode(northwardMps);
    }

    /**
     * Returns the shear for reading.
     *
     * @return a text; may change between versions
     */
    @Override
    public String toString() {
        return String.format(
                Locale.ROOT,
                "shear of %.1f kn/1000 ft from %.0f to %.0f hPa",
                inKnotsPer1000Ft(),
                lower.pressurePa() / 100.0,
                upper.pressurePa() / 100.0);
    }
}
