package org.climbwright.path;

import java.util.function.ToDoubleFunction;
import org.climbwright.numeric.BracketingSolver;
import org.climbwright.quantity.ModelRange;
import org.climbwright.quantity.altitude.PressureAltitude;

/** Finds the level of a climb by something that only grows on the way. */
final class PathSearch {
    private static final double TOLERANCE_M = 1e-6;

    private PathSearch() {}

    static ClimbState at(
            ClimbPath path,
            String term,
            double wanted,
            String unit,
            double rounding,
            ToDoubleFunction<ClimbState> growing) {
        double most = growing.applyAsDouble(path.at(path.top(), Side.BELOW));
        if (wanted > most && wanted <= most + rounding) {
            return path.at(path.top(), Side.BELOW); // the top's own figure, as it was rounded
        }
        new ModelRange(term, 0.0, most, unit, "the climb is over").check(wanted);
        double altitude =
                BracketingSolver.solve(
                        h -> growing.applyAsDouble(path.at(PressureAltitude.ofMetres(h))) - wanted,
                        path.bottom().inMetres(),
                        path.top().inMetres(),
                        TOLERANCE_M);
        return path.at(PressureAltitude.ofMetres(altitude));
    }
}
