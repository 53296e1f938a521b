package org.climbwright.examples.figure;

import static org.climbwright.examples.figure.InventedFlight.FAILURE;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.function.IntToDoubleFunction;
import java.util.stream.IntStream;
import org.climbwright.cabin.CabinHistory;
import org.climbwright.cabin.dynamics.CabinFailure;
import org.climbwright.cabin.dynamics.CabinFailureStudy;
import org.climbwright.cabin.dynamics.CabinHull;
import org.climbwright.cabin.dynamics.EmergencyDescent;
import org.climbwright.quantity.altitude.CabinAltitude;
import org.climbwright.quantity.temperature.StaticAirTemperature;

/**
 * Draws what a cabin does when its pressurisation fails late in a climb, without a descent and, for
 * one failure, with one: an invented hull on an invented flight, in steps of 1/60 s.
 *
 * <p>Limits of use: for study, not for use in flight. What a crew does about a failure is in the
 * operator's checklists and memory items.
 */
public final class CabinFailureFigure {
    private static final int WIDTH = 940;
    private static final int HEIGHT = 600;
    private static final int LEFT = 80;
    private static final int RIGHT = 210;
    private static final int TOP = 50;
    private static final int BOTTOM = 110;
    private static final double LONGEST_MIN = 40.0;
    private static final double HIGHEST_FT = 36000.0;
    private static final int[] MARKS_FT = {10000, 14000, 25000};

    /** A frame at 60 Hz. */
    private static final Duration STEP = Duration.ofNanos(16_666_667);

    /** Every how many steps a line has a point: each 2 s after something happened, else 10 s. */
    private static final int CLOSE = 120;

    private static final int WIDE = 600;

    /** How far lines of text are apart at least. */
    private static final double TEXT_APART = 17.0;

    private static final String NORMAL = "stroke=\"#1e6f5c\" stroke-width=\"2.5\"";
    private static final String INFLOW =
            "stroke=\"#1f3b73\" stroke-width=\"2.5\" stroke-dasharray=\"10 4\"";
    private static final String HOLE =
            "stroke=\"#b5511d\" stroke-width=\"2.5\" stroke-dasharray=\"2.5 3.5\"";
    private static final String VALVE =
            "stroke=\"#7a2f6f\" stroke-width=\"2.5\" stroke-dasharray=\"12 3 2.5 3\"";
    private static final String DESCENDING = "stroke=\"#b5511d\" stroke-width=\"2.5\"";
    private static final String AEROPLANE = "stroke=\"#555555\" stroke-width=\"1\"";

    private final Svg svg = new Svg(WIDTH, HEIGHT);
    private final List<Name> names = new ArrayList<>();

    /** What a line is called, and where it ends. */
    private record Name(String words, double endY) {}

    private CabinFailureFigure() {}

    /**
     * Writes the figure.
     *
     * @param args the file to write
     * @throws IOException if it cannot be written
     */
    public static void main(String[] args) throws IOException {
        Files.writeString(Path.of(args[0]), draw(), StandardCharsets.UTF_8);
    }

    /**
     * Draws the figure.
     *
     * @return the text of an SVG file
     */
    static String draw() {
        CabinFailureFigure figure = new CabinFailureFigure();
        figure.frame();
        figure.marks();
        figure.lines();
        figure.names();
        figure.caption();
        return figure.svg.end();
    }

    private void frame() {
        svg.text(
                WIDTH / 2.0,
                TOP - 24.0,
                "middle",
                "An invented cabin in a climb, and a failure "
                        + FAILURE.toMinutes()
                        + " minutes after take-off");
        for (int minutes = 0; minutes <= LONGEST_MIN; minutes += 5) {
            svg.grid(x(minutes), y(0.0), x(minutes), y(HIGHEST_FT));
            svg.text(x(minutes), y(0.0) + 20.0, "middle", Integer.toString(minutes));
        }
        for (int feet = 0; feet <= HIGHEST_FT; feet += 5000) {
            svg.grid(x(0.0), y(feet), x(LONGEST_MIN), y(feet));
            svg.text(x(0.0) - 8.0, y(feet) + 4.0, "end", thousands(feet));
        }
        svg.text(x(LONGEST_MIN / 2.0), y(0.0) + 42.0, "middle", "time since take-off [min]");
        svg.upwards(
                y(HIGHEST_FT / 2.0),
                "cabin altitude; thin: pressure altitude of the aeroplane [ft]");
    }

    private void marks() {
        double failure = x((double) FAILURE.toMinutes());
        for (int feet : MARKS_FT) {
            svg.straight(x(0.0), y(feet), x(LONGEST_MIN), y(feet), "stroke=\"#777777\"");
            // where no line is: the aeroplane passes the lower ones early, the highest late
            boolean high = feet > 20000;
            svg.text(
                    high ? x(0.0) + 6.0 : failure - 6.0,
                    y(feet) - 5.0,
                    high ? "start" : "end",
                    "cabin altitude " + thousands(feet) + " ft");
        }
        svg.straight(failure, y(0.0), failure, y(HIGHEST_FT), "stroke=\"#777777\"");
        svg.text(failure + 6.0, y(0.0) - 8.0, "start", "failure");
    }

    private void lines() {
        CabinFailureStudy study = InventedFlight.study();
        CabinFailureStudy holed = with(study, new CabinFailure.Hole(InventedFlight.HOLE_M2));
        CabinHistory normal = study.run(STEP);
        CabinHistory inflow = with(study, new CabinFailure.InflowLost()).run(STEP);
        CabinHistory hole = holed.run(STEP);
        double open = InventedFlight.HULL.valveAreaM2();
        CabinHistory valve = with(study, new CabinFailure.ValveStuck(open)).run(STEP);
        CabinHistory down = holed.withDescent(InventedFlight.DESCENT).run(STEP);
        int descends = parting(down, hole);

        curve("aeroplane", normal::pressureAltitudeM, normal, 0, AEROPLANE);
        curve("aeroplane after descent", down::pressureAltitudeM, down, descends, AEROPLANE);
        cabin("no failure", normal, 0, NORMAL);
        cabin("inflow lost", inflow, parting(inflow, normal), INFLOW);
        String area = centimetres(InventedFlight.HOLE_M2);
        cabin("hole of " + area, hole, parting(hole, normal), HOLE);
        cabin("outflow valve stuck open", valve, parting(valve, normal), VALVE);
        cabin("hole of " + area + ", with descent", down, descends, DESCENDING);
    }

    private static CabinFailureStudy with(CabinFailureStudy study, CabinFailure failure) {
        return study.withFailure(failure, FAILURE);
    }

    /** The last sample that two flights have in common. */
    private static int parting(CabinHistory one, CabinHistory other) {
        int i = 0;
        while (one.cabinAltitudeM(i) == other.cabinAltitudeM(i)) {
            i++;
        }
        return i - 1;
    }

    private void cabin(String words, CabinHistory history, int from, String look) {
        curve(words, history::cabinAltitudeM, history, from, look);
    }

    private void curve(
            String words, IntToDoubleFunction metres, CabinHistory history, int from, String look) {
        int last = history.size() - 1;
        int stride = from == 0 ? WIDE : CLOSE;
        List<String> points =
                IntStream.concat(
                                IntStream.iterate(from, i -> i < last, i -> i + stride),
                                IntStream.of(last))
                        .mapToObj(i -> point(history.timeS(i), metres.applyAsDouble(i)))
                        .toList();
        svg.through(points, look);
        names.add(new Name(words, y(feet(metres.applyAsDouble(last)))));
    }

    /** Writes each name where its line ends, or above, so that none is on another. */
    private void names() {
        double lowest = y(0.0);
        names.sort(Comparator.comparingDouble(Name::endY).reversed());
        for (Name name : names) {
            double at = Math.min(name.endY(), lowest);
            svg.text(x(LONGEST_MIN) + 8.0, at + 4.0, "start", name.words());
            lowest = at - TEXT_APART;
        }
    }

    private void caption() {
        CabinHull hull = InventedFlight.HULL;
        EmergencyDescent descent = InventedFlight.DESCENT;
        svg.text(
                LEFT,
                HEIGHT - 38.0,
                "start",
                String.format(
                        Locale.ROOT,
                        "Standard air; hull of %.0f m³ held at %.0f °C; inflow %.1f kg/s; effective"
                                + " areas: leaks %s, outflow valve fully open %s.",
                        hull.volumeM3(),
                        StaticAirTemperature.ofKelvins(hull.cabinTemperatureK()).inCelsius(),
                        hull.inflowKgPerS(),
                        centimetres(hull.leakAreaM2()),
                        centimetres(hull.valveAreaM2())));
        svg.text(
                LEFT,
                HEIGHT - 18.0,
                "start",
                String.format(
                        Locale.ROOT,
                        "Descent: %d s after the cabin has passed %s ft, at %s ft/min to %s ft."
                                + " Invented; for study, not for use in flight.",
                        descent.recognition().toSeconds(),
                        thousands(descent.warning().inFeet()),
                        thousands(descent.rate().inFeetPerMinute()),
                        thousands(descent.to().inFeet())));
    }

    private static String centimetres(double squareMetres) {
        return String.format(Locale.ROOT, "%.0f cm²", squareMetres * 1e4);
    }

    private static String thousands(double number) {
        return String.format(Locale.ROOT, "%,.0f", number);
    }

    private static double feet(double metres) {
        return CabinAltitude.ofMetres(metres).inFeet();
    }

    private static String point(double seconds, double metres) {
        return Svg.point(x(seconds / 60.0), y(feet(metres)));
    }

    private static double x(double minutes) {
        return LEFT + minutes / LONGEST_MIN * (WIDTH - LEFT - RIGHT);
    }

    private static double y(double feet) {
        return HEIGHT - BOTTOM - feet / HIGHEST_FT * (HEIGHT - TOP - BOTTOM);
    }
}
