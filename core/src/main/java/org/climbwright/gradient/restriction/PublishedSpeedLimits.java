package org.climbwright.gradient.restriction;

import org.climbwright.quantity.altitude.AltitudeChange;
import org.climbwright.quantity.altitude.AltitudeOnQnh;
import org.climbwright.quantity.speed.CalibratedAirspeed;

/**
 * Speed limits that regulations publish, with the condition of each.
 *
 * <pre>{@code
 * PublishedSpeedLimits.belowTenThousandFeet()      // not above 250 kn below 10000 ft on QNH
 * }</pre>
 *
 * <p>They are told in indicated airspeed, for which the calibrated stands here. The printed miles
 * per hour are rounded; the knots count.
 *
 * <p>Limits of use: for study and simulation, not for use in flight. Authorities differ, change
 * their rules and authorise exceptions; local regulations and the clearance decide.
 */
public final class PublishedSpeedLimits {
    private PublishedSpeedLimits() {}

    /** Classes of airspace. */
    public enum AirspaceClass {
        /** Class A. */
        A,
        /** Class B. */
        B,
        /** Class C. */
        C,
        /** Class D. */
        D,
        /** Class E. */
        E,
        /** Class F. */
        F,
        /** Class G. */
        G
    }

    /**
     * Returns the limit below 10,000 ft, unless otherwise authorised: 250 kt. ICAO has the same
     * figure for some flights, see {@link #icaoAppliesTo}.
     *
     * @return 250 kt below 10,000 ft above mean sea level; not at it
     * @source 14 CFR 91.117(a)
     */
    public static SpeedRestriction belowTenThousandFeet() {
        return SpeedRestriction.below(AltitudeOnQnh.ofFeet(10000), CalibratedAirspeed.ofKnots(250));
    }

    /**
     * Returns the limit within 4 NM of the primary aerodrome of class C or D airspace, unless
     * otherwise authorised: 200 kt.
     *
     * @param surface altitude of the surface there
     * @return 200 kt at or below 2500 ft above the surface
     * @source 14 CFR 91.117(b)
     */
    public static SpeedRestriction nearPrimaryAerodrome(AltitudeOnQnh surface) {
        return SpeedRestriction.atOrBelow(
                surface.plus(AltitudeChange.ofFeet(2500)), CalibratedAirspeed.ofKnots(200));
    }

    /**
     * Returns the limit underlying class B airspace or in a corridor for visual flight through it:
     * 200 kt.
     *
     * @return 200 kt at any altitude there
     * @source 14 CFR 91.117(c)
     */
    public static SpeedRestriction beneathClassB() {
        return SpeedRestriction.notAbove(CalibratedAirspeed.ofKnots(200));
    }

    /**
     * Tells to whom the 250 kt below 10,000 ft of ICAO apply.
     *
     * @param airspace class of the airspace
     * @param byInstrumentRules whether the flight is under instrument flight rules
     * @return true for visual flight in C to G, and for instrument flight in D to G
     * @source ICAO Annex 11, appendix 4, of which a summary was seen; its metric figure, 3050 m,
     *     from memory
     */
    public static boolean icaoAppliesTo(AirspaceClass airspace, boolean byInstrumentRules) {
        AirspaceClass first = byInstrumentRules ? AirspaceClass.D : AirspaceClass.C;
        return airspace.compareTo(first) >= 0;
    }
}
