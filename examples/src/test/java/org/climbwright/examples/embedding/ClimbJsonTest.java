package org.climbwright.examples.embedding;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.util.Random;
import org.climbwright.examples.embedding.ClimbJson.Sample;
import org.climbwright.quantity.altitude.PressureAltitude;
import org.climbwright.quantity.speed.CalibratedAirspeed;
import org.climbwright.quantity.speed.Mach;
import org.climbwright.quantity.temperature.StaticAirTemperature;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("Values as JSON")
class ClimbJsonTest {
    private final JsonMapper mapper = ClimbJson.mapper();

    @Test
    @DisplayName("come back to the last bit, whatever unit they came in")
    void roundTrip() throws JsonProcessingException {
        Random random = new Random(20260101);
        for (int i = 0; i < 5000; i++) {
            boolean isSi = i % 2 == 0;
            double feet = -2000 + 60000 * random.nextDouble();
            double knots = 600 * random.nextDouble();
            Sample sample =
                    new Sample(
                            isSi ? PressureAltitude.ofMetres(feet) : PressureAltitude.ofFeet(feet),
                            isSi
                                    ? CalibratedAirspeed.ofMetresPerSecond(knots)
                                    : CalibratedAirspeed.ofKnots(knots),
                            Mach.of(random.nextDouble()),
                            isSi
                                    ? StaticAirTemperature.ofKelvins(
                                            200 + 100 * random.nextDouble())
                                    : StaticAirTemperature.ofCelsius(
                                            -70 + 99 * random.nextDouble()));
            String json = mapper.writeValueAsString(sample);
            assertThat(mapper.readValue(json, Sample.class)).as(json).isEqualTo(sample);
        }
    }

    @Test
    @DisplayName("are refused where a text is no value, with the place of the fault")
    void refused() {
        assertThatThrownBy(() -> mapper.readValue("{\"level\":\"35,000 ft\"}", Sample.class))
                .isInstanceOf(JsonProcessingException.class)
                .hasMessageContaining("cannot read \"35,000 ft\" as pressure altitude");
    }

    @Test
    @DisplayName("look as the program prints them")
    void prints() throws ReflectiveOperationException {
        assertThat(Printed.by(ClimbJson.class))
                .isEqualTo(
                        """
                        {"level":"35000 ft","speed":"290 kn","mach":"M0.77","temperature":"-54.3 °C"}
                        true
                        """);
    }
}
