package org.climbwright.cabin;

import java.io.Serializable;
import java.util.Objects;
import org.climbwright.atmosphere.StandardAir;
import org.climbwright.atmosphere.altimetry.Altimetry;
import org.climbwright.quantity.altitude.AltitudeChange;
import org.climbwright.quantity.altitude.AltitudeOnQnh;
import org.climbwright.quantity.altitude.CabinAltitude;
import org.climbwright.quantity.altitude.GeopotentialAltitude;
import org.climbwright.quantity.altitude.PressureAltitude;
import org.climbwright.quantity.pressure.AltimeterSetting;
import org.climbwright.quantity.pressure.DifferentialPressure;

/**
 * What a controller is set to for one flight: its schedule, and the limits within which it keeps.
 *
 * <pre>{@code
 * DifferentialLimits limits =
 *         new DifferentialLimits(
 *                 DifferentialPressure.ofPoundsPerSquareInch(8.0),
 *                 DifferentialPressure.ofPoundsPerSquareInch(8.25),
 *                 DifferentialPressure.ofPoundsPerSquareInch(-0.5));
 * CabinPlan plan =
 *         CabinPlan.of(
 *                 CabinSchedule.isobaric(CabinAltitude.ofFeet(2000)),
 *                 limits,
 *                 CabinRateLimits.ofCommonPractice(),
 *                 PressureAltitude.ofFeet(0),
 *                 PressureAltitude.ofFeet(0),
 *                 PressureAltitude.ofFlightLevel(350));
 * CabinPlan.Target target = plan.target(PressureAltitude.ofFlightLevel(350));
 * target.cabinAltitude().inFeet()  // 6726.58…
 * target.boundBy()                 // SCHEDULED_DIFFERENTIAL
 * }</pre>
 *
 * <p>The pressure wanted in the cabin is the lesser of the schedule's and the outside pressure with
 * the scheduled differential, and not less than the outside pressure with the differential on the
 * ground, which is kept from there on. How fast the cabin gets there is another matter: {@link
 * ExpectedCabin}.
 *
 * <p>Limits of use: for study and simulation. The settings of an aeroplane are those of its flight
 * manual and of the operator's procedures; local regulations and licensed practice decide.
 *
 * @param schedule the cabin altitude wanted at each level
 * @param limits the differential pressures of the hull
 * @param rates how fast the cabin may climb and descend
 * @param departure pressure altitude of the departure field, see {@link #field}
 * @param landing pressure altitude of the landing field
 * @param cruise pressure altitude of the cruise level, not below the departure
 * @param prePressurisation differential on the ground before take-off: 0, or some 0.1 psi (from
 *     memory), which is 188 ft below a field at sea level; 150 to 200 ft below the field in a
 *     message in the archive of the newsgroup sci.aeronautics, 1997.2427
 * @param precedence which limit counts where the rate and the scheduled differential conflict
 * @source that the cabin is isobaric up to the scheduled differential and at that differential from
 *     there: FAA, Aviation Maintenance Technician Handbook, pressurisation modes (seen in a copy)
 */
public record CabinPlan(
        CabinSchedule schedule,
        DifferentialLimits limits,
        CabinRateLimits rates,
        PressureAltitude departure,
        PressureAltitude landing,
        PressureAltitude cruise,
        DifferentialPressure prePressurisation,
        Precedence precedence)
        implements Serializable {

    /** Metres or pascals that count as none. */
    private static final double ROUNDING = 1e-6;

    /** Which limit counts where a climb is too fast for both. */
    public enum Precedence {
        /** The scheduled differential is kept and the cabin climbs faster than the rate limit. */
        DIFFERENTIAL_FIRST,
        /** The rate limit is kept and the differential grows, up to the relief setting. */
        RATE_FIRST
    }

    /**
     * What the controller wants at a level.
     *
     * @param cabinAltitude cabin altitude wanted
     * @param differential the differential pressure that it makes at that level
     * @param boundBy what says so: schedule, scheduled differential or aeroplane
     */
    public record Target(
            CabinAltitude cabinAltitude,
            DifferentialPressure differential,
            CabinState.BoundBy boundBy)
            implements Serializable {}

    /**
     * Makes a plan.
     *
     * @param schedule see above
     * @param limits see above
     * @param rates see above
     * @param departure see above
     * @param landing see above
     * @param cruise see above
     * @param prePressurisation see above
     * @param precedence see above
     * @throws org.climbwright.quantity.OutsideModelException if an altitude is not from -5000 to
     *     80000 m
     * @throws IllegalArgumentException if the cruise level is below the departure, or the
     *     differential on the ground is not from 0 to the scheduled one
     */
    public CabinPlan {
        Objects.requireNonNull(schedule, "schedule");
        Objects.requireNonNull(limits, "limits");
        Objects.requireNonNull(rates, "rates");
        Objects.requireNonNull(precedence, "precedence");
        ScheduleRows.LEVEL.check(departure.inMetres());
        ScheduleRows.LEVEL.check(landing.inMetres());
        ScheduleRows.LEVEL.check(cruise.inMetres());
        if (!(cruise.inMetres() >= departure.inMetres())) {
            throw new IllegalArgumentException(
                    "the cruise level must not be below the departure at "
                            + departure.text()
                            + ", but was "
                            + cruise.text());
        }
        double ground = prePressurisation.inPascals();
        if (!(ground >= 0.0 && ground <= limits.scheduled().inPascals())) {
            throw new IllegalArgumentException(
                    "the differential on the ground must be from 0 to the scheduled "
                            + limits.scheduled().text()
                            + ", but was "
                            + prePressurisation.text());
        }
    }

    /**
     * Returns a plan that puts the differential first and has no pressurisation on the ground.
     *
     * @param schedule the cabin altitude wanted at each level
     * @param limits the differential pressures of the hull
     * @param rates how fast the cabin may climb and descend
     * @param departure pressure altitude of the departure field
     * @param landing pressure altitude of the landing field
     * @param cruise pressure altitude of the cruise level, not below the departure
     * @return the plan
     * @throws org.climbwright.quantity.OutsideModelException if an altitude is out of range
     * @throws IllegalArgumentException if the cruise level is below the departure
     */
    public static CabinPlan of(
            CabinSchedule schedule,
            DifferentialLimits limits,
            CabinRateLimits rates,
            PressureAltitude departure,
            PressureAltitude landing,
            PressureAltitude cruise) {
        return new CabinPlan(
                schedule,
                limits,
                rates,
                departure,
                landing,
                cruise,
                DifferentialPressure.ofPascals(0.0),
                Precedence.DIFFERENTIAL_FIRST);
    }

    /**
     * Returns the plan of an automatic controller, by {@link CabinSchedule#forCruise}.
     *
     * @param limits the differential pressures of the hull
     * @param rates how fast the cabin may climb and descend
     * @param departure pressure altitude of the departure field
     * @param landing pressure altitude of the landing field
     * @param cruise pressure altitude of the cruise level, above the departure
     * @param margin altitude of the aeroplane that the differential keeps in hand, 0 or more
     * @return the plan, differential first and without pressurisation on the ground
     * @throws org.climbwright.quantity.OutsideModelException if an altitude is out of range
     * @throws IllegalArgumentException if the cruise level is not above the departure, or the
     *     margin below 0
     */
    public static CabinPlan forCruise(
            DifferentialLimits limits,
            CabinRateLimits rates,
            PressureAltitude departure,
            PressureAltitude landing,
            PressureAltitude cruise,
            AltitudeChange margin) {
        return of(
                CabinSchedule.forCruise(departure, landing, cruise, limits.scheduled(), margin),
                limits,
                rates,
                departure,
                landing,
                cruise);
    }

    /**
     * Returns the pressure altitude of a field, which is what a cabin is landed at.
     *
     * <p>Not its elevation: some 27 ft for each hectopascal of QNH off 1013.25.
     *
     * @param elevation its elevation; standard air counts in geopotential altitude
     * @param qnh its altimeter setting
     * @return pressure altitude of the field that day
     * @accuracy see {@link Altimetry}
     * @source see {@link Altimetry}
     */
    public static PressureAltitude field(GeopotentialAltitude elevation, AltimeterSetting qnh) {
        return Altimetry.pressureAltitude(AltitudeOnQnh.ofMetres(elevation.inMetres()), qnh);
    }

    /**
     * Returns this plan with a differential on the ground before take-off.
     *
     * @param differential from 0 to the scheduled one
     * @return a copy with it
     * @throws IllegalArgumentException if it is not from 0 to the scheduled one
     */
    public CabinPlan withPrePressurisation(DifferentialPressure differential) {
        return new CabinPlan(
                schedule, limits, rates, departure, landing, cruise, differential, precedence);
    }

    /**
     * Returns this plan with another precedence.
     *
     * @param first which limit counts where the rate and the scheduled differential conflict
     * @return a copy with it
     */
    public CabinPlan withPrecedence(Precedence first) {
        return new CabinPlan(
                schedule, limits, rates, departure, landing, cruise, prePressurisation, first);
    }

    /**
     * Returns the cabin altitude on the ground before take-off.
     *
     * @return the departure field, less what the differential on the ground makes of it
     */
    public CabinAltitude cabinOnGround() {
        return CabinPressure.cabinAltitude(prePressurisation, departure);
    }

    /**
     * Returns the cabin altitude that the controller wants: the schedule's, but not lower than the
     * scheduled differential allows and not higher than the aeroplane.
     *
     * @param pressureAltitudeM pressure altitude of the aeroplane [m], where the schedule reaches
     * @return cabin altitude [m]
     * @throws org.climbwright.quantity.OutsideModelException if the schedule does not reach there
     * @accuracy 1e-6 Pa above the scheduled differential at most; 1e-10 m, beside the schedule's
     *     own
     * @source see the class comment
     */
    public double targetM(double pressureAltitudeM) {
        double scheduled = schedule.cabinAltitudeM(pressureAltitudeM);
        return switch (boundBy(scheduled, pressureAltitudeM)) {
            case AEROPLANE -> withTheGroundDifferential(pressureAltitudeM);
            case SCHEDULED_DIFFERENTIAL ->
                    CabinPressure.cabinAltitude(limits.scheduled().inPascals(), pressureAltitudeM);
            default -> Math.min(scheduled, pressureAltitudeM);
        };
    }

    /**
     * Returns the cabin altitude some seconds later: nearer to the target, no faster than the rate
     * limits, and no lower than the differential allows that the precedence keeps.
     *
     * @param cabinAltitudeM cabin altitude now [m]
     * @param seconds how much later [s], 0 or more
     * @param pressureAltitudeM pressure altitude of the aeroplane then [m], where the schedule
     *     reaches
     * @return cabin altitude then [m]
     * @throws org.climbwright.quantity.OutsideModelException if the schedule does not reach there,
     *     or a cabin altitude is out of range
     * @accuracy see {@link #targetM(double)}
     * @source see the class comment
     */
    public double nextM(double cabinAltitudeM, double seconds, double pressureAltitudeM) {
        double highest = cabinAltitudeM + rates.up().inMetresPerSecond() * seconds;
        double lowest = cabinAltitudeM - rates.down().inMetresPerSecond() * seconds;
        double wanted = targetM(pressureAltitudeM);
        return notBeyondTheHull(Math.max(lowest, Math.min(highest, wanted)), pressureAltitudeM);
    }

    double notBeyondTheHull(double cabinAltitudeM, double pressureAltitudeM) {
        double most = mostPa();
        return CabinPressure.differential(cabinAltitudeM, pressureAltitudeM) > most
                ? CabinPressure.cabinAltitude(most, pressureAltitudeM)
                : cabinAltitudeM;
    }

    /** The differential that nothing passes: a valve opens, whatever the rate. */
    double mostPa() {
        return precedence == Precedence.DIFFERENTIAL_FIRST
                ? limits.scheduled().inPascals()
                : limits.relief().inPascals();
    }

    /**
     * Tells whether the plan has a target at a level.
     *
     * @param pressureAltitudeM pressure altitude of the aeroplane [m]
     * @return true where {@link #targetM(double)} answers
     */
    public boolean covers(double pressureAltitudeM) {
        return StandardAir.coversAltitude(pressureAltitudeM) && schedule.covers(pressureAltitudeM);
    }

    /**
     * Returns what says the target at a level.
     *
     * @param pressureAltitudeM pressure altitude of the aeroplane [m], where the schedule reaches
     * @return schedule, scheduled differential or aeroplane
     */
    CabinState.BoundBy boundBy(double pressureAltitudeM) {
        return boundBy(schedule.cabinAltitudeM(pressureAltitudeM), pressureAltitudeM);
    }

    /**
     * Compared as pressures, so that nothing is asked of air far below the sea; and not to the last
     * bit, so that a schedule of the limit itself does not alternate with it.
     */
    private CabinState.BoundBy boundBy(double scheduledM, double pressureAltitudeM) {
        double differential = CabinPressure.differential(scheduledM, pressureAltitudeM);
        double least = prePressurisation.inPascals();
        if (least > 0.0
                ? differential < least - ROUNDING
                : scheduledM > pressureAltitudeM + ROUNDING) {
            return CabinState.BoundBy.AEROPLANE;
        }
        return differential > limits.scheduled().inPascals() + ROUNDING
                ? CabinState.BoundBy.SCHEDULED_DIFFERENTIAL
                : CabinState.BoundBy.SCHEDULE;
    }

    private double withTheGroundDifferential(double pressureAltitudeM) {
        double least = prePressurisation.inPascals();
        return least > 0.0
                ? CabinPressure.cabinAltitude(least, pressureAltitudeM)
                : pressureAltitudeM;
    }

    /**
     * Returns what the controller wants at a level.
     *
     * @param aeroplane pressure altitude of the aeroplane, where the schedule reaches
     * @return cabin altitude, differential and what says so
     * @throws org.climbwright.quantity.OutsideModelException if the schedule does not reach there
     * @accuracy see {@link #targetM(double)}
     */
    public Target target(PressureAltitude aeroplane) {
        CabinAltitude cabin = CabinAltitude.ofMetres(targetM(aeroplane.inMetres()));
        return new Target(
                cabin, CabinPressure.differential(cabin, aeroplane), boundBy(aeroplane.inMetres()));
    }
}
