package org.climbwright.examples.briefing;

import java.time.Duration;
import org.climbwright.gradient.leveling.LevelOffPlan;

/** How the climb is levelled off. */
final class TextLevelOff {
    private TextLevelOff() {}

    static void write(TextPage page, LevelOffPlan plan) {
        FigureUnit height = page.units().altitude();
        FigureUnit rate = page.units().verticalRate();
        page.line("LEVEL-OFF, %s, %s", plan.rule().name(), plan.lead());
        page.paragraph("  ", "Condition: " + plan.rule().condition() + ".");
        for (LevelOffPlan.Stretch stretch : plan.stretches()) {
            page.line(
                    "  %5s to %4s %s to go, %5s to %4s %s, %s: %s",
                    height.number(stretch.from().inMetres()),
                    height.number(stretch.to().inMetres()),
                    height.label(),
                    rate.number(stretch.rateBefore().inMetresPerSecond()),
                    rate.number(stretch.rateAfter().inMetresPerSecond()),
                    rate.label(),
                    seconds(stretch.time()),
                    stretch.action().words());
        }
        page.line("  The rule costs %s.", seconds(plan.cost()));
        plan.remarks().forEach(remark -> page.paragraph("  ", remark + "."));
        page.blank();
    }

    private static String seconds(Duration time) {
        return FigureUnit.SECONDS.text(time.toNanos() / 1e9);
    }
}
