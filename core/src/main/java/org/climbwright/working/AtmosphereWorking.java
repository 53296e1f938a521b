package org.climbwright.working;

import org.climbwright.atmosphere.AirState;
import org.climbwright.atmosphere.Atmosphere;
import org.climbwright.atmosphere.altimetry.ColdAir;
import org.climbwright.gradient.RoundedUp;
import org.climbwright.quantity.ModelRange;
import org.climbwright.quantity.altitude.AltitudeChange;
import org.climbwright.quantity.altitude.GeopotentialAltitude;
import org.climbwright.quantity.altitude.PressureAltitude;
import org.climbwright.quantity.temperature.IsaDeviation;
import org.climbwright.quantity.temperature.IsaDeviationAtAltitude;
import org.climbwright.quantity.temperature.StaticAirTemperature;
import org.climbwright.quantity.temperature.TemperatureDifference;
import org.climbwright.unit.UnitScale;

/**
 * Workings of air off standard: what a cold day does to an altimeter, and the two meanings of a
 * deviation from standard.
 *
 * <p>Limits of use: for study. Whether and to which altitudes corrections for cold are made, the
 * state, the aeronautical information and the operator's procedures lay down.
 */
public final class AtmosphereWorking {
    /** The table was compared, all of it; the document of the formula itself was not seen. */
    private static final String BEHIND_THE_TABLE =
            "the formula behind the FAA Aeronautical Information Manual, table 7-3-1, whose 98"
                    + " corrections it gives at sea level, rounded up to 10 ft; how it takes an"
                    + " elevation is as ICAO Doc 8168, volume I, part III, section 1, chapter 4, is"
                    + " quoted, a document not seen itself";

    private static final String HYDROSTATIC = "hydrostatic equation, integrated over ln p";

    private static final ModelRange TROPOSPHERE =
            new ModelRange(
                    "altitude in the air of the working",
                    -5000.0,
                    11000.0,
                    "m",
                    "the two meanings are written out for the lowest layer of standard air");

    private AtmosphereWorking() {}

    /**
     * Shows what a cold day does to a published altitude, counted from the aerodrome whose QNH is
     * set, and what comes out where it is counted from the sea by mistake.
     *
     * <p>Symbols: A, E, T given; h, C, Csea, pE, pA, e, Afly found.
     *
     * @param published published altitude above mean sea level, above the elevation
     * @param elevation elevation of the aerodrome, -500 to 6,000 m
     * @param aerodrome static air temperature at the aerodrome, -90 to 60 °C
     * @return the working
     * @throws org.climbwright.quantity.OutsideModelException if a value is out of range
     */
    public static Working coldDay(
            GeopotentialAltitude published,
            GeopotentialAltitude elevation,
            StaticAirTemperature aerodrome) {
        double publishedM = published.inMetres();
        double elevationM = elevation.inMetres();
        double temperatureK = aerodrome.inKelvins();
        Sheet sheet =
                new Sheet(
                        "How much must be added to a published "
                                + Reading.feet(publishedM)
                                + " at "
                                + Reading.celsius(temperatureK)
                                + " on the aerodrome, and from which datum does that count?");
        seaLevel(sheet, "published altitude", "A", publishedM);
        seaLevel(sheet, "elevation of the aerodrome", "E", elevationM);
        sheet.given(
                "static air temperature at the aerodrome",
                "T",
                temperatureK,
                "K",
                Reading.celsius(temperatureK),
                "as reported there");
        double heightM = published.minus(elevation).inMetres();
        length(
                sheet,
                "Height above the aerodrome, from whose barometer the QNH comes: the datum of the"
                        + " correction",
                "h",
                "A - E",
                heightM,
                "definition of a height");
        double correctionM = ColdAir.aerodromeCorrection(heightM, temperatureK, elevationM);
        correction(
                sheet,
                "Correction to add",
                "C",
                "h",
                "T - 273.15 + 0.00198 / 0.3048 · E",
                "(h + E)",
                correctionM,
                BEHIND_THE_TABLE);
        double fromSeaM = ColdAir.aerodromeCorrection(publishedM, temperatureK, 0.0);
        correction(
                sheet,
                "From the wrong datum: the altitude taken for a height above an aerodrome at sea"
                        + " level that is as cold",
                "Csea",
                "A",
                "T - 273.15",
                "A",
                fromSeaM,
                "the formula of the correction to add, with no elevation");
        errorLines(sheet, publishedM, elevationM, heightM, temperatureK);
        GeopotentialAltitude flown = published.plus(AltitudeChange.ofMetres(correctionM));
        length(
                sheet,
                "Altitude to show, so that the height is the published one",
                "Afly",
                "A + C",
                flown.inMetres(),
                "the correction is added to the published altitude");
        answer(sheet, correctionM, fromSeaM, flown);
        sheet.limit(
                "No wind over mountains and no local low pressure is in it. Altitudes that a"
                        + " controller assigns are not the pilot's to correct.");
        return sheet.working();
    }

    private static void errorLines(
            Sheet sheet,
            double publishedM,
            double elevationM,
            double heightM,
            double temperatureK) {
        StandardAirLines.pressure(
                sheet, "Pressure at the aerodrome on a QNH of 1013.25 hPa", "pE", "E", elevationM);
        StandardAirLines.pressure(
                sheet, "Pressure where the altimeter shows the altitude", "pA", "A", publishedM);
        length(
                sheet,
                "Uncorrected: how much lower than shown the aeroplane is, in air as much colder"
                        + " than standard at every level",
                "e",
                "287.05287 / 9.80665 · ("
                        + StandardAirLines.temperature("E", elevationM)
                        + " - T) · ln(pE / pA)",
                ColdAir.errorAtIndicatedHeight(heightM, temperatureK, elevationM),
                HYDROSTATIC);
    }

    private static void answer(
            Sheet sheet, double correctionM, double fromSeaM, GeopotentialAltitude flown) {
        sheet.answer(
                correctionM > 0.0
                        ? "Add "
                                + Reading.feet(correctionM)
                                + " and show "
                                + Reading.feet(flown.inMetres())
                                + "; only the cold air between aerodrome and aeroplane counts."
                        : "The air is not colder than standard: nothing is added, and nothing is"
                                + " ever taken off.");
        if (correctionM > 0.0) {
            double tensM = RoundedUp.of(correctionM, UnitScale.FOOT.toSi(10.0));
            sheet.answer(
                    "Rounded up to 10 ft, as the published table is: " + Reading.feet(tensM) + ".");
        }
        sheet.answer(
                "Counted from the sea it would come to "
                        + Reading.feet(fromSeaM)
                        + ", another number: always say from which datum a height is.");
    }

    private static void seaLevel(Sheet sheet, String name, String symbol, double metres) {
        sheet.given(name, symbol, metres, "m", Reading.feet(metres), "mean sea level");
    }

    /** With the aerodrome temperature reduced to sea level [°C], and the top of the air [m]. */
    private static void correction(
            Sheet sheet,
            String what,
            String symbol,
            String height,
            String reduced,
            String top,
            double metres,
            String source) {
        length(
                sheet,
                what,
                symbol,
                height
                        + " · (15 - ("
                        + reduced
                        + ")) / (273 + "
                        + reduced
                        + " - 0.5 · 0.00198 / 0.3048 · "
                        + top
                        + ")",
                metres,
                source);
    }

    /**
     * Shows the two meanings of a deviation from standard: the same at each pressure, or the same
     * at each true altitude.
     *
     * <p>Symbols: d, Hp given; p, Ta, Ha, Hb, Tb, dT, dH found, "a" by pressure and "b" by
     * altitude.
     *
     * @param deviation how much warmer than standard
     * @param level pressure altitude, -5,000 to 11,000 m
     * @return the working
     * @throws org.climbwright.quantity.OutsideModelException if level or true altitude is outside
     *     the lowest layer of standard air
     */
    public static Working twoMeaningsOfDeviation(
            TemperatureDifference deviation, PressureAltitude level) {
        double kelvins = deviation.inKelvins();
        double levelM = TROPOSPHERE.check(level.inMetres());
        AirState byPressure =
                Atmosphere.withDeviationAtEachPressure(IsaDeviation.ofKelvins(kelvins)).at(level);
        AirState byAltitude =
                Atmosphere.withDeviationAtEachAltitude(IsaDeviationAtAltitude.ofKelvins(kelvins))
                        .at(level);
        Sheet sheet =
                new Sheet(
                        "What are the two meanings of a deviation from standard of "
                                + Reading.kelvins(kelvins)
                                + " at "
                                + Reading.feet(levelM)
                                + "?");
        sheet.given(
                "deviation from standard",
                "d",
                kelvins,
                "K",
                Reading.kelvins(kelvins),
                "a difference");
        sheet.given(
                "pressure altitude",
                "Hp",
                levelM,
                "m",
                Reading.feet(levelM),
                "the 1013.25 hPa level, which is sea level here");
        StandardAirLines.pressure(sheet, "Static pressure at the level", "p", "Hp", levelM);
        DeviationLines.byPressure(sheet, byPressure);
        double altitudeM = byAltitude.geopotentialAltitude().orElseThrow().inMetres();
        TROPOSPHERE.check(altitudeM);
        DeviationLines.byAltitude(sheet, byAltitude);
        DeviationLines.differences(sheet, byPressure, byAltitude);
        sheet.limit(
                "Charts, flight manuals and forecasts use one or the other; nearly always the one"
                        + " by pressure, which is what a crew can measure (common practice, no"
                        + " source).");
        return sheet.working();
    }

    static void length(
            Sheet sheet, String what, String symbol, String formula, double metres, String source) {
        sheet.step(what, symbol, formula, metres, "m", Reading.feet(metres), source);
    }
}
