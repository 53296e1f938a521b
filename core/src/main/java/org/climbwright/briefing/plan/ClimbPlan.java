package org.climbwright.briefing.plan;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Consumer;
import org.climbwright.gradient.restriction.Restriction;
import org.climbwright.icing.ProtectionPlan;
import org.climbwright.quantity.altitude.PressureAltitude;
import org.climbwright.quantity.path.Mass;
import org.climbwright.quantity.path.TrueDirection;
import org.climbwright.quantity.temperature.TemperatureDifference;
import org.climbwright.sounding.UnobservedWind;

/**
 * What is to be briefed: the climb that somebody means to fly.
 *
 * <p>{@link #of} has what every climb needs; the rest is added by a {@code with}.
 *
 * @param aerodrome where it begins
 * @param means by what the aeroplane climbs: a table of rates, or thrust and drag
 * @param mass its mass where the climb begins
 * @param speeds the speeds to fly
 * @param level the level to climb to
 * @param track the track, kept all the way
 * @param iceProtection what is to be protected from ice, and how: engines, airframe, or neither
 * @param cabin how its cabin is to be pressurised; empty where it is not
 * @param restrictions altitudes and speeds to keep at points along the track, in any order
 * @param levelOff how the level is to be captured; empty where nobody asks
 * @param cloud a cloud ahead; empty where nobody asks
 * @param turbulence from which figures on turbulence is told; empty where nobody asks
 * @param unobservedWind what to take where no wind was observed
 * @param smallestInversion how much warmer the top of an inversion must be to be told
 */
public record ClimbPlan(
        Aerodrome aerodrome,
        ClimbMeans means,
        Mass mass,
        ScheduledSpeeds speeds,
        PressureAltitude level,
        TrueDirection track,
        List<ProtectionPlan> iceProtection,
        Optional<PlannedCabin> cabin,
        List<Restriction> restrictions,
        Optional<PlannedLevelOff> levelOff,
        Optional<PlannedCloud> cloud,
        Optional<PlannedTurbulence> turbulence,
        UnobservedWind unobservedWind,
        TemperatureDifference smallestInversion) {

    /**
     * Makes it of parts that are all there.
     *
     * @param aerodrome see above
     * @param means see above
     * @param mass see above
     * @param speeds see above
     * @param level see above
     * @param track see above
     * @param iceProtection see above
     * @param cabin see above
     * @param restrictions see above
     * @param levelOff see above
     * @param cloud see above
     * @param turbulence see above
     * @param unobservedWind see above
     * @param smallestInversion see above
     */
    public ClimbPlan {
        Objects.requireNonNull(aerodrome, "aerodrome");
        Objects.requireNonNull(means, "means");
        Objects.requireNonNull(mass, "mass");
        Objects.requireNonNull(speeds, "speeds");
        Objects.requireNonNull(level, "level");
        Objects.requireNonNull(track, "track");
        iceProtection = List.copyOf(iceProtection);
        Objects.requireNonNull(cabin, "cabin");
        restrictions = List.copyOf(restrictions);
        Objects.requireNonNull(levelOff, "levelOff");
        Objects.requireNonNull(cloud, "cloud");
        Objects.requireNonNull(turbulence, "turbulence");
        Objects.requireNonNull(unobservedWind, "unobservedWind");
        Objects.requireNonNull(smallestInversion, "smallestInversion");
    }

    /**
     * Returns a plan without ice protection and without a cabin under pressure, without
     * restrictions, level-off, cloud and turbulence, for which a wind that nobody observed is not
     * known and an inversion of 1 K is told.
     *
     * @param aerodrome where it begins
     * @param means by what the aeroplane climbs
     * @param mass its mass where the climb begins
     * @param speeds the speeds to fly
     * @param level the level to climb to
     * @param track the track, kept all the way
     * @return the plan
     */
    public static ClimbPlan of(
            Aerodrome aerodrome,
            ClimbMeans means,
            Mass mass,
            ScheduledSpeeds speeds,
            PressureAltitude level,
            TrueDirection track) {
        return new ClimbPlan(
                aerodrome,
                means,
                mass,
                speeds,
                level,
                track,
                List.of(),
                Optional.empty(),
                List.of(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                UnobservedWind.NOT_KNOWN,
                TemperatureDifference.ofKelvins(1));
    }

    /**
     * Returns this plan from another aerodrome.
     *
     * @param other the aerodrome
     * @return a copy that differs in it
     */
    public ClimbPlan withAerodrome(Aerodrome other) {
        return changed(draft -> draft.aerodrome = other);
    }

    /**
     * Returns this plan with ice protection.
     *
     * @param other what is to be protected, and how
     * @return a copy that differs in it
     */
    public ClimbPlan withIceProtection(List<ProtectionPlan> other) {
        return changed(draft -> draft.iceProtection = other);
    }

    /**
     * Returns this plan with a cabin under pressure.
     *
     * @param other how it is to be pressurised
     * @return a copy that differs in it
     */
    public ClimbPlan withCabin(PlannedCabin other) {
        return changed(draft -> draft.cabin = Optional.of(other));
    }

    /**
     * Returns this plan with another rule for winds that nobody observed.
     *
     * @param other what to take
     * @return a copy that differs in it
     */
    public ClimbPlan withUnobservedWind(UnobservedWind other) {
        return changed(draft -> draft.unobservedWind = other);
    }

    /**
     * Returns this plan that tells of other inversions.
     *
     * @param other how much warmer the top must be
     * @return a copy that differs in it
     */
    public ClimbPlan withSmallestInversion(TemperatureDifference other) {
        return changed(draft -> draft.smallestInversion = other);
    }

    /**
     * Returns this plan with restrictions.
     *
     * @param other altitudes and speeds to keep
     * @return a copy that differs in it
     */
    public ClimbPlan withRestrictions(List<Restriction> other) {
        return changed(draft -> draft.restrictions = other);
    }

    /**
     * Returns this plan that captures its level in some way.
     *
     * @param other how
     * @return a copy that differs in it
     */
    public ClimbPlan withLevelOff(PlannedLevelOff other) {
        return changed(draft -> draft.levelOff = Optional.of(other));
    }

    /**
     * Returns this plan with a cloud ahead.
     *
     * @param other the cloud, and by how much to come over it
     * @return a copy that differs in it
     */
    public ClimbPlan withCloud(PlannedCloud other) {
        return changed(draft -> draft.cloud = Optional.of(other));
    }

    /**
     * Returns this plan that tells of turbulence.
     *
     * @param other from which figures on
     * @return a copy that differs in it
     */
    public ClimbPlan withTurbulence(PlannedTurbulence other) {
        return changed(draft -> draft.turbulence = Optional.of(other));
    }

    private ClimbPlan changed(Consumer<Draft> change) {
        Draft draft = new Draft(this);
        change.accept(draft);
        return draft.plan();
    }

    /** A plan in the making, so that a copy names what differs and nothing else. */
    private static final class Draft {
        private Aerodrome aerodrome;
        private ClimbMeans means;
        private Mass mass;
        private ScheduledSpeeds speeds;
        private PressureAltitude level;
        private TrueDirection track;
        private List<ProtectionPlan> iceProtection;
        private Optional<PlannedCabin> cabin;
        private List<Restriction> restrictions;
        private Optional<PlannedLevelOff> levelOff;
        private Optional<PlannedCloud> cloud;
        private Optional<PlannedTurbulence> turbulence;
        private UnobservedWind unobservedWind;
        private TemperatureDifference smallestInversion;

        Draft(ClimbPlan plan) {
            aerodrome = plan.aerodrome;
            means = plan.means;
            mass = plan.mass;
            speeds = plan.speeds;
            level = plan.level;
            track = plan.track;
            iceProtection = plan.iceProtection;
            cabin = plan.cabin;
            restrictions = plan.restrictions;
            levelOff = plan.levelOff;
            cloud = plan.cloud;
            turbulence = plan.turbulence;
            unobservedWind = plan.unobservedWind;
            smallestInversion = plan.smallestInversion;
        }

        ClimbPlan plan() {
            return new ClimbPlan(
                    aerodrome,
                    means,
                    mass,
                    speeds,
                    level,
                    track,
                    iceProtection,
                    cabin,
                    restrictions,
                    levelOff,
                    cloud,
                    turbulence,
                    unobservedWind,
                    smallestInversion);
        }
    }
}
