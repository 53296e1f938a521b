package org.climbwright.examples.teaching;

import java.util.Locale;
import org.climbwright.atmosphere.AirState;
import org.climbwright.atmosphere.Atmosphere;
import org.climbwright.quantity.altitude.PressureAltitude;
import org.climbwright.quantity.speed.EquivalentAirspeed;
import org.climbwright.turbulence.GustLoad;
import org.climbwright.turbulence.GustVelocity;
import org.climbwright.working.GustWorking;
import org.climbwright.working.Working;

/** What does one updraft do to the load factor at two speeds? The wing is invented. */
public final class Question12UpdraftAtTwoSpeeds {
    private Question12UpdraftAtTwoSpeeds() {}

    /**
     * Prints the answer and its working.
     *
     * @param args not used
     */
    public static void main(String[] args) {
        GustLoad wing = GustLoad.ofSi(5000.0, 3.8, 5.5); // invented: N/m², m, per radian
        GustVelocity updraft = GustVelocity.ofCallerInFeetPerSecond(30);
        AirState air = Atmosphere.standard().at(PressureAltitude.ofFlightLevel(200));
        EquivalentAirspeed slow = EquivalentAirspeed.ofKnots(240);
        EquivalentAirspeed fast = EquivalentAirspeed.ofKnots(300);

        System.out.printf(
                Locale.ROOT,
                "an updraft of 30 ft/s makes %.2f g at 240 kn and %.2f g at 300 kn%n%n",
                1.0 + wing.increment(updraft, slow, air),
                1.0 + wing.increment(updraft, fast, air));

        Working working = GustWorking.atTwoSpeeds(wing, updraft, air, slow, fast);
        System.out.print(working.toMarkdown());
    }
}
