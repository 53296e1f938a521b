package org.climbwright.cabin.dynamics;

import static org.climbwright.atmosphere.IcaoConstants.GAS_CONSTANT_J_PER_KG_K;
import static org.climbwright.atmosphere.IcaoConstants.HEAT_CAPACITY_RATIO;

import org.climbwright.quantity.ModelRange;

/**
 * How the pressure of a cabin changes by what flows in and out: {@code p V = m R T}.
 *
 * <p>With {@code org.climbwright.cabin.CabinPressure} a rate of pressure becomes a rate of cabin
 * altitude: a cabin that loses 0.05 kg/s more than it gets, of 130 m³ at 24 °C, climbs at 538
 * ft/min at sea level and at 684 ft/min at 8,000 ft.
 *
 * @source mass and energy of a perfect gas in a fixed volume, derived
 */
public final class MassBalance {
    private static final ModelRange VOLUME =
            new ModelRange("volume of the cabin", 0.1, 1e4, "m³", "no aeroplane has another");

    private static final ModelRange TEMPERATURE =
            new ModelRange(
                    "temperature of the air", 100.0, 1000.0, "K", "a perfect gas ends there");

    private static final ModelRange FLOW =
            new ModelRange("mass flow", -1e6, 1e6, "kg/s", "no cabin has another");

    private MassBalance() {}

    /**
     * Returns the rate of pressure where the temperature is held: {@code dp/dt = (R T / V) m}.
     *
     * @param netInflowKgPerS inflow less outflow [kg/s], -1e6 to 1e6
     * @param volumeM3 volume of the cabin [m³], 0.1 to 10,000
     * @param cabinTemperatureK temperature of the cabin [K], 100 to 1000
     * @return rate of pressure [Pa/s], rising positive
     * @throws org.climbwright.quantity.OutsideModelException if a value is out of range
     * @accuracy 1e-15 relative
     * @source see the class comment
     */
    public static double isothermalPressureRate(
            double netInflowKgPerS, double volumeM3, double cabinTemperatureK) {
        return FLOW.check(netInflowKgPerS)
                * TEMPERATURE.check(cabinTemperatureK)
                * pressurePerMassKelvin(CabinAir.ISOTHERMAL, VOLUME.check(volumeM3));
    }

    /**
     * Returns the rate of pressure where no heat comes from outside: {@code dp/dt = (gamma R / V)
     * (m Tin - m Tout)}, each flow with its own temperature.
     *
     * @param inflowKgPerS what flows in [kg/s], -1e6 to 1e6
     * @param inflowTemperatureK its temperature [K], 100 to 1000
     * @param outflowKgPerS what flows out [kg/s], -1e6 to 1e6
     * @param cabinTemperatureK its temperature, which is the cabin's [K], 100 to 1000
     * @param volumeM3 volume of the cabin [m³], 0.1 to 10,000
     * @return rate of pressure [Pa/s], rising positive
     * @throws org.climbwright.quantity.OutsideModelException if a value is out of range
     * @accuracy 1e-15 of the larger of the two flows' parts
     * @source see the class comment
     */
    public static double adiabaticPressureRate(
            double inflowKgPerS,
            double inflowTemperatureK,
            double outflowKgPerS,
            double cabinTemperatureK,
            double volumeM3) {
        double in = FLOW.check(inflowKgPerS) * TEMPERATURE.check(inflowTemperatureK);
        double out = FLOW.check(outflowKgPerS) * TEMPERATURE.check(cabinTemperatureK);
        return (in - out) * pressurePerMassKelvin(CabinAir.ADIABATIC, VOLUME.check(volumeM3));
    }

    /** What a kilogram of a kelvin adds to the pressure [Pa/(kg·K)]. */
    static double pressurePerMassKelvin(CabinAir air, double volumeM3) {
        double isothermal = GAS_CONSTANT_J_PER_KG_K / volumeM3;
        return air == CabinAir.ISOTHERMAL ? isothermal : HEAT_CAPACITY_RATIO * isothermal;
    }

    /** Mass of the air in a cabin [kg]. */
    static double mass(double pressurePa, double volumeM3, double temperatureK) {
        return pressurePa * volumeM3 / (GAS_CONSTANT_J_PER_KG_K * temperatureK);
    }

    /** Temperature of the air in a cabin [K]. */
    static double temperature(double pressurePa, double volumeM3, double massKg) {
        return pressurePa * volumeM3 / (GAS_CONSTANT_J_PER_KG_K * massKg);
    }

    /** Pressure of the air in a cabin [Pa]. */
    static double pressure(double massKg, double volumeM3, double temperatureK) {
        return massKg * GAS_CONSTANT_J_PER_KG_K * temperatureK / volumeM3;
    }
}
