package org.climbwright.examples.readme;

import static java.util.Locale.ROOT;

import org.climbwright.airspeed.Airspeeds;
import org.climbwright.atmosphere.AirState;
import org.climbwright.atmosphere.AltitudeDatum;
import org.climbwright.atmosphere.Atmosphere;
import org.climbwright.quantity.altitude.PressureAltitude;
import org.climbwright.quantity.pressure.AltimeterSetting;
import org.climbwright.quantity.speed.CalibratedAirspeed;
import org.climbwright.quantity.temperature.IsaDeviation;

/** The README's example: the lines between the two marks stand there word for word. */
public final class TenLines {
    private TenLines() {}

    /**
     * Prints the README's answers.
     *
     * @param args not used
     */
    public static void main(String[] args) {
        // begin
        AltitudeDatum qnh = AltitudeDatum.onQnh(AltimeterSetting.parse("1020 hPa"));
        IsaDeviation warmer = IsaDeviation.parse("10 K");
        Atmosphere warmDay = Atmosphere.withDeviationAtEachPressure(warmer, qnh);
        AirState air = warmDay.at(PressureAltitude.parse("FL300"));
        Airspeeds climb = Airspeeds.from(CalibratedAirspeed.parse("300 kn"), air);
        System.out.printf(ROOT, "Mach %.4f%n", climb.mach().number());
        System.out.printf(ROOT, "TAS %.1f kn%n", climb.trueAirspeed().inKnots());
        System.out.printf(ROOT, "TAT %.1f °C%n", climb.totalAirTemperature().inCelsius());
        air.geometricAltitude()
                .ifPresent(z -> System.out.printf(ROOT, "true altitude %.0f ft%n", z.inFeet()));
        // end
    }
}
