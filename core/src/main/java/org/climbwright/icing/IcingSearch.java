package org.climbwright.icing;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.climbwright.icing.IcingSpan.Kind;
import org.climbwright.path.ClimbPath;
import org.climbwright.path.ClimbState;
import org.climbwright.quantity.altitude.PressureAltitude;
import org.climbwright.quantity.humidity.RelativeHumidity;
import org.jspecify.annotations.Nullable;

/** The search for the stretches of one climb that meet one rule. */
final class IcingSearch {
    private static final int PARTS = 8;
    private static final double TOLERANCE_M = 1e-3;

    /** How far inside a stretch its ends are looked at, as a share of it. */
    private static final double INSIDE = 1e-9;

    private final ClimbPath path;
    private final EngineIcingRule rule;
    private final List<IcingSpan> spans = new ArrayList<>();
    private @Nullable Stretch open;

    IcingSearch(ClimbPath path, EngineIcingRule rule) {
        this.path = path;
        this.rule = rule;
    }

    /** A span that has begun: what it is, where, and the extremes met so far. */
    private static final class Stretch {
        private final Kind kind;
        private final double fromM;
        private double toM;
        private double coldestC = Double.POSITIVE_INFINITY;
        private double warmestC = Double.NEGATIVE_INFINITY;
        private double driest = Double.POSITIVE_INFINITY;
        private double moistest = Double.NEGATIVE_INFINITY;

        private Stretch(Kind kind, double fromM) {
            this.kind = kind;
            this.fromM = fromM;
            this.toM = fromM;
        }

        private void meet(ClimbState state) {
            double celsius = state.totalAirTemperature().inCelsius();
            coldestC = Math.min(coldestC, celsius);
            warmestC = Math.max(warmestC, celsius);
            state.air()
                    .relativeHumidity()
                    .ifPresent(
                            humidity -> {
                                driest = Math.min(driest, humidity.inRatio());
                                moistest = Math.max(moistest, humidity.inRatio());
                            });
        }
    }

    List<IcingSpan> spans() {
        double[] bends = path.bendsM();
        double below = path.bottom().inMetres();
        for (double bend : bends) {
            searchStretch(below, bend);
            below = bend;
        }
        searchStretch(below, path.top().inMetres());
        close();
        return List.copyOf(spans);
    }

    private void searchStretch(double bottomM, double topM) {
        // The ends are looked at from just inside, where speed, rate and humidity are those of
        // this stretch and of no other.
        double inset = INSIDE * (topM - bottomM);
        double from = bottomM;
        ClimbState before = state(bottomM + inset);
        for (int part = 1; part <= PARTS; part++) {
            double share = (double) part / PARTS;
            double at = part == PARTS ? topM - inset : bottomM + share * (topM - bottomM);
            ClimbState here = state(at);
            double end = part == PARTS ? topM : at;
            while (met(before) != met(here)) {
                double[] edge = edge(before, here);
                take(kind(before), from, edge[1], before, state(edge[0]));
                before = state(edge[1]);
                from = edge[1];
            }
            take(kind(here), from, end, before, here);
            from = at;
            before = here;
        }
    }

    private void take(
            @Nullable Kind kind, double fromM, double toM, ClimbState first, ClimbState last) {
        Stretch current = open;
        if (current != null && current.kind != kind) {
            close();
            current = null;
        }
        if (kind == null) {
            return;
        }
        if (current == null) {
            current = new Stretch(kind, fromM);
            open = current;
        }
        current.meet(first);
        current.meet(last);
        current.toM = toM;
    }

    private void close() {
        Stretch current = open;
        if (current != null) {
            spans.add(
                    new IcingSpan(
                            current.kind,
                            IcingSpan.leaving(path, current.fromM),
                            IcingSpan.arriving(path, current.toM),
                            reason(current)));
            open = null;
        }
    }

    /** What a point of the climb is by the rule; null when it is too warm, or dry. */
    private @Nullable Kind kind(ClimbState state) {
        if (state.totalAirTemperature().compareTo(rule.warmest()) > 0) {
            return null;
        }
        Optional<RelativeHumidity> humidity = state.air().relativeHumidity();
        if (humidity.isEmpty()) {
            return Kind.NOT_KNOWN;
        }
        return isMoist(humidity.get()) ? Kind.CONDITIONS : null;
    }

    /**
     * Which conditions are met: cold, known, moist. Two points that are neither in icing may have a
     * stretch of it between them, where it gets cold below and dry above.
     */
    private int met(ClimbState state) {
        int cold = state.totalAirTemperature().compareTo(rule.warmest()) <= 0 ? 1 : 0;
        Optional<RelativeHumidity> humidity = state.air().relativeHumidity();
        int known = humidity.isPresent() ? 2 : 0;
        return cold + known + (humidity.filter(this::isMoist).isPresent() ? 4 : 0);
    }

    private boolean isMoist(RelativeHumidity humidity) {
        return humidity.compareTo(rule.leastRelativeHumidity()) >= 0;
    }

    /**
     * The last level at which the first point's conditions are met and no others, and the first at
     * which others are, near to each other; halved, since humidity may become unknown with a jump.
     */
    private double[] edge(ClimbState before, ClimbState here) {
        int met = met(before);
        double low = before.pressureAltitude().inMetres();
        double high = here.pressureAltitude().inMetres();
        while (high - low > TOLERANCE_M) {
            double middle = 0.5 * (low + high);
            if (met(state(middle)) == met) {
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

    private String reason(Stretch stretch) {
        String cold =
                String.format(
                        Locale.ROOT,
                        "total air temperature %.1f to %.1f °C (rule: %.1f °C or below)",
                        stretch.warmestC,
                        stretch.coldestC,
                        rule.warmest().inCelsius());
        return stretch.kind == Kind.NOT_KNOWN
                ? cold + "; humidity is not known, and so moisture is not"
                : cold
                        + String.format(
                                Locale.ROOT,
                                "; relative humidity over water %.0f to %.0f %% (rule: %.0f %% or"
                                        + " above)",
                                100.0 * stretch.driest,
                                100.0 * stretch.moistest,
                                rule.leastRelativeHumidity().inPercent());
    }
}
