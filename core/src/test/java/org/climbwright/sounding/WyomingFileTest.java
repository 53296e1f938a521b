package org.climbwright.sounding;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.Set;
import org.climbwright.quantity.temperature.StaticAirTemperature;
import org.climbwright.quantity.temperature.TemperatureDifference;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.FieldSource;

@DisplayName("A recorded listing")
class WyomingFileTest {
    static final Set<Map.Entry<String, String>> WITH_PROFILES = Soundings.LISTINGS.entrySet();

    /** The profiles print winds to 0.01 m/s, converted from knots. */
    private static final double ROUNDING_MPS = 0.005 + 1e-9;

    @ParameterizedTest(name = "{0}: \"{1}\", \"{2}\", {3} levels")
    @CsvSource({
        "20110522_OUN_12Z.txt, 72357 OUN Norman, 2011-05-22T12, 48",
        "jan20_sounding.txt, '', '', 57"
    })
    @DisplayName("holds one ascent without a fault; its title, if any, tells station and launch")
    void ascent(String file, String station, String launch, int levels) {
        SoundingReading reading = Soundings.read(file);
        assertThat(reading.problems()).isEmpty();
        assertThat(reading.soundings()).hasSize(1);
        assertThat(reading.soundings().get(0).station()).isEqualTo(station);
        assertThat(reading.soundings().get(0).launch()).isEqualTo(launch);
        assertThat(reading.soundings().get(0).levels()).hasSize(levels);
    }

    @Test
    @DisplayName("begins with 1000 hPa below the ground, which has a height and nothing else")
    void belowTheGround() {
        List<SoundingLevel> levels = sounding("20110522_OUN_12Z.txt").levels();
        assertThat(levels.get(0)).isEqualTo(Level.hpa(1000).metres(36).reported());
        assertThat(levels.get(1).staticAirTemperature().orElseThrow().inCelsius())
                .isEqualTo(22.2, within(1e-9));
        assertThat(levels.get(1).wind().orElseThrow().speed().inKnots())
                .isEqualTo(7.0, within(1e-9));
    }

    @ParameterizedTest(name = "{0}")
    @FieldSource("WITH_PROFILES")
    @DisplayName("has the levels of the profile that was made of it, and that first one besides")
    void sameLevels(Map.Entry<String, String> files) {
        List<SoundingLevel> listed = sounding(files.getKey()).levels();
        List<SoundingLevel> profile = Soundings.profile(files.getValue()).levels();
        assertThat(listed).hasSize(1 + profile.size());
        for (int i = 0; i < profile.size(); i++) {
            SoundingLevel one = listed.get(1 + i);
            SoundingLevel other = profile.get(i);
            assertThat(withoutWind(one)).isEqualTo(withoutWind(other));
            assertThat(one.wind().isPresent()).isEqualTo(other.wind().isPresent());
            if (one.wind().isPresent()) {
                assertThat(speed(one)).isEqualTo(speed(other), within(ROUNDING_MPS));
                assertThat(direction(one)).isEqualTo(direction(other), within(1e-9));
            }
        }
    }

    @ParameterizedTest(name = "{0}")
    @FieldSource("WITH_PROFILES")
    @DisplayName("gives the same answers as that profile, to the last bit")
    void sameAnswers(Map.Entry<String, String> files) {
        Sounding listed = sounding(files.getKey());
        Sounding profile = Soundings.profile(files.getValue());
        for (int celsius : new int[] {0, -10, -20, -40}) {
            StaticAirTemperature temperature = StaticAirTemperature.ofCelsius(celsius);
            assertThat(listed.isothermCrossings(temperature))
                    .isEqualTo(profile.isothermCrossings(temperature));
            assertThat(listed.warmLayers(temperature)).isEqualTo(profile.warmLayers(temperature));
        }
        TemperatureDifference any = TemperatureDifference.ofKelvins(0.0);
        assertThat(listed.inversions(any)).isEqualTo(profile.inversions(any));
        assertThat(listed.airAtLevels()).isEqualTo(profile.airAtLevels());
        assertThat(listed.largestIsaDeviation()).isEqualTo(profile.largestIsaDeviation());
        assertThat(listed.tropopause()).isEqualTo(profile.tropopause());
        assertThat(listed.atmosphere().range()).isEqualTo(profile.atmosphere().range());
    }

    private static Sounding sounding(String file) {
        return Soundings.read(file).soundings().get(0);
    }

    private static List<Double> withoutWind(SoundingLevel level) {
        return List.of(
                level.pressurePa(),
                level.geopotentialAltitudeM(),
                level.temperatureK(),
                level.dewPointK());
    }

    private static double speed(SoundingLevel level) {
        return level.wind().orElseThrow().speed().inMetresPerSecond();
    }

    private static double direction(SoundingLevel level) {
        return level.wind().orElseThrow().direction().inDegrees();
    }
}
