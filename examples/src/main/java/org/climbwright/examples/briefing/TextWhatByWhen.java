package org.climbwright.examples.briefing;

import java.util.ArrayList;
import java.util.List;
import org.climbwright.briefing.ClimbBriefing;
import org.climbwright.briefing.Expectation;
import org.climbwright.path.ClimbState;

/** What to do or to expect, in the order in which it is due. */
final class TextWhatByWhen {
    private static final int WHAT = 40;
    private static final String ROW = "%3s  %-7s%-" + WHAT + "s  %-12s%6s%7s  %s";

    private TextWhatByWhen() {}

    static void write(TextPage page, ClimbBriefing briefing) {
        page.line("WHAT, BY WHEN, in the order in which it is due");
        page.line(ROW, "", "", "", "by, on the", "", "", "");
        page.line(
                ROW,
                "no.",
                "",
                "what",
                "altimeter",
                "min:s",
                page.units().distance().label(),
                "comes at");
        for (Expectation item : briefing.expectations()) {
            List<String> what = wrapped(item.what());
            page.line(
                    ROW,
                    item.number(),
                    ConstantInWords.of(item.kind()),
                    what.get(0),
                    page.onAltimeter(item.due().pressureAltitude()),
                    TextPage.minutes(item.due().timeS()),
                    page.distance(item.due()),
                    item.latest().map(by -> comesAt(page, item.at())).orElse(""));
            what.stream().skip(1).forEach(more -> page.line(ROW, "", "", more, "", "", "", ""));
            page.paragraph("            ", item.figure() + "; " + item.reason());
        }
        page.paragraph(
                "  ",
                "By: the point by which to act, or where it comes; comes at: where that is later."
                    + " On the altimeter: altitude on QNH up to the transition altitude, above it"
                    + " on 1013.25 hPa. Below, altitudes with no other word are pressure"
                    + " altitudes.");
        page.blank();
    }

    private static String comesAt(TextPage page, ClimbState state) {
        return page.onAltimeter(state.pressureAltitude()) + " " + TextPage.minutes(state.timeS());
    }

    /** In lines that fit their column, the further ones two columns further in. */
    private static List<String> wrapped(String what) {
        List<String> lines = new ArrayList<>();
        StringBuilder line = new StringBuilder();
        for (String word : what.split(" ", -1)) {
            if (line.toString().isBlank() || line.length() + 1 + word.length() <= WHAT) {
                line.append(line.toString().isBlank() ? "" : " ").append(word);
            } else {
                lines.add(line.toString());
                line = new StringBuilder("  ").append(word);
            }
        }
        lines.add(line.toString());
        return lines;
    }
}
