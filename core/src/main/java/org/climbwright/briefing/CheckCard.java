package org.climbwright.briefing;

import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.stream.Stream;
import org.climbwright.briefing.BriefingEvents.Check;
import org.climbwright.path.ClimbPath;
import org.climbwright.path.ClimbState;
import org.climbwright.path.Side;
import org.climbwright.profile.ClimbDifference;
import org.climbwright.profile.NamedPoint;
import org.climbwright.quantity.altitude.PressureAltitude;
import org.climbwright.quantity.path.GroundDistance;

/** The points at which a climb is held against its briefing. */
final class CheckCard {
    private final ClimbBriefing briefing;
    private final List<ClimbDifference> changes;

    CheckCard(ClimbBriefing briefing) {
        this.briefing = briefing;
        this.changes = briefing.givenChanges();
    }

    List<CheckPoint> points() {
        ClimbPath path = briefing.path();
        Stream<CheckPoint> rounds =
                BriefingEvents.checks(briefing.plan(), path, briefing.qnh()).stream()
                        .filter(check -> !check.level().equals(path.top()))
                        .map(this::at);
        Stream<CheckPoint> named = briefing.namedPoints().stream().flatMap(this::at);
        Stream<CheckPoint> top = Stream.of(at("top of climb", briefing.topOfClimb(), this::top));
        return Stream.of(rounds, named, top)
                .flatMap(points -> points)
                .sorted(Comparator.comparingDouble(point -> point.state().timeS()))
                .toList();
    }

    private CheckPoint at(Check check) {
        return at(
                check.inFeet(),
                briefing.path().at(check.level(), Side.BELOW),
                changed -> arriving(changed, check.level()));
    }

    private Stream<CheckPoint> at(NamedPoint point) {
        return briefing
                .path()
                .over(point.distance())
                .map(state -> at(point.name(), state, changed -> over(changed, point.distance())))
                .stream();
    }

    /** The time there of each climb that was flown again tells how far off it may be. */
    private CheckPoint at(
            String name, ClimbState state, Function<ClimbPath, OptionalDouble> timeOf) {
        OptionalDouble tolerance =
                changes.stream()
                        .map(change -> timeOf.apply(change.after()))
                        .flatMapToDouble(OptionalDouble::stream)
                        .map(time -> Math.abs(time - state.timeS()))
                        .max();
        return new CheckPoint(
                name, state, tolerance, briefing.cabinAt(state), briefing.fuelTo(state));
    }

    private static OptionalDouble arriving(ClimbPath changed, PressureAltitude level) {
        return level.compareTo(changed.top()) <= 0
                ? OptionalDouble.of(changed.at(level, Side.BELOW).timeS())
                : OptionalDouble.empty();
    }

    private OptionalDouble top(ClimbPath changed) {
        return arriving(changed, briefing.path().top());
    }

    private static OptionalDouble over(ClimbPath changed, GroundDistance distance) {
        return changed.over(distance)
                .map(state -> OptionalDouble.of(state.timeS()))
                .orElse(OptionalDouble.empty());
    }
}
