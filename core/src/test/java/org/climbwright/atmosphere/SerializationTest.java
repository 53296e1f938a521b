package org.climbwright.atmosphere;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.io.IOException;
import org.climbwright.atmosphere.wind.Wind;
import org.climbwright.testing.Streams;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("Air and wind in a stream")
class SerializationTest {
    @Test
    @DisplayName("come out as they went in, what is not known included")
    void roundTrip() throws IOException {
        AirState known = AirState.ofSi(85000.0, 303.15, 1200.0, 1500.0);
        AirState unknown = AirState.ofSi(85000.0, 303.15, Double.NaN, Double.NaN);
        Wind wind = Wind.ofComponents(-3.25, 7.5);

        assertThat(Streams.roundTrip(known)).isEqualTo(known);
        assertThat(Streams.roundTrip(unknown)).isEqualTo(unknown);
        assertThat(Streams.roundTrip(wind)).isEqualTo(wind);

        LiftingCondensationLevel level = LiftingCondensationLevel.of(known);
        assertThat(Streams.roundTrip(level)).isEqualTo(level);
    }

    @Test
    @DisplayName("are refused when somebody has made them what cannot be")
    void tampered() {
        AirState air = AirState.ofSi(85000.0, 303.15, 1200.0, 1500.0);
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Streams.tampered(air, 85000.0, -1.0))
                .withMessageContaining("static pressure");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Streams.tampered(air, 303.15, Double.NaN))
                .withMessageContaining("static air temperature");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Streams.tampered(air, 1200.0, 90000.0))
                .withMessageContaining("vapour pressure");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Streams.tampered(air, 1500.0, Double.POSITIVE_INFINITY))
                .withMessageContaining("geopotential altitude");

        // more than saturated air, and a condensation level of dry air
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Streams.tampered(air, 1200.0, 5000.0))
                .withMessageContaining("at most that of saturation");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Streams.tampered(LiftingCondensationLevel.of(air), 1200.0, 0.0))
                .withMessageContaining("dry air has no condensation level");

        Wind wind = Wind.ofComponents(-3.25, 7.5);
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Streams.tampered(wind, 7.5, Double.NaN))
                .withMessageContaining("wind components must be finite");
    }
}
