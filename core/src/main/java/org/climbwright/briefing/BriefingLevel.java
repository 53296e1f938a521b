package org.climbwright.briefing;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.climbwright.path.ClimbState;
import org.climbwright.path.Side;
import org.climbwright.quantity.altitude.AltitudeOnQnh;

/**
 * One line of a briefing: the climb at a level, and what happens there.
 *
 * @param state the climb there
 * @param side from which side, where speed or rate jumps at the level
 * @param altitudeOnQnh what an exact altimeter on QNH shows; empty above the transition altitude
 * @param events what happens there; empty for a level of the regular table
 */
public record BriefingLevel(
        ClimbState state,
        Side side,
        Optional<AltitudeOnQnh> altitudeOnQnh,
        List<ClimbEvent> events) {

    /**
     * Makes a line whose events nobody can change.
     *
     * @param state the climb there
     * @param side from which side
     * @param altitudeOnQnh what an exact altimeter shows
     * @param events what happens there
     */
    public BriefingLevel {
        events = List.copyOf(events);
    }

    /**
     * Returns the line for reading.
     *
     * @return a text; may change between versions
     */
    @Override
    public String toString() {
        return events.stream()
                .map(ClimbEvent::text)
                .collect(Collectors.joining(", ", state + (events.isEmpty() ? "" : ": "), ""));
    }
}
