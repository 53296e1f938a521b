package org.climbwright.examples.shell;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import org.climbwright.airspeed.Airspeeds;
import org.climbwright.airspeed.Crossover;
import org.climbwright.atmosphere.AirState;
import org.climbwright.atmosphere.AltitudeDatum;
import org.climbwright.atmosphere.Atmosphere;
import org.climbwright.briefing.BriefingLevel;
import org.climbwright.briefing.ClimbBriefing;
import org.climbwright.examples.briefing.BundledClimb;
import org.climbwright.path.ClimbState;
import org.climbwright.quantity.altitude.PressureAltitude;
import org.climbwright.quantity.pressure.AltimeterSetting;
import org.climbwright.quantity.speed.CalibratedAirspeed;
import org.climbwright.quantity.speed.Mach;
import org.climbwright.quantity.temperature.IsaDeviation;
import org.climbwright.working.AirspeedWorking;
import org.climbwright.working.Working;

/**
 * Short ways for who types: air, speeds, a table of any function, a picture of any table, and a
 * climb to ask about. The shell imports them; a program calls the library itself.
 *
 * <p>Limits of use: for study, not for use in flight. The flight manual, the operator's procedures,
 * local regulations and licensed practice decide.
 */
public final class Explore {
    /** Computed when it is first asked for. */
    private static final class Briefed {
        static final ClimbBriefing CLIMB = BundledClimb.briefing();
    }

    private Explore() {}

    /**
     * Returns standard air.
     *
     * @param level pressure altitude, as {@code "FL310"} or {@code "3000 ft"}
     * @return the air there
     */
    public static AirState isa(String level) {
        return Atmosphere.standard().at(PressureAltitude.parse(level));
    }

    /**
     * Returns air that is off standard by the same amount at every pressure, QNH 1013.25 hPa.
     *
     * @param level pressure altitude, as {@code "FL310"} or {@code "3000 ft"}
     * @param deviation how much warmer it is, as {@code "10 K"}
     * @return the air there
     */
    public static AirState isa(String level, String deviation) {
        AltitudeDatum datum = AltitudeDatum.onQnh(AltimeterSetting.parse("1013.25 hPa"));
        return Atmosphere.withDeviationAtEachPressure(IsaDeviation.parse(deviation), datum)
                .at(PressureAltitude.parse(level));
    }

    /**
     * Returns all speeds of a calibrated airspeed.
     *
     * @param calibratedAirspeed as {@code "290 kn"}
     * @param air the air
     * @return Mach, true and equivalent airspeed, total temperature and more; to Mach 5, and above
     *     Mach 1 without a remark, since the formulas hold there: read the Mach number first
     * @throws org.climbwright.quantity.OutsideModelException if it would be more than Mach 5
     */
    public static Airspeeds speeds(String calibratedAirspeed, AirState air) {
        return Airspeeds.from(CalibratedAirspeed.parse(calibratedAirspeed), air);
    }

    /**
     * Returns all speeds of a calibrated airspeed in standard air.
     *
     * @param calibratedAirspeed as {@code "290 kn"}
     * @param level pressure altitude, as {@code "FL310"}
     * @return Mach, true and equivalent airspeed, total temperature and more; to Mach 5, and above
     *     Mach 1 without a remark, since the formulas hold there: read the Mach number first
     * @throws org.climbwright.quantity.OutsideModelException if it would be more than Mach 5
     */
    public static Airspeeds speeds(String calibratedAirspeed, String level) {
        return speeds(calibratedAirspeed, isa(level));
    }

    /**
     * Returns where a calibrated airspeed and a Mach number are one speed.
     *
     * @param calibratedAirspeed as {@code "290 kn"}
     * @param mach as {@code "M0.77"}
     * @return the pressure altitude, the same in any air
     * @throws org.climbwright.quantity.OutsideModelException if the two are one nowhere in standard
     *     air
     */
    public static PressureAltitude crossover(String calibratedAirspeed, String mach) {
        return Crossover.of(CalibratedAirspeed.parse(calibratedAirspeed), Mach.parse(mach))
                .pressureAltitude();
    }

    /**
     * Returns the working of a figure: Mach and true airspeed of a calibrated airspeed in standard
     * air.
     *
     * @param calibratedAirspeed as {@code "290 kn"}
     * @param level pressure altitude, as {@code "FL310"}
     * @return question and answer; {@code toMarkdown()} has it line by line
     */
    public static Working working(String calibratedAirspeed, String level) {
        return AirspeedWorking.casToMachAndTas(
                CalibratedAirspeed.parse(calibratedAirspeed),
                PressureAltitude.parse(level),
                Atmosphere.standard());
    }

    /**
     * Returns a column of a table.
     *
     * @param name its heading, with the unit of its numbers
     * @param function the number of each row
     * @return the column
     */
    public static Table.Column column(String name, DoubleUnaryOperator function) {
        return new Table.Column(name, function);
    }

    /**
     * Returns functions of one number as a table.
     *
     * @param name what the number is, with its unit
     * @param from where it begins
     * @param to where it ends
     * @param step from row to row, above 0
     * @param columns the functions; what one refuses stays empty, and its sentence stands below
     * @return the table
     * @throws IllegalArgumentException if that makes no rows, or more than 1,000
     */
    public static Table table(
            String name, double from, double to, double step, Table.Column... columns) {
        return Table.of(name, from, to, step, List.of(columns));
    }

    /**
     * Returns one function of one number as a table.
     *
     * @param name what the number is, with its unit
     * @param from where it begins
     * @param to where it ends
     * @param step from row to row, above 0
     * @param function the number of each row
     * @return the table
     * @throws IllegalArgumentException if that makes no rows, or more than 1,000
     */
    public static Table table(
            String name, double from, double to, double step, DoubleUnaryOperator function) {
        return table(name, from, to, step, column("value", function));
    }

    /**
     * Draws a table: a panel for each column over the first.
     *
     * @param file what to write, an SVG file
     * @param table what to draw
     * @return the file
     */
    public static Path picture(String file, Table table) {
        try {
            return Files.writeString(Path.of(file).toAbsolutePath(), Picture.of(table));
        } catch (IOException broken) {
            throw new UncheckedIOException(file + " cannot be written", broken);
        }
    }

    /**
     * Returns the bundled climb, briefed: an invented aeroplane through an observed winter's air.
     *
     * @return the briefing
     */
    public static ClimbBriefing briefing() {
        return Briefed.CLIMB;
    }

    /** Prints the bundled climb as the main program does. */
    public static void report() {
        System.out.print(BundledClimb.report());
    }

    /**
     * Returns the bundled climb in numbers, one row for each 2,000 ft and each event.
     *
     * @return minutes, pressure altitude, speeds, rate and temperatures
     */
    public static Table ascent() {
        List<double[]> rows = new ArrayList<>();
        for (BriefingLevel level : briefing().levels()) {
            ClimbState at = level.state();
            rows.add(
                    new double[] {
                        at.timeS() / 60.0,
                        at.pressureAltitude().inFeet(),
                        at.pressureAltitudeRate().inFeetPerMinute(),
                        at.calibratedAirspeed().inKnots(),
                        at.mach().number(),
                        at.air().staticAirTemperature().inCelsius(),
                        at.totalAirTemperature().inCelsius()
                    });
        }
        return Table.of(
                List.of(
                        "time [min]",
                        "level [ft]",
                        "rate [ft/min]",
                        "CAS [kn]",
                        "Mach",
                        "SAT [°C]",
                        "TAT [°C]"),
                rows);
    }
}
