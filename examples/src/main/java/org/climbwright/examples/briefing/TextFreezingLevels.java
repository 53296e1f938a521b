package org.climbwright.examples.briefing;

import org.climbwright.briefing.ClimbBriefing;
import org.climbwright.sounding.IsothermCrossing;

/** Where the air of the sounding is at 0 °C. */
final class TextFreezingLevels {
    private TextFreezingLevels() {}

    static void write(TextPage page, ClimbBriefing briefing) {
        page.line("0 °C LEVELS of the sounding");
        if (briefing.freezingLevels().isEmpty()) {
            page.line("  none between its lowest and its highest level");
        }
        for (IsothermCrossing crossing : briefing.freezingLevels()) {
            page.line(
                    "%11s pressure altitude, %s",
                    page.altitude(crossing.pressureAltitude()),
                    crossing.trend() == IsothermCrossing.Trend.FALLING
                            ? "colder above"
                            : "warmer above");
        }
        page.blank();
    }
}
