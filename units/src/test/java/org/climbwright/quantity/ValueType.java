package org.climbwright.quantity;

import java.util.List;
import java.util.function.Function;

/**
 * What the tests know of a value type: its word, its doors, and which numbers it may hold.
 *
 * @param term the field's word, as messages have it
 * @param doors every factory that takes one double
 * @param units the way through javax.measure; null where there is none
 * @param lowestSi the lowest value that can be; minus the largest double where there is no bound
 * @param highestSi the highest value that can be
 * @param low a value of everyday, in the unit of the first door
 * @param high a higher one
 */
public record ValueType<T extends Scalar<T>>(
        String term,
        Class<T> type,
        List<Door<T>> doors,
        Function<String, T> parse,
        UnitDoor<T, ?> units,
        double lowestSi,
        double highestSi,
        double low,
        double high) {

    static final double UNBOUNDED = Double.MAX_VALUE;

    public Door<T> door(String entrance) {
        return doors.stream()
                .filter(door -> door.entrance().equals(entrance))
                .findAny()
                .orElseThrow(() -> new AssertionError(term + " has no " + entrance));
    }

    boolean has(String entrance) {
        return doors.stream().anyMatch(door -> door.entrance().equals(entrance));
    }

    boolean hasFloor() {
        return lowestSi > -UNBOUNDED;
    }

    boolean hasCeiling() {
        return highestSi < UNBOUNDED;
    }

    T lowValue() {
        return doors.get(0).in().apply(low);
    }

    T highValue() {
        return doors.get(0).in().apply(high);
    }

    ValueType<T> from(double lowest) {
        return new ValueType<>(term, type, doors, parse, units, lowest, highestSi, low, high);
    }

    ValueType<T> upTo(double highest) {
        return new ValueType<>(term, type, doors, parse, units, lowestSi, highest, low, high);
    }

    @Override
    public String toString() {
        return term;
    }
}
