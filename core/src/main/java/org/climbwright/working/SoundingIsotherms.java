package org.climbwright.working;

import java.util.List;
import org.climbwright.quantity.pressure.StaticPressure;
import org.climbwright.quantity.temperature.StaticAirTemperature;
import org.climbwright.sounding.IsothermCrossing;
import org.climbwright.sounding.Sounding;

/** The levels of 0 °C of a sounding, between the reported levels around each. */
final class SoundingIsotherms {
    private static final double ICE_POINT_K = 273.15;

    /** What is reported at a level: pressure and temperature. */
    private record Reported(double pressurePa, double temperatureK) {}

    private SoundingIsotherms() {}

    static Working working(Sounding sounding) {
        List<IsothermCrossing> crossings = sounding.freezingLevels();
        List<Reported> reported =
                sounding.levels().stream()
                        .filter(level -> level.staticPressure().isPresent())
                        .filter(level -> level.staticAirTemperature().isPresent())
                        .map(
                                level ->
                                        new Reported(
                                                level.staticPressure()
                                                        .map(StaticPressure::inPascals)
                                                        .orElseThrow(),
                                                level.staticAirTemperature()
                                                        .map(StaticAirTemperature::inKelvins)
                                                        .orElseThrow()))
                        .toList();
        Sheet sheet = new Sheet("How many levels of 0 °C has this air, and where are they?");
        for (int i = 0; i < crossings.size(); i++) {
            int below = below(reported, crossings.get(i).air().pressurePa());
            given(sheet, "a" + (i + 1), "below", reported.get(below));
            given(sheet, "b" + (i + 1), "above", reported.get(below + 1));
        }
        for (int i = 0; i < crossings.size(); i++) {
            lines(sheet, i + 1, crossings.get(i));
        }
        answer(sheet, crossings);
        sheet.limit(
                "A sounding is one place and one hour. A level of 0 °C parts warm air from cold,"
                    + " not \"no icing\" from icing: rain from warm air aloft freezes in the cold"
                    + " air below.");
        return sheet.working();
    }

    /** The last reported level that is off 0 °C below a crossing. */
    private static int below(List<Reported> reported, double pressurePa) {
        int below = 0;
        for (int i = 0; i + 1 < reported.size(); i++) {
            Reported level = reported.get(i);
            if (level.pressurePa() > pressurePa && level.temperatureK() != ICE_POINT_K) {
                below = i;
            }
        }
        return below;
    }

    private static void given(Sheet sheet, String index, String side, Reported level) {
        int n = Integer.parseInt(index.substring(1));
        sheet.given(
                "pressure reported next " + side + " passage " + n,
                "p" + index,
                level.pressurePa(),
                "Pa",
                Reading.hectopascals(level.pressurePa()),
                "the sounding");
        sheet.given(
                "static air temperature reported there",
                "T" + index,
                level.temperatureK(),
                "K",
                Reading.celsius(level.temperatureK()),
                "the sounding");
    }

    private static void lines(Sheet sheet, int n, IsothermCrossing crossing) {
        double pressurePa = crossing.air().pressurePa();
        String formula =
                "pa# · (pb# / pa#)^((273.15 - Ta#) / (Tb# - Ta#))".replace("#", String.valueOf(n));
        sheet.step(
                "Pressure of passage "
                        + n
                        + ", temperature taken as linear in ln p between the two",
                "p" + n,
                formula,
                pressurePa,
                "Pa",
                Reading.hectopascals(pressurePa),
                "linear interpolation in the logarithm of pressure");
        StandardAirLines.altitude(
                sheet,
                "Pressure altitude of passage " + n,
                "Hp" + n,
                "p" + n,
                crossing.pressureAltitude().inMetres());
    }

    private static void answer(Sheet sheet, List<IsothermCrossing> crossings) {
        if (crossings.isEmpty()) {
            sheet.answer("It passes 0 °C nowhere between its lowest and its highest level.");
            return;
        }
        sheet.answer(
                crossings.size() == 1
                        ? "It passes 0 °C once."
                        : "It passes 0 °C " + crossings.size() + " times, from below:");
        for (IsothermCrossing crossing : crossings) {
            sheet.answer(
                    "at a pressure altitude of "
                            + Reading.feet(crossing.pressureAltitude().inMetres())
                            + switch (crossing.trend()) {
                                case FALLING -> ", colder above.";
                                case RISING -> ", warmer above.";
                            });
        }
    }
}
