package org.climbwright.profile;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import org.climbwright.path.ClimbState;
import org.climbwright.path.Side;
import org.climbwright.performance.AeroplaneLimits;
import org.climbwright.performance.ceiling.BuffetMargin;
import org.climbwright.profile.ProfileEvent.Kind;
import org.climbwright.quantity.speed.CalibratedAirspeed;
import org.climbwright.quantity.speed.Mach;

/** Puts what happened on a climb, and what it passed, in order. */
final class ProfileEvents {
    /** What rounding leaves of a speed that is held at its limit. */
    private static final double ROUNDING = 1e-6;

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
            Optional<ClimbState> there = profile.over(point.distance());
            ClimbState told = there.orElseGet(() -> profile.leaving(flown.steps()));
            events.add(
                    there.isPresent()
                            ? new ProfileEvent(Kind.NAMED_POINT, point.name(), told, told)
                            : new ProfileEvent(
                                    Kind.NOT_KEPT, point.name() + " is not passed", told, told));
        }
        for (HeldLevel held : programme.heldLevels()) {
            boolean isBelow = held.level().compareTo(profile.bottom()) <= 0;
            if (isBelow || held.level().compareTo(profile.top()) >= 0) {
                ClimbState there = isBelow ? profile.leaving(0) : profile.arriving(flown.steps());
                events.add(
                        new ProfileEvent(
                                Kind.NOT_KEPT,
                                "not on the way: " + ProfileTexts.held(held),
                                there,
                                there));
            }
        }
        addLimits(events);
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

    /** Where the aeroplane first goes beyond a limit: nothing keeps it from that. */
    private void addLimits(List<ProfileEvent> events) {
        AeroplaneLimits limits = profile.climb().aeroplane().limits();
        double mostMps =
                limits.maximumOperatingSpeed()
                        .map(CalibratedAirspeed::inMetresPerSecond)
                        .orElse(Double.POSITIVE_INFINITY);
        double mostMach =
                limits.maximumOperatingMach().map(Mach::number).orElse(Double.POSITIVE_INFINITY);
        double leastMps =
                profile.climb()
                        .programme()
                        .speeds()
                        .minimum()
                        .map(CalibratedAirspeed::inMetresPerSecond)
                        .orElse(0.0);
        boolean isBuffetKnown = limits.buffetOnset().isPresent();
        if (Double.isInfinite(mostMps)
                && Double.isInfinite(mostMach)
                && leastMps == 0.0
                && !isBuffetKnown) {
            return;
        }
        List<ClimbState> states =
                IntStream.rangeClosed(0, flown.steps()).mapToObj(profile::leaving).toList();
        addFirst(events, states, "above the maximum operating speed", s -> mostMps - cas(s));
        addFirst(
                events,
                states,
                "above the maximum operating Mach number",
                s -> mostMach - s.mach().number());
        addFirst(events, states, "below the minimum speed", s -> cas(s) - leastMps);
        addFirst(
                events,
                states,
                "less than " + BuffetMargin.USUAL_LOAD_FACTOR + " g to buffet",
                s ->
                        BuffetMargin.of(limits, s.mass(), s.pressureAltitude(), s.mach())
                                .map(margin -> margin.loadFactor() - BuffetMargin.USUAL_LOAD_FACTOR)
                                .orElse(0.0));
    }

    private static double cas(ClimbState state) {
        return state.calibratedAirspeed().inMetresPerSecond();
    }

    private static void addFirst(
            List<ProfileEvent> events,
            List<ClimbState> states,
            String text,
            ToDoubleFunction<ClimbState> inHand) {
        states.stream()
                .filter(state -> inHand.applyAsDouble(state) < -ROUNDING)
                .findFirst()
                .ifPresent(
                        there -> events.add(new ProfileEvent(Kind.NOT_KEPT, text, there, there)));
    }
}
