package org.climbwright.performance;

import static org.climbwright.atmosphere.IcaoConstants.GAS_CONSTANT_J_PER_KG_K;
import static org.climbwright.atmosphere.IcaoConstants.GRAVITY_MPS2;

import org.climbwright.quantity.ModelRange;

/**
 * What a climb at a constant speed of the instruments takes for the true airspeed that changes on
 * the way: {@code f = (V / g0) dV/dH}, in SI doubles.
 *
 * <p>Of the excess power {@code 1 / (1 + f)} goes into the climb. At a constant calibrated airspeed
 * the true airspeed grows, {@code f} is above 0 and the rate smaller; at a constant Mach number in
 * air that gets colder upwards it falls, and the rate is larger.
 *
 * <pre>{@code
 * double pressurePa = StandardAir.pressureFromAltitude(28000 * 0.3048);
 * double mach = AirspeedConversion.machFromCas(300 * 1852 / 3600.0, pressurePa);
 * 1 / (1 + AccelerationFactor.atConstantCas(mach, -0.0065, 1.0))    // 0.7826…, of the power
 * 1 / (1 + AccelerationFactor.atConstantMach(0.78, -0.0065))        // 1.0881…
 * }</pre>
 *
 * <p>{@code H} is geopotential altitude, so that {@code g0 dH} is the energy of a height. The lapse
 * is that of the air climbed through: at a deviation from standard that is the same at each
 * pressure it is {@code -0.0065 T_ISA / T}.
 *
 * @source derived from {@code V = M a}, the impact pressure of a perfect gas with a ratio of
 *     specific heats of 1.4, and {@code dp/dH = -p g0 / (R Tv)}; definition as 1 + AF in US Naval
 *     Test Pilot School, Fixed Wing Performance, chapter 7, equation 7.4
 */
public final class AccelerationFactor {
    private static final ModelRange MACH =
            new ModelRange("Mach number", 0.0, 1.0, "", "the pitot tube is told without a shock");
    private static final ModelRange LAPSE =
            new ModelRange("change of temperature", -10.0, 10.0, "K/m", "no air changes faster");
    private static final ModelRange VIRTUAL =
            new ModelRange(
                    "static over virtual temperature", 0.5, 1.0, "", "vapour is lighter than air");

    private AccelerationFactor() {}

    /**
     * Tells whether a point has an acceleration factor.
     *
     * @param mach Mach number
     * @param temperaturePerMetre change of temperature with geopotential altitude [K/m]
     * @param staticPerVirtual static over virtual temperature
     * @return true if {@link #atConstantCas} and the others answer
     */
    public static boolean covers(double mach, double temperaturePerMetre, double staticPerVirtual) {
        return MACH.covers(mach)
                && LAPSE.covers(temperaturePerMetre)
                && VIRTUAL.covers(staticPerVirtual);
    }

    /**
     * Returns the acceleration factor of a climb at a constant calibrated airspeed.
     *
     * <p>{@code f = 0.7 M² (phi T/Tv + (R / g0) dT/dH)} with {@code phi = ((1 + 0.2 M²)^3.5 - 1) /
     * (0.7 M² (1 + 0.2 M²)^2.5)}.
     *
     * @param mach Mach number, 0 to 1
     * @param temperaturePerMetre change of temperature with geopotential altitude [K/m], below 0
     *     where it gets colder upwards, -10 to 10
     * @param staticPerVirtual static over virtual temperature, 0.5 to 1: 1 in dry air
     * @return the factor
     * @throws org.climbwright.quantity.OutsideModelException if a value is out of range
     * @accuracy 1e-15
     * @source see the class comment
     */
    public static double atConstantCas(
            double mach, double temperaturePerMetre, double staticPerVirtual) {
        double square = square(mach);
        VIRTUAL.check(staticPerVirtual);
        return impactShare(square) * staticPerVirtual + lapseShare(square, temperaturePerMetre);
    }

    /**
     * Returns the acceleration factor of a climb at a constant equivalent airspeed, {@code f = 0.7
     * M² (T/Tv + (R / g0) dT/dH)}.
     *
     * @param mach Mach number, 0 to 1
     * @param temperaturePerMetre change of temperature with geopotential altitude [K/m], -10 to 10
     * @param staticPerVirtual static over virtual temperature, 0.5 to 1
     * @return the factor
     * @throws org.climbwright.quantity.OutsideModelException if a value is out of range
     * @accuracy 1e-15
     * @source see the class comment; equivalent airspeed as {@code M sqrt(p)}, as instruments have
     *     it
     */
    public static double atConstantEas(
            double mach, double temperaturePerMetre, double staticPerVirtual) {
        double square = square(mach);
        VIRTUAL.check(staticPerVirtual);
        return 0.7 * square * staticPerVirtual + lapseShare(square, temperaturePerMetre);
    }

    /**
     * Returns the acceleration factor of a climb at a constant Mach number, {@code f = 0.7 M² (R /
     * g0) dT/dH}.
     *
     * @param mach Mach number, 0 to 1
     * @param temperaturePerMetre change of temperature with geopotential altitude [K/m], -10 to 10
     * @return the factor, below 0 where it gets colder upwards
     * @throws org.climbwright.quantity.OutsideModelException if a value is out of range
     * @accuracy 1e-15
     * @source see the class comment
     */
    public static double atConstantMach(double mach, double temperaturePerMetre) {
        return lapseShare(square(mach), temperaturePerMetre);
    }

    /**
     * Returns how much true airspeed grows with pressure altitude where a factor holds, {@code
     * dV/dHp = f (g0 / V) dH/dHp}.
     *
     * @param factor the acceleration factor
     * @param tasMps true airspeed [m/s], above 0
     * @param geopotentialPerPressureAltitude metres of geopotential altitude in one of pressure
     *     altitude
     * @return change of true airspeed [1/s]
     * @accuracy 3 ulp
     * @source definition, see the class comment
     */
    public static double speedPerMetre(
            double factor, double tasMps, double geopotentialPerPressureAltitude) {
        return factor * (GRAVITY_MPS2 / tasMps) * geopotentialPerPressureAltitude;
    }

    private static double square(double mach) {
        double checked = MACH.check(mach);
        return checked * checked;
    }

    /** 0.7 M² phi: impact pressure over pressure, divided by (1 + 0.2 M²)^2.5. */
    private static double impactShare(double square) {
        double x = 0.2 * square;
        double base = 1.0 + x;
        double root = Math.sqrt(base);
        // base^3.5 - 1 without cancellation, as (base³ - 1) root + (root - 1)
        double impact = x * (3.0 + x * (3.0 + x)) * root + x / (1.0 + root);
        return impact / (base * base * root);
    }

    private static double lapseShare(double square, double temperaturePerMetre) {
        return 0.7
                * square
                * (GAS_CONSTANT_J_PER_KG_K / GRAVITY_MPS2)
                * LAPSE.check(temperaturePerMetre);
    }
}
