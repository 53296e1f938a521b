package org.climbwright.examples.benchmark;

import org.climbwright.airspeed.AirspeedConversion;
import org.climbwright.airspeed.Airspeeds;
import org.climbwright.atmosphere.Atmosphere;
import org.climbwright.atmosphere.StandardAir;
import org.climbwright.quantity.altitude.PressureAltitude;
import org.climbwright.quantity.speed.CalibratedAirspeed;
import org.climbwright.unit.AviationUnits;
import tech.units.indriya.quantity.Quantities;

/**
 * Programs that use the library once and end, for {@link StartUp} to time in a JVM of their own.
 *
 * <p>With an argument they print how long the first use took, in nanoseconds. A class each, so that
 * none loads what only another one needs.
 */
final class FirstUse {
    private FirstUse() {}

    private static void tell(String[] args, long began) {
        long took = System.nanoTime() - began;
        if (args.length > 0) {
            System.out.println(took);
        }
    }

    private static void use(double number) {
        if (Double.isNaN(number)) {
            throw new IllegalStateException("a first use must answer");
        }
    }

    /** Nothing at all. */
    static final class Nothing {
        private Nothing() {}

        public static void main(String[] args) {
            if (args.length > 0) {
                tell(args, System.nanoTime());
            }
        }
    }

    /** Pressure of an altitude, Mach number of a calibrated airspeed there. */
    static final class SiDoubles {
        private SiDoubles() {}

        public static void main(String[] args) {
            long began = System.nanoTime();
            use(AirspeedConversion.machFromCas(150.0, StandardAir.pressureFromAltitude(9144.0)));
            tell(args, began);
        }
    }

    /** The same with values. */
    static final class Values {
        private Values() {}

        public static void main(String[] args) {
            long began = System.nanoTime();
            use(
                    Airspeeds.from(
                                    CalibratedAirspeed.ofMetresPerSecond(150.0),
                                    Atmosphere.standard().at(PressureAltitude.ofMetres(9144.0)))
                            .mach()
                            .number());
            tell(args, began);
        }
    }

    /** A quantity of javax.measure taken in. */
    static final class OneQuantity {
        private OneQuantity() {}

        public static void main(String[] args) {
            long began = System.nanoTime();
            use(CalibratedAirspeed.of(Quantities.getQuantity(290.0, AviationUnits.KNOT)).inKnots());
            tell(args, began);
        }
    }
}
