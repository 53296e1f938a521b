package org.climbwright.gradient.cloudtop;

import org.climbwright.numeric.BracketingSolver;
import org.climbwright.path.ClimbState;
import org.climbwright.path.Side;

/**
 * The least and the most margin between two points of a climb: at the ends, at bends, as a held
 * level is reached and left, or where the climb is as fast as the top grows.
 *
 * @param least the least margin [m]
 * @param leastAt where it is
 * @param most the most margin [m]
 */
record Extremes(double least, ClimbState leastAt, double most) {
    private static final double TOLERANCE_M = 1e-6;

    static Extremes of(CloudCrossing crossing, ClimbState from, ClimbState to) {
        double first = crossing.margin(from);
        Extremes found = new Extremes(first, from, first);
        double low = Double.NaN;
        for (double high :
                crossing.points(
                        from.pressureAltitude().inMetres(), to.pressureAltitude().inMetres())) {
            if (high > low) {
                found = found.withTurn(crossing, low, high);
            }
            for (Side side : Side.values()) {
                // of a held level, what comes before the one or after the other is not between
                ClimbState there = crossing.at(high, side);
                if (there.timeS() > from.timeS() && there.timeS() < to.timeS()) {
                    found = found.with(crossing.margin(there), there);
                }
            }
            low = high;
        }
        return found.with(crossing.margin(to), to);
    }

    private Extremes withTurn(CloudCrossing crossing, double low, double high) {
        double before = crossing.gain(low, Side.ABOVE);
        double after = crossing.gain(high, Side.BELOW);
        if (!(before * after < 0.0)) {
            return this;
        }
        double turn =
                BracketingSolver.solve(
                        h -> crossing.gain(h, h < high ? Side.ABOVE : Side.BELOW),
                        low,
                        high,
                        TOLERANCE_M);
        ClimbState there = crossing.at(turn, Side.BELOW);
        return with(crossing.margin(there), there);
    }

    private Extremes with(double margin, ClimbState there) {
        return new Extremes(
                Math.min(least, margin), margin < least ? there : leastAt, Math.max(most, margin));
    }
}
