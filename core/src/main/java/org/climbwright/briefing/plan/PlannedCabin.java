package org.climbwright.briefing.plan;

import java.util.Objects;
import java.util.Optional;
import org.climbwright.cabin.CabinPlan;
import org.climbwright.cabin.CabinRateLimits;
import org.climbwright.cabin.CabinSchedule;
import org.climbwright.cabin.DifferentialLimits;
import org.climbwright.quantity.altitude.AltitudeChange;
import org.climbwright.quantity.altitude.GeopotentialAltitude;
import org.climbwright.quantity.altitude.PressureAltitude;
import org.climbwright.quantity.pressure.AltimeterSetting;
import org.climbwright.quantity.pressure.DifferentialPressure;

/**
 * How the cabin is to be pressurised on a climb that is planned; the altitudes of the fields follow
 * from the QNH of the day.
 *
 * <p>Limits of use: settings of an aeroplane are those of its flight manual and of the operator's
 * procedures.
 *
 * @param schedule the schedule set by hand; empty for the automatic one, see {@link
 *     CabinPlan#forCruise}
 * @param limits the differential pressures of the hull
 * @param rates how fast the cabin may climb and descend
 * @param landingElevation elevation of the field to land at
 * @param landingQnh the QNH there
 * @param margin altitude of the aeroplane that the automatic schedule keeps in hand
 * @param prePressurisation differential on the ground before take-off
 * @param precedence which limit counts where rate and differential conflict
 */
public record PlannedCabin(
        Optional<CabinSchedule> schedule,
        DifferentialLimits limits,
        CabinRateLimits rates,
        GeopotentialAltitude landingElevation,
        AltimeterSetting landingQnh,
        AltitudeChange margin,
        DifferentialPressure prePressurisation,
        CabinPlan.Precedence precedence) {
    /**
     * Makes it of parts that are all there; they are checked where they meet the climb.
     *
     * @param schedule see above
     * @param limits see above
     * @param rates see above
     * @param landingElevation see above
     * @param landingQnh see above
     * @param margin see above
     * @param prePressurisation see above
     * @param precedence see above
     */
    public PlannedCabin {
        Objects.requireNonNull(schedule, "schedule");
        Objects.requireNonNull(limits, "limits");
        Objects.requireNonNull(rates, "rates");
        Objects.requireNonNull(landingElevation, "landingElevation");
        Objects.requireNonNull(landingQnh, "landingQnh");
        Objects.requireNonNull(margin, "margin");
        Objects.requireNonNull(prePressurisation, "prePressurisation");
        Objects.requireNonNull(precedence, "precedence");
    }

    /**
     * Returns the plan of the cabin for a climb.
     *
     * @param departure pressure altitude of the departure field
     * @param cruise the level to climb to
     * @return the plan
     * @throws IllegalArgumentException if they make no plan, such as a cruise below the departure
     */
    public CabinPlan between(PressureAltitude departure, PressureAltitude cruise) {
        PressureAltitude landing = CabinPlan.field(landingElevation, landingQnh);
        CabinPlan plan =
                schedule.isPresent()
                        ? CabinPlan.of(schedule.get(), limits, rates, departure, landing, cruise)
                        : CabinPlan.forCruise(limits, rates, departure, landing, cruise, margin);
        return plan.withPrePressurisation(prePressurisation).withPrecedence(precedence);
    }
}
