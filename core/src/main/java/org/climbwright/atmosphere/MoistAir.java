package org.climbwright.atmosphere;

import org.climbwright.numeric.BracketingSolver;
import org.climbwright.quantity.ModelRange;
import org.climbwright.quantity.OutsideModelException;

/**
 * Water vapour in air, over liquid water also where that is supercooled, in SI doubles.
 *
 * @source D. M. Murphy and T. Koop, Review of the vapour pressures of ice and supercooled water for
 *     atmospheric applications, Q. J. R. Meteorol. Soc. 131 (2005) 1539-1565, equation 10
 *     (coefficients seen in a public constants file of a cloud-physics package)
 */
public final class MoistAir {
    /** Molar mass of water over that of dry air, as weather services round it. */
    private static final double MOLAR_MASS_RATIO = 0.622;

    private static final ModelRange TEMPERATURE =
            new ModelRange(
                    "temperature of saturated air",
                    123.0,
                    332.0,
                    "K",
                    "the saturation formula over water was fitted there");

    private static final ModelRange VAPOUR_PRESSURE =
            new ModelRange(
                    "vapour pressure",
                    saturationVapourPressure(TEMPERATURE.lowest()),
                    saturationVapourPressure(TEMPERATURE.highest()),
                    "Pa",
                    "its dew point must be from 123 to 332 K");

    private static final ModelRange NOT_NEGATIVE =
            new ModelRange("vapour pressure", 0.0, 1e6, "Pa", "no air holds more, none holds less");

    private MoistAir() {}

    /**
     * Tells whether the saturation formula takes a temperature.
     *
     * @param temperatureK temperature or dew point [K]
     * @return true from 123 to 332 K
     */
    public static boolean coversTemperature(double temperatureK) {
        return TEMPERATURE.covers(temperatureK);
    }

    /**
     * Tells whether a vapour pressure has a dew point here.
     *
     * @param vapourPressurePa vapour pressure [Pa]
     * @return true for dew points from 123 to 332 K
     */
    public static boolean coversVapourPressure(double vapourPressurePa) {
        return VAPOUR_PRESSURE.covers(vapourPressurePa);
    }

    /**
     * Returns the vapour pressure at which air is saturated over liquid water, supercooled or not.
     *
     * @param temperatureK temperature; the dew point for the vapour pressure there is [K], 123 to
     *     332
     * @return saturation vapour pressure [Pa], rising with temperature
     * @throws org.climbwright.quantity.OutsideModelException if the temperature is out of range
     * @accuracy 0.05 % of measurements above 0 °C by its authors; 1 to 5 % at -70 °C, where
     *     supercooled water is hardly measured
     * @source see the class comment
     */
    public static double saturationVapourPressure(double temperatureK) {
        double t = TEMPERATURE.check(temperatureK);
        double logarithm = StrictMath.log(t);
        return StrictMath.exp(
                54.842763
                        - 6763.22 / t
                        - 4.210 * logarithm
                        + 0.000367 * t
                        + StrictMath.tanh(0.0415 * (t - 218.8))
                                * (53.878 - 1331.22 / t - 9.44523 * logarithm + 0.014025 * t));
    }

    /**
     * Returns the dew point of air with a vapour pressure: the inverse of {@link
     * #saturationVapourPressure}.
     *
     * @param vapourPressurePa vapour pressure [Pa], above that at 123 K and up to that at 332 K
     * @return dew point over liquid water [K]
     * @throws org.climbwright.quantity.OutsideModelException if no dew point of 123 to 332 K has it
     * @accuracy 1e-9 K against {@link #saturationVapourPressure}
     * @source see the class comment; solved for the temperature by a bracket
     */
    public static double dewPoint(double vapourPressurePa) {
        VAPOUR_PRESSURE.check(vapourPressurePa);
        // In the logarithm the function is nearly straight, and the solver needs few steps.
        double wanted = StrictMath.log(vapourPressurePa);
        return BracketingSolver.solve(
                t -> StrictMath.log(saturationVapourPressure(t)) - wanted,
                TEMPERATURE.lowest(),
                TEMPERATURE.highest(),
                1e-10);
    }

    /**
     * Returns the temperature at which dry air would be as dense: {@code Tv = T / (1 - 0.378 e /
     * p)}.
     *
     * @param temperatureK static air temperature [K], above 0
     * @param vapourPressurePa vapour pressure [Pa], 0 for dry air, less than the pressure
     * @param pressurePa static pressure [Pa], above the vapour pressure
     * @return virtual temperature [K], never below the temperature
     * @throws OutsideModelException if a value cannot be
     * @accuracy 3 ulp of the formula; the rounded ratio 0.622 is 3e-5 from the exact one
     * @source WMO-No. 8, Guide to Instruments and Methods of Observation, annex on humidity
     *     (formula from memory, same as in the reference computations it is tested against)
     */
    public static double virtualTemperature(
            double temperatureK, double vapourPressurePa, double pressurePa) {
        if (!(vapourPressurePa >= 0.0 && vapourPressurePa < pressurePa && temperatureK > 0.0)) {
            throw new OutsideModelException(
                    "vapour pressure",
                    vapourPressurePa,
                    0.0,
                    pressurePa,
                    "Pa",
                    "moist air is warmer than 0 K and never vapour alone");
        }
        return temperatureK / (1.0 - (1.0 - MOLAR_MASS_RATIO) * vapourPressurePa / pressurePa);
    }

    /**
     * Returns the relative humidity over liquid water, also below 0 °C.
     *
     * @param vapourPressurePa vapour pressure [Pa], 0 or more
     * @param temperatureK static air temperature [K], 123 to 332
     * @return vapour pressure over saturation vapour pressure, 1 when saturated
     * @throws org.climbwright.quantity.OutsideModelException if the temperature is out of range
     * @accuracy that of {@link #saturationVapourPressure}; over ice the figure is larger, 1.5 times
     *     at -40 °C
     * @source see the class comment
     */
    public static double relativeHumidity(double vapourPressurePa, double temperatureK) {
        return NOT_NEGATIVE.check(vapourPressurePa) / saturationVapourPressure(temperatureK);
    }
}
