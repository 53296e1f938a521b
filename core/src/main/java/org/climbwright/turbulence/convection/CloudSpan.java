package org.climbwright.turbulence.convection;

import java.io.Serializable;
import java.util.Objects;
import org.climbwright.quantity.altitude.PressureAltitude;

/**
 * Convective cloud from a base to a top, as estimated or as somebody says.
 *
 * <p>Limits of use: an estimate of a parcel ascent, or a figure of the caller's; neither tells
 * where the cloud stands, nor that there is none elsewhere.
 *
 * @param base pressure altitude of the base
 * @param top pressure altitude of the top, above the base
 * @param basis where the two come from, in words
 */
public record CloudSpan(PressureAltitude base, PressureAltitude top, String basis)
        implements Serializable {
    /**
     * Makes a span.
     *
     * @param base see above
     * @param top see above
     * @param basis see above
     * @throws IllegalArgumentException if the top is below the base
     */
    public CloudSpan {
        Objects.requireNonNull(basis, "basis");
        if (top.compareTo(base) < 0) {
            throw new IllegalArgumentException(
                    "the top of a cloud must not be below its base, " + base + ", but was " + top);
        }
    }

    /**
     * Tells whether some of the levels between two lie in the cloud.
     *
     * @param lowest the lower level
     * @param highest the upper level
     * @return true if base and top leave any of them in between, their bounds included
     */
    public boolean overlaps(PressureAltitude lowest, PressureAltitude highest) {
        return base.compareTo(highest) <= 0 && top.compareTo(lowest) >= 0;
    }
}
