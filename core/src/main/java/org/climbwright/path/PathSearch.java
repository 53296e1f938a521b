package org.climbwright.path;

import java.time.Duration;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import org.climbwright.numeric.BracketingSolver;
import org.climbwright.quantity.ModelRange;
import org.climbwright.quantity.altitude.PressureAltitude;
import org.climbwright.quantity.path.GroundDistance;

/** Finds the level of a climb by something that only grows on the way. */
final class PathSearch {
    private static final double TOLERANCE_M = 1e-6;

    /** That of a {@link Duration}. */
    private static final double RESOLUTION_S = 1e-9;

    private PathSearch() {}

    static boolean isHeld(ClimbPath path, double levelM) {
        PressureAltitude level = PressureAltitude.ofMetres(levelM);
        return path.at(level, Side.ABOVE).timeS() > path.at(level, Side.BELOW).timeS();
    }

    static ClimbState at(
            ClimbPath path,
            String term,
            double wanted,
            String unit,
            double rounding,
            ToDoubleFunction<ClimbState> growing) {
        double most = growing.applyAsDouble(path.at(path.top(), Side.ABOVE));
        if (wanted > most && wanted <= most + rounding) {
            return path.at(path.top(), Side.ABOVE); // the top's own figure, as it was rounded
        }
        new ModelRange(term, 0.0, most, unit, "the climb is over").check(wanted);
        for (double held : path.heldLevelsM()) {
            PressureAltitude level = PressureAltitude.ofMetres(held);
            ClimbState arriving = path.at(level, Side.BELOW);
            ClimbState leaving = path.at(level, Side.ABOVE);
            double from = growing.applyAsDouble(arriving);
            double to = growing.applyAsDouble(leaving);
            if (from < to && wanted >= from && wanted <= to) {
                return ClimbState.holding(arriving, leaving, (wanted - from) / (to - from));
            }
        }
        if (path.bottom().equals(path.top())) {
            return path.at(path.top(), Side.ABOVE);
        }
        double altitude =
                BracketingSolver.solve(
                        h -> growing.applyAsDouble(path.at(PressureAltitude.ofMetres(h))) - wanted,
                        path.bottom().inMetres(),
                        path.top().inMetres(),
                        TOLERANCE_M);
        return path.at(PressureAltitude.ofMetres(altitude));
    }

    static Optional<ClimbState> over(ClimbPath path, GroundDistance distance) {
        double wanted = distance.inMetres();
        ClimbState top = path.at(path.top(), Side.ABOVE);
        if (top.distance().isPresent()) {
            return wanted <= metres(top) ? Optional.of(path.at(distance)) : Optional.empty();
        }
        ClimbState last = lastKnown(path);
        if (last.distance().isEmpty() || wanted > metres(last)) {
            return Optional.empty();
        }
        // by time, which tells what is in between where a level is held; down, not to be beyond
        double most = Math.floor(last.timeS() / RESOLUTION_S) * RESOLUTION_S;
        if (wanted >= metres(notBeyond(last, atTime(path, most)))) {
            return Optional.of(last);
        }
        double time =
                BracketingSolver.solve(
                        t -> metres(notBeyond(last, atTime(path, t))) - wanted,
                        0.0,
                        most,
                        RESOLUTION_S);
        return Optional.of(notBeyond(last, atTime(path, time)));
    }

    /** A search by time may end a little above the last point whose distance is known. */
    private static ClimbState notBeyond(ClimbState last, ClimbState found) {
        return found.distance().isPresent() ? found : last;
    }

    /** The last point whose distance is known; a wind becomes unknown at a bend, mostly. */
    private static ClimbState lastKnown(ClimbPath path) {
        double known = path.bottom().inMetres();
        double unknown = path.top().inMetres();
        for (double bend : path.bendsM()) {
            if (below(path, bend).distance().isEmpty()) {
                unknown = bend;
                break;
            }
            known = bend;
        }
        while (unknown - known > TOLERANCE_M) {
            double middle = 0.5 * (known + unknown);
            if (below(path, middle).distance().isPresent()) {
                known = middle;
            } else {
                unknown = middle;
            }
        }
        return below(path, known);
    }

    private static ClimbState below(ClimbPath path, double levelM) {
        return path.at(PressureAltitude.ofMetres(levelM), Side.BELOW);
    }

    private static ClimbState atTime(ClimbPath path, double seconds) {
        return path.at(Duration.ofNanos((long) (seconds / RESOLUTION_S)));
    }

    private static double metres(ClimbState state) {
        return state.distance().orElseThrow().inMetres();
    }
}
