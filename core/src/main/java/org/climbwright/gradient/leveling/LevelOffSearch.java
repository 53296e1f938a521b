package org.climbwright.gradient.leveling;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.stream.DoubleStream;
import org.climbwright.atmosphere.AirState;
import org.climbwright.atmosphere.altimetry.VerticalRates;
import org.climbwright.numeric.BracketingSolver;
import org.climbwright.path.ClimbPath;
import org.climbwright.path.ClimbState;
import org.climbwright.path.Side;
import org.climbwright.quantity.ModelRange;
import org.climbwright.quantity.altitude.AltitudeChange;
import org.climbwright.quantity.altitude.PressureAltitude;
import org.climbwright.quantity.speed.PressureAltitudeRate;

/** Finds where on a climb the rate must begin to be reduced: first where it would soon be late. */
final class LevelOffSearch {
    private static final double TOLERANCE_M = 1e-7;
    private static final double STEP_M = 60.0;

    /** A climb that gets slower on the way by less is not remarked: most do. */
    private static final double SLOWER = 0.9;

    private final ClimbPath path;
    private final LevelOffRule rule;
    private final LevelOffLead lead;
    private final double levelM;
    private final double fromM;
    private final double truePerAltimeter;
    private final List<String> remarks = new ArrayList<>();

    LevelOffSearch(ClimbPath path, PressureAltitude level, LevelOffRule rule, LevelOffLead lead) {
        this.path = path;
        this.rule = rule;
        this.lead = lead;
        this.levelM = checked(path, level).inMetres();
        this.truePerAltimeter = truePerAltimeter(path.at(level, Side.BELOW).air());
        this.fromM = fromM();
    }

    private static PressureAltitude checked(ClimbPath path, PressureAltitude level) {
        if (path.bottom().equals(path.top())) {
            throw new IllegalArgumentException(
                    "a climb of no length has no level to stop at, and this one is over at "
                            + path.top().text()
                            + ": "
                            + path.endsBecause());
        }
        new ModelRange(
                        "level to stop at",
                        Math.nextUp(path.bottom().inMetres()),
                        path.top().inMetres(),
                        "m",
                        "the climb passes no other")
                .check(level.inMetres());
        return level;
    }

    /**
     * Where the climb to the level begins: its bottom, or the last level before that is held for at
     * least as long as levelling off there takes. What is held shorter is passed.
     */
    private double fromM() {
        double from = path.bottom().inMetres();
        for (double held : path.heldLevelsM()) {
            if (held < levelM && isStop(PressureAltitude.ofMetres(held))) {
                from = held;
            }
        }
        return from;
    }

    private boolean isStop(PressureAltitude held) {
        ClimbState arriving = path.at(held, Side.BELOW);
        double seconds = path.at(held, Side.ABOVE).timeS() - arriving.timeS();
        double rate = arriving.pressureAltitudeRate().inMetresPerSecond();
        return !LevelOffPlan.ARRIVAL.covers(rate)
                || seconds
                        >= LevelOff.time(
                                rate,
                                0.0,
                                LevelOffFigures.deceleration(rate, lead, truePerAltimeter));
    }

    static double truePerAltimeter(AirState air) {
        return VerticalRates.geometricPerPressureAltitude(air);
    }

    LevelOffPlan plan() {
        double begin = fromM;
        Side side = Side.ABOVE;
        double[] points = points();
        for (int i = 0; i < points.length - 1; i++) {
            double low = points[i];
            double high = points[i + 1];
            begin = low;
            side = Side.ABOVE;
            if (spare(low, Side.ABOVE) <= 0.0) {
                break;
            }
            begin = high;
            side = Side.BELOW;
            if (spare(high, Side.BELOW) <= 0.0) {
                begin = crossing(low, high);
                side = begin < high ? Side.ABOVE : Side.BELOW;
                break;
            }
        }
        double rate = heldRate(begin, side);
        remark(begin, side, rate);
        return new LevelOffPlan(
                PressureAltitudeRate.ofMetresPerSecond(rate),
                rule,
                lead,
                truePerAltimeter,
                levelM,
                levelM - fromM,
                remarks);
    }

    private double crossing(double low, double high) {
        return BracketingSolver.solve(
                h -> spare(h, h < high ? Side.ABOVE : Side.BELOW), low, high, TOLERANCE_M);
    }

    /** How much height is left until the rate must begin to be reduced. */
    private double spare(double altitudeM, Side side) {
        double rate = heldRate(altitudeM, side);
        return levelM - altitudeM - (LevelOffPlan.ARRIVAL.covers(rate) ? begins(rate) : 0.0);
    }

    private double begins(double rateMps) {
        return LevelOffFigures.of(rateMps, rule, lead, truePerAltimeter, Double.POSITIVE_INFINITY)
                .beginsReducingM();
    }

    /** The climb's rate; within the edge no more than the rule's, which was met on entering it. */
    private double heldRate(double altitudeM, Side side) {
        double rate = rate(altitudeM, side);
        double toEdge = levelM - rule.heightToGo().inMetres() - altitudeM;
        boolean isWithin = toEdge < 0.0 || (toEdge == 0.0 && side == Side.ABOVE);
        return isWithin ? Math.min(rate, rule.largestAllowed().inMetresPerSecond()) : rate;
    }

    private double rate(double altitudeM, Side side) {
        return path.at(PressureAltitude.ofMetres(altitudeM), side)
                .pressureAltitudeRate()
                .inMetresPerSecond();
    }

    private void remark(double begin, Side side, double rate) {
        double late = -spare(begin, side);
        if (late > 1e-3) {
            remarks.add(
                    "at "
                            + feet(begin)
                            + " the climb has its rate for the first time, "
                            + feet(late)
                            + " too near to the level to reduce it in time");
        }
        double kept =
                LevelOffFigures.of(
                                LevelOffPlan.ARRIVAL.check(rate),
                                rule,
                                lead,
                                truePerAltimeter,
                                Double.POSITIVE_INFINITY)
                        .keptMps();
        double slowest = rate;
        double fastestWithin = 0.0;
        double[] points = points();
        for (int i = 0; i < points.length - 1; i++) {
            if (points[i + 1] > begin) {
                slowest = Math.min(slowest, rate(points[i + 1], Side.BELOW));
            }
            if (points[i] > begin) {
                slowest = Math.min(slowest, rate(points[i], Side.ABOVE));
            }
            if (points[i] >= levelM - rule.heightToGo().inMetres()) {
                fastestWithin = Math.max(fastestWithin, rate(points[i], Side.ABOVE));
            }
        }
        if (slowest < kept * SLOWER) {
            remarks.add(
                    "the climb itself is down to "
                            + feetPerMinute(slowest)
                            + " before the level, so that it takes longer than told here");
        }
        double atBottom = rate(fromM, Side.ABOVE);
        boolean isHeld = fromM > path.bottom().inMetres();
        boolean beginsWithin = levelM - fromM < rule.heightToGo().inMetres();
        if (beginsWithin && atBottom > rule.largest().inMetresPerSecond()) {
            remarks.add(
                    (isHeld ? "the climb goes on from a level held" : "the climb begins")
                            + " within the edge of the rule, "
                            + feet(levelM - fromM)
                            + " to go, at "
                            + feetPerMinute(atBottom)
                            + ", which is more than the rule: it is held to the rule here");
        }
        boolean wasWithin = rate <= rule.largestAllowed().inMetresPerSecond();
        if (!beginsWithin && wasWithin && fastestWithin > rule.largest().inMetresPerSecond()) {
            remarks.add(
                    "the climb itself would be up to "
                            + feetPerMinute(fastestWithin)
                            + " within the edge of the rule, and is held to the rule there");
        }
    }

    /** Where it begins, bends, edge and level, and enough between them. */
    private double[] points() {
        List<Double> points = new ArrayList<>();
        points.add(fromM);
        double edge = levelM - rule.heightToGo().inMetres();
        DoubleStream.concat(Arrays.stream(path.bendsM()), DoubleStream.of(edge, levelM))
                .filter(h -> h > fromM && h <= levelM)
                .sorted()
                .distinct()
                .forEach(
                        next -> {
                            double last = points.get(points.size() - 1);
                            int parts = (int) Math.ceil((next - last) / STEP_M);
                            for (int i = 1; i < parts; i++) {
                                points.add(last + (next - last) * i / parts);
                            }
                            points.add(next);
                        });
        return points.stream().mapToDouble(Double::doubleValue).toArray();
    }

    private static String feet(double metres) {
        return String.format(Locale.ROOT, "%.0f ft", AltitudeChange.ofMetres(metres).inFeet());
    }

    private static String feetPerMinute(double metresPerSecond) {
        return String.format(
                Locale.ROOT,
                "%.0f ft/min",
                PressureAltitudeRate.ofMetresPerSecond(metresPerSecond).inFeetPerMinute());
    }
}
