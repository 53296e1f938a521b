package org.climbwright.profile;

import org.apache.commons.math3.ode.FirstOrderDifferentialEquations;
import org.apache.commons.math3.ode.nonstiff.DormandPrince853Integrator;

/** An adaptive method of eighth order of Apache Commons Math. */
final class DormandPrinceStepper implements Stepper {
    private static final double SMALLEST_STEP_M = 1e-12;
    private static final double ABSOLUTE = 1e-10;
    private static final double RELATIVE = 1e-11;

    @Override
    public void step(
            Motion motion,
            int stretch,
            double fromM,
            double toM,
            double[] from,
            double[] slopes,
            double[] to) {
        boolean isDistanceKnown = !Double.isNaN(from[DISTANCE] + slopes[DISTANCE]);
        try {
            Method.integrate(motion, stretch, fromM, toM, from, to, isDistanceKnown);
        } catch (LinkageError missing) {
            throw new IllegalStateException(
                    "this integration needs org.apache.commons:commons-math3, on the class path or"
                            + " on the module path with --add-modules commons.math3",
                    missing);
        }
    }

    @Override
    public double airspeedError(double stepM, double[] slopesThere) {
        return 0.0;
    }

    /** The only code that meets Commons Math. */
    private static final class Method {
        private Method() {}

        static void integrate(
                Motion motion,
                int stretch,
                double fromM,
                double toM,
                double[] from,
                double[] to,
                boolean isDistanceKnown) {
            double[] slopes = new double[SIZE];
            FirstOrderDifferentialEquations equations =
                    new FirstOrderDifferentialEquations() {
                        @Override
                        public int getDimension() {
                            return SIZE;
                        }

                        @Override
                        public void computeDerivatives(double h, double[] y, double[] yDot) {
                            motion.at(stretch, h, y[MASS], y[AIRSPEED]);
                            Stepper.slopes(motion, slopes);
                            System.arraycopy(slopes, 0, yDot, 0, SIZE);
                            if (!isDistanceKnown) {
                                yDot[DISTANCE] = 0.0; // its error would be no number
                            }
                        }
                    };
            double[] begin = from.clone();
            if (!isDistanceKnown) {
                begin[DISTANCE] = 0.0;
            }
            try {
                new DormandPrince853Integrator(SMALLEST_STEP_M, toM - fromM, ABSOLUTE, RELATIVE)
                        .integrate(equations, fromM, begin, toM, to);
            } catch (RuntimeException givenUp) {
                throw new IllegalStateException(
                        "the adaptive integration gave up between " + fromM + " and " + toM + " m",
                        givenUp);
            }
            if (!isDistanceKnown) {
                to[DISTANCE] = Double.NaN;
            }
        }
    }
}
