package org.climbwright.airspeed;

import static org.climbwright.atmosphere.IcaoConstants.HEAT_CAPACITY_RATIO;
import static org.climbwright.atmosphere.IcaoConstants.SEA_LEVEL_PRESSURE_PA;
import static org.climbwright.atmosphere.IcaoConstants.SEA_LEVEL_SPEED_OF_SOUND_MPS;

import org.climbwright.atmosphere.DryAir;
import org.climbwright.quantity.ModelRange;
import org.climbwright.quantity.OutsideModelException;

/**
 * The airspeeds in SI doubles: Mach with pressure and temperature is the hub, five ways in and out.
 *
 * <p>From one speed to any other go through the Mach number: {@code tasFromMach(machFromCas(cas,
 * p), T)}. No allocation, no units.
 *
 * <p>Limits of use: subsonic and inviscid, in a perfect gas; what an instrument shows has the
 * errors of the instrument and its static source in it besides.
 *
 * @source isentropic flow of a perfect gas with a ratio of specific heats of 1.4, as in NACA Report
 *     1135, equations 43 and 44; calibrated airspeed as the speed with the same impact pressure at
 *     sea level in standard air, NASA RP-1046, section on airspeed (definition from memory)
 */
public final class AirspeedConversion {
    private static final String SUBSONIC_ONLY =
            "the relations here are subsonic, beyond Mach 1 a shock stands before the pitot tube";

    private static final ModelRange MACH =
            new ModelRange("Mach number", 0.0, 1.0, "", SUBSONIC_ONLY);

    private static final ModelRange PRESSURE =
            new ModelRange("static pressure", 0.1, 1e6, "Pa", "no aeroplane flies outside");

    /** Total temperature needs no pitot tube: it holds until the gas is no longer perfect. */
    private static final ModelRange MACH_OF_TEMPERATURE =
            new ModelRange("Mach number", 0.0, 5.0, "", "air is hardly a perfect gas beyond");

    private static final String NO_CROSSOVER =
            "near rest there is no crossover, and beyond Mach 1 the relations do not hold";

    private static final ModelRange CROSSOVER_CAS =
            new ModelRange(
                    "calibrated airspeed of a crossover",
                    1.0,
                    SEA_LEVEL_SPEED_OF_SOUND_MPS,
                    "m/s",
                    NO_CROSSOVER);

    private static final ModelRange CROSSOVER_MACH =
            new ModelRange("Mach number of a crossover", 0.01, 1.0, "", NO_CROSSOVER);

    private static final ModelRange TEMPERATURE =
            new ModelRange(
                    "static air temperature",
                    100.0,
                    400.0,
                    "K",
                    "no air of the atmosphere is outside");

    private static final ModelRange RECOVERY =
            new ModelRange("recovery factor", 0.0, 1.0, "", "a probe recovers no more than all");

    /** Impact pressure over static pressure at Mach 1, 0.893. */
    private static final double SONIC_IMPACT = impactRatio(1.0);

    /** Mach 1 may come back from an impact pressure or a calibrated airspeed some ulps beyond 1. */
    private static final double ROUNDING = 1.0 + 1e-15;

    private AirspeedConversion() {}

    /**
     * Tells whether the relations take a Mach number.
     *
     * @param mach Mach number
     * @return true from 0 to 1
     */
    public static boolean coversMach(double mach) {
        return MACH.covers(mach);
    }

    /**
     * Tells whether the relations take a static pressure.
     *
     * @param pressurePa static pressure [Pa]
     * @return true from 0.1 to 1e6 Pa
     */
    public static boolean coversPressure(double pressurePa) {
        return PRESSURE.covers(pressurePa);
    }

    /**
     * Tells whether the relations take a calibrated airspeed at a pressure.
     *
     * @param casMps calibrated airspeed [m/s]
     * @param pressurePa static pressure [Pa]
     * @return true from 0 to the calibrated airspeed of Mach 1 there, or that of Mach 1 at sea
     *     level where it is less
     */
    public static boolean coversCas(double casMps, double pressurePa) {
        return PRESSURE.covers(pressurePa)
                && casMps >= 0.0
                && casMps <= SEA_LEVEL_SPEED_OF_SOUND_MPS
                && SEA_LEVEL_PRESSURE_PA * impactRatio(casMps / SEA_LEVEL_SPEED_OF_SOUND_MPS)
                        <= pressurePa * (SONIC_IMPACT * ROUNDING);
    }

    /**
     * Tells whether the relations take an equivalent airspeed at a pressure.
     *
     * @param easMps equivalent airspeed [m/s]
     * @param pressurePa static pressure [Pa]
     * @return true from 0 to that of Mach 1
     */
    public static boolean coversEas(double easMps, double pressurePa) {
        return PRESSURE.covers(pressurePa)
                && easMps >= 0.0
                && easMps <= easAtMachOne(pressurePa) * ROUNDING;
    }

    /**
     * Tells whether the relations take a true airspeed at a temperature.
     *
     * @param tasMps true airspeed [m/s]
     * @param temperatureK static air temperature [K]
     * @return true from 0 to the speed of sound
     */
    public static boolean coversTas(double tasMps, double temperatureK) {
        return DryAir.coversTemperature(temperatureK)
                && tasMps >= 0.0
                && tasMps <= DryAir.speedOfSound(temperatureK) * ROUNDING;
    }

    /**
     * Tells whether a Mach number at a pressure has a calibrated airspeed here.
     *
     * @param mach Mach number
     * @param pressurePa static pressure [Pa]
     * @return true from 0 to 1, but below the sea only as far as the calibrated airspeed is
     *     subsonic
     */
    public static boolean hasCas(double mach, double pressurePa) {
        return MACH.covers(mach)
                && PRESSURE.covers(pressurePa)
                && coversImpactPressure(pressurePa * impactRatio(mach), SEA_LEVEL_PRESSURE_PA);
    }

    /**
     * Tells whether the relations take an impact pressure at a static pressure.
     *
     * @param impactPressurePa impact pressure [Pa]
     * @param pressurePa static pressure [Pa]
     * @return true from 0 to that of Mach 1, 0.893 of the static pressure
     */
    public static boolean coversImpactPressure(double impactPressurePa, double pressurePa) {
        return PRESSURE.covers(pressurePa)
                && impactPressurePa >= 0.0
                && impactPressurePa <= pressurePa * (SONIC_IMPACT * ROUNDING);
    }

    /**
     * Returns the Mach number of a calibrated airspeed at a pressure.
     *
     * @param casMps calibrated airspeed [m/s], from 0 to that of Mach 1 at the pressure
     * @param pressurePa static pressure [Pa], 0.1 to 1e6
     * @return Mach number, 0 to 1
     * @throws OutsideModelException if the speed or the pressure is outside its range
     * @accuracy 1e-15 relative against 50-digit arithmetic, also near 0
     * @source see the class comment
     */
    public static double machFromCas(double casMps, double pressurePa) {
        PRESSURE.check(pressurePa);
        if (!coversCas(casMps, pressurePa)) {
            throw new OutsideModelException(
                    "calibrated airspeed",
                    casMps,
                    0.0,
                    highestCas(pressurePa),
                    "m/s",
                    SUBSONIC_ONLY);
        }
        return machOfImpactRatio(impactPressureFromCas(casMps) / pressurePa);
    }

    /**
     * Returns the Mach number of an equivalent airspeed at a pressure: {@code M = EAS / (a0 sqrt(p
     * / p0))}.
     *
     * @param easMps equivalent airspeed [m/s], 0 or more
     * @param pressurePa static pressure [Pa], 0.1 to 1e6
     * @return Mach number, 0 to 1
     * @throws OutsideModelException if the Mach number would be outside 0 to 1
     * @accuracy 3 ulp
     * @source EAS = TAS sqrt(rho / rho0), see the class comment
     */
    public static double machFromEas(double easMps, double pressurePa) {
        double machOne = easAtMachOne(pressurePa);
        if (!coversEas(easMps, pressurePa)) {
            throw new OutsideModelException(
                    "equivalent airspeed", easMps, 0.0, machOne, "m/s", SUBSONIC_ONLY);
        }
        return Math.min(1.0, easMps / machOne);
    }

    /**
     * Returns the Mach number of a true airspeed at a temperature: {@code M = TAS / a}.
     *
     * @param tasMps true airspeed [m/s], 0 or more
     * @param temperatureK static air temperature [K], 100 to 400
     * @return Mach number, 0 to 1
     * @throws OutsideModelException if the temperature is out of range, or the Mach number would be
     * @accuracy 3 ulp
     * @source see the class comment
     */
    public static double machFromTas(double tasMps, double temperatureK) {
        double machOne = DryAir.speedOfSound(temperatureK);
        if (!coversTas(tasMps, temperatureK)) {
            throw new OutsideModelException(
                    "true airspeed", tasMps, 0.0, machOne, "m/s", SUBSONIC_ONLY);
        }
        return Math.min(1.0, tasMps / machOne);
    }

    /**
     * Returns the Mach number of an impact pressure: {@code M² = 5 ((qc / p + 1)^(2/7) - 1)}.
     *
     * @param impactPressurePa impact pressure [Pa], from 0 to 0.893 of the static pressure
     * @param pressurePa static pressure [Pa], 0.1 to 1e6
     * @return Mach number, 0 to 1
     * @throws OutsideModelException if the impact pressure is outside that range
     * @accuracy 1e-15 relative against 50-digit arithmetic, also near 0
     * @source see the class comment
     */
    public static double machFromImpactPressure(double impactPressurePa, double pressurePa) {
        PRESSURE.check(pressurePa);
        if (!coversImpactPressure(impactPressurePa, pressurePa)) {
            throw new OutsideModelException(
                    "impact pressure",
                    impactPressurePa,
                    0.0,
                    SONIC_IMPACT * pressurePa,
                    "Pa",
                    SUBSONIC_ONLY);
        }
        return machOfImpactRatio(impactPressurePa / pressurePa);
    }

    /**
     * Returns the calibrated airspeed of a Mach number at a pressure.
     *
     * @param mach Mach number, 0 to 1, and no more than gives Mach 1 at sea level
     * @param pressurePa static pressure [Pa], 0.1 to 1e6
     * @return calibrated airspeed [m/s]
     * @throws OutsideModelException if the Mach number is out of range, or below the sea the result
     * @accuracy 1e-15 relative against 50-digit arithmetic, also near 0
     * @source see the class comment
     */
    public static double casFromMach(double mach, double pressurePa) {
        return casFromImpactPressure(impactPressureFromMach(mach, pressurePa));
    }

    /**
     * Returns the equivalent airspeed of a Mach number at a pressure: {@code EAS = M a0 sqrt(p /
     * p0)}.
     *
     * @param mach Mach number, 0 to 1
     * @param pressurePa static pressure [Pa], 0.1 to 1e6
     * @return equivalent airspeed [m/s]
     * @throws OutsideModelException if Mach number or pressure is out of range
     * @accuracy 3 ulp
     * @source see the class comment
     */
    public static double easFromMach(double mach, double pressurePa) {
        return MACH.check(mach) * easAtMachOne(pressurePa);
    }

    /**
     * Returns the true airspeed of a Mach number at a temperature: {@code TAS = M a}.
     *
     * @param mach Mach number, 0 to 1
     * @param temperatureK static air temperature [K], 100 to 400
     * @return true airspeed [m/s]
     * @throws OutsideModelException if a value is out of range
     * @accuracy 3 ulp
     * @source see the class comment
     */
    public static double tasFromMach(double mach, double temperatureK) {
        return MACH.check(mach) * DryAir.speedOfSound(temperatureK);
    }

    /**
     * Returns the impact pressure of a Mach number: {@code qc = p ((1 + M² / 5)^(7/2) - 1)}.
     *
     * @param mach Mach number, 0 to 1
     * @param pressurePa static pressure [Pa], 0.1 to 1e6
     * @return impact pressure [Pa]
     * @throws OutsideModelException if Mach number or pressure is out of range
     * @accuracy 1e-15 relative against 50-digit arithmetic, also near 0
     * @source see the class comment
     */
    public static double impactPressureFromMach(double mach, double pressurePa) {
        return PRESSURE.check(pressurePa) * impactRatio(MACH.check(mach));
    }

    /**
     * Returns the impact pressure of a calibrated airspeed, which is the same at every level.
     *
     * @param casMps calibrated airspeed [m/s], 0 to 340.294
     * @return impact pressure [Pa]
     * @throws OutsideModelException if the speed is outside that range
     * @accuracy 1e-15 relative against 50-digit arithmetic, also near 0
     * @source see the class comment
     */
    public static double impactPressureFromCas(double casMps) {
        if (!coversCas(casMps, SEA_LEVEL_PRESSURE_PA)) {
            throw new OutsideModelException(
                    "calibrated airspeed",
                    casMps,
                    0.0,
                    SEA_LEVEL_SPEED_OF_SOUND_MPS,
                    "m/s",
                    SUBSONIC_ONLY);
        }
        return SEA_LEVEL_PRESSURE_PA * impactRatio(casMps / SEA_LEVEL_SPEED_OF_SOUND_MPS);
    }

    /**
     * Returns the calibrated airspeed of an impact pressure, which is the same at every level.
     *
     * @param impactPressurePa impact pressure [Pa], 0 to 90476
     * @return calibrated airspeed [m/s]
     * @throws OutsideModelException if the impact pressure is outside that range
     * @accuracy 1e-15 relative against 50-digit arithmetic, also near 0
     * @source see the class comment
     */
    public static double casFromImpactPressure(double impactPressurePa) {
        return SEA_LEVEL_SPEED_OF_SOUND_MPS
                * machFromImpactPressure(impactPressurePa, SEA_LEVEL_PRESSURE_PA);
    }

    /**
     * Returns the dynamic pressure of a Mach number: {@code q = 0.7 p M²}.
     *
     * @param mach Mach number, 0 to 1
     * @param pressurePa static pressure [Pa], 0.1 to 1e6
     * @return dynamic pressure [Pa], less than the impact pressure
     * @throws OutsideModelException if Mach number or pressure is out of range
     * @accuracy 3 ulp
     * @source half the density times the true airspeed squared, see the class comment
     */
    public static double dynamicPressureFromMach(double mach, double pressurePa) {
        return 0.5 * HEAT_CAPACITY_RATIO * PRESSURE.check(pressurePa) * MACH.check(mach) * mach;
    }

    /**
     * Returns the total pressure of a Mach number: static pressure plus impact pressure.
     *
     * @param mach Mach number, 0 to 1
     * @param pressurePa static pressure [Pa], 0.1 to 1e6
     * @return total pressure [Pa]
     * @throws OutsideModelException if Mach number or pressure is out of range
     * @accuracy 1e-15 relative against 50-digit arithmetic
     * @source see the class comment
     */
    public static double totalPressureFromMach(double mach, double pressurePa) {
        return pressurePa + impactPressureFromMach(mach, pressurePa);
    }

    /**
     * Returns the temperature that a probe feels: {@code T (1 + r M² / 5)}.
     *
     * @param mach Mach number, 0 to 5
     * @param temperatureK static air temperature [K], 100 to 400
     * @param recoveryFactor share of the full rise that the probe feels, 0 to 1; 1 is total air
     *     temperature
     * @return the temperature felt [K]
     * @throws OutsideModelException if a value is out of range
     * @accuracy 3 ulp; for dry air of constant specific heat
     * @source adiabatic flow of a perfect gas, see the class comment
     */
    public static double totalTemperatureFromMach(
            double mach, double temperatureK, double recoveryFactor) {
        MACH_OF_TEMPERATURE.check(mach);
        RECOVERY.check(recoveryFactor);
        TEMPERATURE.check(temperatureK);
        return temperatureK
                * (1.0 + 0.5 * (HEAT_CAPACITY_RATIO - 1.0) * recoveryFactor * mach * mach);
    }

    /**
     * Returns the pressure at which a calibrated airspeed and a Mach number are the same speed.
     *
     * <p>Temperature has no part in it: the crossover stands at the same pressure altitude on every
     * day.
     *
     * @param casMps calibrated airspeed [m/s], 1 to 340.294
     * @param mach Mach number, 0.01 to 1
     * @return static pressure [Pa]
     * @throws OutsideModelException if a value is out of range
     * @accuracy 1e-15 relative
     * @source impact pressure of both set equal, see the class comment
     */
    public static double crossoverPressure(double casMps, double mach) {
        return impactPressureFromCas(CROSSOVER_CAS.check(casMps))
                / impactRatio(CROSSOVER_MACH.check(mach));
    }

    private static double easAtMachOne(double pressurePa) {
        return SEA_LEVEL_SPEED_OF_SOUND_MPS
                * StrictMath.sqrt(PRESSURE.check(pressurePa) / SEA_LEVEL_PRESSURE_PA);
    }

    private static double highestCas(double pressurePa) {
        double ratio = SONIC_IMPACT * Math.min(1.0, pressurePa / SEA_LEVEL_PRESSURE_PA);
        return SEA_LEVEL_SPEED_OF_SOUND_MPS * machOfImpactRatio(ratio);
    }

    /** (1 + x)^(7/2) - 1 with x = M²/5, expanded so that nothing cancels when x is small. */
    private static double impactRatio(double mach) {
        double x = 0.2 * mach * mach;
        double root = StrictMath.sqrt(1.0 + x);
        return x * (3.0 + x * (3.0 + x)) * root + x / (1.0 + root);
    }

    /** The Mach number with an impact ratio; expm1 and log1p, so that nothing cancels near 0. */
    private static double machOfImpactRatio(double ratio) {
        double square = 5.0 * StrictMath.expm1(2.0 / 7.0 * StrictMath.log1p(ratio));
        // Rounding could end an ulp beyond the closed range that the door has checked.
        return Math.min(1.0, StrictMath.sqrt(square));
    }
}
