package org.climbwright.cabin.dynamics;

import org.climbwright.atmosphere.StandardAir;
import org.climbwright.cabin.CabinPlan;
import org.climbwright.cabin.CabinPlan.Precedence;

/**
 * The controller of the outflow valve, an ideal one: at each step it knows what flows, and opens
 * the valve so far that the cabin comes to the pressure it wants by the end of the step.
 *
 * <p>It wants the plan's target, approached within the rate limits; where that would pass the
 * scheduled differential, the plan's precedence decides. It has no state of its own.
 */
final class CabinController {
    private final CabinPlan plan;
    private final double upMps;
    private final double downMps;
    private final double mostPa;

    CabinController(CabinPlan plan) {
        this.plan = plan;
        this.upMps = plan.rates().up().inMetresPerSecond();
        this.downMps = plan.rates().down().inMetresPerSecond();
        this.mostPa =
                plan.precedence() == Precedence.DIFFERENTIAL_FIRST
                        ? plan.limits().scheduled().inPascals()
                        : plan.limits().relief().inPascals();
    }

    /** The cabin pressure wanted at the end of a step. */
    double wantedPa(double cabinM, double pressureAltitudeM, double outsidePa, double stepS) {
        double target = plan.targetM(pressureAltitudeM);
        double highest = Math.fma(upMps, stepS, cabinM);
        double lowest = Math.fma(-downMps, stepS, cabinM);
        double next = Math.max(lowest, Math.min(highest, target));
        double wanted = StandardAir.pressureFromAltitude(next);
        return Math.max(outsidePa, Math.min(wanted, outsidePa + mostPa));
    }

    /**
     * The area of all openings together that lets the pressure go at a rate: what flows in less
     * what the pressure gains flows out.
     *
     * @param ratePaPerS rate of pressure wanted
     * @param fedPaPerS what the inflow alone does to the pressure
     * @param perMassPa what a kilogram of cabin air is worth
     * @return area [m²]; 0 if nothing should flow, infinite where the pressure outside is the
     *     higher one, or nothing flows but something should
     */
    static double areaWanted(
            double ratePaPerS,
            double insidePa,
            double outsidePa,
            double cabinK,
            double fedPaPerS,
            double perMassPa) {
        double outKgPerS = (fedPaPerS - ratePaPerS) / perMassPa;
        double difference = insidePa - outsidePa;
        if (difference < 0.0) {
            return Double.POSITIVE_INFINITY; // open, so that the outside comes in
        }
        if (!(outKgPerS > 0.0)) {
            return 0.0;
        }
        if (difference == 0.0) {
            return Double.POSITIVE_INFINITY;
        }
        double mach = OrificeFlow.jetMach(difference, outsidePa);
        return outKgPerS * Math.sqrt(cabinK) / OrificeFlow.flux(insidePa, mach);
    }
}
