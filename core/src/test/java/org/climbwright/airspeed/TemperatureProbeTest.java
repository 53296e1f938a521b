package org.climbwright.airspeed;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.io.IOException;
import org.climbwright.testing.Streams;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

@DisplayName("A temperature probe")
class TemperatureProbeTest {
    private static final TemperatureProbe PROBE = TemperatureProbe.ofRecoveryFactor(0.98);

    @ParameterizedTest
    @ValueSource(doubles = {Double.NaN, -0.1, 0.0, 1.01})
    @DisplayName("recovers something, and no more than all")
    void refused(double factor) {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> TemperatureProbe.ofRecoveryFactor(factor))
                .withMessage("recovery factor must be above 0.0, to 1.0, but was " + factor);
    }

    @Test
    @DisplayName("equals one of the same factor, and says which it is")
    void equality() {
        assertThat(PROBE)
                .isEqualTo(TemperatureProbe.ofRecoveryFactor(0.98))
                .hasSameHashCodeAs(TemperatureProbe.ofRecoveryFactor(0.98))
                .isNotEqualTo(TemperatureProbe.ofRecoveryFactor(0.97))
                .hasToString("probe of recovery factor 0.98");
        assertThat(PROBE.recoveryFactor()).isEqualTo(0.98);
    }

    @Test
    @DisplayName("comes out of a stream as it went in, and is refused when tampered with")
    void stream() throws IOException {
        assertThat(Streams.roundTrip(PROBE)).isEqualTo(PROBE);
        assertThatIllegalArgumentException().isThrownBy(() -> Streams.tampered(PROBE, 0.98, 1.98));
    }
}
