package org.climbwright.examples.briefing;

import java.time.Duration;
import java.util.Comparator;
import java.util.List;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import org.climbwright.briefing.BriefingLevel;
import org.climbwright.briefing.ClimbBriefing;
import org.climbwright.path.ClimbPath;
import org.climbwright.path.ClimbState;
import org.climbwright.path.Side;

/** Points of a climb for a picture: close enough for a line, and both sides of every jump. */
final class PathSamples {
    private static final double STEP_S = 20.0;

    private PathSamples() {}

    /** Each 20 s, and each line of the briefing. */
    static List<ClimbState> of(ClimbBriefing briefing) {
        Stream<ClimbState> lines = briefing.levels().stream().map(BriefingLevel::state);
        return Stream.concat(lines, regular(briefing.path()))
                .sorted(Comparator.comparingDouble(ClimbState::timeS))
                .toList();
    }

    /** Each 20 s, and the end. */
    static List<ClimbState> of(ClimbPath path) {
        return Stream.concat(regular(path), Stream.of(path.at(path.top(), Side.BELOW))).toList();
    }

    private static Stream<ClimbState> regular(ClimbPath path) {
        double endS = path.at(path.top(), Side.BELOW).timeS();
        return DoubleStream.iterate(0.0, time -> time < endS, time -> time + STEP_S)
                .mapToObj(time -> path.at(Duration.ofNanos(Math.round(time * 1e9))));
    }
}
