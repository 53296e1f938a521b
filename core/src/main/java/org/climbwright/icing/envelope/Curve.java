package org.climbwright.icing.envelope;

/**
 * A line through points read from a figure: straight between neighbours, or smooth, so that it is
 * monotone where the points are, and meets each of them to the last bit.
 *
 * @source the smooth line: F. N. Fritsch and J. Butland, A method for constructing local monotone
 *     piecewise cubic interpolants, 1984, with the slopes of weighted harmonic means (from memory)
 */
final class Curve {
    /** How neighbours are joined. */
    enum Paper {
        /** By a straight line. */
        PLAIN,
        /** By a straight line on paper whose places are logarithms. */
        LOGARITHM_OF_PLACE,
        /** By cubics of one slope where they meet. */
        SMOOTH
    }

    private final Paper paper;
    private final double[] places;
    private final double[] values;
    private final double[] slopes;

    /** Places must rise. */
    Curve(Paper paper, double[] places, double[] values) {
        this.paper = paper;
        this.places = places.clone();
        this.values = values.clone();
        this.slopes = paper == Paper.SMOOTH ? slopes(places, values) : new double[0];
    }

    private static double[] slopes(double[] places, double[] values) {
        int last = places.length - 1;
        double[] secants = new double[last];
        for (int i = 0; i < last; i++) {
            secants[i] = (values[i + 1] - values[i]) / (places[i + 1] - places[i]);
        }
        double[] slopes = new double[last + 1];
        slopes[0] = secants[0];
        slopes[last] = secants[last - 1];
        for (int i = 1; i < last; i++) {
            double before = places[i] - places[i - 1];
            double behind = places[i + 1] - places[i];
            double weight = 2.0 * behind + before;
            double other = behind + 2.0 * before;
            slopes[i] =
                    secants[i - 1] * secants[i] <= 0.0
                            ? 0.0
                            : (weight + other) / (weight / secants[i - 1] + other / secants[i]);
        }
        return slopes;
    }

    int count() {
        return places.length;
    }

    double place(int point) {
        return places[point];
    }

    double value(int point) {
        return values[point];
    }

    double lowest() {
        return places[0];
    }

    double highest() {
        return places[places.length - 1];
    }

    /** The value at a place between the lowest and the highest. */
    double at(double place) {
        int above = 1;
        while (above < places.length - 1 && place > places[above]) {
            above++;
        }
        double from = values[above - 1];
        double to = values[above];
        double share = share(place, places[above - 1], places[above]);
        if (share == 0.0 || share == 1.0) {
            return share == 0.0 ? from : to;
        }
        double straight = from + share * (to - from);
        if (paper != Paper.SMOOTH) {
            return straight;
        }
        // Hermite's cubic: what the two slopes add to the straight line
        double width = places[above] - places[above - 1];
        double first = slopes[above - 1] * width - (to - from);
        double second = (to - from) - slopes[above] * width;
        return straight + share * (1.0 - share) * ((1.0 - share) * first + share * second);
    }

    private double share(double place, double from, double to) {
        return paper == Paper.LOGARITHM_OF_PLACE
                ? StrictMath.log(place / from) / StrictMath.log(to / from)
                : (place - from) / (to - from);
    }
}
