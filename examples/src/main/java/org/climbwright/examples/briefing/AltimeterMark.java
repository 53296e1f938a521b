package org.climbwright.examples.briefing;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.climbwright.atmosphere.altimetry.Altimetry;
import org.climbwright.briefing.ClimbBriefing;
import org.climbwright.quantity.altitude.AltitudeOnQnh;
import org.climbwright.quantity.altitude.PressureAltitude;

/**
 * A round number that the altimeter shows: feet on QNH up to the transition altitude, flight levels
 * above.
 */
record AltimeterMark(PressureAltitude level, String text) {
    private static final double STEP_FT = 1000.0;

    /** Those between both ends of a climb. */
    static List<AltimeterMark> along(ClimbBriefing briefing) {
        List<AltimeterMark> marks = new ArrayList<>();
        double transitionFt = briefing.plan().aerodrome().transitionAltitude().inFeet();
        PressureAltitude transition =
                Altimetry.pressureAltitude(
                        briefing.plan().aerodrome().transitionAltitude(), briefing.qnh());
        PressureAltitude bottom = briefing.path().bottom();
        PressureAltitude top = briefing.path().top();
        for (double feet = -STEP_FT; feet <= transitionFt; feet += STEP_FT) {
            PressureAltitude level =
                    Altimetry.pressureAltitude(AltitudeOnQnh.ofFeet(feet), briefing.qnh());
            if (level.compareTo(bottom) >= 0 && level.compareTo(top) <= 0) {
                marks.add(new AltimeterMark(level, String.format(Locale.ROOT, "%.0f ft", feet)));
            }
        }
        double first = Math.ceil(transition.inFeet() / STEP_FT) * STEP_FT;
        for (double feet = first; feet <= top.inFeet(); feet += STEP_FT) {
            PressureAltitude level = PressureAltitude.ofFeet(feet);
            if (level.compareTo(bottom) >= 0 && level.compareTo(transition) > 0) {
                marks.add(
                        new AltimeterMark(
                                level,
                                String.format(Locale.ROOT, "FL%03.0f", level.inFlightLevels())));
            }
        }
        return List.copyOf(marks);
    }
}
