package org.climbwright.icing;

import java.io.Serializable;
import java.time.Duration;
import java.util.Locale;
import java.util.Objects;

/**
 * How one part of an aeroplane is to be protected: by which rule, in which way, how long ahead.
 *
 * <p>Limits of use: what the flight manual and the operator's procedures say comes first.
 *
 * @param rule when there are icing conditions
 * @param method prevention or removal
 * @param lead how long before the conditions protection should be on
 * @param minimumOff what is not worth switching off for: spans closer together than this and the
 *     lead count as one
 */
public record ProtectionPlan(
        IcingRule rule, ProtectionMethod method, Duration lead, Duration minimumOff)
        implements Serializable {
    /**
     * Makes a plan.
     *
     * @param rule when there are icing conditions
     * @param method prevention or removal
     * @param lead how long before
     * @param minimumOff what is not worth switching off for
     * @throws IllegalArgumentException if a time is negative, or there is a lead for removal
     */
    public ProtectionPlan {
        Objects.requireNonNull(rule, "rule");
        Objects.requireNonNull(method, "method");
        check("the lead of ice protection", lead);
        check("the minimum time off of ice protection", minimumOff);
        if (method == ProtectionMethod.DE_ICE && !lead.isZero()) {
            throw new IllegalArgumentException(
                    "de-icing removes ice that has formed and has no lead, but had one of "
                            + seconds(lead)
                            + " s");
        }
    }

    private static void check(String what, Duration time) {
        if (time.isNegative()) {
            throw new IllegalArgumentException(
                    what + " must be 0 s or more, but was " + seconds(time) + " s");
        }
    }

    private static double seconds(Duration time) {
        return time.getSeconds() + time.getNano() / 1e9;
    }

    /**
     * Returns this plan for air with more visible moisture, such as a cloud that was reported.
     *
     * @param also what counts as visible moisture besides what the rule has
     * @return a copy that differs in it
     */
    public ProtectionPlan withMoisture(VisibleMoisture also) {
        return new ProtectionPlan(
                rule.withMoisture(rule.moisture().or(also)), method, lead, minimumOff);
    }

    /**
     * A plan for prevention.
     *
     * @param rule when there are icing conditions
     * @param lead how long before them it should be on
     * @param minimumOff what is not worth switching off for
     * @return the plan
     * @throws IllegalArgumentException if a time is negative
     */
    public static ProtectionPlan antiIce(IcingRule rule, Duration lead, Duration minimumOff) {
        return new ProtectionPlan(rule, ProtectionMethod.ANTI_ICE, lead, minimumOff);
    }

    /**
     * A plan for removal.
     *
     * @param rule when there are icing conditions
     * @param minimumOff what is not worth switching off for
     * @return the plan
     * @throws IllegalArgumentException if the time is negative
     */
    public static ProtectionPlan deIce(IcingRule rule, Duration minimumOff) {
        return new ProtectionPlan(rule, ProtectionMethod.DE_ICE, Duration.ZERO, minimumOff);
    }

    /**
     * Returns the plan for reading.
     *
     * @return a text; may change between versions
     */
    @Override
    public String toString() {
        return String.format(
                Locale.ROOT,
                "%s by %s, %.0f s ahead, together where off for less than %.0f s",
                method == ProtectionMethod.ANTI_ICE ? "anti-ice" : "de-ice",
                rule,
                seconds(lead),
                seconds(minimumOff));
    }
}
