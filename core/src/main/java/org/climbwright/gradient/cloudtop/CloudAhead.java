package org.climbwright.gradient.cloudtop;

import java.io.Serializable;
import java.util.Objects;
import org.climbwright.quantity.altitude.GeometricAltitude;
import org.climbwright.quantity.path.GroundDistance;
import org.climbwright.quantity.speed.GeometricRate;

/**
 * A cloud ahead on the track, as it was seen when the climb began.
 *
 * <p>Base and top are true altitudes, since what measures them, a beam at an angle, and what they
 * grow by are true heights. One that was told as a flight level becomes one by the air: {@code
 * air.at(PressureAltitude.ofFlightLevel(300)).geometricAltitude()}.
 *
 * <p>Limits of use: the top that an instrument sees is below the one that an eye sees, and both are
 * below what the air does above. The figures are the caller's.
 *
 * @param base true altitude of the base
 * @param top true altitude of the top, not below the base
 * @param nearEdge distance over the ground from where the climb begins to its near edge, 0 or more
 * @param farEdge distance to its far edge, not less than to the near one
 * @param growth rate at which the top rises, 0 or more: a top that sinks is not counted on
 * @param distanceError how much nearer or further each edge may be, 0 or more
 */
public record CloudAhead(
        GeometricAltitude base,
        GeometricAltitude top,
        GroundDistance nearEdge,
        GroundDistance farEdge,
        GeometricRate growth,
        GroundDistance distanceError)
        implements Serializable {
    /**
     * Makes a cloud.
     *
     * @param base true altitude of the base
     * @param top true altitude of the top
     * @param nearEdge distance to its near edge
     * @param farEdge distance to its far edge
     * @param growth rate at which the top rises
     * @param distanceError how much nearer or further each edge may be
     * @throws IllegalArgumentException if base and top, or the edges, are not in order, or the
     *     growth is below 0
     */
    public CloudAhead {
        Objects.requireNonNull(base, "base");
        Objects.requireNonNull(top, "top");
        if (base.compareTo(top) > 0) {
            throw new IllegalArgumentException(
                    "the top of a cloud must not be below its base of "
                            + base
                            + ", but was "
                            + top);
        }
        if (nearEdge.compareTo(farEdge) > 0) {
            throw new IllegalArgumentException(
                    "the edges of a cloud must be told near one first, but were at "
                            + nearEdge
                            + " and "
                            + farEdge);
        }
        Objects.requireNonNull(distanceError, "distanceError");
        if (!(growth.inMetresPerSecond() >= 0.0)) {
            throw new IllegalArgumentException(
                    "the growth of a cloud must be 0 or more, but was " + growth);
        }
    }

    /**
     * Returns where its top is by then, as far as it grows.
     *
     * @param timeS time since it was seen, which is when the climb began [s]
     * @return true altitude of the top [m]
     */
    public double topM(double timeS) {
        return top.inMetres() + growth.inMetresPerSecond() * timeS;
    }
}
