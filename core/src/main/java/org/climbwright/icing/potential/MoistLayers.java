package org.climbwright.icing.potential;

import java.util.List;
import java.util.Locale;
import org.climbwright.atmosphere.AirState;
import org.climbwright.atmosphere.Atmosphere;
import org.climbwright.icing.potential.IndicationSpan.Kind;
import org.climbwright.quantity.ModelRange;
import org.climbwright.quantity.humidity.RelativeHumidity;
import org.climbwright.unit.UnitScale;

/**
 * Layers whose relative humidity over liquid water is at or above a threshold, which forecast
 * schemes take for cloud.
 *
 * <p>Limits of use: moist is not cloud. The thresholds of schemes make up for the errors of one
 * forecast model and are no physics; a balloon's humidity is a few percent off, more so in the
 * cold, and 100 % over ice is 82 % over water at -20 °C and 68 % at -40 °C. No layer found is not
 * "no cloud".
 *
 * @source the thresholds by latitude: post-processor of the US National Centers for Environmental
 *     Prediction, public source of its global forecast icing module (2015)
 */
public final class MoistLayers {
    private static final double TROPICS_RAD = UnitScale.DEGREE.toSi(23.5);
    private static final double POLAR_RAD = UnitScale.DEGREE.toSi(66.0);

    private static final ModelRange LATITUDE =
            new ModelRange(
                    "latitude",
                    UnitScale.DEGREE.toSi(-90.0),
                    UnitScale.DEGREE.toSi(90.0),
                    "rad",
                    "the poles are at 90 degrees");

    private static final int NOT_KNOWN = -1;

    private MoistLayers() {}

    /**
     * Returns the layers at or above a threshold, and those whose humidity is not known.
     *
     * @param air the air
     * @param threshold the lowest relative humidity over water that counts, itself included
     * @return the spans from the lowest to the highest; the rest is drier
     * @throws org.climbwright.quantity.OutsideModelException if the air is somewhere outside 123 to
     *     332 K and its humidity known
     * @throws IllegalArgumentException if the air is somewhere more than saturated
     * @accuracy edges to 1e-8 m of where the humidity passes the threshold
     */
    public static List<IndicationSpan> in(Atmosphere air, RelativeHumidity threshold) {
        return ProfileSearch.of(air, pressurePa -> state(air, pressurePa, threshold)).stream()
                .filter(stretch -> stretch.state() != 0)
                .map(
                        stretch ->
                                span(
                                        stretch.state() == NOT_KNOWN,
                                        IndicationSpan.state(air, stretch.bottomPa()),
                                        IndicationSpan.state(air, stretch.topPa()),
                                        threshold))
                .toList();
    }

    /** 1 is moist, 0 is drier, -1 is not known. */
    static int state(Atmosphere air, double pressurePa, RelativeHumidity threshold) {
        return IndicationSpan.state(air, pressurePa)
                .relativeHumidity()
                .map(humidity -> humidity.compareTo(threshold) >= 0 ? 1 : 0)
                .orElse(NOT_KNOWN);
    }

    private static IndicationSpan span(
            boolean isUnknown, AirState bottom, AirState top, RelativeHumidity threshold) {
        return isUnknown
                ? new IndicationSpan(Kind.NOT_KNOWN, bottom, top, "humidity is not known")
                : new IndicationSpan(
                        Kind.INDICATED,
                        bottom,
                        top,
                        String.format(
                                Locale.ROOT,
                                "relative humidity over water of %.0f %% or more",
                                threshold.inPercent()));
    }

    /**
     * Tells whether {@link #thresholdAtLatitude} takes a latitude.
     *
     * @param latitudeRad geographic latitude, north positive [rad]
     * @return true between the poles
     */
    public static boolean coversLatitude(double latitudeRad) {
        return LATITUDE.covers(latitudeRad);
    }

    /**
     * Returns the threshold of the global forecast scheme for cloud layers.
     *
     * <p>The scheme applies it level by level of its model, and asks for two successive levels at
     * or above it for a top and two below it for a base; air here has no levels, and that is left
     * out.
     *
     * @param latitudeRad geographic latitude, north positive [rad]
     * @return relative humidity over water, a ratio: 0.80 between 23.5° south and north, 0.75 from
     *     there up to 66°, 0.70 from 66° on
     * @throws org.climbwright.quantity.OutsideModelException if the latitude is beyond a pole
     * @accuracy exact
     * @source see the class comment
     */
    public static double thresholdAtLatitude(double latitudeRad) {
        double fromEquator = Math.abs(LATITUDE.check(latitudeRad));
        return fromEquator < TROPICS_RAD ? 0.80 : fromEquator < POLAR_RAD ? 0.75 : 0.70;
    }
}
