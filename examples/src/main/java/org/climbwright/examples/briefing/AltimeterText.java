package org.climbwright.examples.briefing;

import java.util.Locale;
import org.climbwright.briefing.ClimbBriefing;
import org.climbwright.gradient.restriction.Level;
import org.climbwright.quantity.altitude.PressureAltitude;
import org.climbwright.unit.UnitScale;

/** What an altimeter shows, in a few characters. */
final class AltimeterText {
    private static final double FEET_PER_LEVEL = 100.0;
    private static final double WHOLE_FT = 0.5;

    private AltimeterText() {}

    /** What it shows at a pressure altitude of a climb. */
    static String of(PressureAltitude altitude, ClimbBriefing briefing) {
        return of(briefing.reading(altitude));
    }

    /** Feet on QNH, a flight level where it is a whole one, otherwise feet on 1013.25 hPa. */
    static String of(Level level) {
        double feet = level.inFeet();
        if (level.reference() == Level.Reference.QNH) {
            return String.format(Locale.ROOT, "%.0f ft QNH", feet);
        }
        double flightLevel = Math.rint(feet / FEET_PER_LEVEL);
        return Math.abs(feet - flightLevel * FEET_PER_LEVEL) < WHOLE_FT
                ? String.format(Locale.ROOT, "FL%03.0f", flightLevel)
                : String.format(Locale.ROOT, "%.0f ft", feet);
    }

    /** The same on an altimeter in metres, which shows no flight levels. */
    static String of(Level level, UnitSet units) {
        if (units == UnitSet.FEET_KNOTS) {
            return of(level);
        }
        String metres = units.altitude().text(UnitScale.FOOT.toSi(level.inFeet()));
        return level.reference() == Level.Reference.QNH ? metres + " QNH" : metres;
    }
}
