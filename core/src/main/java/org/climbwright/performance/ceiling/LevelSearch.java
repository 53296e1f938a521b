package org.climbwright.performance.ceiling;

import java.util.OptionalDouble;
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
    static final String NO_BALANCE = "the forces balance at no angle of climb";
    static final double CLOSE_M = 1e-6;
    private static final double STEP_M = 100.0;

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

    /**
     * Climbs from the start.
     *
     * @param what what there is margin to
     * @param unknown why the margin is not known where the speed is one of a climb
     */
    LevelLimit first(LevelLimit.Kind kind, Margin margin, String what, String unknown) {
        if (from == conditions.air().range().highest()) {
            return LevelLimit.none(
                    kind, LevelLimit.Standing.NOT_KNOWN, "the air ends where the search begins");
        }
        double below = from;
        for (double above : joints()) {
            double atBelow = left(margin, below, Side.ABOVE);
            if (atBelow < 0.0) {
                return below == from
                        ? LevelLimit.none(
                                kind,
                                LevelLimit.Standing.BELOW_THE_START,
                                "there is less than " + what + " already at " + text(from))
                        : LevelLimit.at(kind, below, "at a bend there is less than " + what);
            }
            if (Double.isNaN(atBelow)) {
                return notKnown(kind, below, what, why(below, Side.ABOVE, unknown));
            }
            boolean isKnown = isKnown(margin, above, Side.BELOW);
            double last = isKnown ? above : edge(margin, below, above);
            if (last > below && left(margin, last, Side.BELOW) < 0.0) {
                double bottom = below;
                double level =
                        BracketingSolver.solve(
                                at -> left(margin, at, at == bottom ? Side.ABOVE : Side.BELOW),
                                below,
                                last,
                                CLOSE_M);
                return LevelLimit.at(kind, level, "there is " + what + " and no more");
            }
            if (!isKnown) {
                double beyond = Math.min(above, last + CLOSE_M);
                return notKnown(kind, last, what, why(beyond, Side.BELOW, unknown));
            }
            below = above;
        }
        return LevelLimit.none(
                kind,
                LevelLimit.Standing.ABOVE_THE_END,
                "there is more than " + what + " up to the end of the air at " + text(below));
    }

    private String why(double level, Side side, String unknown) {
        return conditions.covers(level, side, speeds.at(level, side))
                ? unknown
                : "the speed is not one of a climb there";
    }

    private LevelLimit notKnown(LevelLimit.Kind kind, double level, String what, String why) {
        return LevelLimit.none(
                kind,
                LevelLimit.Standing.NOT_KNOWN,
                level == from
                        ? "whether there is " + what + " is not known at " + text(from) + ": " + why
                        : "there is "
                                + what
                                + " up to "
                                + text(level)
                                + ", and from there it is not known: "
                                + why);
    }

    /**
     * The first level upwards at which a margin is known: the start, or one within a micrometre of
     * where it is not; empty where there is none.
     */
    OptionalDouble firstKnown(Margin margin) {
        double below = from;
        for (double above : joints()) {
            if (isKnown(margin, below, Side.ABOVE)) {
                return OptionalDouble.of(below);
            }
            if (isKnown(margin, above, Side.BELOW)) {
                return OptionalDouble.of(edge(margin, above, below));
            }
            below = above;
        }
        return OptionalDouble.empty();
    }

    /** The last level known on the way from one that is to one that is not. */
    private double edge(Margin margin, double known, double unknown) {
        double inside = known;
        double outside = unknown;
        while (Math.abs(outside - inside) > CLOSE_M) {
            double middle = 0.5 * (inside + outside);
            if (isKnown(margin, middle, Side.BELOW)) {
                inside = middle;
            } else {
                outside = middle;
            }
        }
        return inside;
    }

    private boolean isKnown(Margin margin, double altitude, Side side) {
        return !Double.isNaN(left(margin, altitude, side));
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
