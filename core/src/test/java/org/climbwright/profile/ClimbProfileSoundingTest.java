package org.climbwright.profile;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.climbwright.path.Side;
import org.climbwright.performance.ClimbAir;
import org.climbwright.quantity.altitude.PressureAltitude;
import org.climbwright.quantity.path.TrueDirection;
import org.climbwright.sounding.Sounding;
import org.climbwright.sounding.SoundingReader;
import org.climbwright.sounding.UnobservedWind;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** Observed air has thin layers, wind that shears by 20 kn in 400 ft, and gaps. */
@DisplayName("A climb by thrust and drag through observed air")
class ClimbProfileSoundingTest {
    private static final Path FOLDER = Path.of("src", "test", "resources", "sounding");

    static List<Arguments> ascents() throws IOException {
        List<Arguments> ascents = new ArrayList<>();
        try (Stream<Path> files = Files.list(FOLDER)) {
            for (Path file : files.sorted().toList()) {
                if (file.getFileName().toString().matches("[ivw]\\d.*csv|82244.*csv|USM.*txt")) {
                    for (Sounding sounding : SoundingReader.read(file).soundings()) {
                        if (sounding.levels().stream()
                                .anyMatch(level -> level.staticAirTemperature().isPresent())) {
                            ascents.add(Arguments.of(file.getFileName().toString(), sounding));
                        }
                    }
                }
            }
        }
        return ascents;
    }

    @ParameterizedTest(name = "{0}, {1}")
    @MethodSource("ascents")
    @DisplayName("gets to its level on every track, by both integrations alike:")
    void everyTrack(String file, Sounding sounding) {
        PressureAltitude level = PressureAltitude.ofFlightLevel(320);
        for (int track = 0; track < 360; track += 45) {
            ClimbAir air =
                    ClimbAir.of(
                            sounding.atmosphere(),
                            sounding.winds(UnobservedWind.HOLD_LOWEST),
                            TrueDirection.ofDegrees(track));
            AeroplaneClimb climb = ProfileScene.climb(54000, ProfileScene.programme(), air);
            PressureAltitude bottom = PressureAltitude.ofMetres(air.range().lowest() + 0.01);
            ClimbProfile own = climb.between(bottom, level);
            ClimbProfile other = climb.betweenByDormandPrince(bottom, level);
            assertThat(own.endsBecause()).as("track " + track).isEqualTo("level reached");
            assertThat(own.timeS()).isCloseTo(other.timeS(), within(0.01));
            assertThat(own.fuel().inKilograms())
                    .isCloseTo(other.fuel().inKilograms(), within(0.01));
            assertThat(own.at(level, Side.BELOW).calibratedAirspeed().inKnots())
                    .isCloseTo(
                            other.at(level, Side.BELOW).calibratedAirspeed().inKnots(),
                            within(1e-6));
        }
    }

    @Test
    @DisplayName("lets the airspeed give where a headwind rises by 20 kn in 130 m, and comes back")
    void strongShear() throws IOException {
        Sounding sounding =
                SoundingReader.read(FOLDER.resolve("v11035_vienna_winter.csv")).soundings().get(0);
        ClimbAir air =
                ClimbAir.of(
                        sounding.atmosphere(),
                        sounding.winds(UnobservedWind.HOLD_LOWEST),
                        TrueDirection.ofDegrees(90));
        ClimbProfile profile =
                ProfileScene.climb(54000, ProfileScene.programme(), air)
                        .between(
                                PressureAltitude.ofMetres(air.range().lowest() + 0.01),
                                PressureAltitude.ofFlightLevel(320));
        ProfileEvent gives = ProfileScene.events(profile, ProfileEvent.Kind.NOT_KEPT).get(0);
        assertThat(gives.text()).isEqualTo("the wind changes too fast upwards: the airspeed gives");
        PressureAltitude above = gives.arriving().pressureAltitude();
        double most = 0.0;
        for (int metres = 0; metres < 500; metres += 5) {
            PressureAltitude level = PressureAltitude.ofMetres(above.inMetres() + metres);
            most = Math.max(most, profile.at(level).calibratedAirspeed().inKnots());
        }
        assertThat(most).isBetween(260.0, 280.0);
        assertThat(profile.at(PressureAltitude.ofFeet(9000)).calibratedAirspeed().inKnots())
                .isEqualTo(250);
    }

    @Test
    @DisplayName("has 17 ascents to go through")
    void count() throws IOException {
        assertThat(ascents()).hasSize(17);
    }
}
