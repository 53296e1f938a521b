package org.climbwright.gradient.leveling;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.DoubleStream;
import org.climbwright.atmosphere.AirState;
import org.climbwright.atmosphere.altimetry.VerticalRates;
import org.climbwright.numeric.BracketingSolver;
import org.climbwright.path.ClimbPath;
import org.climbwright.path.Side;
import org.climbwright.quantity.ModelRange;
import org.climbwright.quantity.altitude.AltitudeChange;
import org.climbwright.quantity.altitude.PressureAltitude;
import org.climbwright.quantity.speed.PressureAltitudeRate;

/** Finds where on a climb the rate must begin to be reduced: first where it would soon be late. */
final class LevelOffSearch {
    private static final double TOLERANCE_M = 1e-7;
    private static final double STEP_M = 60.0;

    /** Slower than planned by more than rounding. */
    private static final double SLOWER = 1.0 - 1e-9;

    private final ClimbPath path;
    private final LevelOffRule rule;
    private final LevelOffLead lead;
    private final double levelM;
    private final double truePerAltimeter;
    private final List<String> remarks = new ArrayList<>();

    LevelOffSearch(ClimbPath path, PressureAltitude level, LevelOffRule rule, LevelOffLead lead) {
        this.path = path;
        this.rule = rule;
        this.lead = lead;
        this.levelM =
                new ModelRange(
                                "level to stop at",
                                Math.nextUp(path.bottom().inMetres()),
                                path.top().inMetres(),
                                "m",
                                "the climb passes no other")
                        .check(level.inMetres());
        this.truePerAltimeter = truePerAltimeter(path.at(level, Side.BELOW).air());
    }

    static double truePerAltimeter(AirState air) {
        return VerticalRates.geometricPerPressureAltitude(air);
    }

    LevelOffPlan plan() {
        double begin = path.bottom().inMetres();
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
        return LevelOffFigures.of(rateMps, rule, lead, truePerAltimeter).beginsReducingM();
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
                            + PressureAltitude.ofMetres(begin).text()
                            + " the climb has its rate for the first time, "
                            + AltitudeChange.ofMetres(late).text()
                            + " too near to the level to reduce it in time");
        }
        double kept =
                LevelOffFigures.of(LevelOffPlan.ARRIVAL.check(rate), rule, lead, truePerAltimeter)
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
                            + PressureAltitudeRate.ofMetresPerSecond(slowest).text()
                            + " before the level, so that it takes longer than told here");
        }
        boolean wasWithin = rate <= rule.largestAllowed().inMetresPerSecond();
        if (wasWithin && fastestWithin > rule.largest().inMetresPerSecond()) {
            remarks.add(
                    "the climb itself would be up to "
                            + PressureAltitudeRate.ofMetresPerSecond(fastestWithin).text()
                            + " within the edge of the rule, and is held to the rule there");
        }
    }

    /** Bottom, bends, edge and level, and enough between them. */
    private double[] points() {
        List<Double> points = new ArrayList<>();
        points.add(path.bottom().inMetres());
        double edge = levelM - rule.heightToGo().inMetres();
        DoubleStream.concat(Arrays.stream(path.bendsM()), DoubleStream.of(edge, levelM))
                .filter(h -> h > path.bottom().inMetres() && h <= levelM)
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
}
