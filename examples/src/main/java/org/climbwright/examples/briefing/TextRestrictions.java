package org.climbwright.examples.briefing;

import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.climbwright.briefing.ClimbBriefing;
import org.climbwright.gradient.restriction.ClimbRequirement;
import org.climbwright.gradient.restriction.Level;
import org.climbwright.gradient.restriction.Restriction;
import org.climbwright.gradient.restriction.RestrictionOutcome;
import org.climbwright.gradient.restriction.Restrictions;
import org.climbwright.quantity.altitude.AltitudeChange;
import org.climbwright.quantity.path.GroundGradient;
import org.climbwright.quantity.speed.AirspeedDifference;
import org.climbwright.quantity.speed.PressureAltitudeRate;

/** Each restriction, whether it is met, and what it takes. */
final class TextRestrictions {
    private static final int NAME = 18;
    private static final int WHAT = 29;

    private final TextPage page;
    private final UnitSet units;

    private TextRestrictions(TextPage page) {
        this.page = page;
        this.units = page.units();
    }

    static void write(TextPage page, ClimbBriefing briefing) {
        if (!briefing.restrictions().outcomes().isEmpty()) {
            page.line(
                    "RESTRICTIONS, QNH %s for those on QNH",
                    page.units().altimeterSetting().text(briefing.qnh().inPascals()));
            new TextRestrictions(page).write(briefing.restrictions());
        }
    }

    private void write(Restrictions restrictions) {
        TextTable<RestrictionOutcome> table = table();
        table.heads(page);
        for (RestrictionOutcome outcome : restrictions.outcomes()) {
            table.row(page, outcome);
            String what = what(outcome.restriction());
            if (what.length() >= WHAT) {
                page.paragraph(" ".repeat(8 + NAME), what);
            }
        }
        page.paragraph(
                "  ",
                units.heightOverDistance().label()
                        + " and "
                        + units.verticalRate().label()
                        + ": what it takes on the mean from the beginning, true height over the"
                        + " ground and height on the altimeter over the time predicted to the"
                        + " point.");
        restrictions
                .fromTheBeginning()
                .governing()
                .ifPresent(need -> bound("The steepest constant gradient that one takes", need));
        restrictions
                .fromTheBeginning()
                .capping()
                .ifPresent(cap -> bound("The least that one allows", cap));
        restrictions
                .firstMissed()
                .ifPresent(
                        missed -> {
                            page.line("  First missed: %s.", missed.restriction().name());
                            missed.reasons()
                                    .forEach(reason -> page.paragraph("    ", reason + "."));
                        });
        restrictions
                .conflicts()
                .forEach(conflict -> page.paragraph("  ", "Conflict: " + conflict.reason() + "."));
        page.blank();
    }

    private TextTable<RestrictionOutcome> table() {
        return new TextTable<RestrictionOutcome>()
                .column(
                        6,
                        "",
                        units.distance().label(),
                        outcome ->
                                units.distance()
                                        .number(outcome.restriction().distance().inMetres()))
                .column(2, "", "", outcome -> "")
                .column(
                        -NAME,
                        "",
                        "point",
                        outcome -> TextPage.cut(outcome.restriction().name(), NAME - 1))
                .column(
                        -WHAT,
                        "",
                        "what",
                        outcome -> {
                            String what = what(outcome.restriction());
                            return what.length() < WHAT ? what : "as below";
                        })
                .column(-9, "", "answer", outcome -> ConstantInWords.of(outcome.verdict()))
                .column(
                        13,
                        "",
                        "predicted",
                        outcome -> TextPage.known(outcome.reading().map(this::reading)))
                .column(10, "", "margin", this::margin)
                .column(
                        6,
                        "takes",
                        units.heightOverDistance().label(),
                        outcome -> TextPage.known(outcome.required().flatMap(this::gradient)))
                .column(
                        7,
                        "takes",
                        units.verticalRate().label(),
                        outcome -> TextPage.known(outcome.required().flatMap(this::rate)));
    }

    private void bound(String what, ClimbRequirement need) {
        page.line(
                "  %s: %s, %s.",
                what,
                need.restriction().name(),
                units.heightOverDistance().text(need.gradient().inMetresPerMetre()));
    }

    /** With its reference: a figure on QNH and one on 1013.25 hPa stand in one column. */
    private String reading(Level level) {
        return AltimeterText.of(level, units);
    }

    private String margin(RestrictionOutcome outcome) {
        Optional<String> height =
                outcome.altitudeMargin()
                        .map(AltitudeChange::inMetres)
                        .map(units.altitude()::difference);
        Optional<String> speed =
                outcome.speedMargin()
                        .map(AirspeedDifference::inMetresPerSecond)
                        .map(units.speed()::difference);
        return TextPage.known(height.or(() -> speed));
    }

    private Optional<String> gradient(ClimbRequirement need) {
        return Optional.of(need.gradient())
                .map(GroundGradient::inMetresPerMetre)
                .filter(gradient -> gradient > 0.0)
                .map(units.heightOverDistance()::number);
    }

    private Optional<String> rate(ClimbRequirement need) {
        return need.instrumentRate()
                .map(PressureAltitudeRate::inMetresPerSecond)
                .filter(rate -> rate > 0.0)
                .map(units.verticalRate()::number);
    }

    private static String what(Restriction restriction) {
        return Stream.concat(
                        restriction.altitude().stream().map(Object::toString),
                        restriction.speed().stream().map(Object::toString))
                .collect(Collectors.joining(", "));
    }
}
