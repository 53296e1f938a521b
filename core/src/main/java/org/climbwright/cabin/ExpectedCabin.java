package org.climbwright.cabin;

import java.io.Serializable;
import java.time.Duration;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import org.climbwright.path.ClimbPath;
import org.climbwright.quantity.ModelRange;
import org.climbwright.quantity.altitude.CabinAltitude;
import org.climbwright.quantity.altitude.PressureAltitude;
import org.climbwright.quantity.pressure.DifferentialPressure;
import org.climbwright.quantity.speed.CabinAltitudeRate;

/**
 * The cabin along a climb, as a plan leads one to expect it: on its way to what the plan wants, no
 * faster than the rate limits, within the differential, never above the aeroplane.
 *
 * <pre>{@code
 * ExpectedCabin expected = ExpectedCabin.along(path, plan);
 * expected.at(PressureAltitude.ofFlightLevel(200))   // altitude, rate, differential, what binds
 * expected.gaveWay()                                 // where one limit was kept and another not
 * expected.settled().time()                          // when the cabin is where it is wanted
 * }</pre>
 *
 * <p>A climb can be too fast for both limits: then {@link CabinPlan#precedence()} says which is
 * kept, and the other gives way. With the rate first the differential passes the scheduled one, up
 * to the relief setting: there the relief valve opens and the rate gives way too. After the climb
 * the aeroplane is taken to stay at its top, and so from the beginning if the climb is of no
 * length. While it holds a level on the way, the cabin goes on to where it is wanted there.
 *
 * <p>Limits of use: what a controller without lag or fault does, for study and simulation; nothing
 * in it knows of valve, inflow or leak. Checklists and memory items are the operator's; the flight
 * manual, the operator's procedures, local regulations and licensed practice decide.
 */
public final class ExpectedCabin implements Serializable {
    private static final long serialVersionUID = 1L;

    /** Steps of level; a test measures what halving them changes. */
    static final double STEP_M = 5.0;

    /** A climb that begins higher above the field does not begin there. */
    private static final double NEAR_THE_FIELD_M = 304.8;

    /** Metres, or pascals, that count as none. */
    private static final double ROUNDING = 1e-5;

    private final CabinPlan plan;
    private final double[] levelsM;
    private final double[] timesS;
    private final double[] cabinM;

    private ExpectedCabin(CabinPlan plan, double[] levelsM, double[] timesS, double[] cabinM) {
        this.plan = plan;
        this.levelsM = levelsM;
        this.timesS = timesS;
        this.cabinM = cabinM;
    }

    /**
     * A stretch on which a limit was not kept, because another was.
     *
     * @param limit what gave way: the rate limit or the scheduled differential
     * @param kept what was kept: the scheduled differential, the relief setting (its valve is open)
     *     or the rate limit
     * @param from the cabin where it begins
     * @param to the cabin where it ends, perhaps in level flight after the climb
     * @param worst the cabin where the limit is passed by most
     * @param inWords the figures against the limit; may change between versions
     */
    public record GaveWay(
            CabinState.BoundBy limit,
            CabinState.BoundBy kept,
            CabinState from,
            CabinState to,
            CabinState worst,
            String inWords)
            implements Serializable {}

    /**
     * Returns the cabin along a climb that begins with the cabin as it is on the ground.
     *
     * <p>A climb that begins more than 1,000 ft above the departure field, such as one from cruise
     * to cruise, begins with the cabin settled where the plan wants it at that level: what happened
     * before is not known here.
     *
     * @param path the climb
     * @param plan the plan, whose schedule reaches from the climb's bottom to its top
     * @return the cabin
     * @throws org.climbwright.quantity.OutsideModelException if the schedule does not reach there
     * @throws IllegalArgumentException if the times of the climb do not rise with its level
     * @accuracy 0.01 ft of cabin altitude; 0.0022 ft was the largest difference to steps a tenth as
     *     long, in 250 random plans with climbs that begin at 300 to 6,000 ft/min. Rates are means
     *     over a step of at most 5 m of level
     * @source see {@link CabinPlan}
     */
    public static ExpectedCabin along(ClimbPath path, CabinPlan plan) {
        double bottom = path.bottom().inMetres();
        double ground = Math.min(plan.departure().inMetres(), bottom);
        double start =
                bottom - ground <= NEAR_THE_FIELD_M
                        ? CabinPressure.cabinAltitude(plan.prePressurisation().inPascals(), ground)
                        : plan.targetM(bottom);
        return along(path, plan, CabinAltitude.ofMetres(start), STEP_M);
    }

    /**
     * Returns the cabin along a climb that begins with a cabin altitude that is known.
     *
     * @param path the climb
     * @param plan the plan, whose schedule reaches from the climb's bottom to its top
     * @param atBottom the cabin where the climb begins; if above the aeroplane or beyond the
     *     differential, it begins at that bound
     * @return the cabin
     * @throws org.climbwright.quantity.OutsideModelException if the schedule does not reach there
     * @throws IllegalArgumentException if the times of the climb do not rise with its level
     * @accuracy see {@link #along(ClimbPath, CabinPlan)}
     */
    public static ExpectedCabin along(ClimbPath path, CabinPlan plan, CabinAltitude atBottom) {
        return along(path, plan, atBottom, STEP_M);
    }

    static ExpectedCabin along(
            ClimbPath path, CabinPlan plan, CabinAltitude atBottom, double stepM) {
        CabinSteps steps = new CabinSteps(path, plan, atBottom.inMetres(), stepM);
        return new ExpectedCabin(plan, steps.levelsM(), steps.timesS(), steps.cabinM());
    }

    /**
     * Returns the plan that the cabin follows.
     *
     * @return the plan
     */
    public CabinPlan plan() {
        return plan;
    }

    /**
     * Returns where the climb begins.
     *
     * @return pressure altitude
     */
    public PressureAltitude bottom() {
        return PressureAltitude.ofMetres(levelsM[0]);
    }

    /**
     * Returns where the climb ends.
     *
     * @return pressure altitude
     */
    public PressureAltitude top() {
        return PressureAltitude.ofMetres(levelsM[last()]);
    }

    /**
     * Returns the cabin as the aeroplane climbs through a level.
     *
     * @param aeroplane pressure altitude from the bottom of the climb to its top
     * @return the cabin; at a bend and at a level that is held as it leaves it upwards, at the top
     *     as it arrives there
     * @throws org.climbwright.quantity.OutsideModelException if the level is not on the climb
     * @accuracy see {@link #along(ClimbPath, CabinPlan)}
     */
    public CabinState at(PressureAltitude aeroplane) {
        double level =
                new ModelRange(
                                "pressure altitude",
                                levelsM[0],
                                levelsM[last()],
                                "m",
                                "the climb is in between")
                        .check(aeroplane.inMetres());
        int node = level == levelsM[last()] ? firstAt(level) : lastAt(level);
        return node < 0 ? between(-node - 2, level) : node(node);
    }

    private CabinState between(int i, double level) {
        double share = (level - levelsM[i]) / (levelsM[i + 1] - levelsM[i]);
        return climbing(i, level, timesS[i] + share * (timesS[i + 1] - timesS[i]));
    }

    /** The cabin as the aeroplane arrives at a level on the climb from below. */
    CabinState arrivingAt(double level) {
        int node = firstAt(level);
        return node < 0 ? between(-node - 2, level) : node(node);
    }

    /** The level held nearest to another; that one itself where none is within a distance. */
    double heldNear(double level, double withinM) {
        double nearest = Double.NaN;
        for (int i = 0; i < last(); i++) {
            double away = Math.abs(levelsM[i] - level);
            boolean isHeld = levelsM[i] == levelsM[i + 1];
            if (isHeld && away <= withinM && !(away >= Math.abs(nearest - level))) {
                nearest = levelsM[i];
            }
        }
        return Double.isNaN(nearest) ? level : nearest;
    }

    /** The node as a level is reached; where there is none as a search of arrays has it. */
    private int firstAt(double level) {
        int node = Arrays.binarySearch(levelsM, level);
        while (node > 0 && levelsM[node - 1] == level) {
            node--;
        }
        return node;
    }

    /** The node as a level is left. */
    private int lastAt(double level) {
        int node = Arrays.binarySearch(levelsM, level);
        while (node >= 0 && node < last() && levelsM[node + 1] == level) {
            node++;
        }
        return node;
    }

    /**
     * Returns the cabin at a time.
     *
     * @param time time since the climb began, 0 or more; after the climb the aeroplane is at its
     *     top
     * @return the cabin
     * @throws org.climbwright.quantity.OutsideModelException if the time is before the climb
     * @accuracy see {@link #along(ClimbPath, CabinPlan)}
     */
    public CabinState at(Duration time) {
        double seconds = time.getSeconds() + time.getNano() / 1e9;
        new ModelRange("time of the climb", timesS[0], 1e9, "s", "the climb begins there")
                .check(seconds);
        if (seconds > timesS[last()] || last() == 0) {
            return level(seconds);
        }
        int i = stepOfTime(seconds);
        double share = (seconds - timesS[i]) / (timesS[i + 1] - timesS[i]);
        return climbing(i, levelsM[i] + share * (levelsM[i + 1] - levelsM[i]), seconds);
    }

    /**
     * Returns the cabin when it is where the plan wants it and stays there.
     *
     * @return the cabin at the end of the climb, or later in level flight after it
     * @accuracy 0.01 s, beside that of the cabin altitude
     */
    public CabinState settled() {
        double climb = timesS[last()];
        double way = plan.targetM(levelsM[last()]) - cabinM[last()];
        return Math.abs(way) <= ROUNDING ? node(last()) : level(climb + way / limitMps(way));
    }

    /**
     * Returns where one limit was kept and another gave way.
     *
     * @return the stretches by the level where they begin; empty where all limits were kept
     * @accuracy to a step of 5 m of level
     */
    public List<GaveWay> gaveWay() {
        return new GivenWay(this).spans();
    }

    /** The limit of rate on the way up or down, with the sign of the way. */
    private double limitMps(double way) {
        return way > 0.0
                ? plan.rates().up().inMetresPerSecond()
                : -plan.rates().down().inMetresPerSecond();
    }

    private CabinState climbing(int i, double level, double seconds) {
        double cabin = plan.nextM(cabinM[i], seconds - timesS[i], level);
        return state(seconds, level, cabin, rateMps(i));
    }

    /** After the climb; the cabin goes on to where it is wanted at its limit of rate. */
    private CabinState level(double seconds) {
        double level = levelsM[last()];
        double cabin = plan.nextM(cabinM[last()], seconds - timesS[last()], level);
        double way = plan.targetM(level) - cabin;
        double rate = Math.abs(way) <= ROUNDING ? 0.0 : limitMps(way);
        return state(seconds, level, cabin, rate);
    }

    private CabinState state(double seconds, double level, double cabin, double rateMps) {
        double differential = CabinPressure.differential(cabin, level);
        return new CabinState(
                Duration.ofNanos(Math.round(seconds * 1e9)),
                PressureAltitude.ofMetres(level),
                CabinAltitude.ofMetres(cabin),
                CabinAltitudeRate.ofMetresPerSecond(rateMps),
                DifferentialPressure.ofPascals(differential),
                boundBy(cabin, differential, level));
    }

    private CabinState.BoundBy boundBy(double cabin, double differential, double level) {
        boolean isRateFirst = plan.precedence() == CabinPlan.Precedence.RATE_FIRST;
        if (differential >= plan.mostPa() - ROUNDING) {
            return isRateFirst
                    ? CabinState.BoundBy.RELIEF_SETTING
                    : CabinState.BoundBy.SCHEDULED_DIFFERENTIAL;
        }
        return Math.abs(plan.targetM(level) - cabin) > ROUNDING
                ? CabinState.BoundBy.RATE_LIMIT
                : plan.boundBy(level);
    }

    /** The step that a time lies in: the lower end counts to it, and the last has both. */
    private int stepOfTime(double seconds) {
        int found = Arrays.binarySearch(timesS, seconds);
        int step = found >= 0 ? found : -found - 2;
        return Math.min(step, last() - 1);
    }

    /** The highest cabin altitude on the climb and after it [m]. */
    double highestM() {
        double settled = plan.targetM(levelsM[last()]);
        return Math.max(settled, Arrays.stream(cabinM).max().orElse(settled));
    }

    int last() {
        return levelsM.length - 1;
    }

    /** Mean rate over a step [m/s]. */
    double rateMps(int i) {
        return (cabinM[i + 1] - cabinM[i]) / (timesS[i + 1] - timesS[i]);
    }

    /** The cabin at the beginning of a step, or at the end of the climb. */
    CabinState node(int i) {
        return last() == 0
                ? level(timesS[0])
                : climbing(Math.min(i, last() - 1), levelsM[i], timesS[i]);
    }

    double differentialPa(int i) {
        return CabinPressure.differential(cabinM[i], levelsM[i]);
    }

    /** The cabin in level flight, when its differential has come down to the scheduled one. */
    CabinState whenAtTheScheduledDifferential() {
        double allowed =
                CabinPressure.cabinAltitude(plan.limits().scheduled().inPascals(), levelsM[last()]);
        double way = allowed - cabinM[last()];
        return way > 0.0 ? level(timesS[last()] + way / limitMps(way)) : node(last());
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof ExpectedCabin that
                && plan.equals(that.plan)
                && Arrays.equals(levelsM, that.levelsM)
                && Arrays.equals(timesS, that.timesS)
                && Arrays.equals(cabinM, that.cabinM);
    }

    @Override
    public int hashCode() {
        return Objects.hash(plan, Arrays.hashCode(levelsM), Arrays.hashCode(cabinM));
    }

    /**
     * Returns the cabin for reading.
     *
     * @return a text; may change between versions
     */
    @Override
    public String toString() {
        return String.format(
                Locale.ROOT,
                "%s, %s at the top of %s",
                plan.schedule().inWords(),
                InFeet.of(cabinM[last()]),
                InFeet.of(levelsM[last()]));
    }
}
