package org.climbwright.briefing;

import java.util.List;
import java.util.Optional;
import org.climbwright.gradient.cloudtop.CloudAhead;
import org.climbwright.icing.VisibleMoisture;
import org.climbwright.path.ClimbState;
import org.climbwright.quantity.altitude.GeometricAltitude;
import org.climbwright.quantity.path.GroundDistance;

/**
 * A cloud ahead as visible moisture: present within it, as it has grown until then and as near and
 * as far as the error of its distance allows.
 */
record CloudMoisture(CloudAhead cloud) implements VisibleMoisture {
    private static final long serialVersionUID = 1L;

    @Override
    public Answer at(ClimbState state) {
        Optional<GeometricAltitude> altitude = state.air().geometricAltitude();
        if (altitude.isEmpty()) {
            return Answer.NOT_KNOWN;
        }
        double metres = altitude.get().inMetres();
        if (metres < cloud.base().inMetres() || metres > cloud.topM(state.timeS())) {
            return Answer.ABSENT;
        }
        return state.distance().map(this::within).orElse(Answer.NOT_KNOWN);
    }

    private Answer within(GroundDistance distance) {
        double errorM = cloud.distanceError().inMetres();
        double metres = distance.inMetres();
        return metres >= cloud.nearEdge().inMetres() - errorM
                        && metres <= cloud.farEdge().inMetres() + errorM
                ? Answer.PRESENT
                : Answer.ABSENT;
    }

    @Override
    public String found(List<ClimbState> states) {
        return states.stream().anyMatch(state -> at(state) == Answer.PRESENT)
                ? "in the cloud ahead"
                : "outside the cloud ahead";
    }

    @Override
    public String notKnown(List<ClimbState> states) {
        return "whether it is in the cloud ahead is not known";
    }
}
