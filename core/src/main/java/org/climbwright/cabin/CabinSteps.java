package org.climbwright.cabin;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import java.util.stream.DoubleStream;
import org.climbwright.path.ClimbPath;
import org.climbwright.path.Side;
import org.climbwright.quantity.altitude.PressureAltitude;

/**
 * A climb in steps of level, none across a bend of the climb, of the schedule or of the target, and
 * how a cabin follows its plan over one of them. A level that the climb holds is a step in time.
 */
final class CabinSteps {
    /** Nearer levels are one: the rate between them would be rounding. */
    private static final double NEAREST_M = 1e-3;

    /** A shorter hold is none, for the same reason. */
    private static final double SHORTEST_S = 1e-6;

    private final ClimbPath path;
    private final CabinPlan plan;
    private final DoubleStream.Builder levels = DoubleStream.builder();
    private final DoubleStream.Builder times = DoubleStream.builder();
    private final DoubleStream.Builder cabins = DoubleStream.builder();
    private double levelM;
    private double timeS;
    private double cabinM;

    CabinSteps(ClimbPath path, CabinPlan plan, double startM, double stepM) {
        this.path = path;
        this.plan = plan;
        follow(startM, levelsM(path, plan, stepM));
    }

    private static double[] levelsM(ClimbPath path, CabinPlan plan, double stepM) {
        double bottom = path.bottom().inMetres();
        double top = path.top().inMetres();
        double[] bends =
                DoubleStream.concat(
                                DoubleStream.of(path.bendsM()),
                                DoubleStream.of(plan.schedule().bendsM()))
                        .filter(level -> level > bottom && level < top)
                        .sorted()
                        .toArray();
        // a held level is a level of its own, however near to another
        TreeSet<Double> ends = new TreeSet<>(List.of(bottom, top));
        DoubleStream.of(path.heldLevelsM()).forEach(ends::add);
        for (double bend : bends) {
            if (ends.subSet(bend - NEAREST_M, true, bend + NEAREST_M, true).isEmpty()) {
                ends.add(bend);
            }
        }
        List<Double> levels = new ArrayList<>();
        levels.add(bottom);
        double from = bottom;
        for (double end : ends) {
            divide(levels, from, end, stepM, plan);
            from = end;
        }
        return levels.stream().mapToDouble(Double::doubleValue).toArray();
    }

    private static void divide(
            List<Double> levels, double from, double to, double stepM, CabinPlan plan) {
        int parts = (int) Math.ceil((to - from) / stepM);
        double before = from;
        for (int part = 1; part <= parts; part++) {
            double level = part == parts ? to : from + (to - from) * part / parts;
            if (plan.boundBy(before) != plan.boundBy(level)) {
                double knee = knee(before, level, plan);
                if (knee - before > NEAREST_M && level - knee > NEAREST_M) {
                    levels.add(knee);
                }
            }
            levels.add(level);
            before = level;
        }
    }

    /** Halved, since what bounds the target is no number that crosses 0. */
    private static double knee(double from, double to, CabinPlan plan) {
        double low = from;
        double high = to;
        while (high - low > 1e-6) {
            double middle = 0.5 * (low + high);
            if (plan.boundBy(middle) == plan.boundBy(from)) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return high;
    }

    /** Follows the plan from the bottom to the top. */
    private void follow(double startM, double[] levels) {
        double cabin = plan.notBeyondTheHull(Math.min(startM, levels[0]), levels[0]);
        add(levels[0], timeS(levels[0], Side.BELOW), cabin);
        stay(levels[0]);
        for (int i = 1; i < levels.length; i++) {
            double time = timeS(levels[i], Side.BELOW);
            if (!(time > timeS && time <= Double.MAX_VALUE)) {
                throw new IllegalArgumentException(
                        "the times of a climb must rise with its level, but "
                                + time
                                + " s came after "
                                + timeS
                                + " s");
            }
            double next = plan.nextM(cabinM, time - timeS, levels[i]);
            double way = plan.targetM(levelM) - cabinM;
            double wayThen = plan.targetM(levels[i]) - next;
            if (Math.abs(way) > NEAREST_M && way * wayThen <= 0.0) {
                meet(way > 0.0, levels[i]);
                next = plan.nextM(cabinM, time - timeS, levels[i]);
            }
            add(levels[i], time, next);
            stay(levels[i]);
        }
    }

    /** Follows the plan while a level is held: to the target, and then no further. */
    private void stay(double level) {
        double until = timeS(level, Side.ABOVE);
        if (!(until - timeS > SHORTEST_S)) {
            return;
        }
        double allowed = CabinPressure.cabinAltitude(plan.limits().scheduled().inPascals(), level);
        if (allowed > cabinM) {
            stayUntilAt(allowed, level, until);
        }
        stayUntilAt(plan.targetM(level), level, until);
        if (until > timeS) {
            add(level, until, plan.nextM(cabinM, until - timeS, level));
        }
    }

    /** To a cabin altitude on the way to the target, if it comes there before the level is left. */
    private void stayUntilAt(double toM, double level, double until) {
        double way = toM - cabinM;
        double there = timeS + way / limited(plan, 0.0, 1.0, way > 0.0);
        if (there - timeS > SHORTEST_S && until - there > SHORTEST_S) {
            add(level, there, plan.nextM(cabinM, there - timeS, level));
        }
    }

    /**
     * Adds the level at which a cabin on its way meets its target. Where the target then runs away
     * to the other side, faster than the limit, the first part of the step would count for the
     * second without it.
     */
    private void meet(boolean isUp, double toM) {
        double low = levelM;
        double high = toM;
        while (high - low > NEAREST_M) {
            double middle = 0.5 * (low + high);
            double time = timeS(middle, Side.BELOW);
            double way = plan.targetM(middle) - limited(plan, cabinM, time - timeS, isUp);
            if (way > 0.0 == isUp) {
                low = middle;
            } else {
                high = middle;
            }
        }
        if (high - levelM > NEAREST_M && toM - high > NEAREST_M) {
            double time = timeS(high, Side.BELOW);
            add(high, time, plan.nextM(cabinM, time - timeS, high));
        }
    }

    private double timeS(double level, Side side) {
        return path.at(PressureAltitude.ofMetres(level), side).timeS();
    }

    private void add(double level, double time, double cabin) {
        levels.add(level);
        times.add(time);
        cabins.add(cabin);
        levelM = level;
        timeS = time;
        cabinM = cabin;
    }

    double[] levelsM() {
        return levels.build().toArray();
    }

    double[] timesS() {
        return times.build().toArray();
    }

    double[] cabinM() {
        return cabins.build().toArray();
    }

    private static double limited(CabinPlan plan, double cabinM, double seconds, boolean isUp) {
        return isUp
                ? cabinM + plan.rates().up().inMetresPerSecond() * seconds
                : cabinM - plan.rates().down().inMetresPerSecond() * seconds;
    }
}
