package org.climbwright.icing;

import java.io.Serializable;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.stream.Collectors;
import org.climbwright.path.ClimbPath;

/**
 * Where a climb meets icing conditions by one plan, and when protection is due.
 *
 * <p>Limits of use: see {@link IcingRule}. That there is no span is not "no icing".
 *
 * @param plan the plan
 * @param spans all that its rule speaks of, upwards
 * @param periods when protection is due for the spans of conditions, upwards
 */
public record ProtectionAdvice(
        ProtectionPlan plan, List<IcingSpan> spans, List<ProtectionPeriod> periods)
        implements Serializable {
    /**
     * Makes advice of its parts.
     *
     * @param plan the plan
     * @param spans all that its rule speaks of
     * @param periods when protection is due
     */
    public ProtectionAdvice {
        Objects.requireNonNull(plan, "plan");
        spans = List.copyOf(spans);
        periods = List.copyOf(periods);
    }

    /**
     * Returns the advice for a climb.
     *
     * @param path the climb
     * @param plan the plan
     * @return spans and periods
     * @accuracy see {@link IcingSpan#along}
     * @source see {@link IcingRule}
     */
    public static ProtectionAdvice along(ClimbPath path, ProtectionPlan plan) {
        List<IcingSpan> spans = IcingSpan.along(path, plan.rule());
        return new ProtectionAdvice(plan, spans, ProtectionPeriod.along(path, spans, plan));
    }

    /**
     * Returns the spans of one answer.
     *
     * @param answer what the rule says
     * @return the spans, upwards
     */
    public List<IcingSpan> spans(IcingAnswer answer) {
        return spans.stream().filter(span -> span.answer() == answer).toList();
    }

    /**
     * Returns the period that covers a span of conditions.
     *
     * @param span one of the spans of conditions here
     * @return the period
     * @throws IllegalArgumentException if there is no such span of conditions here
     */
    public ProtectionPeriod period(IcingSpan span) {
        return periods.stream()
                .filter(period -> period.spans().contains(span))
                .findFirst()
                .orElseThrow(
                        () ->
                                new IllegalArgumentException(
                                        "no protection is due for the span from "
                                                + span.bottom()
                                                + " to "
                                                + span.top()));
    }

    /**
     * Returns the advice for reading.
     *
     * @return a text; may change between versions
     */
    @Override
    public String toString() {
        String part = plan.rule().part().name().toLowerCase(Locale.ROOT);
        if (periods.isEmpty()) {
            boolean isUnknown =
                    spans.stream().anyMatch(span -> span.answer() != IcingAnswer.NOT_MET);
            return part
                    + ": no icing conditions by its rule, which is not \"no icing\""
                    + (isUnknown ? ", and in part it cannot be told" : "");
        }
        return periods.stream()
                .map(ProtectionPeriod::toString)
                .collect(Collectors.joining("; ", part + ": ", ""));
    }
}
