package org.climbwright.performance;

import java.util.Objects;
import java.util.Optional;
import org.climbwright.atmosphere.StandardAir;
import org.climbwright.path.Side;
import org.climbwright.quantity.altitude.PressureAltitude;
import org.climbwright.quantity.path.Mass;

/**
 * An aeroplane of some mass in the air of a day, and how its engines are used: what a point of a
 * climb is asked of.
 *
 * <pre>{@code
 * Aeroplane invented = Aeroplane.of(
 *         2,
 *         (liftN, mach, q, use) -> 120.0 * 0.02 * q + 0.045 * liftN * liftN / (120.0 * q),
 *         (mach, pressurePa, temperatureK, use) -> use.operating() * 1.1 * pressurePa,
 *         (thrustN, mach, pressurePa, temperatureK, use) -> 1.6e-5 * thrustN);
 * ClimbAir air = ClimbAir.of(Atmosphere.standard(), Winds.calm(), TrueDirection.ofDegrees(90));
 * ClimbConditions conditions = ClimbConditions.of(invented, air, Mass.ofKilograms(60000));
 * ClimbPoint point = conditions.at(
 *         PressureAltitude.ofFlightLevel(280), ClimbSpeed.constant(CalibratedAirspeed.ofKnots(300)));
 * 1 / (1 + point.accelerationFactor())             // 0.7826…
 * }</pre>
 *
 * <p>Limits of use: what comes of it is as good as the aeroplane's figures; the flight manual and
 * the operator's procedures decide.
 *
 * @param aeroplane the aeroplane
 * @param air the air and the winds along the track
 * @param mass the mass
 * @param use how the engines are used
 * @param reducedThrust how much of the rating's thrust is used
 * @param bankRad bank of a turn to either side [rad], 0 to 80 degrees; along a track the air and
 *     the winds stay those of the track
 */
public record ClimbConditions(
        Aeroplane aeroplane,
        ClimbAir air,
        Mass mass,
        EngineUse use,
        ReducedThrust reducedThrust,
        double bankRad) {
    /**
     * Makes them of parts that can be.
     *
     * @param aeroplane see above
     * @param air see above
     * @param mass see above
     * @param use see above
     * @param reducedThrust see above
     * @param bankRad see above
     * @throws IllegalArgumentException if the mass is 0, or more engines run than there are
     * @throws org.climbwright.quantity.OutsideModelException if the bank is out of range
     */
    public ClimbConditions {
        Objects.requireNonNull(aeroplane, "aeroplane");
        Objects.requireNonNull(air, "air");
        Objects.requireNonNull(mass, "mass");
        Objects.requireNonNull(use, "use");
        Objects.requireNonNull(reducedThrust, "reduced thrust");
        if (!(mass.inKilograms() > 0.0)) {
            throw new IllegalArgumentException(
                    "an aeroplane needs a mass above 0 kg, but it was " + mass.text());
        }
        if (use.operating() > aeroplane.engines()) {
            throw new IllegalArgumentException(
                    "no more engines can run than the "
                            + aeroplane.engines()
                            + " of the aeroplane, but the number was "
                            + use.operating());
        }
        ClimbMotion.liftFactor(bankRad); // asked for its check
    }

    /**
     * Returns a climb with all engines at the rating for it, all of its thrust, and wings level.
     *
     * @param aeroplane the aeroplane
     * @param air the air and the winds along the track
     * @param mass the mass
     * @return the conditions
     * @throws IllegalArgumentException if the mass is 0
     */
    public static ClimbConditions of(Aeroplane aeroplane, ClimbAir air, Mass mass) {
        return new ClimbConditions(
                aeroplane,
                air,
                mass,
                EngineUse.climb(aeroplane.engines()),
                ReducedThrust.none(),
                0.0);
    }

    /**
     * Returns these conditions in other air.
     *
     * @param other the air and the winds
     * @return a copy that differs in it
     */
    public ClimbConditions withAir(ClimbAir other) {
        return new ClimbConditions(aeroplane, other, mass, use, reducedThrust, bankRad);
    }

    /**
     * Returns these conditions with another mass.
     *
     * @param other the mass, above 0
     * @return a copy that differs in it
     * @throws IllegalArgumentException if it is 0
     */
    public ClimbConditions withMass(Mass other) {
        return new ClimbConditions(aeroplane, air, other, use, reducedThrust, bankRad);
    }

    /**
     * Returns these conditions with other use of the engines.
     *
     * @param other how they are used
     * @return a copy that differs in it
     * @throws IllegalArgumentException if more engines run than there are
     */
    public ClimbConditions withUse(EngineUse other) {
        return new ClimbConditions(aeroplane, air, mass, other, reducedThrust, bankRad);
    }

    /**
     * Returns these conditions with other reduction of thrust.
     *
     * @param other how much of the thrust is used
     * @return a copy that differs in it
     */
    public ClimbConditions withReducedThrust(ReducedThrust other) {
        return new ClimbConditions(aeroplane, air, mass, use, other, bankRad);
    }

    /**
     * Returns these conditions in a turn.
     *
     * @param degrees bank to either side [deg], 0 to 80
     * @return a copy that differs in it
     * @throws org.climbwright.quantity.OutsideModelException if the bank is out of range
     */
    public ClimbConditions withBankOfDegrees(double degrees) {
        return new ClimbConditions(
                aeroplane, air, mass, use, reducedThrust, degrees * (Math.PI / 180.0));
    }

    /**
     * Tells whether a speed is one of a climb at a level.
     *
     * @param pressureAltitudeM pressure altitude [m]
     * @param side from which side
     * @param speed the speed held
     * @return true if the air reaches there and the speed is at most Mach 1 in it; {@link #at} then
     *     refuses only where the forces balance at no angle, and {@link #ifBalanced} never
     */
    public boolean covers(double pressureAltitudeM, Side side, ClimbSpeed speed) {
        return air.range().covers(pressureAltitudeM)
                && speed.held()
                        .covers(
                                speed.speed(),
                                StandardAir.pressureFromAltitude(pressureAltitudeM),
                                air.temperature(
                                        air.stretch(pressureAltitudeM, side == Side.ABOVE),
                                        pressureAltitudeM));
    }

    /**
     * Returns the climb at a level from one side, if there is one.
     *
     * @param level pressure altitude, inside the air
     * @param side from which side
     * @param speed the speed held
     * @return the point; empty where the forces balance at no angle
     * @throws org.climbwright.quantity.OutsideModelException if the air does not reach there, or
     *     the speed is more than Mach 1
     */
    public Optional<ClimbPoint> ifBalanced(PressureAltitude level, Side side, ClimbSpeed speed) {
        return Optional.of(ClimbPoint.of(this, level.inMetres(), side, speed))
                .filter(ClimbPoint::isBalanced);
    }

    /**
     * Returns the climb at a level, as it leaves the level upwards.
     *
     * @param level pressure altitude, inside the air
     * @param speed the speed held
     * @return the point
     * @throws org.climbwright.quantity.OutsideModelException if the air does not reach there, or
     *     the speed is more than Mach 1
     * @throws IllegalArgumentException if the forces balance at no angle
     */
    public ClimbPoint at(PressureAltitude level, ClimbSpeed speed) {
        return at(level, Side.ABOVE, speed);
    }

    /**
     * Returns the climb at a level from one side: where air or wind bends, its rate jumps.
     *
     * @param level pressure altitude, inside the air
     * @param side from which side
     * @param speed the speed held
     * @return the point
     * @throws org.climbwright.quantity.OutsideModelException if the air does not reach there, or
     *     the speed is more than Mach 1
     * @throws IllegalArgumentException if the forces balance at no angle
     */
    public ClimbPoint at(PressureAltitude level, Side side, ClimbSpeed speed) {
        return ClimbPoint.of(this, level.inMetres(), side, speed).checked();
    }
}
