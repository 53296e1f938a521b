package org.climbwright.sounding;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Label;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import org.climbwright.atmosphere.Atmosphere;
import org.climbwright.quantity.temperature.StaticAirTemperature;

@Label("The layers of an ascent that are warmer than a temperature")
class WarmLayerPropertyTest {
    private static final int POINTS = 2000;

    /** Edges are found to some ulps of ln p; near them air may be on either side. */
    private static final double NEAR_K = 1e-7;

    @Property(tries = 200)
    @Label("hold all warmer air of a dense grid and none of the colder, and their warmest is it")
    void byDenseGrid(
            @ForAll("soundings") Sounding sounding,
            @ForAll @DoubleRange(min = 190.0, max = 310.0) @Scale(2) double kelvin) {
        List<WarmLayer> layers = sounding.warmLayers(StaticAirTemperature.ofKelvins(kelvin));
        Atmosphere air = sounding.atmosphere();
        double ratio = air.range().lowest() / air.range().highest();
        for (int i = 1; i < POINTS; i++) {
            double pressure = air.range().highest() * Math.pow(ratio, (double) i / POINTS);
            double temperature = air.temperature(pressure);
            Optional<WarmLayer> within =
                    layers.stream()
                            .filter(layer -> layer.bottom().pressurePa() >= pressure)
                            .filter(layer -> layer.top().pressurePa() <= pressure)
                            .findFirst();
            if (Math.abs(temperature - kelvin) > NEAR_K) {
                assertThat(within.isPresent()).isEqualTo(temperature > kelvin);
            }
            within.ifPresent(
                    layer ->
                            assertThat(temperature)
                                    .isLessThanOrEqualTo(layer.warmest().temperatureK()));
        }
    }

    @Property(tries = 200)
    @Label("have the crossings of that temperature for edges, and else the ends of the ascent")
    void edges(
            @ForAll("soundings") Sounding sounding,
            @ForAll @DoubleRange(min = 190.0, max = 310.0) @Scale(2) double kelvin) {
        StaticAirTemperature temperature = StaticAirTemperature.ofKelvins(kelvin);
        List<WarmLayer> layers = sounding.warmLayers(temperature);
        long edges =
                layers.stream().filter(l -> l.bottomEdge() == WarmLayer.Edge.COLDER_BEYOND).count()
                        + layers.stream()
                                .filter(l -> l.topEdge() == WarmLayer.Edge.COLDER_BEYOND)
                                .count();
        assertThat(sounding.isothermCrossings(temperature)).hasSize((int) edges);
        for (int i = 0; i < layers.size(); i++) {
            boolean opensBelow = layers.get(i).bottomEdge() == WarmLayer.Edge.END_OF_ASCENT;
            boolean opensAbove = layers.get(i).topEdge() == WarmLayer.Edge.END_OF_ASCENT;
            assertThat(!opensBelow || i == 0).isTrue();
            assertThat(!opensAbove || i == layers.size() - 1).isTrue();
            if (opensBelow) {
                assertThat(layers.get(i).bottom()).isEqualTo(sounding.airAtLevels().get(0));
            }
        }
    }

    @Provide
    Arbitrary<Sounding> soundings() {
        return RandomSoundings.ofAir();
    }
}
