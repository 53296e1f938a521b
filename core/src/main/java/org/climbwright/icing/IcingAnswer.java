package org.climbwright.icing;

/**
 * What a rule says of one point of a climb.
 *
 * <p>Limits of use: none of these is "no icing". The flight manual and what the crew sees decide.
 */
public enum IcingAnswer {
    /** Cold enough by the rule, with visible moisture. */
    CONDITIONS,
    /** Cold enough, but whether there is moisture is not known. */
    NOT_KNOWN,
    /** Visible moisture in air colder than the rule speaks of: ice crystals are possible there. */
    COLDER_THAN_THE_RULE,
    /** Too warm, or no visible moisture by the rule. */
    NOT_MET
}
