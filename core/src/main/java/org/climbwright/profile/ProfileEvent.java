package org.climbwright.profile;

import java.util.Objects;
import org.climbwright.path.ClimbState;

/**
 * Something that happens on a climb, with the aeroplane before and after it.
 *
 * @param kind what it is
 * @param text the same in a few words
 * @param arriving the aeroplane as it comes there
 * @param leaving the aeroplane as it goes on: another rate where air, wind, speed or bleed jumps,
 *     another time where a level is held
 */
public record ProfileEvent(Kind kind, String text, ClimbState arriving, ClimbState leaving) {

    /** The kinds of event. */
    public enum Kind {
        /** The climb begins. */
        BEGINNING,
        /** A change to another speed begins. */
        CHANGE_OF_SPEED,
        /** The speed that was changed to is reached. */
        SPEED_REACHED,
        /** From calibrated airspeed to Mach number, or back. */
        CROSSOVER,
        /** A rate begins to be held, or is left again. */
        HELD_RATE,
        /** Something of the programme cannot be kept, or gives more than it was to. */
        NOT_KEPT,
        /** A level begins to be held. */
        LEVEL_HELD,
        /** A level is left again. */
        LEVEL_LEFT,
        /** Bleed for ice protection begins or ends. */
        BLEED,
        /** The rate has fallen below the one to be reported. */
        LOW_RATE,
        /** A point of the programme without a restriction. */
        NAMED_POINT,
        /** A level of the air or of the altimeter. */
        MARK,
        /** The climb ends. */
        TOP
    }

    /**
     * Makes it of parts that are all there.
     *
     * @param kind see above
     * @param text see above
     * @param arriving see above
     * @param leaving see above
     */
    public ProfileEvent {
        Objects.requireNonNull(kind, "kind");
        Objects.requireNonNull(text, "text");
        Objects.requireNonNull(arriving, "arriving");
        Objects.requireNonNull(leaving, "leaving");
    }

    /**
     * Returns the event for reading.
     *
     * @return a text; may change between versions
     */
    @Override
    public String toString() {
        return arriving.equals(leaving)
                ? text + ": " + leaving
                : text + ": " + arriving + "; leaving: " + leaving;
    }
}
