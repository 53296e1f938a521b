package org.climbwright.cabin;

import org.climbwright.atmosphere.Atmosphere;
import org.climbwright.atmosphere.wind.Winds;
import org.climbwright.path.ClimbPath;
import org.climbwright.path.Scene;
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

    /** From sea level to FL350 at one rate of climb. */
    static ClimbPath climb(double feetPerMinute) {
        return Scene.climb(Scene.constantRate(feetPerMinute), Atmosphere.standard(), Winds.calm())
                .between(PressureAltitude.ofFeet(0), PressureAltitude.ofFlightLevel(350));
    }

    /** From sea level to FL350, fast below and slow above, with a jump at 10,000 ft. */
    static ClimbPath slowing(double most) {
        return Scene.climb(
                        Scene.rates(
                                Scene.row(0, most),
                                Scene.row(10000, 0.6 * most),
                                Scene.row(10000, 0.8 * most),
                                Scene.row(45000, 0.1 * most)),
                        Atmosphere.standard(),
                        Winds.calm())
                .between(PressureAltitude.ofFeet(0), PressureAltitude.ofFlightLevel(350));
    }
}
