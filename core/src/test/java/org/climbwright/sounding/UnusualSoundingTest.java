package org.climbwright.sounding;

import static org.assertj.core.api.Assertions.assertThat;
import static org.climbwright.sounding.Level.hpa;
import static org.climbwright.sounding.Level.sounding;
import static org.climbwright.sounding.Level.withoutPressure;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.FieldSource;

@DisplayName("An unusual sounding")
class UnusualSoundingTest {
    static final List<Arguments> UNUSUAL =
            List.of(
                    Arguments.of("no level", sounding()),
                    Arguments.of("one level", sounding(hpa(1000).celsius(10))),
                    Arguments.of(
                            "two levels, nothing but temperatures",
                            sounding(hpa(1000).celsius(10), hpa(500).celsius(-20))),
                    Arguments.of(
                            "a height at the top only",
                            sounding(hpa(1000).celsius(10), hpa(500).celsius(-20).metres(5500))),
                    Arguments.of(
                            "heights that fit no air at all",
                            sounding(
                                    hpa(1000).celsius(10).metres(0),
                                    hpa(999).celsius(10).metres(70000),
                                    hpa(100).celsius(-60).metres(70000.001))),
                    Arguments.of(
                            "heights at levels without a temperature only",
                            sounding(
                                    hpa(1000).celsius(10),
                                    hpa(900).metres(1000),
                                    hpa(500).celsius(-20))),
                    Arguments.of(
                            "isothermal",
                            sounding(
                                    hpa(1000).celsius(-20).metres(0),
                                    hpa(500).celsius(-20).metres(5000),
                                    hpa(100).celsius(-20).metres(16000))),
                    Arguments.of(
                            "all at 0 °C",
                            sounding(
                                    hpa(1000).celsius(0),
                                    hpa(500).celsius(0),
                                    hpa(100).celsius(0))),
                    Arguments.of(
                            "winds by height without air",
                            sounding(
                                    hpa(900).wind(10, 5),
                                    withoutPressure().metres(1000).wind(20, 5))),
                    Arguments.of(
                            "winds by height, air without heights",
                            sounding(
                                    hpa(1000).celsius(10),
                                    hpa(900).celsius(5),
                                    withoutPressure().metres(1000).wind(20, 5))),
                    Arguments.of(
                            "winds by height below, at, above and just beside the ends",
                            sounding(
                                    hpa(1000).celsius(10).metres(100),
                                    hpa(900).celsius(5).metres(1000),
                                    withoutPressure().metres(99).wind(20, 5),
                                    withoutPressure().metres(100).wind(20, 5),
                                    withoutPressure().metres(100.0000000001).wind(20, 6),
                                    withoutPressure().metres(999.9999999999).wind(20, 6),
                                    withoutPressure().metres(1000).wind(20, 5),
                                    withoutPressure().metres(1001).wind(20, 5))),
                    Arguments.of(
                            "levels a part in 1e8 apart",
                            sounding(
                                    hpa(1000).celsius(10).metres(100),
                                    hpa(999.99999).celsius(-30).metres(100.0001),
                                    hpa(999.99998).celsius(30).metres(2000))),
                    Arguments.of(
                            "the ends of what can be",
                            sounding(
                                    hpa(1776).celsius(58.8).dewPoint(58.8).metres(-5000),
                                    hpa(0.00887).celsius(-150.1).dewPoint(-150.1).metres(80000))),
                    Arguments.of(
                            "nearly nothing but vapour",
                            sounding(
                                    hpa(200).celsius(58).dewPoint(58),
                                    hpa(0.02).celsius(-50).dewPoint(-60))));

    @ParameterizedTest(name = "{0}")
    @FieldSource("UNUSUAL")
    @DisplayName("answers everything, or says that it has no air:")
    void answers(String what, Sounding sounding) {
        Questions.ask(sounding);
    }

    static final List<Arguments> ABOUT_ZERO =
            Stream.of(
                            ofCelsius("colder than 0 °C all the way", "", -1, -2, -3),
                            ofCelsius("warmer all the way", "", 3, 2, 1),
                            ofCelsius("isothermal at 0 °C", "", 0, 0, 0),
                            ofCelsius("0 °C at the ground, colder above", "", 0, -2, -3),
                            ofCelsius("0 °C at the ground, warmer above", "", 0, 2, 3),
                            ofCelsius("0 °C at the top, warmer below", "", 3, 2, 0),
                            ofCelsius("0 °C at the top, colder below", "", -3, -2, 0),
                            ofCelsius(
                                    "0 °C at the two lowest and the two highest",
                                    "",
                                    0,
                                    0,
                                    1,
                                    0,
                                    0),
                            ofCelsius("touches 0 °C from above", "", 2, 0, 2),
                            ofCelsius("touches 0 °C from below", "", -2, 0, -2),
                            ofCelsius("stays at 0 °C and goes back up", "", 2, 0, 0, 0, 2),
                            ofCelsius("stays at 0 °C and goes back down", "", -2, 0, 0, -2),
                            ofCelsius("falls through a level of 0 °C", "900 FALLING", 2, 0, -2),
                            ofCelsius("rises through a level of 0 °C", "900 RISING", -2, 0, 2),
                            ofCelsius(
                                    "stays at 0 °C and falls on: its base",
                                    "900 FALLING",
                                    2,
                                    0,
                                    0,
                                    0,
                                    -2),
                            ofCelsius(
                                    "stays at 0 °C and rises on: its base",
                                    "900 RISING",
                                    -2,
                                    0,
                                    0,
                                    2),
                            ofCelsius(
                                    "0 °C at the ground, then through it",
                                    "750 FALLING",
                                    0,
                                    2,
                                    1,
                                    -1),
                            ofCelsius("a warm nose", "950 RISING, 850 FALLING", -2, 2, -2),
                            ofCelsius(
                                    "three crossings, one of them a level",
                                    "950 FALLING, 800 RISING, 650 FALLING",
                                    1,
                                    -1,
                                    0,
                                    3,
                                    -3,
                                    -9))
                    .toList();

    /** Levels 100 hPa apart from 1000 hPa up; a crossing is told by the hPa it is nearest to. */
    private static Arguments ofCelsius(String what, String crossings, double... celsius) {
        Level[] levels = new Level[celsius.length];
        for (int i = 0; i < celsius.length; i++) {
            levels[i] = hpa(1000 - 100.0 * i).celsius(celsius[i]);
        }
        return Arguments.of(what, crossings, sounding(levels));
    }

    @ParameterizedTest(name = "{0}: \"{1}\"")
    @FieldSource("ABOUT_ZERO")
    @DisplayName("passes 0 °C where the sign changes inside the column:")
    void crossings(String what, String expected, Sounding sounding) {
        Questions.ask(sounding);
        assertThat(
                        sounding.freezingLevels().stream()
                                .map(crossing -> nearest50(crossing) + " " + crossing.trend()))
                .containsExactly(expected.isEmpty() ? new String[0] : expected.split(", ", -1));
    }

    private static int nearest50(IsothermCrossing crossing) {
        return 50 * (int) Math.round(crossing.air().pressurePa() / 5000.0);
    }
}
