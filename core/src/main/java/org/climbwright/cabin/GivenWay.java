package org.climbwright.cabin;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.function.IntPredicate;
import java.util.function.IntToDoubleFunction;
import org.climbwright.cabin.CabinState.BoundBy;
import org.climbwright.cabin.ExpectedCabin.GaveWay;

/** Finds where along a climb one limit of the cabin was kept and another was not. */
final class GivenWay {
    /** A rate, or a differential in pascals, passed by less is not passed. */
    private static final double ROUNDING = 1e-5;

    private final ExpectedCabin cabin;
    private final CabinPlan plan;
    private final List<GaveWay> spans = new ArrayList<>();

    GivenWay(ExpectedCabin cabin) {
        this.cabin = cabin;
        this.plan = cabin.plan();
    }

    List<GaveWay> spans() {
        boolean isRateFirst = plan.precedence() == CabinPlan.Precedence.RATE_FIRST;
        double up = plan.rates().up().inMetresPerSecond();
        collect(
                step -> cabin.rateMps(step) > up + ROUNDING,
                cabin::rateMps,
                BoundBy.RATE_LIMIT,
                isRateFirst ? BoundBy.RELIEF_SETTING : BoundBy.SCHEDULED_DIFFERENTIAL);
        if (isRateFirst) {
            double scheduled = plan.limits().scheduled().inPascals();
            collect(
                    step -> cabin.differentialPa(step + 1) > scheduled + ROUNDING,
                    cabin::differentialPa,
                    BoundBy.SCHEDULED_DIFFERENTIAL,
                    BoundBy.RATE_LIMIT);
        }
        spans.sort(Comparator.comparing((GaveWay span) -> span.from().time()));
        return List.copyOf(spans);
    }

    private void collect(
            IntPredicate isPassed, IntToDoubleFunction passed, BoundBy limit, BoundBy kept) {
        int steps = cabin.last();
        int step = 0;
        while (step < steps) {
            if (!isPassed.test(step)) {
                step++;
                continue;
            }
            int first = step;
            int worst = step;
            while (step < steps && isPassed.test(step)) {
                worst = passed.applyAsDouble(step) > passed.applyAsDouble(worst) ? step : worst;
                step++;
            }
            add(limit, kept, first, step, worst);
        }
    }

    private void add(BoundBy limit, BoundBy kept, int first, int end, int worstStep) {
        boolean isDifferential = limit == BoundBy.SCHEDULED_DIFFERENTIAL;
        boolean isAtTop = end == cabin.last();
        int worstNode =
                isDifferential && cabin.differentialPa(end) > cabin.differentialPa(worstStep)
                        ? end
                        : worstStep;
        CabinState from = cabin.node(first);
        CabinState to =
                isDifferential && isAtTop
                        ? cabin.whenAtTheScheduledDifferential()
                        : cabin.node(end);
        CabinState worst = cabin.node(worstNode);
        spans.add(new GaveWay(limit, kept, from, to, worst, inWords(limit, kept, from, to, worst)));
    }

    private String inWords(
            BoundBy limit, BoundBy kept, CabinState from, CabinState to, CabinState worst) {
        String where =
                ", from "
                        + InFeet.of(from.aeroplane().inMetres())
                        + " to "
                        + InFeet.of(to.aeroplane().inMetres());
        if (limit == BoundBy.RATE_LIMIT) {
            return "cabin rate "
                    + InFeet.perMinute(worst.rate().inMetresPerSecond())
                    + " where the limit is "
                    + InFeet.perMinute(plan.rates().up().inMetresPerSecond())
                    + where
                    + (kept == BoundBy.RELIEF_SETTING
                            ? ": the relief valve opens"
                            : ": the scheduled differential is kept");
        }
        return String.format(
                Locale.ROOT,
                "differential %.2f psi where %.2f psi is scheduled%s: the rate limit is kept",
                worst.differential().inPoundsPerSquareInch(),
                plan.limits().scheduled().inPoundsPerSquareInch(),
                where);
    }
}
