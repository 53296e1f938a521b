package org.climbwright.gradient.restriction;

import java.io.Serializable;
import java.util.List;
import java.util.Objects;

/**
 * A level cleared to, and the restrictions that hold on the way there.
 *
 * <pre>{@code
 * Restriction least = Restriction.of("ALPHA", GroundDistance.ofNauticalMiles(20),
 *         AltitudeRestriction.atOrAbove(Level.of(AltitudeOnQnh.ofFeet(3000))));
 * Level first = Level.of(PressureAltitude.ofFlightLevel(290));
 * Clearance clearance = new Clearance(first, List.of(least));
 * Level next = Level.of(PressureAltitude.ofFlightLevel(250));
 * clearance.restatedByUsPractice(next).restrictions().size()       // 0
 * }</pre>
 *
 * <p>Limits of use: for study and simulation, not for use in flight. What a clearance means is a
 * matter of the wording and of the state whose controller gives it; other states than the one named
 * have other rules. Who is in doubt asks the controller.
 *
 * @param level the level to maintain in the end, behind all points
 * @param restrictions what holds on the way
 */
public record Clearance(Level level, List<Restriction> restrictions) implements Serializable {
    /** The rule by which restating works here. */
    public static final String RULE =
            "FAA AIM 4-4-10(g): an altitude restated without its restrictions cancels them (US"
                    + " practice)";

    /**
     * Makes a clearance.
     *
     * @param level see above
     * @param restrictions see above
     */
    public Clearance {
        Objects.requireNonNull(level, "level");
        restrictions = List.copyOf(restrictions);
    }

    /**
     * Returns the clearance that a level alone makes of this one, by US practice: the earlier
     * restrictions are cancelled.
     *
     * @param newLevel the level of the new clearance
     * @return that level, without a restriction
     * @source FAA AIM 4-4-10(g), example 1
     */
    public Clearance restatedByUsPractice(Level newLevel) {
        return new Clearance(newLevel, List.of());
    }

    /**
     * Returns the clearance that a level and restrictions make of this one, by US practice: the
     * restrictions restated hold, and no others.
     *
     * @param newLevel the level of the new clearance
     * @param restated the restrictions told with it
     * @return that level with those restrictions
     * @source FAA AIM 4-4-10(g), examples 2 and 3
     */
    public Clearance restatedByUsPractice(Level newLevel, List<Restriction> restated) {
        return new Clearance(newLevel, restated);
    }
}
