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
 * <p>Beyond Mach 1 a shock stands before the pitot tube: impact pressure and calibrated airspeed
 * take it in without a seam, and true airspeed, equivalent airspeed, dynamic pressure and total
 * temperature need not know of it. All end at Mach 5, and calibrated airspeed where that is Mach 5
 * at sea level, 1701.47 m/s: there total air is far above 1000 K and hardly a perfect gas.
 *
 * <p>Limits of use: inviscid, in a perfect gas, and beyond Mach 1 a tube that meets the shock head
 * on; what an instrument shows has the errors of the instrument and its static source in it
 * besides.
 *
 * @source isentropic flow of a perfect gas with a ratio of specific heats of 1.4, as in NACA Report
 *     1135, equations 43 and 44, behind a normal shock equation 100 (number from memory);
 *     calibrated airspeed as the speed with the same impact pressure at sea level in standard air,
 *     NASA RP-1046, section on airspeed (definition from memory)
 */
public final class AirspeedConversion {
    static final double HIGHEST_MACH = 5.0;

    private static final String PERFECT_GAS = "air is hardly a perfect gas beyond Mach 5";

    static final ModelRange MACH =
            new ModelRange(
                    "Mach number", 0.0, HIGHEST_MACH, "", "air is hardly a perfect gas beyond");

    private static final ModelRange PRESSURE =
            new ModelRange("static pressure", 0.1, 1e6, "Pa", "no aeroplane flies outside");

    private static final double HIGHEST_CAS_MPS = HIGHEST_MACH * SEA_LEVEL_SPEED_OF_SOUND_MPS;

    static final ModelRange CAS =
            new ModelRange("calibrated airspeed", 0.0, HIGHEST_CAS_MPS, "m/s", PERFECT_GAS);

    private static final String NO_CROSSOVER =
            "near rest there is no crossover, and beyond Mach 5 the relations do not hold";

    private static final ModelRange CROSSOVER_CAS =
            new ModelRange(
                    "calibrated airspeed of a crossover",
                    1.0,
                    HIGHEST_CAS_MPS,
                    "m/s",
                    NO_CROSSOVER);

    private static final ModelRange CROSSOVER_MACH =
            new ModelRange("Mach number of a crossover", 0.01, HIGHEST_MACH, "", NO_CROSSOVER);

    /** Impact pressure over static pressure at Mach 5, 31.65. */
    private static final double HIGHEST_IMPACT = PitotTube.impactRatio(HIGHEST_MACH * HIGHEST_MACH);

    /** Mach 5 may come back from an impact pressure or a calibrated airspeed some ulps beyond 5. */
    private static final double ROUNDING = 1.0 + 1e-15;

    private AirspeedConversion() {}

    /**
     * Tells whether the relations take a Mach number.
     *
     * @param mach Mach number
     * @return true from 0 to 5
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
     * @return true from 0 to the calibrated airspeed of Mach 5 there, or that of Mach 5 at sea
     *     level where it is less
     */
    public static boolean coversCas(double casMps, double pressurePa) {
        return PRESSURE.covers(pressurePa)
                && CAS.covers(casMps)
                && coversRatio(impactRatioOfCas(casMps, pressurePa));
    }

    /**
     * Tells whether the relations take an equivalent airspeed at a pressure.
     *
     * @param easMps equivalent airspeed [m/s]
     * @param pressurePa static pressure [Pa]
     * @return true from 0 to that of Mach 5
     */
    public static boolean coversEas(double easMps, double pressurePa) {
        return PRESSURE.covers(pressurePa)
                && easMps >= 0.0
                && easMps <= HIGHEST_MACH * easAtMachOne(pressurePa) * ROUNDING;
    }

    /**
     * Tells whether the relations take a true airspeed at a temperature.
     *
     * @param tasMps true airspeed [m/s]
     * @param temperatureK static air temperature [K]
     * @return true from 0 to five times the speed of sound
     */
    public static boolean coversTas(double tasMps, double temperatureK) {
        return DryAir.coversTemperature(temperatureK)
                && tasMps >= 0.0
                && tasMps <= HIGHEST_MACH * DryAir.speedOfSound(temperatureK) * ROUNDING;
    }

    /**
     * Tells whether a Mach number at a pressure has a calibrated airspeed here.
     *
     * @param mach Mach number
     * @param pressurePa static pressure [Pa]
     * @return true from 0 to 5, but below the sea only as far as the calibrated airspeed is no more
     *     than that of Mach 5 at sea level
     */
    public static boolean hasCas(double mach, double pressurePa) {
        return MACH.covers(mach)
                && PRESSURE.covers(pressurePa)
                && coversRatio(seaLevelImpactRatioOfMach(mach, pressurePa));
    }

    /**
     * Tells whether the relations take an impact pressure at a static pressure.
     *
     * @param impactPressurePa impact pressure [Pa]
     * @param pressurePa static pressure [Pa]
     * @return true from 0 to that of Mach 5, 31.65 times the static pressure
     */
    public static boolean coversImpactPressure(double impactPressurePa, double pressurePa) {
        return PRESSURE.covers(pressurePa)
                && impactPressurePa >= 0.0
                && coversRatio(impactPressurePa / pressurePa);
    }

    /**
     * Tells whether a calibrated airspeed and a Mach number have a crossover here.
     *
     * @param casMps calibrated airspeed [m/s]
     * @param mach Mach number
     * @return true from 1 to 1701.47 m/s and from Mach 0.01 to 5
     */
    public static boolean hasCrossover(double casMps, double mach) {
        return CROSSOVER_CAS.covers(casMps) && CROSSOVER_MACH.covers(mach);
    }

    /**
     * Returns the Mach number of a calibrated airspeed at a pressure.
     *
     * @param casMps calibrated airspeed [m/s], from 0 to that of Mach 5 at the pressure
     * @param pressurePa static pressure [Pa], 0.1 to 1e6
     * @return Mach number, 0 to 5
     * @throws OutsideModelException if the speed or the pressure is outside its range
     * @accuracy 1e-15 relative against 50-digit arithmetic, also near 0
     * @source see the class comment
     */
    public static double machFromCas(double casMps, double pressurePa) {
        PRESSURE.check(pressurePa);
        double ratio = CAS.covers(casMps) ? impactRatioOfCas(casMps, pressurePa) : Double.NaN;
        if (!coversRatio(ratio)) {
            throw new OutsideModelException(
                    "calibrated airspeed", casMps, 0.0, highestCas(pressurePa), "m/s", PERFECT_GAS);
        }
        return machOfRatio(ratio);
    }

    /**
     * Returns the Mach number of an equivalent airspeed at a pressure: {@code M = EAS / (a0 sqrt(p
     * / p0))}.
     *
     * @param easMps equivalent airspeed [m/s], 0 or more
     * @param pressurePa static pressure [Pa], 0.1 to 1e6
     * @return Mach number, 0 to 5
     * @throws OutsideModelException if the Mach number would be outside 0 to 5
     * @accuracy 3 ulp
     * @source EAS = TAS sqrt(rho / rho0), see the class comment
     */
    public static double machFromEas(double easMps, double pressurePa) {
        double machOne = easAtMachOne(pressurePa);
        if (!coversEas(easMps, pressurePa)) {
            throw new OutsideModelException(
                    "equivalent airspeed", easMps, 0.0, HIGHEST_MACH * machOne, "m/s", PERFECT_GAS);
        }
        return Math.min(HIGHEST_MACH, easMps / machOne);
    }

    /**
     * Returns the Mach number of a true airspeed at a temperature: {@code M = TAS / a}.
     *
     * @param tasMps true airspeed [m/s], 0 or more
     * @param temperatureK static air temperature [K], 100 to 400
     * @return Mach number, 0 to 5
     * @throws OutsideModelException if the temperature is out of range, or the Mach number would be
     * @accuracy 3 ulp
     * @source see the class comment
     */
    public static double machFromTas(double tasMps, double temperatureK) {
        double machOne = DryAir.speedOfSound(temperatureK);
        if (!coversTas(tasMps, temperatureK)) {
            throw new OutsideModelException(
                    "true airspeed", tasMps, 0.0, HIGHEST_MACH * machOne, "m/s", PERFECT_GAS);
        }
        return Math.min(HIGHEST_MACH, tasMps / machOne);
    }

    /**
     * Returns the Mach number of an impact pressure: {@code M² = 5 ((qc / p + 1)^(2/7) - 1)} up to
     * Mach 1; beyond, the inverse of Rayleigh's formula.
     *
     * @param impactPressurePa impact pressure [Pa], from 0 to 31.65 times the static pressure
     * @param pressurePa static pressure [Pa], 0.1 to 1e6
     * @return Mach number, 0 to 5
     * @throws OutsideModelException if the impact pressure is outside that range
     * @accuracy 1e-15 relative against 50-digit arithmetic, also near 0
     * @source see the class comment
     */
    public static double machFromImpactPressure(double impactPressurePa, double pressurePa) {
        PRESSURE.check(pressurePa);
        if (!coversImpactPressure(impactPressurePa, pressurePa)) {
            throw noImpactPressure(impactPressurePa, pressurePa);
        }
        return machOfRatio(impactPressurePa / pressurePa);
    }

    /**
     * Returns the calibrated airspeed of a Mach number at a pressure.
     *
     * @param mach Mach number, 0 to 5, and no more than gives Mach 5 at sea level
     * @param pressurePa static pressure [Pa], 0.1 to 1e6
     * @return calibrated airspeed [m/s]
     * @throws OutsideModelException if the Mach number is out of range, or below the sea the result
     * @accuracy 1e-15 relative against 50-digit arithmetic, also near 0
     * @source see the class comment
     */
    public static double casFromMach(double mach, double pressurePa) {
        PRESSURE.check(pressurePa);
        double ratio = seaLevelImpactRatioOfMach(MACH.check(mach), pressurePa);
        if (!coversRatio(ratio)) {
            throw noImpactPressure(SEA_LEVEL_PRESSURE_PA * ratio, SEA_LEVEL_PRESSURE_PA);
        }
        return SEA_LEVEL_SPEED_OF_SOUND_MPS * machOfRatio(ratio);
    }

    /**
     * Returns the equivalent airspeed of a Mach number at a pressure: {@code EAS = M a0 sqrt(p /
     * p0)}.
     *
     * @param mach Mach number, 0 to 5
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
     * @param mach Mach number, 0 to 5
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
     * Returns the impact pressure of a Mach number: {@code qc = p ((1 + M² / 5)^(7/2) - 1)} up to
     * Mach 1, {@code qc = p (1.2^(7/2) 6^(5/2) M^7 / (7 M² - 1)^(5/2) - 1)} beyond.
     *
     * @param mach Mach number, 0 to 5
     * @param pressurePa static pressure [Pa], 0.1 to 1e6
     * @return impact pressure [Pa]
     * @throws OutsideModelException if Mach number or pressure is out of range
     * @accuracy 1e-15 relative against 50-digit arithmetic, also near 0
     * @source see the class comment
     */
    public static double impactPressureFromMach(double mach, double pressurePa) {
        return PRESSURE.check(pressurePa) * PitotTube.impactRatio(MACH.check(mach) * mach);
    }

    /**
     * Returns the impact pressure of a calibrated airspeed, which is the same at every level.
     *
     * @param casMps calibrated airspeed [m/s], 0 to 1701.47
     * @return impact pressure [Pa]
     * @throws OutsideModelException if the speed is outside that range
     * @accuracy 1e-15 relative against 50-digit arithmetic, also near 0
     * @source see the class comment
     */
    public static double impactPressureFromCas(double casMps) {
        return SEA_LEVEL_PRESSURE_PA * impactRatioOfCas(CAS.check(casMps));
    }

    /**
     * Returns the calibrated airspeed of an impact pressure, which is the same at every level.
     *
     * @param impactPressurePa impact pressure [Pa], 0 to 3207288
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
     * @param mach Mach number, 0 to 5
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
     * Returns the total pressure that a pitot tube measures: static pressure plus impact pressure.
     *
     * <p>Beyond Mach 1 that is the one behind the shock, less than the total pressure of the air.
     *
     * @param mach Mach number, 0 to 5
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
     * Returns what equivalent airspeed is less calibrated airspeed, both of a Mach number: the
     * compressibility correction.
     *
     * @param mach Mach number, 0 to 5, and no more than gives Mach 5 at sea level
     * @param pressurePa static pressure [Pa], 0.1 to 1e6
     * @return the correction [m/s]; below zero above the 1013.25 hPa level, above zero below it
     * @throws OutsideModelException if {@link #hasCas} denies it
     * @accuracy 1.5e-15 of the calibrated airspeed
     * @source see the class comment
     */
    public static double compressibilityCorrectionFromMach(double mach, double pressurePa) {
        return easFromMach(mach, pressurePa) - casFromMach(mach, pressurePa);
    }

    /**
     * Returns equivalent airspeed over calibrated airspeed, both of a Mach number: the
     * compressibility factor.
     *
     * @param mach Mach number, 0 to 5, and no more than gives Mach 5 at sea level
     * @param pressurePa static pressure [Pa], 0.1 to 1e6
     * @return the factor; 1 at rest, and less above the 1013.25 hPa level
     * @throws OutsideModelException if {@link #hasCas} denies it
     * @accuracy 1.5e-15 relative
     * @source see the class comment
     */
    public static double compressibilityFactorFromMach(double mach, double pressurePa) {
        double cas = casFromMach(mach, pressurePa);
        return cas == 0.0 ? 1.0 : easFromMach(mach, pressurePa) / cas;
    }

    /**
     * Returns the pressure at which a calibrated airspeed and a Mach number are the same speed.
     *
     * <p>Temperature has no part in it: the crossover stands at the same pressure altitude on every
     * day.
     *
     * @param casMps calibrated airspeed [m/s], 1 to 1701.47
     * @param mach Mach number, 0.01 to 5
     * @return static pressure [Pa]
     * @throws OutsideModelException if a value is out of range
     * @accuracy 1.5e-15 relative against 50-digit arithmetic
     * @source impact pressure of both set equal, see the class comment
     */
    public static double crossoverPressure(double casMps, double mach) {
        return impactPressureFromCas(CROSSOVER_CAS.check(casMps))
                / PitotTube.impactRatio(CROSSOVER_MACH.check(mach) * mach);
    }

    private static double impactRatioOfCas(double casMps) {
        return PitotTube.impactRatio(casMps * casMps * PitotPolynomials.INVERSE_SOUND_SQUARE);
    }

    /** Impact pressure over the static pressure at a level; the division waits for nothing. */
    private static double impactRatioOfCas(double casMps, double pressurePa) {
        return impactRatioOfCas(casMps) * (SEA_LEVEL_PRESSURE_PA / pressurePa);
    }

    /** The same below the speed of sound at sea level. */
    static double impactRatioOfSubsonicCas(double casMps, double pressurePa) {
        double square = casMps * casMps * PitotPolynomials.INVERSE_SOUND_SQUARE;
        return PitotTube.subsonic(square) * (SEA_LEVEL_PRESSURE_PA / pressurePa);
    }

    /** Impact pressure over the static pressure at sea level. */
    private static double seaLevelImpactRatioOfMach(double mach, double pressurePa) {
        return PitotTube.impactRatio(mach * mach) * (pressurePa / SEA_LEVEL_PRESSURE_PA);
    }

    /** The same up to Mach 1. */
    static double seaLevelImpactRatioOfSubsonicMach(double mach, double pressurePa) {
        return PitotTube.subsonic(mach * mach) * (pressurePa / SEA_LEVEL_PRESSURE_PA);
    }

    private static double easAtMachOne(double pressurePa) {
        return machOneEas(PRESSURE.check(pressurePa));
    }

    /** The equivalent airspeed of Mach 1. */
    static double machOneEas(double pressurePa) {
        return Math.sqrt(PitotPolynomials.SQUARE_PER_PASCAL * pressurePa);
    }

    private static OutsideModelException noImpactPressure(
            double impactPressurePa, double pressurePa) {
        return new OutsideModelException(
                "impact pressure",
                impactPressurePa,
                0.0,
                HIGHEST_IMPACT * pressurePa,
                "Pa",
                PERFECT_GAS);
    }

    private static double highestCas(double pressurePa) {
        double ratio = HIGHEST_IMPACT * Math.min(1.0, pressurePa / SEA_LEVEL_PRESSURE_PA);
        return SEA_LEVEL_SPEED_OF_SOUND_MPS * machOfRatio(ratio);
    }

    /** The first question is asked because {@link PitotTube} asks it too. */
    private static boolean coversRatio(double impactRatio) {
        return impactRatio <= PitotTube.SONIC || impactRatio <= HIGHEST_IMPACT * ROUNDING;
    }

    /** Rounding could end an ulp beyond the closed range that the door has checked. */
    private static double machOfRatio(double impactRatio) {
        if (impactRatio <= PitotTube.SONIC) {
            return Math.sqrt(PitotTube.subsonicSquare(impactRatio));
        }
        return Math.min(HIGHEST_MACH, Math.sqrt(PitotTube.supersonicSquare(impactRatio)));
    }
}
