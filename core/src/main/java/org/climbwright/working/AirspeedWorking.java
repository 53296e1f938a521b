package org.climbwright.working;

import static org.climbwright.atmosphere.IcaoConstants.SEA_LEVEL_SPEED_OF_SOUND_MPS;

import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import org.climbwright.airspeed.AirspeedConversion;
import org.climbwright.airspeed.Crossover;
import org.climbwright.atmosphere.Atmosphere;
import org.climbwright.quantity.ModelRange;
import org.climbwright.quantity.altitude.PressureAltitude;
import org.climbwright.quantity.speed.CalibratedAirspeed;
import org.climbwright.quantity.speed.Mach;

/**
 * Workings of airspeeds: from calibrated airspeed to Mach number and true airspeed, along a climb,
 * and where the two speeds of a climb meet.
 *
 * <p>Limits of use: for study; subsonic, in the two lowest layers of standard air, dry. The flight
 * manual and the operator decide the speeds of a climb.
 */
public final class AirspeedWorking {
    private static final String PITOT =
            "adiabatic flow of a perfect gas with a ratio of specific heats of 1.4, NACA Report"
                    + " 1135";
    private static final String SOUND =
            "speed of sound of a perfect gas, ICAO Doc 7488 for its constants";
    private static final String OF_THE_AIR = "static, of the air given, there";

    private static final ModelRange SUBSONIC_CAS =
            new ModelRange(
                    "calibrated airspeed",
                    1.0,
                    SEA_LEVEL_SPEED_OF_SOUND_MPS,
                    "m/s",
                    "the working is written out without a shock before the probe");

    private static final ModelRange SUBSONIC =
            new ModelRange(
                    "Mach number",
                    0.01,
                    1.0,
                    "",
                    "the working is written out without a shock before the probe");

    private AirspeedWorking() {}

    /**
     * Shows how Mach number and true airspeed follow from calibrated airspeed at a level.
     *
     * <p>Symbols: CAS, Hp, T given; a0, qc, p, M, TAS found.
     *
     * @param cas calibrated airspeed, 1 to 340 m/s
     * @param level pressure altitude, -5,000 to 20,000 m
     * @param air the air of the day
     * @return the working
     * @throws org.climbwright.quantity.OutsideModelException if a value is out of range, the speed
     *     is above that of sound, or the air does not reach there
     */
    public static Working casToMachAndTas(
            CalibratedAirspeed cas, PressureAltitude level, Atmosphere air) {
        double casMps = SUBSONIC_CAS.check(cas.inMetresPerSecond());
        double pressurePa = air.at(level).pressurePa();
        double temperatureK = air.temperature(pressurePa);
        double mach = SUBSONIC.check(AirspeedConversion.machFromCas(casMps, pressurePa));
        double tasMps = AirspeedConversion.tasFromMach(mach, temperatureK);
        Sheet sheet =
                new Sheet(
                        "Which Mach number and true airspeed is a calibrated airspeed of "
                                + Reading.knots(casMps)
                                + " at "
                                + Reading.feet(level.inMetres())
                                + "?");
        givenCas(sheet, casMps);
        sheet.given(
                "pressure altitude",
                "Hp",
                level.inMetres(),
                "m",
                Reading.feet(level.inMetres()),
                "the 1013.25 hPa level");
        givenTemperature(sheet, "static air temperature", "T", temperatureK);
        impactPressure(sheet, casMps);
        StandardAirLines.pressure(
                sheet, "Static pressure at the level", "p", "Hp", level.inMetres());
        machLine(sheet, "Mach number: the same impact pressure in that air", "M", "p", mach);
        tasLine(sheet, "True airspeed", "TAS", "M", "T", tasMps);
        sheet.answer(
                Reading.knots(casMps)
                        + " of calibrated airspeed at "
                        + Reading.feet(level.inMetres())
                        + " is "
                        + Reading.mach(mach)
                        + " and a true airspeed of "
                        + Reading.knots(tasMps)
                        + ".");
        sheet.answer("Temperature stands in the true airspeed only, not in the Mach number.");
        sheet.limit(
                "Calibrated airspeed is corrected for position error; the indicated one is not.");
        return sheet.working();
    }

    /**
     * Shows what true airspeed does in a climb at constant calibrated airspeed and then at constant
     * Mach number.
     *
     * <p>Symbols: CAS, MA given, and for the n-th level from below, the crossover among them, Hpn
     * (not at the crossover) and Tn; found a0, qc, px, Hx, and TASn, below the crossover after pn
     * and Mn.
     *
     * @param cas calibrated airspeed, 1 to 340 m/s
     * @param mach Mach number from the crossover on, 0.01 to 1
     * @param air the air of the day
     * @param levels pressure altitudes to look at, in any order, -5,000 to 20,000 m
     * @return the working
     * @throws org.climbwright.quantity.OutsideModelException if a value is out of range, or the air
     *     does not reach there
     */
    public static Working constantCasThenMach(
            CalibratedAirspeed cas, Mach mach, Atmosphere air, List<PressureAltitude> levels) {
        return SpeedsAlongClimb.working(cas, mach, air, levels);
    }

    /**
     * Shows where a calibrated airspeed and a Mach number are the same speed, on two days.
     *
     * <p>Symbols: CAS, MA, T1, T2 given; a0, qc, px, Hx, TAS1, TAS2 found.
     *
     * @param cas calibrated airspeed, 1 to 340 m/s
     * @param mach Mach number, 0.01 to 1
     * @param oneDay the air of one day
     * @param anotherDay the air of another
     * @return the working
     * @throws org.climbwright.quantity.OutsideModelException if a speed is out of range, or the
     *     crossover is outside -5,000 to 20,000 m or outside the air
     */
    public static Working crossover(
            CalibratedAirspeed cas, Mach mach, Atmosphere oneDay, Atmosphere anotherDay) {
        double casMps = cas.inMetresPerSecond();
        double number = mach.number();
        Sheet sheet =
                new Sheet(
                        "Where are "
                                + Reading.knots(casMps)
                                + " and "
                                + Reading.mach(number)
                                + " the same speed, and does temperature move it?");
        double crossoverPa = crossoverPressure(casMps, number);
        double firstK = oneDay.temperature(crossoverPa);
        double secondK = anotherDay.temperature(crossoverPa);
        givenCas(sheet, casMps);
        givenMach(sheet, number);
        String one = day(firstK, secondK, "one day");
        String other = day(secondK, firstK, "another day");
        givenTemperature(sheet, "static air temperature there on " + one, "T1", firstK);
        givenTemperature(sheet, "static air temperature there on " + other, "T2", secondK);
        crossoverLines(sheet, casMps, number);
        double firstMps = AirspeedConversion.tasFromMach(number, firstK);
        double secondMps = AirspeedConversion.tasFromMach(number, secondK);
        String what = "True airspeed at the crossover on ";
        tasLine(sheet, what + one, "TAS1", "MA", "T1", firstMps);
        tasLine(sheet, what + other, "TAS2", "MA", "T2", secondMps);
        sheet.answer(
                "They are the same speed at a pressure altitude of "
                        + Reading.feet(Crossover.altitude(casMps, number))
                        + ".");
        sheet.answer(
                "No temperature stands in the formulas up to there, so that it is the same level on"
                        + " every day; its true altitude is not.");
        sheet.answer(
                "The true airspeed there is "
                        + Reading.knots(firstMps)
                        + " on "
                        + one
                        + " and "
                        + Reading.knots(secondMps)
                        + " on "
                        + other
                        + ".");
        return sheet.working();
    }

    /** What a day is called beside another. */
    private static String day(double kelvins, double otherK, String ifTheSame) {
        if (kelvins == otherK) {
            return ifTheSame;
        }
        return kelvins < otherK ? "the colder day" : "the warmer day";
    }

    static double crossoverPressure(double casMps, double mach) {
        return AirspeedConversion.crossoverPressure(
                SUBSONIC_CAS.check(casMps), SUBSONIC.check(mach));
    }

    static void givenCas(Sheet sheet, double casMps) {
        sheet.given(
                "calibrated airspeed",
                "CAS",
                casMps,
                "m/s",
                Reading.knots(casMps),
                "what the indicator shows, less instrument and position error");
    }

    static void givenMach(Sheet sheet, double mach) {
        sheet.given("Mach number", "MA", mach, "", Reading.mach(mach), "");
    }

    static void givenTemperature(Sheet sheet, String name, String symbol, double kelvins) {
        sheet.given(name, symbol, kelvins, "K", Reading.celsius(kelvins), OF_THE_AIR);
    }

    static void impactPressure(Sheet sheet, double casMps) {
        sheet.step(
                "Speed of sound at sea level in standard air",
                "a0",
                "√(1.4 · 287.05287 · 288.15)",
                SEA_LEVEL_SPEED_OF_SOUND_MPS,
                "m/s",
                Reading.knots(SEA_LEVEL_SPEED_OF_SOUND_MPS),
                SOUND);
        double impactPa = AirspeedConversion.impactPressureFromCas(casMps);
        sheet.step(
                "Impact pressure, which the airspeed indicator measures: by definition that of CAS"
                        + " at sea level in standard air",
                "qc",
                "101325 · ((1 + 0.2 · (CAS / a0)^2)^3.5 - 1)",
                impactPa,
                "Pa",
                Reading.hectopascals(impactPa),
                PITOT);
    }

    static void crossoverLines(Sheet sheet, double casMps, double mach) {
        impactPressure(sheet, casMps);
        double crossoverPa = crossoverPressure(casMps, mach);
        sheet.step(
                "Static pressure in which the Mach number makes the same impact pressure",
                "px",
                "qc / ((1 + 0.2 · MA^2)^3.5 - 1)",
                crossoverPa,
                "Pa",
                Reading.hectopascals(crossoverPa),
                PITOT);
        StandardAirLines.altitude(
                sheet,
                "Pressure altitude of the crossover",
                "Hx",
                "px",
                Crossover.altitude(casMps, mach));
    }

    static void machLine(Sheet sheet, String what, String symbol, String pressure, double mach) {
        sheet.step(
                what,
                symbol,
                "√(5 · ((qc / " + pressure + " + 1)^(2 / 7) - 1))",
                mach,
                "",
                Reading.mach(mach),
                PITOT);
    }

    static void tasLine(
            Sheet sheet,
            String what,
            String symbol,
            String mach,
            String temperature,
            double tasMps) {
        sheet.step(
                what,
                symbol,
                mach + " · √(1.4 · 287.05287 · " + temperature + ")",
                tasMps,
                "m/s",
                Reading.knots(tasMps),
                SOUND);
    }

    /** Levels from below, each once. */
    static List<PressureAltitude> sorted(List<PressureAltitude> levels) {
        return levels.stream()
                .map(level -> Objects.requireNonNull(level, "level"))
                .distinct()
                .sorted(Comparator.naturalOrder())
                .toList();
    }
}
