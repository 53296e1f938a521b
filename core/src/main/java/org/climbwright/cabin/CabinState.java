package org.climbwright.cabin;

import java.io.Serializable;
import java.time.Duration;
import java.util.Locale;
import org.climbwright.quantity.altitude.CabinAltitude;
import org.climbwright.quantity.altitude.PressureAltitude;
import org.climbwright.quantity.pressure.DifferentialPressure;
import org.climbwright.quantity.speed.CabinAltitudeRate;

/**
 * The cabin as it is expected at one moment, and what holds it there.
 *
 * <p>Limits of use: what a plan leads one to expect, for study and simulation; what the instruments
 * show is what is. The flight manual and the operator's procedures decide.
 *
 * @param time time since the climb began; more than the climb's in level flight after it
 * @param aeroplane pressure altitude of the aeroplane
 * @param cabin cabin altitude
 * @param rate rate of cabin altitude, climbing positive
 * @param differential cabin pressure less the pressure outside
 * @param boundBy what holds the cabin at that altitude
 */
public record CabinState(
        Duration time,
        PressureAltitude aeroplane,
        CabinAltitude cabin,
        CabinAltitudeRate rate,
        DifferentialPressure differential,
        BoundBy boundBy)
        implements Serializable {

    /** What holds a cabin at its altitude. */
    public enum BoundBy {
        /** The schedule: the cabin is where it is wanted. */
        SCHEDULE,
        /** The scheduled differential: the schedule would have the cabin lower. */
        SCHEDULED_DIFFERENTIAL,
        /**
         * The aeroplane: the schedule would have the cabin higher than that, or nearer to it than
         * the differential on the ground.
         */
        AEROPLANE,
        /** A rate limit: the cabin is on its way to where it is wanted. */
        RATE_LIMIT,
        /** The relief setting: the relief valve is open. */
        RELIEF_SETTING
    }

    /**
     * Returns the state for reading.
     *
     * @return a text; may change between versions
     */
    @Override
    public String toString() {
        return String.format(
                Locale.ROOT,
                "%.1f s: aeroplane at %s, cabin at %s, %s, differential %.2f psi, bound by %s",
                time.toNanos() * 1e-9,
                InFeet.of(aeroplane.inMetres()),
                InFeet.of(cabin.inMetres()),
                InFeet.perMinute(rate.inMetresPerSecond()),
                differential.inPoundsPerSquareInch(),
                boundBy.name().toLowerCase(Locale.ROOT).replace('_', ' '));
    }
}
