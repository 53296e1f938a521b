package org.climbwright.gradient.restriction;

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
    static PointOnPath of(ClimbPath path, GroundDistance distance) {
        return path.over(distance)
                .map(state -> new PointOnPath(state, false, ""))
                .orElseGet(() -> beyond(path));
    }

    private static PointOnPath beyond(ClimbPath path) {
        ClimbState top = path.at(path.top(), Side.ABOVE);
        if (top.distance().isEmpty()) {
            return new PointOnPath(
                    null,
                    false,
                    "the wind is not known all the way from "
                            + Figures.feet(lastKnownM(path))
                            + " up, and so no distance is");
        }
        return path.reachesItsLevel()
                ? new PointOnPath(top, true, "")
                : new PointOnPath(
                        null,
                        false,
                        "the climb is known to "
                                + Figures.nauticalMiles(top.distance().get().inMetres())
                                + " only, where "
                                + path.endsBecause());
    }

    /** A wind becomes unknown at a bend of the path, if not already at its bottom. */
    private static double lastKnownM(ClimbPath path) {
        double known = path.bottom().inMetres();
        for (double bend : path.bendsM()) {
            PressureAltitude level = PressureAltitude.ofMetres(bend);
            if (path.at(level, Side.BELOW).distance().isPresent()) {
                known = bend;
            }
        }
        return known;
    }
}
