package org.climbwright.gradient.procedure;

import java.io.Serializable;
import java.util.Objects;
import org.climbwright.gradient.ClimbGradient;
import org.climbwright.quantity.altitude.AltitudeChange;
import org.climbwright.quantity.altitude.Height;
import org.climbwright.quantity.path.GroundGradient;

/**
 * An obstacle held against the surface of a system.
 *
 * <p>Limits of use: one obstacle straight ahead. An obstacle that is published instead of a
 * gradient still stands there: it is to be seen and avoided, or cleared by more than the least
 * gradient.
 */
public final class ObstacleAssessment implements Serializable {
    private static final long serialVersionUID = 1L;

    private final DepartureCriteria criteria;
    private final Obstacle obstacle;
    private final Height start;
    private final AltitudeChange penetration;
    private final GroundGradient required;

    ObstacleAssessment(DepartureCriteria criteria, Obstacle obstacle, Height start) {
        this.criteria = criteria;
        this.obstacle = Objects.requireNonNull(obstacle, "obstacle");
        this.start = Objects.requireNonNull(start, "start");
        AltitudeChange above = obstacle.height().minus(start);
        this.penetration =
                above.minus(
                        ClimbGradient.heightGained(
                                criteria.surfaceGradient(), obstacle.distance()));
        this.required = isPenetrating() ? atLeast(above) : criteria.leastGradient();
    }

    private GroundGradient atLeast(AltitudeChange above) {
        double height = above.inMetres();
        double distance = obstacle.distance().inMetres();
        double gradient =
                criteria == DepartureCriteria.US
                        ? ObstacleClearance.usGradient(height, distance)
                        : ObstacleClearance.pansOpsGradient(height, distance);
        // 76 % of 200 ft/NM is 152 ft/NM, and 40:1 a tenth less: between them 200 ft/NM suffices
        return GroundGradient.ofMetresPerMetre(
                Math.max(gradient, criteria.leastGradient().inMetresPerMetre()));
    }

    /**
     * Returns how far the obstacle stands above the surface.
     *
     * @return positive above it, negative below
     */
    public AltitudeChange penetration() {
        return penetration;
    }

    /**
     * Tells whether the obstacle stands above the surface.
     *
     * @return true above it, false below and where it just reaches it
     */
    public boolean isPenetrating() {
        return penetration.inMetres() > 0.0;
    }

    /**
     * Returns the gradient that clears the obstacle, never less than the least one of the system.
     *
     * @return the gradient, not rounded
     */
    public GroundGradient requiredGradient() {
        return required;
    }

    /**
     * Returns to what height that gradient is needed: where the climb passes over the obstacle.
     *
     * @return height above the departure end
     */
    public Height heightOverObstacle() {
        return start.plus(ClimbGradient.heightGained(required, obstacle.distance()));
    }

    /**
     * Tells whether the obstacle takes more than the least gradient, but up to so low a height that
     * the obstacle is published instead.
     *
     * @return true for a low, close-in obstacle
     */
    public boolean isPublishedInstead() {
        return required.compareTo(criteria.leastGradient()) > 0
                && heightOverObstacle().compareTo(criteria.closeInHeight().first()) <= 0;
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof ObstacleAssessment that
                && criteria == that.criteria
                && obstacle.equals(that.obstacle)
                && start.equals(that.start);
    }

    @Override
    public int hashCode() {
        return Objects.hash(criteria.name(), obstacle, start);
    }

    /**
     * Returns the assessment for reading.
     *
     * @return a text; may change between versions
     */
    @Override
    public String toString() {
        return criteria + ": " + penetration + " above the surface, takes " + required;
    }
}
