package org.climbwright.cabin.dynamics;

import java.time.Duration;
import java.util.Objects;
import org.apache.commons.math3.ode.FirstOrderDifferentialEquations;
import org.apache.commons.math3.ode.nonstiff.DormandPrince853Integrator;
import org.climbwright.atmosphere.Atmosphere;
import org.climbwright.atmosphere.StandardAir;
import org.climbwright.cabin.CabinHistory;
import org.climbwright.quantity.ModelRange;
import org.climbwright.quantity.altitude.CabinAltitude;

/**
 * The cabin with openings that stay as they are, integrated by another method: an adaptive one of
 * eighth order of Apache Commons Math, for offline reference. {@link CabinModel} needs no library
 * and no garbage, and is the one for loops.
 *
 * <p>It knows no controller and no relief valve. Where the pressures inside and outside become
 * equal the flow has an infinite slope, which this method, unlike that of {@link CabinModel},
 * passes in very small steps or not at all.
 *
 * <p>Limits of use: for study and simulation, see {@link CabinModel}.
 *
 * @source method of Dormand and Prince, 8(5,3), as Commons Math 3 has it
 */
public final class CabinIntegration {
    private static final double SMALLEST_STEP_S = 1e-10;
    private static final double ABSOLUTE = 1e-9;
    private static final double RELATIVE = 1e-12;

    private static final ModelRange STEP =
            new ModelRange("step between samples", 1e-3, 600.0, "s", "it sets the samples alone");

    private static final ModelRange AREA =
            new ModelRange("area of the openings", 0.0, 1000.0, "m²", "it is an effective area");

    private CabinIntegration() {}

    /**
     * Returns what the cabin does.
     *
     * @param hull volume, temperature and air, inflow and leaks
     * @param areaM2 effective area of all openings besides the leaks [m²], 0 to 1000
     * @param from cabin altitude at the beginning
     * @param flight where the aeroplane is; the pressure outside is that of the altitude
     * @param air the air outside, for its temperature where air comes in
     * @param sampling time between samples, 0.001 to 600 s
     * @return the cabin, from 0 s to the last sample within the flight
     * @throws org.climbwright.quantity.OutsideModelException if a value is out of range
     * @throws IllegalStateException if Commons Math is not there, or its method gives up
     * @accuracy 1e-9 Pa and 1e-12 relative in each step
     * @source mass balance with the flows of {@link OrificeFlow}
     */
    public static CabinHistory byDormandPrince(
            CabinHull hull,
            double areaM2,
            CabinAltitude from,
            AltitudeHistory flight,
            Atmosphere air,
            Duration sampling) {
        AREA.check(areaM2);
        double stepS = STEP.check(AltitudeHistory.seconds(sampling));
        Objects.requireNonNull(air, "air");
        int samples = (int) (flight.lengthS() / stepS) + 1;
        double[] timeS = new double[samples];
        double[] aeroplaneM = new double[samples];
        double[] cabinM = new double[samples];
        double pressurePa = StandardAir.pressureFromAltitude(from.inMetres());
        double massKg = MassBalance.mass(pressurePa, hull.volumeM3(), hull.cabinTemperatureK());
        double[] state = {pressurePa, massKg};
        for (int i = 0; i < samples; i++) {
            timeS[i] = Math.min(i * stepS, flight.lengthS()); // the product may round up
            aeroplaneM[i] = flight.pressureAltitudeM(timeS[i]);
            if (i > 0) {
                integrate(hull, areaM2, flight, air, timeS[i - 1], timeS[i], state);
            }
            cabinM[i] = StandardAir.altitudeFromPressure(state[0]);
        }
        return CabinHistory.ofSi(timeS, aeroplaneM, cabinM);
    }

    private static void integrate(
            CabinHull hull,
            double areaM2,
            AltitudeHistory flight,
            Atmosphere air,
            double fromS,
            double toS,
            double[] state) {
        try {
            Method.integrate(
                    new Balance(hull, areaM2 + hull.leakAreaM2(), flight, air), fromS, toS, state);
        } catch (LinkageError missing) {
            throw new IllegalStateException(
                    "this integration needs org.apache.commons:commons-math3, on the class path or"
                            + " on the module path with --add-modules commons.math3",
                    missing);
        }
    }

    /** The only code that meets Commons Math. */
    private static final class Method {
        private Method() {}

        static void integrate(Balance balance, double fromS, double toS, double[] state) {
            FirstOrderDifferentialEquations equations =
                    new FirstOrderDifferentialEquations() {
                        @Override
                        public int getDimension() {
                            return 2;
                        }

                        @Override
                        public void computeDerivatives(double t, double[] y, double[] yDot) {
                            balance.rates(t, y[0], y[1], yDot);
                        }
                    };
            try {
                new DormandPrince853Integrator(SMALLEST_STEP_S, toS - fromS, ABSOLUTE, RELATIVE)
                        .integrate(equations, fromS, state, toS, state);
            } catch (RuntimeException givenUp) {
                throw new IllegalStateException(
                        "the adaptive integration gave up between "
                                + fromS
                                + " and "
                                + toS
                                + " s, where the pressures inside and outside may be equal",
                        givenUp);
            }
        }
    }

    /** What pressure and mass do at a moment. */
    private record Balance(CabinHull hull, double areaM2, AltitudeHistory flight, Atmosphere air) {
        void rates(double timeS, double pressurePa, double massKg, double[] rates) {
            double level = flight.pressureAltitudeM(Math.min(timeS, flight.lengthS()));
            double outsidePa = StandardAir.pressureFromAltitude(level);
            boolean held = hull.air() == CabinAir.ISOTHERMAL;
            double cabinK =
                    held
                            ? hull.cabinTemperatureK()
                            : MassBalance.temperature(pressurePa, hull.volumeM3(), massKg);
            double inflowK = held ? cabinK : hull.inflowTemperatureK();
            double inflow = hull.inflowKgPerS();
            double heat = inflow * inflowK;
            double net = inflow;
            if (pressurePa >= outsidePa) {
                double out = OrificeFlow.massFlow(areaM2, pressurePa, outsidePa, cabinK);
                net -= out;
                heat -= out * cabinK;
            } else {
                double outsideK = air.temperature(air.range().check(outsidePa));
                double in = OrificeFlow.massFlow(areaM2, outsidePa, pressurePa, outsideK);
                net += in;
                heat += in * (held ? cabinK : outsideK);
            }
            rates[0] = heat * MassBalance.pressurePerMassKelvin(hull.air(), hull.volumeM3());
            rates[1] = net;
        }
    }
}
