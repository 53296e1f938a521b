package org.climbwright.gradient.restriction;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Collectors;
import org.climbwright.gradient.restriction.RestrictionOutcome.Verdict;
import org.climbwright.path.ClimbPath;
import org.climbwright.path.ClimbState;
import org.climbwright.path.Side;
import org.climbwright.quantity.pressure.AltimeterSetting;

/**
 * The restrictions of a departure against a predicted climb.
 *
 * <pre>{@code
 * Restrictions restrictions = Restrictions.along(path, qnh, list);
 * restrictions.outcomes()                        // each met, missed or not known, with margins
 * restrictions.firstMissed()                     // where something must be done about it
 * restrictions.fromTheBeginning().governing()    // the steepest gradient that one takes
 * restrictions.from(state).governing()           // the same from where the aeroplane is
 * restrictions.conflicts()                       // what no climb can meet
 * }</pre>
 *
 * <p>A climb that levels off before a point is at its top there. One that does not reach its level,
 * see {@link ClimbPath#reachesItsLevel()}, or whose distances are not known since the wind is not,
 * is not known beyond; what is not known is never met.
 *
 * <p>Limits of use: for study and simulation, not for use in flight. The prediction has the errors
 * of its weather and of its table of rates, and no error of the altimeter; the clearance and the
 * published procedure say what is restricted. The flight manual, the operator's procedures, local
 * regulations and licensed practice decide.
 */
public final class Restrictions {
    private final ClimbPath path;
    private final AltimeterSetting qnh;
    private final List<Restriction> ordered;
    private final List<RestrictionOutcome> outcomes;

    private Restrictions(ClimbPath path, AltimeterSetting qnh, List<Restriction> restrictions) {
        this.path = Objects.requireNonNull(path, "path");
        this.qnh = Objects.requireNonNull(qnh, "qnh");
        this.ordered = Conflict.byDistance(restrictions);
        ClimbState start = path.at(path.bottom(), Side.BELOW);
        this.outcomes =
                ordered.stream()
                        .map(each -> RestrictionOutcome.of(path, qnh, each, start))
                        .toList();
    }

    /**
     * Returns what a climb makes of restrictions.
     *
     * @param path the climb predicted
     * @param qnh altimeter setting of the day
     * @param restrictions the restrictions, in any order; distances count from the bottom of the
     *     path
     * @return the answers
     * @throws org.climbwright.quantity.OutsideModelException if a level is out of range
     * @accuracy 1e-6 m in the level over a point
     */
    public static Restrictions along(
            ClimbPath path, AltimeterSetting qnh, List<Restriction> restrictions) {
        return new Restrictions(path, qnh, restrictions);
    }

    /**
     * Returns the answer for each restriction.
     *
     * @return by distance; at one distance as they were given
     */
    public List<RestrictionOutcome> outcomes() {
        return outcomes;
    }

    /**
     * Returns the first restriction that is missed.
     *
     * @return the nearest one; empty where none is missed, although some may be not known
     */
    public Optional<RestrictionOutcome> firstMissed() {
        return outcomes.stream().filter(each -> each.verdict() == Verdict.MISSED).findFirst();
    }

    /**
     * Returns the answer for all of them.
     *
     * @return missed where one is, else not known where one is not, else met
     */
    public Verdict verdict() {
        boolean isKnown = outcomes.stream().allMatch(each -> each.verdict() == Verdict.MET);
        return firstMissed().isPresent()
                ? Verdict.MISSED
                : isKnown ? Verdict.MET : Verdict.NOT_KNOWN;
    }

    /**
     * Returns what no climb can meet.
     *
     * @return the conflicts, see {@link Conflict#among}
     */
    public List<Conflict> conflicts() {
        return Conflict.among(ordered, qnh);
    }

    /**
     * Returns what the restrictions take from where the climb begins.
     *
     * @return the requirements of all points ahead of it
     */
    public ClimbRequirements fromTheBeginning() {
        return from(path.at(path.bottom(), Side.BELOW));
    }

    /**
     * Returns what the restrictions take from where the aeroplane is.
     *
     * @param here the aeroplane, on this path or off it; its distance counts from the same point
     * @return the requirements of the points ahead of it; those behind take nothing
     * @throws org.climbwright.quantity.OutsideModelException if a level is out of range
     */
    public ClimbRequirements from(ClimbState here) {
        return ClimbRequirements.of(path, qnh.inPascals(), ordered, here);
    }

    /**
     * Returns the answers for reading.
     *
     * @return a text; may change between versions
     */
    @Override
    public String toString() {
        return outcomes.stream()
                .map(RestrictionOutcome::toString)
                .collect(
                        Collectors.joining(
                                "; ", "restrictions: ", outcomes.isEmpty() ? "none" : ""));
    }
}
