package org.climbwright.gradient.procedure;

import java.io.Serializable;
import java.util.Objects;
import org.climbwright.quantity.altitude.Height;
import org.climbwright.quantity.path.GroundDistance;

/**
 * An obstacle ahead of the departure end of a runway.
 *
 * @param height height of its top above the elevation of the departure end, not above its own
 *     ground
 * @param distance distance from the departure end, above 0
 */
public record Obstacle(Height height, GroundDistance distance) implements Serializable {
    /**
     * Makes an obstacle.
     *
     * @param height height of its top above the elevation of the departure end
     * @param distance distance from the departure end, above 0
     * @throws IllegalArgumentException if the distance is 0
     */
    public Obstacle {
        Objects.requireNonNull(height, "height");
        if (!(distance.inMetres() > 0.0)) {
            throw new IllegalArgumentException(
                    "distance of an obstacle from the departure end must be above 0.0 m, but was "
                            + distance);
        }
    }
}
