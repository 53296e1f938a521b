package org.climbwright.cabin.exposure;

import java.time.Duration;
import java.util.List;
import org.climbwright.quantity.altitude.CabinAltitude;
import org.climbwright.quantity.altitude.PressureAltitude;

/**
 * Rules that say above which altitudes oxygen is required, each under its name: authorities and
 * kinds of operation differ, and none stands for another.
 *
 * <p>Some paragraphs go by cabin altitude, others by the flight level of the aeroplane. They are
 * asked by different methods with different types.
 *
 * <pre>{@code
 * CabinAltitude cabin = CabinAltitude.ofFeet(13000);
 * OxygenRuleSet.US_PART_91.at(cabin).size()                                     // 1
 * OxygenRuleSet.US_PART_91.inForce(cabin, Duration.ofMinutes(30)).size()        // 0
 * OxygenRuleSet.US_PART_91.inForce(cabin, Duration.ofMinutes(31)).size()        // 1
 * OxygenRuleSet.UK_AIR_NAVIGATION_ORDER.at(CabinAltitude.ofFeet(10000)).size()  // 0
 * }</pre>
 *
 * <p>Limits of use: {@link #extent} says which paragraphs are here; no answer is not "no oxygen
 * required". The operator's procedures and the regulations in force where one flies decide.
 *
 * @source in each {@link OxygenRequirement#source}
 */
public enum OxygenRuleSet {
    /** General operating rules of the United States; 91.211(b)(2) is from memory. */
    US_PART_91("14 CFR 91.211", "(a)(1) to (3), (b)(1)(i) and (ii); (b)(2) from memory"),
    /**
     * Airlines of the United States, aeroplanes with turbine engines; that 121.333(e)(3) goes by
     * cabin altitudes above flight level 250 is from memory.
     */
    US_PART_121_TURBINE(
            "14 CFR 121.329 and 121.333, turbine engines",
            "121.329(b) and (c), of which (c)(1) is implied by another paragraph; after a"
                    + " depressurisation 121.333(e)(2) and (e)(3); of 121.333(c)(3), a mask while"
                    + " one pilot is away, only what is superseded: from which level it is in"
                    + " force is not known here"),
    /** Airlines of the United States, pressurised aeroplanes with reciprocating engines. */
    US_PART_121_RECIPROCATING(
            "14 CFR 121.331, reciprocating engines, pressurised cabin",
            "121.331(b) and (c)(1); none of 121.327"),
    /** Commuter and on-demand operations of the United States. */
    US_PART_135("14 CFR 135.157", "paragraph (b)(1) and (b)(2), of occupants other than pilots"),
    /** Air operations of the European Union. */
    EUROPEAN_AIR_OPERATIONS(
            "EU air operations rules (CAT.IDE.A.235 area)",
            "one sentence on occupants of the passenger compartment"),
    /** General rule of the United Kingdom, with bounds of 10,000 and 13,000 ft. */
    UK_AIR_NAVIGATION_ORDER("UK ANO 2016 art. 74", "pilot and crew");

    private final String words;
    private final String extent;

    OxygenRuleSet(String words, String extent) {
        this.words = words;
        this.extent = extent;
    }

    /**
     * Returns the name of the rules.
     *
     * @return the name, as one cites it
     */
    public String words() {
        return words;
    }

    /**
     * Returns which paragraphs are here.
     *
     * @return the extent in words
     */
    public String extent() {
        return extent;
    }

    /**
     * Returns the bands that go by cabin altitude, also those that hold only after a
     * depressurisation.
     *
     * @return the bands in the order of the rule; empty if the rules here have none
     */
    public List<CabinOxygenBand> cabinBands() {
        return OxygenBands.ofCabin(this);
    }

    /**
     * Returns the bands that go by the altitude of the aeroplane.
     *
     * @return the bands in the order of the rule; empty if the rules here have none
     */
    public List<FlightOxygenBand> flightBands() {
        return OxygenBands.ofFlight(this);
    }

    /**
     * Returns the bands of editions that are not in force any more, where the figure in force was
     * not seen: none of the other methods answers them.
     *
     * @return the bands, with evidence {@link Evidence#SEEN_IN_OLDER_EDITION}; empty if there are
     *     none
     */
    public List<FlightOxygenBand> supersededFlightBands() {
        return OxygenBands.superseded(this);
    }

    /**
     * Returns what may be required at a cabin altitude in any cabin: whatever the time spent there.
     *
     * @param cabin cabin altitude
     * @return the bands that contain it, without those of {@link #afterDepressurisation}; empty if
     *     none does
     */
    public List<CabinOxygenBand> at(CabinAltitude cabin) {
        return at(cabin, OxygenRequirement.Condition.ANY_CABIN);
    }

    /**
     * Returns what may be required at a cabin altitude beside {@link #at}, once the cabin has lost
     * its pressure.
     *
     * @param cabin cabin altitude
     * @return the bands that contain it and hold only after a depressurisation; empty if none does
     */
    public List<CabinOxygenBand> afterDepressurisation(CabinAltitude cabin) {
        return at(cabin, OxygenRequirement.Condition.AFTER_DEPRESSURISATION);
    }

    private List<CabinOxygenBand> at(CabinAltitude cabin, OxygenRequirement.Condition condition) {
        return cabinBands().stream()
                .filter(band -> band.requirement().condition() == condition)
                .filter(band -> band.contains(cabin))
                .toList();
    }

    /**
     * Returns what is in force at a cabin altitude after some time, in any cabin.
     *
     * <p>A paragraph for the part of a flight beyond 30 minutes is not in force at 30 minutes, and
     * is a moment later. Whether a flight will be that long is known before; {@link #at} has the
     * paragraph then.
     *
     * @param cabin cabin altitude
     * @param there the time spent at the altitudes of a band, 0 or more
     * @return the bands that contain the altitude and whose condition of time is met
     * @throws IllegalArgumentException if the time is negative
     */
    public List<CabinOxygenBand> inForce(CabinAltitude cabin, Duration there) {
        if (there.isNegative()) {
            throw new IllegalArgumentException(
                    "the time spent at an altitude must be 0 or more, but was " + there);
        }
        return at(cabin).stream().filter(band -> band.requirement().isInForceAfter(there)).toList();
    }

    /**
     * Returns what may be required of an aeroplane at a flight level.
     *
     * @param flight pressure altitude of the aeroplane, not of its cabin
     * @return the bands that contain it, without {@link #supersededFlightBands}; empty if none does
     */
    public List<FlightOxygenBand> atFlightLevel(PressureAltitude flight) {
        return flightBands().stream().filter(band -> band.contains(flight)).toList();
    }
}
