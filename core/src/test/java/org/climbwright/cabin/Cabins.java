package org.climbwright.cabin;

import org.climbwright.quantity.altitude.CabinAltitude;
import org.climbwright.quantity.altitude.PressureAltitude;
import org.climbwright.quantity.pressure.DifferentialPressure;

/** An invented cabin for tests; no figure of it is a reference. */
final class Cabins {
    private Cabins() {}

    static CabinAltitude cabin(double feet) {
        return CabinAltitude.ofFeet(feet);
    }

    static DifferentialPressure psi(double psi) {
        return DifferentialPressure.ofPoundsPerSquareInch(psi);
    }

    static DifferentialLimits limits() {
        return new DifferentialLimits(psi(8.0), psi(8.25), psi(-0.5));
    }

    /** From a field at sea level to another, at FL350 between them. */
    static CabinPlan plan(CabinSchedule schedule) {
        return CabinPlan.of(
                schedule,
                limits(),
                CabinRateLimits.ofCommonPractice(),
                PressureAltitude.ofFeet(0),
                PressureAltitude.ofFeet(0),
                PressureAltitude.ofFlightLevel(350));
    }
}
