package org.climbwright.cabin.dynamics;

import static org.climbwright.atmosphere.IcaoConstants.GAS_CONSTANT_J_PER_KG_K;

/**
 * One implicit stage of the cabin's integration: the pressure p with {@code p = known + h
 * dp/dt(p)}.
 *
 * <p>It is one equation of one unknown, {@code x + K(x) = D}, for the pressure x above or below
 * that outside; K, what flows through the openings in the time h, rises with x. The root lies
 * between 0 and D, and Newton's steps are taken in the square root of x, in which K is nearly
 * straight near equal pressures. Adiabatic air has its temperature from the mass that is left,
 * which is the root of a quadratic.
 */
final class CabinStage {
    private static final int MOST_STEPS = 60;

    /** Newton's step halves the digits to go: after one so small [Pa] the rest is rounding. */
    private static final double LAST_STEP_PA = 1e-4;

    /** What a stage may take of the pressure outside, so that some is left in the cabin. */
    private static final double MOST = 0.99;

    private final boolean isothermal;
    private final double factor;
    private final double volumeM3;
    private final double inflowK;
    private double heldK;

    private double inflowKgPerS;
    private double areaM2;
    private double outsideK;
    private double rootOutsideK;

    private double cabinPa;

    // what flows at x: mass, mass times temperature, and d(ln of that)/dx
    private double flow;
    private double heat;
    private double perPa;

    private double solutionPa;
    private double netKgPerS;
    private double ratePaPerS;
    private double slopePerS;

    CabinStage(CabinHull hull) {
        this.isothermal = hull.air() == CabinAir.ISOTHERMAL;
        this.volumeM3 = hull.volumeM3();
        this.factor = MassBalance.pressurePerMassKelvin(hull.air(), volumeM3);
        this.inflowK = hull.inflowTemperatureK();
        this.heldK = hull.cabinTemperatureK();
    }

    void set(double inflow, double area, double kelvinsOutside) {
        inflowKgPerS = inflow;
        areaM2 = area;
        if (kelvinsOutside != outsideK) {
            outsideK = kelvinsOutside;
            rootOutsideK = Math.sqrt(kelvinsOutside);
        }
    }

    double inflow() {
        return inflowKgPerS;
    }

    double pressurePa() {
        return solutionPa;
    }

    /** What the cabin gains [kg/s]. */
    double netKgPerS() {
        return netKgPerS;
    }

    double ratePaPerS() {
        return ratePaPerS;
    }

    /** How much faster the pressure falls for each pascal more [1/s]. */
    double slopePerS() {
        return slopePerS;
    }

    /** What a kilogram of air of its own temperature adds to the pressure [Pa/kg]. */
    double pressurePerMass(double ownK, double cabinK) {
        return factor * (isothermal ? cabinK : ownK);
    }

    /** Evaluates the rates at a known state. */
    void begin(double pressurePa, double massKg, double temperatureK, double outsidePa) {
        cabinPa = pressurePa;
        heldK = temperatureK;
        double difference = pressurePa - outsidePa;
        boolean outward = difference >= 0.0;
        through(Math.abs(difference), outward, outsidePa, massKg, 0.0);
        double sign = outward ? -1.0 : 1.0;
        netKgPerS = Math.fma(sign, flow, inflowKgPerS);
        ratePaPerS = factor * Math.fma(inflowKgPerS, warmth(inflowK), sign * heat);
    }

    /**
     * Solves the stage.
     *
     * @param knownPa the known part of the pressure
     * @param knownKg the known part of the mass
     * @param implicitS how long the rate at the solution counts, h
     * @return false where next to nothing would be left in the cabin: the step is too long
     */
    boolean solve(double knownPa, double knownKg, double implicitS, double outsidePa) {
        double strength = implicitS * factor;
        double fedPa = Math.fma(strength * inflowKgPerS, warmth(inflowK), knownPa);
        double fedKg = Math.fma(implicitS, inflowKgPerS, knownKg);
        boolean outward = fedPa >= outsidePa;
        double depth = Math.abs(fedPa - outsidePa);
        if ((!outward && depth > MOST * outsidePa) || !(fedKg > 0.0)) {
            solutionPa = outsidePa;
            return false;
        }
        double high = Math.sqrt(depth);
        double low = 0.0;
        double guess = outward ? cabinPa - outsidePa : outsidePa - cabinPa;
        double root = guess > 0.0 && guess < depth ? Math.sqrt(guess) : high;
        flow = 0.0;
        perPa = 0.0;
        double k = 0.0;
        for (int i = 0; i < MOST_STEPS && root > 0.0; i++) {
            double x = root * root;
            through(x, outward, outsidePa, fedKg, implicitS);
            k = strength * heat;
            double residual = x + k - depth;
            if (residual > 0.0) {
                high = root;
            } else {
                low = root;
            }
            double next = root - residual / (2.0 * root * Math.fma(k, perPa, 1.0));
            if (!(next >= low && next <= high)) {
                next = 0.5 * (low + high);
            }
            double moved = Math.abs(next - root) * (next + root);
            root = next;
            if (moved <= LAST_STEP_PA) {
                break;
            }
        }
        double x = root * root;
        solutionPa = outward ? outsidePa + x : outsidePa - x;
        ratePaPerS = (solutionPa - knownPa) / implicitS;
        netKgPerS =
                isothermal
                        ? ratePaPerS / (factor * heldK)
                        : inflowKgPerS + (outward ? -flow : flow);
        slopePerS = k * perPa / implicitS;
        cabinPa = solutionPa;
        return true;
    }

    /** What flows at a difference of pressure. */
    private void through(
            double x, boolean outward, double outsidePa, double fedKg, double implicitS) {
        double p = outward ? outsidePa + x : outsidePa - x;
        double mach = OrificeFlow.jetMach(x, outward ? outsidePa : p);
        double flux = areaM2 * OrificeFlow.flux(outward ? p : outsidePa, mach);
        double square = mach * mach;
        double beyondChoke = (1.0 - square) / (1.4 * square);
        perPa = (outward ? 1.0 + beyondChoke : beyondChoke) / p;
        if (!outward) {
            flow = flux / rootOutsideK;
            heat = flow * warmth(outsideK);
        } else if (isothermal) {
            flow = flux / Math.sqrt(heldK);
            heat = flow * heldK;
        } else {
            double perRootMass = flux * Math.sqrt(GAS_CONSTANT_J_PER_KG_K / (p * volumeM3));
            double b = implicitS * perRootMass;
            double rootMass = 2.0 * fedKg / (b + Math.sqrt(Math.fma(b, b, 4.0 * fedKg)));
            flow = perRootMass * rootMass;
            heat = flow * p * volumeM3 / (GAS_CONSTANT_J_PER_KG_K * rootMass * rootMass);
        }
    }

    /** The temperature with which air counts that came from elsewhere. */
    private double warmth(double ownK) {
        return isothermal ? heldK : ownK;
    }
}
