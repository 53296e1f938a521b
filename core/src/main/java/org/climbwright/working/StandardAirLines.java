package org.climbwright.working;

import org.climbwright.atmosphere.StandardAir;
import org.climbwright.quantity.ModelRange;

/** Lines of standard air that many workings have; the formula is that of the layer. */
final class StandardAirLines {
    static final String SOURCE = "ICAO Doc 7488, manual of the standard atmosphere";

    private static final double TROPOPAUSE_M = 11000.0;

    private static final ModelRange WRITTEN =
            new ModelRange(
                    "altitude in standard air",
                    -5000.0,
                    20000.0,
                    "m",
                    "workings are written out for the two lowest layers of standard air");

    private static final String TROPOPAUSE_PRESSURE =
            "101325 · (216.65 / 288.15)^(9.80665 / (287.05287 · 0.0065))";

    private StandardAirLines() {}

    /** Standard temperature at an altitude, as a part of a formula. */
    static String temperature(String altitude, double altitudeM) {
        WRITTEN.check(altitudeM);
        return altitudeM <= TROPOPAUSE_M ? "(288.15 - 0.0065 · " + altitude + ")" : "216.65";
    }

    /** The pressure at an altitude in standard air. */
    static void pressure(Sheet sheet, String what, String symbol, String altitude, double metres) {
        String formula =
                WRITTEN.check(metres) <= TROPOPAUSE_M
                        ? "101325 · (1 - 0.0065 · "
                                + altitude
                                + " / 288.15)^(9.80665 / (287.05287 · 0.0065))"
                        : TROPOPAUSE_PRESSURE
                                + " · exp(-9.80665 · ("
                                + altitude
                                + " - 11000) / (287.05287 · 216.65))";
        double pascals = StandardAir.pressureFromAltitude(metres);
        sheet.step(what, symbol, formula, pascals, "Pa", Reading.hectopascals(pascals), SOURCE);
    }

    /** The altitude that a room's function found for a pressure, which may be a sum in brackets. */
    static void altitude(Sheet sheet, String what, String symbol, String pressure, double metres) {
        String formula =
                WRITTEN.check(metres) <= TROPOPAUSE_M
                        ? "288.15 / 0.0065 · (1 - ("
                                + pressure
                                + " / 101325)^(287.05287 · 0.0065 / 9.80665))"
                        : "11000 + 287.05287 · 216.65 / 9.80665 · ln("
                                + TROPOPAUSE_PRESSURE
                                + " / "
                                + pressure
                                + ")";
        sheet.step(what, symbol, formula, metres, "m", Reading.feet(metres), SOURCE);
    }
}
