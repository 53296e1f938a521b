package org.climbwright.profile;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.climbwright.path.ClimbState;
import org.climbwright.path.Side;
import org.climbwright.profile.ProfileEvent.Kind;

/** Puts what happened on a climb, and what it passed, in order. */
final class ProfileEvents {
    private final ClimbProfile profile;
    private final FlownPath flown;

    ProfileEvents(ClimbProfile profile, FlownPath flown) {
        this.profile = profile;
        this.flown = flown;
    }

    List<ProfileEvent> events() {
        List<ProfileEvent> events = new ArrayList<>();
        for (int i = 0; i < flown.events(); i++) {
            int node = flown.nodeOf(i);
            events.add(
                    new ProfileEvent(
                            flown.kind(i),
                            flown.text(i),
                            profile.arriving(node),
                            profile.leaving(node)));
        }
        ClimbProgramme programme = profile.climb().programme();
        for (NamedPoint point : programme.points()) {
            double most = flown.distanceM(flown.steps());
            if (point.distance().inMetres() <= most) {
                ClimbState there = profile.at(point.distance());
                events.add(new ProfileEvent(Kind.NAMED_POINT, point.name(), there, there));
            }
        }
        for (LevelMark mark : programme.marks()) {
            if (mark.level().compareTo(profile.bottom()) >= 0
                    && mark.level().compareTo(profile.top()) <= 0) {
                events.add(
                        new ProfileEvent(
                                Kind.MARK,
                                mark.text(),
                                profile.at(mark.level(), Side.BELOW),
                                profile.at(mark.level(), Side.ABOVE)));
            }
        }
        // the sort is stable: what happened at one moment stays in its order
        events.sort(
                Comparator.comparingDouble((ProfileEvent event) -> event.arriving().timeS())
                        .thenComparing(event -> event.kind() == Kind.TOP));
        return List.copyOf(events);
    }
}
