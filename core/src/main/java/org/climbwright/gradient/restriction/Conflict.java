package org.climbwright.gradient.restriction;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import org.climbwright.quantity.pressure.AltimeterSetting;

/**
 * Two restrictions that no climb can meet both, or one that no level meets.
 *
 * <p>On a climb no level is left downwards, so that what must be reached at one point may not be
 * forbidden there or farther on. Which bounds are above which is told on the QNH of the day.
 *
 * <pre>{@code
 * List<Restriction> list = List.of(
 *         Restriction.of("ALPHA", GroundDistance.ofNauticalMiles(20),
 *                 AltitudeRestriction.atOrAbove(Level.of(PressureAltitude.ofFlightLevel(120)))),
 *         Restriction.of("BRAVO", GroundDistance.ofNauticalMiles(25),
 *                 AltitudeRestriction.atOrBelow(Level.of(AltitudeOnQnh.ofFeet(10000)))));
 * Conflict.among(list, AltimeterSetting.standard()).size()       // 1
 * }</pre>
 *
 * <p>Limits of use: for study and simulation, not for use in flight. A conflict is a question to
 * the controller or the publisher of the procedure; none found is no statement that a climb can
 * meet them all.
 *
 * @param earlier the one whose lower bound is too high for the other
 * @param later the one whose upper bound is too low; the same where its own window is empty
 * @param reason why, with its figures
 */
public record Conflict(Restriction earlier, Restriction later, String reason)
        implements Serializable {
    /**
     * Makes a conflict.
     *
     * @param earlier see above
     * @param later see above
     * @param reason see above
     */
    public Conflict {
        Objects.requireNonNull(earlier, "earlier");
        Objects.requireNonNull(later, "later");
        Objects.requireNonNull(reason, "reason");
    }

    /**
     * Returns all conflicts among restrictions of one climb.
     *
     * @param restrictions the restrictions, in any order
     * @param qnh altimeter setting of the day
     * @return each pair once, by distance of the earlier point; empty if none was found
     * @throws org.climbwright.quantity.OutsideModelException if a level is out of range
     */
    public static List<Conflict> among(List<Restriction> restrictions, AltimeterSetting qnh) {
        List<Restriction> ordered = byDistance(restrictions);
        List<Conflict> found = new ArrayList<>();
        for (int i = 0; i < ordered.size(); i++) {
            for (int j = 0; j < ordered.size(); j++) {
                if (ordered.get(i).distance().compareTo(ordered.get(j).distance()) <= 0) {
                    addIfAny(found, ordered.get(i), ordered.get(j), i == j, qnh);
                }
            }
        }
        return List.copyOf(found);
    }

    static List<Restriction> byDistance(List<Restriction> restrictions) {
        return restrictions.stream().sorted(Comparator.comparing(Restriction::distance)).toList();
    }

    private static void addIfAny(
            List<Conflict> found,
            Restriction earlier,
            Restriction later,
            boolean isOne,
            AltimeterSetting qnh) {
        if (earlier.altitude().isEmpty() || later.altitude().isEmpty()) {
            return;
        }
        AltitudeRestriction first = earlier.altitude().get();
        AltitudeRestriction second = later.altitude().get();
        if (isOne) {
            first.emptyBecause(qnh)
                    .ifPresent(
                            why ->
                                    found.add(
                                            new Conflict(
                                                    earlier, later, earlier.where() + ": " + why)));
            return;
        }
        double gap =
                Figures.withoutRounding(
                        first.lowest(qnh.inPascals()) - second.highest(qnh.inPascals()));
        if (gap > 0.0) {
            boolean isSamePoint = earlier.distance().equals(later.distance());
            found.add(
                    new Conflict(
                            earlier,
                            later,
                            earlier
                                    + " cannot go with "
                                    + later
                                    + (isSamePoint
                                            ? " at the same distance"
                                            : " farther on, as a climb does not go down again")
                                    + ": on QNH "
                                    + qnh.text()
                                    + " the first is "
                                    + Figures.feet(gap)
                                    + " above the second"));
        }
    }
}
