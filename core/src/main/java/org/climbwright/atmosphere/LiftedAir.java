package org.climbwright.atmosphere;

import static org.climbwright.atmosphere.IcaoConstants.GAS_CONSTANT_J_PER_KG_K;
import static org.climbwright.atmosphere.IcaoConstants.GRAVITY_MPS2;
import static org.climbwright.atmosphere.IcaoConstants.HEAT_CAPACITY_RATIO;

import java.util.function.DoubleUnaryOperator;
import org.climbwright.numeric.BracketingSolver;
import org.climbwright.quantity.ModelRange;
import org.climbwright.quantity.OutsideModelException;
import org.climbwright.unit.UnitScale;

/**
 * Air that is lifted without mixing until it becomes saturated, in SI doubles: temperature,
 * pressure and height of its lifting condensation level.
 *
 * <p>On the way the mixing ratio stays and the temperature follows the adiabat of the moist air;
 * the level is where both meet saturation over liquid water. In the trade it stands for the base of
 * cumulus. For the typed way use {@link LiftingCondensationLevel}.
 *
 * <p>A search behind each function allocates some 40 bytes a call.
 *
 * <p>Limits of use: real parcels mix, and the layer below a cloud need not be well mixed; layered
 * cloud has nothing to do with this level.
 *
 * @source dry adiabat of a perfect gas, {@code T / T0 = (p / p0)^κ}; D. M. Romps, Exact expression
 *     for the lifting condensation level, J. Atmos. Sci. 74 (2017) 3891-3900, solves the same
 *     equations in closed form for a saturation formula of his own. Heat capacity of water vapour
 *     1860 J/(kg·K), from memory
 */
public final class LiftedAir {
    static final double DRY_HEAT_CAPACITY_J_PER_KG_K =
            GAS_CONSTANT_J_PER_KG_K * HEAT_CAPACITY_RATIO / (HEAT_CAPACITY_RATIO - 1.0);

    static final double VAPOUR_HEAT_CAPACITY_J_PER_KG_K = 1860.0;

    private static final SaturationFormula FORMULA = SaturationFormula.MURPHY_KOOP;

    private static final ModelRange HUMIDITY =
            new ModelRange(
                    "relative humidity of lifted air",
                    1e-9,
                    1.0 + 1e-7, // what rounding may make of exactly saturated air
                    "",
                    "dry air has no condensation level, and saturated air is at it");

    private static final ModelRange TEMPERATURE =
            new ModelRange(
                    "temperature or dew point", 123.0, 332.0, "K", "the rule is for surface air");

    private LiftedAir() {}

    /**
     * Tells whether air is neither too dry, nor too warm or cold, nor more than saturated.
     *
     * @param temperatureK static air temperature before [K]
     * @param vapourPressurePa vapour pressure before [Pa]
     * @return true for 123 to 332 K and a relative humidity from 1e-9 to 1; air drier than some
     *     1e-4 in cold air may still condense only below 123 K, and is refused then
     */
    public static boolean covers(double temperatureK, double vapourPressurePa) {
        return FORMULA.coversWater(temperatureK)
                && HUMIDITY.covers(vapourPressurePa / FORMULA.overWater(temperatureK));
    }

    /**
     * Returns the temperature at which lifted air becomes saturated.
     *
     * @param temperatureK static air temperature before [K], 123 to 332
     * @param vapourPressurePa vapour pressure before [Pa], above 0, at most that of saturation
     * @param pressurePa static pressure before [Pa]
     * @return temperature at the level [K], not above the temperature before
     * @throws OutsideModelException if a value is out of range, or the air so dry that the level is
     *     colder than 123 K
     * @accuracy 1e-10 K of the equations; 0.04 K from the usual short formulas in the air of an
     *     aerodrome
     * @source see the class comment
     */
    public static double condensationTemperature(
            double temperatureK, double vapourPressurePa, double pressurePa) {
        double mixingRatio = MoistAir.mixingRatio(vapourPressurePa, pressurePa);
        HUMIDITY.check(MoistAir.relativeHumidity(vapourPressurePa, temperatureK));
        return condensationTemperature(
                temperatureK,
                vapourPressurePa,
                exponent(mixingRatio),
                FORMULA::overWater,
                FORMULA.coldestOverWater());
    }

    /**
     * The same for any exponent κ of the adiabat and any saturation formula, searched from its
     * coldest temperature up; so that tests can meet figures that were made with others.
     */
    static double condensationTemperature(
            double temperatureK,
            double vapourPressurePa,
            double exponent,
            DoubleUnaryOperator saturation,
            double coldestK) {
        DoubleUnaryOperator excess =
                t ->
                        StrictMath.log(saturation.applyAsDouble(t) / vapourPressurePa)
                                - StrictMath.log(t / temperatureK) / exponent;
        if (excess.applyAsDouble(temperatureK) <= 0.0) {
            return temperatureK; // saturated already, but for rounding
        }
        if (excess.applyAsDouble(coldestK) > 0.0) {
            throw new OutsideModelException(
                    "vapour pressure of lifted air",
                    vapourPressurePa,
                    vapourPressurePa * StrictMath.exp(excess.applyAsDouble(coldestK)),
                    saturation.applyAsDouble(temperatureK),
                    "Pa",
                    "drier air condenses only where the saturation formula ends");
        }
        return BracketingSolver.solve(excess, coldestK, temperatureK, 1e-11);
    }

    /**
     * Returns the pressure at which lifted air becomes saturated.
     *
     * @param temperatureK static air temperature before [K], 123 to 332
     * @param vapourPressurePa vapour pressure before [Pa], above 0, at most that of saturation
     * @param pressurePa static pressure before [Pa]
     * @return pressure at the level [Pa], not above the pressure before
     * @throws OutsideModelException as {@link #condensationTemperature(double, double, double)}
     * @accuracy 1e-12 relative of the equations
     * @source see the class comment
     */
    public static double condensationPressure(
            double temperatureK, double vapourPressurePa, double pressurePa) {
        double condensationK = condensationTemperature(temperatureK, vapourPressurePa, pressurePa);
        double exponent = exponent(MoistAir.mixingRatio(vapourPressurePa, pressurePa));
        return pressurePa * StrictMath.pow(condensationK / temperatureK, 1.0 / exponent);
    }

    /**
     * Tells whether {@link #unsaturatedTemperature} takes these.
     *
     * @param vapourPressurePa vapour pressure before [Pa]
     * @param pressurePa static pressure before [Pa]
     * @param liftedToPa static pressure where the temperature is asked for [Pa]
     * @return true for pressures from 1e-3 to 1e6 Pa, the first above the vapour pressure
     */
    public static boolean coversUnsaturated(
            double vapourPressurePa, double pressurePa, double liftedToPa) {
        return MoistAir.coversVapour(vapourPressurePa, pressurePa)
                && MoistAir.coversVapour(0.0, liftedToPa);
    }

    /**
     * Returns the temperature of lifted air before it becomes saturated: {@code T (p / p0)^κ} with
     * the κ of moist air.
     *
     * @param temperatureK static air temperature before [K]
     * @param vapourPressurePa vapour pressure before [Pa], 0 or more, less than the pressure
     * @param pressurePa static pressure before [Pa]
     * @param liftedToPa static pressure where it is asked for [Pa], above 0
     * @return temperature there [K]; true of air that is not saturated before it gets there
     * @throws OutsideModelException if a vapour pressure or a pressure cannot be
     * @accuracy 2e-15 relative of the equation
     * @source see the class comment
     */
    public static double unsaturatedTemperature(
            double temperatureK, double vapourPressurePa, double pressurePa, double liftedToPa) {
        double mixingRatio = MoistAir.mixingRatio(vapourPressurePa, pressurePa);
        MoistAir.mixingRatio(0.0, liftedToPa); // asked for its check of the pressure
        return temperatureK * StrictMath.pow(liftedToPa / pressurePa, exponent(mixingRatio));
    }

    /**
     * Returns how far air must be lifted to become saturated, in air as well mixed as itself:
     * {@code cp (T - TL) / g}.
     *
     * @param temperatureK static air temperature before [K], 123 to 332
     * @param vapourPressurePa vapour pressure before [Pa], above 0, at most that of saturation
     * @param pressurePa static pressure before [Pa]
     * @return geopotential height above the place before [m], 0 or more
     * @throws OutsideModelException as {@link #condensationTemperature(double, double, double)}
     * @accuracy 1e-8 m of the equations; in air that is not well mixed ask the atmosphere for the
     *     altitude of {@link #condensationPressure} instead
     * @source see the class comment
     */
    public static double heightToCondensation(
            double temperatureK, double vapourPressurePa, double pressurePa) {
        double condensationK = condensationTemperature(temperatureK, vapourPressurePa, pressurePa);
        double mixingRatio = MoistAir.mixingRatio(vapourPressurePa, pressurePa);
        return heatCapacity(mixingRatio) / GRAVITY_MPS2 * (temperatureK - condensationK);
    }

    /**
     * Returns the height of the condensation level by the rule of 400 ft per degree of spread.
     *
     * @param temperatureK static air temperature [K], 123 to 332
     * @param dewPointK dew point over liquid water [K], 123 to 332
     * @return height above the place [m], negative if the dew point is above the temperature
     * @throws OutsideModelException if a value is out of range
     * @accuracy from 10 % below {@link #heightToCondensation}, in warm moist air, to 2 % above it,
     *     from -5 to 35 °C, for spreads up to 25 K
     * @source US Federal Aviation Administration, Pilot's Handbook of Aeronautical Knowledge,
     *     FAA-H-8083-25B, page 12-13: spread over 2.5 °C per 1,000 ft (seen as quoted elsewhere)
     */
    public static double heightByRule(double temperatureK, double dewPointK) {
        return UnitScale.FOOT.toSi(400.0)
                * (TEMPERATURE.check(temperatureK) - TEMPERATURE.check(dewPointK));
    }

    /** Gas constant over heat capacity of air that has so much vapour per dry air. */
    private static double exponent(double mixingRatio) {
        double moistGasConstant =
                GAS_CONSTANT_J_PER_KG_K * (1.0 + mixingRatio / MoistAir.MOLAR_MASS_RATIO);
        return moistGasConstant / (1.0 + mixingRatio) / heatCapacity(mixingRatio);
    }

    private static double heatCapacity(double mixingRatio) {
        return (DRY_HEAT_CAPACITY_J_PER_KG_K + mixingRatio * VAPOUR_HEAT_CAPACITY_J_PER_KG_K)
                / (1.0 + mixingRatio);
    }
}
