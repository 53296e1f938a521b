package org.climbwright.briefing;

import java.time.Duration;
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
     * Returns this plan from another aerodrome.
     *
     * @param other the aerodrome
     * @return a copy that differs in it
     */
    public ClimbPlan from(Aerodrome other) {
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
