package org.climbwright.sounding.surface;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Locale;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Assume;
import net.jqwik.api.Combinators;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Label;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.climbwright.quantity.altitude.GeopotentialAltitude;
import org.climbwright.sounding.RandomSoundings;
import org.climbwright.sounding.Sounding;
import org.climbwright.sounding.SoundingLevel;

@Label("An ascent that begins with a report")
class JoinedSoundingPropertyTest {
    @Property(tries = 1000, edgeCases = EdgeCasesMode.NONE)
    @Label("has the report as its lowest level and above it what the ascent has there")
    void joined(
            @ForAll("reports") SurfaceReport report,
            @ForAll @IntRange(min = -300, max = 4000) int metres,
            @ForAll("ascents") Sounding shape,
            @ForAll @DoubleRange(min = 0.0, max = 0.99) double share) {
        GeopotentialAltitude elevation = GeopotentialAltitude.ofMetres(metres);
        double pressurePa = report.air(elevation).pressurePa();
        Sounding sounding = Fitted.onto(report, elevation, shape, share);
        Sounding joined = report.joinedWith(sounding, elevation);
        SoundingLevel lowest = joined.levels().get(0);
        assertThat(pressurePa(lowest)).isEqualTo(pressurePa);
        assertThat(lowest.geopotentialAltitude()).hasValue(elevation);
        assertThat(lowest.staticAirTemperature()).isEqualTo(report.staticAirTemperature());
        assertThat(lowest.dewPoint()).isEqualTo(report.dewPoint());
        List<SoundingLevel> above =
                sounding.levels().stream()
                        .filter(level -> pressurePa(level) < pressurePa - Fitted.SAME_LEVEL_PA)
                        .toList();
        assertThat(joined.levels().subList(1, joined.levels().size())).isEqualTo(above);
        if (!above.isEmpty()) {
            assertThat(joined.atmosphere().temperature(pressurePa))
                    .isCloseTo(
                            lowest.staticAirTemperature().orElseThrow().inKelvins(), within(1e-9));
        }
    }

    @Property(tries = 500, edgeCases = EdgeCasesMode.NONE)
    @Label("is refused where its lowest height is too high above the report")
    void tooHigh(
            @ForAll("reports") SurfaceReport report,
            @ForAll @IntRange(min = -300, max = 4000) int metres,
            @ForAll("ascents") Sounding shape,
            @ForAll @DoubleRange(min = 1.01, max = 5.0) double share) {
        GeopotentialAltitude elevation = GeopotentialAltitude.ofMetres(metres);
        Sounding sounding = Fitted.onto(report, elevation, shape, share);
        Assume.that(sounding.levels().stream().anyMatch(level -> isHigher(level, metres)));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> report.joinedWith(sounding, elevation))
                .withMessageEndingWith("not the same elevation, QNH or weather");
    }

    @Property(tries = 1000, edgeCases = EdgeCasesMode.NONE)
    @Label("of any heights is refused, or has rising heights from the elevation on")
    void anyHeights(
            @ForAll("ascents") Sounding sounding,
            @ForAll("reports") SurfaceReport report,
            @ForAll @IntRange(min = -300, max = 4000) int metres) {
        Sounding joined;
        try {
            joined = report.joinedWith(sounding, GeopotentialAltitude.ofMetres(metres));
        } catch (IllegalArgumentException refusal) {
            assertThat(refusal).hasMessageContaining("not the same elevation");
            return;
        }
        assertThat(
                        joined.levels().stream()
                                .skip(1)
                                .allMatch(level -> isHigherOrUntold(level, metres)))
                .isTrue();
    }

    private static double pressurePa(SoundingLevel level) {
        return level.staticPressure().orElseThrow().inPascals();
    }

    private static boolean isHigher(SoundingLevel level, double metres) {
        return level.geopotentialAltitude()
                .filter(altitude -> altitude.inMetres() > metres)
                .isPresent();
    }

    private static boolean isHigherOrUntold(SoundingLevel level, double metres) {
        return level.geopotentialAltitude().isEmpty() || isHigher(level, metres);
    }

    /** Levels from 1050 hPa and -200 m upwards, with heights that stray from standard air. */
    @Provide
    Arbitrary<Sounding> ascents() {
        return RandomSoundings.ofAir();
    }

    @Provide
    Arbitrary<SurfaceReport> reports() {
        Arbitrary<Integer> degrees = Arbitraries.integers().between(0, 40);
        Arbitrary<Integer> spread = Arbitraries.integers().between(0, 20);
        Arbitrary<Integer> qnh = Arbitraries.integers().between(1020, 1050);
        return Combinators.combine(degrees, spread, qnh)
                .as(
                        (temperature, less, hectopascals) ->
                                Reports.reportOf(
                                        String.format(
                                                Locale.ROOT,
                                                "27010KT CAVOK %02d/%s Q%04d",
                                                temperature,
                                                less > temperature
                                                        ? "//"
                                                        : String.format(
                                                                Locale.ROOT,
                                                                "%02d",
                                                                temperature - less),
                                                hectopascals)));
    }
}
