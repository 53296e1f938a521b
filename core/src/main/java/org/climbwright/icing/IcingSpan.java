package org.climbwright.icing;

import java.io.Serializable;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import org.climbwright.path.ClimbPath;
import org.climbwright.path.ClimbState;
import org.climbwright.path.Side;
import org.climbwright.quantity.altitude.PressureAltitude;

/**
 * A stretch of a climb in icing conditions, or in air whose humidity nobody knows.
 *
 * <pre>{@code
 * List<IcingSpan> spans = IcingSpan.along(path, rule);
 * spans.get(0).onBy(path, Duration.ofSeconds(60))   // where protection should be on
 * }</pre>
 *
 * <p>Limits of use: conditions conducive to icing in the air that the path was made with, not a
 * forecast of ice. The flight manual and what the crew sees decide.
 *
 * @param kind what the stretch is
 * @param entry the climb where it enters
 * @param exit the climb where it leaves
 * @param reason the figures against the rule, in words
 */
public record IcingSpan(Kind kind, ClimbState entry, ClimbState exit, String reason)
        implements Serializable {

    /** What a stretch is. */
    public enum Kind {
        /** Cold enough, with visible moisture. */
        CONDITIONS,
        /** Cold enough, but whether there is moisture is not known. */
        NOT_KNOWN
    }

    /**
     * Returns the stretches of a climb that the rule speaks of.
     *
     * <p>Every stretch between two bends of the path is searched at nine points; where one meets
     * the rule and the next does not, the level between is found by halving.
     *
     * @param path the climb
     * @param rule the rule
     * @return the spans from the lowest to the highest, none touching another of its kind; the rest
     *     of the climb is too warm, or dry by the rule
     * @accuracy entry and exit to 0.001 m of the level at which the threshold is met
     * @source see {@link EngineIcingRule}
     */
    public static List<IcingSpan> along(ClimbPath path, EngineIcingRule rule) {
        return new IcingSearch(path, rule).spans();
    }

    /**
     * Returns where the entry is.
     *
     * @return pressure altitude
     */
    public PressureAltitude bottom() {
        return entry.pressureAltitude();
    }

    /**
     * Returns where the exit is.
     *
     * @return pressure altitude
     */
    public PressureAltitude top() {
        return exit.pressureAltitude();
    }

    /**
     * Returns the point of the climb by which protection should be on.
     *
     * @param path the climb that this span was found along
     * @param lead how long before the entry
     * @return the climb that long before the entry; empty when that is before the climb begins
     */
    public Optional<ClimbState> onBy(ClimbPath path, Duration lead) {
        Duration time = entry.time().minus(lead);
        return time.isNegative() ? Optional.empty() : Optional.of(path.at(time));
    }

    static ClimbState arriving(ClimbPath path, double altitudeM) {
        return path.at(PressureAltitude.ofMetres(altitudeM), Side.BELOW);
    }

    static ClimbState leaving(ClimbPath path, double altitudeM) {
        return path.at(PressureAltitude.ofMetres(altitudeM), Side.ABOVE);
    }
}
