package org.climbwright.icing.potential;

import java.util.ArrayList;
import java.util.List;
import org.climbwright.atmosphere.AirState;
import org.climbwright.atmosphere.Atmosphere;
import org.climbwright.icing.potential.IndicationSpan.Kind;
import org.climbwright.icing.potential.ProfileSearch.Stretch;
import org.climbwright.quantity.humidity.RelativeHumidity;

/**
 * Cloud below 0 °C that is too warm for ice: freezing drizzle may form in it by drops that collide,
 * without any warm layer.
 *
 * <p>Found is a layer of moist air, part of it at least below 0 °C, that is nowhere colder than -10
 * °C. The source gives -10 °C for the top of the cloud; the whole cloud is asked here, since under
 * an inversion its top is not its coldest part.
 *
 * <p>Limits of use: a structure, not a forecast. Most such clouds drizzle little or not at all,
 * which goes with their depth, their drops and the particles in the air, all unknown here. The
 * source also wants a dry layer above the cloud and gives no figure for it, so that it is not
 * asked; ice that falls in from higher cloud ends the process and is not seen. Ice begins anywhere
 * from -5 to -15 °C: colder cloud is not free of drizzle drops. Moist is not cloud ({@link
 * MoistLayers}). None found is not "no freezing drizzle".
 *
 * @source US Weather Prediction Center, training slides on precipitation type (research/snow2a,
 *     slide 18), which quote G. J. Huffman and G. A. Norman, 1988; that ice may begin elsewhere: a
 *     forecast office's exercise on freezing drizzle with -12 to -15 °C, and -5 °C from memory
 */
public final class FreezingDrizzleCloud {
    private static final double ICE_POINT_K = FreezingLevels.ICE_POINT_K;
    private static final double ICE_FREE_FROM_K = 273.15 - 10.0;

    private static final int DRY = 0;
    private static final int MOIST = 1;
    private static final int COLD_AND_UNKNOWN = 2;

    private FreezingDrizzleCloud() {}

    /**
     * Returns the clouds that freezing drizzle may form in, and the layers of such temperatures
     * whose humidity is not known.
     *
     * @param air the air
     * @param cloud the lowest relative humidity over water that counts as cloud, itself included
     * @return the spans from the lowest to the highest: of a cloud, all of it
     * @throws org.climbwright.quantity.OutsideModelException if the air is somewhere outside 123 to
     *     332 K and its humidity known
     * @throws IllegalArgumentException if the air is somewhere more than saturated
     * @accuracy edges to 1e-8 m of where the humidity passes the threshold
     */
    public static List<IndicationSpan> in(Atmosphere air, RelativeHumidity cloud) {
        List<IndicationSpan> spans = new ArrayList<>();
        for (Stretch stretch : ProfileSearch.of(air, pressurePa -> state(air, pressurePa, cloud))) {
            AirState bottom = IndicationSpan.state(air, stretch.bottomPa());
            AirState top = IndicationSpan.state(air, stretch.topPa());
            if (stretch.state() == COLD_AND_UNKNOWN) {
                spans.add(
                        new IndicationSpan(
                                Kind.NOT_KNOWN,
                                bottom,
                                top,
                                "from 0 to -10 °C; humidity is not known, and so cloud is not"));
            } else if (stretch.state() == MOIST) {
                AirState coldest = LayerExtremes.coldest(air, bottom, top);
                if (coldest.temperatureK() < ICE_POINT_K
                        && coldest.temperatureK() >= ICE_FREE_FROM_K) {
                    spans.add(
                            new IndicationSpan(
                                    Kind.INDICATED,
                                    bottom,
                                    top,
                                    "moist, and not colder than "
                                            + Words.celsius(coldest)
                                            + ": cloud there may hold no ice, and drizzle that is"
                                            + " supercooled below 0 °C"));
                }
            }
        }
        return List.copyOf(spans);
    }

    private static int state(Atmosphere air, double pressurePa, RelativeHumidity cloud) {
        int moist = MoistLayers.state(air, pressurePa, cloud);
        if (moist >= 0) {
            return moist == 1 ? MOIST : DRY;
        }
        double temperatureK = air.temperature(pressurePa);
        boolean isCold = temperatureK < ICE_POINT_K && temperatureK >= ICE_FREE_FROM_K;
        return isCold ? COLD_AND_UNKNOWN : DRY;
    }
}
