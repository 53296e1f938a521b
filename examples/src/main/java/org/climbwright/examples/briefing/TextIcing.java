package org.climbwright.examples.briefing;

import java.util.Optional;
import org.climbwright.briefing.ClimbBriefing;
import org.climbwright.icing.IcingAnswer;
import org.climbwright.icing.IcingRule;
import org.climbwright.icing.IcingSpan;
import org.climbwright.icing.ProtectionAdvice;
import org.climbwright.icing.ProtectionMethod;
import org.climbwright.icing.ProtectionPeriod;
import org.climbwright.icing.ProtectionPlan;
import org.climbwright.path.ClimbState;

/** Where icing conditions are met, and by when protection should be on. */
final class TextIcing {
    private final TextPage page;
    private final ClimbBriefing briefing;

    private TextIcing(TextPage page, ClimbBriefing briefing) {
        this.page = page;
        this.briefing = briefing;
    }

    static void write(TextPage page, ClimbBriefing briefing) {
        TextIcing chapter = new TextIcing(page, briefing);
        briefing.iceProtection().forEach(chapter::write);
    }

    private void write(ProtectionAdvice advice) {
        IcingRule rule = advice.plan().rule();
        page.line("%s ICING CONDITIONS, by %s", rule.part().name(), rule.basis());
        if (advice.spans().isEmpty()) {
            page.line("  The rule is met nowhere on this climb. That is not \"no icing\".");
        } else if (advice.spans(IcingAnswer.CONDITIONS).isEmpty()) {
            page.line("  The rule is met nowhere that it can be told.");
        }
        for (IcingSpan span : advice.spans()) {
            describe(span);
            if (span.answer() == IcingAnswer.NOT_KNOWN) {
                ifMoist(span, advice.plan());
            }
        }
        for (ProtectionPeriod period : advice.periods()) {
            describe(period, advice.plan());
        }
        page.blank();
    }

    private void describe(IcingSpan span) {
        page.line(
                "  %s to %s, %s to %s: %s",
                page.onAltimeter(span.bottom()),
                page.onAltimeter(span.top()),
                TextPage.minutes(span.entry().timeS()),
                TextPage.minutes(span.exit().timeS()),
                switch (span.answer()) {
                    case CONDITIONS -> "in conditions";
                    case NOT_KNOWN -> "cannot tell";
                    case COLDER_THAN_THE_RULE -> "colder than the rule speaks of";
                    case NOT_MET -> "not met";
                });
        page.paragraph("    ", span.reason() + ".");
    }

    private void ifMoist(IcingSpan span, ProtectionPlan plan) {
        page.paragraph(
                "    ",
                "If there is visible moisture, "
                        + method(plan)
                        + " "
                        + onBy(span.onBy(briefing.path(), plan.lead()))
                        + ".");
    }

    private String onBy(Optional<ClimbState> latest) {
        return latest.map(state -> "on by " + page.at(state)).orElse("on before the climb begins");
    }

    private static String method(ProtectionPlan plan) {
        return plan.method() == ProtectionMethod.ANTI_ICE ? "anti-ice" : "de-ice";
    }

    private void describe(ProtectionPeriod period, ProtectionPlan plan) {
        StringBuilder text = new StringBuilder("Protection, ").append(method(plan)).append(": ");
        if (period.isOnBeforeClimb()) {
            text.append(onBy(Optional.empty()));
        } else {
            text.append(onBy(Optional.of(period.on())));
            if (!plan.lead().isZero()) {
                text.append(", ")
                        .append(plan.lead().toSeconds())
                        .append(" s and ")
                        .append(page.altitude(period.leadAltitude()))
                        .append(" ahead");
            }
        }
        text.append("; ")
                .append(
                        period.isOnAtTop()
                                ? "still on where the climb ends"
                                : "off by the rule not before " + page.at(period.off()));
        if (period.goesOnAboveConditions()) {
            text.append(
                    ", beyond the conditions where it cannot be told or is colder than the rule");
        }
        if (period.spans().size() > 1) {
            text.append(" (")
                    .append(period.spans().size())
                    .append(" spans, too close together to switch off between)");
        }
        page.paragraph("  ", text.append('.').toString());
    }
}
