package org.climbwright.briefing;

/**
 * Something that happens at a level of a climb.
 *
 * @param kind what it is
 * @param text the same in a few words for a pilot
 */
public record ClimbEvent(Kind kind, String text) {

    /** The kinds of event, in the order in which they are told at one level. */
    public enum Kind {
        /** The climb begins. */
        BOTTOM,
        /** A change to another speed begins: mostly, the speed limit ends. */
        CHANGE_OF_SPEED,
        /** The speed that was changed to is reached. */
        SPEED_REACHED,
        /** From calibrated airspeed to Mach. */
        CROSSOVER,
        /** From QNH to standard setting. */
        TRANSITION_ALTITUDE,
        /** The air passes 0 °C. */
        ZERO_CELSIUS,
        /** The point by which ice protection should be on. */
        ICE_PROTECTION_ON,
        /** Icing conditions end. */
        ICING_EXIT,
        /** From here on it can be told again whether there are icing conditions. */
        ICING_NOT_KNOWN_EXIT,
        /** Icing conditions begin. */
        ICING_ENTRY,
        /** Whether there are icing conditions cannot be told: humidity, or colder than a rule. */
        ICING_NOT_KNOWN_ENTRY,
        /** It begins to get warmer upwards. */
        INVERSION_BASE,
        /** It begins to get colder upwards again. */
        INVERSION_TOP,
        /** The stratosphere begins. */
        TROPOPAUSE,
        /** A round 10,000 ft on the altimeter: time for the check. */
        CHECK,
        /** What the cabin should show at a check. */
        CABIN,
        /** A point with a restriction. */
        RESTRICTION,
        /** Where the rate is to be reduced before the level. */
        LEVEL_OFF,
        /** A rate begins to be held, or is left again. */
        HELD_RATE,
        /** Something of the programme cannot be kept: a rate, an airspeed, a level. */
        NOT_KEPT,
        /** A level begins to be held on the way. */
        LEVEL_HELD,
        /** The climb goes on from a level held. */
        LEVEL_LEFT,
        /** Bleed for anti-ice begins or ends, and with it another thrust. */
        BLEED,
        /** The rate has fallen below the one to be reported. */
        LOW_RATE,
        /** A named point without a restriction. */
        NAMED_POINT,
        /** The table of rates jumps. */
        RATE_JUMP,
        /** The climb ends. */
        TOP
    }
}
