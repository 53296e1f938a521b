package org.climbwright.icing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.DoubleStream;
import org.climbwright.path.ClimbPath;
import org.climbwright.path.ClimbState;
import org.climbwright.path.Side;
import org.climbwright.quantity.altitude.PressureAltitude;

/** The search for the stretches of one climb that one rule speaks of, from below upwards. */
final class IcingSearch {
    private static final int PARTS = 8;
    private static final double WIDEST_M = 50.0;
    private static final double TOLERANCE_M = 1e-3;

    /** How far inside a stretch its ends are looked at, as a share of it. */
    private static final double INSIDE = 1e-9;

    private final ClimbPath path;
    private final IcingRule rule;
    private final List<IcingSpan> spans = new ArrayList<>();
    private final List<ClimbState> met = new ArrayList<>();
    private IcingAnswer open = IcingAnswer.NOT_MET;
    private double fromM;
    private double toM;

    IcingSearch(ClimbPath path, IcingRule rule) {
        this.path = path;
        this.rule = rule;
    }

    List<IcingSpan> spans() {
        double below = path.bottom().inMetres();
        for (double bend : bends()) {
            searchStretch(below, bend);
            below = bend;
        }
        searchStretch(below, path.top().inMetres());
        close();
        return List.copyOf(spans);
    }

    /** Where the path bends and where moisture may begin or end, within the climb, upwards. */
    private double[] bends() {
        double bottom = path.bottom().inMetres();
        double top = path.top().inMetres();
        return DoubleStream.concat(DoubleStream.of(path.bendsM()), DoubleStream.of(rule.edgesM()))
                .filter(level -> level > bottom && level < top)
                .sorted()
                .distinct()
                .toArray();
    }

    private void searchStretch(double bottomM, double topM) {
        // The ends are looked at from just inside, where speed, rate and humidity are those of
        // this stretch and of no other.
        double inset = INSIDE * (topM - bottomM);
        double from = bottomM;
        ClimbState before = state(bottomM + inset);
        int parts = Math.max(PARTS, (int) Math.ceil((topM - bottomM) / WIDEST_M));
        for (int part = 1; part <= parts; part++) {
            double share = (double) part / parts;
            double at = part == parts ? topM - inset : bottomM + share * (topM - bottomM);
            ClimbState here = state(at);
            double end = part == parts ? topM : at;
            while (rule.met(before) != rule.met(here)) {
                double[] edge = edge(before, here);
                take(from, edge[1], before, state(edge[0]));
                before = state(edge[1]);
                from = edge[1];
            }
            take(from, end, before, here);
            from = at;
            before = here;
        }
    }

    private void take(double from, double to, ClimbState first, ClimbState last) {
        IcingAnswer answer = rule.at(first, open);
        if (answer != open) {
            close();
            open = answer;
            fromM = from;
        }
        if (answer != IcingAnswer.NOT_MET) {
            met.add(first);
            met.add(last);
            toM = to;
        }
    }

    private void close() {
        if (open != IcingAnswer.NOT_MET) {
            spans.add(
                    new IcingSpan(
                            rule.part(),
                            open,
                            path.at(PressureAltitude.ofMetres(fromM), Side.ABOVE),
                            path.at(PressureAltitude.ofMetres(toM), Side.BELOW),
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
        met.clear();
    }

    /**
     * The last level at which the first point's thresholds are met and no others, and the first at
     * which others are, near to each other; halved, since humidity may become unknown with a jump.
     */
    private double[] edge(ClimbState before, ClimbState here) {
        int thresholds = rule.met(before);
        double low = before.pressureAltitude().inMetres();
        double high = here.pressureAltitude().inMetres();
        while (high - low > TOLERANCE_M) {
            double middle = 0.5 * (low + high);
            if (rule.met(state(middle)) == thresholds) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return new double[] {low, high};
    }

    private ClimbState state(double altitudeM) {
        return path.at(PressureAltitude.ofMetres(altitudeM));
    }
}
