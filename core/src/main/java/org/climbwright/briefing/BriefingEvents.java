package org.climbwright.briefing;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import org.climbwright.atmosphere.altimetry.Altimetry;
import org.climbwright.briefing.ClimbEvent.Kind;
import org.climbwright.briefing.plan.ClimbMeans;
import org.climbwright.briefing.plan.ClimbPlan;
import org.climbwright.briefing.plan.ScheduledSpeeds;
import org.climbwright.cabin.CabinState;
import org.climbwright.gradient.leveling.LevelOffPlan;
import org.climbwright.gradient.restriction.RestrictionOutcome;
import org.climbwright.icing.IcingAnswer;
import org.climbwright.icing.IcingSpan;
import org.climbwright.icing.ProtectedPart;
import org.climbwright.icing.ProtectionAdvice;
import org.climbwright.icing.ProtectionMethod;
import org.climbwright.icing.ProtectionPeriod;
import org.climbwright.path.ClimbPath;
import org.climbwright.path.SpeedSchedule;
import org.climbwright.profile.ClimbProfile;
import org.climbwright.profile.LevelMark;
import org.climbwright.profile.ProfileEvent;
import org.climbwright.quantity.altitude.AltitudeOnQnh;
import org.climbwright.quantity.altitude.PressureAltitude;
import org.climbwright.quantity.pressure.AltimeterSetting;

/** Gathers what happens on a briefed climb, line by line. */
final class BriefingEvents {
    static final double TABLE_STEP_FT = 2000.0;
    static final double SAME_READING_FT = 0.05;
    private static final double CHECK_STEP_FT = 10000.0;

    private final ClimbBriefing briefing;
    private final ClimbPlan plan;
    private final ClimbPath path;

    BriefingEvents(ClimbBriefing briefing) {
        this.briefing = briefing;
        this.plan = briefing.plan();
        this.path = briefing.path();
    }

    List<BriefingLevel> levels(SpeedSchedule schedule) {
        LevelCollector collector = new LevelCollector(path);
        collector.event(path.bottom(), Kind.BOTTOM, "climb begins at " + plan.aerodrome().name());
        collector.event(path.top(), Kind.TOP, "climb ends: " + path.endsBecause());
        // first: a level that jumps must keep its own place
        briefing.profile()
                .ifPresentOrElse(
                        profile -> gatherFlight(collector, profile),
                        () -> gatherSpeeds(collector, schedule));
        roundLevels(path).forEach(collector::line);
        gatherAltimeter(collector);
        gatherAir(collector);
        gatherIcing(collector);
        gatherRestrictions(collector);
        return collector.levels(briefing.qnh(), plan.aerodrome().transitionAltitude());
    }

    /** The round levels of the table. */
    static List<PressureAltitude> roundLevels(ClimbPath path) {
        List<PressureAltitude> levels = new ArrayList<>();
        double first = Math.ceil(path.bottom().inFeet() / TABLE_STEP_FT) * TABLE_STEP_FT;
        for (double feet = first; feet <= path.top().inFeet(); feet += TABLE_STEP_FT) {
            levels.add(PressureAltitude.ofFeet(feet));
        }
        return levels;
    }

    private static void gatherFlight(LevelCollector collector, ClimbProfile profile) {
        for (ProfileEvent event : profile.events()) {
            kind(event.kind())
                    .ifPresent(kind -> collector.event(event.arriving(), kind, event.text()));
        }
    }

    /** Beginning, end and marks are the briefing's own. */
    private static Optional<Kind> kind(ProfileEvent.Kind kind) {
        return switch (kind) {
            case BEGINNING, MARK, TOP -> Optional.empty();
            case CHANGE_OF_SPEED -> Optional.of(Kind.CHANGE_OF_SPEED);
            case SPEED_REACHED -> Optional.of(Kind.SPEED_REACHED);
            case CROSSOVER -> Optional.of(Kind.CROSSOVER);
            case HELD_RATE -> Optional.of(Kind.HELD_RATE);
            case NOT_KEPT -> Optional.of(Kind.NOT_KEPT);
            case LEVEL_HELD -> Optional.of(Kind.LEVEL_HELD);
            case LEVEL_LEFT -> Optional.of(Kind.LEVEL_LEFT);
            case BLEED -> Optional.of(Kind.BLEED);
            case LOW_RATE -> Optional.of(Kind.LOW_RATE);
            case NAMED_POINT -> Optional.of(Kind.NAMED_POINT);
        };
    }

    private void gatherSpeeds(LevelCollector collector, SpeedSchedule schedule) {
        ScheduledSpeeds speeds = plan.speeds();
        String limit = speeds.limit().text();
        String cas = speeds.calibratedAirspeed().text();
        String mach = speeds.mach().text();
        Optional<PressureAltitude> change = schedule.changeOfSpeed();
        Optional<PressureAltitude> crossover = schedule.crossover();
        boolean toMachAtOnce = change.isPresent() && change.equals(crossover);
        change.ifPresent(
                level ->
                        collector.event(
                                level,
                                Kind.CHANGE_OF_SPEED,
                                "speed " + limit + " to " + (toMachAtOnce ? mach : cas)));
        if (!toMachAtOnce) {
            // below the limit's own top it is the limit that meets the Mach number
            boolean ofLimit = change.isEmpty() && speeds.limitBinds();
            crossover.ifPresent(
                    level ->
                            collector.event(
                                    level,
                                    Kind.CROSSOVER,
                                    (ofLimit ? limit : cas) + " to " + mach));
        }
        if (plan.means() instanceof ClimbMeans.Rates rates) {
            for (PressureAltitude jump : rates.table().jumps()) {
                collector.event(jump, Kind.RATE_JUMP, "the table of rates jumps");
            }
        }
    }

    private void gatherAltimeter(LevelCollector collector) {
        mark(
                collector,
                LevelMark.ofTransitionAltitude(
                        plan.aerodrome().transitionAltitude(), briefing.qnh()));
        for (Check check : checks(plan, path, briefing.qnh())) {
            collector.event(check.level(), Kind.CHECK, check.inWords());
        }
        briefing.cabin().ifPresent(briefed -> gatherCabin(collector, briefed));
    }

    /** A round number on the altimeter, and the level where it shows that. */
    record Check(PressureAltitude level, double feet, boolean onQnh) {
        String inFeet() {
            return String.format(Locale.ROOT, "%.0f ft%s", feet, onQnh ? " on QNH" : "");
        }

        String inWords() {
            return "check at " + inFeet();
        }
    }

    /** Where the altimeter shows a round 10,000 ft between the climb's ends. */
    static List<Check> checks(ClimbPlan plan, ClimbPath path, AltimeterSetting qnh) {
        List<Check> checks = new ArrayList<>();
        double highest = path.top().inFeet() + CHECK_STEP_FT;
        for (double feet = CHECK_STEP_FT; feet <= highest; feet += CHECK_STEP_FT) {
            boolean onQnh = feet <= plan.aerodrome().transitionAltitude().inFeet();
            PressureAltitude level =
                    onQnh
                            ? Altimetry.pressureAltitude(AltitudeOnQnh.ofFeet(feet), qnh)
                            : PressureAltitude.ofFeet(feet);
            if (level.compareTo(path.bottom()) >= 0 && level.compareTo(path.top()) <= 0) {
                checks.add(new Check(level, feet, onQnh));
            }
        }
        return checks;
    }

    static List<PressureAltitude> checksAndTop(
            ClimbPlan plan, ClimbPath path, AltimeterSetting qnh) {
        return Stream.concat(
                        checks(plan, path, qnh).stream().map(Check::level), Stream.of(path.top()))
                .distinct()
                .toList();
    }

    private static void gatherCabin(LevelCollector collector, CabinBriefing briefed) {
        for (CabinState cabin : briefed.checks()) {
            collector.event(cabin.aeroplane(), Kind.CABIN, words(cabin));
        }
    }

    static String words(CabinState cabin) {
        return String.format(
                Locale.ROOT,
                "cabin at %.0f ft, %+.0f ft/min, %.2f psi",
                cabin.cabin().inFeet(),
                cabin.rate().inFeetPerMinute(),
                cabin.differential().inPoundsPerSquareInch());
    }

    private void gatherAir(LevelCollector collector) {
        LevelMark.ofSounding(briefing.sounding(), plan.smallestInversion())
                .forEach(mark -> mark(collector, mark));
    }

    private static void mark(LevelCollector collector, LevelMark mark) {
        collector.event(
                mark.level(),
                switch (mark.kind()) {
                    case TRANSITION_ALTITUDE -> Kind.TRANSITION_ALTITUDE;
                    case ZERO_CELSIUS -> Kind.ZERO_CELSIUS;
                    case INVERSION_BASE -> Kind.INVERSION_BASE;
                    case INVERSION_TOP -> Kind.INVERSION_TOP;
                    case TROPOPAUSE -> Kind.TROPOPAUSE;
                    case OTHER -> throw new IllegalStateException("a mark of nobody");
                },
                mark.text());
    }

    private void gatherIcing(LevelCollector collector) {
        for (ProtectionAdvice advice : briefing.iceProtection()) {
            String part = words(advice.plan().rule().part());
            for (IcingSpan span : advice.spans()) {
                gatherSpan(collector, span, part);
            }
            for (ProtectionPeriod period : advice.periods()) {
                String what = part + " " + words(advice.plan().method());
                collector.event(
                        period.on().pressureAltitude(),
                        Kind.ICE_PROTECTION_ON,
                        what
                                + (period.isOnBeforeClimb()
                                        ? " on before the climb begins"
                                        : " on by here"));
            }
        }
    }

    private void gatherRestrictions(LevelCollector collector) {
        for (RestrictionOutcome outcome : briefing.restrictions().outcomes()) {
            String text = words(outcome);
            // within a level that is held the point has a time of its own
            path.over(outcome.restriction().distance())
                    .ifPresentOrElse(
                            state -> collector.event(state, Kind.RESTRICTION, text),
                            () ->
                                    outcome.predicted()
                                            .ifPresent(
                                                    level ->
                                                            collector.event(
                                                                    level,
                                                                    Kind.RESTRICTION,
                                                                    text)));
        }
        briefing.levelOff()
                .flatMap(LevelOffPlan::levelWhereReducing)
                .ifPresent(
                        level ->
                                collector.event(
                                        level, Kind.LEVEL_OFF, "reduce the rate from here"));
    }

    static String words(RestrictionOutcome outcome) {
        return outcome.restriction().name()
                + ": "
                + outcome.verdict().name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }

    private void gatherSpan(LevelCollector collector, IcingSpan span, String part) {
        String what =
                switch (span.answer()) {
                    case CONDITIONS -> part + " icing conditions";
                    case NOT_KNOWN -> part + " icing conditions not known";
                    case COLDER_THAN_THE_RULE -> "moisture colder than the " + part + " rule";
                    case NOT_MET -> throw new IllegalStateException("a span that is none");
                };
        collector.event(span.bottom(), entry(span.answer()), what + " from here");
        collector.event(
                span.top(),
                exit(span.answer()),
                span.top().equals(path.top())
                        ? what + ", still where the climb ends"
                        : what + " to here");
    }

    private static Kind entry(IcingAnswer answer) {
        return answer == IcingAnswer.CONDITIONS ? Kind.ICING_ENTRY : Kind.ICING_NOT_KNOWN_ENTRY;
    }

    private static Kind exit(IcingAnswer answer) {
        return answer == IcingAnswer.CONDITIONS ? Kind.ICING_EXIT : Kind.ICING_NOT_KNOWN_EXIT;
    }

    static String words(ProtectedPart part) {
        return switch (part) {
            case ENGINE -> "engine";
            case AIRFRAME -> "airframe";
        };
    }

    static String words(ProtectionMethod method) {
        return switch (method) {
            case ANTI_ICE -> "anti-ice";
            case DE_ICE -> "de-icing";
        };
    }
}
