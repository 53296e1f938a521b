package org.climbwright.icing;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import org.climbwright.path.ClimbState;

/** Visible moisture by one way of telling or another. */
record EitherMoisture(VisibleMoisture one, VisibleMoisture other) implements VisibleMoisture {
    @Override
    public Answer at(ClimbState state) {
        Answer first = one.at(state);
        Answer second = other.at(state);
        if (first == Answer.PRESENT || second == Answer.PRESENT) {
            return Answer.PRESENT;
        }
        return first == second ? first : Answer.NOT_KNOWN;
    }

    @Override
    public double[] edgesM() {
        return DoubleStream.concat(DoubleStream.of(one.edgesM()), DoubleStream.of(other.edgesM()))
                .toArray();
    }

    /** Of the way that found it; of both where neither did, or each in its part. */
    @Override
    public String found(List<ClimbState> states) {
        String found =
                Stream.of(one, other)
                        .filter(way -> tells(way, states))
                        .map(way -> way.found(states))
                        .collect(Collectors.joining(", and "));
        return found.isEmpty() ? one.found(states) + ", and " + other.found(states) : found;
    }

    private static boolean tells(VisibleMoisture way, List<ClimbState> states) {
        return states.stream().anyMatch(state -> way.at(state) == Answer.PRESENT);
    }

    /** Of the ways that do not know it. */
    @Override
    public String notKnown(List<ClimbState> states) {
        return Stream.of(one, other)
                .filter(way -> states.stream().anyMatch(s -> way.at(s) == Answer.NOT_KNOWN))
                .map(way -> way.notKnown(states))
                .distinct()
                .collect(Collectors.joining("; "));
    }

    @Override
    public String toString() {
        return one + ", or " + other;
    }
}
