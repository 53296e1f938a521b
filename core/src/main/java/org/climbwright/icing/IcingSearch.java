package org.climbwright.icing;

import java.time.Duration;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.function.DoubleFunction;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import org.climbwright.path.ClimbPath;
import org.climbwright.path.ClimbState;
import org.climbwright.path.Side;
import org.climbwright.quantity.altitude.PressureAltitude;
import org.jspecify.annotations.Nullable;

/** The search for the stretches of one climb that one rule speaks of, from below upwards. */
final class IcingSearch {
    private static final int PARTS = 8;
    private static final double WIDEST_M = 50.0;
    private static final double LONGEST_S = 10.0;

    /** Of a level [m], or while one is held of the time [s]. */
    private static final double TOLERANCE = 1e-3;

    /** How far inside a stretch its ends are looked at, as a share of it. */
    private static final double INSIDE = 1e-9;

    private final ClimbPath path;
    private final IcingRule rule;
    private final List<IcingSpan> spans = new ArrayList<>();
    private final List<ClimbState> met = new ArrayList<>();
    private IcingAnswer open = IcingAnswer.NOT_MET;
    private @Nullable ClimbState from;
    private @Nullable ClimbState to;

    IcingSearch(ClimbPath path, IcingRule rule) {
        this.path = path;
        this.rule = rule;
    }

    List<IcingSpan> spans() {
        double[] ends = ends();
        double[] held = path.heldLevelsM();
        for (int i = 0; i < ends.length; i++) {
            if (i > 0) {
                climb(ends[i - 1], ends[i]);
            }
            if (ends.length == 1 || Arrays.binarySearch(held, ends[i]) >= 0) {
                stay(PressureAltitude.ofMetres(ends[i]));
            }
        }
        close();
        return List.copyOf(spans);
    }

    /** Bottom and top, and between them where the path bends or moisture may begin or end. */
    private double[] ends() {
        double bottom = path.bottom().inMetres();
        double top = path.top().inMetres();
        return Stream.of(
                        new double[] {bottom, top},
                        path.bendsM(),
                        path.heldLevelsM(),
                        rule.edgesM())
                .flatMapToDouble(DoubleStream::of)
                .filter(level -> level >= bottom && level <= top)
                .sorted()
                .distinct()
                .toArray();
    }

    private void climb(double bottomM, double topM) {
        int parts = Math.max(PARTS, (int) Math.ceil((topM - bottomM) / WIDEST_M));
        search(
                level -> path.at(PressureAltitude.ofMetres(level)),
                bottomM,
                topM,
                parts,
                path.at(PressureAltitude.ofMetres(bottomM), Side.ABOVE),
                path.at(PressureAltitude.ofMetres(topM), Side.BELOW));
    }

    /** At one level in time: speed may change there, and with it the total air temperature. */
    private void stay(PressureAltitude level) {
        ClimbState arriving = path.at(level, Side.BELOW);
        ClimbState leaving = path.at(level, Side.ABOVE);
        double begin = arriving.timeS();
        double end = leaving.timeS();
        int parts = Math.max(PARTS, (int) Math.ceil((end - begin) / LONGEST_S));
        search(
                time -> {
                    ClimbState state = path.at(Duration.ofNanos(Math.round(time * 1e9)));
                    // a time as rounded may lie just outside
                    boolean isThere = state.pressureAltitude().equals(level);
                    return isThere ? state : time - begin < end - time ? arriving : leaving;
                },
                begin,
                end,
                parts,
                arriving,
                leaving);
    }

    private void search(
            DoubleFunction<ClimbState> state,
            double begin,
            double end,
            int parts,
            ClimbState first,
            ClimbState last) {
        // The ends are looked at from just inside, where speed, rate and humidity are those of
        // this stretch and of no other.
        double inset = INSIDE * (end - begin);
        double before = begin + inset;
        ClimbState there = state.apply(before);
        ClimbState entry = first;
        for (int part = 1; part <= parts; part++) {
            double share = (double) part / parts;
            double at = part == parts ? end - inset : begin + share * (end - begin);
            ClimbState here = state.apply(at);
            while (rule.met(there) != rule.met(here)) {
                double[] edge = edge(state, before, at);
                ClimbState edgeState = state.apply(edge[1]);
                take(entry, edgeState, there, state.apply(edge[0]));
                before = edge[1];
                there = edgeState;
                entry = edgeState;
            }
            take(entry, part == parts ? last : here, there, here);
            before = at;
            there = here;
            entry = here;
        }
    }

    private void take(ClimbState entry, ClimbState exit, ClimbState first, ClimbState last) {
        IcingAnswer answer = rule.at(first, open);
        if (answer != open) {
            close();
            open = answer;
            from = entry;
        }
        if (answer != IcingAnswer.NOT_MET) {
            met.add(first);
            met.add(last);
            to = exit;
        }
    }

    private void close() {
        if (from != null && to != null) {
            spans.add(
                    new IcingSpan(
                            rule.part(),
                            open,
                            from,
                            to,
                            met.stream()
                                    .map(ClimbState::totalAirTemperature)
                                    .min(Comparator.naturalOrder())
                                    .orElseThrow(),
                            met.stream()
                                    .map(state -> state.air().staticAirTemperature())
                                    .min(Comparator.naturalOrder())
                                    .orElseThrow(),
                            rule.reason(open, met)));
        }
        open = IcingAnswer.NOT_MET;
        from = null;
        to = null;
        met.clear();
    }

    /**
     * The last level, or time, at which the first point's thresholds are met and no others, and the
     * first at which others are, near to each other; halved, since humidity may become unknown with
     * a jump.
     */
    private double[] edge(DoubleFunction<ClimbState> state, double before, double here) {
        int thresholds = rule.met(state.apply(before));
        double low = before;
        double high = here;
        while (high - low > TOLERANCE) {
            double middle = 0.5 * (low + high);
            if (rule.met(state.apply(middle)) == thresholds) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return new double[] {low, high};
    }
}
