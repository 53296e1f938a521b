package org.climbwright.examples.teaching;

import java.util.List;
import org.climbwright.atmosphere.Atmosphere;
import org.climbwright.quantity.altitude.PressureAltitude;
import org.climbwright.quantity.speed.CalibratedAirspeed;
import org.climbwright.quantity.speed.Mach;
import org.climbwright.working.AirspeedWorking;
import org.climbwright.working.Working;

/** What does true airspeed do in a climb at constant calibrated airspeed and then Mach number? */
public final class Question02ConstantCasThenMach {
    private Question02ConstantCasThenMach() {}

    /**
     * Prints the answer and its working.
     *
     * @param args not used
     */
    public static void main(String[] args) {
        CalibratedAirspeed cas = CalibratedAirspeed.ofKnots(300);
        Mach mach = Mach.of(0.78);
        List<PressureAltitude> levels =
                List.of(
                        PressureAltitude.ofFlightLevel(100),
                        PressureAltitude.ofFlightLevel(200),
                        PressureAltitude.ofFlightLevel(350),
                        PressureAltitude.ofFlightLevel(370),
                        PressureAltitude.ofFlightLevel(390));

        Working working =
                AirspeedWorking.constantCasThenMach(cas, mach, Atmosphere.standard(), levels);
        working.answer().forEach(System.out::println);
        System.out.println();
        System.out.print(working.toMarkdown());
    }
}
