package org.climbwright.profile;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.climbwright.airspeed.Airspeeds;
import org.climbwright.atmosphere.AirState;
import org.climbwright.path.Side;
import org.climbwright.performance.ClimbAir;
import org.climbwright.performance.ClimbConditions;
import org.climbwright.performance.ClimbMotion;
import org.climbwright.performance.ClimbSpeed;
import org.climbwright.quantity.altitude.PressureAltitude;
import org.climbwright.quantity.path.Mass;
import org.climbwright.quantity.path.TrueDirection;
import org.climbwright.quantity.pressure.StaticPressure;
import org.climbwright.quantity.speed.CalibratedAirspeed;
import org.climbwright.quantity.temperature.TemperatureDifference;
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

    /** The bundled sounding: 18.8 m/s more on the nose in 874 m of height, at 131 m/s. */
    @Test
    @DisplayName("has a wind term of -0.29 in the lowest 100 hPa of the inversion at 250 kn")
    void windTerm() throws IOException {
        Sounding sounding =
                SoundingReader.read(FOLDER.resolve("w72357_oun_jan20_inversion.csv"))
                        .soundings()
                        .get(0);
        AirState low = sounding.atmosphere().at(StaticPressure.ofHectopascals(978));
        AirState middle = sounding.atmosphere().at(StaticPressure.ofHectopascals(928));
        AirState high = sounding.atmosphere().at(StaticPressure.ofHectopascals(878));
        double change = alongTrack360(sounding, high) - alongTrack360(sounding, low);
        double height =
                high.geopotentialAltitude().orElseThrow().inMetres()
                        - low.geopotentialAltitude().orElseThrow().inMetres();
        double tas =
                Airspeeds.from(CalibratedAirspeed.ofKnots(250), middle)
                        .trueAirspeed()
                        .inMetresPerSecond();
        assertThat(ClimbMotion.windFactor(tas, change / height)).isCloseTo(-0.29, within(0.005));
        ClimbAir air =
                ClimbAir.of(
                        sounding.atmosphere(),
                        sounding.winds(UnobservedWind.NOT_KNOWN),
                        TrueDirection.ofDegrees(360));
        double least = 0.0;
        double most = -1.0;
        for (int stretch = air.stretch(low.pressureAltitude().inMetres(), true);
                stretch < air.stretch(high.pressureAltitude().inMetres(), false);
                stretch++) {
            double term =
                    ClimbConditions.of(ProfileScene.jet(), air, Mass.ofKilograms(54000))
                            .at(
                                    PressureAltitude.ofMetres(
                                            0.5 * (air.edgeM(stretch) + air.edgeM(stretch + 1))),
                                    ClimbSpeed.constant(CalibratedAirspeed.ofKnots(250)))
                            .windFactor()
                            .orElseThrow();
            least = Math.min(least, term);
            most = Math.max(most, term);
        }
        assertThat(least).isBetween(-0.40, -0.29);
        assertThat(most).isBetween(-0.29, -0.20);
    }

    private static double alongTrack360(Sounding sounding, AirState air) {
        return sounding.winds(UnobservedWind.NOT_KNOWN)
                .alongTrack(air.pressureAltitude(), TrueDirection.ofDegrees(360))
                .orElseThrow()
                .inMetresPerSecond();
    }

    @Test
    @DisplayName("passes what the sounding tells of its levels, found to 0.1 ft and 0.01 s")
    void marks() throws IOException {
        Sounding sounding =
                SoundingReader.read(FOLDER.resolve("w72357_oun_jan20_inversion.csv"))
                        .soundings()
                        .get(0);
        ClimbAir air =
                ClimbAir.of(
                        sounding.atmosphere(),
                        sounding.winds(UnobservedWind.HOLD_LOWEST),
                        TrueDirection.ofDegrees(360));
        ClimbProgramme programme =
                ProfileScene.programme()
                        .withMarks(
                                LevelMark.ofSounding(sounding, TemperatureDifference.ofKelvins(1)));
        PressureAltitude bottom = PressureAltitude.ofMetres(air.range().lowest() + 0.01);
        ClimbProfile profile =
                ProfileScene.climb(54000, programme, air)
                        .between(bottom, PressureAltitude.ofFlightLevel(320));
        List<ProfileEvent> marks = ProfileScene.events(profile, ProfileEvent.Kind.MARK);
        // independent computation, T linear in ln p: 4118.65, 5398.06 and 9956.26 ft
        assertThat(marks)
                .filteredOn(mark -> mark.text().startsWith("0 °C"))
                .extracting(mark -> mark.arriving().pressureAltitude().inFeet())
                .usingElementComparator(
                        (a, b) -> Math.abs(a - b) <= 0.01 ? 0 : Double.compare(a, b))
                .containsExactly(4118.65, 5398.06, 9956.26);
        for (ProfileEvent mark : marks) {
            assertThat(profile.at(mark.arriving().time()).pressureAltitude().inFeet())
                    .isCloseTo(mark.arriving().pressureAltitude().inFeet(), within(0.1));
        }
    }

    @Test
    @DisplayName("has 17 ascents to go through")
    void count() throws IOException {
        assertThat(ascents()).hasSize(17);
    }
}
