package org.climbwright.briefing.plan;

import java.util.Objects;
import java.util.Optional;
import org.climbwright.gradient.cloudtop.CloudAhead;
import org.climbwright.gradient.cloudtop.CloudTop;
import org.climbwright.path.ClimbPath;
import org.climbwright.quantity.altitude.AltitudeChange;

/**
 * A cloud ahead of a climb, and by how much somebody wants to come over it.
 *
 * <p>Limits of use: the clearance is the operator's; without one there is no verdict.
 *
 * @param cloud the cloud
 * @param clearance what counts as over it; empty where nobody said
 */
public record PlannedCloud(CloudAhead cloud, Optional<AltitudeChange> clearance) {
    /**
     * Makes it of parts that are both there.
     *
     * @param cloud the cloud
     * @param clearance what counts as over it
     */
    public PlannedCloud {
        Objects.requireNonNull(cloud, "cloud");
        Objects.requireNonNull(clearance, "clearance");
    }

    /**
     * Returns what a climb makes of it.
     *
     * @param path the climb
     * @return the answer, with no verdict where there is no clearance
     */
    public CloudTop along(ClimbPath path) {
        return clearance
                .map(wanted -> CloudTop.along(path, cloud, wanted))
                .orElseGet(() -> CloudTop.along(path, cloud));
    }
}
