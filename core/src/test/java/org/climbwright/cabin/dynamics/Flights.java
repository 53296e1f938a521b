package org.climbwright.cabin.dynamics;

import java.time.Duration;
import org.climbwright.cabin.CabinPlan;
import org.climbwright.cabin.CabinRateLimits;
import org.climbwright.cabin.DifferentialLimits;
import org.climbwright.quantity.altitude.AltitudeChange;
import org.climbwright.quantity.altitude.PressureAltitude;
import org.climbwright.quantity.pressure.DifferentialPressure;
import org.climbwright.quantity.speed.PressureAltitudeRate;

/** An invented hull on an invented flight; no figure of it is a reference. */
final class Flights {
    private Flights() {}

    static CabinHull hull(CabinAir air) {
        return new CabinHull(140.0, 297.15, 0.9, 290.0, 6e-4, 0.03, air);
    }

    static DifferentialPressure psi(double psi) {
        return DifferentialPressure.ofPoundsPerSquareInch(psi);
    }

    static CabinPlan plan() {
        return CabinPlan.forCruise(
                        new DifferentialLimits(psi(8.0), psi(8.5), psi(-0.5)),
                        CabinRateLimits.ofCommonPractice(),
                        PressureAltitude.ofFeet(1000),
                        PressureAltitude.ofFeet(500),
                        PressureAltitude.ofFlightLevel(350),
                        AltitudeChange.ofFeet(500))
                .withPrePressurisation(psi(0.1));
    }

    static PressureAltitudeRate rate(double feetPerMinute) {
        return PressureAltitudeRate.ofFeetPerMinute(feetPerMinute);
    }

    /** Some 22 minutes to FL350, and half an hour there. */
    static AltitudeHistory climbAndCruise() {
        return AltitudeHistory.at(PressureAltitude.ofFeet(1000))
                .to(PressureAltitude.ofFlightLevel(100), rate(2500))
                .to(PressureAltitude.ofFlightLevel(250), rate(1800))
                .to(PressureAltitude.ofFlightLevel(350), rate(1000))
                .hold(Duration.ofMinutes(30));
    }
}
