package org.climbwright.performance;

import java.io.Serializable;
import java.util.Objects;
import org.climbwright.quantity.ModelRange;
import org.climbwright.quantity.altitude.PressureAltitude;

/**
 * A climb at less than the thrust of the rating: a share of it up to a level, from there growing in
 * a straight line to all of it at another.
 *
 * <pre>{@code
 * ReducedThrust reduced = ReducedThrust.of(
 *         0.8, PressureAltitude.ofFeet(10000), PressureAltitude.ofFeet(15000));
 * reduced.share(PressureAltitude.ofFeet(12500).inMetres())       // 0.9, half way
 * ReducedThrust.none().share(0.0)                                // 1.0
 * }</pre>
 *
 * <p>Limits of use: the flight manual and the operator say whether, where and by how much thrust
 * may be reduced, and that obstacles are cleared with it; this only computes what follows.
 *
 * @source common practice, no source: the share and its levels are the caller's
 */
public final class ReducedThrust implements Serializable {
    private static final long serialVersionUID = 1L;
    private static final ModelRange SHARE =
            new ModelRange("share of the thrust", 0.01, 1.0, "", "less is no climb");
    private static final ReducedThrust NONE = new ReducedThrust(1.0, 0.0, 1.0);

    private final double share;
    private final double reducedToM;
    private final double fullFromM;

    private ReducedThrust(double share, double reducedToM, double fullFromM) {
        this.share = SHARE.check(share);
        this.reducedToM = reducedToM;
        this.fullFromM = fullFromM;
        if (!(reducedToM < fullFromM)) {
            throw new IllegalArgumentException(
                    "full thrust must be reached above "
                            + PressureAltitude.ofMetres(reducedToM).text()
                            + ", up to which it is reduced, but was at "
                            + PressureAltitude.ofMetres(fullFromM).text());
        }
    }

    /**
     * Returns a reduction.
     *
     * @param share the part of the rating's thrust that is left, 0.01 to 1
     * @param reducedTo the level up to which it is that part
     * @param fullFrom the level from which it is all, higher than the other: thrust never steps
     * @return the reduction
     * @throws org.climbwright.quantity.OutsideModelException if the share is out of range
     * @throws IllegalArgumentException if the levels are not in order
     */
    public static ReducedThrust of(
            double share, PressureAltitude reducedTo, PressureAltitude fullFrom) {
        return new ReducedThrust(share, reducedTo.inMetres(), fullFrom.inMetres());
    }

    /**
     * Returns no reduction.
     *
     * @return all of the rating's thrust at every level
     */
    public static ReducedThrust none() {
        return NONE;
    }

    /**
     * Returns the part of the rating's thrust at a level.
     *
     * @param pressureAltitudeM pressure altitude [m]
     * @return the part, up to 1
     * @accuracy 2 ulp
     * @source definition, see the class comment
     */
    public double share(double pressureAltitudeM) {
        if (pressureAltitudeM <= reducedToM) {
            return share;
        }
        if (pressureAltitudeM >= fullFromM) {
            return 1.0;
        }
        double way = (pressureAltitudeM - reducedToM) / (fullFromM - reducedToM);
        return share + (1.0 - share) * way;
    }

    /**
     * Returns the part of the rating's thrust at a level.
     *
     * @param level pressure altitude
     * @return the part, up to 1
     */
    public double share(PressureAltitude level) {
        return share(level.inMetres());
    }

    /**
     * Returns where the part bends.
     *
     * @return the two levels [m], rising; empty where nothing is reduced
     */
    public double[] bendsM() {
        return share == 1.0 ? new double[0] : new double[] {reducedToM, fullFromM};
    }

    /**
     * Returns the reduction for reading.
     *
     * @return a text; may change between versions
     */
    @Override
    public String toString() {
        return share == 1.0
                ? "all of the thrust"
                : share
                        + " of the thrust to "
                        + PressureAltitude.ofMetres(reducedToM).text()
                        + ", all from "
                        + PressureAltitude.ofMetres(fullFromM).text();
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof ReducedThrust that
                && Double.compare(share, that.share) == 0
                && Double.compare(reducedToM, that.reducedToM) == 0
                && Double.compare(fullFromM, that.fullFromM) == 0;
    }

    @Override
    public int hashCode() {
        return Objects.hash(share, reducedToM, fullFromM);
    }

    private Object readResolve() {
        return new ReducedThrust(share, reducedToM, fullFromM);
    }
}
