package org.climbwright.examples.figure;

import org.climbwright.performance.Aeroplane;
import org.climbwright.performance.AeroplaneLimits;
import org.climbwright.performance.BuffetOnset;
import org.climbwright.performance.JetThrust;
import org.climbwright.performance.ParabolicPolar;
import org.climbwright.performance.Rating;
import org.climbwright.performance.ThrustSpecificFuel;
import org.climbwright.quantity.altitude.PressureAltitude;
import org.climbwright.quantity.path.Mass;
import org.climbwright.quantity.speed.CalibratedAirspeed;
import org.climbwright.quantity.speed.Mach;

/**
 * An invented twin-jet of some 60 t, put together of the library's building blocks; no figure of it
 * is that of an aeroplane.
 *
 * <p>Limits of use: for study, not for use in flight. The flight manual, the operator's procedures,
 * local regulations and licensed practice decide.
 */
public final class InventedJet {
    /** Mass in the examples. */
    public static final Mass MASS = Mass.ofKilograms(60000);

    private static final double WING_M2 = 125.0;
    private static final double SWEEP_RAD = 25.0 * (Math.PI / 180.0);
    private static final int ENGINES = 2;

    private InventedJet() {}

    /**
     * Returns the aeroplane.
     *
     * @return drag, thrust, fuel flow and limits
     */
    public static Aeroplane aeroplane() {
        return Aeroplane.of(ENGINES, drag(), thrust(), fuel()).withLimits(limits());
    }

    private static ParabolicPolar drag() {
        return ParabolicPolar.ofSi(WING_M2, 0.018, 0.052)
                .withSweptWingRise(0.91, 0.12, SWEEP_RAD)
                .withEngineOutDrag(ENGINES, 0.7);
    }

    private static JetThrust thrust() {
        return JetThrust.ofSi(96e3, 0.84)
                .withMachLapse(1.0, 0.9)
                .withFlatRating(15.0, 0.01)
                .withRating(Rating.MAXIMUM_CONTINUOUS, 0.93)
                .withRating(Rating.CLIMB, 0.87)
                .withBleed(0.02, 0.03);
    }

    private static ThrustSpecificFuel fuel() {
        return ThrustSpecificFuel.ofSi(1.15e-5, 1.0e-5).withIdle(0.1).withBleed(0.01, 0.015);
    }

    private static AeroplaneLimits limits() {
        BuffetOnset onset = mach -> 1.3 - 1.05 * mach * mach * mach;
        return AeroplaneLimits.none()
                .withCertifiedCeiling(PressureAltitude.ofFlightLevel(410))
                .withMaximumOperatingSpeed(CalibratedAirspeed.ofKnots(335))
                .withMaximumOperatingMach(Mach.of(0.82))
                .withLoadFactor(2.5)
                .withBuffetOnset(WING_M2, onset)
                .withLiftSlope(5.2);
    }
}
