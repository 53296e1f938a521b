package org.climbwright.examples.notebook;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.DoubleUnaryOperator;
import org.climbwright.examples.figure.Svg;

/**
 * A chart of a few lines over two axes, for a cell to end with. Lines differ by dashes as well as
 * by colour.
 */
public final class Chart {
    private static final int WIDTH = 760;
    private static final int HEIGHT = 500;
    private static final int LEFT = 80;
    private static final int RIGHT = 30;
    private static final int TOP = 44;
    private static final int BOTTOM = 90;
    private static final double KEY = 34.0;
    private static final String[] COLOURS = {"#1f3b73", "#b5651d", "#3a9188", "#7a3b69"};
    private static final String[] DASHES = {"none", "8 4", "2 3", "12 3 2 3"};

    private final String title;
    private final Axis x;
    private final Axis y;
    private final List<String> bands = new ArrayList<>();
    private final List<String> marks = new ArrayList<>();
    private final List<Line> lines = new ArrayList<>();

    /**
     * An axis.
     *
     * @param name what it shows, with the unit
     * @param least where it begins
     * @param most where it ends
     * @param step from one line of the grid to the next
     */
    public record Axis(String name, double least, double most, double step) {}

    private record Line(String name, List<double[]> points) {}

    private Chart(String title, Axis x, Axis y) {
        this.title = title;
        this.x = x;
        this.y = y;
    }

    /**
     * Begins a chart.
     *
     * @param title what it shows
     * @param x the axis to the right
     * @param y the axis upwards
     * @return the chart, without a line
     */
    public static Chart of(String title, Axis x, Axis y) {
        return new Chart(title, x, y);
    }

    /**
     * Adds a line.
     *
     * @param name what it is
     * @param points its points, each of x and y, inside the axes
     * @return this chart
     */
    public Chart line(String name, List<double[]> points) {
        lines.add(new Line(name, points));
        return this;
    }

    /**
     * Adds the line of a function of x, from end to end.
     *
     * @param name what it is
     * @param function y of x
     * @return this chart
     */
    public Chart line(String name, DoubleUnaryOperator function) {
        List<double[]> points = new ArrayList<>();
        for (int i = 0; i <= 100; i++) {
            double at = x.least + (x.most - x.least) * i / 100.0;
            points.add(new double[] {at, function.applyAsDouble(at)});
        }
        return line(name, points);
    }

    /**
     * Shades a band between two values of y.
     *
     * @param words what it is
     * @param from its lower edge
     * @param to its upper edge
     * @return this chart
     */
    public Chart band(String words, double from, double to) {
        double top = y(Math.min(to, y.most));
        double bottom = y(Math.max(from, y.least));
        bands.add(
                format(
                        "<rect x=\"%d\" y=\"%.1f\" width=\"%d\" height=\"%.1f\""
                                + " fill=\"#d9e6f2\"/>",
                        LEFT, top, WIDTH - LEFT - RIGHT, bottom - top));
        bands.add(
                format(
                        "<text x=\"%d\" y=\"%.1f\" text-anchor=\"end\" font-size=\"12\">%s</text>",
                        WIDTH - RIGHT - 6, (top + bottom) / 2.0 + 4.0, words));
        return this;
    }

    /**
     * Marks a value of x.
     *
     * @param words what it is
     * @param at where
     * @return this chart
     */
    public Chart mark(String words, double at) {
        marks.add(
                format(
                        "<line x1=\"%.1f\" y1=\"%.1f\" x2=\"%.1f\" y2=\"%.1f\" stroke=\"#888888\""
                                + " stroke-width=\"1.5\"/>",
                        x(at), y(y.least), x(at), y(y.most)));
        marks.add(
                format(
                        "<text x=\"%.1f\" y=\"%.1f\" font-size=\"12\">%s</text>",
                        x(at) + 4.0, y(y.most) + 14.0, words));
        return this;
    }

    /**
     * Draws the chart.
     *
     * @return the text of an SVG picture
     */
    String draw() {
        Svg svg = new Svg(WIDTH, HEIGHT);
        svg.text(WIDTH / 2.0, 26.0, "middle", title);
        for (int i = 0; x.least + i * x.step <= x.most; i++) {
            double at = x.least + i * x.step;
            svg.grid(x(at), y(y.least), x(at), y(y.most));
            svg.text(x(at), y(y.least) + 18.0, "middle", number(at));
        }
        for (int i = 0; y.least + i * y.step <= y.most; i++) {
            double at = y.least + i * y.step;
            svg.grid(x(x.least), y(at), x(x.most), y(at));
            svg.text(LEFT - 8.0, y(at) + 4.0, "end", number(at));
        }
        bands.forEach(part -> svg.line("%s", part));
        marks.forEach(part -> svg.line("%s", part));
        svg.text((LEFT + WIDTH - RIGHT) / 2.0, y(y.least) + 38.0, "middle", x.name);
        svg.upwards((TOP + HEIGHT - BOTTOM) / 2.0, y.name);
        double each = (WIDTH - LEFT - RIGHT) / (double) Math.max(1, lines.size());
        for (int i = 0; i < lines.size(); i++) {
            Line line = lines.get(i);
            String look =
                    format(
                            "stroke=\"%s\" stroke-width=\"2\" stroke-dasharray=\"%s\"",
                            COLOURS[i % COLOURS.length], DASHES[i % DASHES.length]);
            svg.through(
                    line.points.stream().map(at -> Svg.point(x(at[0]), y(at[1]))).toList(), look);
            double from = LEFT + i * each;
            svg.straight(from, HEIGHT - 16.0, from + KEY, HEIGHT - 16.0, look);
            svg.text(from + KEY + 6.0, HEIGHT - 12.0, "start", line.name);
        }
        return svg.end();
    }

    /**
     * Returns the chart for reading, where no picture can be shown.
     *
     * @return its title
     */
    @Override
    public String toString() {
        return title;
    }

    private double x(double at) {
        return LEFT + (at - x.least) / (x.most - x.least) * (WIDTH - LEFT - RIGHT);
    }

    private double y(double at) {
        return HEIGHT - BOTTOM - (at - y.least) / (y.most - y.least) * (HEIGHT - TOP - BOTTOM);
    }

    private static String number(double at) {
        String text = format(at == Math.rint(at) ? "%,.0f" : "%.1f", at);
        return text.replace('-', '\u2212');
    }

    private static String format(String format, Object... values) {
        return String.format(Locale.ROOT, format, values);
    }
}
