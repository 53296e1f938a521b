package org.climbwright.profile;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import org.climbwright.atmosphere.AirState;
import org.climbwright.atmosphere.altimetry.Altimetry;
import org.climbwright.quantity.altitude.AltitudeOnQnh;
import org.climbwright.quantity.altitude.PressureAltitude;
import org.climbwright.quantity.pressure.AltimeterSetting;
import org.climbwright.quantity.temperature.TemperatureDifference;
import org.climbwright.sounding.Inversion;
import org.climbwright.sounding.IsothermCrossing;
import org.climbwright.sounding.Sounding;

/**
 * Something at a level that a climb passes, such as 0 °C, a tropopause or a transition altitude: to
 * be told among the events of the climb with its time, distance and fuel.
 *
 * @param level where it is
 * @param kind what it is
 * @param text the same in a few words
 */
public record LevelMark(PressureAltitude level, Kind kind, String text) {

    /** The kinds of mark. */
    public enum Kind {
        /** From QNH to standard setting. */
        TRANSITION_ALTITUDE,
        /** The air passes 0 °C. */
        ZERO_CELSIUS,
        /** It begins to get warmer upwards. */
        INVERSION_BASE,
        /** It begins to get colder upwards again. */
        INVERSION_TOP,
        /** The stratosphere begins. */
        TROPOPAUSE,
        /** Anything else. */
        OTHER
    }

    /**
     * Makes it of parts that are all there.
     *
     * @param level see above
     * @param kind see above
     * @param text see above
     */
    public LevelMark {
        Objects.requireNonNull(level, "level");
        Objects.requireNonNull(kind, "kind");
        Objects.requireNonNull(text, "text");
    }

    /**
     * Returns a mark of one's own.
     *
     * @param level where it is
     * @param text what it is, in a few words
     * @return the mark
     */
    public static LevelMark of(PressureAltitude level, String text) {
        return new LevelMark(level, Kind.OTHER, text);
    }

    /**
     * Returns the level at which altimeters go from QNH to the standard setting.
     *
     * @param transitionAltitude the altitude, on QNH
     * @param qnh altimeter setting of the day
     * @return the mark, with what the altimeter jumps by
     */
    public static LevelMark ofTransitionAltitude(
            AltitudeOnQnh transitionAltitude, AltimeterSetting qnh) {
        PressureAltitude standard = Altimetry.pressureAltitude(transitionAltitude, qnh);
        return new LevelMark(
                standard,
                Kind.TRANSITION_ALTITUDE,
                String.format(
                        Locale.ROOT,
                        "transition altitude: altimeter from %.0f to %.0f ft (%+.0f)",
                        transitionAltitude.inFeet(),
                        standard.inFeet(),
                        Math.rint(standard.inFeet() - transitionAltitude.inFeet()) + 0.0));
    }

    /**
     * Returns what a sounding has to tell of its levels: where it passes 0 °C, its inversions, its
     * tropopause.
     *
     * @param sounding the sounding
     * @param smallestInversion how much warmer the top of an inversion must be to be told
     * @return the marks, by what they are
     */
    public static List<LevelMark> ofSounding(
            Sounding sounding, TemperatureDifference smallestInversion) {
        List<LevelMark> marks = new ArrayList<>();
        for (IsothermCrossing crossing : sounding.freezingLevels()) {
            boolean falling = crossing.trend() == IsothermCrossing.Trend.FALLING;
            marks.add(
                    new LevelMark(
                            crossing.pressureAltitude(),
                            Kind.ZERO_CELSIUS,
                            "0 °C, " + (falling ? "colder above" : "warmer above")));
        }
        for (Inversion inversion : sounding.inversions(smallestInversion)) {
            marks.add(
                    new LevelMark(
                            inversion.base().pressureAltitude(),
                            Kind.INVERSION_BASE,
                            String.format(
                                    Locale.ROOT,
                                    "inversion base, %.1f K warmer above",
                                    inversion.rise().inKelvins())));
            marks.add(
                    new LevelMark(
                            inversion.top().pressureAltitude(),
                            Kind.INVERSION_TOP,
                            "inversion top"));
        }
        sounding.tropopause()
                .map(AirState::pressureAltitude)
                .ifPresent(level -> marks.add(new LevelMark(level, Kind.TROPOPAUSE, "tropopause")));
        return List.copyOf(marks);
    }
}
