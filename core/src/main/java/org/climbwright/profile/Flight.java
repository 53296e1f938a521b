package org.climbwright.profile;

import static org.climbwright.profile.Stepper.AIRSPEED;
import static org.climbwright.profile.Stepper.DISTANCE;
import static org.climbwright.profile.Stepper.MASS;
import static org.climbwright.profile.Stepper.SIZE;

import java.util.List;
import org.climbwright.performance.Aeroplane;
import org.climbwright.performance.Bleed;
import org.climbwright.performance.ClimbAir;
import org.climbwright.profile.Leg.Law;
import org.climbwright.profile.ProfileEvent.Kind;
import org.climbwright.quantity.speed.PressureAltitudeRate;
import org.jspecify.annotations.Nullable;

/**
 * Flies a programme from its bottom to its top, in steps of level that end where anything jumps.
 *
 * <p>What jumps at a level known beforehand ends a step there. What depends on the flight, such as
 * a speed that is reached, is found where a {@link Guard} changes its sign within a step.
 */
final class Flight {
    /** Speeds nearer than this are one. */
    private static final double SAME_SPEED_MPS = 1e-6;

    /** Within a rate that is held there is no level flight to accelerate in. */
    private static final double LEAST_SHARE = 0.1;

    private static final double LEAST_THRUST_N = 1.0;
    private static final double SAME_RATE_MPS = 1e-3;

    private static final int MOST_STEPS = 100_000;
    private static final int MOST_IDLE = 50;
    private static final double LEAST_GAIN_M = 1e-3;
    private static final int MOST_FIRES = 2000;
    private static final String TRACK_LOST =
            "the wind is stronger than the aeroplane can keep its track against";

    private static final String TO_AND_FRO =
            "one limit gives way to another and back without end at this level";

    private final ClimbAir air;
    private final List<Stage> stages;
    private final Stepper stepper;
    private final double leastMps;
    private final double lowMps;
    private final boolean isBleedPlanned;
    private final Motion motion;
    private final Guards guards;
    private final FlownPath path = new FlownPath();
    private final StepLength stepLength;
    private final LevelFlight levelFlight;

    private double[] state = new double[SIZE];
    private double[] next = new double[SIZE];
    private double[] slopes = new double[SIZE];
    private double[] slopesThere = new double[SIZE];

    private int stage;
    private int stretch;
    private double level;
    private boolean isLow;
    private @Nullable Leg lastChange;
    private SpeedMode mode = SpeedMode.FREE;
    private boolean isThrustShort;
    private boolean isSheared;
    private int fires;
    private @Nullable String end;

    /** While speed gives for a rate: it goes where it goes, or is at a bound. */
    private enum SpeedMode {
        FREE,
        FASTEST,
        SLOWEST
    }

    Flight(
            Aeroplane aeroplane,
            ClimbAir air,
            List<Stage> stages,
            Stepper stepper,
            double stepM,
            double leastMps,
            double lowMps,
            boolean isBleedPlanned) {
        this.air = air;
        this.isBleedPlanned = isBleedPlanned;
        this.stages = stages;
        this.stepper = stepper;
        this.leastMps = leastMps;
        this.lowMps = lowMps;
        this.motion = new Motion(aeroplane, air);
        this.guards = new Guards(motion, leastMps, lowMps);
        this.stepLength = new StepLength(motion, stepper, stepM);
        this.levelFlight = new LevelFlight(motion, path);
    }

    FlownPath path() {
        return path;
    }

    /** Flies it all, and returns why it ended. */
    String fly(double bottomM, double topM, double massKg, String whenAtTop) {
        level = bottomM;
        stretch = air.stretch(bottomM, true);
        Leg first = stages.get(0).speed();
        motion.begin(first);
        motion.place(stretch, level);
        state[MASS] = massKg;
        state[AIRSPEED] = motion.tasOf(first.isMach(), first.held());
        boolean isWindKnown = !Double.isNaN(motion.alongMps());
        state[DISTANCE] = isWindKnown ? 0.0 : Double.NaN;
        path.begin(level, massKg, state[AIRSPEED], isWindKnown);
        path.event(Kind.BEGINNING, "the climb begins");
        if (isBleedPlanned && first.use().bleed() != Bleed.NONE) {
            path.event(Kind.BLEED, ProfileTexts.bleed(first.use().bleed()));
        }
        int idle = 0;
        while (end == null) {
            if (level == topM) {
                end = whenAtTop;
            } else {
                double before = level;
                climbOn();
                idle = level > before + LEAST_GAIN_M ? 0 : idle + 1;
                if (idle > MOST_IDLE && end == null) {
                    end = TO_AND_FRO;
                }
            }
        }
        path.event(Kind.TOP, end);
        return end;
    }

    /** Goes nowhere: a climb that is over where it begins. */
    String stay(double bottomM, double massKg, String because) {
        return fly(bottomM, bottomM, massKg, because);
    }

    /** To the next level at which something jumps, or to where a guard ends it. */
    private void climbOn() {
        Stage here = stages.get(stage);
        if (here.isSupersonic()) {
            end = "the speed is above Mach 1 there, where the laws of this climb end";
            return;
        }
        double target = Math.min(here.toM(), air.edgeM(stretch + 1));
        Leg leg = choose(here);
        if (end == null && !(leg.law() == Law.CHANGE_OF_SPEED && leg.share() == 0.0)) {
            climb(leg, here, target);
        }
        if (end != null || level < target) {
            return;
        }
        if (level == air.edgeM(stretch + 1) && stretch + 1 < air.stretches()) {
            stretch++;
            if (air.isBend(stretch)) {
                path.bend();
            }
        }
        if (level == here.toM() && stage + 1 < stages.size()) {
            pass(here, stages.get(stage + 1));
        }
    }

    private void pass(Stage below, Stage above) {
        boolean isHeld = false;
        for (Stage.Stay stay : below.stays()) {
            if (end == null) {
                isHeld |= hold(below.speed(), stay);
            }
        }
        if (isHeld) {
            path.event(Kind.LEVEL_LEFT, "the climb goes on");
        }
        stage++;
        path.bend();
        if (!ProfileTexts.isSameRate(below.rate(), above.rate())) {
            mode = SpeedMode.FREE;
            isThrustShort = false;
        }
        if (end == null) {
            tellChange(below, above);
        }
    }

    private void tellChange(Stage below, Stage above) {
        if (below.speed().isMach() != above.speed().isMach()
                && isSpeedOf(above)
                && !above.isSpeedGiving()) {
            path.event(Kind.CROSSOVER, ProfileTexts.crossover(below.speed(), above.speed()));
        }
        if (!ProfileTexts.isSameRate(below.rate(), above.rate())) {
            path.event(
                    Kind.HELD_RATE,
                    above.rate() == null
                            ? "the rate is no longer held"
                            : ProfileTexts.heldRate(above.rate()));
        }
        if (below.speed().use().bleed() != above.speed().use().bleed()) {
            path.event(Kind.BLEED, ProfileTexts.bleed(above.speed().use().bleed()));
        }
    }

    private boolean isSpeedOf(Stage there) {
        motion.place(stretch, level);
        double wanted = motion.tasOf(there.speed().isMach(), there.speed().held());
        return Math.abs(state[AIRSPEED] - wanted) <= SAME_SPEED_MPS;
    }

    /** How it goes on from here. */
    private Leg choose(Stage here) {
        if (here.isSpeedGiving()) {
            Leg beyond = beyondItsBounds(here);
            if (beyond != null) {
                return beyond;
            }
            lastChange = null;
            return switch (mode) {
                case FREE -> nonNull(here.rate());
                case FASTEST -> nonNull(here.fastest());
                case SLOWEST -> nonNull(here.slowest());
            };
        }
        motion.place(stretch, level);
        double wanted = motion.tasOf(here.speed().isMach(), here.speed().held());
        double missing = wanted - state[AIRSPEED];
        if (Math.abs(missing) > SAME_SPEED_MPS) {
            Leg change = missing > 0.0 ? here.faster() : here.slower();
            beginChange(change, missing > 0.0);
            if (change.share() == 0.0) {
                end = levelFlight.accelerate(change, stretch, level, state, wanted);
            }
            return change;
        }
        state[AIRSPEED] = wanted;
        if (lastChange != null) {
            path.event(Kind.SPEED_REACHED, ProfileTexts.speedReached(here.speed()));
            lastChange = null;
        }
        return here.rate() != null && !isThrustShort ? here.rate() : here.speed();
    }

    /** A speed that is to give begins within its bounds: outside, it is changed to them first. */
    private @Nullable Leg beyondItsBounds(Stage here) {
        motion.place(stretch, level);
        Leg most = nonNull(here.fastest());
        Leg least = nonNull(here.slowest());
        double tas = state[AIRSPEED];
        Leg change = null;
        if (tas > motion.tasOf(most.isMach(), most.held()) + SAME_SPEED_MPS) {
            change = most.by(Law.CHANGE_OF_SPEED, here.slower().share(), Double.NaN);
        } else if (tas < motion.tasOf(least.isMach(), least.held()) - SAME_SPEED_MPS) {
            change =
                    least.by(
                            Law.CHANGE_OF_SPEED,
                            Math.max(LEAST_SHARE, here.faster().share()),
                            Double.NaN);
        }
        if (change != null) {
            beginChange(change, change.share() < 1.0);
        }
        return change;
    }

    /** One change to one speed is told once, however many legs it takes. */
    private void beginChange(Leg change, boolean isFaster) {
        if (lastChange == null || lastChange.held() != change.held()) {
            path.event(Kind.CHANGE_OF_SPEED, ProfileTexts.changeOfSpeed(change, isFaster));
        }
        lastChange = change;
    }

    private static Leg nonNull(@Nullable Leg leg) {
        if (leg == null) {
            throw new IllegalStateException("a stage without the leg that it is flown by");
        }
        return leg;
    }

    private void climb(Leg chosen, Stage here, double target) {
        motion.begin(chosen);
        evaluate(state, level, slopes);
        Leg leg = withShear(chosen);
        if (!begins(leg, here)) {
            return;
        }
        guards.begin(leg, here, state[AIRSPEED], isLow);
        while (level < target) {
            double rate = motion.rateMps();
            double to = stepLength.levelAfter(level, leg, target);
            stepTo(to);
            while (stepLength.isTooLong(rate, to - level, slopesThere)) {
                to = level + 0.5 * (to - level);
                stepTo(to);
            }
            double way = guards.unseenIn(to - level, state, slopes, slopesThere);
            if (way < to - level) {
                to = level + way;
                stepTo(to);
            }
            if (guards.fire(next)) {
                to = guards.firstIn(this, level, to);
                Guard fired = guards.nearest(next);
                commit(leg, to);
                act(fired, leg, here);
                if (++fires > MOST_FIRES) {
                    end = TO_AND_FRO;
                }
                return;
            }
            commit(leg, to);
            guards.passOn();
            if (motion.isTrackLost()) {
                end = TRACK_LOST;
                return;
            }
            if (!(state[MASS] > 0.0)) {
                end = "the fuel burnt is more than the mass";
                return;
            }
            isLow = isLowNow();
            if (path.steps() > MOST_STEPS) {
                end = TO_AND_FRO;
                return;
            }
        }
    }

    /** Where the wind changes too fast to hold the airspeed, that gives, at the rate without it. */
    private Leg withShear(Leg chosen) {
        boolean isSpeedKept = chosen.law() == Law.SPEED || chosen.law() == Law.CHANGE_OF_SPEED;
        if (chosen.law() == Law.RATE_BY_THRUST && motion.thrustN() < LEAST_THRUST_N) {
            return withoutThrust(chosen);
        }
        if (!isSpeedKept || mode != SpeedMode.FREE || !motion.isShearTooStrong()) {
            isSheared = false;
            return chosen;
        }
        double rate = motion.rateInSteadyWind(state[MASS]);
        if (!(rate > leastMps)) {
            return chosen;
        }
        if (!isSheared) {
            path.event(Kind.NOT_KEPT, "the wind changes too fast upwards: the airspeed gives");
        }
        isSheared = true;
        lastChange = null;
        Leg leg = chosen.by(Law.RATE_BY_SPEED, 1.0, rate);
        motion.begin(leg);
        evaluate(state, level, slopes);
        return leg;
    }

    /** A rate held takes no less than no thrust: with hardly any, the airspeed gives. */
    private Leg withoutThrust(Leg chosen) {
        if (!isSheared) {
            path.event(Kind.NOT_KEPT, "the rate takes no thrust any more: the airspeed gives");
        }
        isSheared = true;
        lastChange = null;
        Leg leg = chosen.by(Law.RATE_BY_SPEED, 1.0, chosen.rateMps()).throttledBack();
        motion.begin(leg);
        evaluate(state, level, slopes);
        return leg;
    }

    /** Takes a step that may be kept, to where a guard is sought. */
    double[] stepTo(double toM) {
        stepper.step(motion, stretch, level, toM, state, slopes, next);
        evaluate(next, toM, slopesThere);
        return next;
    }

    private void evaluate(double[] at, double levelM, double[] found) {
        motion.at(stretch, levelM, at[MASS], at[AIRSPEED]);
        if (motion.isSpeedHeld()) {
            at[AIRSPEED] = motion.tasMps();
        }
        Stepper.slopes(motion, found);
    }

    private void commit(Leg leg, double to) {
        if (to > level) {
            path.add(stretch, leg, to, next, slopes, slopesThere);
        }
        level = to;
        double[] swap = state;
        state = next;
        next = swap;
        swap = slopes;
        slopes = slopesThere;
        slopesThere = swap;
    }

    /** Whether a leg can begin; says why not, or what its beginning means. */
    private boolean begins(Leg leg, Stage here) {
        motion.requireLaws(state[MASS]);
        if (motion.isTrackLost()) {
            end = TRACK_LOST;
            return false;
        }
        boolean isRateHeld = leg.law() == Law.RATE_BY_THRUST || leg.law() == Law.RATE_BY_SPEED;
        if (!isRateHeld && !(motion.fullRateMps() > leastMps)) {
            endAtCeiling();
            return false;
        }
        if (leg.law() == Law.RATE_BY_THRUST && motion.thrustInHandN() < 0.0) {
            if (here.isSpeedGiving()) {
                // at its fastest, and it slows down again
                mode = SpeedMode.FREE;
            } else {
                isThrustShort = true;
                path.event(Kind.NOT_KEPT, "thrust is not enough for the rate, which is less");
            }
            return false;
        }
        if (leg.law() == Law.SPEED
                && here.rate() != null
                && motion.rateMps() > here.rate().rateMps() + SAME_RATE_MPS) {
            holdRateAgain(here); // from a jump, as at a crossover
            return false;
        }
        boolean low = isLowNow();
        if (low && !isLow) {
            path.event(Kind.LOW_RATE, ProfileTexts.lowRate(lowMps));
        }
        isLow = low;
        return true;
    }

    private void holdRateAgain(Stage here) {
        isThrustShort = false;
        mode = SpeedMode.FREE;
        path.event(Kind.HELD_RATE, ProfileTexts.heldRate(nonNull(here.rate())));
    }

    /** Once low, a rate must be told apart from the one to be reported to be it no longer. */
    private boolean isLowNow() {
        return motion.rateMps() < (isLow ? lowMps + SAME_RATE_MPS : lowMps);
    }

    private void endAtCeiling() {
        if (Double.isNaN(motion.fullRateMps())) {
            end =
                    motion.isShearTooStrong()
                            ? "no balance: the wind changes too fast upwards to hold this speed"
                            : "no balance: thrust is too much for a climb at any angle";
            return;
        }
        end =
                "ceiling reached, the rate is no more than "
                        + PressureAltitudeRate.ofMetresPerSecond(leastMps).text();
    }

    private void act(Guard fired, Leg leg, Stage here) {
        path.bend();
        switch (fired) {
            case NONE -> {}
            case BEND -> guards.passBend();
            case LEAST_RATE -> endAtCeiling();
            case LOW_RATE -> {
                isLow = true;
                path.event(Kind.LOW_RATE, ProfileTexts.lowRate(lowMps));
            }
            case THRUST_GONE -> {}
            case SPEED_REACHED -> state[AIRSPEED] = motion.tasOf(leg.isMach(), leg.held());
            case THRUST_SHORT -> {
                if (here.isSpeedGiving()) {
                    mode = SpeedMode.FREE;
                } else {
                    isThrustShort = true;
                    path.event(Kind.NOT_KEPT, "thrust is not enough for the rate, which is less");
                }
            }
            case RATE_AGAIN -> holdRateAgain(here);
            case FASTEST -> {
                mode = SpeedMode.FASTEST;
                path.event(
                        Kind.NOT_KEPT,
                        "maximum operating "
                                + (nonNull(here.fastest()).isMach() ? "Mach number" : "speed")
                                + ": thrust is reduced from here");
            }
            case SLOWEST -> {
                mode = SpeedMode.SLOWEST;
                path.event(Kind.NOT_KEPT, "minimum speed: the rate is less from here");
            }
        }
    }

    /** Returns whether the level was held at all. */
    private boolean hold(Leg leg, Stage.Stay stay) {
        int stretchBelow = air.stretch(level, false);
        motion.begin(leg);
        motion.atLevel(stretchBelow, level, state[MASS], state[AIRSPEED], false);
        if (motion.thrustInHandN() < 0.0) {
            end = "thrust does not hold the level";
            return false;
        }
        double speed = motion.surfaceSpeedMps();
        double seconds = stay.seconds();
        if (Double.isNaN(seconds)) {
            double way = stay.untilM() - state[DISTANCE];
            if (Double.isNaN(way * speed)) {
                path.event(Kind.NOT_KEPT, "not kept, no distance without a wind: " + stay.text());
                return false;
            }
            seconds = way / speed;
        }
        if (!(seconds > 0.0)) {
            return false;
        }
        path.event(Kind.LEVEL_HELD, stay.text());
        levelFlight.hold(leg, stretchBelow, level, state, seconds);
        if (!Double.isNaN(stay.untilM())) {
            // what rounding leaves of the distance until which it was held
            path.meetDistance(stay.untilM());
            state[DISTANCE] = stay.untilM();
        }
        path.bend();
        return true;
    }
}
