package org.climbwright.airspeed;

import static org.climbwright.airspeed.AirspeedConversion.HIGHEST_MACH;
import static org.climbwright.airspeed.AirspeedConversion.MACH;
import static org.climbwright.atmosphere.IcaoConstants.GAS_CONSTANT_J_PER_KG_K;

import org.climbwright.quantity.ModelRange;
import org.climbwright.quantity.OutsideModelException;

/**
 * Static, total and recovery temperature in SI doubles: what a probe feels, and the air behind it.
 *
 * <p>A probe feels the static temperature and a share of the full rise, its recovery factor; with a
 * factor of 1 it feels total air temperature. A shock before the probe changes nothing: it takes no
 * energy out of the air.
 *
 * <p>Limits of use: adiabatic, in dry air that is a perfect gas. Cloud water, ice and the heating
 * of the probe disturb what it feels, and the maker of the probe knows its recovery factor.
 *
 * @source adiabatic flow of a perfect gas with a ratio of specific heats of 1.4, NACA Report 1135,
 *     equation 43
 */
public final class TotalTemperature {
    private static final ModelRange STATIC =
            new ModelRange(
                    "static air temperature",
                    100.0,
                    400.0,
                    "K",
                    "no air of the atmosphere is outside");

    private static final ModelRange FOUND =
            new ModelRange(
                    "static air temperature behind the one felt",
                    STATIC.lowest(),
                    STATIC.highest(),
                    "K",
                    "no air of the atmosphere feels so at that speed, with that recovery factor");

    private static final ModelRange RECOVERY =
            new ModelRange("recovery factor", 0.0, 1.0, "", "a probe recovers no more than all");

    /** Half the ratio of specific heats less 1, from 1.4: what the rise is of T M². */
    private static final double RISE = 0.2;

    /** Specific heat at constant pressure [J/(kg·K)], 1.4 / (1.4 - 1) times the gas constant. */
    private static final double SPECIFIC_HEAT = 3.5 * GAS_CONSTANT_J_PER_KG_K;

    /** The coldest and the hottest air may come back from what a probe feels some ulps beyond. */
    private static final double ROUNDING = 1e-15;

    private TotalTemperature() {}

    /**
     * Tells whether some air of the atmosphere feels so at a Mach number.
     *
     * @param recoveryTemperatureK the temperature felt [K]
     * @param mach Mach number
     * @param recoveryFactor share of the full rise that the probe feels
     * @return true if {@link #staticFromMach} answers
     */
    public static boolean coversMach(
            double recoveryTemperatureK, double mach, double recoveryFactor) {
        return MACH.covers(mach)
                && RECOVERY.covers(recoveryFactor)
                && isFound(recoveryTemperatureK / rise(mach, recoveryFactor), recoveryTemperatureK);
    }

    /**
     * Tells whether some air of the atmosphere feels so at a true airspeed.
     *
     * @param recoveryTemperatureK the temperature felt [K]
     * @param tasMps true airspeed [m/s]
     * @param recoveryFactor share of the full rise that the probe feels
     * @return true if {@link #staticFromTas} answers
     */
    public static boolean coversTas(
            double recoveryTemperatureK, double tasMps, double recoveryFactor) {
        double temperature = recoveryTemperatureK - riseOfTas(tasMps, recoveryFactor);
        return RECOVERY.covers(recoveryFactor)
                && isFound(temperature, recoveryTemperatureK)
                && AirspeedConversion.coversTas(tasMps, inside(temperature));
    }

    /**
     * Tells whether two temperatures leave a Mach number.
     *
     * @param recoveryTemperatureK the temperature felt [K]
     * @param temperatureK static air temperature [K]
     * @param recoveryFactor share of the full rise that the probe feels
     * @return true if {@link #machFromStatic} answers
     */
    public static boolean hasMach(
            double recoveryTemperatureK, double temperatureK, double recoveryFactor) {
        return STATIC.covers(temperatureK)
                && RECOVERY.covers(recoveryFactor)
                && RISE * recoveryFactor > 0.0
                && recoveryTemperatureK >= temperatureK
                && recoveryTemperatureK <= temperatureK * rise(HIGHEST_MACH, recoveryFactor);
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
     * @source see the class comment
     */
    public static double fromMach(double mach, double temperatureK, double recoveryFactor) {
        MACH.check(mach);
        RECOVERY.check(recoveryFactor);
        STATIC.check(temperatureK);
        return temperatureK * rise(mach, recoveryFactor);
    }

    /**
     * Returns the static air temperature behind what a probe feels: {@code T = Tr / (1 + r M² /
     * 5)}.
     *
     * @param recoveryTemperatureK the temperature felt [K]; of static air from 100 to 400 K
     * @param mach Mach number, 0 to 5
     * @param recoveryFactor share of the full rise that the probe feels, 0 to 1; 1 if the
     *     temperature is total air temperature
     * @return static air temperature [K]
     * @throws OutsideModelException if a value is out of range, or the result would be
     * @accuracy 3 ulp; for dry air of constant specific heat
     * @source see the class comment
     */
    public static double staticFromMach(
            double recoveryTemperatureK, double mach, double recoveryFactor) {
        MACH.check(mach);
        RECOVERY.check(recoveryFactor);
        return found(recoveryTemperatureK / rise(mach, recoveryFactor), recoveryTemperatureK);
    }

    /**
     * Returns the static air temperature behind what a probe feels: {@code T = Tr - r V² / (2 cp)}
     * with {@code cp = 3.5 R}.
     *
     * @param recoveryTemperatureK the temperature felt [K]; of static air from 100 to 400 K
     * @param tasMps true airspeed [m/s], up to Mach 5 in the air found
     * @param recoveryFactor share of the full rise that the probe feels, 0 to 1; 1 if the
     *     temperature is total air temperature
     * @return static air temperature [K]
     * @throws OutsideModelException if a value is out of range, or the result would be
     * @accuracy 1e-15 of the temperature felt; for dry air of constant specific heat
     * @source see the class comment
     */
    public static double staticFromTas(
            double recoveryTemperatureK, double tasMps, double recoveryFactor) {
        RECOVERY.check(recoveryFactor);
        double temperature =
                found(
                        recoveryTemperatureK - riseOfTas(tasMps, recoveryFactor),
                        recoveryTemperatureK);
        AirspeedConversion.machFromTas(tasMps, temperature); // asked for its check of the speed
        return temperature;
    }

    /**
     * Returns the Mach number at which a probe in some air feels a temperature: {@code M² = 5 (Tr -
     * T) / (r T)}.
     *
     * <p>A Mach number from two thermometers is a poor one when slow: at Mach 0.3 an error of 1 K
     * in one of them is one of 0.03.
     *
     * @param recoveryTemperatureK the temperature felt [K], no less than the static one
     * @param temperatureK static air temperature [K], 100 to 400
     * @param recoveryFactor share of the full rise that the probe feels, above 0, to 1
     * @return Mach number, 0 to 5
     * @throws OutsideModelException if a value is out of range, or the result would be
     * @accuracy 3 ulp of the Mach number for the difference of the temperatures as given
     * @source see the class comment
     */
    public static double machFromStatic(
            double recoveryTemperatureK, double temperatureK, double recoveryFactor) {
        STATIC.check(temperatureK);
        RECOVERY.check(recoveryFactor);
        if (!(RISE * recoveryFactor > 0.0)) { // nor one so small that the product is 0
            throw new OutsideModelException(
                    "recovery factor",
                    recoveryFactor,
                    Double.MIN_VALUE,
                    1.0,
                    "",
                    "a probe that recovers nothing does not feel the speed");
        }
        if (!hasMach(recoveryTemperatureK, temperatureK, recoveryFactor)) {
            throw new OutsideModelException(
                    "recovery temperature",
                    recoveryTemperatureK,
                    temperatureK,
                    temperatureK * rise(HIGHEST_MACH, recoveryFactor),
                    "K",
                    "a probe feels that of the air at rest, and more up to Mach 5");
        }
        double square =
                (recoveryTemperatureK - temperatureK) / (RISE * recoveryFactor * temperatureK);
        return Math.min(HIGHEST_MACH, Math.sqrt(square));
    }

    /**
     * Returns the total air temperature behind what a probe feels: {@code Tt = Tr (1 + M² / 5) / (1
     * + r M² / 5)}.
     *
     * @param recoveryTemperatureK the temperature felt [K]; of static air from 100 to 400 K
     * @param mach Mach number, 0 to 5
     * @param recoveryFactor share of the full rise that the probe feels, 0 to 1
     * @return total air temperature [K], no less than the one felt
     * @throws OutsideModelException if a value is out of range
     * @accuracy 5 ulp; for dry air of constant specific heat
     * @source see the class comment
     */
    public static double totalFromRecovery(
            double recoveryTemperatureK, double mach, double recoveryFactor) {
        return staticFromMach(recoveryTemperatureK, mach, recoveryFactor) * rise(mach, 1.0);
    }

    /**
     * Returns what a probe feels where the total air temperature is known: {@code Tr = Tt (1 + r M²
     * / 5) / (1 + M² / 5)}.
     *
     * @param totalTemperatureK total air temperature [K]; of static air from 100 to 400 K
     * @param mach Mach number, 0 to 5
     * @param recoveryFactor share of the full rise that the probe feels, 0 to 1
     * @return the temperature felt [K], no more than the total one
     * @throws OutsideModelException if a value is out of range
     * @accuracy 5 ulp; for dry air of constant specific heat
     * @source see the class comment
     */
    public static double recoveryFromTotal(
            double totalTemperatureK, double mach, double recoveryFactor) {
        RECOVERY.check(recoveryFactor);
        return staticFromMach(totalTemperatureK, mach, 1.0) * rise(mach, recoveryFactor);
    }

    static void checkRecoveryFactor(double recoveryFactor) {
        RECOVERY.check(recoveryFactor);
    }

    static double rise(double mach, double recoveryFactor) {
        return 1.0 + RISE * recoveryFactor * mach * mach;
    }

    private static double riseOfTas(double tasMps, double recoveryFactor) {
        return recoveryFactor * tasMps * tasMps / (2.0 * SPECIFIC_HEAT);
    }

    private static boolean isFound(double temperatureK, double feltK) {
        return Math.abs(temperatureK - inside(temperatureK)) <= ROUNDING * feltK;
    }

    private static double found(double temperatureK, double feltK) {
        return isFound(temperatureK, feltK) ? inside(temperatureK) : FOUND.check(temperatureK);
    }

    private static double inside(double temperatureK) {
        return Math.max(STATIC.lowest(), Math.min(STATIC.highest(), temperatureK));
    }
}
