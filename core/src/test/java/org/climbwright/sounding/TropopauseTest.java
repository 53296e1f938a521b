package org.climbwright.sounding;

import static org.assertj.core.api.Assertions.assertThat;
import static org.climbwright.sounding.Level.hpa;
import static org.climbwright.sounding.Level.sounding;

import java.text.DecimalFormat;
import java.text.DecimalFormatSymbols;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.climbwright.atmosphere.AirState;
import org.climbwright.atmosphere.Atmosphere;
import org.climbwright.atmosphere.StandardAir;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.FieldSource;

@DisplayName("The tropopause")
class TropopauseTest {
    @ParameterizedTest(name = "{0}: {1}")
    @CsvSource({
        "isothermal from 10 km on, 10, '5 -20, 8 -41, 10 -55, 12.5 -55, 15 -55'",
        "warmer from 10 km on, 10, '5 -20, 8 -41, 10 -55, 12.5 -50'",
        "cools by 2 K/km just, 10, '5 -20, 8 -41, 10 -55, 13 -61'",
        "cools by 2.1 K/km, none, '5 -20, 8 -41, 10 -55, 13 -61.3'",
        "cooling resumes within 2 km, 12, '5 -20, 8 -41, 10 -55, 11 -55, 12 -62, 14 -62, 17 -62'",
        "cooling resumes after 2 km, 10, '5 -20, 8 -41, 10 -55, 12 -55, 13 -62, 14 -69'",
        "a dip at 1 km that the mean over 2 km hides, none, '5 -20, 8 -41, 10 -55, 11 -57.1, 12.5"
                + " -57'",
        "the mean over 2 km exceeds between two levels, none, '5 -20, 8 -41, 10 -55, 11 -55, 14"
                + " -77'",
        "the ascent ends 1.9 km above, none, '5 -20, 8 -41, 10 -55, 11.9 -55'",
        "the ascent ends 2 km above, 10, '5 -20, 8 -41, 10 -55, 12 -55'",
        "stable below 500 hPa, 10, '1 0, 2 0, 4 0, 8 -41, 10 -55, 13 -55'",
        "stable across 500 hPa: the first level above it, 7.2, '5 -20, 7.2 -20, 10 -20'",
        "no level above 500 hPa, none, '1 0, 3 0, 5 0'",
    })
    @DisplayName("is the lowest level from which the next 2 km cool by no more than 2 K/km:")
    void byHand(String what, String expected, String profile) {
        String found = of(profile).tropopause().map(TropopauseTest::kilometres).orElse("none");
        assertThat(found).isEqualTo(expected);
    }

    /** Kilometres and degrees, on the pressures that standard air has there. */
    private static Sounding of(String profile) {
        String[] parts = profile.split(", ", -1);
        Level[] levels = new Level[parts.length];
        for (int i = 0; i < parts.length; i++) {
            double metres = 1000.0 * Double.parseDouble(parts[i].split(" ", -1)[0]);
            double celsius = Double.parseDouble(parts[i].split(" ", -1)[1]);
            levels[i] =
                    hpa(StandardAir.pressureFromAltitude(metres) / 100.0)
                            .metres(metres)
                            .celsius(celsius);
        }
        return sounding(levels);
    }

    private static String kilometres(AirState air) {
        return new DecimalFormat("0.###", DecimalFormatSymbols.getInstance(Locale.ROOT))
                .format(air.pressureAltitude().inMetres() / 1000.0);
    }

    @Test
    @DisplayName("is unknown where no altitude is")
    void withoutHeights() {
        Sounding sounding =
                sounding(hpa(500).celsius(-20), hpa(250).celsius(-55), hpa(100).celsius(-55));
        assertThat(sounding.tropopause()).isEmpty();
    }

    static final List<Sounding> RECORDED = Soundings.ascents();

    @ParameterizedTest(name = "{index}")
    @FieldSource("RECORDED")
    @DisplayName("of a recorded ascent is the level that a search in steps of 5 m finds")
    void bySearch(Sounding sounding) {
        Optional<SoundingLevel> searched =
                Soundings.levelsOfAir(sounding).stream()
                        .filter(level -> level.pressurePa() <= 50000.0)
                        .filter(level -> isTropopause(sounding.atmosphere(), level))
                        .findFirst();
        assertThat(sounding.tropopause().map(AirState::pressurePa))
                .isEqualTo(searched.map(SoundingLevel::pressurePa));
    }

    /** The definition, word for word, with no knowledge of where the levels above are. */
    private static boolean isTropopause(Atmosphere air, SoundingLevel level) {
        double base = air.geopotentialAltitude(level.pressurePa());
        double top = air.geopotentialAltitude(air.range().lowest());
        if (base + 2000.0 > top) {
            return false;
        }
        for (double above = 5.0; above <= 2000.0; above += 5.0) {
            double temperature =
                    air.temperature(air.pressureFromGeopotentialAltitude(base + above));
            if (level.temperatureK() - temperature > 0.002 * above) {
                return false;
            }
        }
        return true;
    }

    @Test
    @DisplayName(
            "is searched in 19 recorded ascents and found in 15: two, read twice, end at 200 hPa")
    void recorded() {
        assertThat(RECORDED).hasSize(19);
        assertThat(RECORDED.stream().filter(s -> s.tropopause().isPresent())).hasSize(15);
        assertThat(Soundings.profile("w72357_oun_20110522_capped").tropopause()).isEmpty();
        assertThat(Soundings.profile("w72357_oun_jan20_inversion").tropopause()).isEmpty();
    }
}
