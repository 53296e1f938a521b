package org.climbwright.quantity;

import java.io.Serializable;

/**
 * The closed range in which a model holds, for one of its inputs in SI.
 *
 * <p>Whoever writes a model of their own states its range once and asks it at the door:
 *
 * <pre>{@code
 * static final ModelRange ALTITUDE =
 *         new ModelRange("pressure altitude", -5000.0, 80000.0, "m", "the tables end there");
 * ALTITUDE.check(altitudeM);      // the same number, or an OutsideModelException
 * ALTITUDE.covers(altitudeM);     // for loops that should not pay for an exception
 * }</pre>
 *
 * <p>A record, since of these a just-in-time compiler knows that a bound never changes.
 *
 * @param term what is checked, in the field's words
 * @param lowest the lowest value allowed, in SI, finite
 * @param highest the highest value allowed, in SI, finite
 * @param unit the label of the SI unit; empty for a plain number
 * @param reason why the range ends there, or what to do instead
 */
public record ModelRange(String term, double lowest, double highest, String unit, String reason)
        implements Serializable {
    /**
     * Makes a range.
     *
     * @param term what is checked, in the field's words
     * @param lowest the lowest value allowed, in SI, finite
     * @param highest the highest value allowed, in SI, finite
     * @param unit the label of the SI unit; empty for a plain number
     * @param reason why the range ends there, or what to do instead
     * @throws IllegalArgumentException if the bounds are not finite or not in order
     */
    public ModelRange {
        if (!(lowest <= highest && Double.isFinite(lowest) && Double.isFinite(highest))) {
            throw new IllegalArgumentException(
                    "a range needs finite bounds in order, but had " + lowest + " and " + highest);
        }
    }

    /**
     * Returns a value of the range as it is.
     *
     * @param value the value in SI
     * @return the same value
     * @throws OutsideModelException if the value is outside the range, or NaN
     */
    public double check(double value) {
        if (!covers(value)) {
            throw new OutsideModelException(term, value, lowest, highest, unit, reason);
        }
        return value;
    }

    /**
     * Tells whether a value lies in the range, bounds included.
     *
     * @param value the value in SI
     * @return true inside; false outside and for NaN
     */
    public boolean covers(double value) {
        return value >= lowest && value <= highest;
    }

    /**
     * Returns the range for reading.
     *
     * @return a text such as {@code "mass from 1.0 to 2.0 kg"}; may change between versions
     */
    @Override
    public String toString() {
        return (term + " from " + lowest + " to " + highest + " " + unit).trim();
    }
}
