package org.climbwright.examples.briefing;

import java.time.Duration;
import java.util.Locale;
import java.util.Optional;
import org.climbwright.briefing.ClimbBriefing;
import org.climbwright.path.ClimbState;
import org.climbwright.quantity.altitude.AltitudeChange;
import org.climbwright.quantity.altitude.PressureAltitude;
import org.climbwright.quantity.speed.PressureAltitudeRate;

/** Lines of at most 100 columns, with figures in one set of units. */
final class TextPage {
    /** What stands where something is not known. */
    static final String DASH = "-";

    private static final int WIDTH = 100;

    private final StringBuilder text = new StringBuilder();
    private final ClimbBriefing briefing;
    private final UnitSet units;

    TextPage(ClimbBriefing briefing, UnitSet units) {
        this.briefing = briefing;
        this.units = units;
    }

    UnitSet units() {
        return units;
    }

    String text() {
        return text.toString();
    }

    void line(String format, Object... values) {
        text.append(format(format, values).stripTrailing()).append('\n');
    }

    void blank() {
        text.append('\n');
    }

    /** A sentence, its further lines two columns further in. */
    void paragraph(String indent, String sentence) {
        StringBuilder row = new StringBuilder(indent);
        for (String word : sentence.split(" ", -1)) {
            if (row.length() + word.length() > WIDTH) {
                text.append(row.toString().stripTrailing()).append('\n');
                row = new StringBuilder(indent).append("  ");
            }
            row.append(word).append(' ');
        }
        text.append(row.toString().stripTrailing()).append('\n');
    }

    String altitude(PressureAltitude altitude) {
        return units.altitude().text(altitude.inMetres());
    }

    String altitude(AltitudeChange height) {
        return units.altitude().text(height.inMetres());
    }

    String rate(PressureAltitudeRate rate) {
        return units.verticalRate().text(rate.inMetresPerSecond());
    }

    /** What the altimeter shows there. */
    String onAltimeter(PressureAltitude altitude) {
        return AltimeterText.of(briefing.reading(altitude), units);
    }

    /** Where, as the altimeter shows it, and when, in a sentence. */
    String at(ClimbState state) {
        return onAltimeter(state.pressureAltitude()) + ", " + minutes(state.timeS());
    }

    /** The distance as a number, a dash where it is not known. */
    String distance(ClimbState state) {
        return known(state.distance().map(way -> units.distance().number(way.inMetres())));
    }

    static String known(Optional<String> value) {
        return value.orElse(DASH);
    }

    /** A name that may be too long for its column, cut with three points then. */
    static String cut(String name, int most) {
        return name.length() <= most ? name : name.substring(0, most - 3) + "...";
    }

    static String minutes(double seconds) {
        long whole = Math.round(seconds);
        return format("%d:%02d", whole / 60, whole % 60);
    }

    static String minutes(Duration time) {
        return minutes(time.toNanos() / 1e9);
    }

    static String format(String format, Object... values) {
        return String.format(Locale.ROOT, format, values);
    }
}
