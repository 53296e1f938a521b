package org.climbwright.icing.potential;

import org.climbwright.quantity.ModelRange;
import org.climbwright.unit.UnitScale;

/**
 * The icing severity matrix of 1991: an index from the liquid water content of a cloud, its
 * temperature and its group.
 *
 * <p>The index is 0 for none, 1 to 3 in continuous cloud and 4 to 6 in intermittent cloud; the
 * category is 1 to 3 in both.
 *
 * <p>Limits of use: a coarse table of a research weather analysis, before present rules for
 * intensity; it knows neither drop sizes, but for freezing rain or drizzle, nor how long the cloud
 * lasts, nor the aeroplane. The liquid water content of models and estimates is easily wrong by a
 * factor of two, and each bound jumps. It gives 0 above 0 °C, where intakes and a cold airframe may
 * take ice nevertheless: an index of 0 is not "no icing".
 *
 * @source icing severity index routine, version 2.0 (M. K. Politovich, December 1991), public
 *     source of a US local-analysis weather package
 */
public final class SeverityMatrix {
    private static final double LEAST_KG_PER_M3 = UnitScale.GRAM_PER_CUBIC_METRE.toSi(0.01);
    private static final double MORE_KG_PER_M3 = UnitScale.GRAM_PER_CUBIC_METRE.toSi(0.1);
    private static final double MOST_KG_PER_M3 = UnitScale.GRAM_PER_CUBIC_METRE.toSi(0.5);

    private static final double COLDER_K = UnitScale.CELSIUS.toSi(-10.0);
    private static final double COLD_K = UnitScale.CELSIUS.toSi(-5.0);
    private static final double ICE_POINT_K = UnitScale.CELSIUS.toSi(0.0);

    private static final ModelRange LIQUID_WATER =
            new ModelRange("liquid water content", 0.0, 0.05, "kg/m³", "no cloud holds more");

    private static final ModelRange TEMPERATURE =
            new ModelRange("static air temperature", 100.0, 400.0, "K", "no air is outside");

    private static final ModelRange INDEX =
            new ModelRange("icing severity index", 0.0, 6.0, "", "the matrix has seven");

    /** By temperature, cold first, then by liquid water content, least first. */
    private static final int[][] CONTINUOUS = {{1, 2, 3}, {2, 2, 3}, {2, 3, 3}};

    private static final int INTERMITTENT_MORE = 3;

    private SeverityMatrix() {}

    /** The two groups of cloud. */
    public enum CloudGroup {
        /** Stratiform cloud. */
        CONTINUOUS,
        /** Cumuliform cloud, among it stratocumulus, altocumulus and cumulonimbus. */
        INTERMITTENT
    }

    /**
     * Tells whether the matrix takes a liquid water content and a temperature.
     *
     * @param liquidWaterKgPerM3 mass of liquid water per volume of cloud [kg/m³]
     * @param temperatureK static air temperature [K]
     * @return true from 0 to 0.05 kg/m³ and from 100 to 400 K
     */
    public static boolean covers(double liquidWaterKgPerM3, double temperatureK) {
        return LIQUID_WATER.covers(liquidWaterKgPerM3) && TEMPERATURE.covers(temperatureK);
    }

    /**
     * Returns the severity index of a cloud without freezing rain or drizzle.
     *
     * @param liquidWaterKgPerM3 mass of liquid water per volume of cloud [kg/m³], 0 to 0.05; the
     *     bounds 0.01, 0.1 and 0.5 g/m³ belong to the lower class
     * @param temperatureK static air temperature [K], 100 to 400; the bounds -10, -5 and 0 °C
     *     belong to the colder class
     * @param group the group of cloud
     * @return 0 for none; 1 to 3 in continuous and 4 to 6 in intermittent cloud
     * @throws org.climbwright.quantity.OutsideModelException if a value is out of range
     * @accuracy exact
     * @source see the class comment
     */
    public static int index(double liquidWaterKgPerM3, double temperatureK, CloudGroup group) {
        LIQUID_WATER.check(liquidWaterKgPerM3);
        TEMPERATURE.check(temperatureK);
        if (liquidWaterKgPerM3 <= LEAST_KG_PER_M3 || temperatureK > ICE_POINT_K) {
            return 0;
        }
        int water =
                liquidWaterKgPerM3 > MOST_KG_PER_M3
                        ? 2
                        : moreThan(MORE_KG_PER_M3, liquidWaterKgPerM3);
        int warmth = temperatureK > COLD_K ? 2 : moreThan(COLDER_K, temperatureK);
        return inGroup(CONTINUOUS[warmth][water], group);
    }

    private static int moreThan(double bound, double value) {
        return value > bound ? 1 : 0;
    }

    private static int inGroup(int continuous, CloudGroup group) {
        return group == CloudGroup.INTERMITTENT ? continuous + INTERMITTENT_MORE : continuous;
    }

    /**
     * Returns the severity index where freezing rain or drizzle is reported or forecast, whatever
     * the cloud's temperature and water.
     *
     * @param group the group of cloud
     * @return the highest of the group: 3 in continuous, 6 in intermittent cloud
     * @source see the class comment
     */
    public static int indexInFreezingPrecipitation(CloudGroup group) {
        return inGroup(CONTINUOUS[2][2], group);
    }

    /**
     * Tells whether there is such an index.
     *
     * @param index severity index
     * @return true from 0 to 6
     */
    public static boolean coversIndex(int index) {
        return INDEX.covers(index);
    }

    /**
     * Returns the severity category of an index.
     *
     * @param index severity index, 0 to 6
     * @return 0 for none, 1 to 3, the same for both groups of cloud
     * @throws org.climbwright.quantity.OutsideModelException if there is no such index
     * @source see the class comment
     */
    public static int category(int index) {
        INDEX.check(index);
        return index > INTERMITTENT_MORE ? index - INTERMITTENT_MORE : index;
    }
}
