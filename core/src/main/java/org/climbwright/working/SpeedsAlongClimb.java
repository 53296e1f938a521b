package org.climbwright.working;

import java.util.ArrayList;
import java.util.List;
import org.climbwright.airspeed.AirspeedConversion;
import org.climbwright.airspeed.Crossover;
import org.climbwright.atmosphere.Atmosphere;
import org.climbwright.quantity.altitude.PressureAltitude;
import org.climbwright.quantity.speed.CalibratedAirspeed;
import org.climbwright.quantity.speed.Mach;

/** True airspeed at some levels of a climb at constant CAS and then at constant Mach number. */
final class SpeedsAlongClimb {
    /** A level of the climb; the crossover has no pressure altitude given, since it is found. */
    private record Point(String name, double altitudeM, double pressurePa, Kind kind) {}

    private enum Kind {
        AT_CAS,
        CROSSOVER,
        AT_MACH
    }

    private SpeedsAlongClimb() {}

    static Working working(
            CalibratedAirspeed cas, Mach mach, Atmosphere air, List<PressureAltitude> levels) {
        double casMps = cas.inMetresPerSecond();
        double number = mach.number();
        List<Point> points = points(casMps, number, air, levels);
        Sheet sheet =
                new Sheet(
                        "What does true airspeed do in a climb at "
                                + Reading.knots(casMps)
                                + " and then at "
                                + Reading.mach(number)
                                + "?");
        AirspeedWorking.givenCas(sheet, casMps);
        AirspeedWorking.givenMach(sheet, number);
        for (int i = 0; i < points.size(); i++) {
            given(sheet, i + 1, points.get(i), air);
        }
        AirspeedWorking.crossoverLines(sheet, casMps, number);
        List<Double> speeds = new ArrayList<>();
        for (int i = 0; i < points.size(); i++) {
            speeds.add(lines(sheet, i + 1, points.get(i), casMps, number, air));
        }
        for (int i = 1; i < points.size(); i++) {
            compare(sheet, points.get(i - 1), points.get(i), speeds.get(i - 1), speeds.get(i));
        }
        sheet.answer(
                "At constant Mach number true airspeed follows temperature alone: it stays where"
                        + " the temperature stays.");
        sheet.limit("Speed limits, rough air and the limits of the aeroplane are not in it.");
        return sheet.working();
    }

    private static List<Point> points(
            double casMps, double mach, Atmosphere air, List<PressureAltitude> levels) {
        double crossoverPa = AirspeedWorking.crossoverPressure(casMps, mach);
        double crossoverM = Crossover.altitude(casMps, mach);
        List<Point> points = new ArrayList<>();
        for (PressureAltitude level : AirspeedWorking.sorted(levels)) {
            if (level.inMetres() != crossoverM) {
                points.add(
                        new Point(
                                Reading.feet(level.inMetres()),
                                level.inMetres(),
                                air.at(level).pressurePa(),
                                level.inMetres() < crossoverM ? Kind.AT_CAS : Kind.AT_MACH));
            }
        }
        int below = (int) points.stream().filter(point -> point.kind() == Kind.AT_CAS).count();
        points.add(
                below,
                new Point(
                        "the crossover at " + Reading.feet(crossoverM),
                        crossoverM,
                        crossoverPa,
                        Kind.CROSSOVER));
        return points;
    }

    private static void given(Sheet sheet, int n, Point point, Atmosphere air) {
        if (point.kind() == Kind.AT_CAS) {
            sheet.given(
                    "level " + n,
                    "Hp" + n,
                    point.altitudeM(),
                    "m",
                    point.name(),
                    "pressure altitude, from the 1013.25 hPa level");
        }
        AirspeedWorking.givenTemperature(
                sheet,
                "static air temperature at " + point.name(),
                "T" + n,
                air.temperature(point.pressurePa()));
    }

    /** Writes the lines of a level, and returns the true airspeed. */
    private static double lines(
            Sheet sheet, int n, Point point, double casMps, double mach, Atmosphere air) {
        double temperatureK = air.temperature(point.pressurePa());
        String flown = "MA";
        double flownMach = mach;
        if (point.kind() == Kind.AT_CAS) {
            flown = "M" + n;
            flownMach = AirspeedConversion.machFromCas(casMps, point.pressurePa());
            StandardAirLines.pressure(
                    sheet,
                    "Static pressure at " + point.name(),
                    "p" + n,
                    "Hp" + n,
                    point.altitudeM());
            AirspeedWorking.machLine(
                    sheet, "Mach number at " + point.name(), flown, "p" + n, flownMach);
        }
        double tasMps = AirspeedConversion.tasFromMach(flownMach, temperatureK);
        AirspeedWorking.tasLine(
                sheet, "True airspeed at " + point.name(), "TAS" + n, flown, "T" + n, tasMps);
        return tasMps;
    }

    private static void compare(
            Sheet sheet, Point lower, Point upper, double lowerMps, double upperMps) {
        String change = Reading.knots(Math.abs(upperMps - lowerMps));
        String verb = upperMps > lowerMps ? " rises by " : " falls by ";
        String held =
                upper.kind() == Kind.AT_MACH
                        ? ", at constant Mach number, "
                        : ", at constant calibrated airspeed, ";
        sheet.answer(
                "From "
                        + lower.name()
                        + " to "
                        + upper.name()
                        + held
                        + "true airspeed"
                        + (upperMps == lowerMps ? " stays" : verb + change)
                        + ": "
                        + Reading.knots(lowerMps)
                        + " and "
                        + Reading.knots(upperMps)
                        + ".");
    }
}
