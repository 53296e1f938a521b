package org.climbwright.cabin.dynamics;

import java.io.Serializable;
import java.time.Duration;
import java.util.Objects;
import org.climbwright.quantity.altitude.CabinAltitude;
import org.climbwright.quantity.altitude.PressureAltitude;
import org.climbwright.quantity.speed.PressureAltitudeRate;

/**
 * A descent that begins some time after the cabin has passed a warning on its way up, and goes on
 * at a rate. A cabin that was never below the warning, as on a high field, passes none; an
 * aeroplane that is not above the level to descend to stays where it is then.
 *
 * <p>Limits of use: figures are the caller's. Whether and how to descend is in the operator's
 * memory items and in the flight manual.
 *
 * @param warning cabin altitude above which somebody is warned
 * @param recognition how long it takes from there until the aeroplane descends, 0 or more
 * @param rate rate of descent, told as a positive rate
 * @param to pressure altitude to descend to
 */
public record EmergencyDescent(
        CabinAltitude warning, Duration recognition, PressureAltitudeRate rate, PressureAltitude to)
        implements Serializable {
    /**
     * Makes a descent.
     *
     * @param warning see above
     * @param recognition see above
     * @param rate see above
     * @param to see above
     * @throws IllegalArgumentException if the delay is negative, or the rate not above 0
     */
    public EmergencyDescent {
        Objects.requireNonNull(warning, "warning");
        Objects.requireNonNull(to, "to");
        if (recognition.isNegative() || !(rate.inMetresPerSecond() > 0.0)) {
            throw new IllegalArgumentException(
                    "a descent needs a delay of 0 s or more and a rate above 0 ft/min, but had "
                            + AltitudeHistory.seconds(recognition)
                            + " s and "
                            + rate.text());
        }
    }
}
