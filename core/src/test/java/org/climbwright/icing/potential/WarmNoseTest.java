package org.climbwright.icing.potential;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.climbwright.atmosphere.Atmosphere;
import org.climbwright.icing.potential.WarmNose.Edge;
import org.climbwright.icing.potential.WarmNose.Melting;
import org.climbwright.testing.Table;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;

@DisplayName("A warm nose over cold air")
class WarmNoseTest {
    @ParameterizedTest(name = "{0} °C over {1} °C: {2}, may freeze again: {3}")
    @CsvFileSource(resources = "/icing/warm-nose.csv", useHeadersInDisplayName = true)
    @DisplayName("melts snow by its warmest air, and cold air below may freeze it again:")
    void meltsAndFreezes(
            double warmestC, double coldestC, Melting melting, boolean again, String source) {
        WarmNose nose = only(scene(coldestC, warmestC));
        assertThat(nose.melting()).isEqualTo(melting);
        assertThat(nose.mayFreezeAgain()).isEqualTo(again);
    }

    @Test
    @DisplayName("is classed at 9 points, on both sides of each limit")
    void rows() {
        assertThat(Table.rows("/icing/warm-nose.csv")).hasSize(9);
    }

    @Test
    @DisplayName("has edges, depths and extremes of its two layers")
    void layers() {
        // -4 °C up to 500 m, 4 °C at 1,500 m, -4 °C at 2,500 m
        WarmNose nose =
                only(new ProfileAir().with(0, -2).with(500, -4).with(1500, 4).with(2500, -4));
        assertThat(ProfileAir.altitude(nose.bottom().pressurePa())).isCloseTo(1000, within(1e-5));
        assertThat(ProfileAir.altitude(nose.top().pressurePa())).isCloseTo(2000, within(1e-5));
        assertThat(nose.topEdge()).isEqualTo(Edge.COLDER_BEYOND);
        assertThat(nose.depth().orElseThrow().inMetres()).isCloseTo(1000, within(1e-5));
        assertThat(nose.coldDepth().orElseThrow().inMetres()).isCloseTo(1000, within(1e-5));
        assertThat(nose.warmest().staticAirTemperature().inCelsius()).isCloseTo(4.0, within(1e-9));
        assertThat(nose.coldest().staticAirTemperature().inCelsius()).isCloseTo(-4.0, within(1e-9));
        assertThat(nose.meaning())
                .isEqualTo(
                        "if anything falls from above, a nose of up to 4.0 °C melts snow wholly,"
                                + " and the cold layer below, down to -4.0 °C, leaves drops"
                                + " supercooled");
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource({
        "warm all the way, 0, 5 2",
        "cold all the way, 0, -5 -2",
        "warm below and cold above, 0, 5 -5",
        "cold below and warm to the end, 1, -5 5",
        "cold warm cold warm cold, 2, -5 5 -5 5 -5",
        "warm cold warm cold, 1, 5 -5 5 -5",
    })
    @DisplayName("is each layer above 0 °C with one below it underneath:")
    void howMany(String what, int count, String celsius) {
        ProfileAir air = new ProfileAir();
        String[] values = celsius.split(" ");
        for (int i = 0; i < values.length; i++) {
            air.with(1000.0 * i, Double.parseDouble(values[i]));
        }
        assertThat(WarmNose.in(air)).hasSize(count);
    }

    @Test
    @DisplayName("may reach beyond the end of the air, and says so")
    void openTop() {
        WarmNose nose = only(new ProfileAir().with(0, -5).with(1000, 5));
        assertThat(nose.topEdge()).isEqualTo(Edge.END_OF_AIR);
        assertThat(nose.warmest()).isEqualTo(nose.top());
    }

    @Test
    @DisplayName("is not in standard air")
    void standardAir() {
        assertThat(WarmNose.in(Atmosphere.standard())).isEmpty();
    }

    @Test
    @DisplayName("is in the sounding of Aberdeen, from 883.152 to 826.242 hPa")
    void recorded() {
        // edges: independent computation in sounding/crossings.csv; warmest: the level of the file
        WarmNose nose = only(RecordedAir.of(RecordedAir.WARM_NOSE));
        assertThat(nose.bottom().pressurePa()).isCloseTo(88315.2, within(0.06));
        assertThat(nose.top().pressurePa()).isCloseTo(82624.2, within(0.06));
        assertThat(nose.depth().orElseThrow().inMetres()).isCloseTo(535.7, within(1.0));
        assertThat(nose.coldBottom().pressurePa()).isEqualTo(96100.0);
        assertThat(nose.coldest().staticAirTemperature().inCelsius())
                .isCloseTo(-3.45, within(1e-9));
        assertThat(nose.warmest().staticAirTemperature().inCelsius()).isCloseTo(1.65, within(1e-9));
        assertThat(nose.mayFreezeAgain()).isFalse();
    }

    private static ProfileAir scene(double coldestC, double warmestC) {
        return new ProfileAir().with(0, coldestC).with(1000, warmestC).with(3000, -20);
    }

    private static WarmNose only(Atmosphere air) {
        List<WarmNose> noses = WarmNose.in(air);
        assertThat(noses).hasSize(1);
        return noses.get(0);
    }
}
