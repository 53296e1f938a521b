package org.climbwright.profile;

import java.time.Duration;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.climbwright.airspeed.AirspeedConversion;
import org.climbwright.path.ClimbPath;
import org.climbwright.path.ClimbState;
import org.climbwright.path.Side;
import org.climbwright.performance.ClimbAir;
import org.climbwright.performance.ClimbConditions;
import org.climbwright.performance.ClimbEffects;
import org.climbwright.performance.ClimbPoint;
import org.climbwright.performance.ClimbSpeed;
import org.climbwright.quantity.ModelRange;
import org.climbwright.quantity.altitude.PressureAltitude;
import org.climbwright.quantity.path.GroundDistance;
import org.climbwright.quantity.path.Mass;
import org.climbwright.quantity.speed.CalibratedAirspeed;
import org.climbwright.quantity.speed.Mach;

/**
 * A climb by thrust and drag: a path to be asked at any level, time or distance, and what happens
 * on it.
 *
 * <p>Where a level is held, or the aeroplane accelerates in level flight, time and distance jump at
 * that level from its lower {@link Side} to its upper one; a time or a distance in between has the
 * aeroplane there.
 *
 * <p>Limits of use: see {@link AeroplaneClimb}.
 */
public final class ClimbProfile implements ClimbPath {
    private static final double ROUNDING_S = 1e-9;

    private final AeroplaneClimb climb;
    private final FlownPath flown;
    private final PressureAltitude level;
    private final String end;
    private final ModelRange range;

    ClimbProfile(AeroplaneClimb climb, FlownPath flown, PressureAltitude level, String end) {
        this.climb = climb;
        this.flown = flown;
        this.level = level;
        this.end = end;
        this.range =
                new ModelRange(
                        "pressure altitude",
                        flown.levelM(0),
                        flown.levelM(flown.steps()),
                        "m",
                        "the climb is in between");
    }

    /**
     * Returns what was flown.
     *
     * @return aeroplane, mass, programme and air
     */
    public AeroplaneClimb climb() {
        return climb;
    }

    @Override
    public PressureAltitude bottom() {
        return PressureAltitude.ofMetres(range.lowest());
    }

    @Override
    public PressureAltitude top() {
        return PressureAltitude.ofMetres(range.highest());
    }

    @Override
    public String endsBecause() {
        return end;
    }

    @Override
    public boolean reachesItsLevel() {
        return top().equals(level);
    }

    @Override
    public double[] bendsM() {
        return flown.bendsM();
    }

    @Override
    public double[] heldLevelsM() {
        return flown.heldLevelsM();
    }

    /**
     * Returns how long the climb takes.
     *
     * @return time to its top [s]
     */
    public double timeS() {
        return flown.timeS(flown.steps());
    }

    /**
     * Returns the fuel that the climb takes.
     *
     * @return mass of the fuel to its top
     */
    public Mass fuel() {
        return Mass.ofKilograms(flown.massKg(0) - flown.massKg(flown.steps()));
    }

    @Override
    public ClimbState at(PressureAltitude altitude, Side side) {
        double levelM = range.check(altitude.inMetres());
        int last = flown.steps();
        if (side == Side.ABOVE
                && levelM == range.highest()
                && last > 0
                && flown.isLevel(last - 1)) {
            // it ended while the level was held, or could not be left
            return level(last - 1, flown.timeS(last));
        }
        int step = flown.stepAt(levelM, side == Side.ABOVE);
        if (step < 0) {
            return standing(levelM, side == Side.ABOVE ? flown.steps() : 0);
        }
        return climbing(step, levelM);
    }

    @Override
    public ClimbState at(Duration time) {
        double seconds = time.getSeconds() + time.getNano() / 1e9;
        double most = timeS();
        new ModelRange("time of the climb", 0.0, most + ROUNDING_S, "s", "the climb is over")
                .check(seconds);
        if (flown.steps() == 0) {
            return standing(range.lowest(), 0);
        }
        double wanted = Math.min(most, seconds);
        int step = flown.stepOfTime(wanted);
        return flown.isLevel(step)
                ? level(step, wanted)
                : climbing(step, flown.levelOfTime(step, wanted));
    }

    @Override
    public ClimbState at(GroundDistance distance) {
        double most = flown.distanceM(flown.steps());
        if (Double.isNaN(most)) {
            throw new IllegalStateException(
                    "the climb has no distances: the wind is not known all the way");
        }
        double wanted =
                new ModelRange("distance of the climb", 0.0, most, "m", "the climb is over")
                        .check(distance.inMetres());
        if (flown.steps() == 0) {
            return standing(range.lowest(), 0);
        }
        int step = flown.stepOfDistance(wanted);
        return flown.isLevel(step)
                ? level(step, flown.timeOfDistance(step, wanted))
                : climbing(step, flown.levelOfDistance(step, wanted));
    }

    /**
     * Returns the forces at a level: where the excess power goes.
     *
     * @param level pressure altitude from bottom to top
     * @param side from which side, where the climb jumps at that level
     * @return the point; empty where the speed is not held, or thrust is reduced to hold a rate
     * @throws org.climbwright.quantity.OutsideModelException if the level is not on the climb
     */
    public Optional<ClimbPoint> pointAt(PressureAltitude level, Side side) {
        return effectsAt(level, side).map(ClimbEffects::asItIs);
    }

    /**
     * Returns what would change the climb at a level, and by how much.
     *
     * @param level pressure altitude from bottom to top
     * @param side from which side, where the climb jumps at that level
     * @return the effects; empty where the speed is not held, or thrust is reduced to hold a rate
     * @throws org.climbwright.quantity.OutsideModelException if the level is not on the climb
     */
    public Optional<ClimbEffects> effectsAt(PressureAltitude level, Side side) {
        double levelM = range.check(level.inMetres());
        int step = flown.stepAt(levelM, side == Side.ABOVE);
        if (step < 0 || flown.leg(step).law() != Leg.Law.SPEED) {
            return Optional.empty();
        }
        Leg leg = flown.leg(step);
        ClimbSpeed speed =
                leg.isMach()
                        ? ClimbSpeed.constant(Mach.of(leg.held()))
                        : ClimbSpeed.constant(CalibratedAirspeed.ofMetresPerSecond(leg.held()));
        return Optional.of(
                ClimbEffects.of(
                        ClimbConditions.of(
                                        climb.aeroplane(),
                                        climb.air(),
                                        Mass.ofKilograms(flown.massIn(step, levelM)))
                                .withUse(leg.use())
                                .withReducedThrust(leg.reduced()),
                        level,
                        side,
                        speed));
    }

    /**
     * Returns what happens on the climb.
     *
     * @return the events, in the order in which they happen
     */
    public List<ProfileEvent> events() {
        return new ProfileEvents(this, flown).events();
    }

    ClimbState arriving(int node) {
        int step = node - 1;
        if (step < 0) {
            return leaving(node);
        }
        return flown.isLevel(step)
                ? level(step, flown.timeS(node))
                : climbing(step, flown.levelM(node));
    }

    ClimbState leaving(int node) {
        if (flown.steps() == 0) {
            return standing(flown.levelM(node), node);
        }
        if (node == flown.steps()) {
            return arriving(node);
        }
        return flown.isLevel(node)
                ? level(node, flown.timeS(node))
                : climbing(node, flown.levelM(node));
    }

    private ClimbState climbing(int step, double levelM) {
        Leg leg = flown.leg(step);
        Motion motion = new Motion(climb.aeroplane(), climb.air());
        motion.begin(leg);
        double mass = flown.massIn(step, levelM);
        motion.at(flown.stretch(step), levelM, mass, flown.tasIn(step, levelM));
        return state(motion, leg, mass, flown.timeIn(step, levelM), flown.distanceIn(step, levelM));
    }

    private ClimbState level(int step, double timeS) {
        Leg leg = flown.leg(step);
        Motion motion = new Motion(climb.aeroplane(), climb.air());
        motion.begin(leg);
        double mass = flown.massIn(step, timeS);
        double levelM = flown.levelM(step);
        boolean isFull = leg.law() == Leg.Law.CHANGE_OF_SPEED;
        motion.atLevel(flown.stretch(step), levelM, mass, flown.tasIn(step, timeS), isFull);
        return state(motion, leg, mass, timeS, flown.distanceIn(step, timeS));
    }

    /** Of a climb that never left its bottom. */
    private ClimbState standing(double levelM, int node) {
        ClimbAir air = climb.air();
        Motion motion = new Motion(climb.aeroplane(), air);
        motion.begin(Leg.NONE);
        motion.atLevel(
                air.stretch(levelM, true), levelM, flown.massKg(node), flown.tasMps(node), false);
        return state(
                motion, Leg.NONE, flown.massKg(node), flown.timeS(node), flown.distanceM(node));
    }

    private ClimbState state(
            Motion motion, Leg leg, double massKg, double timeS, double distanceM) {
        PressureAltitude altitude = PressureAltitude.ofMetres(motion.levelM());
        boolean isCasHeld = leg.isSpeedHeld() && !leg.isMach() && motion.rateMps() > 0.0;
        return ClimbState.ofSi(
                climb.air().air().at(altitude),
                motion.levelM(),
                isCasHeld
                        ? leg.held()
                        : AirspeedConversion.casFromMach(motion.mach(), motion.pressurePa()),
                motion.mach(),
                motion.rateMps(),
                massKg,
                motion.alongMps(),
                motion.acrossMps(),
                timeS,
                distanceM);
    }

    /**
     * Returns the climb for reading.
     *
     * @return a text; may change between versions
     */
    @Override
    public String toString() {
        return String.format(
                Locale.ROOT,
                "%.0f to %.0f ft in %.1f s with %.1f kg of fuel: %s",
                bottom().inFeet(),
                top().inFeet(),
                timeS(),
                fuel().inKilograms(),
                end);
    }
}
