package org.climbwright.icing.potential;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.climbwright.atmosphere.AirState;
import org.climbwright.atmosphere.Atmosphere;
import org.climbwright.quantity.altitude.AltitudeChange;

/**
 * Air above 0 °C over air below it: the structure that freezing rain falls through.
 *
 * <p>Snow from above melts in the warm layer, falls into the cold one as rain and stays liquid
 * there, supercooled, until it meets something to freeze on. A climb meets it in the cold layer
 * below, outside cloud as well as inside. How much melts goes with how warm the nose is; in a cold
 * layer that is cold enough, what melted may freeze again before it arrives, as ice pellets.
 *
 * <p>Limits of use: a structure, not a forecast. It does not tell whether anything falls, which
 * takes cloud above the nose, and the temperatures that part rain from pellets are a forecaster's
 * rule of thumb, not physics: the depths, the size of the flakes and melting itself, which cools
 * the nose, are left out. None found is not "no freezing precipitation": of the soundings with
 * freezing rain, mostly drizzle, 30 to 40 % had no layer above 0 °C ({@link FreezingDrizzleCloud}).
 * A sounding is one place and hour, and a nose thinner than its levels are apart is not seen.
 *
 * @param coldBottom the lower edge of the cold layer: 0 °C, or where the air given begins
 * @param coldest the coldest air of the cold layer
 * @param bottom where the nose begins, at 0 °C
 * @param warmest the warmest air of the nose
 * @param top the upper edge of the nose: 0 °C, or where the air given ends
 * @param topEdge which of the two
 * @source US Weather Prediction Center, training slides on precipitation type (research/snow2a,
 *     slides 12 and 18), which quote R. E. Stewart and P. King, 1987, for the temperatures, and J.
 *     R. Bocchieri, 1980, and Young, 1978, for the share without a warm layer
 */
public record WarmNose(
        AirState coldBottom,
        AirState coldest,
        AirState bottom,
        AirState warmest,
        AirState top,
        Edge topEdge)
        implements Serializable {
    private static final double MELTS_WHOLLY_ABOVE_K = 273.15 + 3.0;
    private static final double MELTS_PARTLY_FROM_K = 273.15 + 1.0;
    private static final double FREEZES_AGAIN_BELOW_K = 273.15 - 8.0;

    /**
     * Makes it of parts that are there.
     *
     * @param coldBottom the lower edge of the cold layer
     * @param coldest the coldest air of the cold layer
     * @param bottom where the nose begins
     * @param warmest the warmest air of the nose
     * @param top the upper edge of the nose
     * @param topEdge what the upper edge is
     */
    public WarmNose {
        Objects.requireNonNull(coldBottom, "coldBottom");
        Objects.requireNonNull(coldest, "coldest");
        Objects.requireNonNull(bottom, "bottom");
        Objects.requireNonNull(warmest, "warmest");
        Objects.requireNonNull(top, "top");
        Objects.requireNonNull(topEdge, "topEdge");
    }

    /** What the upper edge of a nose is. */
    public enum Edge {
        /** A level of 0 °C, colder above. */
        COLDER_BEYOND,
        /** The end of the air given: the nose may reach higher. */
        END_OF_AIR
    }

    /** How much of the snow that falls into a nose melts, by how warm the nose is. */
    public enum Melting {
        /** Warmer than 3 °C: all of it, rain. */
        WHOLLY,
        /** From 1 to 3 °C: part of it; ice pellets, or pellets mixed with freezing rain. */
        PARTLY,
        /** Below 1 °C: little of it, and that freezes again as a rule. */
        HARDLY
    }

    /**
     * Finds every layer above 0 °C that lies over one below it.
     *
     * @param air the air, its humidity known or not
     * @return the structures from the lowest to the highest; the cold layer of one may lie over
     *     warm air again
     * @accuracy edges as {@link FreezingLevels#in}; the warmest and coldest are exact in air that
     *     is straight between the bends it tells, else the best of 64 places in the layer
     */
    public static List<WarmNose> in(Atmosphere air) {
        FreezingLevels levels = FreezingLevels.in(air);
        List<FreezingLevel> all = levels.all();
        List<WarmNose> noses = new ArrayList<>();
        for (int i = 0; i < all.size(); i++) {
            if (all.get(i).trend() == FreezingLevel.Trend.RISING) {
                AirState coldBottom = i > 0 ? all.get(i - 1).air() : levels.bottom();
                AirState bottom = all.get(i).air();
                boolean hasTop = i + 1 < all.size();
                AirState top = hasTop ? all.get(i + 1).air() : levels.top();
                noses.add(
                        new WarmNose(
                                coldBottom,
                                LayerExtremes.coldest(air, coldBottom, bottom),
                                bottom,
                                LayerExtremes.warmest(air, bottom, top),
                                top,
                                hasTop ? Edge.COLDER_BEYOND : Edge.END_OF_AIR));
            }
        }
        return List.copyOf(noses);
    }

    /**
     * Returns how deep the nose is, as far as the air is known.
     *
     * @return the difference of geopotential altitude; empty when altitudes are not known
     */
    public Optional<AltitudeChange> depth() {
        return IndicationSpan.depth(bottom, top);
    }

    /**
     * Returns how deep the cold layer below the nose is, as far as the air is known.
     *
     * @return the difference of geopotential altitude; empty when altitudes are not known
     */
    public Optional<AltitudeChange> coldDepth() {
        return IndicationSpan.depth(coldBottom, bottom);
    }

    /**
     * Returns how much snow the nose melts, by its warmest air.
     *
     * @return the class; its limits are in its description
     */
    public Melting melting() {
        double warmestK = warmest.temperatureK();
        return warmestK > MELTS_WHOLLY_ABOVE_K
                ? Melting.WHOLLY
                : warmestK >= MELTS_PARTLY_FROM_K ? Melting.PARTLY : Melting.HARDLY;
    }

    /**
     * Tells whether drops may freeze again in the cold layer.
     *
     * @return true if it is somewhere colder than -8 °C: there pellets or snow may arrive, given
     *     time and nuclei; false where drops stay supercooled
     */
    public boolean mayFreezeAgain() {
        return coldest.temperatureK() < FREEZES_AGAIN_BELOW_K;
    }

    /**
     * Returns what the structure means, for reading.
     *
     * @return one sentence with its figures; not a forecast
     */
    public String meaning() {
        String melts =
                switch (melting()) {
                    case WHOLLY -> "melts snow wholly";
                    case PARTLY -> "melts snow in part";
                    case HARDLY -> "hardly melts snow";
                };
        String below =
                mayFreezeAgain()
                        ? "may freeze drops again into ice pellets, or leave them supercooled"
                        : "leaves drops supercooled";
        return "if anything falls from above, a nose of up to "
                + Words.celsius(warmest)
                + " "
                + melts
                + ", and the cold layer below, down to "
                + Words.celsius(coldest)
                + ", "
                + below;
    }
}
