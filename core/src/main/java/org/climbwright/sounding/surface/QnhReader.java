package org.climbwright.sounding.surface;

import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/** Altimeter setting, in either unit or in both. */
final class QnhReader implements GroupReader {
    private static final Pattern QNH = Pattern.compile("[QA](?=.*\\d).{1,5}");
    private static final Pattern MISSING = Pattern.compile("[QA]/{2,4}");

    private final Notes notes;
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
        } else if (!group.matches(QNH)) {
            return false;
        } else {
            ReportedQnh told = notes.legible(ReportElement.QNH, group, ReportedQnh::parse);
            if (told != null) {
                take(group, told);
            }
        }
        return true;
    }

    private void take(Group group, ReportedQnh told) {
        if (qnh == null) {
            qnh = told;
        } else if (!qnh.agreesWith(told)) {
            notes.leftOut(
                    "QNH",
                    group,
                    "differs from the first by more than both are rounded; the first stays");
        }
    }
}
