package org.climbwright.sounding.surface;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Locale;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Label;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.IntRange;
import org.climbwright.quantity.altitude.GeopotentialAltitude;
import org.climbwright.sounding.RandomSoundings;
import org.climbwright.sounding.Sounding;
import org.climbwright.sounding.SoundingLevel;

@Label("An ascent that begins with a report")
class JoinedSoundingPropertyTest {
    @Property(tries = 1000, edgeCases = EdgeCasesMode.NONE)
    @Label(
            "has the report as its lowest level and above it what the ascent has there, or is"
                    + " refused")
    void joined(
            @ForAll("ascents") Sounding sounding,
            @ForAll("reports") SurfaceReport report,
            @ForAll @IntRange(min = -300, max = 4000) int metres) {
        GeopotentialAltitude elevation = GeopotentialAltitude.ofMetres(metres);
        double pressurePa = report.air(elevation).pressurePa();
        List<SoundingLevel> above =
                sounding.levels().stream().filter(level -> pressurePa(level) < pressurePa).toList();
        // four in ten are refused
        boolean conflict =
                above.stream()
                        .anyMatch(
                                level ->
                                        !isHigher(level, metres)
                                                && pressurePa - pressurePa(level) > 100.0);
        Sounding joined;
        try {
            joined = report.joinedWith(sounding, elevation);
        } catch (IllegalArgumentException refusal) {
            assertThat(conflict).as(refusal.getMessage()).isTrue();
            return;
        }
        assertThat(conflict).isFalse();
        SoundingLevel lowest = joined.levels().get(0);
        assertThat(pressurePa(lowest)).isEqualTo(pressurePa);
        assertThat(lowest.geopotentialAltitude()).hasValue(elevation);
        assertThat(lowest.staticAirTemperature()).isEqualTo(report.staticAirTemperature());
        assertThat(lowest.dewPoint()).isEqualTo(report.dewPoint());
        assertThat(joined.levels().subList(1, joined.levels().size()))
                .isEqualTo(above.stream().filter(level -> isHigher(level, metres)).toList());
    }

    @Property(tries = 300, edgeCases = EdgeCasesMode.NONE)
    @Label("makes air that has the report's temperature at the report's pressure")
    void air(@ForAll("ascents") Sounding sounding, @ForAll("reports") SurfaceReport report) {
        GeopotentialAltitude elevation = GeopotentialAltitude.ofMetres(-300);
        Sounding joined = report.joinedWith(sounding, elevation);
        double pressurePa = report.air(elevation).pressurePa();
        assertThat(joined.atmosphere().temperature(pressurePa))
                .isCloseTo(report.staticAirTemperature().orElseThrow().inKelvins(), within(1e-9));
    }

    private static double pressurePa(SoundingLevel level) {
        return level.staticPressure().orElseThrow().inPascals();
    }

    private static boolean isHigher(SoundingLevel level, double metres) {
        return level.geopotentialAltitude()
                .map(altitude -> altitude.inMetres() > metres)
                .orElse(true);
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
