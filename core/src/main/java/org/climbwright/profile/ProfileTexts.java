package org.climbwright.profile;

import java.util.Locale;
import org.climbwright.performance.Bleed;
import org.climbwright.quantity.speed.CalibratedAirspeed;
import org.climbwright.quantity.speed.Mach;
import org.climbwright.quantity.speed.PressureAltitudeRate;
import org.jspecify.annotations.Nullable;

/** What happens on a climb, in a few words. */
final class ProfileTexts {
    private ProfileTexts() {}

    static String held(HeldLevel held) {
        return String.format(Locale.ROOT, "%.0f ft is held", held.level().inFeet());
    }

    static String speed(Leg leg) {
        return leg.isMach()
                ? Mach.of(leg.held()).text()
                : CalibratedAirspeed.ofMetresPerSecond(leg.held()).text();
    }

    static String crossover(Leg below, Leg above) {
        return speed(below) + " to " + speed(above);
    }

    static String changeOfSpeed(Leg change, boolean isFaster) {
        return (isFaster ? "accelerate to " : "slow down to ") + speed(change);
    }

    static String speedReached(Leg leg) {
        return speed(leg) + " reached";
    }

    static String heldRate(Leg leg) {
        return PressureAltitudeRate.ofMetresPerSecond(leg.rateMps()).text()
                + " is held, "
                + (leg.law() == Leg.Law.RATE_BY_THRUST ? "thrust" : "speed")
                + " gives";
    }

    static boolean isSameRate(@Nullable Leg one, @Nullable Leg other) {
        if (one == null || other == null) {
            return one == null && other == null;
        }
        return one.law() == other.law() && one.rateMps() == other.rateMps();
    }

    static String lowRate(double lowMps) {
        return "the rate falls below " + PressureAltitudeRate.ofMetresPerSecond(lowMps).text();
    }

    static String bleed(Bleed bleed) {
        return switch (bleed) {
            case NONE -> "bleed for anti-ice ends";
            case ENGINE -> "bleed for engine anti-ice";
            case AIRFRAME -> "bleed for airframe anti-ice";
            case ENGINE_AND_AIRFRAME -> "bleed for engine and airframe anti-ice";
        };
    }
}
