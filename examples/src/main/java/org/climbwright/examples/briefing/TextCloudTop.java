package org.climbwright.examples.briefing;

import org.climbwright.gradient.cloudtop.CloudTop;

/** Whether the climb tops the cloud ahead. */
final class TextCloudTop {
    private TextCloudTop() {}

    static void write(TextPage page, CloudTop top) {
        page.line(
                "CLOUD AHEAD, %s",
                switch (top.answer()) {
                    case TOPS_BY_CLEARANCE -> "topped by the clearance given or more";
                    case TOPS_BY_LESS -> "topped by less than the clearance given";
                    case DOES_NOT_TOP -> "not topped";
                    case CANNOT_BE_TOLD -> "cannot be told";
                    case NO_VERDICT -> "no clearance given: margins and no answer";
                });
        top.reasons().forEach(reason -> page.paragraph("  ", reason + "."));
        page.blank();
    }
}
