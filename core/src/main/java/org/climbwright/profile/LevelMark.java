package org.climbwright.profile;

import java.util.Objects;
import org.climbwright.quantity.altitude.PressureAltitude;

/**
 * Something at a level that a climb passes, such as 0 °C, a tropopause or a transition altitude: to
 * be told among the events of the climb with its time, distance and fuel.
 *
 * @param level where it is
 * @param text what it is, in a few words
 */
public record LevelMark(PressureAltitude level, String text) {
    /**
     * Makes it of parts that are all there.
     *
     * @param level see above
     * @param text see above
     */
    public LevelMark {
        Objects.requireNonNull(level, "level");
        Objects.requireNonNull(text, "text");
    }
}
