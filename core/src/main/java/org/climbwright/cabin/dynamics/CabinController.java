package org.climbwright.cabin.dynamics;

import org.climbwright.atmosphere.StandardAir;
import org.climbwright.cabin.CabinPlan;

/**
 * The controller of the outflow valve, an ideal one: it knows what flows, and moves the valve all
 * the time so that the cabin goes straight to the pressure that its plan wants at the end of a
 * step. Where that asks for more than an open valve or less than a shut one, that is what it has.
 */
final class CabinController {
    private CabinController() {}

    /** The cabin pressure wanted at the end of a step. */
    static double wantedPa(
            CabinPlan plan,
            double cabinM,
            double pressureAltitudeM,
            double outsidePa,
            double stepS) {
        double next = plan.nextM(cabinM, stepS, pressureAltitudeM);
        return Math.max(outsidePa, StandardAir.pressureFromAltitude(next));
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
