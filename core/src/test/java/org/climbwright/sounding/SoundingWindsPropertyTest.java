package org.climbwright.sounding;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Label;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import org.climbwright.atmosphere.wind.Winds;

@Label("The winds of a sounding")
class SoundingWindsPropertyTest {
    @Property(tries = 300)
    @Label("meet each observed wind to the last bit, on levels of their own")
    void meetTheLevels(@ForAll("soundings") Sounding sounding, @ForAll UnobservedWind rule) {
        Winds winds = sounding.winds(rule);
        List<SoundingLevel> windy = windy(sounding);
        assertThat(winds.bendsPa())
                .containsExactly(windy.stream().mapToDouble(SoundingLevel::pressurePa).toArray());
        for (SoundingLevel level : windy) {
            assertThat(winds.covers(level.pressurePa())).isTrue();
            assertThat(winds.eastward(level.pressurePa())).isEqualTo(level.eastwardMps());
            assertThat(winds.northward(level.pressurePa())).isEqualTo(level.northwardMps());
        }
    }

    @Property(tries = 300)
    @Label("have components that are straight in ln p between two winds")
    void areLinear(
            @ForAll("soundings") Sounding sounding,
            @ForAll UnobservedWind rule,
            @ForAll @DoubleRange(min = 0.001, max = 0.999) @Scale(6) double share) {
        Winds winds = sounding.winds(rule);
        List<SoundingLevel> windy = windy(sounding);
        for (int i = 1; i < windy.size(); i++) {
            SoundingLevel low = windy.get(i - 1);
            SoundingLevel high = windy.get(i);
            double pressure =
                    Math.exp(mix(Math.log(low.pressurePa()), Math.log(high.pressurePa()), share));
            assertThat(winds.covers(pressure)).isTrue();
            // 1e-9 m/s: an ulp of ln p, 2e-15, over the least step of 5e-4, times 160 m/s
            assertThat(winds.eastward(pressure))
                    .isEqualTo(mix(low.eastwardMps(), high.eastwardMps(), share), within(1e-9));
            assertThat(winds.northward(pressure))
                    .isEqualTo(mix(low.northwardMps(), high.northwardMps(), share), within(1e-9));
        }
    }

    @Property(tries = 300)
    @Label("follow the rule below the lowest and above the highest observed wind")
    void outside(
            @ForAll("soundings") Sounding sounding,
            @ForAll @DoubleRange(min = 1e-9, max = 1.0) @Scale(9) double factor) {
        List<SoundingLevel> windy = windy(sounding);
        if (windy.isEmpty()) {
            return;
        }
        SoundingLevel lowest = windy.get(0);
        double below = lowest.pressurePa() * (1.0 + factor);
        double above = windy.get(windy.size() - 1).pressurePa() / (1.0 + factor);

        is(sounding.winds(UnobservedWind.NOT_KNOWN), below, Double.NaN, Double.NaN);
        is(sounding.winds(UnobservedWind.NOT_KNOWN), above, Double.NaN, Double.NaN);
        is(
                sounding.winds(UnobservedWind.HOLD_LOWEST),
                below,
                lowest.eastwardMps(),
                lowest.northwardMps());
        is(sounding.winds(UnobservedWind.HOLD_LOWEST), above, Double.NaN, Double.NaN);
        is(sounding.winds(UnobservedWind.CALM), below, 0.0, 0.0);
        is(sounding.winds(UnobservedWind.CALM), above, 0.0, 0.0);
    }

    private static void is(Winds winds, double pressure, double east, double north) {
        assertThat(winds.eastward(pressure)).isEqualTo(Double.valueOf(east));
        assertThat(winds.northward(pressure)).isEqualTo(Double.valueOf(north));
        assertThat(winds.covers(pressure)).isEqualTo(!Double.isNaN(east));
    }

    private static List<SoundingLevel> windy(Sounding sounding) {
        return sounding.levels().stream().filter(level -> level.wind().isPresent()).toList();
    }

    private static double mix(double low, double high, double share) {
        return low + share * (high - low);
    }

    @Provide
    Arbitrary<Sounding> soundings() {
        return RandomSoundings.mixed();
    }
}
