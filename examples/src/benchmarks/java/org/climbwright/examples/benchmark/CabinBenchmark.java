package org.climbwright.examples.benchmark;

import org.climbwright.atmosphere.StandardAir;
import org.climbwright.cabin.CabinPlan;
import org.climbwright.cabin.dynamics.AltitudeHistory;
import org.climbwright.cabin.dynamics.CabinAir;
import org.climbwright.cabin.dynamics.CabinFailure;
import org.climbwright.cabin.dynamics.CabinHull;
import org.climbwright.cabin.dynamics.CabinModel;
import org.climbwright.examples.figure.InventedFlight;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.OperationsPerInvocation;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;

/**
 * A cabin in a 60 Hz loop: a climb of 25 minutes, which something fails in after 20. The time of a
 * step is the mean over the climb, four fifths of which the controller follows its plan.
 */
public final class CabinBenchmark {
    private CabinBenchmark() {}

    /** The invented climb, frame by frame, so that the cabin's steps alone are timed. */
    @State(Scope.Thread)
    public static class Climb {
        static final int HERTZ = 60;
        static final int STEPS = 25 * 60 * HERTZ;

        private final CabinPlan plan = InventedFlight.plan();
        private final int failureStep = (int) InventedFlight.FAILURE.toSeconds() * HERTZ;
        private final double[] altitudeM = new double[STEPS];
        private final double[] temperatureK = new double[STEPS];

        /** Flies it, in standard air. */
        public Climb() {
            AltitudeHistory climb = InventedFlight.climb();
            for (int i = 0; i < STEPS; i++) {
                double timeS = Math.min(climb.lengthS(), (i + 1.0) / HERTZ);
                altitudeM[i] = climb.pressureAltitudeM(timeS);
                temperatureK[i] = StandardAir.temperatureFromAltitude(altitudeM[i]);
            }
        }

        /** The cabin altitude at the top [m]. */
        double top(CabinAir air) {
            return stepped(CabinModel.onGround(hull(air), plan), 0, STEPS).cabinAltitudeM();
        }

        /** The cabin altitude at the top [m], with a failure on the way. */
        double top(CabinAir air, CabinFailure failure) {
            CabinModel cabin = CabinModel.onGround(hull(air), plan);
            stepped(cabin, 0, failureStep).fail(failure);
            return stepped(cabin, failureStep, STEPS).cabinAltitudeM();
        }

        static CabinHull hull(CabinAir air) {
            return InventedFlight.HULL.withAir(air);
        }

        private CabinModel stepped(CabinModel cabin, int from, int to) {
            for (int i = from; i < to; i++) {
                cabin.step(1.0 / HERTZ, altitudeM[i], temperatureK[i]);
            }
            return cabin;
        }
    }

    /** Nothing fails. */
    @Line(value = "no failure, isothermal", bar = 1000)
    @OperationsPerInvocation(Climb.STEPS)
    public static class NoFailure {
        /** Step by step. */
        @Benchmark
        public double stepped(Climb climb) {
            return climb.top(CabinAir.ISOTHERMAL);
        }
    }

    /** All inflow is lost. */
    @Line(value = "inflow lost, isothermal", bar = 1000)
    @OperationsPerInvocation(Climb.STEPS)
    public static class InflowLostIsothermal {
        /** Step by step. */
        @Benchmark
        public double stepped(Climb climb) {
            return climb.top(CabinAir.ISOTHERMAL, new CabinFailure.InflowLost());
        }
    }

    /** All inflow is lost. */
    @Line(value = "inflow lost, adiabatic", bar = 1000)
    @OperationsPerInvocation(Climb.STEPS)
    public static class InflowLostAdiabatic {
        /** Step by step. */
        @Benchmark
        public double stepped(Climb climb) {
            return climb.top(CabinAir.ADIABATIC, new CabinFailure.InflowLost());
        }
    }

    /** A small hole. */
    @Line(value = "hole of 80 cm², isothermal", bar = 1000)
    @OperationsPerInvocation(Climb.STEPS)
    public static class HoleIsothermal {
        /** Step by step. */
        @Benchmark
        public double stepped(Climb climb) {
            return climb.top(CabinAir.ISOTHERMAL, new CabinFailure.Hole(InventedFlight.HOLE_M2));
        }
    }

    /** A small hole. */
    @Line(value = "hole of 80 cm², adiabatic", bar = 1000)
    @OperationsPerInvocation(Climb.STEPS)
    public static class HoleAdiabatic {
        /** Step by step. */
        @Benchmark
        public double stepped(Climb climb) {
            return climb.top(CabinAir.ADIABATIC, new CabinFailure.Hole(InventedFlight.HOLE_M2));
        }
    }
}
