package org.climbwright.gradient.restriction;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.climbwright.path.ClimbPath;
import org.climbwright.path.ClimbState;
import org.climbwright.quantity.path.GroundDistance;

/**
 * What the restrictions ahead take, from where the aeroplane is: made by {@link Restrictions#from}.
 *
 * <p>A mean gradient not below the governing one and not above the capping one is at or above every
 * lower bound and at or below every upper one; where the first is more than the second, no single
 * gradient does, though a climb in steps may.
 *
 * <p>Limits of use: for study and simulation, not for use in flight. The clearance, the published
 * procedure and the flight manual decide.
 *
 * @param required what lower bounds take, by distance
 * @param allowed what upper bounds allow, by distance
 * @param notKnownBecause why nothing can be said; empty where it can
 */
public record ClimbRequirements(
        List<ClimbRequirement> required, List<ClimbRequirement> allowed, String notKnownBecause)
        implements Serializable {
    private static final Comparator<ClimbRequirement> BY_GRADIENT =
            Comparator.comparingDouble(ClimbRequirement::gradientMpm);

    /**
     * Makes the requirements.
     *
     * @param required see above
     * @param allowed see above
     * @param notKnownBecause see above
     */
    public ClimbRequirements {
        required = List.copyOf(required);
        allowed = List.copyOf(allowed);
        Objects.requireNonNull(notKnownBecause, "notKnownBecause");
    }

    static ClimbRequirements of(
            ClimbPath path, double qnhPa, List<Restriction> ordered, ClimbState here) {
        List<ClimbRequirement> required = new ArrayList<>();
        List<ClimbRequirement> allowed = new ArrayList<>();
        Optional<GroundDistance> flown = here.distance();
        if (flown.isEmpty()) {
            return new ClimbRequirements(
                    required,
                    allowed,
                    "the distance flown is not known, since the wind was not, and so the distances"
                            + " ahead are not");
        }
        for (Restriction restriction : ordered) {
            double ahead = restriction.distance().inMetres() - flown.get().inMetres();
            Optional<AltitudeRestriction> altitude = restriction.altitude();
            if (ClimbRequirement.isAhead(ahead) && altitude.isPresent()) {
                altitude.get()
                        .lower()
                        .map(at -> ClimbRequirement.of(path, qnhPa, restriction, at, here, ahead))
                        .ifPresent(required::add);
                altitude.get()
                        .upper()
                        .map(at -> ClimbRequirement.of(path, qnhPa, restriction, at, here, ahead))
                        .ifPresent(allowed::add);
            }
        }
        return new ClimbRequirements(required, allowed, "");
    }

    /**
     * Tells whether the distances ahead are known.
     *
     * @return false where nothing can be said
     */
    public boolean isKnown() {
        return notKnownBecause.isEmpty();
    }

    /**
     * Returns the requirement that governs.
     *
     * @return the one with the steepest gradient over the ground; empty where no level ahead is
     *     above the aeroplane, or the distances are not known
     */
    public Optional<ClimbRequirement> governing() {
        return required.stream().max(BY_GRADIENT).filter(steepest -> steepest.gradientMpm() > 0.0);
    }

    /**
     * Returns the upper bound that caps the climb.
     *
     * @return the one that allows the least gradient, below zero where the aeroplane is already
     *     above it; empty where there is no upper bound ahead, or the distances are not known
     */
    public Optional<ClimbRequirement> capping() {
        return allowed.stream().min(BY_GRADIENT);
    }
}
