package org.climbwright.sounding;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.climbwright.sounding.Level.hpa;
import static org.climbwright.sounding.Level.sounding;

import java.util.List;
import java.util.stream.Collectors;
import org.climbwright.quantity.temperature.StaticAirTemperature;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

@DisplayName("A layer warmer than 0 °C")
class WarmLayerTest {
    private static final StaticAirTemperature ZERO = StaticAirTemperature.ofCelsius(0.0);

    /**
     * Pressures 1000, 900, 810, 729 ... hPa: half way in ln p is 949, 854, 768, 692 hPa, a quarter
     * of the way from 900 is 877.
     */
    @ParameterizedTest(name = "{0}: {1}")
    @CsvSource({
        "colder all the way, '', -1 -2 -3",
        "warm all the way, '1000! to 810! with 5 at 900', 3 5 1",
        "from the ground, '1000! to 854 with 9 at 1000', 9 3 -3",
        "up to the top, '949 to 810! with 7 at 810', -3 3 7",
        "aloft, '949 to 768 with 4 at 900', -4 4 2 -2",
        "two of them, '1000! to 949 with 2 at 1000; 877 to 768 with 6 at 810', 2 -2 6 -6",
        "warmest twice: the lower, '949 to 692 with 3 at 900', -3 3 3 3 -3",
        "ends at a level, '1000! to 900 with 2 at 1000', 2 0 -3",
        "touched by a level of 0 °C is one layer, '1000! to 810! with 2 at 1000', 2 0 1",
        "of 0 °C at the ground and warmer above, '1000! to 854 with 3 at 900', 0 3 -3",
        "0 °C all the way, '', 0 0 0",
        "0 °C at the ground and colder above, '', 0 -1 -2"
    })
    @DisplayName("lies between its edges, each the passage of 0 °C or (!) the end of the ascent:")
    void layers(String what, String expected, String celsius) {
        String[] values = celsius.split(" ", -1);
        Level[] levels = new Level[values.length];
        for (int i = 0; i < values.length; i++) {
            levels[i] = hpa(1000.0 * Math.pow(0.9, i)).celsius(Double.parseDouble(values[i]));
        }
        assertThat(text(sounding(levels).warmLayers(ZERO))).isEqualTo(expected);
    }

    private static String text(List<WarmLayer> layers) {
        return layers.stream()
                .map(
                        layer ->
                                Math.round(layer.bottom().pressurePa() / 100.0)
                                        + mark(layer.bottomEdge())
                                        + " to "
                                        + Math.round(layer.top().pressurePa() / 100.0)
                                        + mark(layer.topEdge())
                                        + " with "
                                        + Math.round(layer.warmest().temperatureK() - 273.15)
                                        + " at "
                                        + Math.round(layer.warmest().pressurePa() / 100.0))
                .collect(Collectors.joining("; "));
    }

    private static String mark(WarmLayer.Edge edge) {
        return edge == WarmLayer.Edge.END_OF_ASCENT ? "!" : "";
    }

    @Test
    @DisplayName("may be one warmer than any other temperature")
    void otherTemperature() {
        Sounding sounding = sounding(hpa(1000).celsius(-10), hpa(810).celsius(-30));
        assertThat(text(sounding.warmLayers(StaticAirTemperature.ofCelsius(-20))))
                .isEqualTo("1000! to 900 with -10 at 1000");
        assertThat(sounding.warmLayers(StaticAirTemperature.ofCelsius(-10))).isEmpty();
    }

    @Test
    @DisplayName("is as deep as its edges are apart in altitude, where that is known")
    void depth() {
        Sounding sounding =
                sounding(
                        hpa(1000).metres(100).celsius(0),
                        hpa(900).metres(1000).celsius(8),
                        hpa(810).metres(1900).celsius(0),
                        hpa(700).metres(3000).celsius(-9));
        WarmLayer layer = sounding.warmLayers(ZERO).get(0);
        assertThat(layer.depth().orElseThrow().inMetres()).isEqualTo(1800.0, within(1e-9));
        Sounding withoutHeights = sounding(hpa(1000).celsius(2), hpa(900).celsius(-2));
        assertThat(withoutHeights.warmLayers(ZERO).get(0).depth()).isEmpty();
    }

    /** Crossings by a second computation, in crossings.csv; 1.65 °C at 872 hPa is in the file. */
    @Test
    @DisplayName("aloft in freezing air is the warm nose of the Aberdeen ascent")
    void warmNose() {
        List<WarmLayer> layers = Soundings.profile("v72659_aberdeen_warmnose").warmLayers(ZERO);
        assertThat(layers).hasSize(1);
        WarmLayer nose = layers.get(0);
        assertThat(nose.bottom().staticPressure().inHectopascals())
                .isEqualTo(883.152, within(0.0005));
        assertThat(nose.top().staticPressure().inHectopascals()).isEqualTo(826.242, within(0.0005));
        assertThat(nose.bottomEdge()).isEqualTo(WarmLayer.Edge.COLDER_BEYOND);
        assertThat(nose.topEdge()).isEqualTo(WarmLayer.Edge.COLDER_BEYOND);
        assertThat(nose.warmest().staticPressure().inHectopascals()).isEqualTo(872.0, within(1e-9));
        assertThat(nose.warmest().staticAirTemperature().inCelsius()).isEqualTo(1.65, within(1e-9));
        // 1603.02 less 1067.32 m there; 0.07 m is the bend of its two layers, see CrossingTableTest
        assertThat(nose.depth().orElseThrow().inMetres()).isEqualTo(535.7, within(0.1));
    }
}
