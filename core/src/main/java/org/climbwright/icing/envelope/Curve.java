package org.climbwright.icing.envelope;

/**
 * A line through points read from a figure: straight between neighbours on the paper that suits it,
 * so that it is monotone where the points are, and meets each of them to the last bit.
 */
final class Curve {
    /** On which paper neighbours are joined by straight lines. */
    enum Paper {
        PLAIN,
        LOGARITHM_OF_VALUE,
        LOGARITHM_OF_PLACE
    }

    private final Paper paper;
    private final double[] places;
    private final double[] values;

    /** Places must rise. */
    Curve(Paper paper, double[] places, double[] values) {
        this.paper = paper;
        this.places = places.clone();
        this.values = values.clone();
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
        return paper == Paper.LOGARITHM_OF_VALUE
                ? from * StrictMath.exp(share * StrictMath.log(to / from))
                : from + share * (to - from);
    }

    private double share(double place, double from, double to) {
        return paper == Paper.LOGARITHM_OF_PLACE
                ? StrictMath.log(place / from) / StrictMath.log(to / from)
                : (place - from) / (to - from);
    }
}
