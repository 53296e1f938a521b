package org.climbwright.icing.envelope;

import static org.climbwright.icing.envelope.LimitMargin.Limit.HIGHEST_ALTITUDE;
import static org.climbwright.icing.envelope.LimitMargin.Limit.LOWEST_ALTITUDE;
import static org.climbwright.icing.envelope.LimitMargin.Limit.TEMPERATURE_FOR_ALTITUDE;
import static org.climbwright.icing.envelope.LimitMargin.atLeast;
import static org.climbwright.icing.envelope.LimitMargin.atMost;
import static org.climbwright.icing.envelope.LimitMargin.notKnown;

import java.util.List;
import org.climbwright.quantity.OutsideModelException;
import org.climbwright.quantity.altitude.PressureAltitude;
import org.climbwright.quantity.path.GroundDistance;
import org.climbwright.quantity.temperature.StaticAirTemperature;
import org.climbwright.unit.UnitScale;

/**
 * Intermittent maximum icing: the design conditions for cumulus cloud.
 *
 * <p>The envelope of altitude and temperature, figure 5 of Appendix C, was not seen and is absent:
 * a verdict here is at best "not known", never "inside". Of figure 4 too only points that are
 * tabulated elsewhere were seen, at 15, 20, 30 and 50 µm.
 *
 * <p>Limits of use: an interpolation of ours, coarse between 30 and 50 µm, for study and teaching,
 * not certification evidence. Temperature is static, not total.
 *
 * @source largest water at 15 and 50 µm: FAA AC 20-73A, table 6, values of 14 CFR 25 Appendix C,
 *     figure 4; at 20 and 30 µm: NACA TN 1855 (1949), table I, class II-M, the stated basis of that
 *     figure. Extent: NACA TN 2738 (1952), figure 8, cumulus, the stated source of figure 6 of
 *     Appendix C, which was not seen itself, read to 0.006; 1 at 2.6 NM by definition of the rule.
 *     Altitudes 4000 to 22,000 ft: from memory
 */
public final class IntermittentMaximum {
    /** The horizontal extent for which the water is stated [m]: 2.6 NM. */
    public static final double STANDARD_EXTENT_M = 2.6 * 1852.0;

    private static final String NAME = "intermittent maximum icing, 14 CFR 25 Appendix C";
    private static final String POINTS = "FAA AC 20-73A, table 6, and NACA TN 1855, table I";
    private static final String MEMORY = "14 CFR 25 Appendix C, figure 4, a note, from memory";
    private static final double STATUTE_MILE = 1609.344;

    private static final double[] MICROMETRES = {15.0, 20.0, 30.0, 50.0};

    private static final WaterLines WATER =
            new WaterLines(
                    "intermittent maximum",
                    new double[] {-40.0, -30.0, -20.0, -10.0, 0.0},
                    new double[][] {
                        MICROMETRES, MICROMETRES, MICROMETRES, MICROMETRES, MICROMETRES
                    },
                    new double[][] {
                        {0.25, 0.2, 0.1, 0.05},
                        {1.1, 1.0, 0.5, 0.1},
                        {1.925, 1.7, 0.8, 0.2},
                        {2.5, 2.2, 1.0, 0.3},
                        {2.925, 2.5, 1.3, 0.4},
                    });

    private static final ExtentFactor EXTENT =
            new ExtentFactor(
                    "figure 8 of NACA TN 2738 was read for these",
                    new double[][] {
                        {0.3 * STATUTE_MILE, 1.34},
                        {0.4 * STATUTE_MILE, 1.32},
                        {0.6 * STATUTE_MILE, 1.279},
                        {0.7 * STATUTE_MILE, 1.262},
                        {0.9 * STATUTE_MILE, 1.23},
                        {STATUTE_MILE, 1.215},
                        {2.0 * STATUTE_MILE, 1.088},
                        {2.5 * STATUTE_MILE, 1.05},
                        {STANDARD_EXTENT_M, 1.0},
                        {4.0 * STATUTE_MILE, 0.936},
                        {5.0 * STATUTE_MILE, 0.889},
                        {6.0 * STATUTE_MILE, 0.847},
                    });

    private IntermittentMaximum() {}

    /**
     * Tells whether there is a largest liquid water content.
     *
     * @param dropDiameterM mean effective drop diameter [m]
     * @param temperatureK static air temperature [K]
     * @return true if {@link #liquidWaterContent} answers
     */
    public static boolean coversLiquidWaterContent(double dropDiameterM, double temperatureK) {
        return WATER.covers(dropDiameterM, temperatureK);
    }

    /**
     * Returns the largest liquid water content over the standard extent: an interpolation, along a
     * line smooth and monotone through its points, between two lines straight in temperature.
     *
     * @param dropDiameterM mean effective drop diameter [m], 15e-6 to 50e-6
     * @param temperatureK static air temperature [K], 233.15 to 273.15
     * @return liquid water content [kg/m³], falling with larger drops and colder air
     * @throws OutsideModelException if a value is out of range
     * @accuracy the points themselves to the last digit; unknown between them, where the figure was
     *     not seen
     * @source see the class comment
     */
    public static double liquidWaterContent(double dropDiameterM, double temperatureK) {
        return WATER.at(dropDiameterM, temperatureK);
    }

    /**
     * Returns points of the line of largest liquid water content at a temperature, for a figure.
     *
     * @param temperature static air temperature, -40 to 0 °C
     * @param points how many, 2 or more
     * @return points at equal steps of diameter from 15 to 50 µm
     * @throws OutsideModelException if the temperature is out of range
     * @throws IllegalArgumentException if there are less than 2 points
     */
    public static List<WaterPoint> line(StaticAirTemperature temperature, int points) {
        return WATER.line(temperature.inKelvins(), points);
    }

    /**
     * Tells whether there is a factor for a horizontal extent.
     *
     * @param extentM horizontal extent [m]
     * @return true if {@link #extentFactor(double)} answers
     */
    public static boolean coversExtent(double extentM) {
        return EXTENT.covers(extentM);
    }

    /**
     * Returns by what the largest liquid water content is multiplied for a horizontal extent, by
     * the cumulus curve of NACA TN 2738, figure 8: an interpolation straight in the logarithm of
     * the extent.
     *
     * @param extentM horizontal extent [m], 0.3 to 6 statute miles, which is 0.26 to 5.2 NM
     * @return the factor, 1 at {@link #STANDARD_EXTENT_M}, falling
     * @throws OutsideModelException if the extent is out of range
     * @accuracy 0.01 against readings of that figure
     * @source see the class comment
     */
    public static double extentFactor(double extentM) {
        return EXTENT.at(extentM);
    }

    /**
     * Returns the factor for a horizontal extent.
     *
     * @param extent horizontal extent, 0.3 to 6 statute miles
     * @return as {@link #extentFactor(double)}
     * @throws OutsideModelException if the extent is out of range
     */
    public static double extentFactor(GroundDistance extent) {
        return extentFactor(extent.inMetres());
    }

    /**
     * Says whether conditions over some extent are outside, and by how much of each limit that is
     * known.
     *
     * @param altitude pressure altitude
     * @param temperature static air temperature
     * @param dropDiameterM mean effective drop diameter [m]
     * @param liquidWaterContentKgPerM3 liquid water content [kg/m³], a mean over the extent
     * @param extent horizontal extent; {@link #STANDARD_EXTENT_M} if nothing else is meant
     * @param remembered whether the altitudes from 4000 to 22,000 ft, from memory, are limits
     * @return the verdict; edges are inside; never "inside" as a whole, since the envelope of
     *     altitude and temperature was not seen
     * @throws IllegalArgumentException if water or diameter are negative or not finite
     */
    public static EnvelopeVerdict verdict(
            PressureAltitude altitude,
            StaticAirTemperature temperature,
            double dropDiameterM,
            double liquidWaterContentKgPerM3,
            GroundDistance extent,
            RememberedValues remembered) {
        double extentM = extent.inMetres();
        double altitudeM = altitude.inMetres();
        List<LimitMargin> margins =
                WATER.margins(
                        liquidWaterContentKgPerM3,
                        dropDiameterM,
                        temperature.inKelvins(),
                        coversExtent(extentM) ? extentFactor(extentM) : Double.NaN,
                        POINTS);
        margins.add(
                remembered.isUsed()
                        ? atLeast(LOWEST_ALTITUDE, altitudeM, UnitScale.FOOT.toSi(4000.0), MEMORY)
                        : notKnown(LOWEST_ALTITUDE, RememberedValues.REASON));
        margins.add(
                remembered.isUsed()
                        ? atMost(HIGHEST_ALTITUDE, altitudeM, UnitScale.FOOT.toSi(22_000.0), MEMORY)
                        : notKnown(HIGHEST_ALTITUDE, RememberedValues.REASON));
        margins.add(
                notKnown(
                        TEMPERATURE_FOR_ALTITUDE,
                        "figure 5 of 14 CFR 25 Appendix C was not seen by the makers of this"
                                + " library"));
        return new EnvelopeVerdict(NAME, margins);
    }
}
