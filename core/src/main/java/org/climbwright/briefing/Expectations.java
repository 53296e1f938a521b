package org.climbwright.briefing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.climbwright.gradient.cloudtop.CloudTop;
import org.climbwright.gradient.leveling.LevelOffPlan;
import org.climbwright.gradient.restriction.RestrictionOutcome;
import org.climbwright.icing.IcingAnswer;
import org.climbwright.icing.IcingSpan;
import org.climbwright.icing.ProtectedPart;
import org.climbwright.icing.ProtectionAdvice;
import org.climbwright.icing.ProtectionPeriod;
import org.climbwright.path.ClimbPath;
import org.climbwright.path.ClimbState;
import org.climbwright.path.Side;

/** Puts what to expect and what to do in the order of the climb. */
final class Expectations {
    private final ClimbBriefing briefing;
    private final ClimbPath path;
    private final List<Expectation> found = new ArrayList<>();

    Expectations(ClimbBriefing briefing) {
        this.briefing = briefing;
        this.path = briefing.path();
    }

    List<Expectation> inOrder() {
        for (BriefingLevel level : briefing.levels()) {
            level.events().forEach(event -> gather(event, level.state()));
        }
        briefing.iceProtection().forEach(this::gather);
        briefing.restrictions().outcomes().forEach(this::gather);
        briefing.turbulence().ifPresent(this::gather);
        briefing.levelOff().ifPresent(this::gather);
        gatherCloud();
        List<Expectation> ordered =
                found.stream()
                        .sorted(Comparator.comparingDouble(one -> one.due().timeS()))
                        .toList();
        List<Expectation> numbered = new ArrayList<>();
        for (Expectation one : ordered) {
            numbered.add(
                    new Expectation(
                            numbered.size() + 1,
                            one.kind(),
                            one.what(),
                            one.at(),
                            one.latest(),
                            one.figure(),
                            one.reason()));
        }
        return List.copyOf(numbered);
    }

    private void add(
            Expectation.Kind kind, String what, ClimbState at, String figure, String reason) {
        add(kind, what, at, Optional.empty(), figure, reason);
    }

    private void add(
            Expectation.Kind kind,
            String what,
            ClimbState at,
            Optional<ClimbState> latest,
            String figure,
            String reason) {
        found.add(new Expectation(0, kind, what, at, latest, figure, reason));
    }

    /** What speaks for itself at its level; what has a latest point is gathered apart. */
    private void gather(ClimbEvent event, ClimbState state) {
        String text = event.text();
        switch (event.kind()) {
            case BOTTOM ->
                    add(
                            Expectation.Kind.EXPECT,
                            text,
                            state,
                            speed(state),
                            "time and distance count from here");
            case CHANGE_OF_SPEED ->
                    add(
                            Expectation.Kind.DO,
                            text,
                            state,
                            speed(state),
                            "the schedule changes its speed, and the rate falls meanwhile");
            case SPEED_REACHED ->
                    add(
                            Expectation.Kind.EXPECT,
                            text,
                            state,
                            speed(state),
                            "all the excess power climbs again");
            case CROSSOVER ->
                    add(
                            Expectation.Kind.DO,
                            "hold the Mach number: " + text.replace("crossover: ", ""),
                            state,
                            speed(state),
                            "the Mach number at this calibrated airspeed has come to the"
                                    + " schedule's");
            case TRANSITION_ALTITUDE ->
                    add(
                            Expectation.Kind.DO,
                            "set the altimeter to 1013.25 hPa",
                            state,
                            text,
                            "flight levels count from here, and so do restrictions in them");
            case ZERO_CELSIUS ->
                    add(
                            Expectation.Kind.EXPECT,
                            text,
                            state,
                            temperatures(state),
                            "where water begins or ends to freeze; the air may warm again above");
            case INVERSION_BASE, INVERSION_TOP ->
                    add(
                            Expectation.Kind.EXPECT,
                            text,
                            state,
                            temperatures(state),
                            "warmer air takes thrust, and its edges may be rough");
            case TROPOPAUSE ->
                    add(
                            Expectation.Kind.EXPECT,
                            text,
                            state,
                            temperatures(state),
                            "the air stops cooling, and winds change");
            case CHECK ->
                    add(
                            Expectation.Kind.CHECK,
                            text.replace("check at", "figures at"),
                            state,
                            figures(state),
                            "every 10,000 ft, common practice, no source");
            case NAMED_POINT ->
                    add(
                            Expectation.Kind.CHECK,
                            "over " + text,
                            state,
                            figures(state),
                            "time and fuel are held against the briefing");
            case HELD_RATE, LEVEL_HELD, LEVEL_LEFT ->
                    add(
                            Expectation.Kind.DO,
                            text,
                            state,
                            speed(state),
                            "the programme asks for it");
            case NOT_KEPT ->
                    add(
                            Expectation.Kind.EXPECT,
                            text,
                            state,
                            speed(state),
                            "the programme cannot be kept here");
            case LOW_RATE, RATE_JUMP ->
                    add(Expectation.Kind.EXPECT, text, state, rate(state), "the rate changes");
            case TOP ->
                    add(Expectation.Kind.CHECK, text, state, figures(state), "the climb is over");
            case BLEED,
                    CABIN,
                    ICE_PROTECTION_ON,
                    ICING_ENTRY,
                    ICING_EXIT,
                    ICING_NOT_KNOWN_ENTRY,
                    ICING_NOT_KNOWN_EXIT,
                    RESTRICTION,
                    LEVEL_OFF -> {
                // bleed and cabin go with what stands here already, the others are gathered apart
            }
        }
    }

    private void gather(ProtectionAdvice advice) {
        String part = part(advice.plan().rule().part());
        String method = part + " " + BriefingEvents.words(advice.plan().method());
        for (ProtectionPeriod period : advice.periods()) {
            IcingSpan first = period.spans().get(0);
            add(
                    Expectation.Kind.DO,
                    method + (period.isOnBeforeClimb() ? " on before the climb" : " on"),
                    first.entry(),
                    period.isOnBeforeClimb() ? Optional.empty() : Optional.of(period.on()),
                    first.reason(),
                    "icing conditions by " + advice.plan().rule().basis());
            if (!period.isOnAtTop()) {
                add(
                        Expectation.Kind.DO,
                        method + " off, by the rule not before here",
                        period.off(),
                        temperatures(period.off()),
                        "the conditions of the rule have ended; what is seen decides");
            }
        }
        for (IcingSpan span : advice.spans()) {
            if (!span.isConditions()) {
                add(
                        Expectation.Kind.EXPECT,
                        part
                                + (span.answer() == IcingAnswer.NOT_KNOWN
                                        ? " icing conditions cannot be told"
                                        : " icing: colder than the rule"),
                        span.entry(),
                        span.onBy(path, advice.plan().lead()),
                        span.reason(),
                        "not known is not \"no icing\": what is seen decides");
            }
        }
    }

    private static String part(ProtectedPart part) {
        return BriefingEvents.words(part);
    }

    private void gather(RestrictionOutcome outcome) {
        Optional<ClimbState> over = path.over(outcome.restriction().distance());
        over.ifPresent(
                state ->
                        add(
                                Expectation.Kind.CHECK,
                                BriefingEvents.words(outcome),
                                state,
                                margins(outcome),
                                outcome.reasons().isEmpty()
                                        ? outcome.restriction().toString()
                                        : outcome.reasons().get(0)));
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

    private static String margin(CloudTop top) {
        return top.nearEdge()
                .map(
                        margin ->
                                String.format(
                                        Locale.ROOT,
                                        "%+.0f ft over its top, %+.0f ft at the least",
                                        margin.asGiven().inFeet(),
                                        margin.least().inFeet()))
                .orElse("margin not known");
    }

    private void gather(TurbulenceBriefing turbulence) {
        for (TurbulenceBriefing.Span span : turbulence.spans()) {
            add(
                    Expectation.Kind.DO,
                    span.onBy().isPresent()
                            ? "consider the seat-belt sign"
                            : "consider the seat-belt sign before the climb",
                    span.entry(),
                    span.onBy(),
                    String.join("; ", span.reasons()),
                    String.format(
                            Locale.ROOT,
                            "up to %.0f ft by these figures; none of them says off",
                            span.exit().pressureAltitude().inFeet()));
        }
    }

    private void gather(LevelOffPlan plan) {
        plan.levelWhereReducing()
                .ifPresent(
                        level ->
                                add(
                                        Expectation.Kind.DO,
                                        "reduce the rate for the level",
                                        path.at(level, Side.ABOVE),
                                        String.format(
                                                Locale.ROOT,
                                                "%.0f ft to go at %.0f ft/min",
                                                plan.beginsReducing().inFeet(),
                                                plan.arrival().inFeetPerMinute()),
                                        plan.rule().name()));
    }

    private void gatherCloud() {
        briefing.plan()
                .cloud()
                .flatMap(planned -> path.over(planned.cloud().nearEdge()))
                .ifPresent(
                        state ->
                                add(
                                        Expectation.Kind.EXPECT,
                                        "near edge of the cloud ahead",
                                        state,
                                        margin(briefing.cloudTop().orElseThrow()),
                                        "a cloud as it was given; no clearance but the"
                                                + " operator's"));
    }

    private static String speed(ClimbState state) {
        return String.format(
                Locale.ROOT,
                "%.0f kn, M%.3f, %.0f ft/min",
                state.calibratedAirspeed().inKnots(),
                state.mach().number(),
                state.pressureAltitudeRate().inFeetPerMinute());
    }

    private static String rate(ClimbState state) {
        return String.format(
                Locale.ROOT, "%.0f ft/min", state.pressureAltitudeRate().inFeetPerMinute());
    }

    private static String temperatures(ClimbState state) {
        return String.format(
                Locale.ROOT,
                "static %.1f °C, total %.1f °C",
                tenths(state.air().staticAirTemperature().inCelsius()),
                tenths(state.totalAirTemperature().inCelsius()));
    }

    /** What would print as -0.0 is 0.0. */
    private static double tenths(double value) {
        return Math.rint(value * 10.0) / 10.0 + 0.0;
    }

    /** What a check reads: the cabin where there is one, and the fuel where it is known. */
    private String figures(ClimbState state) {
        List<String> parts = new ArrayList<>();
        briefing.cabinAt(state).ifPresent(cabin -> parts.add(BriefingEvents.words(cabin)));
        briefing.fuelTo(state)
                .ifPresent(
                        fuel ->
                                parts.add(
                                        String.format(
                                                Locale.ROOT, "fuel %.0f kg", fuel.inKilograms())));
        return parts.isEmpty() ? speed(state) : String.join(", ", parts);
    }
}
