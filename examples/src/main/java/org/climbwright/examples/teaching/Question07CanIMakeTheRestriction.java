package org.climbwright.examples.teaching;

import org.climbwright.quantity.altitude.PressureAltitude;
import org.climbwright.quantity.path.GroundDistance;
import org.climbwright.quantity.speed.GroundSpeed;
import org.climbwright.quantity.speed.PressureAltitudeRate;
import org.climbwright.quantity.temperature.StaticAirTemperature;
import org.climbwright.working.GradientWorking;
import org.climbwright.working.Working;

/** Can the climb make a level by a point? */
public final class Question07CanIMakeTheRestriction {
    private Question07CanIMakeTheRestriction() {}

    /**
     * Prints the answer and its working.
     *
     * @param args not used
     */
    public static void main(String[] args) {
        Working working =
                GradientWorking.restriction(
                        PressureAltitude.ofFeet(4000),
                        PressureAltitude.ofFlightLevel(100),
                        GroundDistance.ofNauticalMiles(20),
                        GroundSpeed.ofKnots(280),
                        PressureAltitudeRate.ofFeetPerMinute(1300),
                        StaticAirTemperature.ofCelsius(-10));
        working.answer().forEach(System.out::println);
        System.out.println();
        System.out.print(working.toMarkdown());
    }
}
