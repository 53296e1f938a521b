package org.climbwright.examples.teaching;

import org.climbwright.gradient.leveling.LevelOffRule;
import org.climbwright.quantity.speed.PressureAltitudeRate;
import org.climbwright.working.GradientWorking;
import org.climbwright.working.Working;

/** How does a fast climb end at its level, and what are the last 1,000 ft worth? */
public final class Question08LevelOff {
    private Question08LevelOff() {}

    /**
     * Prints the answer and its working.
     *
     * @param args not used
     */
    public static void main(String[] args) {
        PressureAltitudeRate rate = PressureAltitudeRate.ofFeetPerMinute(3000);
        LevelOffRule rule = LevelOffRule.tradeFigure();

        Working working = GradientWorking.levelOff(rate, rule, 10.0);
        working.answer().forEach(System.out::println);
        System.out.println();
        System.out.print(working.toMarkdown());
    }
}
