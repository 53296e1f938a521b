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
 */
public final class ModelRange implements Serializable {
    private static final long serialVersionUID = 1L;

    private final String term;
    private final double lowest;
    private final double highest;
    private final String unit;
    private final String reason;

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
    public ModelRange(String term, double lowest, double highest, String unit, String reason) {
        if (!(lowest <= highest && Double.isFinite(lowest) && Double.isFinite(highest))) {
            throw new IllegalArgumentException(
                    "a range needs finite bounds in order, but had " + lowest + " and " + highest);
        }
        this.term = term;
        this.lowest = lowest;
        this.highest = highest;
        this.unit = unit;
        this.reason = reason;
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
     * Returns the lower bound.
     *
     * @return the lowest value allowed, in SI
     */
    public double lowest() {
        return lowest;
    }

    /**
     * Returns the upper bound.
     *
     * @return the highest value allowed, in SI
     */
    public double highest() {
        return highest;
    }

    /**
     * Returns why the range ends there, or what to do instead.
     *
     * @return the reason as given
     */
    public String reason() {
        return reason;
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof ModelRange that
                && Double.compare(lowest, that.lowest) == 0
                && Double.compare(highest, that.highest) == 0
                && term.equals(that.term)
                && unit.equals(that.unit)
                && reason.equals(that.reason);
    }

    @Override
    public int hashCode() {
        return 31 * Double.hashCode(lowest) + Double.hashCode(highest) + term.hashCode();
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

    private Object readResolve() {
        return new ModelRange(term, lowest, highest, unit, reason);
    }
}
