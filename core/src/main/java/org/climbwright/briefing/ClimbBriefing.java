package org.climbwright.briefing;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import org.climbwright.atmosphere.AirState;
import org.climbwright.atmosphere.Atmosphere;
import org.climbwright.atmosphere.altimetry.Altimetry;
import org.climbwright.atmosphere.wind.Winds;
import org.climbwright.briefing.ClimbEvent.Kind;
import org.climbwright.cabin.CabinState;
import org.climbwright.gradient.cloudtop.CloudTop;
import org.climbwright.gradient.leveling.LevelOffPlan;
import org.climbwright.gradient.restriction.RestrictionOutcome;
import org.climbwright.gradient.restriction.Restrictions;
import org.climbwright.icing.IcingAnswer;
import org.climbwright.icing.IcingSpan;
import org.climbwright.icing.ProtectedPart;
import org.climbwright.icing.ProtectionAdvice;
import org.climbwright.icing.ProtectionMethod;
import org.climbwright.icing.ProtectionPeriod;
import org.climbwright.path.Climb;
import org.climbwright.path.ClimbPath;
import org.climbwright.path.SpeedSchedule;
import org.climbwright.quantity.ModelRange;
import org.climbwright.quantity.altitude.AltitudeOnQnh;
import org.climbwright.quantity.altitude.PressureAltitude;
import org.climbwright.quantity.pressure.AltimeterSetting;
import org.climbwright.sounding.Inversion;
import org.climbwright.sounding.IsothermCrossing;
import org.climbwright.sounding.Sounding;

/**
 * A climb as a pilot is briefed on it: level by level, what to expect and what to do ahead of it.
 *
 * <pre>{@code
 * ClimbBriefing briefing = ClimbBriefing.of(plan, sounding);
 * briefing.levels()            // each 2,000 ft and each event, upwards
 * briefing.iceProtection()      // icing conditions, and by when protection should be on
 * briefing.cabin()             // what to read of the cabin at each check
 * briefing.restrictions()      // met or missed, by how much, and what they take
 * briefing.levelOff()          // where to reduce the rate before the level
 * briefing.limits()            // what this is good for, and what not
 * }</pre>
 */
public final class ClimbBriefing {
    private static final double TABLE_STEP_FT = 2000.0;
    private static final double CHECK_STEP_FT = 10000.0;

    private static final List<String> LIMITS =
            List.of(
                    "For study and simulation, not for use in flight: the flight manual, the"
                            + " operator's procedures, local regulations and licensed practice"
                            + " decide.",
                    "The air is that of one balloon at its time and place, and nothing is known"
                            + " between its levels but a straight line.",
                    "Icing conditions are where temperature and moisture meet the rules named here,"
                        + " one for each part protected; the flight manual decides. They are no"
                        + " forecast of ice, and no span found is not \"no icing\"; ice cloud in"
                        + " very cold air is missed by a humidity over water, and ice crystals can"
                        + " harm an engine where it is colder than a rule speaks of.",
                    "Cabin figures are those of a controller without lag or fault, on the settings"
                            + " given. They diagnose nothing: checklists and memory items are the"
                            + " operator's.",
                    "Restrictions and clearances are those given, on the QNH told here: the"
                        + " clearance and the published procedure say what is to be kept. A cloud"
                        + " is as it was given, and coming over it by a figure is no more than"
                        + " that.",
                    "Rates are those of the table, in whatever air; a change of speed is taken as"
                            + " immediate, turns and the loss of mass by fuel are left out.",
                    "An altimeter shows the true altitude only at the aerodrome of its QNH.");

    private final ClimbPlan plan;
    private final Sounding sounding;
    private final AltimeterSetting qnh;
    private final ClimbPath path;
    private final List<IsothermCrossing> freezingLevels;
    private final List<ProtectionAdvice> iceProtection;
    private final Optional<CabinBriefing> cabin;
    private final Restrictions restrictions;
    private final Optional<LevelOffPlan> levelOff;
    private final Optional<CloudTop> cloudTop;
    private final List<BriefingLevel> levels;
    private final List<String> notes;

    private ClimbBriefing(ClimbPlan plan, Sounding sounding) {
        this.plan = plan;
        this.sounding = sounding;
        Atmosphere air = sounding.atmosphere();
        Winds winds = sounding.winds(plan.unobservedWind());
        AirState ground = ground(plan, air);
        this.qnh =
                plan.aerodrome()
                        .qnh()
                        .orElseGet(
                                () ->
                                        Altimetry.qnh(
                                                ground.staticPressure(),
                                                plan.aerodrome().elevation()));
        SpeedSchedule schedule = plan.speeds().on(qnh);
        this.path =
                new Climb(plan.rates(), plan.mass(), schedule, air, winds, plan.track())
                        .between(ground.pressureAltitude(), plan.level());
        this.freezingLevels = sounding.freezingLevels();
        this.iceProtection =
                plan.iceProtection().stream()
                        .map(protection -> ProtectionAdvice.along(path, protection))
                        .toList();
        this.cabin =
                plan.cabin()
                        .map(
                                planned ->
                                        new CabinBriefing(
                                                path,
                                                planned.between(path.bottom(), plan.level()),
                                                checksAndTop()));
        this.restrictions = Restrictions.along(path, qnh, plan.restrictions());
        this.levelOff =
                plan.levelOff()
                        .filter(planned -> path.top().equals(plan.level()))
                        .map(
                                planned ->
                                        LevelOffPlan.along(
                                                path, path.top(), planned.rule(), planned.lead()));
        this.cloudTop = plan.cloud().map(cloud -> cloud.along(path));
        this.levels = gather(schedule);
        this.notes = new BriefingNotes(this).sentences();
    }

    /**
     * Returns the briefing of a climb through a sounding.
     *
     * @param plan the climb
     * @param sounding the air and the winds
     * @return the briefing
     * @throws org.climbwright.quantity.OutsideModelException if the aerodrome lies outside the
     *     sounding, or the climb begins outside the table of rates
     * @throws IllegalArgumentException if the climb cannot be flown, such as a level below the
     *     aerodrome
     * @throws IllegalStateException if the sounding has no air with heights
     */
    public static ClimbBriefing of(ClimbPlan plan, Sounding sounding) {
        return new ClimbBriefing(plan, sounding);
    }

    private static AirState ground(ClimbPlan plan, Atmosphere air) {
        double elevation = plan.aerodrome().elevation().inMetres();
        double lowest = air.geopotentialAltitude(air.range().highest());
        double highest = air.geopotentialAltitude(air.range().lowest());
        if (Double.isNaN(lowest)) {
            throw new IllegalStateException(
                    "the sounding reports no height, so that an aerodrome has no place in it");
        }
        new ModelRange(
                        "aerodrome elevation",
                        lowest,
                        highest,
                        "m",
                        "the sounding has no air outside, choose an elevation within it")
                .check(elevation);
        return air.at(plan.aerodrome().elevation());
    }

    private List<BriefingLevel> gather(SpeedSchedule schedule) {
        LevelCollector collector = new LevelCollector(path);
        collector.event(path.bottom(), Kind.BOTTOM, "climb begins at " + plan.aerodrome().name());
        collector.event(path.top(), Kind.TOP, "climb ends: " + path.endsBecause());
        gatherSpeeds(collector, schedule); // first: a level that jumps must keep its own place
        double first = Math.ceil(path.bottom().inFeet() / TABLE_STEP_FT) * TABLE_STEP_FT;
        for (double feet = first; feet <= path.top().inFeet(); feet += TABLE_STEP_FT) {
            collector.line(PressureAltitude.ofFeet(feet));
        }
        gatherAltimeter(collector);
        gatherAir(collector);
        gatherIcing(collector);
        gatherRestrictions(collector);
        return collector.levels(qnh, plan.aerodrome().transitionAltitude());
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
                                    "crossover: " + (ofLimit ? limit : cas) + " to " + mach));
        }
        for (PressureAltitude jump : plan.rates().jumps()) {
            collector.event(jump, Kind.RATE_JUMP, "the table of rates jumps");
        }
    }

    private void gatherAltimeter(LevelCollector collector) {
        AltitudeOnQnh transition = plan.aerodrome().transitionAltitude();
        PressureAltitude standard = Altimetry.pressureAltitude(transition, qnh);
        collector.event(
                standard,
                Kind.TRANSITION_ALTITUDE,
                String.format(
                        Locale.ROOT,
                        "transition altitude: altimeter from %.0f to %.0f ft (%+.0f)",
                        transition.inFeet(),
                        standard.inFeet(),
                        Math.rint(standard.inFeet() - transition.inFeet()) + 0.0));
        for (Check check : checks()) {
            collector.event(check.level(), Kind.CHECK, check.inWords());
        }
        cabin.ifPresent(briefed -> gatherCabin(collector, briefed));
    }

    /** A round number on the altimeter, and the level where it shows that. */
    private record Check(PressureAltitude level, double feet, boolean onQnh) {
        String inWords() {
            return String.format(Locale.ROOT, "check at %.0f ft%s", feet, onQnh ? " on QNH" : "");
        }
    }

    /** Where the altimeter shows a round 10,000 ft between the climb's ends. */
    private List<Check> checks() {
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

    private List<PressureAltitude> checksAndTop() {
        return Stream.concat(checks().stream().map(Check::level), Stream.of(path.top()))
                .distinct()
                .toList();
    }

    private static void gatherCabin(LevelCollector collector, CabinBriefing briefed) {
        for (CabinState cabin : briefed.checks()) {
            collector.event(
                    cabin.aeroplane(),
                    Kind.CABIN,
                    String.format(
                            Locale.ROOT,
                            "cabin at %.0f ft, %+.0f ft/min, %.2f psi",
                            cabin.cabin().inFeet(),
                            cabin.rate().inFeetPerMinute(),
                            cabin.differential().inPoundsPerSquareInch()));
        }
    }

    private void gatherAir(LevelCollector collector) {
        for (IsothermCrossing crossing : freezingLevels) {
            boolean falling = crossing.trend() == IsothermCrossing.Trend.FALLING;
            collector.event(
                    crossing.pressureAltitude(),
                    Kind.ZERO_CELSIUS,
                    "0 °C, " + (falling ? "colder above" : "warmer above"));
        }
        for (Inversion inversion : sounding.inversions(plan.smallestInversion())) {
            String rise =
                    String.format(Locale.ROOT, "%.1f K warmer above", inversion.rise().inKelvins());
            collector.event(
                    inversion.base().pressureAltitude(),
                    Kind.INVERSION_BASE,
                    "inversion base, " + rise);
            collector.event(
                    inversion.top().pressureAltitude(), Kind.INVERSION_TOP, "inversion top");
        }
        sounding.tropopause()
                .map(AirState::pressureAltitude)
                .ifPresent(level -> collector.event(level, Kind.TROPOPAUSE, "tropopause"));
    }

    private void gatherIcing(LevelCollector collector) {
        for (ProtectionAdvice advice : iceProtection) {
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
        for (RestrictionOutcome outcome : restrictions.outcomes()) {
            outcome.predicted()
                    .ifPresent(
                            level ->
                                    collector.event(
                                            level,
                                            Kind.RESTRICTION,
                                            outcome.restriction().name()
                                                    + ": "
                                                    + outcome.verdict()
                                                            .name()
                                                            .toLowerCase(Locale.ROOT)
                                                            .replace('_', ' ')));
        }
        levelOff.flatMap(LevelOffPlan::levelWhereReducing)
                .ifPresent(
                        level ->
                                collector.event(
                                        level, Kind.LEVEL_OFF, "reduce the rate from here"));
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

    private static String words(ProtectedPart part) {
        return switch (part) {
            case ENGINE -> "engine";
            case AIRFRAME -> "airframe";
        };
    }

    private static String words(ProtectionMethod method) {
        return switch (method) {
            case ANTI_ICE -> "anti-ice";
            case DE_ICE -> "de-icing";
        };
    }

    /**
     * Returns what was briefed.
     *
     * @return the plan
     */
    public ClimbPlan plan() {
        return plan;
    }

    /**
     * Returns the air and the winds that it was briefed with.
     *
     * @return the sounding
     */
    public Sounding sounding() {
        return sounding;
    }

    /**
     * Returns the setting below the transition altitude.
     *
     * @return the plan's QNH, or the exact one that the air gives at the elevation
     */
    public AltimeterSetting qnh() {
        return qnh;
    }

    /**
     * Returns the climb.
     *
     * @return the path, to be asked at any level, time or distance
     */
    public ClimbPath path() {
        return path;
    }

    /**
     * Returns the climb line by line: each 2,000 ft and each event.
     *
     * @return the lines, upwards; where speed or rate jumps, one for each side
     */
    public List<BriefingLevel> levels() {
        return levels;
    }

    /**
     * Returns where the air of the sounding passes 0 °C, on the climb or above and below it.
     *
     * @return the crossings, upwards
     */
    public List<IsothermCrossing> freezingLevels() {
        return freezingLevels;
    }

    /**
     * Returns where the climb meets icing conditions and when protection is due.
     *
     * @return the advice for each plan of protection, in the order of the plan; that there is no
     *     span is not "no icing"
     */
    public List<ProtectionAdvice> iceProtection() {
        return iceProtection;
    }

    /**
     * Returns the cabin along the climb and what to read at each check.
     *
     * @return the cabin; empty if the plan has none
     */
    public Optional<CabinBriefing> cabin() {
        return cabin;
    }

    /**
     * Returns what the climb makes of the restrictions of the plan.
     *
     * @return the answers; with no outcomes where the plan has no restrictions
     */
    public Restrictions restrictions() {
        return restrictions;
    }

    /**
     * Returns how the level is captured.
     *
     * @return the plan; empty where none was asked for, or the climb does not get to its level
     */
    public Optional<LevelOffPlan> levelOff() {
        return levelOff;
    }

    /**
     * Returns what the climb makes of the cloud ahead.
     *
     * @return the answer; empty where the plan has no cloud
     */
    public Optional<CloudTop> cloudTop() {
        return cloudTop;
    }

    /**
     * Returns what is special about this briefing.
     *
     * @return sentences; never empty
     */
    public List<String> notes() {
        return notes;
    }

    /**
     * Returns what a briefing of this kind is good for, and what not.
     *
     * @return sentences, to be shown with every figure
     */
    public List<String> limits() {
        return LIMITS;
    }
}
