package org.climbwright.examples.shell;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.climbwright.examples.figure.Svg;

/** A table drawn: below each other a panel for each column, all over the first one. */
final class Picture {
    private static final int WIDTH = 720;
    private static final int PANEL = 150;
    private static final double LEFT = 80.0;
    private static final double RIGHT = 20.0;
    private static final double GAP = 34.0;
    private static final double BOTTOM = 44.0;

    private final Table table;
    private final Svg svg;
    private final Axis across;

    private Picture(Table table) {
        this.table = table;
        int panels = table.names().size() - 1;
        this.svg = new Svg(WIDTH, panels * PANEL + (int) BOTTOM);
        this.across = Axis.of(table.column(0), LEFT, WIDTH - RIGHT);
    }

    static String of(Table table) {
        return new Picture(table).draw();
    }

    private String draw() {
        int panels = table.names().size() - 1;
        for (int panel = 0; panel < panels; panel++) {
            double top = panel * PANEL + GAP;
            panel(panel + 1, top, (panel + 1.0) * PANEL);
        }
        double foot = panels * (double) PANEL;
        for (BigDecimal tick : across.ticks()) {
            svg.text(across.at(tick.doubleValue()), foot + 17.0, "middle", tick.toPlainString());
        }
        svg.text((LEFT + WIDTH - RIGHT) / 2.0, foot + 36.0, "middle", words(0));
        return svg.end();
    }

    private void panel(int column, double top, double bottom) {
        double[] values = table.column(column);
        Axis up = Axis.of(values, bottom, top);
        svg.text(LEFT, top - 8.0, "start", words(column));
        for (BigDecimal tick : across.ticks()) {
            double x = across.at(tick.doubleValue());
            svg.grid(x, top, x, bottom);
        }
        for (BigDecimal tick : up.ticks()) {
            double y = up.at(tick.doubleValue());
            svg.grid(LEFT, y, WIDTH - RIGHT, y);
            svg.text(LEFT - 6.0, y + 4.0, "end", tick.toPlainString());
        }
        double[] over = table.column(0);
        List<String> points = new ArrayList<>();
        for (int i = 0; i < values.length; i++) {
            if (isNumber(over[i]) && isNumber(values[i])) {
                points.add(Svg.point(across.at(over[i]), up.at(values[i])));
            } else {
                line(points); // not drawn over what is not known
                points.clear();
            }
        }
        line(points);
    }

    private void line(List<String> points) {
        if (!points.isEmpty()) {
            svg.through(points, "stroke=\"#0b5394\" stroke-width=\"2\" stroke-linecap=\"round\"");
        }
    }

    private String words(int column) {
        return table.names().get(column).replace("&", "&amp;").replace("<", "&lt;");
    }

    private static boolean isNumber(double value) {
        return Math.abs(value) <= Double.MAX_VALUE;
    }

    /** From the least to the largest number, with round numbers marked between. */
    private record Axis(double least, double largest, double begin, double end) {
        private static final double TICKS = 5.0;

        static Axis of(double[] values, double begin, double end) {
            double[] numbers = Arrays.stream(values).filter(Picture::isNumber).toArray();
            double least = Arrays.stream(numbers).min().orElse(0.0);
            double largest = Arrays.stream(numbers).max().orElse(1.0);
            if (least == largest) {
                double room = Math.max(Math.abs(least) * 0.01, 1e-9);
                return new Axis(least - room, largest + room, begin, end);
            }
            return new Axis(least, largest, begin, end);
        }

        double at(double value) {
            return begin + (value - least) / (largest - least) * (end - begin);
        }

        /** Multiples of 1, 2 or 5 times a power of ten: five or so. */
        List<BigDecimal> ticks() {
            BigDecimal rough = BigDecimal.valueOf((largest - least) / TICKS);
            BigDecimal ten = BigDecimal.ONE.scaleByPowerOfTen(rough.precision() - rough.scale());
            BigDecimal step = ten;
            for (String smaller : List.of("0.5", "0.2", "0.1")) {
                BigDecimal candidate = ten.multiply(new BigDecimal(smaller));
                step = candidate.compareTo(rough) >= 0 ? candidate : step;
            }
            List<BigDecimal> ticks = new ArrayList<>();
            BigDecimal first =
                    BigDecimal.valueOf(least).divide(step, 0, RoundingMode.CEILING).multiply(step);
            for (BigDecimal tick = first; tick.doubleValue() <= largest; tick = tick.add(step)) {
                ticks.add(tick);
            }
            return ticks;
        }
    }
}
