package org.climbwright.performance;

import static org.climbwright.atmosphere.IcaoConstants.SEA_LEVEL_PRESSURE_PA;
import static org.climbwright.atmosphere.IcaoConstants.SEA_LEVEL_TEMPERATURE_K;

import java.io.Serializable;
import java.util.Objects;
import org.climbwright.atmosphere.StandardAir;
import org.climbwright.numeric.Powers;
import org.climbwright.quantity.ModelRange;
import org.climbwright.quantity.OutsideModelException;

/**
 * The thrust of jet engines: {@code T0 sigma^n (1 - k1 M + k2 M²)} of each that runs, times the
 * share of the rating and less bleed.
 *
 * <pre>{@code
 * JetThrust engine = JetThrust.ofSi(110e3, 0.7)              // N at rest at sea level, exponent
 *         .withMachLapse(0.6, 0.4)                           // 1 - 0.6 M + 0.4 M²
 *         .withFlatRating(15, 0.01)                          // to ISA+15, then 1 % per kelvin less
 *         .withRating(Rating.CLIMB, 0.9)
 *         .withBleed(0.02, 0.04);                            // engine, airframe
 * engine.thrust(0.5, 70000, 270, EngineUse.climb(2))         // 128444.…, N
 * }</pre>
 *
 * <p>Without a flat rating {@code sigma} is the density of the air over that of standard air at sea
 * level. With one it is the density of standard air at the pressure, so that up to a deviation from
 * standard the thrust does not change with temperature, and beyond it falls by a share for each
 * kelvin; there, and where standard air itself bends, at 11 and at 20 km, lies a bend.
 *
 * <p>Limits of use: a law of textbooks, fitted by whoever gives its figures. The thrust of a rating
 * stands in the flight manual or with the engine's maker.
 *
 * @source J. D. Anderson, Aircraft Performance and Design, example 5.11, with an exponent of 0.6; a
 *     quadratic in the Mach number and a linear fall beyond the flat rating are common practice, no
 *     source
 */
public final class JetThrust implements ThrustLaw, Serializable {
    private static final long serialVersionUID = 1L;

    private static final double TROPOPAUSE_PA = StandardAir.pressureFromAltitude(11000.0);
    private static final double ISOTHERMAL_TOP_PA = StandardAir.pressureFromAltitude(20000.0);
    private static final double HIGHEST_MACH = 2.0;

    /**
     * On a day as warm as the flat rating all levels lie at the bend: more than the rounding of a
     * temperature, so that they stay on its cold side.
     */
    private static final double BEND_ROUNDING_K = 1e-9;

    private static final ModelRange THRUST =
            new ModelRange("static thrust", 1.0, 1e7, "N", "it is that of one engine at sea level");
    private static final ModelRange EXPONENT =
            new ModelRange("exponent of the density", 0.0, 2.0, "", "it is some 0.6 to 1");
    private static final ModelRange MACH_LAPSE =
            new ModelRange(
                    "fall of thrust with Mach", -2.0, 4.0, "", "it is per Mach or its square");
    private static final ModelRange MACH =
            new ModelRange("Mach number", 0.0, HIGHEST_MACH, "", "the law is of subsonic inlets");
    private static final ModelRange DEVIATION =
            new ModelRange("flat rating", -50.0, 60.0, "K", "it is a deviation from standard");
    private static final ModelRange FALL =
            new ModelRange("fall of thrust", 0.0, 0.05, "per K", "it is a share, some 0.01");
    private static final ModelRange TEMPERATURE =
            new ModelRange("static air temperature", 100.0, 400.0, "K", "no air is outside");
    private static final ModelRange DENSITY_RATIO =
            new ModelRange("density ratio", 1e-6, 5.0, "", "no air that engines run in");

    private final double staticThrustN;
    private final double densityExponent;
    private final double perMach;
    private final double perMachSquare;
    private final boolean isFlatRated;
    private final double flatRatingK;
    private final double fallPerKelvin;
    private final EngineSettings settings;

    private JetThrust(
            double staticThrustN,
            double densityExponent,
            double perMach,
            double perMachSquare,
            boolean isFlatRated,
            double flatRatingK,
            double fallPerKelvin,
            EngineSettings settings) {
        this.staticThrustN = THRUST.check(staticThrustN);
        this.densityExponent = EXPONENT.check(densityExponent);
        this.perMach = MACH_LAPSE.check(perMach);
        this.perMachSquare = MACH_LAPSE.check(perMachSquare);
        this.isFlatRated = isFlatRated;
        this.flatRatingK = DEVIATION.check(flatRatingK);
        this.fallPerKelvin = FALL.check(fallPerKelvin);
        this.settings = settings;
        double least =
                perMachSquare > 0.0
                        ? Math.max(0.0, Math.min(HIGHEST_MACH, 0.5 * perMach / perMachSquare))
                        : HIGHEST_MACH;
        if (!(machLapse(least) > 0.0)) {
            throw new IllegalArgumentException(
                    "a jet engine must have thrust up to Mach "
                            + HIGHEST_MACH
                            + ", but with falls of "
                            + perMach
                            + " and "
                            + perMachSquare
                            + " it had none at Mach "
                            + least);
        }
    }

    /**
     * Returns the thrust of an engine that only the density changes.
     *
     * @param staticThrustN thrust of one engine at rest, at sea level in standard air [N], 1 to 1e7
     * @param densityExponent power of the density ratio that the thrust goes by, 0 to 2
     * @return the law
     * @throws OutsideModelException if a value is out of range
     */
    public static JetThrust ofSi(double staticThrustN, double densityExponent) {
        return new JetThrust(
                staticThrustN, densityExponent, 0.0, 0.0, false, 0.0, 0.0, EngineSettings.FULL);
    }

    /**
     * Returns this law with thrust that changes with the Mach number: {@code 1 - k1 M + k2 M²}.
     *
     * @param k1 fall per Mach, -2 to 4
     * @param k2 rise per square of it, -2 to 4
     * @return a copy that differs in it
     * @throws OutsideModelException if a value is out of range
     * @throws IllegalArgumentException if no thrust is left somewhere up to Mach 2
     */
    public JetThrust withMachLapse(double k1, double k2) {
        return new JetThrust(
                staticThrustN,
                densityExponent,
                k1,
                k2,
                isFlatRated,
                flatRatingK,
                fallPerKelvin,
                settings);
    }

    /**
     * Returns this law with thrust that does not fall with temperature up to a deviation.
     *
     * @param deviationK deviation from standard at the pressure, up to which it does not fall [K],
     *     -50 to 60
     * @param fallPerKelvin share of the thrust that it falls by for each kelvin beyond [1/K], 0 to
     *     0.05
     * @return a copy that differs in it
     * @throws OutsideModelException if a value is out of range
     */
    public JetThrust withFlatRating(double deviationK, double fallPerKelvin) {
        return new JetThrust(
                staticThrustN,
                densityExponent,
                perMach,
                perMachSquare,
                true,
                deviationK,
                fallPerKelvin,
                settings);
    }

    private JetThrust with(EngineSettings other) {
        return new JetThrust(
                staticThrustN,
                densityExponent,
                perMach,
                perMachSquare,
                isFlatRated,
                flatRatingK,
                fallPerKelvin,
                other);
    }

    /**
     * Returns this law with another share of the thrust at a rating.
     *
     * @param rating the rating
     * @param share share of the thrust, 0.01 to 1.5; 1 for all ratings until another is given
     * @return a copy that differs in it
     * @throws OutsideModelException if the share is out of range
     */
    public JetThrust withRating(Rating rating, double share) {
        return with(settings.with(Objects.requireNonNull(rating, "rating"), share));
    }

    /**
     * Returns this law with thrust that is lost while ice protection is on.
     *
     * @param engineShare share lost for the engines, 0 to 0.45
     * @param airframeShare share lost for the airframe, 0 to 0.45; both add up
     * @return a copy that differs in it
     * @throws OutsideModelException if a share is out of range
     */
    public JetThrust withBleed(double engineShare, double airframeShare) {
        return with(settings.with(new BleedShares(engineShare, airframeShare)));
    }

    /**
     * Returns the thrust of all engines that run.
     *
     * @param mach Mach number, 0 to 2
     * @param pressurePa static pressure [Pa]; with a flat rating, of standard air
     * @param temperatureK static air temperature [K], 100 to 400
     * @param use how the engines are used
     * @return net thrust [N], above 0
     * @throws OutsideModelException if a value is out of range, or it is so hot that no thrust is
     *     left
     * @accuracy 1e-14 for the figures given
     * @source see the class comment
     */
    @Override
    public double thrust(double mach, double pressurePa, double temperatureK, EngineUse use) {
        TEMPERATURE.check(temperatureK);
        double standardK =
                isFlatRated ? StandardAir.temperatureFromPressure(pressurePa) : temperatureK;
        double densityRatio =
                DENSITY_RATIO.check(
                        pressurePa / SEA_LEVEL_PRESSURE_PA * (SEA_LEVEL_TEMPERATURE_K / standardK));
        double one =
                staticThrustN
                        * Powers.pow(densityRatio, densityExponent)
                        * machLapse(MACH.check(mach));
        return one * heatLapse(temperatureK - standardK) * settings.share(use);
    }

    private double machLapse(double mach) {
        return Math.fma(mach, Math.fma(mach, perMachSquare, -perMach), 1.0);
    }

    private double heatLapse(double deviationK) {
        if (!(isFlatRated && deviationK > flatRatingK)) {
            return 1.0;
        }
        double left = 1.0 - fallPerKelvin * (deviationK - flatRatingK);
        if (!(left > 0.0)) {
            throw new OutsideModelException(
                    "deviation from standard",
                    deviationK,
                    -200.0,
                    flatRatingK + 1.0 / fallPerKelvin,
                    "K",
                    "an engine so hot has no thrust left");
        }
        return left;
    }

    /**
     * Tells on which side of a bend a point lies; see {@link ThrustLaw#bend}.
     *
     * @param mach Mach number
     * @param pressurePa static pressure [Pa]; with a flat rating, of standard air
     * @param temperatureK static air temperature [K]
     * @return kelvins to the end of the flat rating times what pressure lacks to 11 and 20 km of
     *     pressure altitude: above 0 where the flat rating holds below 11 km; changes its sign 1e-9
     *     K beyond its end, so that rounding makes no bends on a day as warm as that, and at 11 and
     *     20 km; 1 without a flat rating
     * @throws OutsideModelException if the pressure is out of range
     */
    @Override
    public double bend(double mach, double pressurePa, double temperatureK) {
        if (!isFlatRated) {
            return 1.0;
        }
        double deviationK = temperatureK - StandardAir.temperatureFromPressure(pressurePa);
        return (flatRatingK - deviationK + BEND_ROUNDING_K)
                * (pressurePa / TROPOPAUSE_PA - 1.0)
                * (pressurePa / ISOTHERMAL_TOP_PA - 1.0);
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof JetThrust that
                && Double.compare(staticThrustN, that.staticThrustN) == 0
                && Double.compare(densityExponent, that.densityExponent) == 0
                && Double.compare(perMach, that.perMach) == 0
                && Double.compare(perMachSquare, that.perMachSquare) == 0
                && isFlatRated == that.isFlatRated
                && Double.compare(flatRatingK, that.flatRatingK) == 0
                && Double.compare(fallPerKelvin, that.fallPerKelvin) == 0
                && settings.equals(that.settings);
    }

    @Override
    public int hashCode() {
        return Objects.hash(
                staticThrustN,
                densityExponent,
                perMach,
                perMachSquare,
                isFlatRated,
                flatRatingK,
                fallPerKelvin,
                settings);
    }

    /**
     * Returns the law for reading.
     *
     * @return a text; may change between versions
     */
    @Override
    public String toString() {
        return staticThrustN
                + " N sigma^"
                + densityExponent
                + " (1 - "
                + perMach
                + " M + "
                + perMachSquare
                + " M²)"
                + (isFlatRated ? ", flat-rated to ISA+" + flatRatingK + " K" : "");
    }

    private Object readResolve() {
        return new JetThrust(
                staticThrustN,
                densityExponent,
                perMach,
                perMachSquare,
                isFlatRated,
                flatRatingK,
                fallPerKelvin,
                settings);
    }
}
