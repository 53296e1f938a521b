package org.climbwright.briefing;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import org.climbwright.gradient.cloudtop.CloudAhead;
import org.climbwright.gradient.cloudtop.CloudTop;
import org.climbwright.gradient.leveling.LevelOffPlan;
import org.climbwright.gradient.restriction.RestrictionOutcome;
import org.climbwright.gradient.restriction.Restrictions;
import org.climbwright.icing.IcingAnswer;
import org.climbwright.icing.IcingSpan;
import org.climbwright.icing.ProtectionAdvice;
import org.climbwright.icing.ProtectionPeriod;
import org.climbwright.path.ClimbPath;
import org.climbwright.path.ClimbState;
import org.climbwright.path.Side;
import org.climbwright.profile.ClimbDifference;

/** Puts what to expect and what to do in the order of the climb. */
final class Expectations {
    private static final String CLOUD_REASON =
            "a cloud as it was given; no clearance but the operator's";

    private final ClimbBriefing briefing;
    private final ClimbPath path;
    private final ExpectationCollector found = new ExpectationCollector();

    Expectations(ClimbBriefing briefing) {
        this.briefing = briefing;
        this.path = briefing.path();
    }

    List<Expectation> inOrder() {
        new EventExpectations(briefing, found).gather();
        briefing.iceProtection().forEach(this::gather);
        briefing.restrictions().outcomes().forEach(this::gather);
        briefing.turbulence().ifPresent(this::gather);
        briefing.levelOffsOnTheWay().forEach(this::gather);
        briefing.levelOff().ifPresent(this::gather);
        briefing.cloudTop().ifPresent(this::gather);
        return found.inOrder();
    }

    private void gather(ProtectionAdvice advice) {
        String part = BriefingEvents.words(advice.plan().rule().part());
        String method = part + " " + BriefingEvents.words(advice.plan().method());
        for (ProtectionPeriod period : advice.periods()) {
            IcingSpan first = period.spans().get(0);
            found.add(
                    Expectation.Kind.DO,
                    method + (period.isOnBeforeClimb() ? " on before the climb" : " on"),
                    first.entry(),
                    period.isOnBeforeClimb() ? Optional.empty() : Optional.of(period.on()),
                    first.reason(),
                    "icing conditions by " + advice.plan().rule().basis());
            if (!period.isOnAtTop()) {
                found.add(
                        Expectation.Kind.DO,
                        method + " off, by the rule not before here",
                        period.off(),
                        StateFigures.temperatures(period.off()),
                        "the conditions of the rule have ended; what is seen decides");
            }
        }
        for (IcingSpan span : advice.spans()) {
            if (!span.isConditions()) {
                found.add(
                        Expectation.Kind.DO,
                        "consider "
                                + method
                                + (span.answer() == IcingAnswer.NOT_KNOWN
                                        ? ": conditions cannot be told"
                                        : ": moist, but colder than the rule"),
                        span.entry(),
                        span.onBy(path, advice.plan().lead()),
                        span.reason(),
                        "not known is not \"no icing\": what is seen decides");
            }
        }
    }

    /** At its point, and where the climb begins if it is missed there, when it can be mended. */
    private void gather(RestrictionOutcome outcome) {
        String reason =
                outcome.reasons().isEmpty()
                        ? outcome.restriction().toString()
                        : outcome.reasons().get(0);
        ClimbState bottom = path.at(path.bottom(), Side.BELOW);
        Optional<ClimbState> over = path.over(outcome.restriction().distance());
        if (over.isEmpty()) {
            found.add(
                    Expectation.Kind.CHECK,
                    BriefingEvents.words(outcome),
                    bottom,
                    "the climb is not known to come over it",
                    reason);
            return;
        }
        found.add(
                Expectation.Kind.CHECK,
                BriefingEvents.words(outcome),
                over.get(),
                margins(outcome) + missedWith(outcome),
                reason);
        if (outcome.verdict() == RestrictionOutcome.Verdict.MISSED) {
            found.add(
                    Expectation.Kind.DO,
                    "plan for " + outcome.restriction().name() + ", missed as planned",
                    bottom,
                    margins(outcome),
                    "who cannot comply tells the controller (common practice, no source)");
        }
    }

    /** Which of what could go otherwise would make it missed. */
    private String missedWith(RestrictionOutcome outcome) {
        String changes =
                outcome.verdict() == RestrictionOutcome.Verdict.MET
                        ? briefing.givenChanges().stream()
                                .filter(change -> misses(change, outcome))
                                .map(change -> change.change().text())
                                .collect(Collectors.joining(" or "))
                        : "";
        return changes.isEmpty() ? "" : "; missed with " + changes;
    }

    private boolean misses(ClimbDifference change, RestrictionOutcome outcome) {
        return Restrictions.along(change.after(), briefing.qnh(), List.of(outcome.restriction()))
                        .outcomes()
                        .get(0)
                        .verdict()
                == RestrictionOutcome.Verdict.MISSED;
    }

    private static String margins(RestrictionOutcome outcome) {
        List<String> margins = new ArrayList<>();
        outcome.altitudeMargin()
                .ifPresent(
                        margin ->
                                margins.add(
                                        String.format(
                                                Locale.ROOT, "%+.0f ft", margin.inFeet() + 0.0)));
        outcome.speedMargin()
                .ifPresent(
                        margin ->
                                margins.add(
                                        String.format(
                                                Locale.ROOT, "%+.0f kn", margin.inKnots() + 0.0)));
        return margins.isEmpty() ? "no margin is known" : "margin " + String.join(", ", margins);
    }

    private void gather(TurbulenceBriefing turbulence) {
        for (TurbulenceBriefing.Span span : turbulence.spans()) {
            found.add(
                    Expectation.Kind.DO,
                    span.onBy().isPresent()
                            ? "consider the seat-belt sign"
                            : "consider the seat-belt sign before the climb",
                    span.entry(),
                    span.onBy(),
                    String.join("; ", span.reasons()),
                    String.format(
                            Locale.ROOT,
                            "up to %s by these figures; none of them says off",
                            StateFigures.level(briefing.reading(span.exit().pressureAltitude()))));
        }
    }

    private String level(LevelOffPlan plan) {
        return plan.levelWhereReducing()
                .map(level -> briefing.reading(level.plus(plan.beginsReducing())))
                .map(StateFigures::level)
                .orElse("the level");
    }

    private void gather(LevelOffPlan plan) {
        plan.levelWhereReducing()
                .ifPresent(
                        level ->
                                found.add(
                                        Expectation.Kind.DO,
                                        "reduce the rate for " + level(plan),
                                        path.at(level, Side.ABOVE),
                                        String.format(
                                                Locale.ROOT,
                                                "%.0f ft to go at %.0f ft/min",
                                                plan.beginsReducing().inFeet(),
                                                plan.arrival().inFeetPerMinute()),
                                        plan.rule().name()));
    }

    /** With what the plan's lead for seat belts gives, where the climb may enter it. */
    private void gather(CloudTop top) {
        CloudAhead cloud = briefing.plan().cloud().orElseThrow().cloud();
        Optional<ClimbState> near = path.over(cloud.nearEdge());
        if (near.isEmpty()) {
            found.add(
                    Expectation.Kind.EXPECT,
                    "the cloud ahead cannot be told",
                    path.at(path.bottom(), Side.BELOW),
                    String.join("; ", top.reasons()),
                    CLOUD_REASON);
            return;
        }
        boolean isTopped =
                top.overCloud().map(margin -> margin.least().inMetres() > 0.0).orElse(false);
        Optional<ClimbState> latest =
                briefing.turbulence()
                        .filter(known -> !isTopped)
                        .flatMap(known -> path.before(near.get(), known.plan().lead()));
        found.add(
                isTopped ? Expectation.Kind.EXPECT : Expectation.Kind.DO,
                words(top, isTopped),
                near.get(),
                latest,
                figure(top),
                CLOUD_REASON);
    }

    private static String words(CloudTop top, boolean isTopped) {
        if (isTopped) {
            return switch (top.answer()) {
                case TOPS_BY_LESS -> "over the cloud ahead by less than wanted";
                case NO_VERDICT -> "over the cloud ahead, with no clearance given";
                case TOPS_BY_CLEARANCE, DOES_NOT_TOP, CANNOT_BE_TOLD -> "over the cloud ahead";
            };
        }
        return switch (top.atNearEdge()) {
            case INSIDE -> "enters the cloud ahead: consider the seat-belt sign";
            case BELOW -> "below the base of the cloud ahead at its near edge";
            case ABOVE -> "may enter the cloud ahead: consider the seat-belt sign";
            case NOT_KNOWN -> "the cloud ahead cannot be told: consider the seat-belt sign";
        };
    }

    private static String figure(CloudTop top) {
        return top.overCloud()
                .map(
                        margin ->
                                "as given "
                                        + overTop(margin.asGiven().inFeet())
                                        + ", at the least "
                                        + overTop(margin.least().inFeet()))
                .orElse("margin not known");
    }

    private static String overTop(double feet) {
        return String.format(
                Locale.ROOT, "%.0f ft %s its top", Math.abs(feet), feet < 0.0 ? "below" : "over");
    }
}
