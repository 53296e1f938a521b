package org.climbwright.examples.page;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;

/** What the page has to read at the cursor, written a second time from the columns of the JSON. */
record Readout(String words, String column, int digits, String unit, boolean signed) {
    private static final List<Readout> ALL =
            List.of(
                    of("Pressure altitude", "pressureAltitudeFt", 0, "ft"),
                    of("Altitude on QNH", "altitudeOnQnhFt", 0, "ft"),
                    of("True altitude", "trueAltitudeFt", 0, "ft"),
                    of("Calibrated airspeed", "calibratedAirspeedKn", 0, "kn"),
                    of("Mach", "mach", 3, ""),
                    of("True airspeed", "trueAirspeedKn", 0, "kn"),
                    of("Ground speed", "groundSpeedKn", 0, "kn"),
                    signed("Wind along the track", "alongTrackWindKn", 0, "kn"),
                    of("Rate on the altimeter", "rateFtPerMin", 0, "ft/min"),
                    of("Gradient over the ground", "gradientPercent", 1, "%"),
                    of("Static air temperature", "staticAirTemperatureC", 1, "°C"),
                    of("Total air temperature", "totalAirTemperatureC", 1, "°C"),
                    signed("ISA deviation", "isaDeviationK", 1, "K"),
                    of("Relative humidity", "relativeHumidityPercent", 0, "%"),
                    of("Mass", "massKg", 0, "kg"),
                    of("Fuel used", "fuelKg", 0, "kg"),
                    of("Cabin altitude", "cabinAltitudeFt", 0, "ft"),
                    signed("Cabin rate", "cabinRateFtPerMin", 0, "ft/min"),
                    of("Differential", "differentialPsi", 2, "psi"));

    private static Readout of(String words, String column, int digits, String unit) {
        return new Readout(words, column, digits, unit, false);
    }

    private static Readout signed(String words, String column, int digits, String unit) {
        return new Readout(words, column, digits, unit, true);
    }

    /** All of them at a sample; a column that is nowhere known is not told. */
    static JsonNode of(JsonNode path, int sample) {
        ObjectNode all = new ObjectMapper().createObjectNode();
        for (Readout one : ALL) {
            boolean isKnown = false;
            for (JsonNode value : path.get(one.column)) {
                isKnown |= value.isNumber();
            }
            if (isKnown) {
                all.put(one.words, one.text(path.get(one.column).get(sample)));
            }
        }
        return all;
    }

    private String text(JsonNode value) {
        if (value.isNull()) {
            return "not known";
        }
        BigDecimal rounded =
                new BigDecimal(value.doubleValue()).setScale(digits, RoundingMode.HALF_UP);
        String sign = rounded.signum() < 0 ? "−" : rounded.signum() > 0 && signed ? "+" : "";
        return sign + rounded.abs().toPlainString() + (unit.isEmpty() ? "" : " " + unit);
    }
}
