package org.climbwright.examples.briefing;

import org.climbwright.briefing.TurbulenceBriefing;

/** What speaks for turbulence, and where seat belts should be fastened. */
final class TextTurbulence {
    private TextTurbulence() {}

    static void write(TextPage page, TurbulenceBriefing turbulence) {
        page.line("TURBULENCE, what speaks for it");
        page.paragraph("  ", turbulence.advice().inWords());
        for (TurbulenceBriefing.Span span : turbulence.spans()) {
            page.paragraph(
                    "  ",
                    TextPage.format(
                            "Reason for seat belts from %s to %s, %s to %s; %s",
                            page.onAltimeter(span.entry().pressureAltitude()),
                            page.onAltimeter(span.exit().pressureAltitude()),
                            TextPage.minutes(span.entry().timeS()),
                            TextPage.minutes(span.exit().timeS()),
                            span.onBy()
                                    .map(state -> "sign on by " + page.at(state))
                                    .orElse("sign on before the climb begins")));
            span.reasons().forEach(reason -> page.paragraph("    ", reason));
        }
        page.blank();
    }
}
