package org.climbwright.examples.teaching;

import java.util.Locale;
import org.climbwright.quantity.path.GroundGradient;
import org.climbwright.quantity.speed.AlongTrackWind;
import org.climbwright.quantity.speed.TrueAirspeed;
import org.climbwright.working.GradientWorking;
import org.climbwright.working.Working;

/**
 * What do percent, feet per nautical mile and feet per minute have to do with each other, and with
 * wind?
 */
public final class Question06PercentFeetAndWind {
    private Question06PercentFeetAndWind() {}

    /**
     * Prints the answer and its working.
     *
     * @param args not used
     */
    public static void main(String[] args) {
        GroundGradient gradient = GroundGradient.ofPercent(5.0);
        TrueAirspeed tas = TrueAirspeed.ofKnots(180);
        for (double knots : new double[] {-20, 0, 20}) {
            AlongTrackWind wind = AlongTrackWind.ofKnots(knots);
            Working working = GradientWorking.rateForGradient(gradient, tas, wind);
            System.out.printf(
                    Locale.ROOT,
                    "wind along the track %.0f kn: %.0f ft/NM take %.0f ft/min%n",
                    knots,
                    working.value("Gf"),
                    working.value("Rf"));
        }
        System.out.println();

        AlongTrackWind tailwind = AlongTrackWind.ofKnots(20);
        System.out.print(GradientWorking.rateForGradient(gradient, tas, tailwind).toMarkdown());
    }
}
