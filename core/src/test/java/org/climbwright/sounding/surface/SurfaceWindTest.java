package org.climbwright.sounding.surface;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import org.climbwright.atmosphere.wind.Wind;
import org.climbwright.quantity.path.TrueDirection;
import org.climbwright.testing.Streams;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

@DisplayName("The wind of a report")
class SurfaceWindTest {
    // a knot is 1852 m in 3600 s
    @ParameterizedTest(name = "{0} is from {1} at {2} m/s, gust {3} m/s")
    @CsvSource({
        "27005MPS, 270, 5,",
        "27005G12MPS, 270, 5, 12",
        "36036KT, 360, 18.52,",
        "27018G36KT, 270, 9.26, 18.52",
        "01027G//KT, 10, 13.89,",
        "180100KT, 180, 51.444444444,",
        "09036KMH, 90, 10,",
        "VRB03MPS, , 3,",
        "///05MPS, , 5,",
        "00000KT, , 0,",
        "27000KT, , 0,"
    })
    @DisplayName("has direction, speed and gust in any unit of reports")
    void reads(String text, Double from, double mps, Double gustMps) {
        SurfaceWind wind = SurfaceWind.parse(text);
        assertThat(wind.direction().map(TrueDirection::inDegrees).orElse(null)).isEqualTo(from);
        assertThat(wind.speed().inMetresPerSecond()).isCloseTo(mps, within(1e-8));
        assertThat(wind.gust().isPresent()).isEqualTo(gustMps != null);
        wind.gust()
                .ifPresent(
                        gust ->
                                assertThat(gust.inMetresPerSecond())
                                        .isCloseTo(gustMps, within(1e-8)));
        assertThat(wind.isVariable()).isEqualTo(text.startsWith("VRB"));
        assertThat(wind.isCalm()).isEqualTo(mps == 0.0);
        assertThat(wind.isSpeedMoreThan()).isFalse();
        assertThat(wind.isGustMoreThan()).isFalse();
        assertThat(wind.rangeFrom()).isEmpty();
        assertThat(wind.rangeTo()).isEmpty();
        assertThat(wind).hasToString(text);
    }

    @Test
    @DisplayName("may be more than its number")
    void moreThan() {
        SurfaceWind wind = SurfaceWind.parse("270P99GP99KT");
        assertThat(wind.speed().inKnots()).isEqualTo(99);
        assertThat(wind.isSpeedMoreThan()).isTrue();
        assertThat(wind.isGustMoreThan()).isTrue();
        assertThat(SurfaceWind.parse("27080GP99KT").isSpeedMoreThan()).isFalse();
        assertThat(SurfaceWind.parse("27080GP99KT").isGustMoreThan()).isTrue();
    }

    @Test
    @DisplayName("is one to compute with where direction and speed are one number each")
    void wind() {
        Wind wind = SurfaceWind.parse("27010MPS").wind().orElseThrow();
        assertThat(wind.eastwardMps()).isCloseTo(10.0, within(1e-12));
        assertThat(wind.northwardMps()).isCloseTo(0.0, within(1e-12));
        assertThat(SurfaceWind.parse("00000KT").wind()).hasValue(Wind.ofComponents(0, 0));
        assertThat(SurfaceWind.parse("VRB03KT").wind()).isEmpty();
        assertThat(SurfaceWind.parse("///03KT").wind()).isEmpty();
        assertThat(SurfaceWind.parse("270P99KT").wind()).isEmpty();
        assertThat(SurfaceWind.parse("VRB00KT").wind()).hasValue(Wind.ofComponents(0, 0));
    }

    @ParameterizedTest(name = "\"{0}\"")
    @ValueSource(
            strings = {
                "",
                "27005",
                "2705KT",
                "27005kt",
                "270/5KT",
                "27005GKT",
                "27005G1KT",
                "/////KT",
                "27005KT 25V320",
                "27005KT250V320",
                "-7005KT",
                "270005KTS"
            })
    @DisplayName("is refused in any other form")
    void refuses(String text) {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> SurfaceWind.parse(text))
                .withMessage("not a wind: \"" + text + "\"");
    }

    @ParameterizedTest(name = "{0}: {1}")
    @CsvSource({
        "27305KT, 'direction must be in tens of degrees, but was 273 deg'",
        "27005KT 255V320, 'direction must be in tens of degrees, but was 255 deg'",
        "36105KT, direction must be from 0.0 to 360.0 deg",
        "27005KT 250V361, direction must be from 0.0 to 360.0 deg",
        "00005KT, 'a wind from 000 has no speed'",
        "27020G19KT, a gust below the wind",
        "270389KT, wind speed must be up to 200.0 m/s",
        "270201MPS, wind speed must be up to 200.0 m/s"
    })
    @DisplayName("is refused when it cannot be")
    void cannotBe(String text, String message) {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> SurfaceWind.parse(text))
                .withMessageStartingWith(message);
    }

    @Test
    @DisplayName("is equal to another in the same words, also after a stream")
    void equality() throws IOException {
        SurfaceWind wind = SurfaceWind.parse("34013G26KT 300V360");
        assertThat(wind)
                .isEqualTo(SurfaceWind.parse("34013G26KT 300V360"))
                .hasSameHashCodeAs(SurfaceWind.parse("34013G26KT 300V360"))
                .isNotEqualTo(SurfaceWind.parse("34013G26KT"))
                .isNotEqualTo("34013G26KT 300V360");
        SurfaceWind back = Streams.roundTrip(wind);
        assertThat(back).isEqualTo(wind);
        assertThat(back.gust()).isEqualTo(wind.gust());
        assertThat(back.rangeTo()).isEqualTo(wind.rangeTo());
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Streams.tampered(wind, "34013G26", "34013G11"))
                .withMessageStartingWith("a gust below the wind");
    }
}
