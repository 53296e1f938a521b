package org.climbwright.examples.briefing;

import java.util.List;
import java.util.Locale;
import org.climbwright.briefing.ClimbBriefing;

/** A briefing as text: a chapter each, what a pilot needs first before the rest. */
final class TextReport {
    private TextReport() {}

    static String of(String title, String air, ClimbBriefing briefing, UnitSet units) {
        TextPage page = new TextPage(briefing, units);
        TextHeading.write(page, title, air, briefing);
        TextWhatByWhen.write(page, briefing);
        TextCheckCard.write(page, briefing);
        sentences(page, "Notes", briefing.notes());
        TextRestrictions.write(page, briefing);
        briefing.levelOff().ifPresent(plan -> TextLevelOff.write(page, plan));
        briefing.cloudTop().ifPresent(top -> TextCloudTop.write(page, top));
        TextFreezingLevels.write(page, briefing);
        TextIcing.write(page, briefing);
        briefing.turbulence().ifPresent(found -> TextTurbulence.write(page, found));
        briefing.cabin().ifPresent(cabin -> TextCabin.write(page, cabin));
        TextClimb.write(page, briefing);
        TextPower.write(page, briefing);
        TextChanges.write(page, briefing);
        sentences(page, "Sources", briefing.sources());
        sentences(page, "Limits of this briefing", briefing.limits());
        return page.text();
    }

    private static void sentences(TextPage page, String heading, List<String> sentences) {
        if (sentences.isEmpty()) {
            return;
        }
        page.line("%s", heading.toUpperCase(Locale.ROOT));
        sentences.forEach(sentence -> page.paragraph("  ", sentence));
        page.blank();
    }
}
