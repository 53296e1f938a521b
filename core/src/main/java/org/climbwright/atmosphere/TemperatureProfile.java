package org.climbwright.atmosphere;

import org.climbwright.quantity.ModelRange;

/** A temperature at each pressure: all that {@link Atmosphere#of} needs of somebody's weather. */
@FunctionalInterface
public interface TemperatureProfile {
    /**
     * Returns the temperature at a pressure.
     *
     * @param pressurePa static pressure [Pa], inside {@link #range}
     * @return static air temperature [K], 100 to 400
     */
    double temperature(double pressurePa);

    /**
     * Returns the vapour pressure at a pressure.
     *
     * @param pressurePa static pressure [Pa], inside {@link #range}
     * @return vapour pressure [Pa]; NaN, not known, unless overridden
     */
    default double vapourPressure(double pressurePa) {
        return Double.NaN;
    }

    /**
     * Returns where the profile bends.
     *
     * @return pressures [Pa] inside {@link #range}, in any order; none unless overridden
     */
    default double[] bendsPa() {
        return new double[0];
    }

    /**
     * Returns the pressures for which the profile answers.
     *
     * @return the range [Pa]; all of the standard atmosphere unless overridden
     */
    default ModelRange range() {
        return StandardAir.pressureRange();
    }
}
