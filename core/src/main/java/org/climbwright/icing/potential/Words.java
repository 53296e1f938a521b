package org.climbwright.icing.potential;

import java.util.Locale;
import org.climbwright.atmosphere.AirState;

/** How figures of the air are written in reasons. */
final class Words {
    private Words() {}

    /** A temperature to a tenth, such as "-13.3 °C". */
    static String celsius(AirState air) {
        double tenths = Math.rint(air.staticAirTemperature().inCelsius() * 10.0);
        return String.format(Locale.ROOT, "%.1f °C", tenths / 10.0 + 0.0); // never -0.0
    }

    /** A pressure altitude in whole feet, such as "7,571 ft". */
    static String feet(AirState air) {
        double feet = Math.rint(air.pressureAltitude().inFeet());
        return String.format(Locale.ROOT, "%,.0f ft", feet + 0.0);
    }
}
