package org.climbwright.sounding;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatIllegalStateException;
import static org.assertj.core.api.Assertions.tuple;
import static org.assertj.core.api.Assertions.within;
import static org.climbwright.sounding.Level.hpa;
import static org.climbwright.sounding.Level.sounding;
import static org.climbwright.sounding.Level.withoutPressure;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.climbwright.atmosphere.AirState;
import org.climbwright.atmosphere.Atmosphere;
import org.climbwright.atmosphere.StandardAir;
import org.climbwright.atmosphere.altimetry.Altimetry;
import org.climbwright.quantity.OutsideModelException;
import org.climbwright.quantity.altitude.PressureAltitude;
import org.climbwright.quantity.pressure.StaticPressure;
import org.climbwright.testing.Streams;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

@DisplayName("A sounding")
class SoundingTest {
    private static final Level GROUND = hpa(1000).metres(100).celsius(10).dewPoint(8).wind(90, 3);
    private static final Level ALOFT = hpa(900).metres(1000).celsius(3);

    @Test
    @DisplayName("keeps its station, its launch and its levels, and nobody changes them")
    void parts() {
        List<SoundingLevel> levels = new ArrayList<>(List.of(GROUND.reported(), ALOFT.reported()));
        Sounding sounding = Sounding.of("Station", "2010-06-01T00", levels);
        levels.clear();
        assertThat(sounding.station()).isEqualTo("Station");
        assertThat(sounding.launch()).isEqualTo("2010-06-01T00");
        assertThat(sounding.levels()).containsExactly(GROUND.reported(), ALOFT.reported());
        assertThat(sounding.levels()).isUnmodifiable();
        assertThat(sounding).hasToString("sounding of Station 2010-06-01T00, 2 levels");
    }

    @Test
    @DisplayName("is equal to another with the same station, launch and levels only")
    void equality() {
        Sounding one = Sounding.of("S", "L", List.of(GROUND.reported()));
        assertThat(Sounding.of("S", "L", List.of(GROUND.reported())))
                .isEqualTo(one)
                .hasSameHashCodeAs(one);
        assertThat(one)
                .isNotEqualTo(Sounding.of("T", "L", one.levels()))
                .isNotEqualTo(Sounding.of("S", "M", one.levels()))
                .isNotEqualTo(Sounding.of("S", "L", List.of(ALOFT.reported())))
                .isNotEqualTo("S");
    }

    @Test
    @DisplayName("goes through a stream and comes back equal, with all it answers")
    void roundTrip() throws IOException {
        for (Sounding sounding : Soundings.ascents()) {
            Sounding back = Streams.roundTrip(sounding);
            assertThat(back).isEqualTo(sounding).isNotSameAs(sounding);
            assertThat(Streams.roundTrip(new ArrayList<>(sounding.freezingLevels())))
                    .isEqualTo(sounding.freezingLevels())
                    .isEqualTo(back.freezingLevels());
        }
    }

    @Test
    @DisplayName("is refused from a stream in which somebody made it impossible")
    void tampered() {
        Sounding sounding = sounding(hpa(1000).celsius(10), hpa(900).celsius(3));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Streams.tampered(sounding, 90000.0, 110000.0))
                .withMessageStartingWith("pressure must fall");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Streams.tampered(sounding, 90000.0, -90000.0))
                .withMessageStartingWith("static pressure must be");
    }

    @Test
    @DisplayName("is asked as its Javadoc shows")
    void javadocExample() {
        SoundingReading reading = Soundings.read("v01028_bjornoya_three_zero.csv");
        Sounding sounding = reading.soundings().get(0);
        assertThat(sounding.freezingLevels())
                .extracting(IsothermCrossing::trend)
                .containsExactly(
                        IsothermCrossing.Trend.FALLING,
                        IsothermCrossing.Trend.RISING,
                        IsothermCrossing.Trend.FALLING);
        // between 932 hPa with -2.45 degC and 850 hPa
        assertThat(
                        sounding.atmosphere()
                                .at(PressureAltitude.ofFeet(5000))
                                .staticAirTemperature()
                                .inCelsius())
                .isBetween(-8.0, -2.45);
    }

    @Test
    @DisplayName("without two levels of air has none, and says how many there are")
    void noAir() {
        Sounding wind =
                sounding(GROUND, hpa(900).metres(1000), withoutPressure().celsius(3).metres(2000));
        assertThatIllegalStateException()
                .isThrownBy(wind::atmosphere)
                .withMessage(
                        "an atmosphere needs two levels with pressure and temperature, but there"
                                + " are 1: sounding, 3 levels");
    }

    @Test
    @DisplayName("has the air at its levels with pressure and temperature, the lowest first")
    void airAtLevels() {
        Sounding sounding =
                sounding(
                        hpa(1000).metres(90),
                        hpa(950).celsius(10),
                        hpa(900),
                        hpa(850).celsius(3),
                        withoutPressure().metres(2000).celsius(2));
        assertThat(sounding.airAtLevels())
                .extracting(AirState::pressurePa, AirState::temperatureK)
                .containsExactly(tuple(95000.0, 283.15), tuple(85000.0, 276.15));
        // ISA has 11.4 and 5.5 degC there: 15 degC less 6.5 K/km times 540.3 and 1457.3 m
        assertThat(sounding.airAtLevels().get(0).isaDeviation().inKelvins())
                .isEqualTo(-1.488, within(0.001));
        assertThat(sounding.largestIsaDeviation()).isEqualTo(sounding.airAtLevels().get(1));
    }

    /** Its lowest level of air, 778 hPa, is at 7130.09 ft in the table of QNH. */
    @Test
    @DisplayName("of a station at 2181 m is refused below it, and the range is told in feet too")
    void belowTheStation() {
        Atmosphere air = Soundings.profile("v72376_flagstaff_highelev").atmosphere();
        assertThatExceptionOfType(OutsideModelException.class)
                .isThrownBy(() -> air.at(PressureAltitude.ofFeet(5000)))
                .withMessageStartingWith("pressure altitude must be from ")
                .withMessageContaining(" m, but was 1524.0 m: the sounding has no temperature")
                .withMessageContaining(" (in feet from 7130.1 to ")
                .withMessageEndingWith(", but was 5000.0)")
                .satisfies(
                        refused -> {
                            assertThat(refused.unit()).isEqualTo("m");
                            assertThat(refused.lowest())
                                    .isEqualTo(
                                            StandardAir.altitudeFromPressure(
                                                    air.range().highest()));
                        });
        assertThat(
                        air.at(
                                Altimetry.pressureAltitude(
                                        StaticPressure.ofPascals(air.range().highest()))))
                .isNotNull();
    }

    @Nested
    @DisplayName("refuses")
    class Refuses {
        @ParameterizedTest(name = "{0} hPa after {1} hPa")
        @CsvSource({"1000, 900", "900, 900", "899.9999999, 900"})
        @DisplayName("a pressure that does not fall from level to level")
        void pressure(double above, double below) {
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> sounding(hpa(below), hpa(above)))
                    .withMessage(
                            "pressure must fall from level to level, and levels without pressure"
                                    + " come last, but "
                                    + above * 100.0
                                    + " Pa does not");
        }

        @Test
        @DisplayName("nothing that falls by more than a part in 1e9")
        void leastStep() {
            assertThat(sounding(hpa(900), hpa(899.999999)).levels()).hasSize(2);
        }

        @Test
        @DisplayName("a level with pressure after one without")
        void order() {
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> sounding(withoutPressure().metres(100), hpa(900)))
                    .withMessageContaining("levels without pressure come last, but 90000.0 Pa");
        }

        @ParameterizedTest(name = "{0} m after {1} m")
        @CsvSource({"999, 1000", "1000, 1000"})
        @DisplayName("a height that does not rise from one reported height to the next")
        void height(double above, double below) {
            assertThatIllegalArgumentException()
                    .isThrownBy(
                            () ->
                                    sounding(
                                            hpa(900).metres(below),
                                            hpa(850),
                                            hpa(800).metres(above)))
                    .withMessage(
                            "height must rise from level to level, and levels without pressure"
                                    + " come last, but "
                                    + above
                                    + " m does not");
        }
    }

    @Nested
    @DisplayName("level")
    class OfOneLevel {
        @Test
        @DisplayName("has what was reported and nothing else")
        void parts() {
            SoundingLevel level = withoutPressure().metres(100).reported();
            assertThat(level.staticPressure()).isEmpty();
            assertThat(level.staticAirTemperature()).isEmpty();
            assertThat(level.dewPoint()).isEmpty();
            assertThat(level.wind()).isEmpty();
            assertThat(level.geopotentialAltitude().orElseThrow().inMetres()).isEqualTo(100.0);
            assertThat(level).hasToString("level of 100 m");
        }

        @Test
        @DisplayName("is equal to another with the same numbers only")
        void equality() {
            assertThat(GROUND.reported())
                    .isEqualTo(GROUND.reported())
                    .hasSameHashCodeAs(GROUND.reported());
            for (Level other :
                    List.of(
                            new Level(999, 100, 10, 8, -3, 0),
                            GROUND.metres(101),
                            GROUND.celsius(9),
                            GROUND.dewPoint(7),
                            GROUND.wind(90, 4),
                            GROUND.wind(91, 3))) {
                assertThat(other.reported()).isNotEqualTo(GROUND.reported());
            }
            assertThat(hpa(900).components(-0.0, -0.0).metres(-0.0).reported())
                    .isEqualTo(hpa(900).components(0.0, 0.0).metres(0.0).reported());
        }

        @ParameterizedTest(name = "{6}")
        @MethodSource("org.climbwright.sounding.SoundingTest#impossible")
        @DisplayName("is refused with")
        void refused(
                double pressure,
                double height,
                double temperature,
                double dewPoint,
                double east,
                double north,
                String message) {
            assertThatIllegalArgumentException()
                    .isThrownBy(
                            () ->
                                    SoundingLevel.ofSi(
                                            pressure, height, temperature, dewPoint, east, north))
                    .withMessageStartingWith(message);
        }
    }

    static Stream<Arguments> impossible() {
        double no = Double.NaN;
        double inf = Double.POSITIVE_INFINITY;
        return Stream.of(
                Arguments.of(no, no, 280, no, no, no, "a level needs a pressure or a height"),
                Arguments.of(0.0, no, no, no, no, no, "static pressure must be from 0.88"),
                Arguments.of(-1.0, no, no, no, no, no, "static pressure must be from 0.88"),
                Arguments.of(0.88, no, no, no, no, no, "static pressure must be from 0.88"),
                Arguments.of(177700.0, no, no, no, no, no, "static pressure must be from 0.88"),
                Arguments.of(inf, no, no, no, no, no, "static pressure must be from 0.88"),
                Arguments.of(
                        1e5, -inf, no, no, no, no, "height must be finite, but was -Infinity m"),
                Arguments.of(
                        1e5,
                        no,
                        0.0,
                        no,
                        no,
                        no,
                        "temperature must be a finite number above 0.0, but was 0.0 K"),
                Arguments.of(
                        1e5,
                        no,
                        inf,
                        no,
                        no,
                        no,
                        "temperature must be a finite number above 0.0, but was Infinity K"),
                Arguments.of(1e5, no, no, 122.9, no, no, "temperature of saturated air must be"),
                Arguments.of(1e5, no, no, 332.1, no, no, "temperature of saturated air must be"),
                Arguments.of(
                        600.0,
                        no,
                        280.0,
                        273.15,
                        no,
                        no,
                        "dew point must be one of a vapour pressure below the static pressure of"
                                + " 600.0 Pa, but was 273.15 K"),
                Arguments.of(
                        1e5,
                        no,
                        no,
                        no,
                        1.0,
                        no,
                        "a wind needs both components, but had 1.0 and NaN"),
                Arguments.of(
                        1e5,
                        no,
                        no,
                        no,
                        no,
                        1.0,
                        "a wind needs both components, but had NaN and 1.0"),
                Arguments.of(
                        1e5,
                        no,
                        no,
                        no,
                        inf,
                        1.0,
                        "eastward wind must be finite, but was Infinity"),
                Arguments.of(
                        1e5,
                        no,
                        no,
                        no,
                        1.0,
                        inf,
                        "northward wind must be finite, but was Infinity"));
    }
}
