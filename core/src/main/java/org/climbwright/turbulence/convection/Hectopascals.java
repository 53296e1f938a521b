package org.climbwright.turbulence.convection;

import java.util.Locale;
import org.climbwright.quantity.pressure.StaticPressure;

/** Pressures as the sentences of a reason tell them: as a sounding prints them, not in full. */
final class Hectopascals {
    private Hectopascals() {}

    static String of(StaticPressure pressure) {
        return of(pressure.inPascals());
    }

    static String of(double pressurePa) {
        return String.format(Locale.ROOT, "%.1f hPa", pressurePa / 100.0);
    }

    static String between(double bottomPa, double topPa) {
        return String.format(Locale.ROOT, "from %.1f to %.1f hPa", bottomPa / 100.0, topPa / 100.0);
    }
}
