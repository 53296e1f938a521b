package org.climbwright.unit;

/**
 * What a number of this field can be a number of: the kinds of quantity that units belong to.
 *
 * <p>A kind is narrower than a dimension. A temperature and a temperature difference are both
 * kelvins; a gradient, a relative humidity and a mixing ratio are all plain ratios; and none of
 * them stands in for another.
 */
public enum QuantityKind {
    /** Lengths: altitudes, heights, distances, drop diameters. SI unit: metre. */
    LENGTH("length"),
    /** Speeds: airspeeds, ground speeds, winds, rates of climb. SI unit: metre per second. */
    SPEED("speed"),
    /** Pressures and differences of pressure. SI unit: pascal. */
    PRESSURE("pressure"),
    /** Pressure per time, such as that of a cabin. SI unit: pascal per second. */
    PRESSURE_RATE("rate of pressure"),
    /** Temperatures: points on a scale. SI unit: kelvin. */
    TEMPERATURE("temperature"),
    /** Temperature differences: intervals, for which 1 °C is 1 K. SI unit: kelvin. */
    TEMPERATURE_DIFFERENCE("temperature difference"),
    /** Masses. SI unit: kilogram. */
    MASS("mass"),
    /** Mass per time, such as a fuel flow. SI unit: kilogram per second. */
    MASS_FLOW("mass flow"),
    /** Forces, such as thrust and drag. SI unit: newton. */
    FORCE("force"),
    /** Times. SI unit: second. */
    TIME("time"),
    /** Angles and directions. SI unit: radian. */
    ANGLE("angle"),
    /** Height gained over distance covered: no other ratio is one. SI unit: metre per metre. */
    GRADIENT("gradient"),
    /** Mass per volume: air density, liquid water content. SI unit: kilogram per cubic metre. */
    DENSITY("density"),
    /** Dynamic viscosity. SI unit: pascal second. */
    DYNAMIC_VISCOSITY("dynamic viscosity"),
    /** Kinematic viscosity. SI unit: square metre per second. */
    KINEMATIC_VISCOSITY("kinematic viscosity"),
    /** Thermal conductivity. SI unit: watt per metre and kelvin. */
    THERMAL_CONDUCTIVITY("thermal conductivity"),
    /** Vapour pressure over saturation vapour pressure: no other ratio is one. SI unit: 1. */
    RELATIVE_HUMIDITY("relative humidity"),
    /**
     * Mass of vapour per mass of dry air: no other ratio is one. SI unit: kilogram per kilogram.
     */
    MIXING_RATIO("mixing ratio");

    private final String term;

    QuantityKind(String term) {
        this.term = term;
    }

    /**
     * Returns the field's word for this kind.
     *
     * @return the word, in lower case
     */
    public String term() {
        return term;
    }
}
