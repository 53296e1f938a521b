package org.climbwright.sounding.surface;

import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * Prevailing visibility, and CAVOK, which tells of the sky too.
 *
 * <p>CAVOK beside a visibility below 10 km, or one that is missing or cannot be read, is wrong in
 * one of the two, and nobody knows in which: that visibility stays, and of the sky nothing is
 * known.
 */
final class VisibilityReader implements GroupReader {
    private static final Pattern VISIBILITY =
            Pattern.compile("CAVOK|\\d{3,5}M?(NDV)?|.{1,8}(SM|KM)");
    private static final Pattern MISSING = Pattern.compile("////(NDV|SM)?");
    private static final double CAVOK_M = 10000.0;

    private final Notes notes;
    private final BodyOrder order;
    private final CloudReader cloud;
    private @Nullable Visibility visibility;
    private @Nullable Group cavok;

    VisibilityReader(Notes notes, BodyOrder order, CloudReader cloud) {
        this.notes = notes;
        this.order = order;
        this.cloud = cloud;
    }

    @Nullable Visibility visibility() {
        return visibility;
    }

    @Override
    public boolean take(Group group) {
        if (group.matches(MISSING)) {
            notes.reportedMissing(ReportElement.VISIBILITY, group);
            doubtCavok(null);
        } else if (!group.matches(VISIBILITY)) {
            return false;
        } else if (order.hasReachedCloud()) {
            takeTooLate(group);
        } else if (group.is("CAVOK")) {
            takeCavok(group);
        } else {
            takeDistance(group);
        }
        return true;
    }

    private void takeTooLate(Group group) {
        ReportElement[] elements =
                group.is("CAVOK")
                        ? new ReportElement[] {ReportElement.VISIBILITY, ReportElement.CLOUD}
                        : new ReportElement[] {ReportElement.VISIBILITY};
        notes.notUsable(group, "a visibility behind cloud, temperature or QNH", elements);
    }

    private void takeCavok(Group group) {
        if (visibility != null ? isBelowCavok(visibility) : isNotKnown()) {
            cloud.doubt(group);
        } else if (notes.isSettled(ReportElement.VISIBILITY, visibility, group)) {
            cloud.take(group);
        } else {
            cavok = group;
            visibility = Visibility.parse(group.text());
            cloud.take(group);
        }
    }

    private void takeDistance(Group group) {
        if (cavok == null && notes.isSettled(ReportElement.VISIBILITY, visibility, group)) {
            return;
        }
        Visibility told = notes.legible(ReportElement.VISIBILITY, group, Visibility::parse);
        if (cavok == null) {
            visibility = told;
        } else if (told == null || isBelowCavok(told)) {
            doubtCavok(told);
        } else {
            notes.second(ReportElement.VISIBILITY, group);
        }
    }

    /** Whether a group has told that it does not know it, or could not be read. */
    private boolean isNotKnown() {
        return notes.absence(ReportElement.VISIBILITY).cause() != Absence.Cause.GROUP_ABSENT;
    }

    private void doubtCavok(@Nullable Visibility instead) {
        if (cavok != null) {
            cloud.doubt(cavok);
            visibility = instead;
            cavok = null;
        }
    }

    private static boolean isBelowCavok(Visibility told) {
        return switch (told.bound()) {
            case AS_TOLD -> told.distance().inMetres() < CAVOK_M;
            case LESS_THAN -> true;
            case OR_MORE -> false;
        };
    }
}
