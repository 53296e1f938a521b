package org.climbwright.atmosphere.wind;

import java.util.Optional;
import org.climbwright.atmosphere.StandardAir;
import org.climbwright.quantity.altitude.PressureAltitude;
import org.climbwright.quantity.path.TrueDirection;
import org.climbwright.quantity.speed.AlongTrackWind;

/**
 * The winds of some day, by pressure. A plug of its own: wind is not air, it has levels of its own
 * and is often unknown where the air is known.
 *
 * <p>An implementation is immutable and answers NaN for what it does not know, both components at
 * once; it never makes a wind up.
 */
public interface Winds {
    /**
     * Returns the speed of the air towards the east at a pressure.
     *
     * @param pressurePa static pressure [Pa]
     * @return the component [m/s]; NaN when not known
     */
    double eastward(double pressurePa);

    /**
     * Returns the speed of the air towards the north at a pressure.
     *
     * @param pressurePa static pressure [Pa]
     * @return the component [m/s]; NaN when not known
     */
    double northward(double pressurePa);

    /**
     * Tells whether the wind is known at a pressure.
     *
     * @param pressurePa static pressure [Pa]
     * @return true where both components are numbers
     */
    boolean covers(double pressurePa);

    /**
     * Returns where the wind changes its shear, or becomes known or unknown.
     *
     * @return pressures [Pa], in any order; empty when the wind is smooth
     */
    default double[] bendsPa() {
        return new double[0];
    }

    /**
     * Returns the wind at a pressure altitude.
     *
     * @param altitude pressure altitude
     * @return the wind; empty when not known
     * @throws org.climbwright.quantity.OutsideModelException if the standard atmosphere does not
     *     reach there
     */
    default Optional<Wind> at(PressureAltitude altitude) {
        double pressurePa = StandardAir.pressureFromAltitude(altitude.inMetres());
        return covers(pressurePa)
                ? Optional.of(Wind.ofComponents(eastward(pressurePa), northward(pressurePa)))
                : Optional.empty();
    }

    /**
     * Returns the part of the wind at a pressure altitude that blows along a track.
     *
     * @param altitude pressure altitude
     * @param track where the aeroplane goes, from true north
     * @return positive from behind, negative on the nose; empty when the wind is not known
     * @throws org.climbwright.quantity.OutsideModelException if the standard atmosphere does not
     *     reach there
     */
    default Optional<AlongTrackWind> alongTrack(PressureAltitude altitude, TrueDirection track) {
        return at(altitude).map(wind -> wind.alongTrack(track));
    }

    /**
     * Returns a wind that is the same everywhere.
     *
     * @param wind the wind
     * @return winds that know it at every pressure
     */
    static Winds uniform(Wind wind) {
        return new UniformWinds(wind);
    }

    /**
     * Returns still air.
     *
     * @return winds that are calm at every pressure
     */
    static Winds calm() {
        return uniform(Wind.ofComponents(0.0, 0.0));
    }
}
