package org.climbwright.briefing;

import java.time.Duration;
import java.util.Objects;
import org.climbwright.icing.EngineIcingRule;
import org.climbwright.path.ClimbRates;
import org.climbwright.quantity.altitude.PressureAltitude;
import org.climbwright.quantity.path.Mass;
import org.climbwright.quantity.path.TrueDirection;
import org.climbwright.quantity.temperature.TemperatureDifference;
import org.climbwright.sounding.UnobservedWind;

/**
 * What is to be briefed: the climb that somebody means to fly.
 *
 * @param aerodrome where it begins
 * @param rates the aeroplane's rates of climb
 * @param mass its mass, taken as constant
 * @param speeds the speeds to fly
 * @param level the level to climb to
 * @param track the track, kept all the way
 * @param icingRule when engine anti-ice is due
 * @param antiIceLead how long before icing conditions it should be on
 * @param unobservedWind what to take where no wind was observed
 * @param smallestInversion how much warmer the top of an inversion must be to be told
 */
public record ClimbPlan(
        Aerodrome aerodrome,
        ClimbRates rates,
        Mass mass,
        ScheduledSpeeds speeds,
        PressureAltitude level,
        TrueDirection track,
        EngineIcingRule icingRule,
        Duration antiIceLead,
        UnobservedWind unobservedWind,
        TemperatureDifference smallestInversion) {

    /**
     * Makes it of parts that are all there.
     *
     * @param aerodrome see above
     * @param rates see above
     * @param mass see above
     * @param speeds see above
     * @param level see above
     * @param track see above
     * @param icingRule see above
     * @param antiIceLead see above
     * @param unobservedWind see above
     * @param smallestInversion see above
     * @throws IllegalArgumentException if the lead is negative
     */
    public ClimbPlan {
        Objects.requireNonNull(aerodrome, "aerodrome");
        Objects.requireNonNull(rates, "rates");
        Objects.requireNonNull(mass, "mass");
        Objects.requireNonNull(speeds, "speeds");
        Objects.requireNonNull(level, "level");
        Objects.requireNonNull(track, "track");
        Objects.requireNonNull(icingRule, "icingRule");
        Objects.requireNonNull(antiIceLead, "antiIceLead");
        Objects.requireNonNull(unobservedWind, "unobservedWind");
        Objects.requireNonNull(smallestInversion, "smallestInversion");
        if (antiIceLead.isNegative()) {
            throw new IllegalArgumentException(
                    "the lead of anti-ice must be 0 s or more, but was "
                            + antiIceLead.toSeconds()
                            + " s");
        }
    }

    /**
     * Returns this plan from another aerodrome.
     *
     * @param other the aerodrome
     * @return a copy that differs in it
     */
    public ClimbPlan withAerodrome(Aerodrome other) {
        return new ClimbPlan(
                other,
                rates,
                mass,
                speeds,
                level,
                track,
                icingRule,
                antiIceLead,
                unobservedWind,
                smallestInversion);
    }
}
