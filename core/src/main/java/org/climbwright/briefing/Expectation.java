package org.climbwright.briefing;

import java.util.Locale;
import java.util.Optional;
import org.climbwright.path.ClimbState;

/**
 * One thing to expect on a climb, or to do, and by when.
 *
 * <p>Limits of use: what is to be done, and by when, are the flight manual's and the operator's to
 * say; here is what the figures of a plan come to.
 *
 * @param number its place in the order in which things are to be done or come, from 1
 * @param kind whether it is to be done, only comes, or is a check
 * @param what what it is, in a few words
 * @param at the climb where it comes
 * @param latest the climb at the latest point at which it is still done in time; empty where it is
 *     done as it comes, or that point lies before the climb begins
 * @param figure the figure that triggers it
 * @param reason why, in a line
 */
public record Expectation(
        int number,
        Kind kind,
        String what,
        ClimbState at,
        Optional<ClimbState> latest,
        String figure,
        String reason) {

    /** What is asked of a pilot. */
    public enum Kind {
        /** To be done. */
        DO,
        /** It comes, and nothing is to be done. */
        EXPECT,
        /** Figures to be read and held against the briefing. */
        CHECK
    }

    /**
     * Returns where it counts in the order of a climb.
     *
     * @return the latest point where there is one, otherwise where it comes
     */
    public ClimbState due() {
        return latest.orElse(at);
    }

    Expectation numbered(int place) {
        return new Expectation(place, kind, what, at, latest, figure, reason);
    }

    /**
     * Returns it for reading.
     *
     * @return a text; may change between versions
     */
    @Override
    public String toString() {
        return String.format(
                Locale.ROOT,
                "%d %s by %.0f ft pressure altitude, %.1f s: %s; %s",
                number,
                what,
                due().pressureAltitude().inFeet(),
                due().timeS(),
                figure,
                reason);
    }
}
