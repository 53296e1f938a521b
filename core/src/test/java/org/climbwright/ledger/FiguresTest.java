package org.climbwright.ledger;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

@DisplayName("A figure of the accuracy ledger")
class FiguresTest {
    @ParameterizedTest
    @CsvSource({
        "0, 0",
        "-5000, -5000",
        "1e6, 1000000",
        "177687.0457, 177687",
        "0.1, 0.1",
        "1e-15, 1e-15",
        "1.2e-15, 1.2e-15",
        "1.570042e-5, 1.57e-5",
        "2e-10, 2e-10"
    })
    @DisplayName("is printed as people write it")
    void plain(double number, String text) {
        assertThat(Figures.plain(number)).isEqualTo(text);
    }

    @ParameterizedTest
    @CsvSource({"0, 0", "0.501, 0.51", "3.61, 3.7", "38.58, 39", "4.5562e-15, 4.6e-15"})
    @DisplayName("is rounded up if it is an error")
    void error(double size, String text) {
        assertThat(Figures.error(size)).isEqualTo(text);
    }

    @Test
    @DisplayName("comes back from its text as it was if it is an input")
    void inputs() {
        double[] in = {0.0, 4.9e-324, 101325.0, -1.0 / 3.0};
        assertThat(Figures.inputs(Figures.inputs(in))).containsExactly(in);
    }
}
