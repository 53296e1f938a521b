package org.climbwright.cabin.dynamics;

import static org.climbwright.atmosphere.IcaoConstants.GAS_CONSTANT_J_PER_KG_K;

/**
 * The air of a cabin, integrated in time: mass, temperature and pressure, with an inflow and
 * openings that let air out or in. It changes with every step.
 *
 * <p>TR-BDF2: a part of the step by the trapezoidal rule, the rest by a backward difference, both
 * implicit, so that it is stable however large the openings are, and where the pressures inside and
 * out are equal, at which the flow has an infinite slope. {@link CabinStage} solves each.
 *
 * <p>Steps are cut until the estimated error of each is below {@link #TOLERANCE_PA}; so the answer
 * hardly depends on the step asked for. Mass is counted as it flows, and pressure follows from it.
 *
 * @source R. E. Bank et al., IEEE Transactions on Electron Devices 32 (1985) 1992-2007; error
 *     estimate and its filter from M. E. Hosea and L. F. Shampine, Applied Numerical Mathematics 20
 *     (1996) 21-37 (both from memory; checked against closed forms and another integrator)
 */
final class CabinGas {
    /** The error allowed in one step [Pa]: some 0.0003 ft. */
    static final double TOLERANCE_PA = 1e-3;

    private static final double GAMMA = 2.0 - Math.sqrt(2.0);
    private static final double HALF = 0.5 * GAMMA;
    private static final double OUTER = 0.25 * Math.sqrt(2.0);
    private static final double ESTIMATE =
            (-3.0 * GAMMA * GAMMA + 4.0 * GAMMA - 2.0) / (6.0 * (2.0 - GAMMA));

    private static final double SMALLEST_SHARE = 1.0 / (1 << 20);

    private final CabinStage stage;
    private final double volumeM3;
    private final boolean isothermal;
    private final double inflowK;

    private double massKg;
    private double temperatureK;
    private double pressurePa;
    private double inKg;
    private double outKg;

    /** The share of the step asked for that went well last. */
    private double share = 1.0;

    // what the last attempt came to
    private double nextPa;
    private double nextKg;
    private double nextInKg;

    CabinGas(CabinHull hull, double pressurePa) {
        this.stage = new CabinStage(hull);
        this.volumeM3 = hull.volumeM3();
        this.isothermal = hull.air() == CabinAir.ISOTHERMAL;
        this.inflowK = hull.inflowTemperatureK();
        this.temperatureK = hull.cabinTemperatureK();
        this.pressurePa = pressurePa;
        this.massKg = MassBalance.mass(pressurePa, volumeM3, temperatureK);
    }

    double pressurePa() {
        return pressurePa;
    }

    double temperatureK() {
        return temperatureK;
    }

    double massKg() {
        return massKg;
    }

    /** What an inflow alone does to the pressure [Pa/s]. */
    double fedPaPerS(double inflowKgPerS) {
        return inflowKgPerS * stage.pressurePerMass(inflowK, temperatureK);
    }

    /** What a kilogram of cabin air adds to the pressure [Pa/kg]. */
    double perMassPa() {
        return stage.pressurePerMass(temperatureK, temperatureK);
    }

    /** Mass that came in since the beginning, through openings and relief valves too [kg]. */
    double inKg() {
        return inKg;
    }

    /** Mass that went out since the beginning, through openings and relief valves [kg]. */
    double outKg() {
        return outKg;
    }

    /**
     * Goes on in time.
     *
     * @param stepS how long [s]
     * @param beforePa pressure outside at the beginning
     * @param afterPa pressure outside at the end, straight between
     * @param outsideK temperature outside
     * @param inflowKgPerS what is fed in
     * @param areaM2 effective area of all openings
     */
    void step(
            double stepS,
            double beforePa,
            double afterPa,
            double outsideK,
            double inflowKgPerS,
            double areaM2) {
        stage.set(inflowKgPerS, areaM2, outsideK);
        double change = afterPa - beforePa;
        double done = 0.0;
        double trial = share;
        while (done < 1.0) {
            trial = Math.min(trial, 1.0 - done);
            double next = done + trial;
            double to = next == 1.0 ? afterPa : Math.fma(change, next, beforePa);
            double error = attempt(trial * stepS, Math.fma(change, done, beforePa), to);
            if (!(error <= TOLERANCE_PA) && trial > SMALLEST_SHARE) {
                trial *= 0.5;
                continue;
            }
            accept();
            done = next;
            trial = error < 0.1 * TOLERANCE_PA ? 2.0 * trial : trial;
            share = Math.min(1.0, trial);
        }
    }

    /**
     * Goes straight to a pressure, whatever has to flow out for it.
     *
     * <p>Adiabatic air loses what is left of the inflow's energy: {@code dm/dt = in - k m}, {@code
     * k = (in Tin - (dp/dt) / factor) R / (p V)}, with the pressure in the middle, and {@code
     * exp(-z)} as {@code 1 / (1 + z + z² / 2)}, which keeps the mass above 0 whatever the step.
     */
    void follow(double stepS, double toPa, double inflowKgPerS) {
        double before = massKg;
        double fed = inflowKgPerS * stepS;
        if (isothermal) {
            massKg = MassBalance.mass(toPa, volumeM3, temperatureK);
        } else {
            double perKelvin = stage.pressurePerMass(1.0, 1.0);
            double heat = Math.fma(fed, inflowK, -(toPa - pressurePa) / perKelvin);
            double middlePa = 0.5 * (pressurePa + toPa);
            double z = heat * GAS_CONSTANT_J_PER_KG_K / (middlePa * volumeM3);
            double half = Math.fma(0.5, z, 1.0);
            massKg = Math.fma(fed, half, massKg) / Math.fma(z, half, 1.0);
            temperatureK = MassBalance.temperature(toPa, volumeM3, massKg);
        }
        pressurePa = toPa;
        inKg += fed;
        outKg += fed - (massKg - before);
    }

    /** Tries a step and returns the estimate of its error [Pa], infinite where it fails. */
    private double attempt(double stepS, double fromPa, double toPa) {
        double implicit = HALF * stepS;
        double outer = OUTER * stepS;
        stage.begin(pressurePa, massKg, temperatureK, fromPa);
        double net0 = stage.netKgPerS();
        double rate0 = stage.ratePaPerS();

        double middlePa = Math.fma(GAMMA, toPa - fromPa, fromPa);
        boolean found =
                stage.solve(
                        Math.fma(implicit, rate0, pressurePa),
                        Math.fma(implicit, net0, massKg),
                        implicit,
                        middlePa);
        double net1 = stage.netKgPerS();
        double rate1 = stage.ratePaPerS();
        found &=
                stage.solve(
                        Math.fma(outer, rate0 + rate1, pressurePa),
                        Math.fma(outer, net0 + net1, massKg),
                        implicit,
                        toPa);
        double net2 = stage.netKgPerS();
        double rate2 = stage.ratePaPerS();

        nextKg = massKg + Math.fma(outer, net0 + net1, implicit * net2);
        nextPa = stage.pressurePa();
        nextInKg =
                Math.fma(
                        outer,
                        Math.max(net0, stage.inflow()) + Math.max(net1, stage.inflow()),
                        implicit * Math.max(net2, stage.inflow()));
        if (!found) {
            return Double.POSITIVE_INFINITY;
        }
        double raw = rate0 / GAMMA - rate1 / (GAMMA * (1.0 - GAMMA)) + rate2 / (1.0 - GAMMA);
        return Math.abs(ESTIMATE * stepS * raw) / Math.fma(implicit, stage.slopePerS(), 1.0);
    }

    private void accept() {
        inKg += nextInKg;
        outKg += nextInKg - (nextKg - massKg);
        massKg = nextKg;
        if (isothermal) {
            pressurePa = MassBalance.pressure(massKg, volumeM3, temperatureK);
        } else {
            pressurePa = nextPa;
            temperatureK = MassBalance.temperature(nextPa, volumeM3, massKg);
        }
    }

    /**
     * Goes on as {@link #step}, with relief valves that pass whatever is needed to keep the
     * differential between two limits.
     *
     * @return true if one had to open
     */
    boolean stepRelieved(
            double stepS,
            double beforePa,
            double afterPa,
            double outsideTemperatureK,
            double inflowKgPerS,
            double areaM2,
            double lowestPa,
            double highestPa) {
        double pressure = pressurePa;
        double mass = massKg;
        double kelvins = temperatureK;
        double in = inKg;
        double out = outKg;
        step(stepS, beforePa, afterPa, outsideTemperatureK, inflowKgPerS, areaM2);
        if (pressurePa > afterPa + highestPa) {
            // the step anew with the valve open: what leaves has the temperature of the cabin
            pressurePa = pressure;
            massKg = mass;
            temperatureK = kelvins;
            inKg = in;
            outKg = out;
            follow(stepS, afterPa + highestPa, inflowKgPerS);
            return true;
        }
        double lowest = afterPa + lowestPa;
        if (pressurePa < lowest) {
            double perMass = stage.pressurePerMass(outsideTemperatureK, temperatureK);
            double more = (lowest - pressurePa) / perMass;
            inKg += more;
            massKg += more;
            pressurePa = lowest;
            if (!isothermal) {
                temperatureK = MassBalance.temperature(lowest, volumeM3, massKg);
            }
            return true;
        }
        return false;
    }
}
