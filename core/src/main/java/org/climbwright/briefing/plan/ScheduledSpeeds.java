package org.climbwright.briefing.plan;

import java.util.Objects;
import org.climbwright.atmosphere.altimetry.Altimetry;
import org.climbwright.path.SpeedSchedule;
import org.climbwright.quantity.altitude.AltitudeOnQnh;
import org.climbwright.quantity.pressure.AltimeterSetting;
import org.climbwright.quantity.speed.CalibratedAirspeed;
import org.climbwright.quantity.speed.Mach;

/**
 * The speeds of a climb as a pilot tells them, the limit by the altimeter on QNH.
 *
 * @param limit the highest calibrated airspeed below the limit's altitude
 * @param limitBelow that altitude, on QNH
 * @param calibratedAirspeed the speed from there to the crossover
 * @param mach the speed above the crossover
 */
public record ScheduledSpeeds(
        CalibratedAirspeed limit,
        AltitudeOnQnh limitBelow,
        CalibratedAirspeed calibratedAirspeed,
        Mach mach) {

    /**
     * Makes it of parts that are all there.
     *
     * @param limit see above
     * @param limitBelow see above
     * @param calibratedAirspeed see above
     * @param mach see above
     */
    public ScheduledSpeeds {
        Objects.requireNonNull(limit, "limit");
        Objects.requireNonNull(limitBelow, "limitBelow");
        Objects.requireNonNull(calibratedAirspeed, "calibratedAirspeed");
        Objects.requireNonNull(mach, "mach");
    }

    /**
     * Tells whether the limit is slower than the speed above it.
     *
     * @return true if the climb is slower below the limit's altitude
     */
    public boolean limitBinds() {
        return limit.compareTo(calibratedAirspeed) < 0;
    }

    /**
     * Returns these speeds by pressure altitude.
     *
     * @param qnh altimeter setting of the day
     * @return the schedule
     * @throws org.climbwright.quantity.OutsideModelException if the limit's altitude is out of
     *     range
     */
    public SpeedSchedule on(AltimeterSetting qnh) {
        return SpeedSchedule.of(calibratedAirspeed, mach)
                .withLimit(limit, Altimetry.pressureAltitude(limitBelow, qnh));
    }
}
