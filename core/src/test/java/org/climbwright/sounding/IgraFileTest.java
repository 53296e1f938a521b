package org.climbwright.sounding;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import org.climbwright.atmosphere.Atmosphere;
import org.climbwright.atmosphere.wind.Winds;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("The IGRA file of Barrow, June 2010")
class IgraFileTest {
    private final SoundingReading reading = Soundings.read(Soundings.IGRA_DATA);
    private final Sounding first = reading.soundings().get(0);

    @Test
    @DisplayName("holds three ascents, each with its station, launch and levels")
    void ascents() {
        assertThat(reading.soundings().stream().map(Sounding::toString))
                .containsExactly(
                        "sounding of USM00070026 2010-06-01T00, 158 levels",
                        "sounding of USM00070026 2010-06-01T12, 157 levels",
                        "sounding of USM00070026 2010-06-02T00, 0 levels");
        assertThat(first.station()).isEqualTo("USM00070026");
        assertThat(first.launch()).isEqualTo("2010-06-01T00");
        assertThat(reading.soundings().stream().map(Soundings::levelsOfAir).map(List::size))
                .containsExactly(58, 63, 0);
    }

    @Test
    @DisplayName("announces 147 levels of the third and holds none, which is reported")
    void announcedAndFound() {
        assertThat(reading.problems())
                .containsExactly(
                        new ReadingProblem(
                                318,
                                "line",
                                "USM00070026 2010-06-02T00",
                                "147 levels announced, but 0 found"));
    }

    @Test
    @DisplayName("begins at 1009.8 hPa, 12 m, 0.0 °C, saturated, with 5.1 m/s from 20 degrees")
    void firstLevel() {
        SoundingLevel level = first.levels().get(0);
        assertThat(level.pressurePa()).isEqualTo(100980.0);
        assertThat(level.geopotentialAltitudeM()).isEqualTo(12.0);
        assertThat(level.temperatureK()).isEqualTo(273.15);
        assertThat(level.dewPointK()).isEqualTo(273.15);
        assertThat(level.wind().orElseThrow().direction().inDegrees())
                .isEqualTo(20.0, within(1e-9));
        assertThat(level.wind().orElseThrow().speed().inMetresPerSecond())
                .isEqualTo(5.1, within(1e-9));
    }

    @Test
    @DisplayName("goes on at 1000 hPa, 90 m, -0.7 °C with a dew point of -1.6 °C and no wind")
    void secondLevel() {
        SoundingLevel level = first.levels().get(1);
        assertThat(level.pressurePa()).isEqualTo(100000.0);
        assertThat(level.geopotentialAltitudeM()).isEqualTo(90.0);
        assertThat(level.staticAirTemperature().orElseThrow().inCelsius())
                .isEqualTo(-0.7, within(1e-9));
        assertThat(level.dewPoint().orElseThrow().inCelsius()).isEqualTo(-1.6, within(1e-9));
        assertThat(level.wind()).isEmpty();
    }

    @Test
    @DisplayName("passes 0 °C nowhere on the first day: 0.0 °C at the lowest level is no crossing")
    void noCrossingAtTheGround() {
        assertThat(first.levels().get(0).staticAirTemperature().orElseThrow().inCelsius()).isZero();
        assertThat(first.freezingLevels()).isEmpty();
    }

    @Test
    @DisplayName("gives the same 58 levels of air as its transcription into CSV")
    void equalsItsTranscription() {
        List<SoundingLevel> fixed = Soundings.levelsOfAir(first);
        List<SoundingLevel> csv =
                Soundings.levelsOfAir(Soundings.profile("i70026_barrow_20100601"));
        assertThat(csv).hasSize(58).hasSameSizeAs(fixed);
        for (int i = 0; i < csv.size(); i++) {
            // The units differ, hPa and tenths of a degree, and with them the last bits.
            assertThat(values(csv.get(i))).containsExactly(values(fixed.get(i)), within(1e-9));
        }
    }

    private static double[] values(SoundingLevel level) {
        return new double[] {
            level.pressurePa(),
            level.geopotentialAltitudeM(),
            level.temperatureK(),
            level.dewPointK(),
            level.eastwardMps(),
            level.northwardMps()
        };
    }

    /**
     * Over ice it would be 1.5 K at -20 °C; in dry and cold air formulas of the makers part more.
     */
    @Test
    @DisplayName("has relative humidities over water: they tell the dew points of its depressions")
    void relativeHumidity() {
        List<String> lines = Soundings.lines(Soundings.IGRA_DATA);
        lines.replaceAll(
                line ->
                        line.startsWith("#")
                                ? line
                                : line.substring(0, 34) + "-9999" + line.substring(39));
        List<SoundingLevel> ofHumidity = SoundingReader.read(lines).soundings().get(0).levels();
        int compared = 0;
        for (int i = 0; i < ofHumidity.size(); i++) {
            SoundingLevel level = first.levels().get(i);
            assertThat(ofHumidity.get(i).dewPoint().isPresent())
                    .isEqualTo(level.dewPoint().isPresent());
            if (level.temperatureK() - level.dewPointK() < 6.0) {
                compared++;
                assertThat(ofHumidity.get(i).dewPointK()).isEqualTo(level.dewPointK(), within(0.1));
            }
        }
        assertThat(compared).isEqualTo(14);
    }

    @Test
    @DisplayName("has 100 winds at a height only; each stands at the pressure the air has there")
    void windsByHeight() {
        List<SoundingLevel> byHeight =
                first.levels().stream().filter(level -> level.staticPressure().isEmpty()).toList();
        assertThat(byHeight).hasSize(100).allMatch(level -> level.wind().isPresent());

        Atmosphere air = first.atmosphere();
        Winds winds = first.winds(UnobservedWind.NOT_KNOWN);
        for (SoundingLevel level : byHeight) {
            double pressure = nearest(winds.bendsPa(), air, level.geopotentialAltitudeM());
            // 1e-9 m is what pressureFromAltitude states
            assertThat(air.geopotentialAltitude(pressure))
                    .isEqualTo(level.geopotentialAltitudeM(), within(1e-9));
            assertThat(winds.eastward(pressure)).isEqualTo(level.eastwardMps());
            assertThat(winds.northward(pressure)).isEqualTo(level.northwardMps());
        }
    }

    private static double nearest(double[] pressures, Atmosphere air, double altitudeM) {
        return Arrays.stream(pressures)
                .boxed()
                .min(
                        (a, b) ->
                                Double.compare(
                                        Math.abs(air.geopotentialAltitude(a) - altitudeM),
                                        Math.abs(air.geopotentialAltitude(b) - altitudeM)))
                .orElseThrow();
    }
}
