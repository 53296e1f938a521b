package org.climbwright.atmosphere;

import org.climbwright.quantity.ModelRange;
import org.climbwright.unit.UnitScale;

/**
 * A formula for the vapour pressure at which air is saturated, over liquid water and over ice.
 *
 * <p>Below 0 °C say which: at -40 °C the pressure over water is 1.47 times that over ice. Dew point
 * and relative humidity are told over liquid water at every temperature; ice is for frost and
 * cirrus. {@link MoistAir} uses {@link #MURPHY_KOOP}; {@link #WMO} stands beside it for those whose
 * figures must agree with a weather service's.
 */
@SuppressWarnings("ImmutableEnumChecker") // ModelRange is immutable
public enum SaturationFormula {
    /**
     * The reference here: fitted to measurements down to the temperatures of the tropopause.
     *
     * <p>Over water from 123 to 332 K, supercooled or not; over ice from 110 to 273.16 K. Over
     * water its authors give 0.05 % of measurements above 0 °C, and 1 to 5 % at -70 °C, where
     * supercooled water is hardly measured; it is 1.2e-5 from the release IAPWS-95 at 275 K, and
     * from the industrial release IAPWS-IF97 less than 1e-4 up to 320 K and 3.3e-4 at 332 K. Over
     * ice it is 4e-5 from the release IAPWS R14-08 at -5 °C and 6e-4 at -80 °C.
     *
     * @source D. M. Murphy and T. Koop, Review of the vapour pressures of ice and supercooled water
     *     for atmospheric applications, Q. J. R. Meteorol. Soc. 131 (2005) 1539-1565, equations 10
     *     and 7 (coefficients seen in a public constants file of a cloud-physics package)
     */
    MURPHY_KOOP(123.0, 332.0, 110.0, 273.16) {
        @Override
        double lnOverWater(double temperatureK) {
            return fit(54.842763, -6763.22, -4.210, 0.000367, temperatureK)
                    + StrictMath.tanh(0.0415 * (temperatureK - 218.8))
                            * fit(53.878, -1331.22, -9.44523, 0.014025, temperatureK);
        }

        @Override
        double lnOverIce(double temperatureK) {
            return fit(9.550426, -5723.265, 3.53068, -0.00728332, temperatureK);
        }

        private double fit(double a, double b, double c, double d, double temperatureK) {
            return a + b / temperatureK + c * StrictMath.log(temperatureK) + d * temperatureK;
        }
    },

    /**
     * The short form that weather services use.
     *
     * <p>Over water from -45 to 60 °C, over ice from -65 to 0 °C. Over water it is within 0.4 % of
     * {@link #MURPHY_KOOP} above -20 °C and 0.8 % above it at -45 °C, over ice within 0.05 % above
     * -50 °C.
     *
     * @source WMO-No. 8, Guide to Instruments and Methods of Observation, annex 4.B (coefficients
     *     over water seen in a weather-station manual that quotes it, over ice from memory)
     */
    WMO(
            UnitScale.CELSIUS.toSi(-45.0), // 228.15 K would leave out -45 °C by the last bit
            UnitScale.CELSIUS.toSi(60.0),
            UnitScale.CELSIUS.toSi(-65.0),
            UnitScale.CELSIUS.toSi(0.0)) {
        @Override
        double lnOverWater(double temperatureK) {
            return magnus(17.62, 243.12, temperatureK);
        }

        @Override
        double lnOverIce(double temperatureK) {
            return magnus(22.46, 272.62, temperatureK);
        }

        private double magnus(double a, double b, double temperatureK) {
            double celsius = temperatureK - 273.15;
            return StrictMath.log(611.2) + a * celsius / (b + celsius);
        }
    };

    private static final int MOST_STEPS = 60;

    private final ModelRange overWater;
    private final ModelRange overIce;
    private final ModelRange vapourOverWater;
    private final ModelRange vapourOverIce;

    SaturationFormula(
            double coldestWaterK, double warmestWaterK, double coldestIceK, double warmestIceK) {
        overWater = temperatures("water", coldestWaterK, warmestWaterK);
        overIce = temperatures("ice", coldestIceK, warmestIceK);
        vapourOverWater =
                pressures("dew", lnOverWater(coldestWaterK), lnOverWater(warmestWaterK), overWater);
        vapourOverIce = pressures("frost", lnOverIce(coldestIceK), lnOverIce(warmestIceK), overIce);
    }

    private static ModelRange temperatures(String surface, double coldestK, double warmestK) {
        return new ModelRange(
                "temperature of saturated air",
                coldestK,
                warmestK,
                "K",
                "the saturation formula over ".concat(surface).concat(" was fitted there"));
    }

    private static ModelRange pressures(
            String point, double lnLowest, double lnHighest, ModelRange temperatures) {
        return new ModelRange(
                "vapour pressure",
                StrictMath.exp(lnLowest),
                StrictMath.exp(lnHighest),
                "Pa",
                new StringBuilder("its ")
                        .append(point)
                        .append(" point must be from ")
                        .append(temperatures.lowest())
                        .append(" to ")
                        .append(temperatures.highest())
                        .append(" K")
                        .toString());
    }

    /** The natural logarithm of the saturation vapour pressure over water [Pa]. */
    abstract double lnOverWater(double temperatureK);

    /** The natural logarithm of the saturation vapour pressure over ice [Pa]. */
    abstract double lnOverIce(double temperatureK);

    /** The coldest temperature that the formula over water takes [K]. */
    double coldestOverWater() {
        return overWater.lowest();
    }

    /**
     * Tells whether the formula over water takes a temperature.
     *
     * @param temperatureK temperature or dew point [K]
     * @return true in its range
     */
    public boolean coversWater(double temperatureK) {
        return overWater.covers(temperatureK);
    }

    /**
     * Tells whether the formula over ice takes a temperature.
     *
     * @param temperatureK temperature or frost point [K]
     * @return true in its range
     */
    public boolean coversIce(double temperatureK) {
        return overIce.covers(temperatureK);
    }

    /**
     * Tells whether a vapour pressure has a dew point by this formula.
     *
     * @param vapourPressurePa vapour pressure [Pa]
     * @return true in the range of the formula over water
     */
    public boolean coversDewPoint(double vapourPressurePa) {
        return vapourOverWater.covers(vapourPressurePa);
    }

    /**
     * Tells whether a vapour pressure has a frost point by this formula.
     *
     * @param vapourPressurePa vapour pressure [Pa]
     * @return true in the range of the formula over ice
     */
    public boolean coversFrostPoint(double vapourPressurePa) {
        return vapourOverIce.covers(vapourPressurePa);
    }

    /**
     * Returns the vapour pressure at which air is saturated over liquid water, supercooled or not.
     *
     * @param temperatureK temperature; the dew point for the vapour pressure there is [K], in the
     *     range of the formula
     * @return saturation vapour pressure [Pa], rising with temperature
     * @throws org.climbwright.quantity.OutsideModelException if the temperature is out of range
     * @accuracy 1e-13 relative of the formula; how well that holds stands with each
     * @source stands with each formula
     */
    public double overWater(double temperatureK) {
        return StrictMath.exp(lnOverWater(overWater.check(temperatureK)));
    }

    /**
     * Returns the vapour pressure at which air is saturated over ice.
     *
     * @param temperatureK temperature; the frost point for the vapour pressure there is [K], in the
     *     range of the formula
     * @return saturation vapour pressure [Pa], rising with temperature
     * @throws org.climbwright.quantity.OutsideModelException if the temperature is out of range
     * @accuracy 1e-13 relative of the formula; how well that holds stands with each
     * @source stands with each formula
     */
    public double overIce(double temperatureK) {
        return StrictMath.exp(lnOverIce(overIce.check(temperatureK)));
    }

    /**
     * Returns the dew point of air with a vapour pressure: the inverse of {@link #overWater}.
     *
     * @param vapourPressurePa vapour pressure [Pa], in the range that {@link #coversDewPoint} tells
     * @return dew point over liquid water [K]
     * @throws org.climbwright.quantity.OutsideModelException if no dew point in range has it
     * @accuracy 1e-12 K against {@link #overWater}
     * @source the formula itself, solved for the temperature
     */
    public double dewPoint(double vapourPressurePa) {
        return solve(StrictMath.log(vapourOverWater.check(vapourPressurePa)), false);
    }

    /**
     * Returns the frost point of air with a vapour pressure: the inverse of {@link #overIce}.
     *
     * @param vapourPressurePa vapour pressure [Pa], in the range that {@link #coversFrostPoint}
     *     tells
     * @return frost point [K]; not below the dew point of the same air, but for 1e-6 K where the
     *     two meet at the triple point
     * @throws org.climbwright.quantity.OutsideModelException if no frost point in range has it
     * @accuracy 1e-12 K against {@link #overIce}
     * @source the formula itself, solved for the temperature
     */
    public double frostPoint(double vapourPressurePa) {
        return solve(StrictMath.log(vapourOverIce.check(vapourPressurePa)), true);
    }

    /** The temperature of a logarithm, by secants in 1/T, in which it is nearly straight. */
    private double solve(double ln, boolean ice) {
        ModelRange range = ice ? overIce : overWater;
        double before = 1.0 / range.highest();
        double at = 1.0 / (0.5 * (range.lowest() + range.highest()));
        double offBefore = excess(ln, before, ice);
        double off = excess(ln, at, ice);
        for (int step = 0; step < MOST_STEPS && off != offBefore; step++) {
            double next = at - off * (at - before) / (off - offBefore);
            before = at;
            offBefore = off;
            at = next;
            off = excess(ln, at, ice);
        }
        // rounding may step over an end of the range
        return Math.max(range.lowest(), Math.min(range.highest(), 1.0 / at));
    }

    private double excess(double ln, double perKelvin, boolean ice) {
        double temperatureK = 1.0 / perKelvin;
        return (ice ? lnOverIce(temperatureK) : lnOverWater(temperatureK)) - ln;
    }
}
