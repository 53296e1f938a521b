package org.climbwright.profile;

import java.util.List;
import java.util.Objects;
import org.climbwright.performance.Aeroplane;
import org.climbwright.performance.ClimbAir;
import org.climbwright.performance.EngineUse;
import org.climbwright.quantity.altitude.PressureAltitude;
import org.climbwright.quantity.path.Mass;

/**
 * What a climb by thrust and drag is made of.
 *
 * <p>Where the wind along the track changes so fast upwards that the airspeed held would take more
 * than three times the rate of a steady wind, or leave less than a third, the airspeed gives: the
 * aeroplane climbs on at the rate of a steady wind, and comes back to its speed above.
 *
 * <p>Limits of use: for study and simulation. Thrust acts along the path, the aeroplane is always
 * in balance across it, and the controls are not in it; the flight manual decides what can be
 * climbed.
 *
 * @param aeroplane drag, thrust, fuel flow and limits
 * @param mass mass where the climb begins
 * @param programme how it is flown
 * @param air the air and the winds along the track
 */
public record AeroplaneClimb(
        Aeroplane aeroplane, Mass mass, ClimbProgramme programme, ClimbAir air) {
    /** Steps of level in which time and distance hold what is promised; a test measures it. */
    static final double STEP_M = 200.0;

    private static final int MOST_ROUNDS = 12;
    private static final double BLEED_TOLERANCE_M = 1e-3;

    /**
     * Makes it of parts that are all there.
     *
     * @param aeroplane see above
     * @param mass see above
     * @param programme see above
     * @param air see above
     */
    public AeroplaneClimb {
        Objects.requireNonNull(aeroplane, "aeroplane");
        Objects.requireNonNull(mass, "mass");
        Objects.requireNonNull(programme, "programme");
        Objects.requireNonNull(air, "air");
        if (!(mass.inKilograms() > 0.0)) {
            throw new IllegalArgumentException(
                    "an aeroplane that climbs must have a mass above 0 kg, but had " + mass.text());
        }
        int operating = programme.engines().map(EngineUse::operating).orElse(1);
        if (operating > aeroplane.engines()) {
            throw new IllegalArgumentException(
                    "no more engines can run than the aeroplane has, but of "
                            + aeroplane.engines()
                            + " there were "
                            + operating);
        }
    }

    /**
     * Returns the path of this climb, by the library's own integration: the classical Runge-Kutta
     * method in steps of level, that end exactly where air, wind or programme jump.
     *
     * <p>A climb that cannot be flown to the level wanted ends below it, and says why.
     *
     * @param bottom where it begins, inside the air: at an aerodrome, its pressure altitude
     * @param level where it should end, above the bottom
     * @return the path
     * @throws org.climbwright.quantity.OutsideModelException if the bottom is outside the air
     * @throws IllegalArgumentException if the level is not above the bottom, or the wind does not
     *     let the track be kept
     * @accuracy of the integration: 0.01 s and 0.1 m
     */
    public ClimbProfile between(PressureAltitude bottom, PressureAltitude level) {
        return between(bottom, level, new RungeKuttaStepper(), STEP_M);
    }

    /**
     * Returns the path of this climb, integrated by an adaptive method of eighth order of Apache
     * Commons Math: a second opinion, which needs that library.
     *
     * @param bottom where it begins, inside the air
     * @param level where it should end, above the bottom
     * @return the path
     * @throws org.climbwright.quantity.OutsideModelException if the bottom is outside the air
     * @throws IllegalArgumentException if the level is not above the bottom
     * @throws IllegalStateException if Commons Math is not there, or its method gives up
     * @accuracy 1e-11 relative in each step
     * @source method of Dormand and Prince, 8(5,3), as Commons Math 3 has it
     */
    public ClimbProfile betweenByDormandPrince(PressureAltitude bottom, PressureAltitude level) {
        return between(bottom, level, new DormandPrinceStepper(), STEP_M);
    }

    ClimbProfile between(
            PressureAltitude bottom, PressureAltitude level, Stepper stepper, double stepM) {
        if (bottom.compareTo(level) >= 0) {
            throw new IllegalArgumentException(
                    "a climb must end above its bottom of "
                            + bottom.text()
                            + ", but its level was "
                            + level.text());
        }
        ClimbProfile flown = fly(BleedPlan.NONE, bottom, level, stepper, stepM);
        if (programme.iceProtection().isEmpty()) {
            return flown;
        }
        // bleed changes the rate, and so from where protection is on: until it no longer does
        BleedPlan bleed = BleedPlan.NONE;
        for (int round = 0; round < MOST_ROUNDS; round++) {
            BleedPlan found = BleedPlan.along(flown, programme.iceProtection());
            if (found.isCloseTo(bleed, BLEED_TOLERANCE_M)) {
                break;
            }
            // what goes to and fro is protected all the way: not to be off where it should be on
            bleed = round < MOST_ROUNDS / 2 ? found : found.and(bleed);
            flown = fly(bleed, bottom, level, stepper, stepM);
        }
        return flown;
    }

    private ClimbProfile fly(
            BleedPlan bleed,
            PressureAltitude bottom,
            PressureAltitude level,
            Stepper stepper,
            double stepM) {
        double bottomM = air.range().check(bottom.inMetres());
        double airTop = air.range().highest();
        double certified =
                aeroplane
                        .limits()
                        .certifiedCeiling()
                        .map(PressureAltitude::inMetres)
                        .orElse(Double.POSITIVE_INFINITY);
        double top = Math.min(level.inMetres(), Math.min(airTop, certified));
        String end =
                top == level.inMetres()
                        ? "level reached"
                        : top == airTop ? "the known air ends" : "the certified ceiling";
        EngineUse use = programme.engines().orElseGet(() -> EngineUse.climb(aeroplane.engines()));
        List<Stage> stages =
                Stages.of(
                        programme, aeroplane.limits(), use, bleed, bottomM, Math.max(top, bottomM));
        Flight flight =
                new Flight(
                        aeroplane,
                        air,
                        stages,
                        stepper,
                        stepM,
                        programme.leastRate().inMetresPerSecond(),
                        programme.lowRate().inMetresPerSecond(),
                        !programme.iceProtection().isEmpty());
        String because =
                top > bottomM
                        ? flight.fly(bottomM, top, mass.inKilograms(), end)
                        : flight.stay(bottomM, mass.inKilograms(), end);
        return new ClimbProfile(this, flight.path(), level, because);
    }
}
