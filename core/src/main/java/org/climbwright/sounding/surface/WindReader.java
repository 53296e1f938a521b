package org.climbwright.sounding.surface;

import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/** Wind, and the range of its direction in a group behind it. */
final class WindReader implements GroupReader {
    private static final Pattern WIND = Pattern.compile(".{3,}(KTS?|MPS|KMH)");

    /** What a wind begins with; five digits, since four are a visibility. */
    private static final Pattern BEGINS_SO = Pattern.compile("(\\d{3}|VRB|///)P?\\d{2}(?!\\d).*");

    private static final Pattern RANGE = Pattern.compile("\\d{3}V\\d{3}");
    private static final Pattern MISSING = Pattern.compile("(\\d{3}|VRB|///)//(G//)?(KT|MPS|KMH)");

    private final Notes notes;
    private final BodyOrder order;
    private @Nullable SurfaceWind wind;
    private boolean begun;

    WindReader(Notes notes, BodyOrder order) {
        this.notes = notes;
        this.order = order;
    }

    @Nullable SurfaceWind wind() {
        return wind;
    }

    @Override
    public boolean take(Group group) {
        boolean first = !begun;
        begun = true;
        // five slashes without a unit are a wind where it stands, at the front, else a temperature
        if (group.matches(MISSING) || (first && group.is("/////"))) {
            notes.reportedMissing(ReportElement.WIND, group);
        } else if (group.matches(RANGE)) {
            takeRange(group);
        } else if (group.matches(WIND) || (first && group.matches(BEGINS_SO))) {
            takeWind(group);
        } else {
            return false;
        }
        return true;
    }

    private void takeWind(Group group) {
        if (notes.isSettled(ReportElement.WIND, wind, group)) {
            return;
        }
        if (order.hasReachedCloud()) {
            notes.notUsable(group, "a wind behind cloud, temperature or QNH", ReportElement.WIND);
        } else {
            wind = notes.legible(ReportElement.WIND, group, SurfaceWind::parse);
        }
    }

    private void takeRange(Group group) {
        if (wind == null || wind.rangeFrom().isPresent()) {
            notes.leftOut("wind", group, "a range of directions without its wind; left out");
            return;
        }
        try {
            wind = SurfaceWind.parse(wind + " " + group.text());
        } catch (IllegalArgumentException refusal) {
            notes.leftOut("wind", group, refusal.getMessage() + "; left out");
        }
    }
}
