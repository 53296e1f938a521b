package org.climbwright.icing.potential;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import org.climbwright.atmosphere.AirState;
import org.climbwright.atmosphere.Atmosphere;
import org.climbwright.quantity.humidity.RelativeHumidity;
import org.jspecify.annotations.Nullable;

/**
 * What the interest functions of the forecast scheme make of one moist layer: the greatest initial
 * potential in it, and where.
 *
 * <p>The temperature of the cloud top is that of the layer's upper edge. Vertical velocity and
 * cloud water, which no profile has, could only raise the figure: {@link IcingInterest#potential}.
 *
 * <p>Limits of use: those of {@link IcingInterest} and of {@link MoistLayers}. A lower bound of a
 * scheme's figure, neither a probability nor a forecast; a layer that ends where the air given ends
 * has a top that nobody saw. No layer, or a potential of 0, is not "no icing".
 *
 * @source {@link IcingInterest}
 */
public final class LayerPotential implements Serializable {
    private static final long serialVersionUID = 1L;

    private final IndicationSpan layer;
    private final @Nullable AirState strongest;
    private final String reason;

    private LayerPotential(IndicationSpan layer, @Nullable AirState strongest, String reason) {
        this.layer = layer;
        this.strongest = strongest;
        this.reason = reason;
    }

    /**
     * Finds the moist layers of some air and the potential of each.
     *
     * @param air the air
     * @param cloud the lowest relative humidity over water that counts as cloud, itself included;
     *     the scheme's is {@link MoistLayers#thresholdAtLatitude}
     * @return the layers from the lowest to the highest, those whose humidity is not known among
     *     them
     * @throws org.climbwright.quantity.OutsideModelException if the air is somewhere outside 123 to
     *     332 K and its humidity known
     * @throws IllegalArgumentException if the air is somewhere more than saturated
     * @accuracy the greatest of all bends and 64 places of a layer, its edges among them
     */
    public static List<LayerPotential> in(Atmosphere air, RelativeHumidity cloud) {
        List<LayerPotential> potentials = new ArrayList<>();
        for (IndicationSpan layer : MoistLayers.in(air, cloud)) {
            potentials.add(
                    layer.kind() == IndicationSpan.Kind.INDICATED
                            ? of(air, layer)
                            : new LayerPotential(
                                    layer,
                                    null,
                                    "humidity is not known, and so the potential is not"));
        }
        return List.copyOf(potentials);
    }

    private static LayerPotential of(Atmosphere air, IndicationSpan layer) {
        double topK = layer.top().temperatureK();
        AirState strongest = layer.bottom();
        for (double pressurePa : LayerExtremes.places(air, layer.bottom(), layer.top())) {
            AirState state = IndicationSpan.state(air, pressurePa);
            if (potential(state, topK) > potential(strongest, topK)) {
                strongest = state;
            }
        }
        return new LayerPotential(
                layer,
                strongest,
                String.format(
                        Locale.ROOT,
                        "initial potential of up to %.2f, at %s, under a top of %s; rising air and"
                                + " cloud water, not known, could raise it",
                        potential(strongest, topK),
                        Words.celsius(strongest),
                        Words.celsius(layer.top())));
    }

    private static double potential(AirState state, double cloudTopK) {
        return IcingInterest.initialPotential(
                state.temperatureK(),
                state.relativeHumidity().map(RelativeHumidity::inRatio).orElse(0.0),
                cloudTopK);
    }

    /**
     * Returns the layer.
     *
     * @return the moist layer, or one whose humidity is not known
     */
    public IndicationSpan layer() {
        return layer;
    }

    /**
     * Returns where the potential is greatest.
     *
     * @return the air there, the lowest such place; empty when humidity is not known
     */
    public Optional<AirState> strongest() {
        return Optional.ofNullable(strongest);
    }

    /**
     * Returns the figures, or why there are none.
     *
     * @return words, for reading
     */
    public String reason() {
        return reason;
    }

    /**
     * Returns the initial potential where it is greatest.
     *
     * @return a ratio from 0 to 1; NaN when humidity is not known
     */
    public double initialPotential() {
        return strongest == null ? Double.NaN : potential(strongest, layer.top().temperatureK());
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof LayerPotential that
                && layer.equals(that.layer)
                && Objects.equals(strongest, that.strongest);
    }

    @Override
    public int hashCode() {
        return Objects.hash(layer, strongest);
    }

    /**
     * Returns it for reading.
     *
     * @return a text; may change between versions
     */
    @Override
    public String toString() {
        return reason;
    }
}
