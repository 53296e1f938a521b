package org.climbwright.gradient.procedure;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.climbwright.gradient.ClimbGradient;
import org.climbwright.quantity.altitude.Height;
import org.climbwright.quantity.path.AirGradient;
import org.climbwright.quantity.path.GroundDistance;
import org.climbwright.quantity.path.GroundGradient;

/**
 * A flight path made net: the gross one with each gradient less by a reduction, point by point and
 * not by lowering its end.
 *
 * <p>Limits of use: for study and simulation. The flight manual has the net path. A level piece
 * loses height here too; the rules let it lose acceleration instead.
 *
 * @source 14 CFR 25.115(b) and CS 25.115(b): reduced at each point by a gradient; (c) for level
 *     flight
 */
public final class NetFlightPath {
    /** Height at which the take-off flight path starts: 35 ft (11 m), 14 CFR and CS 25.115(a). */
    public static final PrintedHeight START =
            PrintedHeight.of(Height.ofFeet(35), Height.ofMetres(11));

    /**
     * A point of a path.
     *
     * @param distance distance over the ground from where the path starts
     * @param height height above the departure end
     */
    public record Point(GroundDistance distance, Height height) implements Serializable {
        /**
         * Makes a point.
         *
         * @param distance distance over the ground from where the path starts
         * @param height height above the departure end
         */
        public Point {
            Objects.requireNonNull(distance, "distance");
            Objects.requireNonNull(height, "height");
        }
    }

    private NetFlightPath() {}

    /**
     * Returns the net height after a piece of the path: {@code h + dh - r dd}.
     *
     * @param netHeightM net height before it [m]
     * @param grossGainM height that the piece gains gross [m], -1e5 to 1e5
     * @param distanceM its distance [m], 0.001 to 2e7
     * @param reduction reduction of the gradient [m/m], -10 to 10
     * @return net height after it [m]
     * @throws org.climbwright.quantity.OutsideModelException if a value is out of range
     * @accuracy 2 ulp of the largest term
     * @source see the class comment
     */
    public static double after(
            double netHeightM, double grossGainM, double distanceM, double reduction) {
        double gradient = ClimbGradient.required(grossGainM, distanceM) - reduction;
        return netHeightM + ClimbGradient.heightGained(gradient, distanceM);
    }

    /**
     * Tells whether a piece of a path is in range.
     *
     * @param grossGainM height that the piece gains gross [m]
     * @param distanceM its distance [m]
     * @param reduction reduction of the gradient [m/m]
     * @return true if {@link #after} answers
     */
    public static boolean covers(double grossGainM, double distanceM, double reduction) {
        return ClimbGradient.coversRequired(grossGainM, distanceM)
                && ClimbGradient.coversHeightGained(grossGainM / distanceM - reduction, distanceM);
    }

    /**
     * Returns the net path of a gross one.
     *
     * @param gross points of the gross path, farther one by one; the first stays as it is
     * @param reduction reduction of the gradient over the ground
     * @return as many points at the same distances
     * @throws IllegalArgumentException if a point is not farther than the one before
     */
    public static List<Point> of(List<Point> gross, GroundGradient reduction) {
        List<Point> net = new ArrayList<>(gross.size());
        for (Point to : gross) {
            if (net.isEmpty()) {
                net.add(to);
                continue;
            }
            Point from = gross.get(net.size() - 1);
            double way = to.distance().inMetres() - from.distance().inMetres();
            double height =
                    after(
                            net.get(net.size() - 1).height().inMetres(),
                            to.height().minus(from.height()).inMetres(),
                            way,
                            reduction.inMetresPerMetre());
            net.add(new Point(to.distance(), Height.ofMetres(height)));
        }
        return List.copyOf(net);
    }

    /**
     * Returns the net path of a gross one in still air, where a gradient through the air is one
     * over the ground.
     *
     * @param gross points of the gross path, farther one by one; the first stays as it is
     * @param reduction reduction of the gradient, as {@link NetReduction} has it
     * @return as many points at the same distances
     * @throws IllegalArgumentException if a point is not farther than the one before
     */
    public static List<Point> inStillAir(List<Point> gross, AirGradient reduction) {
        return of(gross, GroundGradient.ofMetresPerMetre(reduction.inMetresPerMetre()));
    }
}
