package org.example.climb;

import org.climbwright.airspeed.Airspeeds;
import org.climbwright.atmosphere.Atmosphere;
import org.climbwright.quantity.altitude.PressureAltitude;
import org.climbwright.quantity.speed.CalibratedAirspeed;
import org.climbwright.unit.AviationUnits;

/** Asks the library in each of its ways, units of javax.measure included. */
public final class Main {
    public static void main(String[] args) {
        var air = Atmosphere.standard().at(PressureAltitude.parse("FL310"));
        var speeds = Airspeeds.from(CalibratedAirspeed.parse("290 kn"), air);
        System.out.println(speeds);
        System.out.printf("%.1f kn%n", speeds.trueAirspeed().valueIn(AviationUnits.KNOT));
    }
}
