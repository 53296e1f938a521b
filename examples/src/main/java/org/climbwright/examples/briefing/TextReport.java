package org.climbwright.examples.briefing;

import java.time.Duration;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.climbwright.briefing.BriefingLevel;
import org.climbwright.briefing.CabinBriefing;
import org.climbwright.briefing.ClimbBriefing;
import org.climbwright.briefing.ClimbEvent;
import org.climbwright.briefing.plan.ClimbPlan;
import org.climbwright.cabin.CabinPlan;
import org.climbwright.cabin.CabinState;
import org.climbwright.gradient.cloudtop.CloudTop;
import org.climbwright.gradient.leveling.LevelOffPlan;
import org.climbwright.gradient.restriction.ClimbRequirement;
import org.climbwright.gradient.restriction.Level;
import org.climbwright.gradient.restriction.Restriction;
import org.climbwright.gradient.restriction.RestrictionOutcome;
import org.climbwright.gradient.restriction.Restrictions;
import org.climbwright.icing.IcingAnswer;
import org.climbwright.icing.IcingRule;
import org.climbwright.icing.IcingSpan;
import org.climbwright.icing.ProtectionAdvice;
import org.climbwright.icing.ProtectionMethod;
import org.climbwright.icing.ProtectionPeriod;
import org.climbwright.icing.ProtectionPlan;
import org.climbwright.path.ClimbState;
import org.climbwright.performance.ClimbEffects;
import org.climbwright.performance.ClimbPoint;
import org.climbwright.profile.ClimbDifference;
import org.climbwright.quantity.altitude.AltitudeOnQnh;
import org.climbwright.quantity.altitude.GeometricAltitude;
import org.climbwright.quantity.path.GroundDistance;
import org.climbwright.quantity.path.GroundGradient;
import org.climbwright.quantity.speed.AlongTrackWind;
import org.climbwright.quantity.speed.GeometricRate;
import org.climbwright.quantity.speed.GroundSpeed;
import org.climbwright.quantity.speed.PressureAltitudeRate;
import org.climbwright.sounding.IsothermCrossing;

/** A briefing as text of at most 100 columns. */
final class TextReport {
    private static final int WIDTH = 100;
    private static final String ROW = "%8s%7s%7s%7s%6s%7s%4s%6s%4s%5s%4s%7s%5s%6s%7s%7s";

    private static final String CHANGE_ROW = "  %-58s%7s%9s%7s  %s";
    private static final String POWER_ROW = "%8s%8s%7s%11s%9s%9s%8s%8s%9s%9s";
    private static final String RESTRICTION_ROW = "%6s  %-17s %-28s %-9s%8s%10s%6s%7s";
    private static final String CABIN_ROW = "%8s%7s%8s%8s%12s%13s%11s%12s  %s";

    private final StringBuilder text = new StringBuilder();
    private final ClimbBriefing briefing;

    private TextReport(ClimbBriefing briefing) {
        this.briefing = briefing;
    }

    static String of(String title, String air, ClimbBriefing briefing) {
        TextReport report = new TextReport(briefing);
        report.heading(title, air);
        report.topOfClimb();
        report.table();
        report.power();
        report.changes();
        report.freezingLevels();
        report.icing();
        briefing.cabin().ifPresent(report::cabin);
        report.restrictions();
        briefing.levelOff().ifPresent(report::levelOff);
        briefing.cloudTop().ifPresent(report::cloudTop);
        report.sentences("Notes", briefing.notes());
        report.sentences("Limits of this briefing", briefing.limits());
        return report.text.toString();
    }

    private void heading(String title, String air) {
        ClimbPlan plan = briefing.plan();
        line("CLIMB BRIEFING  %s", title);
        line("");
        line(
                "From      %s, elevation %.0f ft, QNH %.2f hPa (%s)",
                plan.aerodrome().name(),
                plan.aerodrome().elevation().inFeet(),
                briefing.qnh().inHectopascals(),
                plan.aerodrome().qnh().isPresent() ? "stated" : "from the sounding, exact");
        line(
                "Climb to  %.0f ft pressure altitude, track %s true, mass %s",
                plan.level().inFeet(), plan.track().text(), plan.mass().text());
        line(
                "Speeds    %s below %.0f ft on QNH, then %s, then %s",
                plan.speeds().limit().text(),
                plan.speeds().limitBelow().inFeet(),
                plan.speeds().calibratedAirspeed().text(),
                plan.speeds().mach().text());
        line("Air       observed sounding %s", air);
        line("");
    }

    private void topOfClimb() {
        ClimbState top = briefing.topOfClimb();
        line(
                "Top       %.0f ft after %s%s%s: %s",
                top.pressureAltitude().inFeet(),
                minutes(top.timeS()),
                top.distance()
                        .map(way -> format(" and %.1f NM", way.inNauticalMiles()))
                        .orElse(", distance not known"),
                briefing.fuelTo(top)
                        .map(
                                fuel ->
                                        format(
                                                ", fuel %.0f kg, mass there %.0f kg",
                                                fuel.inKilograms(), top.mass().inKilograms()))
                        .orElse(", fuel not known by a table of rates"),
                briefing.path().endsBecause());
        line("");
    }

    private void power() {
        if (briefing.power().isEmpty()) {
            return;
        }
        line("WHERE THE EXCESS POWER GOES, at round levels with a held speed and the thrust set");
        line(
                POWER_ROW, "press.", "mass", "fuel", "fuel", "excess", "into", "into", "into",
                "rate", "of it");
        line(
                POWER_ROW,
                "alt ft",
                "kg",
                "kg",
                "flow kg/h",
                "ft/min",
                "height",
                "speed",
                "wind",
                "ft/min",
                "by wind");
        for (ClimbPoint point : briefing.power().stream().map(ClimbEffects::asItIs).toList()) {
            line(
                    POWER_ROW,
                    format("%.0f", point.pressureAltitude().inFeet()),
                    format("%.0f", point.mass().inKilograms()),
                    format(
                            "%.0f",
                            briefing.plan().mass().inKilograms() - point.mass().inKilograms()),
                    format("%.0f", point.fuelFlow().inKilogramsPerHour()),
                    perMinute(point.specificExcessPowerMps()),
                    perMinute(point.powerOfClimbMps()),
                    perMinute(point.powerOfAccelerationMps()),
                    point.powerOfWindChangeMps().isPresent()
                            ? perMinute(point.powerOfWindChangeMps().getAsDouble())
                            : "-",
                    format("%.0f", point.pressureAltitudeRate().inFeetPerMinute()),
                    known(
                            "%+.0f",
                            point.worthOfWindGradient()
                                    .map(PressureAltitudeRate::inFeetPerMinute)));
        }
        line(
                "Excess: thrust over drag times airspeed per weight, in true height; it goes into"
                        + " height, into");
        line(
                "airspeed and into the wind that change upwards. Rate: of the instrument, and what"
                        + " of it is due");
        line("to the wind's change: a headwind that grows upwards lifts.");
        line("");
    }

    private static String perMinute(double metresPerSecond) {
        return format(
                "%.0f", GeometricRate.ofMetresPerSecond(metresPerSecond).inFeetPerMinute() + 0.0);
    }

    private void changes() {
        List<ClimbDifference> changes =
                Stream.concat(briefing.givenChanges().stream(), briefing.chosenChanges().stream())
                        .toList();
        if (changes.isEmpty()) {
            return;
        }
        line(
                "WHAT CHANGES THIS CLIMB, each flown again; of what the plan chooses, most fuel"
                        + " saved first");
        line(CHANGE_ROW, "change", "s", "kg fuel", "NM", "at ft");
        for (ClimbDifference change : changes) {
            line(
                    CHANGE_ROW,
                    change.change().text(),
                    signed(change.moreTimeS(), 0),
                    signed(change.moreFuelKg(), 1),
                    Double.isNaN(change.moreDistanceM())
                            ? "-"
                            : signed(change.moreDistanceM() / 1852.0, 1),
                    format("%.0f", change.comparedAt().inFeet())
                            + (change.endsLower() ? ", ends" : ""));
        }
        line("To the top of climb only: what saves there may cost more behind it.");
        line("");
    }

    /** With its sign, and no minus before a nothing. */
    private static String signed(double value, int digits) {
        double scale = digits == 0 ? 1.0 : 10.0;
        double rounded = Math.rint(value * scale) / scale + 0.0;
        return format("%+." + digits + "f", rounded);
    }

    private void table() {
        line(
                ROW, "press.", "on", "true", "SAT", "ISA", "TAT", "CAS", "Mach", "TAS", "wind",
                "GS", "rate", "grad", "grad", "time", "dist");
        line(
                ROW, "alt ft", "QNH ft", "alt ft", "°C", "dev K", "°C", "kn", "", "kn", "kn", "kn",
                "ft/min", "%", "ft/NM", "min:s", "NM");
        for (BriefingLevel level : briefing.levels()) {
            for (ClimbEvent event : level.events()) {
                line("- %s", event.text());
            }
            row(level);
        }
        line("");
        line(
                "Wind: along the track, tailwind positive. Rate: of pressure altitude. Gradient:"
                        + " true");
        line(
                "height over distance on the ground. A dash: not known, or above transition"
                        + " altitude.");
        line("");
    }

    private void row(BriefingLevel level) {
        ClimbState state = level.state();
        line(
                ROW,
                format("%.0f", state.pressureAltitude().inFeet()),
                known("%.0f", level.altitudeOnQnh().map(AltitudeOnQnh::inFeet)),
                known("%.0f", state.air().geometricAltitude().map(GeometricAltitude::inFeet)),
                format("%.1f", state.air().staticAirTemperature().inCelsius()),
                format("%+.1f", state.air().isaDeviation().inKelvins()),
                format("%.1f", state.totalAirTemperature().inCelsius()),
                format("%.0f", state.calibratedAirspeed().inKnots()),
                format("%.3f", state.mach().number()),
                format("%.0f", state.trueAirspeed().inKnots()),
                known("%+.0f", state.alongTrackWind().map(AlongTrackWind::inKnots)),
                known("%.0f", state.groundSpeed().map(GroundSpeed::inKnots)),
                format("%.0f", state.pressureAltitudeRate().inFeetPerMinute()),
                known("%.1f", state.groundGradient().map(GroundGradient::inPercent)),
                known("%.0f", state.groundGradient().map(GroundGradient::inFeetPerNauticalMile)),
                minutes(state.timeS()),
                known("%.1f", state.distance().map(GroundDistance::inNauticalMiles)));
    }

    private void freezingLevels() {
        line("0 °C LEVELS of the sounding");
        if (briefing.freezingLevels().isEmpty()) {
            line("  none between its lowest and its highest level");
        }
        for (IsothermCrossing crossing : briefing.freezingLevels()) {
            line(
                    "  %6.0f ft pressure altitude, %s",
                    crossing.pressureAltitude().inFeet(),
                    crossing.trend() == IsothermCrossing.Trend.FALLING
                            ? "colder above"
                            : "warmer above");
        }
        line("");
    }

    private void icing() {
        for (ProtectionAdvice advice : briefing.iceProtection()) {
            IcingRule rule = advice.plan().rule();
            line("%s ICING CONDITIONS, by %s", rule.part().name(), rule.basis());
            if (advice.spans().isEmpty()) {
                line("  The rule is met nowhere on this climb. That is not \"no icing\".");
            } else if (advice.spans(IcingAnswer.CONDITIONS).isEmpty()) {
                line("  The rule is met nowhere that it can be told.");
            }
            for (IcingSpan span : advice.spans()) {
                describe(span);
                if (span.answer() == IcingAnswer.NOT_KNOWN) {
                    ifMoist(span, advice.plan());
                }
            }
            for (ProtectionPeriod period : advice.periods()) {
                describe(period, advice.plan());
            }
            line("");
        }
    }

    private void describe(IcingSpan span) {
        line(
                "  %.0f to %.0f ft, %s to %s: %s",
                span.bottom().inFeet(),
                span.top().inFeet(),
                minutes(span.entry().timeS()),
                minutes(span.exit().timeS()),
                switch (span.answer()) {
                    case CONDITIONS -> "in conditions";
                    case NOT_KNOWN -> "cannot tell";
                    case COLDER_THAN_THE_RULE -> "colder than the rule speaks of";
                    case NOT_MET -> "not met";
                });
        paragraph("    ", span.reason() + ".");
    }

    private void ifMoist(IcingSpan span, ProtectionPlan plan) {
        String due =
                span.onBy(briefing.path(), plan.lead())
                        .map(
                                state ->
                                        format(
                                                "on by %.0f ft, %s",
                                                state.pressureAltitude().inFeet(),
                                                minutes(state.timeS())))
                        .orElse("on before the climb begins");
        paragraph("    ", "If there is visible moisture, " + method(plan) + " " + due + ".");
    }

    private static String method(ProtectionPlan plan) {
        return plan.method() == ProtectionMethod.ANTI_ICE ? "anti-ice" : "de-icing";
    }

    private void describe(ProtectionPeriod period, ProtectionPlan plan) {
        String what = "Protection, " + method(plan) + ":";
        String on =
                period.isOnBeforeClimb()
                        ? "on before the climb begins"
                        : format(
                                "on by %.0f ft, %s",
                                period.on().pressureAltitude().inFeet(),
                                minutes(period.on().timeS()));
        String ahead =
                plan.lead().isZero()
                        ? ""
                        : format(
                                ", %d s and %.0f ft ahead",
                                plan.lead().toSeconds(), period.leadAltitude().inFeet());
        String off =
                period.isOnAtTop()
                        ? "still on where the climb ends"
                        : format(
                                "by the rule off after %.0f ft, %s",
                                period.off().pressureAltitude().inFeet(),
                                minutes(period.off().timeS()));
        String above =
                period.goesOnAboveConditions()
                        ? ", beyond the conditions where it cannot be told or is colder than the"
                                + " rule"
                        : "";
        String joined =
                period.spans().size() == 1
                        ? ""
                        : format(
                                " (%d spans, too close together to switch off between)",
                                period.spans().size());
        paragraph(
                "  ",
                what
                        + " "
                        + on
                        + (period.isOnBeforeClimb() ? "" : ahead)
                        + "; "
                        + off
                        + above
                        + joined
                        + ".");
    }

    private void cabin(CabinBriefing cabin) {
        CabinPlan plan = cabin.expected().plan();
        line("CABIN CHECKS, %s", plan.schedule().inWords());
        line(
                "  from %.0f ft pressure altitude with %s on the ground, landing field at %.0f ft",
                plan.departure().inFeet(),
                plan.prePressurisation().text(),
                plan.landing().inFeet());
        line(
                CABIN_ROW,
                "press.",
                "",
                "cabin",
                "cabin",
                "differ-",
                "psi left to",
                "psi left",
                "ft left to",
                "held by");
        line(
                CABIN_ROW,
                "alt ft",
                "min:s",
                "alt ft",
                "ft/min",
                "ential psi",
                "scheduled",
                "to relief",
                "warning",
                "");
        for (CabinState state : cabin.checks()) {
            CabinBriefing.Margin margin = cabin.margin(state);
            line(
                    CABIN_ROW,
                    format("%.0f", state.aeroplane().inFeet()),
                    minutes(state.time().toNanos() / 1e9),
                    format("%.0f", state.cabin().inFeet()),
                    format("%+.0f", state.rate().inFeetPerMinute()),
                    format("%.2f", state.differential().inPoundsPerSquareInch()),
                    format("%.2f", margin.toScheduled().inPoundsPerSquareInch()),
                    format("%.2f", margin.toRelief().inPoundsPerSquareInch()),
                    format("%.0f", margin.toWarning().inFeet()),
                    words(state.boundBy()));
        }
        CabinState settled = cabin.expected().settled();
        paragraph(
                "  ",
                format(
                        "Settled at %.0f ft cabin altitude, %.2f psi, %s after the climb began.",
                        settled.cabin().inFeet(),
                        settled.differential().inPoundsPerSquareInch(),
                        minutes(settled.time().toNanos() / 1e9)));
        paragraph(
                "  ",
                format(
                        "Limits: scheduled %s, relief %s, negative relief %s; cabin rate %s up, %s"
                                + " down, the %s kept first; warning at %.0f ft by %s.",
                        plan.limits().scheduled().text(),
                        plan.limits().relief().text(),
                        plan.limits().negativeRelief().text(),
                        plan.rates().up().text(),
                        plan.rates().down().text(),
                        plan.precedence() == CabinPlan.Precedence.DIFFERENTIAL_FIRST
                                ? "differential"
                                : "rate",
                        cabin.rule().warning().inFeet(),
                        cabin.rule().name()));
        line("");
    }

    private static String words(CabinState.BoundBy boundBy) {
        return switch (boundBy) {
            case SCHEDULE -> "schedule";
            case SCHEDULED_DIFFERENTIAL -> "differential";
            case AEROPLANE -> "aeroplane";
            case RATE_LIMIT -> "rate limit";
            case RELIEF_SETTING -> "relief";
        };
    }

    private void restrictions() {
        Restrictions restrictions = briefing.restrictions();
        if (restrictions.outcomes().isEmpty()) {
            return;
        }
        line("RESTRICTIONS, on QNH %.2f hPa", briefing.qnh().inHectopascals());
        line(RESTRICTION_ROW, "NM", "point", "what", "", "pred. ft", "margin", "ft/NM", "ft/min");
        for (RestrictionOutcome outcome : restrictions.outcomes()) {
            line(
                    RESTRICTION_ROW,
                    format("%.1f", outcome.restriction().distance().inNauticalMiles()),
                    outcome.restriction().name(),
                    what(outcome.restriction()),
                    outcome.verdict().name().toLowerCase(Locale.ROOT).replace('_', ' '),
                    known("%.0f", outcome.reading().map(Level::inFeet)),
                    outcome.altitudeMargin()
                            .map(margin -> format("%+.0f ft", margin.inFeet()))
                            .or(
                                    () ->
                                            outcome.speedMargin()
                                                    .map(
                                                            margin ->
                                                                    format(
                                                                            "%+.0f kn",
                                                                            margin.inKnots())))
                            .orElse("-"),
                    known(
                            "%.0f",
                            outcome.required()
                                    .map(need -> need.gradient().inFeetPerNauticalMile())
                                    .filter(gradient -> gradient > 0.0)),
                    known(
                            "%.0f",
                            outcome.required()
                                    .flatMap(ClimbRequirement::instrumentRate)
                                    .map(PressureAltitudeRate::inFeetPerMinute)
                                    .filter(rate -> rate > 0.0)));
        }
        line("  ft/NM and ft/min: what it takes on the mean from the beginning, true height over");
        line("  the ground and feet of the altimeter over the time predicted to the point.");
        restrictions
                .fromTheBeginning()
                .governing()
                .ifPresent(
                        need ->
                                line(
                                        "  The steepest constant gradient that one takes: %s, %.0f"
                                                + " ft/NM.",
                                        need.restriction().name(),
                                        need.gradient().inFeetPerNauticalMile()));
        restrictions
                .fromTheBeginning()
                .capping()
                .ifPresent(
                        cap ->
                                line(
                                        "  The least that one allows: %s, %.0f ft/NM.",
                                        cap.restriction().name(),
                                        cap.gradient().inFeetPerNauticalMile()));
        restrictions
                .firstMissed()
                .ifPresent(
                        missed -> {
                            line("  First missed: %s.", missed.restriction().name());
                            missed.reasons().forEach(reason -> paragraph("    ", reason + "."));
                        });
        restrictions
                .conflicts()
                .forEach(conflict -> paragraph("  ", "Conflict: " + conflict.reason() + "."));
        line("");
    }

    private static String what(Restriction restriction) {
        return Stream.concat(
                        restriction.altitude().stream().map(Object::toString),
                        restriction.speed().stream().map(Object::toString))
                .collect(Collectors.joining(", "));
    }

    private void levelOff(LevelOffPlan plan) {
        line("LEVEL-OFF, %s, %s", plan.rule().name(), plan.lead());
        paragraph("  ", "Condition: " + plan.rule().condition() + ".");
        for (LevelOffPlan.Stretch stretch : plan.stretches()) {
            line(
                    "  %5.0f to %4.0f ft to go, %5.0f to %4.0f ft/min, %s: %s",
                    stretch.from().inFeet(),
                    stretch.to().inFeet(),
                    stretch.rateBefore().inFeetPerMinute(),
                    stretch.rateAfter().inFeetPerMinute(),
                    seconds(stretch.time()),
                    stretch.action().words());
        }
        line("  The rule costs %s.", seconds(plan.cost()));
        plan.remarks().forEach(remark -> paragraph("  ", remark + "."));
        line("");
    }

    private static String seconds(Duration time) {
        return format("%.0f s", time.toNanos() / 1e9);
    }

    private void cloudTop(CloudTop top) {
        line(
                "CLOUD AHEAD, %s",
                switch (top.answer()) {
                    case TOPS_BY_CLEARANCE -> "topped by the clearance given or more";
                    case TOPS_BY_LESS -> "topped by less than the clearance given";
                    case DOES_NOT_TOP -> "not topped";
                    case CANNOT_BE_TOLD -> "cannot be told";
                    case NO_VERDICT -> "no clearance given: margins and no verdict";
                });
        top.reasons().forEach(reason -> paragraph("  ", reason + "."));
        line("");
    }

    private void sentences(String heading, List<String> sentences) {
        line("%s", heading.toUpperCase(Locale.ROOT));
        for (String sentence : sentences) {
            paragraph("  ", sentence);
        }
        line("");
    }

    private void paragraph(String indent, String sentence) {
        StringBuilder row = new StringBuilder(indent);
        for (String word : sentence.split(" ", -1)) {
            if (row.length() + word.length() > WIDTH) {
                text.append(row.toString().stripTrailing()).append('\n');
                row = new StringBuilder(indent).append("  ");
            }
            row.append(word).append(' ');
        }
        text.append(row.toString().stripTrailing()).append('\n');
    }

    private void line(String format, Object... values) {
        text.append(format(format, values).stripTrailing()).append('\n');
    }

    private static String known(String format, Optional<Double> value) {
        return value.map(number -> format(format, number)).orElse("-");
    }

    private static String minutes(double seconds) {
        long whole = Math.round(seconds);
        return format("%d:%02d", whole / 60, whole % 60);
    }

    private static String format(String format, Object... values) {
        String text = String.format(Locale.ROOT, format, values);
        // A number that rounds to nothing has no sign for a reader.
        return text.equals("-0.0") || text.equals("+0.0") ? "0.0" : text;
    }
}
