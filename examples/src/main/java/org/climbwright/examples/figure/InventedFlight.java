package org.climbwright.examples.figure;

import java.time.Duration;
import org.climbwright.atmosphere.Atmosphere;
import org.climbwright.cabin.CabinPlan;
import org.climbwright.cabin.CabinRateLimits;
import org.climbwright.cabin.DifferentialLimits;
import org.climbwright.cabin.dynamics.AltitudeHistory;
import org.climbwright.cabin.dynamics.CabinAir;
import org.climbwright.cabin.dynamics.CabinFailureStudy;
import org.climbwright.cabin.dynamics.CabinHull;
import org.climbwright.cabin.dynamics.EmergencyDescent;
import org.climbwright.quantity.altitude.AltitudeChange;
import org.climbwright.quantity.altitude.CabinAltitude;
import org.climbwright.quantity.altitude.PressureAltitude;
import org.climbwright.quantity.pressure.DifferentialPressure;
import org.climbwright.quantity.speed.PressureAltitudeRate;

/**
 * An invented hull that climbs for 25 minutes, with a failure at 20; no figure of it is that of an
 * aeroplane.
 *
 * <p>Limits of use: for study, not for use in flight. The flight manual, the operator's procedures,
 * local regulations and licensed practice decide.
 */
public final class InventedFlight {
    /** When something fails, since take-off. */
    public static final Duration FAILURE = Duration.ofMinutes(20);

    /** A small hole: effective area [m²]. */
    public static final double HOLE_M2 = 0.008;

    /** The hull. */
    public static final CabinHull HULL =
            new CabinHull(140.0, 297.15, 0.9, 290.0, 6e-4, 0.03, CabinAir.ISOTHERMAL);

    /** A descent one minute after the cabin has passed 10,000 ft. */
    public static final EmergencyDescent DESCENT =
            new EmergencyDescent(
                    CabinAltitude.ofFeet(10000),
                    Duration.ofMinutes(1),
                    PressureAltitudeRate.ofFeetPerMinute(5000),
                    PressureAltitude.ofFlightLevel(100));

    private static final PressureAltitude FIELD = PressureAltitude.ofFeet(0);
    private static final PressureAltitude CRUISE = PressureAltitude.ofFlightLevel(350);

    private InventedFlight() {}

    /**
     * Returns what the cabin's controller is set to.
     *
     * @return schedule and limits, from sea level to sea level
     */
    public static CabinPlan plan() {
        DifferentialLimits limits = new DifferentialLimits(psi(8.0), psi(8.5), psi(-0.5));
        return CabinPlan.forCruise(
                limits,
                CabinRateLimits.ofCommonPractice(),
                FIELD,
                FIELD,
                CRUISE,
                AltitudeChange.ofFeet(500));
    }

    /**
     * Returns the way of the aeroplane.
     *
     * @return 25 minutes from sea level to FL350, slower the higher it is
     */
    public static AltitudeHistory climb() {
        return AltitudeHistory.at(FIELD)
                .to(PressureAltitude.ofFlightLevel(100), rate(2000))
                .to(PressureAltitude.ofFlightLevel(250), rate(1500))
                .to(CRUISE, rate(1000));
    }

    /** The climb and a quarter of an hour of level flight, in standard air, with no failure yet. */
    static CabinFailureStudy study() {
        AltitudeHistory way = climb().hold(Duration.ofMinutes(15));
        return new CabinFailureStudy(HULL, plan(), way, Atmosphere.standard());
    }

    private static DifferentialPressure psi(double psi) {
        return DifferentialPressure.ofPoundsPerSquareInch(psi);
    }

    private static PressureAltitudeRate rate(double feetPerMinute) {
        return PressureAltitudeRate.ofFeetPerMinute(feetPerMinute);
    }
}
