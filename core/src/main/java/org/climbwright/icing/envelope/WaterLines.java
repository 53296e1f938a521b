package org.climbwright.icing.envelope;

import static org.climbwright.icing.envelope.Curve.Paper.SMOOTH;
import static org.climbwright.icing.envelope.LimitMargin.Limit.COLDEST_TEMPERATURE;
import static org.climbwright.icing.envelope.LimitMargin.Limit.LARGEST_DROP;
import static org.climbwright.icing.envelope.LimitMargin.Limit.LIQUID_WATER_CONTENT;
import static org.climbwright.icing.envelope.LimitMargin.Limit.SMALLEST_DROP;
import static org.climbwright.icing.envelope.LimitMargin.Limit.WARMEST_TEMPERATURE;
import static org.climbwright.icing.envelope.LimitMargin.atLeast;
import static org.climbwright.icing.envelope.LimitMargin.atMost;
import static org.climbwright.icing.envelope.LimitMargin.notKnown;
import static org.climbwright.unit.UnitScale.GRAM_PER_CUBIC_METRE;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.climbwright.quantity.ModelRange;
import org.climbwright.unit.UnitScale;

/**
 * Lines of largest liquid water content against drop diameter, one a temperature: smooth and
 * monotone through the points of a line, straight in temperature between two lines.
 */
final class WaterLines {
    private final double[] temperaturesK;
    private final Curve[] lines;
    private final Bounds temperatures;
    private final Bounds diameters;

    /** Temperatures rise; all lines begin and end at the same diameter. */
    WaterLines(String envelope, double[] celsius, double[][] micrometres, double[][] grams) {
        temperaturesK = new double[celsius.length];
        lines = new Curve[celsius.length];
        for (int i = 0; i < celsius.length; i++) {
            temperaturesK[i] = UnitScale.CELSIUS.toSi(celsius[i]);
            lines[i] =
                    new Curve(SMOOTH, metres(micrometres[i]), si(grams[i], GRAM_PER_CUBIC_METRE));
        }
        temperatures =
                new Bounds(
                        "static air temperature",
                        temperaturesK[0],
                        temperaturesK[celsius.length - 1],
                        "K",
                        "the lines of " + envelope + " are drawn for these");
        diameters =
                new Bounds(
                        "mean effective drop diameter",
                        lines[0].lowest(),
                        lines[0].highest(),
                        "m",
                        "the lines of " + envelope + " end there");
    }

    /** Divided and not multiplied: 15e-6 is then the number that one writes. */
    private static double[] metres(double[] micrometres) {
        return Arrays.stream(micrometres).map(micrometre -> micrometre / 1e6).toArray();
    }

    static double[] si(double[] numbers, UnitScale unit) {
        return Arrays.stream(numbers).map(unit::toSi).toArray();
    }

    Bounds temperatures() {
        return temperatures;
    }

    Bounds diameters() {
        return diameters;
    }

    boolean covers(double dropDiameterM, double temperatureK) {
        return diameters.covers(dropDiameterM) && temperatures.covers(temperatureK);
    }

    double at(double dropDiameterM, double temperatureK) {
        double diameter = diameters.check(dropDiameterM);
        double temperature = temperatures.check(temperatureK);
        double[] water = new double[lines.length];
        for (int i = 0; i < lines.length; i++) {
            water[i] = lines[i].at(diameter);
        }
        return new Curve(Curve.Paper.PLAIN, temperaturesK, water).at(temperature);
    }

    /** Points of the line at a temperature, as many as asked for, from end to end. */
    List<WaterPoint> line(double temperatureK, int points) {
        if (points < 2) {
            throw new IllegalArgumentException(
                    "a line has 2 points or more, but was to have " + points);
        }
        double from = diameters.range().lowest();
        double step = (diameters.range().highest() - from) / (points - 1);
        return IntStream.range(0, points)
                .mapToDouble(i -> from + i * step)
                .mapToObj(diameterM -> new WaterPoint(diameterM, at(diameterM, temperatureK)))
                .toList();
    }

    /** The points that the lines go through, the coldest line first. */
    List<List<WaterPoint>> tabulated() {
        return Arrays.stream(lines)
                .map(
                        line ->
                                IntStream.range(0, line.count())
                                        .mapToObj(i -> new WaterPoint(line.place(i), line.value(i)))
                                        .toList())
                .toList();
    }

    /** The margins of drop size, temperature and water; the last times a factor, or not known. */
    List<LimitMargin> margins(
            double waterKgPerM3,
            double dropDiameterM,
            double temperatureK,
            double factor,
            String source) {
        List<LimitMargin> margins = new ArrayList<>();
        Given.water(waterKgPerM3);
        Given.diameter(dropDiameterM);
        ModelRange drops = diameters.range();
        margins.add(atLeast(SMALLEST_DROP, dropDiameterM, drops.lowest(), source));
        margins.add(atMost(LARGEST_DROP, dropDiameterM, drops.highest(), source));
        margins.add(
                atLeast(COLDEST_TEMPERATURE, temperatureK, temperatures.range().lowest(), source));
        margins.add(
                atMost(WARMEST_TEMPERATURE, temperatureK, temperatures.range().highest(), source));
        margins.add(water(waterKgPerM3, dropDiameterM, temperatureK, factor, source));
        return margins;
    }

    private LimitMargin water(
            double waterKgPerM3,
            double dropDiameterM,
            double temperatureK,
            double factor,
            String source) {
        if (!covers(dropDiameterM, temperatureK)) {
            return notKnown(
                    LIQUID_WATER_CONTENT, "no line is drawn at that drop size and temperature");
        }
        if (Double.isNaN(factor)) {
            return notKnown(LIQUID_WATER_CONTENT, "no factor is drawn for that horizontal extent");
        }
        double largest = at(dropDiameterM, temperatureK) * factor;
        return atMost(LIQUID_WATER_CONTENT, waterKgPerM3, largest, source);
    }
}
