package org.climbwright.icing.accretion;

import static org.climbwright.atmosphere.IcaoConstants.GAS_CONSTANT_J_PER_KG_K;

import org.climbwright.airspeed.AirspeedConversion;
import org.climbwright.airspeed.TotalTemperature;
import org.climbwright.atmosphere.SaturationFormula;
import org.climbwright.numeric.BracketingSolver;
import org.climbwright.quantity.ModelRange;
import org.climbwright.quantity.OutsideModelException;

/**
 * How warm speed makes a surface in dry air and in cloud, in SI doubles.
 *
 * <p>In cloud a wet surface warms less, since water evaporates from it. That temperature, the wet
 * datum, is where a surface would be that neither freezes nor is heated; it is <em>not</em> the
 * temperature of a surface on which ice grows, see {@link HeatBalance}.
 *
 * <p>Limits of use: subsonic, in a cloud of saturated air; the recovery factor of a surface depends
 * on its flow.
 *
 * @source J. K. Hardy, NACA ARR 5G13 (1945); FAA Technical Report ADS-4 (1964), section 2.5
 */
public final class KineticHeating {
    /** Specific heat of air at constant pressure [J/(kg·K)]: 3.5 times the gas constant. */
    static final double SPECIFIC_HEAT_J_PER_KG_K = 3.5 * GAS_CONSTANT_J_PER_KG_K;

    /** Latent heat of evaporation of water at 0 °C [J/kg]; from memory, as the trade has it. */
    static final double EVAPORATION_J_PER_KG = 2.501e6;

    /** Molar mass of water over that of dry air. */
    static final double MASS_RATIO = 0.622;

    /** Prandtl number of air; common practice, no source. */
    private static final double PRANDTL = 0.71;

    /**
     * Recovery factor of a laminar boundary layer, the square root of the Prandtl number: 0.843.
     */
    public static final double LAMINAR_RECOVERY = Math.sqrt(PRANDTL);

    /**
     * Recovery factor of a turbulent boundary layer, the cube root of the Prandtl number: 0.892.
     */
    public static final double TURBULENT_RECOVERY = StrictMath.cbrt(PRANDTL);

    private static final ModelRange CLOUD =
            new ModelRange(
                    "static air temperature of a cloud", 223.15, 313.15, "K", "no drop is outside");

    static final ModelRange PRESSURE =
            new ModelRange("static pressure", 1e4, 1.2e5, "Pa", "no cloud of drops is outside");

    static final ModelRange SPEED =
            new ModelRange(
                    "true airspeed",
                    0.0,
                    310.0,
                    "m/s",
                    "the examples in print end there, below Mach 1");

    static final ModelRange RECOVERY =
            new ModelRange("recovery factor", 0.0, 1.0, "", "a surface recovers no more than all");

    private static final ModelRange VELOCITY_RATIO =
            new ModelRange("velocity ratio", 0.0, 1.5, "", "the flow is to be subsonic");

    /** How narrow the wet temperature is bracketed [K]. */
    private static final double TOLERANCE_K = 1e-11;

    private KineticHeating() {}

    /**
     * Returns the temperature of a dry surface: {@code T + r V² / (2 cp)}.
     *
     * @param temperatureK static air temperature [K], 100 to 400
     * @param tasMps true airspeed [m/s], up to Mach 5
     * @param recoveryFactor share of the full rise, 0 to 1; 1 at a stagnation point
     * @return recovery temperature [K]
     * @throws OutsideModelException if a value is out of range
     * @accuracy 1e-15 of it, twice
     * @source {@link TotalTemperature}
     */
    public static double dryTemperature(double temperatureK, double tasMps, double recoveryFactor) {
        double mach = AirspeedConversion.machFromTas(tasMps, temperatureK);
        return TotalTemperature.fromMach(mach, temperatureK, recoveryFactor);
    }

    /**
     * Returns the recovery factor at a point where the air outside the boundary layer is not as
     * fast as the free stream: {@code 1 - (1 - r) (U/V)²}.
     *
     * @param velocityRatio local velocity over true airspeed, 0 at a stagnation point, to 1.5
     * @param boundaryLayerRecovery recovery factor of the boundary layer, 0 to 1
     * @return share of the full rise of the free stream
     * @throws OutsideModelException if a value is out of range, or the result would be
     * @accuracy 3 ulp
     * @source FAA Technical Report ADS-4 (1964), section 2.5.1
     */
    public static double localRecovery(double velocityRatio, double boundaryLayerRecovery) {
        double ratio = VELOCITY_RATIO.check(velocityRatio);
        return RECOVERY.check(1.0 - (1.0 - RECOVERY.check(boundaryLayerRecovery)) * ratio * ratio);
    }

    /**
     * Tells whether there is a wet temperature.
     *
     * @param temperatureK static air temperature [K]
     * @param tasMps true airspeed [m/s]
     * @param pressurePa static pressure [Pa]
     * @param recoveryFactor share of the full rise
     * @return true if {@link #wetTemperature} answers
     */
    public static boolean coversWet(
            double temperatureK, double tasMps, double pressurePa, double recoveryFactor) {
        return CLOUD.covers(temperatureK)
                && SPEED.covers(tasMps)
                && PRESSURE.covers(pressurePa)
                && RECOVERY.covers(recoveryFactor);
    }

    /**
     * Returns the temperature of a wet surface in cloud, the wet datum: the solution of {@code Ts =
     * T + r V² / (2 cp) - 0.622 L (es(Ts) - es(T)) / (cp p)}, the vapour saturated over water.
     *
     * @param temperatureK static air temperature [K], 223.15 to 313.15
     * @param tasMps true airspeed [m/s], 0 to 310
     * @param pressurePa static pressure [Pa], 1e4 to 1.2e5
     * @param recoveryFactor share of the full rise, 0 to 1; see {@link #localRecovery}
     * @return wet temperature [K], between the static and the dry one
     * @throws OutsideModelException if a value is out of range
     * @accuracy 2e-11 K of the equation; within 0.3 K of the examples of its sources
     * @source see the class comment; vapour pressure {@link SaturationFormula#MURPHY_KOOP}
     */
    public static double wetTemperature(
            double temperatureK, double tasMps, double pressurePa, double recoveryFactor) {
        CLOUD.check(temperatureK);
        SPEED.check(tasMps);
        PRESSURE.check(pressurePa);
        double dryK = dryTemperature(temperatureK, tasMps, recoveryFactor);
        double cooling = cooling(pressurePa);
        double inCloud = SaturationFormula.MURPHY_KOOP.overWater(temperatureK);
        return BracketingSolver.solve(
                ts -> ts - dryK + cooling * (SaturationFormula.MURPHY_KOOP.overWater(ts) - inCloud),
                temperatureK,
                dryK,
                TOLERANCE_K);
    }

    /** How much each pascal of vapour pressure cools a wet surface [K/Pa]. */
    static double cooling(double pressurePa) {
        return MASS_RATIO * EVAPORATION_J_PER_KG / (SPECIFIC_HEAT_J_PER_KG_K * pressurePa);
    }
}
