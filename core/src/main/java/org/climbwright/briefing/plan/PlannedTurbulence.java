package org.climbwright.briefing.plan;

import java.time.Duration;
import java.util.Objects;
import java.util.Optional;
import org.climbwright.path.SpeedSchedule;
import org.climbwright.turbulence.convection.SeatBeltAdvice;

/**
 * From which figures on somebody wants seat belts fastened, and the speeds of the aeroplane in
 * rough air.
 *
 * <p>Limits of use: thresholds and speeds are the operator's and the flight manual's; there are
 * none of ours.
 *
 * @param leastEnergyJPerKg energy of a lifted parcel, CAPE, from which on it counts [J/kg], 0 to
 *     20,000
 * @param leastShearKnotsPer1000Ft vertical wind shear over 1,000 ft from which on it counts
 *     [kn/1000 ft], 0 to 1000
 * @param lead how long before, 0 or more
 * @param roughAir the speeds in rough air, as calibrated airspeed and Mach; empty where nobody said
 */
public record PlannedTurbulence(
        double leastEnergyJPerKg,
        double leastShearKnotsPer1000Ft,
        Duration lead,
        Optional<SpeedSchedule> roughAir) {
    /**
     * Makes it of parts that are all there.
     *
     * @param leastEnergyJPerKg see above
     * @param leastShearKnotsPer1000Ft see above
     * @param lead see above
     * @param roughAir see above
     * @throws org.climbwright.quantity.OutsideModelException if a threshold is out of range
     * @throws IllegalArgumentException if the lead is negative
     */
    public PlannedTurbulence {
        SeatBeltAdvice.energyThresholds().check(leastEnergyJPerKg);
        SeatBeltAdvice.shearThresholds().check(leastShearKnotsPer1000Ft);
        if (lead.isNegative()) {
            throw new IllegalArgumentException(
                    "the lead of the seat-belt sign must be 0 s or more, but was "
                            + lead.toMillis() / 1e3
                            + " s");
        }
        Objects.requireNonNull(roughAir, "roughAir");
    }
}
