package org.climbwright.atmosphere;

import static org.climbwright.atmosphere.IcaoConstants.GAS_CONSTANT_J_PER_KG_K;

import org.climbwright.quantity.ModelRange;
import org.climbwright.quantity.OutsideModelException;

/**
 * Water vapour in air, in SI doubles: vapour pressure at the centre, and from it to dew point,
 * frost point, relative humidity, mixing ratio, virtual temperature and density, and back.
 *
 * <p>Saturation is that of {@link SaturationFormula#MURPHY_KOOP}, over liquid water also where that
 * is supercooled, unless a name says ice.
 *
 * <pre>{@code
 * double vapourPa = MoistAir.saturationVapourPressure(293.15);   // of a dew point of 20 °C
 * MoistAir.relativeHumidity(vapourPa, 303.15)                    // 0.5508…
 * MoistAir.mixingRatio(vapourPa, 100000.0)                       // 0.01489…, kg per kg of dry air
 * }</pre>
 *
 * @source perfect gases that share a temperature; gas constant of water vapour 461.523 J/(kg·K),
 *     from the molar gas constant of CODATA 2018 and the molar mass 18.01528 g/mol (from memory)
 */
public final class MoistAir {
    /** Gas constant of water vapour [J/(kg·K)]. */
    private static final double VAPOUR_GAS_CONSTANT_J_PER_KG_K = 461.523;

    /** Molar mass of water over that of dry air, 0.62197; handbooks round it to 0.622. */
    static final double MOLAR_MASS_RATIO = GAS_CONSTANT_J_PER_KG_K / VAPOUR_GAS_CONSTANT_J_PER_KG_K;

    private static final SaturationFormula REFERENCE = SaturationFormula.MURPHY_KOOP;

    /** Vapour pressure at the triple point of water [Pa]: ice is never warmer. */
    static final double TRIPLE_POINT_PRESSURE_PA = REFERENCE.overIce(273.16);

    private static final ModelRange NOT_NEGATIVE =
            new ModelRange("vapour pressure", 0.0, 1e6, "Pa", "no air holds more, none holds less");

    private static final ModelRange PRESSURE =
            new ModelRange(
                    "static pressure", 1e-3, 1e6, "Pa", "no air of the atmosphere is outside");

    private static final ModelRange TEMPERATURE =
            new ModelRange(
                    "static air temperature", 1.0, 1e3, "K", "no air of the atmosphere is outside");

    private static final ModelRange RATIO =
            new ModelRange(
                    "relative humidity", 0.0, 1.0, "", "a ratio: dry air has 0, saturated air 1");

    private static final ModelRange MIXING_RATIO =
            new ModelRange("mixing ratio", 0.0, 1e3, "kg/kg", "air is never vapour alone");

    private MoistAir() {}

    /**
     * Tells whether the saturation formula over water takes a temperature.
     *
     * @param temperatureK temperature or dew point [K]
     * @return true from 123 to 332 K
     */
    public static boolean coversWater(double temperatureK) {
        return REFERENCE.coversWater(temperatureK);
    }

    /**
     * Tells whether the saturation formula over ice takes a temperature.
     *
     * @param temperatureK temperature or frost point [K]
     * @return true from 110 to 273.16 K
     */
    public static boolean coversIce(double temperatureK) {
        return REFERENCE.coversIce(temperatureK);
    }

    /**
     * Tells whether a vapour pressure has a dew point here.
     *
     * @param vapourPressurePa vapour pressure [Pa]
     * @return true for dew points from 123 to 332 K
     */
    public static boolean coversDewPoint(double vapourPressurePa) {
        return REFERENCE.coversDewPoint(vapourPressurePa);
    }

    /**
     * Tells whether a vapour pressure has a frost point here.
     *
     * @param vapourPressurePa vapour pressure [Pa]
     * @return true for frost points from 110 to 273.16 K
     */
    public static boolean coversFrostPoint(double vapourPressurePa) {
        return REFERENCE.coversFrostPoint(vapourPressurePa);
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
     * @source {@link SaturationFormula#MURPHY_KOOP}
     */
    public static double saturationVapourPressure(double temperatureK) {
        return REFERENCE.overWater(temperatureK);
    }

    /**
     * Returns the vapour pressure at which air is saturated over ice.
     *
     * @param temperatureK temperature; the frost point for the vapour pressure there is [K], 110 to
     *     273.16
     * @return saturation vapour pressure [Pa]: below that over water, by 1e-4 of it at 0 °C, until
     *     the two meet at the triple point, 0.01 °C, to 5e-8
     * @throws org.climbwright.quantity.OutsideModelException if the temperature is out of range
     * @accuracy 6e-4 relative down to -80 °C against the release IAPWS R14-08
     * @source {@link SaturationFormula#MURPHY_KOOP}
     */
    public static double saturationVapourPressureOverIce(double temperatureK) {
        return REFERENCE.overIce(temperatureK);
    }

    /**
     * Returns the dew point of air with a vapour pressure: the inverse of {@link
     * #saturationVapourPressure}.
     *
     * @param vapourPressurePa vapour pressure [Pa], above that at 123 K and up to that at 332 K
     * @return dew point over liquid water [K]
     * @throws org.climbwright.quantity.OutsideModelException if no dew point of 123 to 332 K has it
     * @accuracy 1e-12 K against {@link #saturationVapourPressure}
     * @source {@link SaturationFormula#dewPoint}
     */
    public static double dewPoint(double vapourPressurePa) {
        return REFERENCE.dewPoint(vapourPressurePa);
    }

    /**
     * Returns the frost point of air with a vapour pressure: the inverse of {@link
     * #saturationVapourPressureOverIce}.
     *
     * @param vapourPressurePa vapour pressure [Pa], from that at 110 K to that at 273.16 K
     * @return frost point [K], at -40 °C some 3.5 K above the dew point
     * @throws org.climbwright.quantity.OutsideModelException if no frost point of 110 to 273.16 K
     *     has it
     * @accuracy 1e-12 K against {@link #saturationVapourPressureOverIce}
     * @source {@link SaturationFormula#frostPoint}
     */
    public static double frostPoint(double vapourPressurePa) {
        return REFERENCE.frostPoint(vapourPressurePa);
    }

    /**
     * Returns the relative humidity over liquid water, also below 0 °C.
     *
     * @param vapourPressurePa vapour pressure [Pa], 0 or more
     * @param temperatureK static air temperature [K], 123 to 332
     * @return vapour pressure over saturation vapour pressure, 1 when saturated
     * @throws org.climbwright.quantity.OutsideModelException if a value is out of range
     * @accuracy that of {@link #saturationVapourPressure}; over ice the figure is larger, 1.5 times
     *     at -40 °C
     * @source see the class comment
     */
    public static double relativeHumidity(double vapourPressurePa, double temperatureK) {
        return NOT_NEGATIVE.check(vapourPressurePa) / saturationVapourPressure(temperatureK);
    }

    /**
     * Returns the vapour pressure of a relative humidity: the inverse of {@link #relativeHumidity}.
     *
     * @param relativeHumidity over liquid water, a ratio from 0 to 1
     * @param temperatureK static air temperature [K], 123 to 332
     * @return vapour pressure [Pa]
     * @throws org.climbwright.quantity.OutsideModelException if a value is out of range
     * @accuracy that of {@link #saturationVapourPressure}
     * @source see the class comment
     */
    public static double vapourPressureFromRelativeHumidity(
            double relativeHumidity, double temperatureK) {
        return RATIO.check(relativeHumidity) * saturationVapourPressure(temperatureK);
    }

    /**
     * Returns the mass of vapour per mass of dry air: {@code r = 0.62197 e / (p - e)}.
     *
     * @param vapourPressurePa vapour pressure [Pa], 0 or more, less than the pressure
     * @param pressurePa static pressure [Pa]
     * @return mixing ratio [kg/kg]
     * @throws OutsideModelException if a value cannot be
     * @accuracy 3 ulp; 5e-5 from a ratio taken with the rounded 0.622
     * @source see the class comment
     */
    public static double mixingRatio(double vapourPressurePa, double pressurePa) {
        checkVapour(vapourPressurePa, pressurePa);
        return MOLAR_MASS_RATIO * vapourPressurePa / (pressurePa - vapourPressurePa);
    }

    /**
     * Returns the vapour pressure of a mixing ratio: the inverse of {@link #mixingRatio}.
     *
     * @param mixingRatio mass of vapour per mass of dry air [kg/kg], 0 to 1000
     * @param pressurePa static pressure [Pa], above 0
     * @return vapour pressure [Pa], less than the pressure
     * @throws OutsideModelException if a value cannot be
     * @accuracy 3 ulp
     * @source see the class comment
     */
    public static double vapourPressureFromMixingRatio(double mixingRatio, double pressurePa) {
        checkVapour(0.0, pressurePa);
        return MIXING_RATIO.check(mixingRatio) * pressurePa / (MOLAR_MASS_RATIO + mixingRatio);
    }

    /**
     * Returns the temperature at which dry air would be as dense: {@code Tv = T / (1 - 0.37803 e /
     * p)}.
     *
     * @param temperatureK static air temperature [K], 1 to 1000
     * @param vapourPressurePa vapour pressure [Pa], 0 for dry air, less than the pressure
     * @param pressurePa static pressure [Pa], above the vapour pressure
     * @return virtual temperature [K], never below the temperature
     * @throws OutsideModelException if a value cannot be
     * @accuracy 3 ulp; 2e-6 from the formula with the rounded 0.378 in the moistest air
     * @source see the class comment
     */
    public static double virtualTemperature(
            double temperatureK, double vapourPressurePa, double pressurePa) {
        checkVapour(vapourPressurePa, pressurePa);
        TEMPERATURE.check(temperatureK);
        return temperatureK / (1.0 - (1.0 - MOLAR_MASS_RATIO) * vapourPressurePa / pressurePa);
    }

    /**
     * Returns the density of moist air: that of dry air at the virtual temperature.
     *
     * @param pressurePa static pressure [Pa], above the vapour pressure, at most 1e6
     * @param temperatureK static air temperature [K], 100 to 400, virtual temperature too
     * @param vapourPressurePa vapour pressure [Pa], 0 for dry air, less than the pressure
     * @return density [kg/m³], less than that of dry air of the same pressure and temperature
     * @throws OutsideModelException if a value is out of range
     * @accuracy 5 ulp
     * @source {@link DryAir#density} and {@link #virtualTemperature}
     */
    public static double density(double pressurePa, double temperatureK, double vapourPressurePa) {
        return DryAir.density(
                pressurePa, virtualTemperature(temperatureK, vapourPressurePa, pressurePa));
    }

    static boolean coversVapour(double vapourPressurePa, double pressurePa) {
        return PRESSURE.covers(pressurePa)
                && vapourPressurePa >= 0.0
                && vapourPressurePa < pressurePa;
    }

    private static void checkVapour(double vapourPressurePa, double pressurePa) {
        PRESSURE.check(pressurePa);
        if (!coversVapour(vapourPressurePa, pressurePa)) {
            throw new OutsideModelException(
                    "vapour pressure",
                    vapourPressurePa,
                    0.0,
                    pressurePa,
                    "Pa",
                    "moist air is never vapour alone");
        }
    }
}
