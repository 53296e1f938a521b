package org.climbwright.examples.teaching;

import java.util.Locale;
import org.climbwright.cabin.CabinPressure;
import org.climbwright.quantity.altitude.PressureAltitude;
import org.climbwright.quantity.pressure.DifferentialPressure;
import org.climbwright.working.CabinWorking;
import org.climbwright.working.Working;

/** Which cabin altitude does a differential pressure make? */
public final class Question09CabinFromDifferential {
    private Question09CabinFromDifferential() {}

    /**
     * Prints the answer and its working.
     *
     * @param args not used
     */
    public static void main(String[] args) {
        DifferentialPressure differential = DifferentialPressure.ofPoundsPerSquareInch(8.0);
        PressureAltitude aeroplane = PressureAltitude.ofFlightLevel(350);

        System.out.printf(
                Locale.ROOT,
                "%s at FL350: the cabin is at %,.0f ft%n%n",
                differential.text(),
                CabinPressure.cabinAltitude(differential, aeroplane).inFeet());

        Working working = CabinWorking.altitudeFromDifferential(differential, aeroplane);
        System.out.print(working.toMarkdown());
    }
}
