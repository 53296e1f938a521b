package org.climbwright.icing;

import java.io.Serializable;
import java.time.Duration;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.climbwright.path.ClimbPath;
import org.climbwright.path.ClimbState;
import org.climbwright.quantity.altitude.AltitudeChange;
import org.climbwright.quantity.altitude.PressureAltitude;
import org.climbwright.quantity.temperature.StaticAirTemperature;
import org.climbwright.quantity.temperature.TotalAirTemperature;

/**
 * A stretch of a climb of which a rule says one thing: that there are icing conditions, that nobody
 * can tell, or that it is colder than the rule speaks of.
 *
 * <pre>{@code
 * List<IcingSpan> spans = IcingSpan.along(path, rule);
 * spans.get(0).onBy(path, Duration.ofSeconds(60))   // where protection should be on
 * }</pre>
 *
 * <p>Limits of use: conditions conducive to icing in the air that the path was made with, not a
 * forecast of ice. The flight manual and what the crew sees decide.
 *
 * @param part what the rule protects
 * @param answer what the rule says, never that it is not met
 * @param entry the climb where the stretch begins
 * @param exit the climb where it ends
 * @param coldestTotal the lowest total air temperature met
 * @param coldestStatic the lowest static air temperature met
 * @param reason the figures against the rule, in words
 */
public record IcingSpan(
        ProtectedPart part,
        IcingAnswer answer,
        ClimbState entry,
        ClimbState exit,
        TotalAirTemperature coldestTotal,
        StaticAirTemperature coldestStatic,
        String reason)
        implements Serializable {

    /**
     * Returns the stretches of a climb that a rule speaks of.
     *
     * <p>Every stretch between two bends of the path or edges of the moisture is searched at nine
     * points or more, no farther apart than 50 m; where one meets other thresholds than the next,
     * the level between is found by halving. While a level is held, the same is done in time.
     *
     * @param path the climb
     * @param rule the rule
     * @return the spans from the lowest to the highest, none touching another of its answer; the
     *     rest of the climb is too warm, or dry by the rule
     * @accuracy entry and exit to 0.001 m of the level at which the threshold is met, or to 0.001 s
     *     of the time where that is while a level is held; what begins and ends between two points,
     *     in air that does not tell its bends, is not seen
     * @source see {@link IcingRule}
     */
    public static List<IcingSpan> along(ClimbPath path, IcingRule rule) {
        return new IcingSearch(path, rule).spans();
    }

    /**
     * Tells whether the rule finds icing conditions here.
     *
     * @return false where nobody can tell, or it is colder than the rule speaks of
     */
    public boolean isConditions() {
        return answer == IcingAnswer.CONDITIONS;
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
     * Returns how deep the stretch is.
     *
     * @return change of pressure altitude from entry to exit
     */
    public AltitudeChange depth() {
        return top().minus(bottom());
    }

    /**
     * Returns how long the climb is in it, with what time it holds a level there.
     *
     * @return time from entry to exit
     */
    public Duration duration() {
        return exit.time().minus(entry.time());
    }

    /**
     * Returns the point of the climb by which protection should be on.
     *
     * @param path the climb that this span was found along
     * @param lead how long before the entry
     * @return the climb that long before the entry; empty when that is before the climb begins
     */
    public Optional<ClimbState> onBy(ClimbPath path, Duration lead) {
        return path.before(entry, lead);
    }

    /**
     * Returns the span for reading.
     *
     * @return a text; may change between versions
     */
    @Override
    public String toString() {
        return String.format(
                Locale.ROOT,
                "%s, %s from %.0f to %.0f ft, %.1f s: %s",
                part.name().toLowerCase(Locale.ROOT),
                switch (answer) {
                    case CONDITIONS -> "icing conditions";
                    case NOT_KNOWN -> "icing not known";
                    case COLDER_THAN_THE_RULE -> "colder than the rule";
                    case NOT_MET -> "rule not met";
                },
                bottom().inFeet(),
                top().inFeet(),
                exit.timeS() - entry.timeS(),
                reason);
    }
}
