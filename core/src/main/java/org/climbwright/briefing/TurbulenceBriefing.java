package org.climbwright.briefing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.climbwright.atmosphere.Atmosphere;
import org.climbwright.atmosphere.wind.Winds;
import org.climbwright.briefing.plan.PlannedTurbulence;
import org.climbwright.path.ClimbPath;
import org.climbwright.path.ClimbState;
import org.climbwright.path.Side;
import org.climbwright.quantity.altitude.PressureAltitude;
import org.climbwright.quantity.pressure.StaticPressure;
import org.climbwright.turbulence.Answer;
import org.climbwright.turbulence.WindShear;
import org.climbwright.turbulence.convection.Evidence;
import org.climbwright.turbulence.convection.Evidence.Outcome;
import org.climbwright.turbulence.convection.ParcelAscent;
import org.climbwright.turbulence.convection.Parcels;
import org.climbwright.turbulence.convection.SeatBeltAdvice;

/**
 * What speaks for turbulence on a climb: the cloud that a parcel of the lowest air would make, and
 * wind that shears, each against a threshold of the plan.
 *
 * <p>Limits of use: figures of one sounding. Turbulence in clear air, over mountains, in wakes and
 * near storms that grow elsewhere is not in them, and no span found is no reason to unfasten seat
 * belts; the crew, the operator's procedures, reports and radar decide.
 */
public final class TurbulenceBriefing {
    /** Common practice, no source: the lowest 50 hPa are taken as mixed. */
    private static final double MIXED_PA = 5000.0;

    private static final double LAYER_FT = 1000.0;

    private final PlannedTurbulence plan;
    private final Answer<ParcelAscent> ascent;
    private final List<Answer<WindShear>> layers;
    private final SeatBeltAdvice advice;
    private final List<Span> spans;

    TurbulenceBriefing(ClimbPath path, Atmosphere air, Winds winds, PlannedTurbulence plan) {
        this.plan = plan;
        StaticPressure ground = path.at(path.bottom(), Side.ABOVE).air().staticPressure();
        this.ascent =
                Parcels.mixedLayer(air, ground, MIXED_PA)
                        .then(parcel -> ParcelAscent.of(air, parcel));
        List<PressureAltitude> levels = levels(path);
        this.layers = new ArrayList<>();
        List<SeatBeltAdvice> byLayer = new ArrayList<>();
        for (int i = 1; i < levels.size(); i++) {
            Answer<WindShear> shear =
                    WindShear.between(
                            air,
                            winds,
                            pressure(path, levels.get(i - 1)),
                            pressure(path, levels.get(i)));
            layers.add(shear);
            byLayer.add(advice(levels.get(i - 1), levels.get(i), shear));
        }
        this.advice =
                advice(path.bottom(), path.top(), strongest(layers))
                        .withEnergy(ascent, plan.leastEnergyJPerKg());
        this.spans = spans(path, levels, byLayer);
    }

    /**
     * A stretch of the climb with a reason to keep seat belts fastened.
     *
     * @param entry the climb where it begins
     * @param exit the climb where it ends
     * @param onBy the climb by where the sign should be on, the lead of the plan before the entry;
     *     empty where that is before the climb begins
     * @param reasons each figure with its threshold
     */
    public record Span(
            ClimbState entry, ClimbState exit, Optional<ClimbState> onBy, List<String> reasons) {
        /**
         * Makes a span whose reasons nobody can change.
         *
         * @param entry see above
         * @param exit see above
         * @param onBy see above
         * @param reasons see above
         */
        public Span {
            reasons = List.copyOf(reasons);
        }
    }

    /** Whole thousands of feet, and both ends of the climb. */
    private static List<PressureAltitude> levels(ClimbPath path) {
        List<PressureAltitude> levels = new ArrayList<>();
        levels.add(path.bottom());
        double first = Math.floor(path.bottom().inFeet() / LAYER_FT) + 1.0;
        for (double k = first; k * LAYER_FT < path.top().inFeet(); k++) {
            levels.add(PressureAltitude.ofFeet(k * LAYER_FT));
        }
        levels.add(path.top());
        return levels;
    }

    private static StaticPressure pressure(ClimbPath path, PressureAltitude level) {
        return path.at(level, Side.BELOW).air().staticPressure();
    }

    /** The strongest that is known, if it counts or all are known; else that one is not known. */
    private Answer<WindShear> strongest(List<Answer<WindShear>> layers) {
        Optional<WindShear> most =
                layers.stream()
                        .flatMap(layer -> layer.value().stream())
                        .max(Comparator.comparingDouble(WindShear::inKnotsPer1000Ft));
        boolean counts =
                most.map(shear -> shear.inKnotsPer1000Ft() >= plan.leastShearKnotsPer1000Ft())
                        .orElse(false);
        Optional<Answer<WindShear>> unknown =
                layers.stream().filter(layer -> !layer.isKnown()).findFirst();
        return counts || unknown.isEmpty()
                ? Answer.known(most.orElseThrow())
                : unknown.orElseThrow();
    }

    /** Layers with a reason that touch are one span. */
    private List<Span> spans(
            ClimbPath path, List<PressureAltitude> levels, List<SeatBeltAdvice> byLayer) {
        List<Span> found = new ArrayList<>();
        int from = 0;
        while (from < byLayer.size()) {
            int to = from;
            while (to < byLayer.size() && isReason(byLayer.get(to))) {
                to++;
            }
            if (to > from) {
                ClimbState entry = path.at(levels.get(from), Side.BELOW);
                SeatBeltAdvice whole =
                        advice(
                                levels.get(from),
                                levels.get(to),
                                strongest(layers.subList(from, to)));
                found.add(
                        new Span(
                                entry,
                                path.at(levels.get(to), Side.BELOW),
                                path.before(entry, plan.lead()),
                                whole.evidence().stream()
                                        .filter(e -> e.outcome() == Outcome.REACHED)
                                        .map(Evidence::inWords)
                                        .toList()));
            }
            from = to + 1;
        }
        return List.copyOf(found);
    }

    private SeatBeltAdvice advice(
            PressureAltitude lowest, PressureAltitude highest, Answer<WindShear> shear) {
        return SeatBeltAdvice.between(lowest, highest)
                .withCloud(ascent.then(ParcelAscent::cloud))
                .withShear(shear, plan.leastShearKnotsPer1000Ft());
    }

    private static boolean isReason(SeatBeltAdvice layer) {
        return layer.conclusion() == SeatBeltAdvice.Conclusion.REASON_TO_FASTEN;
    }

    /**
     * Returns the thresholds that it was briefed with.
     *
     * @return the plan
     */
    public PlannedTurbulence plan() {
        return plan;
    }

    /**
     * Returns the ascent of the lowest 50 hPa, mixed (common practice, no source).
     *
     * @return the ascent; not known with its reason
     */
    public Answer<ParcelAscent> ascent() {
        return ascent;
    }

    /**
     * Returns the shear of the wind from one whole 1,000 ft to the next.
     *
     * @return the layers upwards, each known or with its reason
     */
    public List<Answer<WindShear>> shear() {
        return List.copyOf(layers);
    }

    /**
     * Returns the evidence of the whole climb: energy, cloud, and the layer that shears most among
     * those that are known.
     *
     * @return the advice; never a word that belts may be unfastened
     */
    public SeatBeltAdvice advice() {
        return advice;
    }

    /**
     * Returns where a layer of 1,000 ft has cloud of the parcel in it, or shears by the threshold.
     *
     * @return the stretches upwards; that there is none is no reason to unfasten seat belts
     */
    public List<Span> spans() {
        return spans;
    }

    /**
     * Returns the advice for reading.
     *
     * @return a text; may change between versions
     */
    @Override
    public String toString() {
        return spans.size() + " stretches with a reason for seat belts; " + advice.inWords();
    }
}
