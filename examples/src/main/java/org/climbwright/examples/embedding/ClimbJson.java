package org.climbwright.examples.embedding;

import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.DeserializationContext;
import com.fasterxml.jackson.databind.SerializerProvider;
import com.fasterxml.jackson.databind.deser.std.StdDeserializer;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.module.SimpleModule;
import com.fasterxml.jackson.databind.ser.std.StdSerializer;
import java.io.IOException;
import java.util.function.Function;
import org.climbwright.quantity.Scalar;
import org.climbwright.quantity.altitude.PressureAltitude;
import org.climbwright.quantity.speed.CalibratedAirspeed;
import org.climbwright.quantity.speed.Mach;
import org.climbwright.quantity.temperature.StaticAirTemperature;

/**
 * Values as JSON by their text: {@code {"level":"35000 ft","speed":"290 kn"}}. The text keeps its
 * unit and reads back as the same value to the last bit.
 */
public final class ClimbJson {
    private ClimbJson() {}

    /**
     * Something of somebody else's with values in it.
     *
     * @param level pressure altitude
     * @param speed calibrated airspeed
     * @param mach Mach number
     * @param temperature static air temperature
     */
    public record Sample(
            PressureAltitude level,
            CalibratedAirspeed speed,
            Mach mach,
            StaticAirTemperature temperature) {}

    /**
     * Returns a mapper that knows the values of {@link Sample}; a line for each more.
     *
     * @return the mapper
     */
    public static JsonMapper mapper() {
        SimpleModule values = new SimpleModule();
        add(values, PressureAltitude.class, PressureAltitude::parse);
        add(values, CalibratedAirspeed.class, CalibratedAirspeed::parse);
        add(values, Mach.class, Mach::parse);
        add(values, StaticAirTemperature.class, StaticAirTemperature::parse);
        return JsonMapper.builder().addModule(values).build();
    }

    private static <T extends Scalar<T>> void add(
            SimpleModule values, Class<T> type, Function<String, T> parse) {
        values.addSerializer(type, new Written<>(type));
        values.addDeserializer(type, new Read<>(type, parse));
    }

    private static final class Written<T extends Scalar<T>> extends StdSerializer<T> {
        private static final long serialVersionUID = 1L;

        Written(Class<T> type) {
            super(type);
        }

        @Override
        public void serialize(T value, JsonGenerator json, SerializerProvider provider)
                throws IOException {
            json.writeString(value.text());
        }
    }

    private static final class Read<T extends Scalar<T>> extends StdDeserializer<T> {
        private static final long serialVersionUID = 1L;
        private final transient Function<String, T> parse;

        Read(Class<T> type, Function<String, T> parse) {
            super(type);
            this.parse = parse;
        }

        @Override
        public T deserialize(JsonParser json, DeserializationContext context) throws IOException {
            return parse.apply(json.getText());
        }
    }

    /**
     * Prints a sample as JSON, and what comes back.
     *
     * @param args not used
     * @throws JsonProcessingException never, with this sample
     */
    public static void main(String[] args) throws JsonProcessingException {
        Sample sample =
                new Sample(
                        PressureAltitude.parse("FL350"),
                        CalibratedAirspeed.parse("290 kn"),
                        Mach.parse("M0.77"),
                        StaticAirTemperature.parse("-54.3 °C"));
        String json = mapper().writeValueAsString(sample);
        System.out.println(json);
        System.out.println(mapper().readValue(json, Sample.class).equals(sample));
    }
}
