package org.climbwright.examples.briefing;

import org.climbwright.briefing.BriefingLevel;
import org.climbwright.briefing.ClimbBriefing;
import org.climbwright.briefing.ClimbEvent;

/** The climb line by line. */
final class TextClimb {
    private TextClimb() {}

    static void write(TextPage page, ClimbBriefing briefing) {
        UnitSet units = page.units();
        TextTable<BriefingLevel> table = new TextTable<>();
        for (ClimbColumn column : ClimbColumn.ALL) {
            table.column(
                    column.width(),
                    column.head(),
                    column.second(units),
                    level -> column.text(level, units));
        }
        page.line("THE CLIMB, line by line");
        table.heads(page);
        for (BriefingLevel level : briefing.levels()) {
            for (ClimbEvent event : level.events()) {
                page.line("- %s", event.text());
            }
            table.row(page, level);
        }
        page.blank();
        page.line(
                "Wind: along the track, tailwind positive. Rate: of pressure altitude. Gradient:"
                        + " true");
        page.line(
                "height over distance on the ground. A dash: not known, or above transition"
                        + " altitude.");
        page.blank();
    }
}
