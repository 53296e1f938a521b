package org.climbwright.examples.readme;

import org.climbwright.atmosphere.altimetry.Altimetry;
import org.climbwright.atmosphere.altimetry.ColdAir;
import org.climbwright.quantity.altitude.GeopotentialAltitude;
import org.climbwright.quantity.altitude.Height;
import org.climbwright.quantity.pressure.AltimeterSetting;
import org.climbwright.quantity.temperature.StaticAirTemperature;

/** What the altimeter makes of a cold day, and of hectopascals taken for inches. */
public final class ColdDay {
    private ColdDay() {}

    /**
     * Prints the sentences that the README shows.
     *
     * @param args not used
     */
    public static void main(String[] args) {
        // begin
        StaticAirTemperature cold = StaticAirTemperature.parse("-50 °C");
        GeopotentialAltitude seaLevel = GeopotentialAltitude.parse("0 ft");
        Height height = Height.parse("5000 ft");
        System.out.println(ColdAir.tableCorrection(height, cold).inWords());
        System.out.println(ColdAir.errorAtIndicatedHeight(height, cold, seaLevel).inWords());

        AltimeterSetting set = AltimeterSetting.parse("29.96 inHg");
        AltimeterSetting qnh = AltimeterSetting.parse("996 hPa");
        System.out.println(Altimetry.missetting(set, qnh).inWords());
        // end
    }
}
