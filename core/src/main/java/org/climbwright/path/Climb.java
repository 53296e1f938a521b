package org.climbwright.path;

import java.util.Objects;
import org.climbwright.atmosphere.Atmosphere;
import org.climbwright.atmosphere.wind.Winds;
import org.climbwright.quantity.altitude.PressureAltitude;
import org.climbwright.quantity.path.Mass;
import org.climbwright.quantity.path.TrueDirection;

/**
 * What a climb by a table of rates is made of.
 *
 * <pre>{@code
 * ClimbPath path = new Climb(rates, mass, schedule, air, winds, track)
 *         .between(PressureAltitude.ofFeet(1000), PressureAltitude.ofFlightLevel(350));
 * path.at(path.top()).time()
 * }</pre>
 *
 * @param rates the rates of climb
 * @param mass the mass, taken as constant
 * @param schedule the speeds
 * @param air the air climbed through
 * @param winds the winds
 * @param track the track, kept all the way
 */
public record Climb(
        ClimbRates rates,
        Mass mass,
        SpeedSchedule schedule,
        Atmosphere air,
        Winds winds,
        TrueDirection track) {

    /**
     * Makes it of parts that are all there.
     *
     * @param rates see above
     * @param mass see above
     * @param schedule see above
     * @param air see above
     * @param winds see above
     * @param track see above
     */
    public Climb {
        Objects.requireNonNull(rates, "rates");
        Objects.requireNonNull(mass, "mass");
        Objects.requireNonNull(schedule, "schedule");
        Objects.requireNonNull(air, "air");
        Objects.requireNonNull(winds, "winds");
        Objects.requireNonNull(track, "track");
    }

    /**
     * Returns the path of this climb.
     *
     * <p>It ends below the level wanted where the air or the table of rates ends, and says so.
     *
     * @param bottom where it begins, inside air and table
     * @param level where it should end, above the bottom
     * @return the path
     * @throws org.climbwright.quantity.OutsideModelException if the bottom is outside the air or
     *     the table, or the mass outside the table
     * @throws IllegalArgumentException if the level is not above the bottom, or the wind does not
     *     let the track be kept
     * @accuracy of the integration: 1e-9 of time and distance, by five-point Gauss quadrature
     *     between all bends and at most 200 m
     */
    public ClimbPath between(PressureAltitude bottom, PressureAltitude level) {
        return RateTablePath.of(this, bottom, level);
    }
}
