package org.climbwright.cabin.exposure;

import java.time.Duration;
import java.util.List;
import org.climbwright.cabin.exposure.OxygenRequirement.Condition;
import org.climbwright.quantity.altitude.CabinAltitude;
import org.climbwright.quantity.altitude.PressureAltitude;

/**
 * The bands of every rule set, as published; a test compares them with the tables they are from.
 */
final class OxygenBands {
    private static final Duration AT_ONCE = Duration.ZERO;
    private static final Duration BEYOND_30_MINUTES = Duration.ofMinutes(30);

    private static final String PART_91 =
            "14 CFR 91.211(a)-(b), text on cyanavigation.com and library.cfi.fyi";
    private static final String PART_121_CREW =
            "CCAR-121.329(b) (Chinese twin rule, same paragraph numbers), public translation site";
    private static final String PART_121_CREW_ENGLISH =
            "121.329(b)(1) quoted in English with its CCAR-121 twin, kpfans.com; " + PART_121_CREW;
    private static final String PRINT_135 =
            "14 CFR vol. 3 print p.135 (text between 121.329 and 121.331), faraim.org";
    private static final String PRINT_136 = "14 CFR vol. 3 print p.136, 121.333(e), faraim.org";
    private static final String PART_135 = "14 CFR 135.157, laws9.com";
    private static final String UK = "UK SI 2016/765 art. 74";

    private OxygenBands() {}

    static List<CabinOxygenBand> ofCabin(OxygenRuleSet rules) {
        return switch (rules) {
            case US_PART_91 ->
                    List.of(
                            cabin(
                                    12_500,
                                    14_000,
                                    new OxygenRequirement(
                                            "14 CFR 91.211(a)(1)",
                                            "required minimum flight crew",
                                            "uses oxygen for the part of the flight there that is"
                                                    + " longer than 30 minutes",
                                            Condition.ANY_CABIN,
                                            BEYOND_30_MINUTES,
                                            PART_91,
                                            Evidence.SEEN)),
                            cabin(
                                    14_000,
                                    new OxygenRequirement(
                                            "14 CFR 91.211(a)(2)",
                                            "required minimum flight crew",
                                            "uses oxygen during the entire time there",
                                            Condition.ANY_CABIN,
                                            AT_ONCE,
                                            PART_91,
                                            Evidence.SEEN)),
                            cabin(
                                    15_000,
                                    new OxygenRequirement(
                                            "14 CFR 91.211(a)(3)",
                                            "each occupant",
                                            "is provided with oxygen",
                                            Condition.ANY_CABIN,
                                            AT_ONCE,
                                            PART_91,
                                            Evidence.SEEN)));
            case US_PART_121_TURBINE ->
                    List.of(
                            cabin(
                                    10_000,
                                    12_000,
                                    new OxygenRequirement(
                                            "14 CFR 121.329(b)(1) (turbine)",
                                            "flight crew on flight-deck duty",
                                            "is provided with oxygen and uses it",
                                            Condition.ANY_CABIN,
                                            AT_ONCE,
                                            PART_121_CREW_ENGLISH,
                                            Evidence.SEEN)),
                            cabin(
                                    10_000,
                                    12_000,
                                    new OxygenRequirement(
                                            "14 CFR 121.329(b)(1) (turbine)",
                                            "other crew",
                                            "is provided with oxygen for the part of the flight"
                                                    + " there beyond 30 minutes",
                                            Condition.ANY_CABIN,
                                            BEYOND_30_MINUTES,
                                            PART_121_CREW_ENGLISH,
                                            Evidence.SEEN)),
                            cabin(
                                    12_000,
                                    new OxygenRequirement(
                                            "14 CFR 121.329(b)(2) (turbine)",
                                            "flight crew on duty",
                                            "is provided with oxygen and uses it; other crew is"
                                                    + " provided with it for the whole time",
                                            Condition.ANY_CABIN,
                                            AT_ONCE,
                                            PART_121_CREW,
                                            Evidence.SEEN_IN_TWIN_RULE)),
                            cabin(
                                    10_000,
                                    14_000,
                                    new OxygenRequirement(
                                            "14 CFR 121.329(c)(1) (turbine)",
                                            "10 % of passengers",
                                            "have a supply for the part of the flight there beyond"
                                                    + " 30 minutes",
                                            Condition.ANY_CABIN,
                                            BEYOND_30_MINUTES,
                                            "band implied by 121.333(e)(2): " + PRINT_136,
                                            Evidence.IMPLIED)),
                            cabin(
                                    14_000,
                                    15_000,
                                    new OxygenRequirement(
                                            "14 CFR 121.329(c)(2) (turbine)",
                                            "30 % of passengers",
                                            "have a supply for that part of the flight",
                                            Condition.ANY_CABIN,
                                            AT_ONCE,
                                            PRINT_135,
                                            Evidence.SEEN)),
                            cabin(
                                    15_000,
                                    new OxygenRequirement(
                                            "14 CFR 121.329(c)(3) (turbine)",
                                            "every passenger",
                                            "has a supply for the entire time there",
                                            Condition.ANY_CABIN,
                                            AT_ONCE,
                                            PRINT_135,
                                            Evidence.SEEN)),
                            cabin(
                                    10_000,
                                    14_000,
                                    new OxygenRequirement(
                                            "14 CFR 121.333(e)(2)",
                                            "10 % of passenger-cabin occupants",
                                            "after a depressurisation have a supply for the entire"
                                                    + " flight there, and every occupant for at"
                                                    + " least 10 minutes; above, as in"
                                                    + " 121.329(c)(2) and (3)",
                                            Condition.AFTER_DEPRESSURISATION,
                                            AT_ONCE,
                                            PRINT_136,
                                            Evidence.SEEN)),
                            cabin(
                                    8_000,
                                    new OxygenRequirement(
                                            "14 CFR 121.333(e)(3)",
                                            "2 % of occupants, at least one person",
                                            "have first-aid oxygen for the entire flight there"
                                                    + " after a depressurisation, from at least"
                                                    + " two dispensers, where occupants came down"
                                                    + " from cabin altitudes, not of the"
                                                    + " aeroplane, above flight level 250 (that"
                                                    + " cabin altitude is meant is from memory)",
                                            Condition.AFTER_DEPRESSURISATION,
                                            AT_ONCE,
                                            PRINT_136,
                                            Evidence.SEEN)));
            case US_PART_135 ->
                    List.of(
                            cabin(
                                    10_000,
                                    15_000,
                                    new OxygenRequirement(
                                            "14 CFR 135.157(b)(2)(i)",
                                            "10 % of occupants",
                                            "have a supply for the part of the flight there that is"
                                                    + " longer than 30 minutes",
                                            Condition.ANY_CABIN,
                                            BEYOND_30_MINUTES,
                                            PART_135,
                                            Evidence.SEEN)),
                            cabin(
                                    15_000,
                                    new OxygenRequirement(
                                            "14 CFR 135.157(b)(2)(ii)",
                                            "each occupant",
                                            "has a supply for 1 hour, or for 30 minutes if the"
                                                    + " aeroplane can descend to 15,000 ft within"
                                                    + " 4 minutes",
                                            Condition.ANY_CABIN,
                                            AT_ONCE,
                                            PART_135,
                                            Evidence.SEEN)));
            case UK_AIR_NAVIGATION_ORDER ->
                    List.of(
                            cabin(
                                    10_000,
                                    13_000,
                                    new OxygenRequirement(
                                            "UK ANO 2016 art. 74",
                                            "pilot and crew",
                                            "use oxygen beyond 30 minutes there",
                                            Condition.ANY_CABIN,
                                            BEYOND_30_MINUTES,
                                            UK,
                                            Evidence.SEEN)),
                            cabin(
                                    13_000,
                                    new OxygenRequirement(
                                            "UK ANO 2016 art. 74",
                                            "pilot and crew",
                                            "use oxygen continuously",
                                            Condition.ANY_CABIN,
                                            AT_ONCE,
                                            UK,
                                            Evidence.SEEN)));
            case US_PART_121_RECIPROCATING, EUROPEAN_AIR_OPERATIONS -> List.of();
        };
    }

    static List<FlightOxygenBand> ofFlight(OxygenRuleSet rules) {
        return switch (rules) {
            case US_PART_91 ->
                    List.of(
                            flight(
                                    25_000,
                                    new OxygenRequirement(
                                            "14 CFR 91.211(b)(1)(i)",
                                            "each occupant",
                                            "has a supply for 10 minutes at hand, in addition, for"
                                                    + " a descent after a loss of pressure",
                                            Condition.ANY_CABIN,
                                            AT_ONCE,
                                            PART_91,
                                            Evidence.SEEN)),
                            flight(
                                    35_000,
                                    new OxygenRequirement(
                                            "14 CFR 91.211(b)(1)(ii)",
                                            "one pilot",
                                            "wears a mask, which may supply itself above a cabin"
                                                    + " altitude of 14,000 ft; not required up to"
                                                    + " flight level 410 with two pilots at the"
                                                    + " controls and masks donned within 5 s with"
                                                    + " one hand",
                                            Condition.ANY_CABIN,
                                            AT_ONCE,
                                            PART_91,
                                            Evidence.SEEN)),
                            flight(
                                    35_000,
                                    new OxygenRequirement(
                                            "14 CFR 91.211(b)(2)",
                                            "remaining pilot at the controls",
                                            "puts a mask on and uses it while the other is away"
                                                    + " from the controls, whatever (b)(1)(ii)"
                                                    + " does not require",
                                            Condition.ANY_CABIN,
                                            AT_ONCE,
                                            "14 CFR 91.211(b)(2) from memory",
                                            Evidence.FROM_MEMORY)));
            case US_PART_121_RECIPROCATING ->
                    List.of(
                            flight(
                                    10_000,
                                    new OxygenRequirement(
                                            "14 CFR 121.331(b)",
                                            "each crew member (reciprocating, pressurised)",
                                            "has a supply for the whole time there; on flight-deck"
                                                    + " duty for 2 hours at least, as for an even"
                                                    + " descent to 10,000 ft in 10 minutes and 110"
                                                    + " minutes there",
                                            Condition.ANY_CABIN,
                                            AT_ONCE,
                                            PRINT_135,
                                            Evidence.SEEN)),
                            flight(
                                    8_000,
                                    25_000,
                                    new OxygenRequirement(
                                            "14 CFR 121.331(c)(1)",
                                            "10 % of passengers",
                                            "have a supply for 30 minutes, if a descent to 14,000"
                                                    + " ft or lower within 4 minutes is always"
                                                    + " possible",
                                            Condition.ANY_CABIN,
                                            AT_ONCE,
                                            PRINT_135,
                                            Evidence.SEEN)));
            case US_PART_135 ->
                    List.of(
                            flight(
                                    25_000,
                                    new OxygenRequirement(
                                            "14 CFR 135.157(b)(1)",
                                            "each occupant other than pilots",
                                            "has a supply for 10 minutes",
                                            Condition.ANY_CABIN,
                                            AT_ONCE,
                                            PART_135,
                                            Evidence.SEEN)));
            case EUROPEAN_AIR_OPERATIONS ->
                    List.of(
                            flight(
                                    25_000,
                                    new OxygenRequirement(
                                            "EU air operations rules (CAT.IDE.A.235 area)",
                                            "all passenger-compartment occupants",
                                            "have a supply for 10 minutes; below as well, if a"
                                                    + " descent to a pressure altitude of 13,000 ft"
                                                    + " within 4 minutes is not possible",
                                            Condition.ANY_CABIN,
                                            AT_ONCE,
                                            "EU regulation sentence pair NL/FR on wordscope.be",
                                            Evidence.SEEN)));
            case US_PART_121_TURBINE, UK_AIR_NAVIGATION_ORDER -> List.of();
        };
    }

    /** Of editions that are not in force: the figures in force were not seen. */
    static List<FlightOxygenBand> superseded(OxygenRuleSet rules) {
        return switch (rules) {
            case US_PART_121_TURBINE ->
                    List.of(
                            flight(
                                    25_000,
                                    new OxygenRequirement(
                                            "14 CFR 121.333(c)(3)",
                                            "remaining pilot",
                                            "puts a mask on when the other leaves the station; the"
                                                    + " altitude has been raised since",
                                            Condition.ANY_CABIN,
                                            AT_ONCE,
                                            "14 CFR 121.333(c)(3) quoted in a pilots' forum, thread"
                                                    + " 53789",
                                            Evidence.SEEN_IN_OLDER_EDITION)));
            case US_PART_91,
                    US_PART_121_RECIPROCATING,
                    US_PART_135,
                    EUROPEAN_AIR_OPERATIONS,
                    UK_AIR_NAVIGATION_ORDER ->
                    List.of();
        };
    }

    private static CabinOxygenBand cabin(int aboveFt, int upToFt, OxygenRequirement requirement) {
        return CabinOxygenBand.between(
                CabinAltitude.ofFeet(aboveFt), CabinAltitude.ofFeet(upToFt), requirement);
    }

    private static CabinOxygenBand cabin(int aboveFt, OxygenRequirement requirement) {
        return CabinOxygenBand.above(CabinAltitude.ofFeet(aboveFt), requirement);
    }

    private static FlightOxygenBand flight(int aboveFt, int upToFt, OxygenRequirement requirement) {
        return FlightOxygenBand.between(
                PressureAltitude.ofFeet(aboveFt), PressureAltitude.ofFeet(upToFt), requirement);
    }

    private static FlightOxygenBand flight(int aboveFt, OxygenRequirement requirement) {
        return FlightOxygenBand.above(PressureAltitude.ofFeet(aboveFt), requirement);
    }
}
