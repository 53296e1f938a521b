package org.climbwright.gradient.restriction;

import org.climbwright.numeric.BracketingSolver;
import org.climbwright.path.ClimbPath;
import org.climbwright.path.ClimbState;
import org.climbwright.path.Side;
import org.climbwright.quantity.altitude.PressureAltitude;
import org.climbwright.quantity.path.GroundDistance;
import org.jspecify.annotations.Nullable;

/**
 * The aeroplane over a point of its track, or why it is not known there.
 *
 * @param state the aeroplane; null where not known
 * @param isLevelOff whether it has levelled off at its top before
 * @param reason why it is not known; empty where it is
 */
record PointOnPath(@Nullable ClimbState state, boolean isLevelOff, String reason) {
    private static final String LEVEL_REACHED = "level reached";
    private static final double TOLERANCE_M = 1e-6;

    static PointOnPath of(ClimbPath path, GroundDistance distance) {
        ClimbState top = path.at(path.top(), Side.BELOW);
        double wanted = distance.inMetres();
        if (top.distance().isEmpty()) {
            return beforeTheWindIsUnknown(path, wanted);
        }
        double most = metres(top);
        if (wanted <= most) {
            return new PointOnPath(path.at(distance), false, "");
        }
        return path.endsBecause().equals(LEVEL_REACHED)
                ? new PointOnPath(top, true, "")
                : new PointOnPath(
                        null,
                        false,
                        "the climb is known to "
                                + Figures.nauticalMiles(most)
                                + " only, where "
                                + path.endsBecause());
    }

    /** A wind becomes unknown at a bend of the path, if not already at its bottom. */
    private static PointOnPath beforeTheWindIsUnknown(ClimbPath path, double wanted) {
        double known = path.bottom().inMetres();
        for (double bend : path.bendsM()) {
            if (state(path, bend).distance().isPresent()) {
                known = bend;
            }
        }
        ClimbState last = state(path, known);
        if (last.distance().isEmpty() || wanted > metres(last)) {
            return new PointOnPath(
                    null,
                    false,
                    "the wind is not known all the way from "
                            + Figures.feet(last.pressureAltitude().inMetres())
                            + " up, and so no distance is");
        }
        if (wanted == metres(last)) {
            return new PointOnPath(last, false, "");
        }
        double altitude =
                BracketingSolver.solve(
                        h -> metres(state(path, h)) - wanted,
                        path.bottom().inMetres(),
                        known,
                        TOLERANCE_M);
        return new PointOnPath(state(path, altitude), false, "");
    }

    private static ClimbState state(ClimbPath path, double altitudeM) {
        return path.at(PressureAltitude.ofMetres(altitudeM));
    }

    private static double metres(ClimbState state) {
        return state.distance().orElseThrow().inMetres();
    }
}
