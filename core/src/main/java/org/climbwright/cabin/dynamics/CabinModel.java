package org.climbwright.cabin.dynamics;

import org.climbwright.atmosphere.StandardAir;
import org.climbwright.cabin.CabinPlan;
import org.climbwright.cabin.CabinPressure;
import org.climbwright.cabin.TimeAtAltitude;
import org.climbwright.quantity.ModelRange;
import org.climbwright.quantity.altitude.CabinAltitude;
import org.climbwright.quantity.altitude.PressureAltitude;
import org.climbwright.quantity.pressure.DifferentialPressure;
import org.climbwright.quantity.speed.CabinAltitudeRate;

/**
 * A cabin that steps in time, for simulation loops: it changes with each step, and holds no clock,
 * no thread and no file. Time comes in with the step.
 *
 * <p>A controller opens the outflow valve to follow the plan; leaks, holes and relief valves let
 * air out or in; failures come when the caller says so. A step allocates nothing. The step's length
 * is the caller's, since longer steps are cut by their error: at 120 Hz and at 1 s the cabin
 * altitude at the same time is the same within 0.1 ft in climbs and level flight, failures
 * included. What an aeroplane does within a step the cabin cannot know: where it turns between
 * climbs and descents of 6,000 ft/min, or catches its cabin in such a descent, a second is worth up
 * to 10 ft.
 *
 * <pre>{@code
 * CabinModel cabin = CabinModel.onGround(hull, plan);
 * cabin.step(1.0 / 60.0, pressureAltitudeM, outsideTemperatureK);     // each frame
 * cabin.fail(new CabinFailure.InflowLost());                          // when it should happen
 * cabin.cabinAltitude()
 * }</pre>
 *
 * <p>Limits of use: for study and simulation. One volume, an ideal controller, relief valves that
 * pass whatever is needed; not for events shorter than half a second. Checklists and memory items
 * are the operator's; the flight manual, the operator's procedures, local regulations and licensed
 * practice decide. Not for several threads at once.
 */
public final class CabinModel {
    private static final ModelRange STEP =
            new ModelRange("step", 1e-6, 1.0, "s", "a controller that looks more seldom lags");

    private static final ModelRange ALTITUDE =
            new ModelRange(
                    "pressure altitude of the aeroplane",
                    -2000.0,
                    30000.0,
                    "m",
                    "no aeroplane that carries people is elsewhere");

    private static final ModelRange OUTSIDE =
            new ModelRange(
                    "temperature outside", 100.0, 350.0, "K", "no air of the earth has another");

    /** A cabin in balance may miss it by rounding. */
    private static final double ROUNDING_PA = 1e-6;

    private final CabinHull hull;
    private final CabinPlan plan;
    private final CabinGas gas;
    private final double reliefPa;
    private final double negativeReliefPa;
    private final double[] levelsM;
    private final double[] aboveS;

    private double timeS;
    private double pressureAltitudeM;
    private double outsidePa;
    private double cabinAltitudeM;
    private double cabinRateMps;
    private double highestM;
    private double valveAreaM2;
    private boolean reliefOpen;

    private double inflowShare = 1.0;
    private double openAreaM2;
    private boolean valveHeld;

    private CabinModel(
            CabinHull hull,
            CabinPlan plan,
            double pressureAltitudeM,
            double cabinAltitudeM,
            CabinAltitude... levels) {
        this.hull = hull;
        this.plan = plan;
        this.reliefPa = plan.limits().relief().inPascals();
        this.negativeReliefPa = plan.limits().negativeRelief().inPascals();
        this.pressureAltitudeM = ALTITUDE.check(pressureAltitudeM);
        this.outsidePa = StandardAir.pressureFromAltitude(pressureAltitudeM);
        double cabinPa = StandardAir.pressureFromAltitude(cabinAltitudeM);
        double differential = cabinPa - outsidePa;
        boolean isHeld =
                differential >= negativeReliefPa - ROUNDING_PA
                        && differential <= reliefPa + ROUNDING_PA;
        if (!isHeld) {
            new ModelRange(
                            "differential pressure at the beginning",
                            negativeReliefPa,
                            reliefPa,
                            "Pa",
                            "the relief valves allow no other")
                    .check(differential);
        }
        this.cabinAltitudeM = cabinAltitudeM;
        this.highestM = cabinAltitudeM;
        this.gas = new CabinGas(hull, cabinPa);
        this.openAreaM2 = hull.leakAreaM2();
        this.valveAreaM2 = withinTravel(areaFor(0.0, cabinPa, outsidePa, hull.inflowKgPerS()));
        this.levelsM = new double[levels.length];
        this.aboveS = new double[levels.length];
        for (int i = 0; i < levels.length; i++) {
            levelsM[i] = levels[i].inMetres();
        }
    }

    /**
     * Returns a cabin before take-off.
     *
     * @param hull the hull
     * @param plan schedule and limits; its differential on the ground is there already
     * @param levels cabin altitudes for which to count the time above
     * @return the model
     * @throws org.climbwright.quantity.OutsideModelException if the departure is out of range
     */
    public static CabinModel onGround(CabinHull hull, CabinPlan plan, CabinAltitude... levels) {
        return new CabinModel(
                hull, plan, plan.departure().inMetres(), plan.cabinOnGround().inMetres(), levels);
    }

    /**
     * Returns a cabin in flight.
     *
     * @param hull the hull
     * @param plan schedule and limits
     * @param aeroplane pressure altitude of the aeroplane
     * @param cabin cabin altitude
     * @param levels cabin altitudes for which to count the time above
     * @return the model
     * @throws org.climbwright.quantity.OutsideModelException if an altitude is out of range, or the
     *     differential outside the relief settings
     */
    public static CabinModel inFlight(
            CabinHull hull,
            CabinPlan plan,
            PressureAltitude aeroplane,
            CabinAltitude cabin,
            CabinAltitude... levels) {
        return new CabinModel(hull, plan, aeroplane.inMetres(), cabin.inMetres(), levels);
    }

    /**
     * Tells whether a step can be made.
     *
     * @param stepS its length [s]
     * @param toPressureAltitudeM where the aeroplane is at its end [m]
     * @param outsideTemperatureK temperature outside [K]
     * @return true if {@link #step} takes them
     */
    public boolean covers(double stepS, double toPressureAltitudeM, double outsideTemperatureK) {
        return STEP.covers(stepS)
                && ALTITUDE.covers(toPressureAltitudeM)
                && OUTSIDE.covers(outsideTemperatureK)
                && (valveHeld || plan.covers(toPressureAltitudeM));
    }

    /**
     * Goes on in time. Allocates nothing.
     *
     * @param stepS how long [s], 1e-6 to 1
     * @param toPressureAltitudeM pressure altitude of the aeroplane at the end [m], -2000 to 30000;
     *     the pressure outside goes straight to there
     * @param outsideTemperatureK temperature outside [K], 100 to 350; counts where air comes in
     * @throws org.climbwright.quantity.OutsideModelException if a value is out of range, or the
     *     schedule does not reach there; nothing has changed then
     * @accuracy 0.1 ft: steps of 1 s against steps of 1/120 s, over a climb and 18 minutes of
     *     cruise with each kind of failure; as much against the adaptive integration of {@link
     *     CabinIntegration}
     * @source mass balance with the flows of {@link OrificeFlow}
     */
    public void step(double stepS, double toPressureAltitudeM, double outsideTemperatureK) {
        STEP.check(stepS);
        ALTITUDE.check(toPressureAltitudeM);
        OUTSIDE.check(outsideTemperatureK);
        double afterPa = StandardAir.pressureFromAltitude(toPressureAltitudeM);
        double inflow = hull.inflowKgPerS() * inflowShare;
        reliefOpen =
                (valveHeld || !isFollowing(stepS, toPressureAltitudeM, afterPa, inflow))
                        && gas.stepRelieved(
                                stepS,
                                outsidePa,
                                afterPa,
                                outsideTemperatureK,
                                inflow,
                                valveAreaM2 + openAreaM2,
                                negativeReliefPa,
                                reliefPa);

        double before = cabinAltitudeM;
        cabinAltitudeM = StandardAir.altitudeFromPressure(gas.pressurePa());
        cabinRateMps = (cabinAltitudeM - before) / stepS;
        highestM = Math.max(highestM, cabinAltitudeM);
        for (int i = 0; i < levelsM.length; i++) {
            aboveS[i] += stepS * TimeAtAltitude.shareAbove(before, cabinAltitudeM, levelsM[i]);
        }
        pressureAltitudeM = toPressureAltitudeM;
        outsidePa = afterPa;
        timeS += stepS;
    }

    /** Moves the valve; true if the cabin could go where the controller wants it. */
    private boolean isFollowing(double stepS, double toM, double afterPa, double inflow) {
        double wanted = CabinController.wantedPa(plan, cabinAltitudeM, toM, afterPa, stepS);
        double rate = (wanted - gas.pressurePa()) / stepS;
        // where the outside is the higher now, it is the flow now that the valve is opened for
        boolean isBelow = gas.pressurePa() < outsidePa;
        double valve =
                isBelow
                        ? areaFor(rate, gas.pressurePa(), outsidePa, inflow)
                        : areaFor(rate, wanted, afterPa, inflow);
        valveAreaM2 = withinTravel(valve);
        boolean canGo = valve >= 0.0 && valve <= hull.valveAreaM2();
        if (canGo) {
            gas.follow(stepS, wanted, inflow);
        }
        return canGo;
    }

    private double areaFor(double rate, double insidePa, double outside, double inflow) {
        return CabinController.areaWanted(
                        rate,
                        insidePa,
                        outside,
                        gas.temperatureK(),
                        gas.fedPaPerS(inflow),
                        gas.perMassPa())
                - openAreaM2;
    }

    private double withinTravel(double valve) {
        return Math.max(0.0, Math.min(hull.valveAreaM2(), valve));
    }

    /**
     * Lets something fail from now on; what failed before stays so: areas add up, and of two losses
     * of inflow the larger counts.
     *
     * @param failure what
     * @throws org.climbwright.quantity.OutsideModelException if a valve is stuck further open than
     *     the hull's can be
     */
    public void fail(CabinFailure failure) {
        if (failure instanceof CabinFailure.InflowLost lost) {
            inflowShare = Math.min(inflowShare, lost.remainingShare());
        } else if (failure instanceof CabinFailure.ValveStuck stuck) {
            valveAreaM2 =
                    new ModelRange(
                                    "area of the stuck valve",
                                    0.0,
                                    hull.valveAreaM2(),
                                    "m²",
                                    "that of the hull's valve fully open is the most")
                            .check(stuck.areaM2());
            valveHeld = true;
        } else if (failure instanceof CabinFailure.ControllerStopped) {
            valveHeld = true;
        } else if (failure instanceof CabinFailure.Hole hole) {
            openAreaM2 += hole.areaM2();
        } else if (failure instanceof CabinFailure.ExcessLeak leak) {
            openAreaM2 += leak.areaM2();
        }
    }

    /**
     * Returns the time since the beginning.
     *
     * @return the sum of all steps [s]
     */
    public double timeS() {
        return timeS;
    }

    /**
     * Returns where the aeroplane is.
     *
     * @return pressure altitude [m]
     */
    public double pressureAltitudeM() {
        return pressureAltitudeM;
    }

    /**
     * Returns the cabin altitude.
     *
     * @return cabin altitude [m]
     */
    public double cabinAltitudeM() {
        return cabinAltitudeM;
    }

    /**
     * Returns the cabin altitude.
     *
     * @return cabin altitude
     */
    public CabinAltitude cabinAltitude() {
        return CabinAltitude.ofMetres(cabinAltitudeM);
    }

    /**
     * Returns the highest cabin altitude so far.
     *
     * @return the highest at the end of a step; a peak within one is not seen
     */
    public CabinAltitude highest() {
        return CabinAltitude.ofMetres(highestM);
    }

    /**
     * Returns how fast the cabin climbed in the last step.
     *
     * @return rate of cabin altitude [m/s], climbing positive; 0 before the first step
     */
    public double cabinRateMps() {
        return cabinRateMps;
    }

    /**
     * Returns how fast the cabin climbed in the last step.
     *
     * @return rate of cabin altitude, climbing positive; 0 before the first step
     */
    public CabinAltitudeRate cabinRate() {
        return CabinAltitudeRate.ofMetresPerSecond(cabinRateMps);
    }

    /**
     * Returns the pressure in the cabin.
     *
     * @return pressure [Pa]
     */
    public double cabinPressurePa() {
        return gas.pressurePa();
    }

    /**
     * Returns the temperature in the cabin.
     *
     * @return temperature [K]; changes in adiabatic air alone
     */
    public double cabinTemperatureK() {
        return gas.temperatureK();
    }

    /**
     * Returns the differential pressure.
     *
     * @return cabin pressure less the pressure outside [Pa]
     */
    public double differentialPa() {
        return gas.pressurePa() - outsidePa;
    }

    /**
     * Returns the differential pressure.
     *
     * @return cabin pressure less the pressure outside
     */
    public DifferentialPressure differential() {
        return DifferentialPressure.ofPascals(differentialPa());
    }

    /**
     * Returns how far the outflow valve is open.
     *
     * @return its effective area [m²]
     */
    public double valveAreaM2() {
        return valveAreaM2;
    }

    /**
     * Tells whether a relief valve had to open in the last step.
     *
     * @return true if the differential would else have passed a relief setting
     */
    public boolean isReliefOpen() {
        return reliefOpen;
    }

    /**
     * Returns the mass of the air in the cabin.
     *
     * @return mass [kg]
     */
    public double airMassKg() {
        return gas.massKg();
    }

    /**
     * Returns what came in since the beginning.
     *
     * @return mass [kg], through openings too
     */
    public double massInKg() {
        return gas.inKg();
    }

    /**
     * Returns what went out since the beginning.
     *
     * @return mass [kg], through valves, leaks and holes
     */
    public double massOutKg() {
        return gas.outKg();
    }

    /**
     * Returns how long the cabin was above a level so far.
     *
     * @param index which of the levels given at the beginning, from 0
     * @return time [s], all excursions together
     * @accuracy the cabin goes straight through a step: in a blow-down of less than a second, one
     *     such step
     * @throws IndexOutOfBoundsException if there is no such level
     */
    public double timeAboveS(int index) {
        return aboveS[index];
    }

    /**
     * Returns the cabin for reading.
     *
     * @return a text; may change between versions
     */
    @Override
    public String toString() {
        return "cabin at "
                + cabinAltitude().text()
                + ", "
                + CabinPressure.differential(
                                cabinAltitude(), PressureAltitude.ofMetres(pressureAltitudeM))
                        .text()
                + " after "
                + timeS
                + " s";
    }
}
