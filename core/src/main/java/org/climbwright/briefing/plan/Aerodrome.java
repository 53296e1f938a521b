package org.climbwright.briefing.plan;

import java.util.Objects;
import java.util.Optional;
import org.climbwright.quantity.altitude.AltitudeOnQnh;
import org.climbwright.quantity.altitude.GeopotentialAltitude;
import org.climbwright.quantity.pressure.AltimeterSetting;

/**
 * Where a climb begins.
 *
 * @param name what it is called
 * @param elevation its elevation; taken as geopotential, as the heights of soundings are, which at
 *     1000 m is 0.16 m from a geometric one
 * @param transitionAltitude up to which altitude altimeters are on QNH
 * @param qnh its QNH; empty to take the one that the air gives at the elevation
 */
public record Aerodrome(
        String name,
        GeopotentialAltitude elevation,
        AltitudeOnQnh transitionAltitude,
        Optional<AltimeterSetting> qnh) {

    /**
     * Makes it of parts that are all there.
     *
     * @param name see above
     * @param elevation see above
     * @param transitionAltitude see above
     * @param qnh see above
     */
    public Aerodrome {
        Objects.requireNonNull(name, "name");
        Objects.requireNonNull(elevation, "elevation");
        Objects.requireNonNull(transitionAltitude, "transitionAltitude");
        Objects.requireNonNull(qnh, "qnh");
    }

    /**
     * Returns this aerodrome at another elevation.
     *
     * @param other the elevation
     * @return a copy that differs in it
     */
    public Aerodrome withElevation(GeopotentialAltitude other) {
        return new Aerodrome(name, other, transitionAltitude, qnh);
    }
}
