package org.climbwright.performance;

import static org.climbwright.atmosphere.IcaoConstants.SEA_LEVEL_PRESSURE_PA;
import static org.climbwright.atmosphere.IcaoConstants.SEA_LEVEL_TEMPERATURE_K;

import java.io.Serializable;
import java.util.Objects;
import org.climbwright.atmosphere.StandardAir;
import org.climbwright.atmosphere.kernel.DryAirKernel;
import org.climbwright.numeric.Powers;
import org.climbwright.quantity.ModelRange;
import org.climbwright.quantity.OutsideModelException;
import org.climbwright.quantity.altitude.PressureAltitude;

/**
 * The thrust of propellers on shafts whose power does not change with speed: {@code eta P / V} of
 * each engine that runs, but never more than at rest; times the share of the rating and less bleed.
 *
 * <pre>{@code
 * PropellerThrust engine = PropellerThrust.ofSi(134e3, 0.8, 2600)       // W, efficiency, N at rest
 *         .withSupercharger(PressureAltitude.ofFeet(12000));
 * engine.thrust(0.2, 90000, 281.65, EngineUse.climb(1))                 // 1593.…, N
 * engine.thrust(0.05, 90000, 281.65, EngineUse.climb(1))                // 2600.0, as at rest
 * }</pre>
 *
 * <p>The power goes by a power of the density over that of standard air at sea level. With a
 * supercharger the power is full up to an altitude, by the density of standard air there, and goes
 * by the density over that one above; there lies a bend, and another where the thrust at rest is
 * reached. A rating and bleed take their share of the power and of the thrust at rest alike.
 *
 * <p>Limits of use: the efficiency of a propeller does change with speed; the law is one of
 * textbooks, with the caller's figures. The flight manual has the performance.
 *
 * @source J. D. Anderson, Aircraft Performance and Design, chapters 3 and 5: power available of a
 *     propeller, power by density (chapters from memory); the limit at rest is common practice, no
 *     source
 */
public final class PropellerThrust implements ThrustLaw, Serializable {
    private static final long serialVersionUID = 1L;

    private static final ModelRange POWER =
            new ModelRange("shaft power", 100.0, 1e8, "W", "it is that of one engine at sea level");
    private static final ModelRange EFFICIENCY =
            new ModelRange("propeller efficiency", 0.1, 1.0, "", "it is some 0.8");
    private static final ModelRange STATIC =
            new ModelRange("thrust at rest", 1.0, 1e7, "N", "it is that of one engine");
    private static final ModelRange EXPONENT =
            new ModelRange("exponent of the density", 0.0, 2.0, "", "it is some 0.7 to 1.2");
    private static final ModelRange CRITICAL_ALTITUDE =
            new ModelRange("critical altitude", 0.0, 20000.0, "m", "no engine is full higher up");
    private static final ModelRange DENSITY_RATIO =
            new ModelRange("density ratio", 1e-6, 5.0, "", "no air that engines run in");
    private static final ModelRange MACH =
            new ModelRange("Mach number", 1e-9, 1.0, "", "the law is of propellers that move");

    private final double powerW;
    private final double efficiency;
    private final double staticThrustN;
    private final double densityExponent;
    private final boolean isSupercharged;
    private final double criticalDensityRatio;
    private final EngineSettings settings;

    private PropellerThrust(
            double powerW,
            double efficiency,
            double staticThrustN,
            double densityExponent,
            boolean isSupercharged,
            double criticalDensityRatio,
            EngineSettings settings) {
        this.powerW = POWER.check(powerW);
        this.efficiency = EFFICIENCY.check(efficiency);
        this.staticThrustN = STATIC.check(staticThrustN);
        this.densityExponent = EXPONENT.check(densityExponent);
        this.isSupercharged = isSupercharged;
        this.criticalDensityRatio = DENSITY_RATIO.check(criticalDensityRatio);
        this.settings = settings;
    }

    /**
     * Returns the thrust of an engine whose power goes by the density.
     *
     * @param powerW shaft power of one engine at sea level in standard air [W], 100 to 1e8
     * @param propellerEfficiency power of the thrust over that of the shaft, 0.1 to 1
     * @param staticThrustN the most thrust of one engine, as at rest [N], 1 to 1e7
     * @return the law
     * @throws OutsideModelException if a value is out of range
     */
    public static PropellerThrust ofSi(
            double powerW, double propellerEfficiency, double staticThrustN) {
        return new PropellerThrust(
                powerW, propellerEfficiency, staticThrustN, 1.0, false, 1.0, EngineSettings.FULL);
    }

    /**
     * Returns this law with power that goes by another power of the density.
     *
     * @param exponent the exponent, 0 to 2; 1 until another is given
     * @return a copy that differs in it
     * @throws OutsideModelException if it is out of range
     */
    public PropellerThrust withDensityExponent(double exponent) {
        return new PropellerThrust(
                powerW,
                efficiency,
                staticThrustN,
                exponent,
                isSupercharged,
                criticalDensityRatio,
                settings);
    }

    /**
     * Returns this law with full power up to an altitude.
     *
     * @param criticalAltitude up to where, in standard air, 0 to 20,000 m
     * @return a copy that differs in it
     * @throws OutsideModelException if it is out of range
     */
    public PropellerThrust withSupercharger(PressureAltitude criticalAltitude) {
        double ratio =
                StandardAir.densityRatioFromAltitude(
                        CRITICAL_ALTITUDE.check(criticalAltitude.inMetres()));
        return new PropellerThrust(
                powerW, efficiency, staticThrustN, densityExponent, true, ratio, settings);
    }

    private PropellerThrust with(EngineSettings other) {
        return new PropellerThrust(
                powerW,
                efficiency,
                staticThrustN,
                densityExponent,
                isSupercharged,
                criticalDensityRatio,
                other);
    }

    /**
     * Returns this law with another share of the power at a rating.
     *
     * @param rating the rating
     * @param share share of the power, 0.01 to 1.5; 1 for all ratings until another is given
     * @return a copy that differs in it
     * @throws OutsideModelException if the share is out of range
     */
    public PropellerThrust withRating(Rating rating, double share) {
        return with(settings.with(Objects.requireNonNull(rating, "rating"), share));
    }

    /**
     * Returns this law with power that is lost while ice protection is on.
     *
     * @param engineShare share lost for the engines, 0 to 0.45
     * @param airframeShare share lost for the airframe, 0 to 0.45; both add up
     * @return a copy that differs in it
     * @throws OutsideModelException if a share is out of range
     */
    public PropellerThrust withBleed(double engineShare, double airframeShare) {
        return with(settings.with(new BleedShares(engineShare, airframeShare)));
    }

    /**
     * Returns the thrust of all engines that run.
     *
     * @param mach Mach number, above 0, to 1
     * @param pressurePa static pressure [Pa]
     * @param temperatureK static air temperature [K]
     * @param use how the engines are used
     * @return thrust [N], above 0
     * @throws OutsideModelException if a value is out of range
     * @accuracy 1e-14 for the figures given
     * @source see the class comment
     */
    @Override
    public double thrust(double mach, double pressurePa, double temperatureK, EngineUse use) {
        double speed = MACH.check(mach) * DryAirKernel.speedOfSound(temperatureK);
        double moving = powerOfThrust(densityRatio(pressurePa, temperatureK)) / speed;
        return Math.min(moving, staticThrustN) * settings.share(use);
    }

    private static double densityRatio(double pressurePa, double temperatureK) {
        return DENSITY_RATIO.check(
                pressurePa / SEA_LEVEL_PRESSURE_PA * (SEA_LEVEL_TEMPERATURE_K / temperatureK));
    }

    /** Of one engine, unrated and without bleed. */
    private double powerOfThrust(double densityRatio) {
        double ratio = densityRatio / criticalDensityRatio;
        return efficiency
                * powerW
                * Powers.pow(isSupercharged ? Math.min(1.0, ratio) : ratio, densityExponent);
    }

    /** The true airspeed below which the thrust is as at rest. */
    double slowestAtFullPower(double pressurePa, double temperatureK) {
        return powerOfThrust(densityRatio(pressurePa, temperatureK)) / staticThrustN;
    }

    double efficiency() {
        return efficiency;
    }

    /**
     * Tells on which side of a bend a point lies; see {@link ThrustLaw#bend}.
     *
     * @param mach Mach number
     * @param pressurePa static pressure [Pa]
     * @param temperatureK static air temperature [K]
     * @return changes its sign where the thrust at rest is reached and, with a supercharger, where
     *     full power ends; above 0 at speed with full power
     * @throws OutsideModelException if the density is out of range
     */
    @Override
    public double bend(double mach, double pressurePa, double temperatureK) {
        double slowest = slowestAtFullPower(pressurePa, temperatureK);
        double faster = mach * DryAirKernel.speedOfSound(temperatureK) / slowest - 1.0;
        return isSupercharged
                ? faster * (densityRatio(pressurePa, temperatureK) / criticalDensityRatio - 1.0)
                : faster;
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof PropellerThrust that
                && Double.compare(powerW, that.powerW) == 0
                && Double.compare(efficiency, that.efficiency) == 0
                && Double.compare(staticThrustN, that.staticThrustN) == 0
                && Double.compare(densityExponent, that.densityExponent) == 0
                && isSupercharged == that.isSupercharged
                && Double.compare(criticalDensityRatio, that.criticalDensityRatio) == 0
                && settings.equals(that.settings);
    }

    @Override
    public int hashCode() {
        return Objects.hash(
                powerW,
                efficiency,
                staticThrustN,
                densityExponent,
                isSupercharged,
                criticalDensityRatio,
                settings);
    }

    /**
     * Returns the law for reading.
     *
     * @return a text; may change between versions
     */
    @Override
    public String toString() {
        return efficiency + " of " + powerW + " W, at most " + staticThrustN + " N";
    }

    private Object readResolve() {
        return new PropellerThrust(
                powerW,
                efficiency,
                staticThrustN,
                densityExponent,
                isSupercharged,
                criticalDensityRatio,
                settings);
    }
}
