package org.climbwright.path;

import java.io.Serializable;
import java.util.Arrays;
import org.climbwright.airspeed.AirspeedConversion;
import org.climbwright.airspeed.Crossover;
import org.climbwright.atmosphere.IcaoConstants;

/** Speeds one above the other: in each segment one number is held, airspeed or Mach. */
final class SpeedSegments implements Serializable {
    private static final long serialVersionUID = 1L;

    private final double[] edgesM;
    private final boolean[] isMach;
    private final double[] speed;

    private SpeedSegments(double[] edgesM, boolean[] isMach, double[] speed) {
        this.edgesM = edgesM;
        this.isMach = isMach;
        this.speed = speed;
    }

    /** Where one segment ends and the next begins, rising. */
    double[] edgesM() {
        return edgesM.clone();
    }

    int at(double altitudeM, Side side) {
        int segment = 0;
        while (segment < edgesM.length
                && (altitudeM > edgesM[segment]
                        || (altitudeM == edgesM[segment] && side == Side.ABOVE))) {
            segment++;
        }
        return segment;
    }

    boolean isMach(int segment) {
        return isMach[segment];
    }

    /** The speed held: calibrated airspeed [m/s] or Mach number. */
    double speed(int segment) {
        return speed[segment];
    }

    /** Puts segments together from below, joining what is the same. */
    static final class Draft {
        private double[] edgesM = new double[0];
        private boolean[] isMach = new boolean[0];
        private double[] speed = new double[0];

        /**
         * Adds the levels from where the last ended to another: the slower of airspeed and Mach
         * number, but no less than the minimum.
         */
        void add(double fromM, double toM, double casMps, double mach, double minimumCasMps) {
            double machFrom = Math.max(fromM, crossoverM(casMps, mach));
            double minimumFrom =
                    minimumCasMps > 0.0
                            ? Math.max(machFrom, crossoverM(minimumCasMps, mach))
                            : Double.POSITIVE_INFINITY;
            segment(fromM, Math.min(toM, machFrom), false, casMps);
            segment(machFrom, Math.min(toM, minimumFrom), true, mach);
            segment(minimumFrom, toM, false, minimumCasMps);
        }

        private void segment(double fromM, double toM, boolean ofMach, double held) {
            if (!(fromM < toM)) {
                return;
            }
            int last = speed.length - 1;
            if (last >= 0 && isMach[last] == ofMach && speed[last] == held) {
                return;
            }
            if (last >= 0) {
                edgesM = Arrays.copyOf(edgesM, last + 1);
                edgesM[last] = fromM;
            }
            isMach = Arrays.copyOf(isMach, last + 2);
            isMach[last + 1] = ofMach;
            speed = Arrays.copyOf(speed, last + 2);
            speed[last + 1] = held;
        }

        SpeedSegments segments() {
            return new SpeedSegments(edgesM, isMach, speed);
        }
    }

    /** The crossover [m]; infinite, down or up, when it lies beyond the standard atmosphere. */
    private static double crossoverM(double casMps, double mach) {
        if (Crossover.hasAltitude(casMps, mach)) {
            return Crossover.altitude(casMps, mach);
        }
        return AirspeedConversion.crossoverPressure(casMps, mach)
                        > IcaoConstants.SEA_LEVEL_PRESSURE_PA
                ? Double.NEGATIVE_INFINITY
                : Double.POSITIVE_INFINITY;
    }
}
