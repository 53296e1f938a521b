package org.climbwright.examples.briefing;

import java.util.List;
import org.climbwright.gradient.leveling.LevelOffLead;
import org.climbwright.gradient.leveling.LevelOffRule;
import org.climbwright.gradient.restriction.AltitudeRestriction;
import org.climbwright.gradient.restriction.Level;
import org.climbwright.gradient.restriction.Restriction;
import org.climbwright.gradient.restriction.SpeedRestriction;
import org.climbwright.quantity.altitude.AltitudeChange;
import org.climbwright.quantity.altitude.AltitudeOnQnh;
import org.climbwright.quantity.altitude.PressureAltitude;
import org.climbwright.quantity.path.GroundDistance;
import org.climbwright.quantity.speed.CalibratedAirspeed;

/** What a scenario says of restrictions and of the level-off, as values. */
final class RestrictionRow {
    private RestrictionRow() {}

    static Restriction read(List<String> cells) {
        if (cells.size() < 4) {
            throw new IllegalArgumentException(
                    "a row must be point, distance, what and a level or speed, but had "
                            + cells.size()
                            + " texts");
        }
        GroundDistance distance = GroundDistance.parse(cells.get(1));
        String what = cells.get(2);
        boolean hasTwo = what.equals("between") || what.equals("at");
        if (cells.size() != (hasTwo ? 5 : 4)) {
            throw new IllegalArgumentException(
                    "\""
                            + what
                            + "\" needs "
                            + (hasTwo ? "two values" : "one value")
                            + ", but had "
                            + (cells.size() - 3));
        }
        String value = cells.get(3);
        return switch (what) {
            case "at or above" -> of(cells, distance, AltitudeRestriction.atOrAbove(level(value)));
            case "at or below" -> of(cells, distance, AltitudeRestriction.atOrBelow(level(value)));
            case "between" ->
                    of(
                            cells,
                            distance,
                            AltitudeRestriction.between(level(value), level(cells.get(4))));
            case "at" ->
                    of(
                            cells,
                            distance,
                            AltitudeRestriction.at(
                                    level(value), AltitudeChange.parse(cells.get(4))));
            case "not above" ->
                    Restriction.of(
                            cells.get(0),
                            distance,
                            SpeedRestriction.notAbove(CalibratedAirspeed.parse(value)));
            default ->
                    throw new IllegalArgumentException(
                            "must be \"at\", \"at or above\", \"at or below\", \"between\" or \"not"
                                    + " above\", but was \""
                                    + what
                                    + "\"");
        };
    }

    private static Restriction of(
            List<String> cells, GroundDistance distance, AltitudeRestriction altitude) {
        return Restriction.of(cells.get(0), distance, altitude);
    }

    /** A flight level by its letters, else an altitude on QNH. */
    private static Level level(String text) {
        return text.startsWith("FL")
                ? Level.of(PressureAltitude.parse(text))
                : Level.of(AltitudeOnQnh.parse(text));
    }

    static LevelOffRule rule(String text) {
        return switch (text) {
            case "common practice" -> LevelOffRule.tradeFigure();
            case "ICAO in feet" -> LevelOffRule.icaoInFeet();
            case "ICAO in metres" -> LevelOffRule.icaoInMetres();
            case "United Kingdom" -> LevelOffRule.unitedKingdom();
            case "United States" -> LevelOffRule.unitedStates();
            default ->
                    throw new IllegalArgumentException(
                            "must be \"common practice\", \"ICAO in feet\", \"ICAO in metres\","
                                    + " \"United Kingdom\" or \"United States\", but was \""
                                    + text
                                    + "\"");
        };
    }

    static LevelOffLead lead(String text) {
        if (text.matches("[0-9]+([.][0-9]+)? %")) {
            return LevelOffLead.ofPercentOfRate(number(text));
        }
        if (text.matches("[0-9]+([.][0-9]+)? g")) {
            return LevelOffLead.ofLoadFactorChange(number(text));
        }
        throw new IllegalArgumentException(
                "must be such as \"10 %\" or \"0.05 g\", but was \"" + text + "\"");
    }

    private static double number(String text) {
        return Double.parseDouble(text.substring(0, text.indexOf(' ')));
    }
}
