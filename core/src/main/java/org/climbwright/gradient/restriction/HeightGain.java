package org.climbwright.gradient.restriction;

import java.util.Optional;
import org.climbwright.atmosphere.altimetry.VerticalRates;
import org.climbwright.gradient.restriction.ClimbRequirement.Heights;
import org.climbwright.numeric.Quadrature;
import org.climbwright.path.ClimbPath;
import org.climbwright.path.ClimbState;
import org.climbwright.quantity.altitude.GeometricAltitude;
import org.climbwright.quantity.altitude.PressureAltitude;

/**
 * True height from the aeroplane to a level, through the air of its path.
 *
 * @param metres the height, negative downwards
 * @param heights how it is known
 */
record HeightGain(double metres, Heights heights) {
    private static final double STEP_M = 500.0;

    static HeightGain of(ClimbPath path, ClimbState from, double toM) {
        double bottom = path.bottom().inMetres();
        double top = path.top().inMetres();
        Optional<GeometricAltitude> here = from.air().geometricAltitude();
        if (here.isPresent() && toM >= bottom && toM <= top) {
            Optional<GeometricAltitude> there =
                    path.at(PressureAltitude.ofMetres(toM)).air().geometricAltitude();
            if (there.isPresent()) {
                return new HeightGain(
                        there.get().minus(here.get()).inMetres(), Heights.TRUE_ALTITUDES);
            }
        }
        double fromM = from.pressureAltitude().inMetres();
        double metres = fromM <= toM ? between(path, fromM, toM) : -between(path, toM, fromM);
        return new HeightGain(metres, Heights.TEMPERATURE);
    }

    /** Outside the path the air of its nearest end stands for the air there. */
    private static double between(ClimbPath path, double lowM, double highM) {
        double bottom = path.bottom().inMetres();
        double top = path.top().inMetres();
        double below = Math.max(0.0, Math.min(highM, bottom) - lowM);
        double above = Math.max(0.0, highM - Math.max(lowM, top));
        double sum = 0.0;
        if (below > 0.0) {
            sum += below * ratio(path, bottom);
        }
        if (above > 0.0) {
            sum += above * ratio(path, top);
        }
        return sum + inside(path, Math.max(lowM, bottom), Math.min(highM, top));
    }

    private static double inside(ClimbPath path, double low, double high) {
        double sum = 0.0;
        double from = low;
        for (double bend : path.bendsM()) {
            if (bend > from && bend < high) {
                sum += stretch(path, from, bend);
                from = bend;
            }
        }
        return from < high ? sum + stretch(path, from, high) : sum;
    }

    private static double stretch(ClimbPath path, double from, double to) {
        int steps = (int) Math.ceil((to - from) / STEP_M);
        double sum = 0.0;
        for (int step = 0; step < steps; step++) {
            double low = from + (to - from) * step / steps;
            double high = from + (to - from) * (step + 1) / steps;
            sum += Quadrature.integrate(h -> ratio(path, h), low, high);
        }
        return sum;
    }

    private static double ratio(ClimbPath path, double altitudeM) {
        return VerticalRates.geometricPerPressureAltitude(
                path.at(PressureAltitude.ofMetres(altitudeM)).air());
    }
}
