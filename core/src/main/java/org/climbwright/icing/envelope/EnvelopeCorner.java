package org.climbwright.icing.envelope;

import java.io.Serializable;
import java.util.Objects;
import org.climbwright.quantity.altitude.PressureAltitude;
import org.climbwright.quantity.temperature.StaticAirTemperature;

/**
 * A corner of an envelope of altitude and temperature.
 *
 * @param altitude pressure altitude
 * @param temperature static air temperature
 */
public record EnvelopeCorner(PressureAltitude altitude, StaticAirTemperature temperature)
        implements Serializable {
    /**
     * Makes a corner.
     *
     * @param altitude pressure altitude
     * @param temperature static air temperature
     */
    public EnvelopeCorner {
        Objects.requireNonNull(altitude, "altitude");
        Objects.requireNonNull(temperature, "temperature");
    }
}
