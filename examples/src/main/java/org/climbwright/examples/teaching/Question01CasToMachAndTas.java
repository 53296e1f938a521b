package org.climbwright.examples.teaching;

import java.util.Locale;
import org.climbwright.airspeed.Airspeeds;
import org.climbwright.atmosphere.Atmosphere;
import org.climbwright.quantity.altitude.PressureAltitude;
import org.climbwright.quantity.speed.CalibratedAirspeed;
import org.climbwright.working.AirspeedWorking;
import org.climbwright.working.Working;

/** Which Mach number and which true airspeed is a calibrated airspeed at a level? */
public final class Question01CasToMachAndTas {
    private Question01CasToMachAndTas() {}

    /**
     * Prints the answer and its working.
     *
     * @param args not used
     */
    public static void main(String[] args) {
        CalibratedAirspeed cas = CalibratedAirspeed.ofKnots(290);
        PressureAltitude level = PressureAltitude.ofFlightLevel(300);
        Atmosphere air = Atmosphere.standard();

        Airspeeds speeds = Airspeeds.from(cas, air.at(level));
        System.out.printf(
                Locale.ROOT,
                "%s at FL300 in standard air: Mach %.3f, true airspeed %.0f kn%n%n",
                cas.text(),
                speeds.mach().number(),
                speeds.trueAirspeed().inKnots());

        Working working = AirspeedWorking.casToMachAndTas(cas, level, air);
        System.out.print(working.toMarkdown());
    }
}
