package org.climbwright.examples.figure;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import org.climbwright.icing.envelope.ContinuousMaximum;
import org.climbwright.icing.envelope.WaterPoint;
import org.climbwright.quantity.temperature.StaticAirTemperature;

/**
 * Draws the largest liquid water content of continuous maximum icing: the tabulated points, the
 * interpolation through them, and dashed the one half way between two temperatures.
 */
public final class ContinuousMaximumFigure {
    private static final int WIDTH = 720;
    private static final int HEIGHT = 480;
    private static final int LEFT = 70;
    private static final int RIGHT = 30;
    private static final int TOP = 50;
    private static final int BOTTOM = 60;
    private static final double SMALLEST_UM = 15.0;
    private static final double LARGEST_UM = 40.0;
    private static final double MOST_G = 0.9;
    private static final int POINTS = 101;
    private static final int NAMED = 24;
    private static final int WARMEST = 3;
    private static final int STEP = 10;
    private static final String[] COLOURS = {"#1f3b73", "#2f6f9f", "#3a9188", "#b5651d"};

    private final Svg svg = new Svg(WIDTH, HEIGHT);

    private ContinuousMaximumFigure() {}

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
        ContinuousMaximumFigure figure = new ContinuousMaximumFigure();
        figure.frame();
        figure.lines();
        return figure.svg.end();
    }

    private void frame() {
        svg.text(
                WIDTH / 2.0,
                TOP - 24.0,
                "middle",
                "Largest liquid water content, continuous maximum (14 CFR 25 Appendix C)");
        for (double um = SMALLEST_UM; um <= LARGEST_UM; um += 5.0) {
            svg.grid(x(um), y(0.0), x(um), y(MOST_G));
            svg.text(x(um), y(0.0) + 20.0, "middle", String.format(Locale.ROOT, "%.0f", um));
        }
        for (int tenths = 0; tenths <= 9; tenths++) {
            double grams = tenths / 10.0;
            svg.grid(x(SMALLEST_UM), y(grams), x(LARGEST_UM), y(grams));
            svg.text(
                    x(SMALLEST_UM) - 8.0,
                    y(grams) + 4.0,
                    "end",
                    String.format(Locale.ROOT, "%.1f", grams));
        }
        svg.text(
                (x(SMALLEST_UM) + x(LARGEST_UM)) / 2.0,
                HEIGHT - 18.0,
                "middle",
                "mean effective drop diameter [µm]; circles: tabulated, dashed: half way between"
                        + " two temperatures");
        svg.upwards((y(0.0) + y(MOST_G)) / 2.0, "liquid water content [g/m³]");
    }

    private void lines() {
        List<List<WaterPoint>> tabulated = ContinuousMaximum.tabulated();
        for (int i = 0; i <= WARMEST; i++) {
            double celsius = STEP * (i - WARMEST);
            if (i < WARMEST) {
                curve(celsius + STEP / 2.0, COLOURS[i], "1\" stroke-dasharray=\"4 4");
            }
            WaterPoint name = curve(celsius, COLOURS[i], "2");
            svg.text(
                    x(name),
                    y(name) - 7.0,
                    "start",
                    String.format(Locale.ROOT, "%.0f °C", celsius));
            for (WaterPoint point : tabulated.get(i)) {
                svg.line(
                        "<circle cx=\"%.1f\" cy=\"%.1f\" r=\"3.5\" fill=\"white\" stroke=\"%s\""
                                + " stroke-width=\"1.5\"/>",
                        x(point), y(point), COLOURS[i]);
            }
        }
    }

    /** Draws a line, and returns where its name may stand. */
    private WaterPoint curve(double celsius, String colour, String stroke) {
        List<WaterPoint> points =
                ContinuousMaximum.line(StaticAirTemperature.ofCelsius(celsius), POINTS);
        svg.through(
                points.stream().map(p -> Svg.point(x(p), y(p))).toList(),
                "stroke=\"" + colour + "\" stroke-width=\"" + stroke + "\"");
        return points.get(NAMED);
    }

    private static double x(WaterPoint point) {
        return x(point.dropDiameterM() * 1e6);
    }

    private static double y(WaterPoint point) {
        return y(point.liquidWaterContentKgPerM3() * 1e3);
    }

    private static double x(double micrometres) {
        return LEFT
                + (micrometres - SMALLEST_UM) / (LARGEST_UM - SMALLEST_UM) * (WIDTH - LEFT - RIGHT);
    }

    private static double y(double grams) {
        return HEIGHT - BOTTOM - grams / MOST_G * (HEIGHT - TOP - BOTTOM);
    }
}
