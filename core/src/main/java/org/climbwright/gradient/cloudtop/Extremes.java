package org.climbwright.gradient.cloudtop;

import java.util.List;
import org.climbwright.numeric.BracketingSolver;
import org.climbwright.path.Side;

/**
 * The least and the most margin between two levels: at the ends, at bends, or where the climb is as
 * fast as the top grows.
 *
 * @param least the least margin [m]
 * @param leastAtM the level of it [m]
 * @param most the most margin [m]
 */
record Extremes(double least, double leastAtM, double most) {
    private static final double TOLERANCE_M = 1e-6;

    static Extremes of(CloudCrossing crossing, double fromM, double toM) {
        List<Double> points = crossing.points(fromM, toM);
        double first = crossing.margin(fromM);
        Extremes found = new Extremes(first, fromM, first);
        for (int i = 1; i < points.size(); i++) {
            double low = points.get(i - 1);
            double high = points.get(i);
            double before = crossing.gain(low, Side.ABOVE);
            double after = crossing.gain(high, Side.BELOW);
            if (before * after < 0.0) {
                double turn =
                        BracketingSolver.solve(
                                h -> crossing.gain(h, h < high ? Side.ABOVE : Side.BELOW),
                                low,
                                high,
                                TOLERANCE_M);
                found = found.with(crossing.margin(turn), turn);
            }
            found = found.with(crossing.margin(high), high);
        }
        return found;
    }

    private Extremes with(double margin, double levelM) {
        return new Extremes(
                Math.min(least, margin),
                margin < least ? levelM : leastAtM,
                Math.max(most, margin));
    }
}
