package org.climbwright.performance.ceiling;

import java.util.TreeSet;
import org.climbwright.numeric.BracketingSolver;
import org.climbwright.path.Side;
import org.climbwright.performance.ClimbConditions;
import org.climbwright.performance.ClimbSpeed;
import org.climbwright.performance.ClimbSpeeds;
import org.climbwright.quantity.altitude.PressureAltitude;

/**
 * Climbs from level to level until a margin is used up: the first level counts, since a climb from
 * below comes no further, even if there is margin again above.
 *
 * <p>It looks at each side of every bend and at every 100 m; what is used up and there again in
 * between is missed. Inside it closes in to a micrometre.
 */
final class LevelSearch {
    private static final double STEP_M = 100.0;
    private static final double CLOSE_M = 1e-6;

    /** What is left at a level: 0 or more while the climb goes on; NaN when not known. */
    @FunctionalInterface
    interface Margin {
        double left(double pressureAltitudeM, Side side, ClimbSpeed speed);
    }

    private final ClimbConditions conditions;
    private final ClimbSpeeds speeds;
    private final double from;

    LevelSearch(ClimbConditions conditions, ClimbSpeeds speeds, PressureAltitude from) {
        this.conditions = conditions;
        this.speeds = speeds;
        this.from = conditions.air().range().check(from.inMetres());
    }

    LevelLimit first(LevelLimit.Kind kind, Margin margin, String what) {
        if (from == conditions.air().range().highest()) {
            return LevelLimit.none(
                    kind, LevelLimit.Standing.NOT_KNOWN, "the air ends where the search begins");
        }
        double below = from;
        for (double above : joints()) {
            double atBelow = left(margin, below, Side.ABOVE);
            double atAbove = left(margin, above, Side.BELOW);
            if (atBelow < 0.0) {
                return below == from
                        ? LevelLimit.none(
                                kind,
                                LevelLimit.Standing.BELOW_THE_START,
                                "there is less than " + what + " already at " + text(from))
                        : LevelLimit.at(kind, below, "at a bend there is less than " + what);
            }
            if (Double.isNaN(atBelow) || Double.isNaN(atAbove)) {
                return LevelLimit.none(
                        kind,
                        LevelLimit.Standing.NOT_KNOWN,
                        "there is "
                                + what
                                + " below "
                                + text(below)
                                + ", and from there it is not known: the speed or the figures of"
                                + " the aeroplane end");
            }
            if (atAbove < 0.0) {
                double bottom = below;
                double level =
                        BracketingSolver.solve(
                                at -> left(margin, at, at == bottom ? Side.ABOVE : Side.BELOW),
                                below,
                                above,
                                CLOSE_M);
                return LevelLimit.at(kind, level, "there is " + what + " and no more");
            }
            below = above;
        }
        return LevelLimit.none(
                kind,
                LevelLimit.Standing.ABOVE_THE_END,
                "there is more than " + what + " up to the end of the air at " + text(below));
    }

    private double left(Margin margin, double altitude, Side side) {
        ClimbSpeed speed = speeds.at(altitude, side);
        return conditions.covers(altitude, side, speed)
                ? margin.left(altitude, side, speed)
                : Double.NaN;
    }

    private Iterable<Double> joints() {
        double end = conditions.air().range().highest();
        TreeSet<Double> joints = new TreeSet<>();
        for (double at = from + STEP_M; at < end; at += STEP_M) {
            joints.add(at);
        }
        for (double[] bends :
                new double[][] {
                    conditions.air().bendsM(),
                    speeds.bendsM(),
                    conditions.reducedThrust().bendsM(),
                    {end}
                }) {
            for (double bend : bends) {
                if (bend > from && bend <= end) {
                    joints.add(bend);
                }
            }
        }
        return joints;
    }

    private static String text(double altitude) {
        return PressureAltitude.ofMetres(altitude).text();
    }
}
