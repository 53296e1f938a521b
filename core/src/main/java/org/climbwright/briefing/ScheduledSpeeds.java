package org.climbwright.briefing;

import org.climbwright.atmosphere.Altimetry;
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

    SpeedSchedule on(AltimeterSetting qnh) {
        return SpeedSchedule.of(calibratedAirspeed, mach)
                .withLimit(limit, Altimetry.pressureAltitude(limitBelow, qnh));
    }
}
