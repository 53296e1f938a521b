package org.climbwright.atmosphere;

import static org.climbwright.atmosphere.IcaoConstants.GAS_CONSTANT_J_PER_KG_K;

import org.climbwright.quantity.ModelRange;

/**
 * Saturated air that is lifted without mixing while all water that condenses falls out at once, in
 * SI doubles: how it cools.
 *
 * <p>What comes before saturation is {@link LiftedAir}. Saturation is over liquid water at every
 * temperature; no ice forms, so that no heat of freezing is set free.
 *
 * <p>Limits of use: real parcels mix, carry water and freeze; near the tropopause the differences
 * come to some kelvins.
 *
 * @source pseudoadiabatic lapse rate of the American Meteorological Society's Glossary of
 *     Meteorology (equation from memory, its quantities seen), divided by the hydrostatic equation
 *     of the saturated air; heat of vaporization 2.501 MJ/kg less 2370 J/(kg·K) above 0 °C, D.
 *     Bolton, The computation of equivalent potential temperature, Mon. Wea. Rev. 108 (1980)
 *     1046-1053, equation 2 (from memory)
 */
public final class PseudoAdiabat {
    /** The widest step of ln p; the error of a whole ascent is below 1e-7 K with it. */
    private static final double STEP = 0.02;

    private static final ModelRange TEMPERATURE =
            new ModelRange(
                    "temperature of saturated air",
                    123.0,
                    332.0,
                    "K",
                    "the saturation formula over water was fitted there");

    private static final ModelRange PRESSURE =
            new ModelRange("static pressure", 100.0, 2e5, "Pa", "higher up there is no vapour");

    private PseudoAdiabat() {}

    /**
     * Tells whether saturated air of a temperature and a pressure is taken here.
     *
     * @param temperatureK temperature and dew point [K]
     * @param pressurePa static pressure [Pa]
     * @return true from 123 to 332 K and from 100 to 200,000 Pa, above the saturation pressure
     */
    public static boolean covers(double temperatureK, double pressurePa) {
        return TEMPERATURE.covers(temperatureK)
                && PRESSURE.covers(pressurePa)
                && MoistAir.saturationVapourPressure(temperatureK) < pressurePa;
    }

    /**
     * Returns how fast the temperature changes with ln p.
     *
     * @param temperatureK temperature and dew point [K], 123 to 332
     * @param pressurePa static pressure [Pa], 100 to 200,000
     * @return slope dT / d(ln p) [K], above 0
     * @throws org.climbwright.quantity.OutsideModelException if a value is out of range
     * @accuracy 1e-14 of the equation
     * @source see the class comment
     */
    public static double slope(double temperatureK, double pressurePa) {
        PRESSURE.check(pressurePa);
        double t = TEMPERATURE.check(temperatureK);
        double r = MoistAir.mixingRatio(MoistAir.saturationVapourPressure(t), pressurePa);
        double latentHeat = 2.501e6 - 2370.0 * (t - 273.15);
        double rt = GAS_CONSTANT_J_PER_KG_K * t;
        double capacity =
                LiftedAir.DRY_HEAT_CAPACITY_J_PER_KG_K
                        + r * LiftedAir.VAPOUR_HEAT_CAPACITY_J_PER_KG_K
                        + latentHeat * latentHeat * r * (MoistAir.MOLAR_MASS_RATIO + r) / (rt * t);
        return rt * (1.0 + r / MoistAir.MOLAR_MASS_RATIO) * (1.0 + latentHeat * r / rt) / capacity;
    }

    /**
     * Returns the temperature of saturated air that is lifted to another pressure.
     *
     * @param temperatureK temperature and dew point before [K], 123 to 332
     * @param pressurePa static pressure before [Pa], 100 to 200,000
     * @param liftedToPa static pressure where it is asked for [Pa], 100 to 200,000; above the one
     *     before for air that sinks while it stays saturated
     * @return temperature and dew point there [K]
     * @throws org.climbwright.quantity.OutsideModelException if a value is out of range, or gets
     *     there on the way
     * @accuracy 1e-7 K of the equation; up to 200 hPa within 0.1 K of the ascent that keeps the
     *     equivalent potential temperature of D. Bolton (1980), equation 43
     * @source Runge-Kutta of fourth order along ln p, see the class comment
     */
    public static double temperature(double temperatureK, double pressurePa, double liftedToPa) {
        PRESSURE.check(liftedToPa);
        double ln = StrictMath.log(PRESSURE.check(pressurePa));
        double depth = StrictMath.log(liftedToPa) - ln;
        int steps = Math.max(1, (int) Math.ceil(Math.abs(depth) / STEP));
        double h = depth / steps;
        double halfWay = StrictMath.exp(0.5 * h);
        double t = TEMPERATURE.check(temperatureK);
        double p = pressurePa;
        for (int i = 1; i <= steps; i++) {
            double middle = p * halfWay;
            double end = i == steps ? liftedToPa : middle * halfWay;
            double k1 = slope(t, p);
            double k2 = slope(t + 0.5 * h * k1, middle);
            double k3 = slope(t + 0.5 * h * k2, middle);
            double k4 = slope(t + h * k3, end);
            t += h / 6.0 * (k1 + 2.0 * (k2 + k3) + k4);
            p = end;
        }
        return t;
    }
}
