package org.climbwright.examples.briefing;

import org.climbwright.briefing.ClimbBriefing;
import org.climbwright.briefing.plan.ClimbPlan;
import org.climbwright.briefing.plan.ScheduledSpeeds;
import org.climbwright.gradient.restriction.Level;
import org.climbwright.path.ClimbState;
import org.climbwright.quantity.speed.CalibratedAirspeed;

/** Which climb it is, and where it ends. */
final class TextHeading {
    private TextHeading() {}

    static void write(TextPage page, String title, String air, ClimbBriefing briefing) {
        ClimbPlan plan = briefing.plan();
        UnitSet units = page.units();
        page.line("CLIMB BRIEFING  %s", title);
        page.blank();
        page.line(
                "From      %s, elevation %s, QNH %s (%s)",
                plan.aerodrome().name(),
                units.altitude().text(plan.aerodrome().elevation().inMetres()),
                units.altimeterSetting().text(briefing.qnh().inPascals()),
                plan.aerodrome().qnh().isPresent() ? "stated" : "from the sounding, exact");
        page.line(
                "Climb to  %s pressure altitude, track %s true, mass %s",
                page.altitude(plan.level()), plan.track().text(), plan.mass().text());
        ScheduledSpeeds speeds = plan.speeds();
        page.line(
                "Speeds    %s below %s, then %s, then %s",
                stated(page, speeds.limit()),
                AltimeterText.of(Level.of(speeds.limitBelow()), units),
                stated(page, speeds.calibratedAirspeed()),
                speeds.mach().text());
        page.paragraph("", "Air       observed sounding " + air);
        if (units == UnitSet.METRIC) {
            page.paragraph(
                    "",
                    "Units     metric; what is told in words stays in feet, knots, NM and psi:"
                        + " triggering figures, reasons, notes, rules, clearances, and the names of"
                        + " points, changes and events");
        }
        page.blank();
        writeTop(page, briefing);
    }

    private static String stated(TextPage page, CalibratedAirspeed speed) {
        return page.units().speed().stated(speed.inMetresPerSecond());
    }

    private static void writeTop(TextPage page, ClimbBriefing briefing) {
        ClimbState top = briefing.topOfClimb();
        UnitSet units = page.units();
        page.line(
                "Top       %s after %s%s%s: %s",
                page.onAltimeter(top.pressureAltitude()),
                TextPage.minutes(top.timeS()),
                top.distance()
                        .map(way -> " and " + units.distance().text(way.inMetres()))
                        .orElse(", distance not known"),
                briefing.fuelTo(top)
                        .map(
                                fuel ->
                                        ", fuel "
                                                + units.mass().text(fuel.inKilograms())
                                                + ", mass there "
                                                + units.mass().text(top.mass().inKilograms()))
                        .orElse(", fuel not known by a table of rates"),
                briefing.path().endsBecause());
        page.blank();
    }
}
