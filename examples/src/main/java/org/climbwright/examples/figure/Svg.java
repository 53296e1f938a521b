package org.climbwright.examples.figure;

import java.util.List;
import java.util.Locale;

/** The text of an SVG file as it grows: what the figures have in common. */
final class Svg {
    private final StringBuilder text = new StringBuilder();

    /** Begins a white sheet. */
    Svg(int width, int height) {
        line(
                "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 %d %d\" width=\"%d\""
                        + " height=\"%d\" font-family=\"sans-serif\" font-size=\"13\">",
                width, height, width, height);
        line("<rect width=\"%d\" height=\"%d\" fill=\"white\"/>", width, height);
    }

    void grid(double x1, double y1, double x2, double y2) {
        straight(x1, y1, x2, y2, "stroke=\"#dddddd\"");
    }

    void straight(double x1, double y1, double x2, double y2, String attributes) {
        line(
                "<line x1=\"%.1f\" y1=\"%.1f\" x2=\"%.1f\" y2=\"%.1f\" %s/>",
                x1, y1, x2, y2, attributes);
    }

    /** Draws a line through points, each as {@link #point} writes it. */
    void through(List<String> points, String attributes) {
        line("<polyline fill=\"none\" %s points=\"%s\"/>", attributes, String.join(" ", points));
    }

    static String point(double x, double y) {
        return String.format(Locale.ROOT, "%.1f,%.1f", x, y);
    }

    void text(double x, double y, String anchor, String words) {
        line("<text x=\"%.1f\" y=\"%.1f\" text-anchor=\"%s\">%s</text>", x, y, anchor, words);
    }

    /** Writes the title of the axis on the left, from below to above. */
    void upwards(double y, String words) {
        line(
                "<text x=\"20\" y=\"%.1f\" text-anchor=\"middle\" transform=\"rotate(-90 20"
                        + " %.1f)\">%s</text>",
                y, y, words);
    }

    void line(String format, Object... values) {
        text.append(String.format(Locale.ROOT, format, values)).append('\n');
    }

    /** Ends the file. */
    String end() {
        return text + "</svg>\n";
    }
}
