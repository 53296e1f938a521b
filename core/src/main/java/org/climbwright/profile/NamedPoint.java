package org.climbwright.profile;

import java.util.Objects;
import org.climbwright.quantity.path.GroundDistance;

/**
 * A point along the track at which one wants to know time and fuel, without a restriction.
 *
 * @param name what it is called
 * @param distance distance over the ground since the climb began
 */
public record NamedPoint(String name, GroundDistance distance) {
    /**
     * Makes it of parts that are all there.
     *
     * @param name see above
     * @param distance see above
     */
    public NamedPoint {
        Objects.requireNonNull(name, "name");
        Objects.requireNonNull(distance, "distance");
    }
}
