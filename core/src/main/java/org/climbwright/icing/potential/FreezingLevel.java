package org.climbwright.icing.potential;

import java.io.Serializable;
import java.util.Locale;
import java.util.Objects;
import org.climbwright.atmosphere.AirState;
import org.climbwright.quantity.altitude.PressureAltitude;

/**
 * A level at which the air passes 0 °C; there may be several above one place.
 *
 * @param air the air there, with its pressure and its altitudes
 * @param trend which way the temperature goes upwards
 */
public record FreezingLevel(AirState air, Trend trend) implements Serializable {
    /**
     * Makes a level of parts that are there.
     *
     * @param air the air there
     * @param trend which way the temperature goes upwards
     */
    public FreezingLevel {
        Objects.requireNonNull(air, "air");
        Objects.requireNonNull(trend, "trend");
    }

    /** Which way the temperature goes with height where it passes. */
    public enum Trend {
        /** It gets colder upwards, as is usual. */
        FALLING,
        /** It gets warmer upwards: warm air lies over cold. */
        RISING
    }

    /**
     * Returns where the level is.
     *
     * @return pressure altitude
     */
    public PressureAltitude pressureAltitude() {
        return air.pressureAltitude();
    }

    /**
     * Returns the level for reading.
     *
     * @return a text; may change between versions
     */
    @Override
    public String toString() {
        return String.format(
                Locale.ROOT,
                "%.0f ft, %s upwards (%s)",
                pressureAltitude().inFeet(),
                trend == Trend.RISING ? "warmer" : "colder",
                air);
    }
}
