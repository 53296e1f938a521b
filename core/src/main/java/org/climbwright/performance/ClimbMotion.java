package org.climbwright.performance;

import static org.climbwright.atmosphere.IcaoConstants.GRAVITY_MPS2;

import org.climbwright.airspeed.AirspeedConversion;
import org.climbwright.numeric.Trigonometry;
import org.climbwright.quantity.ModelRange;

/**
 * What stands around the balance of forces, in SI doubles: what goes into it of the air and of a
 * turn, and the rates that come of the sine of the angle of climb.
 *
 * <p>The sine is of geopotential altitude. On a day that is not standard a metre of it is not one
 * of pressure altitude: the instrument shows {@code dHp/dt = V sin g / (dH/dHp)}, in warm air less
 * than is climbed.
 *
 * <p>Nothing is checked but the bank and what the dynamic pressure is of, and NaN makes NaN.
 *
 * @source {@code dH/dHp = Tv / T_ISA} from the hydrostatic equation in both airs; power as {@code
 *     Ps = V (T - D) / (m g0)} in US Naval Test Pilot School, Fixed Wing Performance, chapter 7
 */
public final class ClimbMotion {
    private static final ModelRange BANK =
            new ModelRange(
                    "bank",
                    0.0,
                    80.0 * (Math.PI / 180.0),
                    "rad",
                    "steeper turns do not hold a climb");

    private ClimbMotion() {}

    /**
     * Tells whether a climb can turn so.
     *
     * @param bankRad bank to either side [rad]
     * @return true if {@link #liftFactor} answers
     */
    public static boolean coversBank(double bankRad) {
        return BANK.covers(bankRad);
    }

    /**
     * Returns the lift in a turn over that of straight flight, {@code 1 / cos(bank)}.
     *
     * @param bankRad bank to either side [rad], 0 to 80 degrees
     * @return the factor, 1 or more
     * @throws org.climbwright.quantity.OutsideModelException if the bank is out of range
     * @accuracy 3 ulp of the cosine of the angle as given
     * @source balance of forces across the path in a turn without slip
     */
    public static double liftFactor(double bankRad) {
        return 1.0 / Trigonometry.cos(BANK.check(bankRad));
    }

    /**
     * Returns the lapse of the air by geopotential altitude.
     *
     * @param perPressureAltitudeMetre change of a quantity with pressure altitude
     * @param geopotentialPerPressureAltitude metres of geopotential in one of pressure altitude
     * @return change with geopotential altitude
     * @accuracy 1 ulp
     * @source chain rule
     */
    public static double perGeopotentialMetre(
            double perPressureAltitudeMetre, double geopotentialPerPressureAltitude) {
        return perPressureAltitudeMetre / geopotentialPerPressureAltitude;
    }

    /**
     * Returns static over virtual temperature.
     *
     * @param temperatureK static air temperature [K]
     * @param standardTemperatureK that of the standard atmosphere at the same pressure [K]
     * @param geopotentialPerPressureAltitude metres of geopotential in one of pressure altitude
     * @return the ratio, 1 in dry air and never more: rounding and interpolation may bring it some
     *     1e-13 above, where there is no air
     * @accuracy 1e-12
     * @source see the class comment
     */
    public static double staticPerVirtual(
            double temperatureK,
            double standardTemperatureK,
            double geopotentialPerPressureAltitude) {
        return Math.min(
                1.0, temperatureK / (standardTemperatureK * geopotentialPerPressureAltitude));
    }

    /**
     * Returns the dynamic pressure in moist air: vapour makes the air lighter, while the speed of
     * sound is that of dry air.
     *
     * @param mach Mach number, 0 to 5
     * @param pressurePa static pressure [Pa]
     * @param staticPerVirtual static over virtual temperature, 1 in dry air
     * @return half the density times true airspeed squared [Pa]
     * @throws org.climbwright.quantity.OutsideModelException if Mach number or pressure are out of
     *     range
     * @accuracy 4 ulp
     * @source {@link AirspeedConversion#dynamicPressureFromMach}, with the density of moist air
     */
    public static double dynamicPressure(double mach, double pressurePa, double staticPerVirtual) {
        return AirspeedConversion.dynamicPressureFromMach(mach, pressurePa) * staticPerVirtual;
    }

    /**
     * Returns what a wind that changes with height does to the balance, {@code (V / g0) dW/dH}.
     *
     * @param tasMps true airspeed [m/s]
     * @param alongTrackPerMetre change of the wind along the track, positive from behind, with
     *     geopotential altitude [1/s]
     * @return the factor; below 0, which lifts, for a headwind that grows upwards
     * @accuracy 2 ulp
     * @source equation of motion along the path in the moving air
     */
    public static double windFactor(double tasMps, double alongTrackPerMetre) {
        return tasMps / GRAVITY_MPS2 * alongTrackPerMetre;
    }

    /**
     * Returns the thrust that is left for drag and climb where part of it accelerates.
     *
     * @param thrustN thrust [N]
     * @param massKg mass [kg]
     * @param accelerationMps2 change of true airspeed with time [m/s²]
     * @return thrust [N]; may be below 0
     * @accuracy 2 ulp of the larger part
     * @source Newton's second law
     */
    public static double thrustLeft(double thrustN, double massKg, double accelerationMps2) {
        return thrustN - massKg * accelerationMps2;
    }

    /**
     * Returns the specific excess power, the rate of height and speed together.
     *
     * @param tasMps true airspeed [m/s]
     * @param thrustN thrust [N]
     * @param dragN drag [N]
     * @param massKg mass [kg]
     * @return rate of energy height [m/s]; below 0 where drag is more than thrust
     * @accuracy 3 ulp of the thrust's part
     * @source see the class comment
     */
    public static double specificExcessPower(
            double tasMps, double thrustN, double dragN, double massKg) {
        return tasMps * (thrustN - dragN) / (massKg * GRAVITY_MPS2);
    }

    /**
     * Returns the rate of climb in true height.
     *
     * @param tasMps true airspeed [m/s]
     * @param sine sine of the angle of climb, of {@link ClimbBalance#sine}
     * @param geometricPerGeopotential metres of true height in one of geopotential altitude
     * @return geometric rate [m/s]
     * @accuracy 2 ulp
     * @source see the class comment
     */
    public static double geometricRate(
            double tasMps, double sine, double geometricPerGeopotential) {
        return tasMps * sine * geometricPerGeopotential;
    }

    /**
     * Returns the rate of climb that the instrument shows.
     *
     * @param tasMps true airspeed [m/s]
     * @param sine sine of the angle of climb, of {@link ClimbBalance#sine}
     * @param geopotentialPerPressureAltitude metres of geopotential in one of pressure altitude
     * @return rate of pressure altitude [m/s]
     * @accuracy 2 ulp
     * @source see the class comment
     */
    public static double pressureAltitudeRate(
            double tasMps, double sine, double geopotentialPerPressureAltitude) {
        return tasMps * sine / geopotentialPerPressureAltitude;
    }
}
