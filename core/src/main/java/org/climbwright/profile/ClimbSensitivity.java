package org.climbwright.profile;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.ToDoubleFunction;
import org.climbwright.performance.AeroplaneLimits;
import org.climbwright.performance.ReducedThrust;
import org.climbwright.quantity.altitude.PressureAltitude;
import org.climbwright.quantity.speed.AirspeedDifference;
import org.climbwright.quantity.speed.CalibratedAirspeed;
import org.climbwright.quantity.speed.Mach;

/**
 * What changes a climb by how much: the climb is flown again with one thing changed.
 *
 * <pre>{@code
 * Aeroplane jet = Aeroplane.of(
 *         2,
 *         ParabolicPolar.ofSi(120.0, 0.021, 0.045),
 *         JetThrust.ofSi(110e3, 0.7).withMachLapse(0.6, 0.4),
 *         ThrustSpecificFuel.ofSi(1.0e-5, 0.9e-5));
 * SpeedSchedule speeds = SpeedSchedule.of(CalibratedAirspeed.ofKnots(290), Mach.of(0.74))
 *         .withLimit(CalibratedAirspeed.ofKnots(250), PressureAltitude.ofFeet(10000));
 * AeroplaneClimb climb = new AeroplaneClimb(
 *         jet,
 *         Mass.ofKilograms(58000),
 *         ClimbProgramme.of(speeds, 0.4),
 *         ClimbAir.of(Atmosphere.standard(), Winds.calm(), TrueDirection.ofDegrees(90)));
 * ClimbSensitivity sensitivity = ClimbSensitivity.of(
 *         climb, PressureAltitude.ofFeet(1500), PressureAltitude.ofFlightLevel(330));
 * ClimbDifference heavier = sensitivity.to(ClimbChange.heavierBy(Mass.ofKilograms(1000)));
 * heavier.moreTimeS()                                            // 10.18…, s
 * heavier.moreFuelKg()                                           // 16.88…, kg
 * ClimbDifference best = sensitivity.whatSavesMostFuel(sensitivity.stepsOfThePlan()).get(0);
 * best.change()                                                  // M0.01 slower
 * best.moreFuelKg()                                              // -4.808…, kg
 * }</pre>
 *
 * <p>A difference is that of two climbs as they are flown, not a slope: twice the step is about,
 * not exactly, twice the difference, and where a change makes another limit count it is not.
 *
 * <p>Limits of use: all of it is to the top of the climb. A climb that saves time or fuel to there
 * may end nearer, and cost both on the whole flight, of which nothing is said here. Thrust, speeds
 * and limits are those of the flight manual and the operator; that a change saves is no reason to
 * fly it.
 */
public final class ClimbSensitivity {
    /** Step of the calibrated airspeed among {@link #stepsOfThePlan}: our own choice. */
    public static final AirspeedDifference AIRSPEED_STEP = AirspeedDifference.ofKnots(10);

    /** Step of the Mach number among {@link #stepsOfThePlan}: our own choice. */
    public static final double MACH_STEP = 0.01;

    /** Step of the share while accelerating among {@link #stepsOfThePlan}: our own choice. */
    public static final double SHARE_STEP = 0.1;

    private final ClimbProfile before;
    private final PressureAltitude bottom;
    private final PressureAltitude level;

    private ClimbSensitivity(ClimbProfile before, PressureAltitude bottom, PressureAltitude level) {
        this.before = before;
        this.bottom = bottom;
        this.level = level;
    }

    /**
     * Flies a climb that will be compared with.
     *
     * @param climb the climb
     * @param bottom where it begins, inside the air
     * @param level where it should end, above the bottom
     * @return how it answers to changes
     * @throws org.climbwright.quantity.OutsideModelException if the bottom is outside the air
     * @throws IllegalArgumentException if the level is not above the bottom, or the wind does not
     *     let the track be kept
     */
    public static ClimbSensitivity of(
            AeroplaneClimb climb, PressureAltitude bottom, PressureAltitude level) {
        return new ClimbSensitivity(climb.between(bottom, level), bottom, level);
    }

    /**
     * Returns the climb as it is.
     *
     * @return its path
     */
    public ClimbProfile profile() {
        return before;
    }

    /**
     * Returns what one change does.
     *
     * @param change the change
     * @return the difference
     * @throws IllegalArgumentException if the changed climb cannot be
     * @accuracy that of {@link AeroplaneClimb#between}, for each of the two
     */
    public ClimbDifference to(ClimbChange change) {
        return new ClimbDifference(
                change, before, change.of(before.climb(), bottom).between(bottom, level));
    }

    /**
     * Returns what each of some changes does to the time, what saves most first.
     *
     * @param changes the changes, each a step that the caller finds comparable
     * @return a difference for each; those that end the climb lower stand last, since what they
     *     save is not to the same level
     * @throws IllegalArgumentException if a changed climb cannot be
     */
    public List<ClimbDifference> whatSavesMostTime(List<ClimbChange> changes) {
        return ordered(changes, ClimbDifference::moreTimeS);
    }

    /**
     * Returns what each of some changes does to the fuel, what saves most first.
     *
     * @param changes the changes, each a step that the caller finds comparable
     * @return a difference for each; those that end the climb lower stand last, since what they
     *     save is not to the same level
     * @throws IllegalArgumentException if a changed climb cannot be
     */
    public List<ClimbDifference> whatSavesMostFuel(List<ClimbChange> changes) {
        return ordered(changes, ClimbDifference::moreFuelKg);
    }

    private List<ClimbDifference> ordered(
            List<ClimbChange> changes, ToDoubleFunction<ClimbDifference> cost) {
        return changes.stream()
                .map(this::to)
                .sorted(Comparator.comparing(ClimbDifference::endsLower).thenComparingDouble(cost))
                .toList();
    }

    /**
     * Returns a step up and a step down of each thing that the plan of this climb chooses: speeds,
     * share while accelerating, and all of the thrust where it is reduced.
     *
     * <p>A step that leaves the range of the share, the aeroplane's maximum operating speed or Mach
     * number, or goes below the schedule's minimum speed is left out.
     *
     * @return the changes
     */
    public List<ClimbChange> stepsOfThePlan() {
        ClimbProgramme programme = before.climb().programme();
        List<ClimbChange> steps = new ArrayList<>();
        for (int way = 1; way >= -1; way -= 2) {
            double stepMps = way * AIRSPEED_STEP.inMetresPerSecond();
            if (coversAirspeed(
                    programme.speeds().calibratedAirspeed().inMetresPerSecond() + stepMps)) {
                steps.add(
                        ClimbChange.calibratedAirspeedBy(
                                AirspeedDifference.ofMetresPerSecond(stepMps)));
            }
            if (coversMach(programme.speeds().mach().number() + way * MACH_STEP)) {
                steps.add(ClimbChange.machBy(way * MACH_STEP));
            }
            if (ClimbProgramme.coversAccelerationShare(
                    programme.accelerationShare() + way * SHARE_STEP)) {
                steps.add(ClimbChange.accelerationShareBy(way * SHARE_STEP));
            }
        }
        if (programme.reducedThrust().bendsM().length > 0) {
            steps.add(ClimbChange.thrust(ReducedThrust.none()));
        }
        return List.copyOf(steps);
    }

    private boolean coversAirspeed(double casMps) {
        AeroplaneLimits limits = before.climb().aeroplane().limits();
        double most =
                limits.maximumOperatingSpeed()
                        .map(CalibratedAirspeed::inMetresPerSecond)
                        .orElse(Double.POSITIVE_INFINITY);
        double least =
                before.climb()
                        .programme()
                        .speeds()
                        .minimum()
                        .map(CalibratedAirspeed::inMetresPerSecond)
                        .orElse(1.0);
        return casMps >= least && casMps <= most;
    }

    private boolean coversMach(double mach) {
        double most =
                before.climb()
                        .aeroplane()
                        .limits()
                        .maximumOperatingMach()
                        .map(Mach::number)
                        .orElse(0.99); // the speeds of a climb end at the speed of sound
        return mach > MACH_STEP && mach <= most;
    }
}
