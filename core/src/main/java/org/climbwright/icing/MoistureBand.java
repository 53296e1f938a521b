package org.climbwright.icing;

import java.io.Serializable;
import java.util.Locale;
import java.util.Objects;
import org.climbwright.quantity.altitude.PressureAltitude;

/**
 * Visible moisture between two levels, as somebody states it: a cloud from a forecast, rain below
 * it.
 *
 * <p>Limits of use: as good as whoever states it; what was not stated is not "no moisture".
 *
 * @param form what it is
 * @param base the lower end, itself included
 * @param top the upper end, itself included
 */
public record MoistureBand(MoistureForm form, PressureAltitude base, PressureAltitude top)
        implements Serializable {
    /**
     * Makes a band.
     *
     * @param form what it is
     * @param base the lower end
     * @param top the upper end
     * @throws IllegalArgumentException if the top is not above the base
     */
    public MoistureBand {
        Objects.requireNonNull(form, "form");
        if (top.compareTo(base) <= 0) {
            throw new IllegalArgumentException(
                    "the top of a band of moisture must be above its base of "
                            + base
                            + ", but was "
                            + top);
        }
    }

    boolean holds(PressureAltitude level) {
        return level.compareTo(base) >= 0 && level.compareTo(top) <= 0;
    }

    String words() {
        return String.format(
                Locale.ROOT, "%s from %.0f to %.0f ft", form.words(), base.inFeet(), top.inFeet());
    }
}
