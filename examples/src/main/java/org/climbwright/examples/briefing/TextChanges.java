package org.climbwright.examples.briefing;

import java.util.List;
import java.util.stream.Stream;
import org.climbwright.briefing.ClimbBriefing;
import org.climbwright.profile.ClimbDifference;

/** What would change this climb, and by how much. */
final class TextChanges {
    private TextChanges() {}

    static void write(TextPage page, ClimbBriefing briefing) {
        List<ClimbDifference> changes =
                Stream.concat(briefing.givenChanges().stream(), briefing.chosenChanges().stream())
                        .toList();
        if (changes.isEmpty()) {
            return;
        }
        UnitSet units = page.units();
        page.line(
                "WHAT CHANGES THIS CLIMB, each flown again; of what the plan chooses, most fuel"
                        + " saved first");
        new TextTable<ClimbDifference>()
                .column(-60, "", "  change", change -> "  " + change.change().text())
                .column(7, "", "s", change -> signed(change.moreTimeS(), 0))
                .column(9, "", "kg fuel", change -> signed(change.moreFuelKg(), 1))
                .column(
                        7,
                        "",
                        units.distance().label(),
                        change ->
                                Double.isNaN(change.moreDistanceM())
                                        ? TextPage.DASH
                                        : units.distance().signed(change.moreDistanceM()))
                .column(2, "", "", change -> "")
                .column(
                        -15,
                        "",
                        "at " + units.altitude().label(),
                        change ->
                                units.altitude().number(change.comparedAt().inMetres())
                                        + (change.endsLower() ? ", ends" : ""))
                .write(page, changes);
        page.line("To the top of climb only: what saves there may cost more behind it.");
        page.blank();
    }

    /** With its sign, and no minus before a nothing. */
    private static String signed(double value, int digits) {
        double scale = digits == 0 ? 1.0 : 10.0;
        double rounded = Math.rint(value * scale) / scale + 0.0;
        return TextPage.format("%+." + digits + "f", rounded);
    }
}
