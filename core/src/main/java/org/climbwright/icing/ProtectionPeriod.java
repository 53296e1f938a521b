package org.climbwright.icing;

import java.io.Serializable;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.climbwright.path.ClimbPath;
import org.climbwright.path.ClimbState;
import org.climbwright.path.Side;
import org.climbwright.quantity.altitude.AltitudeChange;

/**
 * One time that protection is on along a climb: ahead of a span of icing conditions, and until the
 * end of the last one that is close behind.
 *
 * <p>Limits of use: off after the last span means that the rule is not met there, not that there is
 * no ice.
 *
 * @param on the climb by where protection should be on; its bottom if that is before it begins
 * @param isOnBeforeClimb whether it should be on before the climb begins
 * @param off the climb from where the rule does not ask for it; above the last span of conditions
 *     where that touches air of which nobody can tell, or that is colder than the rule speaks of
 * @param isOnAtTop whether it lasts to the end of the climb
 * @param spans the spans of icing conditions that it covers, upwards
 */
public record ProtectionPeriod(
        ClimbState on,
        boolean isOnBeforeClimb,
        ClimbState off,
        boolean isOnAtTop,
        List<IcingSpan> spans)
        implements Serializable {
    /**
     * Makes a period of spans that there are.
     *
     * @param on see above
     * @param isOnBeforeClimb see above
     * @param off see above
     * @param isOnAtTop see above
     * @param spans see above
     * @throws IllegalArgumentException if there are no spans
     */
    public ProtectionPeriod {
        spans = List.copyOf(spans);
        if (spans.isEmpty()) {
            throw new IllegalArgumentException("a period of protection needs a span to protect in");
        }
    }

    /**
     * The periods of a plan along a climb, upwards. Each begins with conditions, and goes on
     * through whatever the rule speaks of that touches or is close: not knowing is no reason for
     * off.
     */
    static List<ProtectionPeriod> along(
            ClimbPath path, List<IcingSpan> spans, ProtectionPlan plan) {
        Duration together = plan.lead().plus(plan.minimumOff());
        List<ProtectionPeriod> periods = new ArrayList<>();
        List<IcingSpan> joined = new ArrayList<>();
        for (IcingSpan span : spans) {
            if (!joined.isEmpty() && !isClose(joined, span, together)) {
                periods.add(of(path, joined, plan.lead()));
                joined.clear();
            }
            if (span.isConditions() || !joined.isEmpty()) {
                joined.add(span);
            }
        }
        if (!joined.isEmpty()) {
            periods.add(of(path, joined, plan.lead()));
        }
        return List.copyOf(periods);
    }

    private static boolean isClose(List<IcingSpan> joined, IcingSpan next, Duration together) {
        IcingSpan last = joined.get(joined.size() - 1);
        Duration gap = next.entry().time().minus(last.exit().time());
        boolean touches = gap.isZero() || gap.isNegative();
        return touches || gap.compareTo(together) < 0;
    }

    private static ProtectionPeriod of(ClimbPath path, List<IcingSpan> joined, Duration lead) {
        Optional<ClimbState> onBy = joined.get(0).onBy(path, lead);
        ClimbState off = joined.get(joined.size() - 1).exit();
        return new ProtectionPeriod(
                onBy.orElseGet(() -> path.at(path.bottom(), Side.BELOW)),
                onBy.isEmpty(),
                off,
                off.timeS() >= path.at(path.top(), Side.ABOVE).timeS(),
                joined.stream().filter(IcingSpan::isConditions).toList());
    }

    /**
     * Tells whether the period goes on after its last span of conditions, because the air there is
     * not known or colder than the rule speaks of.
     *
     * @return true if it does
     */
    public boolean goesOnAboveConditions() {
        return off.timeS() > spans.get(spans.size() - 1).exit().timeS();
    }

    /**
     * Returns how far below the entry protection should be on, at the rate of this climb.
     *
     * @return change of pressure altitude from there to the entry; less, or none, where a level is
     *     held before it
     */
    public AltitudeChange leadAltitude() {
        return spans.get(0).bottom().minus(on.pressureAltitude());
    }

    /**
     * Returns how long protection is on.
     *
     * @return time from on to off within the climb
     */
    public Duration duration() {
        return off.time().minus(on.time());
    }

    /**
     * Returns the period for reading.
     *
     * @return a text; may change between versions
     */
    @Override
    public String toString() {
        return String.format(
                Locale.ROOT,
                "on %s %.0f ft pressure altitude, %s %.0f ft, %.1f s later",
                isOnBeforeClimb ? "before the climb begins at" : "by",
                on.pressureAltitude().inFeet(),
                isOnAtTop ? "still on at the top," : "by the rule off not before",
                off.pressureAltitude().inFeet(),
                off.timeS() - on.timeS());
    }
}
