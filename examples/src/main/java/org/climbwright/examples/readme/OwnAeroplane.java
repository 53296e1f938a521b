package org.climbwright.examples.readme;

import static java.util.Locale.ROOT;

import org.climbwright.atmosphere.AltitudeDatum;
import org.climbwright.atmosphere.Atmosphere;
import org.climbwright.atmosphere.StandardAir;
import org.climbwright.atmosphere.wind.Winds;
import org.climbwright.path.ClimbState;
import org.climbwright.path.SpeedSchedule;
import org.climbwright.performance.Aeroplane;
import org.climbwright.performance.ClimbAir;
import org.climbwright.profile.AeroplaneClimb;
import org.climbwright.profile.ClimbProfile;
import org.climbwright.profile.ClimbProgramme;
import org.climbwright.profile.ProfileEvent;
import org.climbwright.quantity.altitude.PressureAltitude;
import org.climbwright.quantity.path.Mass;
import org.climbwright.quantity.path.TrueDirection;
import org.climbwright.quantity.pressure.AltimeterSetting;
import org.climbwright.quantity.speed.CalibratedAirspeed;
import org.climbwright.quantity.speed.Mach;

/** A climb of an aeroplane that is three functions, through air that is one; all invented. */
public final class OwnAeroplane {
    private OwnAeroplane() {}

    /**
     * Prints the climb that the README shows.
     *
     * @param args not used
     */
    public static void main(String[] args) {
        // begin
        Aeroplane mine =
                Aeroplane.of(
                        2,
                        (liftN, mach, q, use) -> 2.3 * q + 4.2e-4 * liftN * liftN / q,
                        (mach, pa, kelvins, use) -> use.operating() * (12e3 + 0.45 * pa),
                        (thrustN, mach, pa, kelvins, use) -> 1.6e-5 * thrustN);
        Atmosphere coldDay =
                Atmosphere.of(
                        pa -> StandardAir.temperatureFromPressure(pa) - 12.0,
                        AltitudeDatum.onQnh(AltimeterSetting.parse("1008 hPa")));
        SpeedSchedule speeds =
                SpeedSchedule.of(CalibratedAirspeed.parse("280 kn"), Mach.parse("M0.74"))
                        .withLimit(
                                CalibratedAirspeed.parse("250 kn"),
                                PressureAltitude.parse("FL100"));
        ClimbAir air = ClimbAir.of(coldDay, Winds.calm(), TrueDirection.parse("70 deg"));
        ClimbProgramme programme = ClimbProgramme.of(speeds, 0.4); // of the excess, accelerating
        ClimbProfile climb =
                new AeroplaneClimb(mine, Mass.parse("58000 kg"), programme, air)
                        .between(
                                PressureAltitude.parse("1500 ft"), PressureAltitude.parse("FL330"));
        for (ProfileEvent event : climb.events()) {
            ClimbState at = event.arriving();
            double miles = at.distance().orElseThrow().inNauticalMiles();
            double feet = at.pressureAltitude().inFeet();
            System.out.printf(ROOT, "%4.1f min %5.1f NM %5.0f ft  ", at.timeS() / 60, miles, feet);
            System.out.println(event.text());
        }
        System.out.printf(ROOT, "%.0f kg of fuel%n", climb.fuel().inKilograms());
        // end
    }
}
