package org.climbwright.sounding.surface;

import java.util.HashSet;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * Altimeter setting, in either unit or in both; what is missing in one may be told in the other.
 */
final class QnhReader implements GroupReader {
    /** Whatever begins so and has a digit, but no QBB (cloud base) and no QFE. */
    private static final Pattern QNH =
            Pattern.compile("QNH.*|Q(?![BF])(?=.*\\d).{1,10}|A(?=.*\\d).{1,5}");

    private static final Pattern BOTH_UNITS = Pattern.compile("(Q\\d{4})/A?(\\d{2})\\.?(\\d{2})");
    private static final Pattern MISSING = Pattern.compile("[QA]/{2,4}");

    private final Notes notes;
    private final Set<Character> missing = new HashSet<>();
    private @Nullable ReportedQnh qnh;

    QnhReader(Notes notes) {
        this.notes = notes;
    }

    @Nullable ReportedQnh qnh() {
        return qnh;
    }

    @Override
    public boolean take(Group group) {
        if (group.matches(MISSING)) {
            notes.reportedMissing(ReportElement.QNH, group);
            missing.add(group.text().charAt(0));
            return true;
        }
        if (!group.matches(QNH)) {
            return false;
        }
        Matcher both = BOTH_UNITS.matcher(group.text());
        if (both.matches()) {
            take(group, both.group(1));
            take(group, "A" + both.group(2) + both.group(3));
        } else {
            take(group, group.text());
        }
        return true;
    }

    private void take(Group group, String text) {
        ReportedQnh told = notes.legible(ReportElement.QNH, group, text, ReportedQnh::parse);
        if (told == null) {
            return;
        }
        if (qnh == null && missing.contains(text.charAt(0))) {
            notes.reportedBefore(ReportElement.QNH, group);
        } else if (qnh == null) {
            qnh = told;
        } else if (!qnh.agreesWith(told)) {
            notes.leftOut(
                    "QNH",
                    group,
                    "differs from the first by more than both are rounded; the first stays");
        }
    }
}
