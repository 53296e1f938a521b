package org.climbwright.briefing;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.climbwright.gradient.restriction.Level;
import org.climbwright.path.ClimbState;
import org.climbwright.quantity.altitude.AltitudeOnQnh;
import org.climbwright.quantity.altitude.PressureAltitude;

/** Figures of a point of a climb, in a few words. */
final class StateFigures {
    private StateFigures() {}

    static String speed(ClimbState state) {
        return String.format(
                Locale.ROOT,
                "%.0f kn, M%.3f, %.0f ft/min",
                state.calibratedAirspeed().inKnots(),
                state.mach().number(),
                state.pressureAltitudeRate().inFeetPerMinute());
    }

    static String rate(ClimbState state) {
        return String.format(
                Locale.ROOT, "%.0f ft/min", state.pressureAltitudeRate().inFeetPerMinute());
    }

    static String temperatures(ClimbState state) {
        return String.format(
                Locale.ROOT,
                "static %.1f °C, total %.1f °C",
                tenths(state.air().staticAirTemperature().inCelsius()),
                tenths(state.totalAirTemperature().inCelsius()));
    }

    /** A reading of the altimeter in whole feet. */
    static String level(Level reading) {
        PressureAltitude whole = PressureAltitude.ofFeet(Math.rint(reading.inFeet()));
        return (reading.reference() == Level.Reference.QNH
                        ? Level.of(AltitudeOnQnh.ofFeet(whole.inFeet()))
                        : Level.of(whole))
                .toString();
    }

    /** What would print as -0.0 is 0.0. */
    private static double tenths(double value) {
        return Math.rint(value * 10.0) / 10.0 + 0.0;
    }

    /** What a check reads: the cabin where there is one, and the fuel where it is known. */
    static String check(ClimbBriefing briefing, ClimbState state) {
        List<String> parts = new ArrayList<>();
        briefing.cabinAt(state).ifPresent(cabin -> parts.add(BriefingEvents.words(cabin)));
        briefing.fuelTo(state)
                .ifPresent(
                        fuel ->
                                parts.add(
                                        String.format(
                                                Locale.ROOT, "fuel %.0f kg", fuel.inKilograms())));
        return parts.isEmpty() ? speed(state) : String.join(", ", parts);
    }
}
