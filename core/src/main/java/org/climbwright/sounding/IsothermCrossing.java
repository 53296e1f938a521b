package org.climbwright.sounding;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import org.climbwright.atmosphere.AirState;
import org.climbwright.quantity.altitude.PressureAltitude;
import org.climbwright.quantity.pressure.StaticPressure;

/**
 * A level at which the air passes a temperature.
 *
 * @param air the air there, with its pressure and its altitudes
 * @param trend which way the temperature goes upwards
 */
public record IsothermCrossing(AirState air, Trend trend) implements Serializable {
    /**
     * Makes a crossing of parts that are there.
     *
     * @param air the air there
     * @param trend which way the temperature goes upwards
     */
    public IsothermCrossing {
        Objects.requireNonNull(air, "air");
        Objects.requireNonNull(trend, "trend");
    }

    /** Which way the temperature goes with height where it passes. */
    public enum Trend {
        /** It gets colder upwards. */
        FALLING,
        /** It gets warmer upwards: an inversion or a warm layer aloft. */
        RISING
    }

    /**
     * Returns where the crossing is.
     *
     * @return pressure altitude
     */
    public PressureAltitude pressureAltitude() {
        return air.pressureAltitude();
    }

    static List<IsothermCrossing> in(SoundingAtmosphere air, double temperatureK) {
        List<IsothermCrossing> crossings = new ArrayList<>();
        int before = -1; // the last level off the temperature
        for (int i = 0; i < air.size(); i++) {
            double off = air.temperatureAt(i) - temperatureK;
            if (off == 0.0) {
                continue;
            }
            if (before >= 0 && off > 0.0 != air.temperatureAt(before) > temperatureK) {
                double pressure = air.pressureOfTemperature(before, temperatureK);
                crossings.add(
                        new IsothermCrossing(
                                air.at(StaticPressure.ofPascals(pressure)),
                                off > 0.0 ? Trend.RISING : Trend.FALLING));
            }
            before = i;
        }
        return crossings;
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
