package org.climbwright.examples.teaching;

import java.util.Locale;
import org.climbwright.airspeed.Crossover;
import org.climbwright.atmosphere.Atmosphere;
import org.climbwright.quantity.speed.CalibratedAirspeed;
import org.climbwright.quantity.speed.Mach;
import org.climbwright.quantity.temperature.IsaDeviation;
import org.climbwright.working.AirspeedWorking;
import org.climbwright.working.Working;

/**
 * Where are a calibrated airspeed and a Mach number one speed, and why does temperature not move
 * it?
 */
public final class Question03Crossover {
    private Question03Crossover() {}

    /**
     * Prints the answer and its working.
     *
     * @param args not used
     */
    public static void main(String[] args) {
        CalibratedAirspeed cas = CalibratedAirspeed.ofKnots(300);
        Mach mach = Mach.of(0.78);
        Atmosphere cold = Atmosphere.withDeviationAtEachPressure(IsaDeviation.ofKelvins(-20));
        Atmosphere warm = Atmosphere.withDeviationAtEachPressure(IsaDeviation.ofKelvins(20));

        Crossover crossover = Crossover.of(cas, mach);
        System.out.printf(
                Locale.ROOT,
                "crossover at %,.0f ft of pressure altitude; true airspeed there %.0f kn on a cold"
                        + " day, %.0f kn on a warm one%n%n",
                crossover.pressureAltitude().inFeet(),
                crossover.trueAirspeed(cold).inKnots(),
                crossover.trueAirspeed(warm).inKnots());

        Working working = AirspeedWorking.crossover(cas, mach, cold, warm);
        System.out.print(working.toMarkdown());
    }
}
