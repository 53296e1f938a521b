package org.climbwright.examples.teaching;

import org.climbwright.quantity.altitude.PressureAltitude;
import org.climbwright.quantity.temperature.TemperatureDifference;
import org.climbwright.working.AtmosphereWorking;
import org.climbwright.working.Working;

/** What are the two meanings of ISA+20? */
public final class Question11IsaPlusTwenty {
    private Question11IsaPlusTwenty() {}

    /**
     * Prints the answer and its working.
     *
     * @param args not used
     */
    public static void main(String[] args) {
        TemperatureDifference twenty = TemperatureDifference.ofKelvins(20);
        PressureAltitude level = PressureAltitude.ofFlightLevel(300);

        Working working = AtmosphereWorking.twoMeaningsOfDeviation(twenty, level);
        working.answer().forEach(System.out::println);
        System.out.println();
        System.out.print(working.toMarkdown());
    }
}
