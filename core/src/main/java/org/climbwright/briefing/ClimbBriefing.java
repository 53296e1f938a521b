package org.climbwright.briefing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.DoubleStream;
import org.climbwright.atmosphere.AirState;
import org.climbwright.atmosphere.Atmosphere;
import org.climbwright.atmosphere.altimetry.Altimetry;
import org.climbwright.atmosphere.wind.Winds;
import org.climbwright.briefing.plan.ClimbMeans;
import org.climbwright.briefing.plan.ClimbPlan;
import org.climbwright.briefing.plan.PlannedLevelOff;
import org.climbwright.cabin.CabinState;
import org.climbwright.gradient.cloudtop.CloudTop;
import org.climbwright.gradient.leveling.LevelOffPlan;
import org.climbwright.gradient.restriction.Level;
import org.climbwright.gradient.restriction.Restrictions;
import org.climbwright.icing.ProtectionAdvice;
import org.climbwright.icing.ProtectionPlan;
import org.climbwright.path.Climb;
import org.climbwright.path.ClimbPath;
import org.climbwright.path.ClimbState;
import org.climbwright.path.Side;
import org.climbwright.path.SpeedSchedule;
import org.climbwright.performance.ClimbAir;
import org.climbwright.performance.ClimbEffects;
import org.climbwright.profile.AeroplaneClimb;
import org.climbwright.profile.ClimbChange;
import org.climbwright.profile.ClimbDifference;
import org.climbwright.profile.ClimbProfile;
import org.climbwright.profile.ClimbSensitivity;
import org.climbwright.profile.NamedPoint;
import org.climbwright.quantity.ModelRange;
import org.climbwright.quantity.altitude.PressureAltitude;
import org.climbwright.quantity.path.Mass;
import org.climbwright.quantity.pressure.AltimeterSetting;
import org.climbwright.quantity.speed.AlongTrackWind;
import org.climbwright.quantity.temperature.TemperatureDifference;
import org.climbwright.sounding.IsothermCrossing;
import org.climbwright.sounding.Sounding;

/**
 * A climb as a pilot is briefed on it: level by level, what to expect and what to do ahead of it.
 *
 * <pre>{@code
 * ClimbBriefing briefing = ClimbBriefing.of(plan, sounding);
 * briefing.expectations()      // what to do or expect, and by when
 * briefing.checkCard()         // what to read at each check, to be held against what is seen
 * briefing.levels()            // each 2,000 ft and each event, upwards
 * briefing.iceProtection()      // icing conditions, and by when protection should be on
 * briefing.cabin()             // what to read of the cabin at each check
 * briefing.restrictions()      // met or missed, by how much, and what they take
 * briefing.levelOff()          // where to reduce the rate before the level
 * briefing.limits()            // what this is good for, and what not
 * }</pre>
 */
public final class ClimbBriefing {
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
                    "An altimeter shows the true altitude only at the aerodrome of its QNH.");

    private static final List<String> SOURCES =
            List.of(
                    "Pressure altitudes and the altimeter: ICAO Doc 7488/3, standard atmosphere.",
                    "Airspeeds: isentropic flow and Rayleigh's pitot formula, NACA Report 1135.",
                    "Checks at round 10,000 ft: common practice, no source.");

    private static final String OF_CABIN =
            "Cabin figures are those of a controller without lag or fault, on the settings"
                    + " given. They diagnose nothing: checklists and memory items are the"
                    + " operator's.";

    private static final String OF_RESTRICTIONS =
            "Restrictions and clearances are those given, on the QNH told here: the"
                    + " clearance and the published procedure say what is to be kept. A cloud"
                    + " is as it was given, and coming over it by a figure is no more than"
                    + " that.";

    private static final String OF_TURBULENCE =
            "Reasons for the seat-belt sign are figures of this sounding against thresholds given;"
                    + " turbulence in clear air, over mountains, in wakes and near other storms is"
                    + " not looked at, and none found is no reason to unfasten.";

    /** What nobody chooses. */
    private static final List<ClimbChange> GIVEN =
            List.of(
                    ClimbChange.heavierBy(Mass.ofKilograms(1000)),
                    ClimbChange.warmerBy(TemperatureDifference.ofKelvins(10)),
                    ClimbChange.windBy(AlongTrackWind.ofKnots(-20)));

    private static final String BY_RATES =
            "Rates are those of the table, in whatever air; a change of speed is taken as"
                    + " immediate, turns and the loss of mass by fuel are left out.";

    private static final String BY_THRUST =
            "Thrust, drag and fuel are laws of the scenario, as good as their figures, with thrust"
                    + " along the path and the aeroplane always in balance; turns are left out.";

    private final ClimbPlan plan;
    private final Sounding sounding;
    private final AltimeterSetting qnh;
    private final Optional<ClimbProfile> profile;
    private final ClimbPath path;
    private final List<IsothermCrossing> freezingLevels;
    private final List<ProtectionAdvice> iceProtection;
    private final Optional<CabinBriefing> cabin;
    private final Restrictions restrictions;
    private final Optional<LevelOffPlan> levelOff;
    private final Optional<CloudTop> cloudTop;
    private final Optional<TurbulenceBriefing> turbulence;
    private final List<LevelOffPlan> levelOffsOnTheWay;
    private final List<ClimbDifference> givenChanges;
    private final List<BriefingLevel> levels;
    private final List<Expectation> expectations;
    private final List<CheckPoint> checkCard;
    private final List<String> notes;

    private ClimbBriefing(ClimbPlan plan, Sounding sounding) {
        List<ProtectionPlan> protections = protections(plan);
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
        this.profile =
                plan.means() instanceof ClimbMeans.Thrust thrust
                        ? Optional.of(
                                fly(plan, thrust, protections, schedule, qnh, air, winds)
                                        .between(ground.pressureAltitude(), plan.level()))
                        : Optional.empty();
        this.path =
                plan.means() instanceof ClimbMeans.Rates rates
                        ? new Climb(rates.table(), plan.mass(), schedule, air, winds, plan.track())
                                .between(ground.pressureAltitude(), plan.level())
                        : profile.orElseThrow();
        this.freezingLevels = sounding.freezingLevels();
        this.iceProtection =
                protections.stream()
                        .map(protection -> ProtectionAdvice.along(path, protection))
                        .toList();
        this.cabin =
                plan.cabin()
                        .map(
                                planned ->
                                        new CabinBriefing(
                                                path,
                                                planned.between(path.bottom(), plan.level()),
                                                BriefingEvents.checksAndTop(plan, path, qnh)));
        this.restrictions = Restrictions.along(path, qnh, plan.restrictions());
        this.levelOff =
                plan.levelOff()
                        .filter(planned -> path.top().equals(plan.level()))
                        .map(
                                planned ->
                                        LevelOffPlan.along(
                                                path, path.top(), planned.rule(), planned.lead()));
        this.levelOffsOnTheWay =
                plan.levelOff().map(planned -> levelOffsOnTheWay(path, planned)).orElse(List.of());
        this.cloudTop = plan.cloud().map(cloud -> cloud.along(path));
        this.turbulence =
                plan.turbulence().map(planned -> new TurbulenceBriefing(path, air, winds, planned));
        this.levels = new BriefingEvents(this).levels(schedule);
        this.givenChanges =
                sensitivity().stream()
                        .flatMap(sensitivity -> GIVEN.stream().map(sensitivity::to))
                        .toList();
        this.expectations = new Expectations(this).inOrder();
        this.checkCard = new CheckCard(this).points();
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

    private static AeroplaneClimb fly(
            ClimbPlan plan,
            ClimbMeans.Thrust thrust,
            List<ProtectionPlan> protections,
            SpeedSchedule schedule,
            AltimeterSetting qnh,
            Atmosphere air,
            Winds winds) {
        return new AeroplaneClimb(
                thrust.aeroplane(),
                plan.mass(),
                thrust.programme()
                        .apply(schedule)
                        .withRestrictions(plan.restrictions(), qnh)
                        .withIceProtection(protections),
                ClimbAir.of(air, winds, plan.track()));
    }

    /** A cloud ahead is visible moisture by any rule. */
    private static List<ProtectionPlan> protections(ClimbPlan plan) {
        return plan.cloud().isEmpty()
                ? plan.iceProtection()
                : plan.iceProtection().stream()
                        .map(
                                protection ->
                                        protection.withMoisture(
                                                new CloudMoisture(plan.cloud().get().cloud())))
                        .toList();
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
     * Returns the climb as it was integrated.
     *
     * @return the profile; empty where the plan has a table of rates
     */
    public Optional<ClimbProfile> profile() {
        return profile;
    }

    /**
     * Returns the aeroplane where the climb ends.
     *
     * @return time, distance and mass there
     */
    public ClimbState topOfClimb() {
        return path.at(path.top(), Side.BELOW);
    }

    /**
     * Returns the fuel that the climb has taken by a point of it.
     *
     * @param state a point of this climb
     * @return the fuel from its beginning; empty where the plan has a table of rates, which knows
     *     none
     */
    public Optional<Mass> fuelTo(ClimbState state) {
        return profile.map(
                flown -> Mass.ofKilograms(plan.mass().inKilograms() - state.mass().inKilograms()));
    }

    /**
     * Returns what could go otherwise: 1,000 kg more, air 10 K warmer, 20 kn more on the nose. Each
     * is flown again.
     *
     * @return the differences; empty where the plan has a table of rates
     */
    public List<ClimbDifference> givenChanges() {
        return givenChanges;
    }

    /**
     * Returns what a step of each thing does that the plan chooses, what saves most fuel first.
     * Each is flown again.
     *
     * @return the differences; empty where the plan has a table of rates
     */
    public List<ClimbDifference> chosenChanges() {
        return sensitivity().stream()
                .flatMap(
                        sensitivity ->
                                sensitivity
                                        .whatSavesMostFuel(sensitivity.stepsOfThePlan())
                                        .stream())
                .toList();
    }

    private Optional<ClimbSensitivity> sensitivity() {
        return profile.map(
                flown -> ClimbSensitivity.of(flown.climb(), path.bottom(), plan.level()));
    }

    /**
     * Returns where the excess power goes, at the round levels at which the aeroplane climbs at a
     * held speed with all its thrust.
     *
     * @return the climb at each with what would change it, upwards; empty where the plan has a
     *     table of rates
     */
    public List<ClimbEffects> power() {
        return profile.stream()
                .flatMap(
                        flown ->
                                BriefingEvents.roundLevels(path).stream()
                                        .flatMap(
                                                level ->
                                                        flown
                                                                .effectsAt(level, Side.ABOVE)
                                                                .stream()))
                .toList();
    }

    /**
     * Returns what to expect on the climb and what to do, and by when.
     *
     * @return the items in the order in which they are due, numbered from 1
     */
    public List<Expectation> expectations() {
        return expectations;
    }

    /**
     * Returns what the figures should read at each check: at round 10,000 ft of the altimeter
     * (common practice, no source), over named points, and at the top of the climb.
     *
     * @return the points in the order of the climb
     */
    public List<CheckPoint> checkCard() {
        return checkCard;
    }

    /**
     * Returns how slow and how fast the aeroplane may be along the climb.
     *
     * @return the bands upwards, at each line of {@link #levels}
     */
    public List<SpeedBand> speedBand() {
        return SpeedBand.along(this);
    }

    /**
     * Returns what speaks for turbulence.
     *
     * @return the figures against the thresholds of the plan; empty where it has none
     */
    public Optional<TurbulenceBriefing> turbulence() {
        return turbulence;
    }

    /**
     * Returns what the altimeter shows at a level of this climb.
     *
     * @param altitude pressure altitude
     * @return the altitude on QNH up to the transition altitude, the flight level above
     */
    public Level reading(PressureAltitude altitude) {
        Level onQnh = Level.of(Altimetry.altitudeOnQnh(altitude, qnh));
        Level transition = Level.of(plan.aerodrome().transitionAltitude());
        return onQnh.inFeet() <= transition.inFeet() + BriefingEvents.SAME_READING_FT
                ? onQnh
                : Level.of(altitude);
    }

    /**
     * Returns where what was briefed is from.
     *
     * @return sentences, one for each part of this briefing
     */
    public List<String> sources() {
        List<String> sources = new ArrayList<>(SOURCES);
        for (ProtectionAdvice advice : iceProtection) {
            sources.add(
                    "Icing conditions of the "
                            + BriefingEvents.words(advice.plan().rule().part())
                            + ": "
                            + advice.plan().rule().basis()
                            + ".");
        }
        cabin.ifPresent(
                briefed ->
                        sources.add(
                                "Warning of the cabin: " + briefed.rule().warningBasis() + "."));
        levelOff.ifPresent(
                plan ->
                        sources.add(
                                "Level-off: "
                                        + plan.rule().name()
                                        + ", "
                                        + plan.rule().source()
                                        + "."));
        return List.copyOf(sources);
    }

    /** Points of the programme at which time and fuel are told. */
    List<NamedPoint> namedPoints() {
        return profile.map(flown -> flown.climb().programme().points()).orElse(List.of());
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
     * Returns the cabin at a point of the climb: as it arrives at its level, or while that is held.
     *
     * @param state a point of this climb
     * @return the cabin; empty if the plan has none
     */
    public Optional<CabinState> cabinAt(ClimbState state) {
        boolean isArriving = state.timeS() == path.at(state.pressureAltitude(), Side.BELOW).timeS();
        return cabin.map(CabinBriefing::expected)
                .map(
                        expected ->
                                isArriving
                                        ? expected.at(state.pressureAltitude())
                                        : expected.at(state.time()));
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
     * Returns how each level is captured that is held on the way.
     *
     * @return the plans upwards; none where none was asked for
     */
    public List<LevelOffPlan> levelOffsOnTheWay() {
        return levelOffsOnTheWay;
    }

    private static List<LevelOffPlan> levelOffsOnTheWay(ClimbPath path, PlannedLevelOff planned) {
        return DoubleStream.of(path.heldLevelsM())
                .mapToObj(PressureAltitude::ofMetres)
                .filter(level -> level.compareTo(path.bottom()) > 0)
                .filter(level -> level.compareTo(path.top()) < 0)
                .map(level -> LevelOffPlan.along(path, level, planned.rule(), planned.lead()))
                .toList();
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
        List<String> limits = new ArrayList<>(LIMITS);
        cabin.ifPresent(briefed -> limits.add(OF_CABIN));
        if (cloudTop.isPresent() || !restrictions.outcomes().isEmpty()) {
            limits.add(OF_RESTRICTIONS);
        }
        turbulence.ifPresent(briefed -> limits.add(OF_TURBULENCE));
        limits.add(profile.isPresent() ? BY_THRUST : BY_RATES);
        return List.copyOf(limits);
    }

    /**
     * Returns the briefing for reading.
     *
     * @return a text; may change between versions
     */
    @Override
    public String toString() {
        return "from "
                + plan.aerodrome().name()
                + " to "
                + topOfClimb()
                + "; "
                + expectations().size()
                + " things to expect or do";
    }
}
