package org.climbwright.profile;

import java.util.Locale;
import java.util.Objects;
import org.climbwright.path.ClimbState;
import org.climbwright.path.Side;
import org.climbwright.quantity.altitude.AltitudeChange;
import org.climbwright.quantity.altitude.PressureAltitude;
import org.climbwright.quantity.path.GroundDistance;
import org.climbwright.unit.UnitScale;

/**
 * What one change does to a climb: more time, distance and fuel, or less, and another top.
 *
 * <p>Where both climbs end at the same level, the whole of both is compared. Where one ends lower,
 * for its ceiling or whatever stops it, both are compared as they arrive at that lower top: what
 * the other does beyond is no part of the difference.
 *
 * <p>Limits of use: see {@link ClimbSensitivity}.
 *
 * @param change what is changed
 * @param before the climb as it was
 * @param after the climb with the change
 */
public record ClimbDifference(ClimbChange change, ClimbProfile before, ClimbProfile after) {
    /**
     * Makes it of parts that are all there.
     *
     * @param change see above
     * @param before see above
     * @param after see above
     */
    public ClimbDifference {
        Objects.requireNonNull(change, "change");
        Objects.requireNonNull(before, "before");
        Objects.requireNonNull(after, "after");
    }

    /**
     * Returns how much higher the climb ends with the change.
     *
     * @return difference of the tops; negative where it ends lower
     */
    public AltitudeChange higherTop() {
        return after.top().minus(before.top());
    }

    /**
     * Tells whether the climb ends lower with the change.
     *
     * @return true if its top is lower
     */
    public boolean endsLower() {
        return after.top().compareTo(before.top()) < 0;
    }

    /**
     * Returns where the two are compared.
     *
     * @return the lower of both tops
     */
    public PressureAltitude comparedAt() {
        return endsLower() ? after.top() : before.top();
    }

    /**
     * Returns how much longer it takes to where the two are compared.
     *
     * @return difference of time [s]; negative where the change saves time
     */
    public double moreTimeS() {
        return reached(after).timeS() - reached(before).timeS();
    }

    /**
     * Returns how much more fuel it takes to where the two are compared.
     *
     * @return difference of the fuel's mass [kg]; negative where the change saves fuel
     */
    public double moreFuelKg() {
        return fuelKg(after) - fuelKg(before);
    }

    /**
     * Returns how much farther over the ground it goes to where the two are compared.
     *
     * @return difference of distance [m], negative where the climb is shorter; NaN where the wind
     *     is not known all the way
     */
    public double moreDistanceM() {
        return distanceM(after) - distanceM(before);
    }

    private ClimbState reached(ClimbProfile climb) {
        boolean isWhole = before.top().equals(after.top());
        return climb.at(comparedAt(), isWhole ? Side.ABOVE : Side.BELOW);
    }

    private double fuelKg(ClimbProfile climb) {
        return climb.climb().mass().inKilograms() - reached(climb).mass().inKilograms();
    }

    private double distanceM(ClimbProfile climb) {
        return reached(climb).distance().map(GroundDistance::inMetres).orElse(Double.NaN);
    }

    /**
     * Returns the difference for reading.
     *
     * @return a text; may change between versions
     */
    @Override
    public String toString() {
        String differences =
                String.format(
                        Locale.ROOT,
                        "%s: %+.1f s, %+.1f kg of fuel and %+.2f NM to %.0f ft",
                        change.text(),
                        moreTimeS() + 0.0,
                        moreFuelKg() + 0.0,
                        UnitScale.NAUTICAL_MILE.fromSi(moreDistanceM()) + 0.0,
                        comparedAt().inFeet());
        return higherTop().inMetres() == 0.0
                ? differences
                : String.format(
                        Locale.ROOT, "%s, and the top %+.0f ft", differences, higherTop().inFeet());
    }
}
