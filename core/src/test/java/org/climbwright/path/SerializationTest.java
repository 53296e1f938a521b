package org.climbwright.path;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.Serializable;
import java.util.List;
import org.climbwright.quantity.altitude.PressureAltitude;
import org.climbwright.testing.Streams;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("What describes a climb, written to a stream of objects,")
class SerializationTest {
    private final ClimbRates rates =
            Scene.rates(
                    Scene.row(0, 3000),
                    Scene.row(10000, 2000),
                    Scene.row(10000, 2222),
                    Scene.row(20000, 1000));

    @Test
    @DisplayName("is read back the same: schedule, rates, state")
    void readBack() throws Exception {
        ClimbState state = Scene.calmStandardClimb().at(PressureAltitude.ofFeet(12345));
        for (Serializable value : List.of(Scene.schedule(), rates, state)) {
            assertThat(Streams.roundTrip(value)).isEqualTo(value).hasSameHashCodeAs(value);
        }
    }

    @Test
    @DisplayName("is refused when somebody made a rate of it negative")
    void forgedRate() throws Exception {
        double rate = 2222 * 0.3048 / 60.0;
        assertThatThrownBy(() -> Streams.tampered(rates, rate, -rate))
                .hasStackTraceContaining("above 0.0 m/s");
    }
}
