package org.climbwright.performance;

/** What the engines are set to: the most that the engine's maker allows for a phase of flight. */
public enum Rating {
    /** For take-off, and for some minutes only. */
    TAKE_OFF,
    /** For as long as needed, as with an engine out. */
    MAXIMUM_CONTINUOUS,
    /** For the climb. */
    CLIMB
}
