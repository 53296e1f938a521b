package org.climbwright.performance.ceiling;

import java.util.Optional;
import java.util.OptionalDouble;
import org.climbwright.atmosphere.StandardAir;
import org.climbwright.path.Side;
import org.climbwright.performance.AeroplaneLimits;
import org.climbwright.performance.BuffetOnset;
import org.climbwright.performance.ClimbConditions;
import org.climbwright.performance.ClimbSpeed;
import org.climbwright.performance.ClimbSpeeds;
import org.climbwright.performance.ceiling.LevelLimit.Kind;
import org.climbwright.performance.ceiling.LevelLimit.Standing;
import org.climbwright.quantity.altitude.PressureAltitude;

/**
 * Looks for the level of buffet at a load factor.
 *
 * <p>A table of buffet may begin at a Mach number that a climb reaches only on its way: below it
 * nothing can be told, and the search begins where it can. A climb that is too fast for the table
 * at its start may be in buffet already, and has no such way out.
 */
record BuffetSearch(
        ClimbConditions conditions, ClimbSpeeds speeds, PressureAltitude from, double loadFactor) {
    private static final String UNKNOWN =
            "the beginning of buffet is not given for that Mach number";

    LevelLimit limit() {
        AeroplaneLimits limits = conditions.aeroplane().limits();
        Optional<BuffetOnset> onset = limits.buffetOnset();
        if (onset.isEmpty() || limits.wingAreaM2().isEmpty()) {
            return LevelLimit.none(
                    Kind.BUFFET,
                    Standing.NOT_KNOWN,
                    "no beginning of buffet was given for the aeroplane");
        }
        return limit(margin(onset.get(), limits.wingAreaM2().getAsDouble()));
    }

    private LevelSearch.Margin margin(BuffetOnset onset, double areaM2) {
        double massKg = conditions.mass().inKilograms();
        return (altitude, side, speed) -> {
            double mach = mach(altitude, side);
            double pressure = StandardAir.pressureFromAltitude(altitude);
            double coefficient = onset.liftCoefficient(mach);
            return BuffetMargin.loadFactor(coefficient, mach, pressure, areaM2, massKg)
                    - loadFactor;
        };
    }

    private LevelLimit limit(LevelSearch.Margin margin) {
        LevelSearch search = new LevelSearch(conditions, speeds, from);
        String what = "a load factor of " + loadFactor + " to buffet";
        OptionalDouble known = search.firstKnown(margin);
        if (known.isEmpty() || !isSlowerBelow(known.getAsDouble())) {
            return search.first(Kind.BUFFET, margin, what, UNKNOWN);
        }
        PressureAltitude first = PressureAltitude.ofMetres(known.getAsDouble());
        return new LevelSearch(conditions, speeds, first)
                .first(Kind.BUFFET, margin, what, UNKNOWN)
                .adding(
                        "; below "
                                + first.text()
                                + " the Mach number is lower than any for which the beginning of"
                                + " buffet is given");
    }

    private boolean isSlowerBelow(double level) {
        double start = from.inMetres();
        return level > start
                && mach(Math.max(start, level - LevelSearch.CLOSE_M), Side.BELOW)
                        < mach(level, Side.ABOVE);
    }

    /** NaN where the speed is not one of a climb. */
    private double mach(double altitude, Side side) {
        ClimbSpeed speed = speeds.at(altitude, side);
        if (!conditions.covers(altitude, side, speed)) {
            return Double.NaN;
        }
        int stretch = conditions.air().stretch(altitude, side == Side.ABOVE);
        double temperature = conditions.air().temperature(stretch, altitude);
        double pressure = StandardAir.pressureFromAltitude(altitude);
        return speed.held().mach(speed.speed(), pressure, temperature);
    }
}
