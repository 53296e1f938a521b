package org.climbwright.gradient.restriction;

import java.io.Serializable;
import java.util.Objects;
import java.util.Optional;
import org.climbwright.quantity.path.GroundDistance;
import org.jspecify.annotations.Nullable;

/**
 * What is restricted at a named point of a departure: the altitude, the speed or both.
 *
 * <pre>{@code
 * Restriction least = Restriction.of("ALPHA", GroundDistance.ofNauticalMiles(20),
 *         AltitudeRestriction.atOrAbove(Level.of(PressureAltitude.ofFlightLevel(120))));
 * least                          // ALPHA at 20 NM: at or above FL120
 * }</pre>
 *
 * <p>Limits of use: for study and simulation, not for use in flight. The clearance and the
 * published procedure decide; the distance is that along the track flown, from where the climb
 * begins.
 */
public final class Restriction implements Serializable {
    private static final long serialVersionUID = 1L;

    private final String name;
    private final GroundDistance distance;
    private final @Nullable AltitudeRestriction altitude;
    private final @Nullable SpeedRestriction speed;

    private Restriction(
            String name,
            GroundDistance distance,
            @Nullable AltitudeRestriction altitude,
            @Nullable SpeedRestriction speed) {
        this.name = Objects.requireNonNull(name, "name");
        this.distance = Objects.requireNonNull(distance, "distance");
        this.altitude = altitude;
        this.speed = speed;
    }

    /**
     * Returns a restriction of the altitude.
     *
     * @param name name of the point
     * @param distance distance along the track from where the climb begins
     * @param altitude the levels allowed
     * @return the restriction
     */
    public static Restriction of(
            String name, GroundDistance distance, AltitudeRestriction altitude) {
        return new Restriction(name, distance, Objects.requireNonNull(altitude, "altitude"), null);
    }

    /**
     * Returns a restriction of the speed.
     *
     * @param name name of the point
     * @param distance distance along the track from where the climb begins
     * @param speed the speeds allowed
     * @return the restriction
     */
    public static Restriction of(String name, GroundDistance distance, SpeedRestriction speed) {
        return new Restriction(name, distance, null, Objects.requireNonNull(speed, "speed"));
    }

    /**
     * Returns this restriction with one of the speed.
     *
     * @param also the speeds allowed
     * @return a copy with that
     */
    public Restriction withSpeed(SpeedRestriction also) {
        return new Restriction(name, distance, altitude, Objects.requireNonNull(also, "also"));
    }

    /**
     * Returns the name of the point.
     *
     * @return the name as it was given
     */
    public String name() {
        return name;
    }

    /**
     * Returns where the point is.
     *
     * @return distance along the track from where the climb begins
     */
    public GroundDistance distance() {
        return distance;
    }

    /**
     * Returns the levels allowed.
     *
     * @return the restriction of the altitude; empty if there is none
     */
    public Optional<AltitudeRestriction> altitude() {
        return Optional.ofNullable(altitude);
    }

    /**
     * Returns the speeds allowed.
     *
     * @return the restriction of the speed; empty if there is none
     */
    public Optional<SpeedRestriction> speed() {
        return Optional.ofNullable(speed);
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Restriction that
                && name.equals(that.name)
                && distance.equals(that.distance)
                && Objects.equals(altitude, that.altitude)
                && Objects.equals(speed, that.speed);
    }

    @Override
    public int hashCode() {
        return Objects.hash(name, distance, altitude, speed);
    }

    /**
     * Returns the restriction in words.
     *
     * @return a text; may change between versions
     */
    @Override
    public String toString() {
        return where()
                + ": "
                + (altitude == null ? "" : altitude)
                + (altitude == null || speed == null ? "" : ", ")
                + (speed == null ? "" : speed);
    }

    String where() {
        return name + " at " + Figures.nauticalMiles(distance.inMetres());
    }
}
