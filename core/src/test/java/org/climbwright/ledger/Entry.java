package org.climbwright.ledger;

/**
 * A line of the ledger: the largest error of a function over a part of its domain, in one measure.
 *
 * @param function class and function
 * @param part of its domain, in words; empty if all
 * @param ranges the inputs and their ranges
 * @param points how many were measured
 * @param measure of the error
 * @param largest error found
 * @param bar what it must not exceed; NaN if it has none
 * @param at the inputs where it was found
 */
record Entry(
        String function,
        String part,
        String ranges,
        int points,
        String measure,
        double largest,
        double bar,
        String at) {
    static final String HEAD = "function,part,ranges,points,measure,largest,bar,at";

    static Entry parse(String line) {
        String[] field = line.split(",", -1);
        return new Entry(
                field[0],
                field[1],
                field[2],
                Integer.parseInt(field[3]),
                field[4],
                Double.parseDouble(field[5]),
                field[6].isEmpty() ? Double.NaN : Double.parseDouble(field[6]),
                field[7]);
    }

    String line() {
        return String.join(
                ",",
                function,
                part,
                ranges,
                Integer.toString(points),
                measure,
                Double.toString(largest),
                Double.isNaN(bar) ? "" : Double.toString(bar),
                at);
    }

    boolean isAboveBar() {
        return largest > bar;
    }

    /** The function and the part of its domain. */
    String row() {
        return function + (part.isEmpty() ? "" : " (" + part + ")");
    }

    /** What no two entries share. */
    String key() {
        return row() + " in " + measure;
    }
}
