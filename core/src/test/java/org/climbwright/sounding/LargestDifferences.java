package org.climbwright.sounding;

import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;

/**
 * How far our answers are from those of the tables at most, quantity by quantity: printed by the
 * run, so that a reader sees how much of each tolerance is used.
 */
final class LargestDifferences {
    private final Map<String, Largest> byQuantity = new LinkedHashMap<>();

    private static final class Largest {
        private final String unit;
        private int rows;
        private double difference;
        private String sounding = "";

        Largest(String unit) {
            this.unit = unit;
        }
    }

    void note(String quantity, String unit, String sounding, double ours, double theirs) {
        Largest largest = byQuantity.computeIfAbsent(quantity, key -> new Largest(unit));
        largest.rows++;
        double difference = Math.abs(ours - theirs);
        if (difference >= largest.difference) {
            largest.difference = difference;
            largest.sounding = sounding;
        }
    }

    void note(String quantity, String unit, String sounding, double ours, String theirs) {
        note(quantity, unit, sounding, ours, Double.parseDouble(theirs));
    }

    void print() {
        byQuantity.forEach(
                (quantity, largest) ->
                        System.out.println(
                                String.format(
                                        Locale.ROOT,
                                        "largest difference: %-62s %3d rows  %9.2g %-3s  %s",
                                        quantity,
                                        largest.rows,
                                        largest.difference,
                                        largest.unit,
                                        largest.sounding)));
    }
}
