package org.climbwright.sounding.surface;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.io.InvalidObjectException;
import org.climbwright.testing.Streams;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

@DisplayName("Visibility")
class VisibilityTest {
    // a statute mile is 1609.344 m: the international foot of 0.3048 m times 5280
    @ParameterizedTest(name = "{0} is {1} m, {2}")
    @CsvSource({
        "4000, 4000, AS_TOLD",
        "0050, 50, AS_TOLD",
        "0000, 50, LESS_THAN",
        "9000NDV, 9000, AS_TOLD",
        "9999, 10000, OR_MORE",
        "9999NDV, 10000, OR_MORE",
        "CAVOK, 10000, OR_MORE",
        "8KM, 8000, AS_TOLD",
        "P10KM, 10000, OR_MORE",
        "10SM, 16093.44, AS_TOLD",
        "P6SM, 9656.064, OR_MORE",
        "1/4SM, 402.336, AS_TOLD",
        "M1/4SM, 402.336, LESS_THAN",
        "15/16SM, 1508.76, AS_TOLD",
        "2 1/2SM, 4023.36, AS_TOLD",
        "0SM, 0, AS_TOLD"
    })
    @DisplayName("is read in metres, kilometres and statute miles, with what it bounds")
    void reads(String text, double metres, Visibility.Bound bound) {
        Visibility visibility = Visibility.parse(text);
        assertThat(visibility.distance().inMetres()).isCloseTo(metres, within(1e-9));
        assertThat(visibility.bound()).isEqualTo(bound);
    }

    @ParameterizedTest(name = "\"{0}\"")
    @ValueSource(
            strings = {
                "", "400", "40000", "////", "10 SM", "M4000", "11/2SM", "2/2SM", "0/4SM", "1/3SM",
                "1/0SM", "1/2", "0.5SM", "-5SM", "1200NE", "cavok", "KM", "SM"
            })
    @DisplayName("is refused in any other form")
    void refuses(String text) {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Visibility.parse(text))
                .withMessage("not a visibility: \"" + text + "\"");
    }

    @ParameterizedTest(name = "{0}")
    @ValueSource(strings = {"0001", "0025", "0730", "0850", "0995", "1013", "5050", "9998"})
    @DisplayName("is refused in digits of no step: 50 m below 800 m, 100 m above, or 9999")
    void refusesOtherSteps(String text) {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Visibility.parse(text))
                .withMessage(
                        "visibility in metres must be 9999, or in steps of 50 m below 800 m and of"
                                + " 100 m above, but was "
                                + Integer.parseInt(text)
                                + " m");
    }

    @ParameterizedTest(name = "{0}: {1}")
    @CsvSource({"4000, 4000.0 m", "9999, 10000.0 m or more", "M1/4SM, less than 402.336 m"})
    @DisplayName("is told in words")
    void words(String text, String words) {
        assertThat(Visibility.parse(text)).hasToString(words);
    }

    @Test
    @DisplayName("goes through a stream, and is refused from one with a distance that cannot be")
    void stream() throws IOException {
        Visibility visibility = Visibility.parse("4000");
        assertThat(Streams.roundTrip(visibility)).isEqualTo(visibility);
        assertThatExceptionOfType(InvalidObjectException.class)
                .isThrownBy(() -> Streams.tampered(visibility, 4000.0, -4000.0))
                .withMessageStartingWith("distance over the ground must be");
    }
}
