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
 * Continuous maximum icing: the design conditions for layer cloud.
 *
 * <p>The largest liquid water content depends on the drop diameter and on the temperature, so
 * "largest at a temperature" has no meaning by itself. It is a mean over 17.4 NM; over another
 * distance it is multiplied by the {@link #extentFactor}, which is not a licence to stay longer in
 * less water.
 *
 * <pre>{@code
 * ContinuousMaximum.liquidWaterContent(25e-6, 263.15)                    // 3.0E-4, or 0.3 g/m³
 * ContinuousMaximum.extentFactor(GroundDistance.ofNauticalMiles(50))     // 0.66
 * }</pre>
 *
 * <p>Limits of use: an interpolation of ours through points of a printed figure, for study and
 * teaching, not certification evidence. Temperature is static, not total. The deepest layer of the
 * rule, 6500 ft, is a note of the figure and no limit here.
 *
 * @source 14 CFR parts 25 and 29, Appendix C, figures 1 to 3. Figure 1: points at 15, 25 and 40 µm
 *     are NACA TN 1855 (1949), table I, class III-M, which FAA AC 20-73A, table 6, has too (both as
 *     transcribed in public reviews; one later report prints 0.59 for 0.60 g/m³ at -10 °C and 15
 *     µm); the others were read from the figure to 0.006 g/m³. Figure 2: its corners. Figure 3:
 *     printed ends, points read to 0.01, and 1 at 17.4 NM by definition, though the drawn line
 *     meets 1 at about 17 NM
 */
public final class ContinuousMaximum {
    /** The horizontal extent for which the water is stated [m]: 17.4 NM. */
    public static final double STANDARD_EXTENT_M = 17.4 * 1852.0;

    private static final String NAME = "continuous maximum icing, 14 CFR 25 Appendix C";
    private static final String FIGURE_1 = "14 CFR 25 Appendix C, figure 1";
    private static final String FIGURE_2 = "14 CFR 25 Appendix C, figure 2";

    private static final double NM = UnitScale.NAUTICAL_MILE.factor();
    private static final double FLAT_TOP_M = UnitScale.FOOT.toSi(12_000.0);
    private static final double HIGHEST_M = UnitScale.FOOT.toSi(22_000.0);
    private static final double WARMEST_K = UnitScale.CELSIUS.toSi(0.0);
    private static final double COLDEST_K = UnitScale.CELSIUS.toSi(-30.0);
    private static final double WARMEST_AT_TOP_K = UnitScale.CELSIUS.toSi(-20.0);

    private static final WaterLines WATER =
            new WaterLines(
                    "continuous maximum",
                    new double[] {-30.0, -20.0, -10.0, 0.0},
                    new double[][] {
                        {15.0, 17.5, 22.5, 25.0, 27.5, 32.5, 37.5, 40.0},
                        {15.0, 20.0, 25.0, 30.0, 35.0, 40.0},
                        {15.0, 17.5, 22.5, 25.0, 27.5, 32.5, 37.5, 40.0},
                        {15.0, 20.0, 25.0, 30.0, 35.0, 40.0},
                    },
                    new double[][] {
                        {0.2, 0.165, 0.116, 0.1, 0.083, 0.061, 0.045, 0.04},
                        {0.3, 0.211, 0.15, 0.114, 0.082, 0.06},
                        {0.6, 0.502, 0.357, 0.3, 0.255, 0.187, 0.124, 0.1},
                        {0.8, 0.634, 0.5, 0.378, 0.259, 0.15},
                    });

    private static final ExtentFactor EXTENT =
            new ExtentFactor(
                    "figure 3 of Appendix C is drawn for these",
                    new double[][] {
                        {5.0 * NM, 1.34},
                        {6.0 * NM, 1.29},
                        {7.0 * NM, 1.255},
                        {8.0 * NM, 1.22},
                        {9.0 * NM, 1.19},
                        {10.0 * NM, 1.16},
                        {STANDARD_EXTENT_M, 1.0},
                        {20.0 * NM, 0.946},
                        {30.0 * NM, 0.82},
                        {40.0 * NM, 0.73},
                        {50.0 * NM, 0.66},
                        {100.0 * NM, 0.457},
                        {170.0 * NM, 0.32},
                        {200.0 * NM, 0.285},
                        {310.0 * NM, 0.2},
                    });

    private static final Bounds ALTITUDE =
            new Bounds("pressure altitude", 0.0, HIGHEST_M, "m", "figure 2 ends at 22,000 ft");

    private ContinuousMaximum() {}

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
     * @param dropDiameterM mean effective drop diameter [m], 15e-6 to 40e-6
     * @param temperatureK static air temperature [K], 243.15 to 273.15
     * @return liquid water content [kg/m³], falling with larger drops and colder air
     * @throws OutsideModelException if a value is out of range
     * @accuracy the points themselves to the last digit; between points of a line estimated at
     *     0.006e-3 kg/m³ beyond the 0.006e-3 of reading (a point left out is missed by 0.012e-3 at
     *     most, over twice the step); between lines unknown
     * @source see the class comment
     */
    public static double liquidWaterContent(double dropDiameterM, double temperatureK) {
        return WATER.at(dropDiameterM, temperatureK);
    }

    /**
     * Returns points of the line of largest liquid water content at a temperature, for a figure.
     *
     * @param temperature static air temperature, -30 to 0 °C
     * @param points how many, 2 or more
     * @return points at equal steps of diameter from 15 to 40 µm
     * @throws OutsideModelException if the temperature is out of range
     * @throws IllegalArgumentException if there are less than 2 points
     */
    public static List<WaterPoint> line(StaticAirTemperature temperature, int points) {
        return WATER.line(temperature.inKelvins(), points);
    }

    /**
     * Returns the points that the interpolation goes through, for a figure.
     *
     * @return the points of the lines of -30, -20, -10 and 0 °C, in this order
     */
    public static List<List<WaterPoint>> tabulated() {
        return WATER.tabulated();
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
     * Returns by what the largest liquid water content is multiplied for a horizontal extent: an
     * interpolation straight in the logarithm of the extent.
     *
     * @param extentM horizontal extent [m], 5 to 310 NM; from about 170 NM the figure is dashed
     * @return the factor, 1 at {@link #STANDARD_EXTENT_M}, falling
     * @throws OutsideModelException if the extent is out of range
     * @accuracy 0.015 against readings of the figure
     * @source see the class comment; a later report ends the line at 300 NM
     */
    public static double extentFactor(double extentM) {
        return EXTENT.at(extentM);
    }

    /**
     * Returns the factor for a horizontal extent.
     *
     * @param extent horizontal extent, 5 to 310 NM
     * @return as {@link #extentFactor(double)}
     * @throws OutsideModelException if the extent is out of range
     */
    public static double extentFactor(GroundDistance extent) {
        return extentFactor(extent.inMetres());
    }

    /**
     * Tells whether the envelope has a warm edge at an altitude.
     *
     * @param pressureAltitudeM pressure altitude [m]
     * @return true if {@link #warmestTemperature} answers
     */
    public static boolean coversAltitude(double pressureAltitudeM) {
        return ALTITUDE.covers(pressureAltitudeM);
    }

    /**
     * Returns the warm edge of the envelope: 0 °C up to 12,000 ft, then 2 K less in each 1000 ft.
     *
     * @param pressureAltitudeM pressure altitude [m], 0 to 22,000 ft
     * @return static air temperature [K]
     * @throws OutsideModelException if the altitude is out of range
     * @accuracy exact between the corners of the figure
     * @source 14 CFR parts 25 and 29, Appendix C, figure 2
     */
    public static double warmestTemperature(double pressureAltitudeM) {
        double above = Math.max(0.0, ALTITUDE.check(pressureAltitudeM) - FLAT_TOP_M);
        return WARMEST_K - (WARMEST_K - WARMEST_AT_TOP_K) * (above / (HIGHEST_M - FLAT_TOP_M));
    }

    /**
     * Returns the corners of the envelope of altitude and temperature, for a figure.
     *
     * @return five corners, in order around it
     */
    public static List<EnvelopeCorner> corners() {
        return List.of(
                corner(0.0, WARMEST_K),
                corner(FLAT_TOP_M, WARMEST_K),
                corner(HIGHEST_M, WARMEST_AT_TOP_K),
                corner(HIGHEST_M, COLDEST_K),
                corner(0.0, COLDEST_K));
    }

    private static EnvelopeCorner corner(double altitudeM, double temperatureK) {
        return new EnvelopeCorner(
                PressureAltitude.ofMetres(altitudeM), StaticAirTemperature.ofKelvins(temperatureK));
    }

    /**
     * Says whether conditions over some extent are inside, and by how much of each limit.
     *
     * @param altitude pressure altitude
     * @param temperature static air temperature
     * @param dropDiameterM mean effective drop diameter [m]
     * @param liquidWaterContentKgPerM3 liquid water content [kg/m³], a mean over the extent
     * @param extent horizontal extent; {@link #STANDARD_EXTENT_M} if nothing else is meant
     * @return the verdict; edges are inside
     * @throws IllegalArgumentException if water or diameter are negative or not finite
     */
    public static EnvelopeVerdict verdict(
            PressureAltitude altitude,
            StaticAirTemperature temperature,
            double dropDiameterM,
            double liquidWaterContentKgPerM3,
            GroundDistance extent) {
        double extentM = extent.inMetres();
        double altitudeM = altitude.inMetres();
        double temperatureK = temperature.inKelvins();
        List<LimitMargin> margins =
                WATER.margins(
                        liquidWaterContentKgPerM3,
                        dropDiameterM,
                        temperatureK,
                        coversExtent(extentM) ? extentFactor(extentM) : Double.NaN,
                        FIGURE_1);
        margins.add(atLeast(LOWEST_ALTITUDE, altitudeM, 0.0, FIGURE_2));
        margins.add(atMost(HIGHEST_ALTITUDE, altitudeM, HIGHEST_M, FIGURE_2));
        margins.add(
                coversAltitude(altitudeM)
                        ? atMost(
                                TEMPERATURE_FOR_ALTITUDE,
                                temperatureK,
                                warmestTemperature(altitudeM),
                                FIGURE_2)
                        : notKnown(TEMPERATURE_FOR_ALTITUDE, "no edge is drawn at that altitude"));
        return new EnvelopeVerdict(NAME, margins);
    }
}
