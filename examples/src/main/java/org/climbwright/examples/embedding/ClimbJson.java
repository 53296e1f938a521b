package org.climbwright.examples.embedding;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.DeserializationContext;
import com.fasterxml.jackson.databind.deser.std.FromStringDeserializer;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.module.SimpleModule;
import com.fasterxml.jackson.databind.ser.std.ToStringSerializerBase;
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

    @SuppressWarnings("serial") // a mapper is not written out
    private static <T extends Scalar<T>> void add(
            SimpleModule values, Class<T> type, Function<String, T> parse) {
        values.addSerializer(
                new ToStringSerializerBase(type) {
                    @Override
                    public String valueToString(Object value) {
                        return type.cast(value).text();
                    }
                });
        values.addDeserializer(
                type,
                new FromStringDeserializer<T>(type) {
                    @Override
                    protected T _deserialize(String text, DeserializationContext context) {
                        return parse.apply(text);
                    }
                });
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
