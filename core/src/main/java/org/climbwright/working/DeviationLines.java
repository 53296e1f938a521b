package org.climbwright.working;

import org.climbwright.atmosphere.AirState;
import org.climbwright.quantity.altitude.GeopotentialAltitude;

/** The lines of both meanings of a deviation from standard air, in its lowest layer. */
final class DeviationLines {
    private static final String LAPSE = StandardAirLines.SOURCE + ", with the deviation added";
    private static final String HYDROSTATIC = "hydrostatic equation, integrated over ln p";

    private DeviationLines() {}

    static void byPressure(Sheet sheet, AirState air) {
        temperature(
                sheet,
                "By pressure: the standard temperature of that pressure and the deviation",
                "Ta",
                "288.15 - 0.0065 · Hp + d",
                air.temperatureK());
        AtmosphereWorking.length(
                sheet,
                "By pressure: altitude above mean sea level (geopotential)",
                "Ha",
                "Hp + 287.05287 · d / 9.80665 · ln(101325 / p)",
                altitude(air).inMetres(),
                HYDROSTATIC);
    }

    static void byAltitude(Sheet sheet, AirState air) {
        AtmosphereWorking.length(
                sheet,
                "By altitude: altitude above mean sea level (geopotential) of that pressure, in air"
                        + " that is warmer by the deviation at every altitude",
                "Hb",
                "(288.15 + d) / 0.0065 · (1 - (p / 101325)^(287.05287 · 0.0065 / 9.80665))",
                altitude(air).inMetres(),
                HYDROSTATIC);
        temperature(
                sheet,
                "By altitude: the standard temperature of that altitude and the deviation",
                "Tb",
                "288.15 - 0.0065 · Hb + d",
                air.temperatureK());
    }

    static void differences(Sheet sheet, AirState byPressure, AirState byAltitude) {
        double warmerK =
                byPressure
                        .staticAirTemperature()
                        .minus(byAltitude.staticAirTemperature())
                        .inKelvins();
        sheet.step(
                "How much warmer by pressure than by altitude",
                "dT",
                "Ta - Tb",
                warmerK,
                "K",
                Reading.kelvins(warmerK),
                "difference");
        double higherM = altitude(byPressure).minus(altitude(byAltitude)).inMetres();
        AtmosphereWorking.length(
                sheet, "How much higher by pressure", "dH", "Ha - Hb", higherM, "difference");
        sheet.answer(
                "By pressure it is "
                        + Reading.celsius(byPressure.temperatureK())
                        + " at "
                        + Reading.feet(altitude(byPressure).inMetres())
                        + " above mean sea level; by altitude "
                        + Reading.celsius(byAltitude.temperatureK())
                        + " at "
                        + Reading.feet(altitude(byAltitude).inMetres())
                        + ".");
        sheet.answer(
                "By altitude the deviation at that pressure is not the one that was named, since"
                        + " the pressure lies at another altitude than in standard air.");
    }

    private static void temperature(
            Sheet sheet, String what, String symbol, String formula, double kelvins) {
        sheet.step(what, symbol, formula, kelvins, "K", Reading.celsius(kelvins), LAPSE);
    }

    private static GeopotentialAltitude altitude(AirState air) {
        return air.geopotentialAltitude().orElseThrow();
    }
}
