package org.climbwright.examples.teaching;

import org.climbwright.atmosphere.altimetry.ColdAir;
import org.climbwright.quantity.altitude.GeopotentialAltitude;
import org.climbwright.quantity.altitude.Height;
import org.climbwright.quantity.temperature.StaticAirTemperature;
import org.climbwright.working.AtmosphereWorking;
import org.climbwright.working.Working;

/** What does a cold day do to an altimeter, and from which datum does the correction count? */
public final class Question10ColdDayFromWhichDatum {
    private Question10ColdDayFromWhichDatum() {}

    /**
     * Prints the answer and its working.
     *
     * @param args not used
     */
    public static void main(String[] args) {
        GeopotentialAltitude published = GeopotentialAltitude.ofFeet(6000);
        GeopotentialAltitude elevation = GeopotentialAltitude.ofFeet(4000);
        StaticAirTemperature aerodrome = StaticAirTemperature.ofCelsius(-30);

        Height height = Height.ofFeet(2000); // 6,000 ft less the elevation
        System.out.println(ColdAir.aerodromeCorrection(height, aerodrome, elevation).inWords());
        System.out.println();

        Working working = AtmosphereWorking.coldDay(published, elevation, aerodrome);
        System.out.print(working.toMarkdown());
    }
}
