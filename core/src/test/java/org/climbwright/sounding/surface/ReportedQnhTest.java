package org.climbwright.sounding.surface;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.io.IOException;
import java.io.InvalidObjectException;
import org.climbwright.testing.Streams;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

@DisplayName("A reported QNH")
class ReportedQnhTest {
    @Test
    @DisplayName("comes in hectopascals or in inches, and says in which")
    void reads() {
        ReportedQnh hectopascals = ReportedQnh.parse("Q0997");
        assertThat(hectopascals.setting().inHectopascals()).isEqualTo(997);
        assertThat(hectopascals.unit()).isEqualTo(ReportedQnh.Unit.HECTOPASCAL);
        assertThat(hectopascals).hasToString("997.0 hPa");
        ReportedQnh inches = ReportedQnh.parse("A2980");
        assertThat(inches.setting().inInchesOfMercury()).isEqualTo(29.80);
        assertThat(inches.unit()).isEqualTo(ReportedQnh.Unit.INCH_OF_MERCURY);
        assertThat(inches).hasToString("29.8 inHg");
    }

    // rounded down: Q1009 is 1009 to 1010 hPa, A2980 1009.144 to 1009.482 hPa (33.86388640341 hPa
    // to the inch)
    @ParameterizedTest(name = "{0} and {1}: {2}")
    @CsvSource({
        "Q1009, A2980, true",
        "Q1009, A2979, true",
        "Q1009, A2978, false",
        "Q1009, A2982, true",
        "Q1009, A2983, false",
        "Q1009, Q1009, true",
        "Q1009, Q1010, false",
        "A2980, A2980, true",
        "A2980, A2981, false",
        "A2980, A2979, false"
    })
    @DisplayName("agrees with another that some exact QNH is rounded down to as well")
    void agrees(String one, String other, boolean agrees) {
        assertThat(ReportedQnh.parse(one).agreesWith(ReportedQnh.parse(other))).isEqualTo(agrees);
        assertThat(ReportedQnh.parse(other).agreesWith(ReportedQnh.parse(one))).isEqualTo(agrees);
    }

    @ParameterizedTest(name = "\"{0}\"")
    @ValueSource(strings = {"", "Q", "Q100", "Q10099", "Q////", "1009", "Q1009.5", "q1009", "QNH"})
    @DisplayName("is refused in any other form")
    void refuses(String text) {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> ReportedQnh.parse(text))
                .withMessage("not a QNH: \"" + text + "\"");
    }

    @Test
    @DisplayName("goes through a stream, and is refused from one with a setting that cannot be")
    void stream() throws IOException {
        ReportedQnh qnh = ReportedQnh.parse("Q1009");
        assertThat(Streams.roundTrip(qnh)).isEqualTo(qnh);
        assertThatExceptionOfType(InvalidObjectException.class)
                .isThrownBy(() -> Streams.tampered(qnh, 100900.0, 1009.0))
                .withMessageStartingWith("altimeter setting must be");
    }
}
