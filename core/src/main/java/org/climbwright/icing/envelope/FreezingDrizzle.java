package org.climbwright.icing.envelope;

import static org.climbwright.icing.envelope.Curve.Paper.PLAIN;
import static org.climbwright.icing.envelope.LimitMargin.Limit.COLDEST_TEMPERATURE;
import static org.climbwright.icing.envelope.LimitMargin.Limit.HIGHEST_ALTITUDE;
import static org.climbwright.icing.envelope.LimitMargin.Limit.LIQUID_WATER_CONTENT;
import static org.climbwright.icing.envelope.LimitMargin.Limit.LOWEST_ALTITUDE;
import static org.climbwright.icing.envelope.LimitMargin.Limit.TEMPERATURE_FOR_ALTITUDE;
import static org.climbwright.icing.envelope.LimitMargin.Limit.VERTICAL_EXTENT;
import static org.climbwright.icing.envelope.LimitMargin.Limit.WARMEST_TEMPERATURE;
import static org.climbwright.icing.envelope.LimitMargin.atLeast;
import static org.climbwright.icing.envelope.LimitMargin.atMost;
import static org.climbwright.icing.envelope.LimitMargin.notKnown;

import java.util.List;
import org.climbwright.quantity.OutsideModelException;
import org.climbwright.quantity.altitude.AltitudeChange;
import org.climbwright.quantity.altitude.PressureAltitude;
import org.climbwright.quantity.path.GroundDistance;
import org.climbwright.quantity.temperature.StaticAirTemperature;
import org.climbwright.unit.UnitScale;

/**
 * Freezing drizzle: design conditions with drops larger than those of layer cloud, the largest from
 * 100 to 500 µm.
 *
 * <p>The envelope of altitude and temperature, figure 3 of Appendix O, was not seen and is absent:
 * a verdict here is at best "not known", never "inside".
 *
 * <p>Limits of use: readings of a printed figure, for study and teaching, not certification
 * evidence.
 *
 * @source 14 CFR part 25, Appendix O, part I: pressure altitude 0 to 22,000 ft, vertical extent
 *     12,000 ft, horizontal extent 17.4 NM, figure 1 (ends printed, points between read to 0.006
 *     g/m³)
 */
public final class FreezingDrizzle {
    /** Which of the two spectra of drops: by the median volume diameter. */
    public enum Spectrum {
        /** Median volume diameter below 40 µm. */
        MEDIAN_BELOW_40_MICROMETRES,
        /** Median volume diameter above 40 µm. */
        MEDIAN_ABOVE_40_MICROMETRES
    }

    /** The horizontal extent for which the water is stated [m]: 17.4 NM. */
    public static final double STANDARD_EXTENT_M = 17.4 * 1852.0;

    private static final String RULE = "14 CFR 25 Appendix O, part I";
    private static final double HIGHEST_M = UnitScale.FOOT.toSi(22_000.0);
    private static final double DEEPEST_M = UnitScale.FOOT.toSi(12_000.0);

    private static final Curve BELOW_40 =
            line(
                    new double[] {-25.0, -20.0, -15.0, -10.0, -5.0, 0.0},
                    new double[] {0.29, 0.318, 0.344, 0.374, 0.406, 0.44});

    private static final Curve ABOVE_40 =
            line(
                    new double[] {-25.0, -20.0, -15.0, -10.0, 0.0},
                    new double[] {0.18, 0.195, 0.214, 0.231, 0.27});

    private static final Bounds TEMPERATURE =
            new Bounds(
                    "static air temperature",
                    UnitScale.CELSIUS.toSi(-25.0),
                    UnitScale.CELSIUS.toSi(0.0),
                    "K",
                    "figure 1 of Appendix O is drawn for these");

    private static final Bounds EXTENT =
            new Bounds(
                    "horizontal extent",
                    UnitScale.NAUTICAL_MILE.toSi(5.0),
                    UnitScale.NAUTICAL_MILE.toSi(300.0),
                    "m",
                    "the formula is remembered for these");

    private FreezingDrizzle() {}

    private static Curve line(double[] celsius, double[] grams) {
        return new Curve(
                PLAIN,
                WaterLines.si(celsius, UnitScale.CELSIUS),
                WaterLines.si(grams, UnitScale.GRAM_PER_CUBIC_METRE));
    }

    /**
     * Tells whether there is a largest liquid water content.
     *
     * @param temperatureK static air temperature [K]
     * @return true if {@link #liquidWaterContent} answers
     */
    public static boolean coversTemperature(double temperatureK) {
        return TEMPERATURE.covers(temperatureK);
    }

    /**
     * Returns the largest liquid water content over the standard extent: straight between readings
     * of the figure.
     *
     * @param temperatureK static air temperature [K], 248.15 to 273.15
     * @param spectrum which of the two spectra of drops
     * @return liquid water content [kg/m³], falling with colder air
     * @throws OutsideModelException if the temperature is out of range
     * @accuracy 0.006e-3 kg/m³ against the figure, as it could be read
     * @source see the class comment
     */
    public static double liquidWaterContent(double temperatureK, Spectrum spectrum) {
        Curve curve = spectrum == Spectrum.MEDIAN_BELOW_40_MICROMETRES ? BELOW_40 : ABOVE_40;
        return curve.at(TEMPERATURE.check(temperatureK));
    }

    /**
     * Tells whether there is a remembered factor for a horizontal extent.
     *
     * @param extentM horizontal extent [m]
     * @return true if {@link #extentFactorFromMemory} answers
     */
    public static boolean coversExtent(double extentM) {
        return EXTENT.covers(extentM);
    }

    /**
     * Returns by what the largest liquid water content is multiplied for a horizontal extent, by a
     * formula from memory: {@code 1.266 - 0.213 log10(extent in NM)}.
     *
     * @param extentM horizontal extent [m], 5 to 300 NM
     * @return the factor; 1.0018 at the standard extent, where the rule means 1
     * @throws OutsideModelException if the extent is out of range
     * @accuracy unknown; 0.002 at the standard extent
     * @source 14 CFR part 25, Appendix O, part I (c) and figure 7: from memory, the page was not
     *     seen
     */
    public static double extentFactorFromMemory(double extentM) {
        double nauticalMiles = UnitScale.NAUTICAL_MILE.fromSi(EXTENT.check(extentM));
        return 1.266 - 0.213 * StrictMath.log10(nauticalMiles);
    }

    /**
     * Says whether conditions over some extent are outside, and by how much of each limit that is
     * known.
     *
     * @param altitude pressure altitude
     * @param temperature static air temperature
     * @param depth vertical extent of the layer
     * @param spectrum which of the two spectra of drops
     * @param liquidWaterContentKgPerM3 liquid water content [kg/m³], a mean over the extent
     * @param extent horizontal extent; {@link #STANDARD_EXTENT_M} if nothing else is meant
     * @param remembered whether the formula for other extents, from memory, is used
     * @return the verdict; edges are inside; never "inside" as a whole, since the envelope of
     *     altitude and temperature was not seen
     * @throws IllegalArgumentException if the water is negative or not finite
     */
    public static EnvelopeVerdict verdict(
            PressureAltitude altitude,
            StaticAirTemperature temperature,
            AltitudeChange depth,
            Spectrum spectrum,
            double liquidWaterContentKgPerM3,
            GroundDistance extent,
            RememberedValues remembered) {
        double temperatureK = temperature.inKelvins();
        return new EnvelopeVerdict(
                "freezing drizzle, 14 CFR 25 Appendix O",
                List.of(
                        atLeast(
                                COLDEST_TEMPERATURE,
                                temperatureK,
                                TEMPERATURE.range().lowest(),
                                RULE),
                        atMost(
                                WARMEST_TEMPERATURE,
                                temperatureK,
                                TEMPERATURE.range().highest(),
                                RULE),
                        water(
                                Given.water(liquidWaterContentKgPerM3),
                                temperatureK,
                                spectrum,
                                extent.inMetres(),
                                remembered),
                        atLeast(LOWEST_ALTITUDE, altitude.inMetres(), 0.0, RULE),
                        atMost(HIGHEST_ALTITUDE, altitude.inMetres(), HIGHEST_M, RULE),
                        atMost(VERTICAL_EXTENT, depth.inMetres(), DEEPEST_M, RULE),
                        notKnown(
                                TEMPERATURE_FOR_ALTITUDE,
                                "figure 3 of 14 CFR 25 Appendix O was not seen by the makers of"
                                        + " this library")));
    }

    private static LimitMargin water(
            double waterKgPerM3,
            double temperatureK,
            Spectrum spectrum,
            double extentM,
            RememberedValues remembered) {
        if (!coversTemperature(temperatureK)) {
            return notKnown(LIQUID_WATER_CONTENT, "no line is drawn at that temperature");
        }
        double largest = liquidWaterContent(temperatureK, spectrum);
        if (Bounds.isZero(extentM - STANDARD_EXTENT_M, extentM, STANDARD_EXTENT_M)) {
            return atMost(LIQUID_WATER_CONTENT, waterKgPerM3, largest, RULE + ", figure 1");
        }
        if (!remembered.isUsed()) {
            return notKnown(
                    LIQUID_WATER_CONTENT, "the factor for extents is " + RememberedValues.REASON);
        }
        if (!coversExtent(extentM)) {
            return notKnown(LIQUID_WATER_CONTENT, "no factor is remembered for that extent");
        }
        return atMost(
                LIQUID_WATER_CONTENT,
                waterKgPerM3,
                largest * extentFactorFromMemory(extentM),
                RULE + ", figure 1, and the factor for extents from memory");
    }
}
