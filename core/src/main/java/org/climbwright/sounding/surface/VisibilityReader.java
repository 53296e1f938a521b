package org.climbwright.sounding.surface;

import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/** Prevailing visibility. */
final class VisibilityReader implements GroupReader {
    private static final Pattern VISIBILITY = Pattern.compile("CAVOK|\\d{4}(NDV)?|.{1,8}(SM|KM)");
    private static final Pattern MISSING = Pattern.compile("////(NDV|SM)?");

    private final Notes notes;
    private @Nullable Visibility visibility;

    VisibilityReader(Notes notes) {
        this.notes = notes;
    }

    @Nullable Visibility visibility() {
        return visibility;
    }

    @Override
    public boolean take(Group group) {
        if (group.matches(MISSING)) {
            notes.reportedMissing(ReportElement.VISIBILITY, group);
        } else if (!group.matches(VISIBILITY)) {
            return false;
        } else if (visibility != null) {
            notes.second(ReportElement.VISIBILITY, group);
        } else {
            visibility = notes.legible(ReportElement.VISIBILITY, group, Visibility::parse);
        }
        return true;
    }
}
