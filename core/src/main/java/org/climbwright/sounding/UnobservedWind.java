package org.climbwright.sounding;

/** What to take for the wind where a balloon reported none. */
public enum UnobservedWind {
    /** Nothing: the wind there is not known, and what needs it is absent. */
    NOT_KNOWN,
    /** Below the lowest observed wind, that wind; above the highest, nothing. */
    HOLD_LOWEST,
    /** A calm, below the lowest and above the highest observed wind. */
    CALM
}
