package org.climbwright.examples.figure;

import java.util.List;
import java.util.Locale;

/** The text of an SVG file as it grows: what figures and charts have in common. */
public final class Svg {
    private final StringBuilder text = new StringBuilder();

    /**
     * Begins a white sheet.
     *
     * @param width its width
     * @param height its height
     */
    public Svg(int width, int height) {
        line(
                "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 %d %d\" width=\"%d\""
                        + " height=\"%d\" font-family=\"sans-serif\" font-size=\"13\">",
                width, height, width, height);
        line("<rect width=\"%d\" height=\"%d\" fill=\"white\"/>", width, height);
    }

    /**
     * Draws a faint line.
     *
     * @param x1 where it begins
     * @param y1 where it begins, downwards
     * @param x2 where it ends
     * @param y2 where it ends, downwards
     */
    public void grid(double x1, double y1, double x2, double y2) {
        straight(x1, y1, x2, y2, "stroke=\"#dddddd\"");
    }

    /**
     * Draws a straight line.
     *
     * @param x1 where it begins
     * @param y1 where it begins, downwards
     * @param x2 where it ends
     * @param y2 where it ends, downwards
     * @param attributes how it looks
     */
    public void straight(double x1, double y1, double x2, double y2, String attributes) {
        line(
                "<line x1=\"%.1f\" y1=\"%.1f\" x2=\"%.1f\" y2=\"%.1f\" %s/>",
                x1, y1, x2, y2, attributes);
    }

    /**
     * Draws a line through points.
     *
     * @param points each as {@link #point} writes it
     * @param attributes how it looks
     */
    public void through(List<String> points, String attributes) {
        line("<polyline fill=\"none\" %s points=\"%s\"/>", attributes, String.join(" ", points));
    }

    /**
     * Writes a point.
     *
     * @param x where, from the left
     * @param y where, downwards
     * @return its text
     */
    public static String point(double x, double y) {
        return String.format(Locale.ROOT, "%.1f,%.1f", x, y);
    }

    /**
     * Writes words.
     *
     * @param x where, from the left
     * @param y where, downwards
     * @param anchor {@code start}, {@code middle} or {@code end}: what of them stands there
     * @param words the words
     */
    public void text(double x, double y, String anchor, String words) {
        line("<text x=\"%.1f\" y=\"%.1f\" text-anchor=\"%s\">%s</text>", x, y, anchor, words);
    }

    /**
     * Writes the title of the axis on the left, from below to above.
     *
     * @param y its middle, downwards
     * @param words the title
     */
    public void upwards(double y, String words) {
        line(
                "<text x=\"20\" y=\"%.1f\" text-anchor=\"middle\" transform=\"rotate(-90 20"
                        + " %.1f)\">%s</text>",
                y, y, words);
    }

    /**
     * Adds a line to the file.
     *
     * @param format its text, or the form of it
     * @param values what the form lacks
     */
    public void line(String format, Object... values) {
        text.append(String.format(Locale.ROOT, format, values)).append('\n');
    }

    /**
     * Ends the file.
     *
     * @return its text
     */
    public String end() {
        return text + "</svg>\n";
    }
}
