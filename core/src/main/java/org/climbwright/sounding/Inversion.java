package org.climbwright.sounding;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import org.climbwright.atmosphere.AirState;
import org.climbwright.quantity.altitude.AltitudeChange;
import org.climbwright.quantity.temperature.TemperatureDifference;

/**
 * A layer in which it gets warmer upwards.
 *
 * <p>A stretch of equal temperature between two that get warmer is part of it: files print 0.1 °C,
 * and an inversion that is cut in two by a rounding would lose its rise. One at its bottom or top
 * is not. Any cooling, however small, ends it.
 *
 * @param base the air at its coldest level, at the bottom
 * @param top the air at its warmest level, at the top
 */
public record Inversion(AirState base, AirState top) implements Serializable {
    /**
     * Makes an inversion of parts that are there.
     *
     * @param base the air at its bottom
     * @param top the air at its top
     */
    public Inversion {
        Objects.requireNonNull(base, "base");
        Objects.requireNonNull(top, "top");
    }

    /**
     * Returns how much warmer the top is.
     *
     * @return the rise of temperature, above 0
     */
    public TemperatureDifference rise() {
        return TemperatureDifference.ofKelvins(top.temperatureK() - base.temperatureK());
    }

    /**
     * Returns how deep the inversion is.
     *
     * @return the difference of geopotential altitude; empty when altitudes are not known
     */
    public Optional<AltitudeChange> depth() {
        return LayerDepth.between(base, top);
    }

    static List<Inversion> in(SoundingAtmosphere air, double smallestRiseK) {
        List<Inversion> inversions = new ArrayList<>();
        int first = 0;
        while (first < air.size()) {
            int last = first;
            while (last + 1 < air.size()
                    && air.temperatureAt(last + 1) >= air.temperatureAt(last)) {
                last++;
            }
            int base = first;
            while (base < last && air.temperatureAt(base + 1) == air.temperatureAt(base)) {
                base++;
            }
            int top = last;
            while (top > base && air.temperatureAt(top - 1) == air.temperatureAt(top)) {
                top--;
            }
            double rise = air.temperatureAt(top) - air.temperatureAt(base);
            if (top > base && rise >= smallestRiseK) {
                inversions.add(new Inversion(air.stateAt(base), air.stateAt(top)));
            }
            first = last + 1;
        }
        return inversions;
    }

    /**
     * Returns the inversion for reading.
     *
     * @return a text; may change between versions
     */
    @Override
    public String toString() {
        return String.format(
                Locale.ROOT,
                "%.1f °C at %.0f ft to %.1f °C at %.0f ft",
                base.staticAirTemperature().inCelsius(),
                base.pressureAltitude().inFeet(),
                top.staticAirTemperature().inCelsius(),
                top.pressureAltitude().inFeet());
    }
}
